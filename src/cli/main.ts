/** Command line: `npm run --silent check -- FILE [--json] [--cell M]`. */

import { readFileSync } from 'node:fs';
import { run } from './run.ts';

const result = run(process.argv.slice(2), (file) => readFileSync(file));
process.stdout.write(result.out);
process.stderr.write(result.err);
process.exitCode = result.code;
