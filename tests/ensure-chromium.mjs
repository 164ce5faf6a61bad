import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';

/** Where systems keep a Chromium of their own. */
export const systemChromium = () =>
  ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((path) => existsSync(path)) ?? null;

/**
 * Sees to it that there is a browser to test in: the system's own where there is one; on Debian as
 * root its package is installed; elsewhere Playwright fetches the one it was made for.
 */
export function ensureChromium() {
  if (systemChromium()) return;
  if (existsSync('/usr/bin/apt-get') && process.getuid?.() === 0) {
    console.log('\n— installing Chromium from the system’s packages');
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: 'inherit',
      env,
    });
    if (systemChromium()) return;
  }
  const cli = createRequire(import.meta.url).resolve('playwright/package.json');
  spawnSync('node', [cli.replace('package.json', 'cli.js'), 'install', 'chromium'], {
    stdio: 'inherit',
  });
}
