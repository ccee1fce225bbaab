/** What a call of the command line asks for, read from its arguments. */

import { parseArgs } from 'node:util';
import type { DrawnKind } from '../model/drawn-file.ts';
import type { ExportLanguage } from '../model/engine.ts';
import { EXPORT_TABLES, type ExportTableId } from '../model/export-table.ts';
import { isLanguage, type Language } from '../model/language.ts';
import type { PointM } from '../model/scene-file.ts';
import { CHANGE_USAGE, type ChangeCall, languageRefused, readChangeCall } from './diff-call.ts';
import { DIFF_HELP } from './diff-run.ts';
import { IMPORT_HELP, IMPORT_USAGE, type ImportCall, readImportCall } from './import-call.ts';
import { LIGHTEN_HELP } from './lighten-run.ts';

export type Call =
  | { readonly command: 'help' }
  | {
      readonly command: 'check';
      readonly file: string;
      readonly json: boolean;
      readonly cellM: number | undefined;
      /** Id of a kept variant that is judged instead of the scheme the scene shows. */
      readonly variant: string | undefined;
      readonly language: Language;
    }
  | { readonly command: 'export'; readonly file: string; readonly language: ExportLanguage; readonly to: ExportTo }
  | { readonly command: 'sources'; readonly file: string | undefined; readonly language: Language }
  | ImportCall
  | ChangeCall
  | { readonly command: 'refused'; readonly why: string };

/** One table as CSV on standard output, all of them in a workbook, or a drawing or model in a file. */
export type ExportTo = { readonly table: ExportTableId } | { readonly workbook: string } | HandoverTo | DrawnTo;

export interface HandoverTo {
  readonly handover: string;
  readonly line?: readonly PointM[];
  readonly date?: string;
}

export interface DrawnTo {
  readonly drawn: DrawnKind;
  readonly out: string;
  readonly line?: readonly PointM[];
  readonly scale?: number;
  readonly exaggeration?: number;
  /** By its id. */
  readonly stage?: string;
  readonly date?: string;
}

export const USAGE = `Use: npm run --silent check -- FILE [--json] [--cell M] [--variant ID] [--language en|de]
     npm run --silent export -- FILE [--table NAME | --xlsx OUT] [--language en|de]
     npm run --silent export -- FILE --section X,Y,X,Y (--svg OUT | --dxf OUT) [--scale N] [--heights N] [--stage ID]
     npm run --silent export -- FILE --plan (--svg OUT | --dxf OUT) [--scale N] [--section X,Y,X,Y]
     npm run --silent export -- FILE --glb OUT
     npm run --silent export -- FILE --html OUT [--language en|de] [--section X,Y,X,Y]
     npm run --silent sources -- [FILE] [--language en|de]
${CHANGE_USAGE}${IMPORT_USAGE}
check: loads, depths, levels, findings
  FILE           a scene file (*.scene.json)
  --json         the report as JSON, and nothing else, on standard output
  --cell M       side of the grid's cells in metres (0.05 to 2) instead of the scene's own
  --variant ID   judges a variant kept in the file instead of the scheme it shows
  --language L   en, or de: headings, findings, messages and names in German
export: a table as CSV on standard output
  --table NAME   ${EXPORT_TABLES.join(', ')} (the first, where left out)
  --xlsx OUT     all tables as a workbook, written to the file OUT
  --language L   en, or de: German headings, semicolons and decimal commas
  --section LINE section along a line: x,y,x,y … in metres of the file (--section=-1,2,… where the first is negative)
  --plan         plan of the deck; with --section its line is marked
  --svg OUT      drawing in millimetres on paper, written to the file OUT
  --dxf OUT      the same in metres
  --scale N      1:N (50 for sections, 100 for plans, where left out)
  --heights N    draws the heights of a section N times as large (SVG only)
  --stage ID     section at the end of a stage instead of the finished garden
  --date D       date in the title block, today's where left out
  --html OUT     handover: everything known of the scene in one page that opens without a server
  --glb OUT      the finished garden as a model: metres, Y up, one node per layer and zone
sources: where every number of catalogue and rules comes from, and with a FILE what in it rests on each
${DIFF_HELP}${LIGHTEN_HELP}${IMPORT_HELP}
Exit code 0: no stop finding; 1: at least one; 2: the file can't be read or is not valid.
Compares entered loads with entered limits. Not a structural check.
`;

const FLAGS = {
  json: { type: 'boolean' },
  cell: { type: 'string' },
  variant: { type: 'string' },
  table: { type: 'string' },
  xlsx: { type: 'string' },
  language: { type: 'string' },
  section: { type: 'string' },
  plan: { type: 'boolean' },
  svg: { type: 'string' },
  dxf: { type: 'string' },
  glb: { type: 'string' },
  html: { type: 'string' },
  scale: { type: 'string' },
  heights: { type: 'string' },
  stage: { type: 'string' },
  date: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

type Flag = keyof typeof FLAGS;

const FLAGS_OF: Readonly<Record<string, readonly Flag[]>> = {
  check: ['json', 'cell', 'variant', 'language'],
  export: ['table', 'xlsx', 'language', 'section', 'plan', 'svg', 'dxf', 'glb', 'html', 'scale', 'heights', 'stage', 'date'],
  sources: ['language'],
};

/**
 * Reads a call.
 * @param args - arguments after the program's name, the command first
 * @returns what is asked for, or why it was not understood
 */
export function readCall(args: readonly string[]): Call {
  const [command, ...rest] = args;
  if (command === undefined || command === '--help' || command === '-h') return { command: 'help' };
  if (command === 'import') return importCall(rest);
  if (command === 'diff' || command === 'lighten') return orRefused(readChangeCall(command, rest));
  if (!Object.hasOwn(FLAGS_OF, command)) {
    return refused(`There is no command "${command}"; there are: ${[...Object.keys(FLAGS_OF), 'import', 'diff', 'lighten'].join(', ')}.`);
  }
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
  const { language = 'en' } = values;
  if (!isLanguage(language)) return refused(languageRefused(language));
  if (command === 'check') return checkCall(file, values, language);
  return command === 'export' ? exportCall(file, values, language) : { command: 'sources', file, language };
}

function importCall(args: readonly string[]): Call {
  return orRefused(readImportCall(args));
}

function orRefused(call: ImportCall | ChangeCall | string | null): Call {
  if (call === null) return { command: 'help' };
  return typeof call === 'string' ? refused(call) : call;
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

function checkCall(file: string, { json = false, cell, variant }: Values, language: Language): Call {
  const asked = { command: 'check', file, json, variant, language } as const;
  if (cell === undefined) return { ...asked, cellM: undefined };
  const cellM = Number(cell);
  if (cellM >= 0.05 && cellM <= 2) return { ...asked, cellM };
  return refused(`--cell takes metres from 0.05 to 2 with a decimal point, found "${cell}".`);
}

function exportCall(file: string, values: Values, language: Language): Call {
  const { table, xlsx } = values;
  const outputs = (['table', 'xlsx', 'svg', 'dxf', 'glb', 'html'] as const).filter((flag) => values[flag] !== undefined);
  if (outputs.length > 1) return refused(`--${outputs.join(' and --')} exclude each other: each makes a file or a table of its own.`);
  const isDrawn = outputs.some((flag) => flag === 'svg' || flag === 'dxf' || flag === 'glb');
  const stray = DRAWN_FLAGS.find((flag) => values[flag] !== undefined);
  if (isDrawn) return drawnCall(file, language, values);
  if (values.html !== undefined) return handoverCall(file, language, values);
  if (stray !== undefined) return refused(`--${stray} belongs to a drawing: say --svg OUT or --dxf OUT too.`);
  if (xlsx !== undefined) return { command: 'export', file, language, to: { workbook: xlsx } };
  const known = EXPORT_TABLES.find((id) => id === (table ?? EXPORT_TABLES[0]));
  if (!known) return refused(`--table takes one of: ${EXPORT_TABLES.join(', ')}; found "${table}".`);
  return { command: 'export', file, language, to: { table: known } };
}

const DRAWN_FLAGS = ['section', 'plan', 'scale', 'heights', 'stage', 'date'] as const;

function handoverCall(file: string, language: ExportLanguage, values: Values): Call {
  const { html = '', section, date } = values;
  const stray = (['plan', 'scale', 'heights', 'stage'] as const).find((flag) => values[flag] !== undefined);
  if (stray !== undefined) return refused(`--${stray} belongs to a drawing; --html writes the plan at its own scale.`);
  const line = section === undefined ? undefined : lineOf(section);
  if (line === null) return refused(lineRefused(section));
  return { command: 'export', file, language, to: { handover: html, ...given({ line, date }) } };
}

const lineRefused = (found: string | undefined) =>
  `--section takes x,y of two points or more, in metres with decimal points; found "${found}".`;

function drawnCall(file: string, language: ExportLanguage, values: Values): Call {
  const { glb, svg, dxf, section, plan, stage, date } = values;
  if (glb !== undefined) {
    const stray = DRAWN_FLAGS.find((flag) => values[flag] !== undefined);
    if (stray !== undefined) return refused(`--${stray} belongs to a drawing; --glb writes the whole model.`);
    return { command: 'export', file, language, to: { drawn: 'model glb', out: glb } };
  }
  if (section === undefined && plan === undefined)
    return refused('--svg and --dxf draw a section or a plan: say --section X,Y,X,Y or --plan.');
  const line = section === undefined ? undefined : lineOf(section);
  if (line === null) return refused(lineRefused(section));
  const stray = (['heights', 'stage'] as const).find((flag) => plan === true && values[flag] !== undefined);
  if (stray !== undefined) return refused(`--${stray} belongs to a section; a plan has none.`);
  const scale = aboveZero(values.scale);
  const exaggeration = aboveZero(values.heights);
  if (scale === null) return refused(`--scale takes N of 1:N, a number above 0; found "${values.scale}".`);
  if (exaggeration === null) return refused(`--heights takes a number above 0; found "${values.heights}".`);
  if (exaggeration !== undefined && dxf !== undefined) return refused('--heights is for --svg: a DXF is always true in height.');
  const what = plan ? 'plan' : 'section';
  const drawn: DrawnKind = svg === undefined ? `${what} dxf` : `${what} svg`;
  const to: DrawnTo = { drawn, out: (svg ?? dxf) as string, ...given({ line, scale, exaggeration, stage, date }) };
  return { command: 'export', file, language, to };
}

/** Without what is undefined. */
function given<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

/** Null where the text is no line. */
function lineOf(text: string): PointM[] | null {
  const numbers = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  if (numbers.length < 4 || numbers.length % 2 === 1 || !numbers.every(Number.isFinite)) return null;
  return Array.from({ length: numbers.length / 2 }, (_, i): PointM => [numbers[2 * i], numbers[2 * i + 1]]);
}

/** Null where the text is no number above 0; undefined where there is none. */
function aboveZero(text: string | undefined): number | null | undefined {
  if (text === undefined) return undefined;
  const value = Number(text);
  return text.trim() !== '' && value > 0 && Number.isFinite(value) ? value : null;
}
