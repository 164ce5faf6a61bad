import { spawn } from 'node:child_process';
import { chromium } from 'playwright';
import { systemChromium } from '../ensure-chromium.mjs';

/** Serves the build on a port and opens a page there for some work; both are gone afterwards. */
export async function withBuiltPage(port, work) {
  const address = `http://localhost:${port}`;
  const server = spawn('node', ['src/server/start.js'], {
    env: { ...process.env, PORT: String(port), HOST: '127.0.0.1' },
    stdio: 'ignore',
  });
  const browser = await chromium.launch(
    systemChromium() ? { executablePath: systemChromium() } : {},
  );
  try {
    await untilUp(address);
    const context = await browser.newContext({ viewport: { width: 820, height: 1180 } });
    return await work(await context.newPage(), address);
  } finally {
    await browser.close();
    server.kill();
  }
}

async function untilUp(address) {
  for (let tries = 0; tries < 100; tries += 1) {
    if (await fetch(address).catch(() => null)) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('The built notebook could not be served');
}
