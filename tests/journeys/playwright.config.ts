import { existsSync } from 'node:fs';
import { defineConfig, devices } from '@playwright/test';

const systemChromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);
const port = 4179;

/** Whole paths through the built notebook, as a family walks them. No retries. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.journey.ts',
  outputDir: '../../test-results/journeys',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  reporter: [['dot'], ['json']],
  use: {
    baseURL: `http://localhost:${port}`,
    locale: 'en-US',
    timezoneId: 'America/New_York',
    launchOptions: systemChromium ? { executablePath: systemChromium } : {},
  },
  projects: [
    { name: 'desktop', grepInvert: /@only-phone/, use: { viewport: { width: 1280, height: 900 } } },
    {
      name: 'phone',
      grep: /@phone|@only-phone/,
      use: { ...devices['Pixel 5'], viewport: { width: 360, height: 740 } },
    },
  ],
  webServer: {
    command: 'node ../../src/server/start.js',
    url: `http://localhost:${port}/today`,
    env: { PORT: String(port), HOST: '127.0.0.1' },
    reuseExistingServer: false,
  },
});
