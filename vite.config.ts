import { sveltekit } from '@sveltejs/kit/vite';
import { playwright } from '@vitest/browser-playwright';
import { existsSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

const systemChromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);

/**
 * What every page needs goes out as one file: forty small ones, each packed by itself, weigh a tenth
 * more. What only some pages need stays out of it.
 */
const onEveryPage = [
  'src/lib/core/(base|journal)/',
  'src/lib/core/calendar/(civil-day|civil-day-at|clock-time|clock-time-at|days-between|day-number|format-day|month|weekday)\\.',
  'src/lib/core/measure/(mark|marks-for|unit)\\.',
  'src/lib/core/series/series\\.',
  'src/lib/notebook/(?!open-sample)',
  'src/lib/store/(?!memory)',
  'src/lib/ui/icons/',
  'src/lib/ui/page/(Notice|OpenLog|ReadAloud|SpecimenChoice|Spoken|speech)',
  'src/lib/ui/words/day-words',
  'node_modules/(valibot|idb)/',
];
const everyPageGroup = { name: 'every-page', test: new RegExp(onEveryPage.join('|')) };

/**
 * What these test keeps nothing between calls, so all files of a worker may share what they import:
 * a third of the time that a fresh start for each file takes.
 */
const pureTests = {
  environment: 'node',
  isolate: false,
  pool: 'threads',
  maxWorkers: 2,
  // Speed is for the bench: a property over many made-up logs may take its time on a busy machine.
  testTimeout: 60_000,
} as const;

export default defineConfig({
  plugins: [sveltekit()],
  environments: {
    client: {
      build: {
        rolldownOptions: { output: { codeSplitting: { groups: [everyPageGroup] } } },
      },
    },
  },
  build: { reportCompressedSize: false },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/**/*.{browser,long}.test.ts', 'tests/journeys/**'],
          ...pureTests,
        },
      },
      {
        extends: true,
        test: { name: 'long', include: ['tests/**/*.long.test.ts'], ...pureTests },
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
