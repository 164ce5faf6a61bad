import { sveltekit } from '@sveltejs/kit/vite';
import { playwright } from '@vitest/browser-playwright';
import { existsSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

const systemChromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);

export default defineConfig({
  plugins: [sveltekit()],
  build: { reportCompressedSize: false },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/**/*.browser.test.ts', 'tests/journeys/**'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/**/*.browser.test.ts'],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright(
              systemChromium ? { launchOptions: { executablePath: systemChromium } } : {},
            ),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
