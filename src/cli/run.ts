/** The command line as a pure function: arguments in, text and exit code out. */

import { parseArgs } from 'node:util';
import { issueLine } from '../model/issue.ts';
import { readProject } from '../project/evaluate-project.ts';
import { summary } from './summary.ts';

export interface RunResult {
  /** Standard output. */
  readonly out: string;
  /** Standard error. */
  readonly err: string;
  /** 0 no `stop` finding · 1 at least one · 2 the file or the call is not usable. */
  readonly code: 0 | 1 | 2;
}

const USAGE = `Use: npm run --silent check -- FILE [--json] [--cell M]

  FILE      a scene file (*.scene.json)
  --json    the report as JSON, and nothing else, on standard output
  --cell M  side of the grid's cells in metres (0.05 to 2) instead of the scene's own

Exit code 0: no stop finding; 1: at least one; 2: the file can't be read or is not valid.
Compares entered loads with entered limits. Not a structural check.
`;

/**
 * Runs one call.
 * @param args - arguments after the program's name, the command first
 * @param readFile - reads a file's bytes; throws where it can't
 * @returns what to print and the exit code
 */
export function run(args: readonly string[], readFile: (file: string) => Uint8Array): RunResult {
  const call = readCall(args);
  if ('refusal' in call) return { out: '', err: `${call.refusal}\n\n${USAGE}`, code: 2 };
  if (call.help) return { out: USAGE, err: '', code: 0 };
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(readFile(call.file));
  } catch (error) {
    return { out: '', err: `${call.file}: ${whyUnreadable(error)}\n`, code: 2 };
  }
  const reading = readProject(text, call.cellM);
  const messages = reading.issues.map((issue) => `${call.file}: ${issueLine(issue)}\n`).join('');
  if (!reading.project) return { out: '', err: messages, code: 2 };
  const { report, scene } = reading.project;
  const out = call.json ? `${JSON.stringify(report, null, 2)}\n` : summary(scene, report);
  return { out, err: messages, code: report.findings.some((finding) => finding.severity === 'stop') ? 1 : 0 };
}

type Call =
  | { readonly file: string; readonly json: boolean; readonly cellM: number | undefined; readonly help: boolean }
  | { readonly refusal: string };

function readCall(args: readonly string[]): Call {
  const [command, ...rest] = args;
  if (command === undefined || command === '--help' || command === '-h') return { file: '', json: false, cellM: undefined, help: true };
  if (command !== 'check') return { refusal: `There is no command "${command}"; there is: check.` };
  let parsed: ReturnType<typeof parseCheck>;
  try {
    parsed = parseCheck(rest);
  } catch (error) {
    return { refusal: `The call was not understood: ${(error as Error).message}` };
  }
  const { values, positionals } = parsed;
  if (values.help) return { file: '', json: false, cellM: undefined, help: true };
  if (positionals.length !== 1)
    return { refusal: `One scene file was expected, ${positionals.length === 0 ? 'none was' : `${positionals.length} were`} given.` };
  if (values.cell === undefined) return { file: positionals[0], json: values.json, cellM: undefined, help: false };
  const cellM = Number(values.cell);
  if (!(cellM >= 0.05 && cellM <= 2))
    return { refusal: `--cell takes metres from 0.05 to 2 with a decimal point, found "${values.cell}".` };
  return { file: positionals[0], json: values.json, cellM, help: false };
}

function parseCheck(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, cell: { type: 'string' }, help: { type: 'boolean', short: 'h', default: false } },
  });
}

function whyUnreadable(error: unknown): string {
  const code = (error as { code?: string }).code;
  if (code === 'ENOENT') return 'there is no such file. Check the name and the folder.';
  if (code === 'EISDIR') return 'this is a folder, a scene file was expected.';
  if (code === 'EACCES') return 'this file may not be read. Check its permissions.';
  if (code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return 'this is not UTF-8 text. Save the scene file as UTF-8.';
  return `the file can't be read (${(error as Error).message}).`;
}
