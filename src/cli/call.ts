/** What a call of the command line asks for, read from its arguments. */

import { parseArgs } from 'node:util';
import type { ExportLanguage } from '../model/engine.ts';
import { EXPORT_TABLES, type ExportTableId } from '../project/export-tables.ts';

export type Call =
  | { readonly command: 'help' }
  | { readonly command: 'check'; readonly file: string; readonly json: boolean; readonly cellM: number | undefined }
  | { readonly command: 'export'; readonly file: string; readonly language: ExportLanguage; readonly to: ExportTo }
  | { readonly command: 'sources'; readonly file: string | undefined }
  | { readonly command: 'refused'; readonly why: string };

/** One table as CSV on standard output, or all of them in a workbook. */
export type ExportTo = { readonly table: ExportTableId } | { readonly workbook: string };

export const USAGE = `Use: npm run --silent check -- FILE [--json] [--cell M]
     npm run --silent export -- FILE [--table NAME | --xlsx OUT] [--language en|de]
     npm run --silent sources -- [FILE]

check: loads, depths, levels, findings
  FILE           a scene file (*.scene.json)
  --json         the report as JSON, and nothing else, on standard output
  --cell M       side of the grid's cells in metres (0.05 to 2) instead of the scene's own
export: a table as CSV on standard output
  --table NAME   ${EXPORT_TABLES.join(', ')} (the first, where left out)
  --xlsx OUT     all tables as a workbook, written to the file OUT
  --language L   en, or de: German headings, semicolons and decimal commas
sources: where every number of catalogue and rules comes from, and with a FILE what in it rests on each

Exit code 0: no stop finding; 1: at least one; 2: the file can't be read or is not valid.
Compares entered loads with entered limits. Not a structural check.
`;

const FLAGS = {
  json: { type: 'boolean' },
  cell: { type: 'string' },
  table: { type: 'string' },
  xlsx: { type: 'string' },
  language: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

type Flag = keyof typeof FLAGS;

const FLAGS_OF: Readonly<Record<string, readonly Flag[]>> = {
  check: ['json', 'cell'],
  export: ['table', 'xlsx', 'language'],
  sources: [],
};

/**
 * Reads a call.
 * @param args - arguments after the program's name, the command first
 * @returns what is asked for, or why it was not understood
 */
export function readCall(args: readonly string[]): Call {
  const [command, ...rest] = args;
  if (command === undefined || command === '--help' || command === '-h') return { command: 'help' };
  if (!(command in FLAGS_OF)) return refused(`There is no command "${command}"; there are: ${Object.keys(FLAGS_OF).join(', ')}.`);
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(command, rest);
  } catch (error) {
    return refused(`The call was not understood: ${(error as Error).message}`);
  }
  const { values, positionals } = parsed;
  if (values.help) return { command: 'help' };
  const least = command === 'sources' ? 0 : 1;
  if (positionals.length < least || positionals.length > 1) {
    return refused(`One scene file was expected, ${positionals.length === 0 ? 'none was' : `${positionals.length} were`} given.`);
  }
  const [file] = positionals;
  if (command === 'check') return checkCall(file, values);
  return command === 'export' ? exportCall(file, values) : { command: 'sources', file };
}

type Values = ReturnType<typeof parse>['values'];

function parse(command: string, args: readonly string[]) {
  const result = parseArgs({ args: [...args], allowPositionals: true, options: FLAGS });
  const known: readonly string[] = [...FLAGS_OF[command], 'help'];
  const foreign = Object.keys(result.values).find((flag) => !known.includes(flag));
  if (foreign) throw new Error(`"${command}" has no option "--${foreign}"`);
  return result;
}

function refused(why: string): Call {
  return { command: 'refused', why };
}

function checkCall(file: string, { json = false, cell }: Values): Call {
  if (cell === undefined) return { command: 'check', file, json, cellM: undefined };
  const cellM = Number(cell);
  if (cellM >= 0.05 && cellM <= 2) return { command: 'check', file, json, cellM };
  return refused(`--cell takes metres from 0.05 to 2 with a decimal point, found "${cell}".`);
}

function exportCall(file: string, { table, xlsx, language = 'en' }: Values): Call {
  if (language !== 'en' && language !== 'de') return refused(`--language takes en or de, found "${language}".`);
  if (table !== undefined && xlsx !== undefined) return refused('--table and --xlsx exclude each other: a workbook has all tables.');
  if (xlsx !== undefined) return { command: 'export', file, language, to: { workbook: xlsx } };
  const known = EXPORT_TABLES.find((id) => id === (table ?? EXPORT_TABLES[0]));
  if (!known) return refused(`--table takes one of: ${EXPORT_TABLES.join(', ')}; found "${table}".`);
  return { command: 'export', file, language, to: { table: known } };
}
