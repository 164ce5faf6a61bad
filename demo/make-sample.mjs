/** Writes the made-up notebook's files anew: `npm run sample`. A test holds them to the story. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const { module } = await runnerImport(here('./sample-files.ts'), { configFile: false });
const { backup, csv } = module.sampleFiles();
writeFileSync(here('./sample-notebook.json'), backup);
writeFileSync(here('../static/sample-notebook.json'), backup);
writeFileSync(here('./sample-log.csv'), csv);
console.log(`${backup.length} characters of notebook, ${csv.length} of table`);
