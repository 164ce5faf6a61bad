/**
 * Runs everything that must hold, installs what is missing for it, and ends in one line:
 * `N passed, N failed`. `--checks` runs only format, lint and types.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ensureChromium } from './ensure-chromium.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const onlyChecks = process.argv.includes('--checks');
const results = 'test-results';
const tally = { passed: 0, failed: 0 };

/** The zone and language of most runs; one run uses others, far away. */
const home = { TZ: 'America/New_York', LC_ALL: 'en_US.UTF-8', LANG: 'en_US.UTF-8' };
const away = { TZ: 'Pacific/Apia', LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8' };

async function run(name, command, env = {}) {
  const began = Date.now();
  const [program, ...args] = command.split(' ');
  const child = spawn(program, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...home, ...env },
  });
  const [status] = await once(child, 'exit');
  console.log(`  ${name}: ${status === 0 ? 'good' : 'NOT good'}, ${Date.now() - began} ms`);
  return status === 0;
}

async function check(name, command) {
  tally[(await run(name, command)) ? 'passed' : 'failed'] += 1;
}

/** Runs a test program that writes its results as JSON, and adds them up. */
async function tests(name, command, file, env) {
  console.log(`\n— ${name}`);
  const path = `${results}/${file}`;
  rmSync(path, { force: true });
  const good = await run(name, command, env);
  let counted = { passed: 0, failed: 0 };
  try {
    counted = countOf(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    console.log(`  ${name} wrote no results.`);
  }
  tally.passed += counted.passed;
  tally.failed += counted.failed;
  // A run that stops before its tests, or finds none, has failed.
  if ((!good && counted.failed === 0) || counted.passed === 0) tally.failed += 1;
}

const countOf = (report) =>
  'numPassedTests' in report
    ? { passed: report.numPassedTests, failed: report.numFailedTests }
    : { passed: report.stats.expected + report.stats.flaky, failed: report.stats.unexpected };

mkdirSync(results, { recursive: true });
await run('prepare', 'npx svelte-kit sync');
console.log('\n— checks');
// Lint takes as long as the others together: they go beside it.
await Promise.all([check('lint', 'npx eslint .'), otherChecks()]);

async function otherChecks() {
  await check('format', 'npx prettier --check --log-level warn .');
  await check('types of core, alone', 'npx tsc --noEmit -p src/lib/core');
  await check('types', 'npx svelte-check --threshold warning --output human');
}

if (!onlyChecks) {
  ensureChromium();
  const vitest = (project, file) =>
    `npx vitest run --project ${project} --reporter=dot --reporter=json --outputFile=${results}/${file}`;
  await tests('core tests', vitest('core', 'core.json'), 'core.json');
  await tests('long tests', vitest('long', 'long.json'), 'long.json');
  await tests(
    'core tests, far away',
    `${vitest('core', 'away.json')} tests/core`,
    'away.json',
    away,
  );
  await tests('browser tests', vitest('browser', 'browser.json'), 'browser.json');
  await check('static build', 'npm run --silent build:static');
  await check('server build', 'npm run --silent build');
  await tests(
    'journeys',
    'npx playwright test -c tests/journeys/playwright.config.ts',
    'journeys.json',
    {
      PLAYWRIGHT_JSON_OUTPUT_FILE: `${process.cwd()}/${results}/journeys.json`,
    },
  );
}

console.log(`\n${tally.passed} passed, ${tally.failed} failed`);
process.exitCode = tally.failed === 0 ? 0 : 1;
