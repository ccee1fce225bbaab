/** Command line: `npm run --silent check -- FILE [--json] [--cell M]`, and `export` and `sources` likewise. */

import { readFileSync, writeFileSync } from 'node:fs';
import { loadSolver } from '../lighten/solver.ts';
import { languageAsked } from './refusal.ts';
import { run } from './run.ts';
import { WRITING } from './writing.ts';

/** Year, month and day here, not in Greenwich. */
const now = new Date();
const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

const args = process.argv.slice(2);
// Only one command asks for it, and it takes its time to load.
const solver = args[0] === 'lighten' ? await loadSolver() : undefined;
const result = run(args, (file) => readFileSync(file), today, solver);
process.stdout.write(result.out);
process.stderr.write(result.err);
process.exitCode = result.code;
if (result.file) {
  try {
    writeFileSync(result.file.name, await result.file.bytes);
  } catch (error) {
    process.stderr.write(`${WRITING[languageAsked(args)].calls.unwritable(result.file.name, (error as Error).message)}\n`);
    process.exitCode = 2;
  }
}
