/** Command line: `npm run --silent check -- FILE [--json] [--cell M]`, and `export` and `sources` likewise. */

import { readFileSync, writeFileSync } from 'node:fs';
import { looksLikeModel } from '../import/file-kind.ts';
import { loadMesher } from '../import/ifc/web-ifc-mesher.ts';
import { loadSolver } from '../lighten/solver.ts';
import { languageAsked } from './refusal.ts';
import { run } from './run.ts';
import { WRITING } from './writing.ts';

/** Year, month and day here, not in Greenwich. */
const now = new Date();
const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

const args = process.argv.slice(2);
// Only one command asks for it, and it takes its time to load.
const loaded = args[0] === 'lighten' ? { solver: await loadSolver() } : namesModel(args) ? { mesher: await loadMesher() } : {};
const result = run(args, (file) => readFileSync(file), today, loaded);
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

/** Whether a model is to be read. */
function namesModel([command, ...others]: readonly string[]): boolean {
  return command === 'import' && others.some(beginsAsModel);
}

/** What is no file is told by the command itself. */
function beginsAsModel(file: string): boolean {
  try {
    return looksLikeModel(readFileSync(file));
  } catch {
    return false;
  }
}
