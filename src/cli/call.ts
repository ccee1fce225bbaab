/** What a call of the command line asks for, read from its arguments. */

import { parseArgs } from 'node:util';
import type { DrawnKind } from '../model/drawn-file.ts';
import type { ExportLanguage } from '../model/engine.ts';
import { EXPORT_TABLES, type ExportTableId } from '../model/export-table.ts';
import { isLanguage, type Language } from '../model/language.ts';
import type { PointM } from '../model/scene-file.ts';
import { type ChangeCall, readChangeCall } from './diff-call.ts';
import { type ImportCall, readImportCall } from './import-call.ts';
import { notParsed, type Why } from './refusal.ts';

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
  | { readonly command: 'refused'; readonly why: Why };

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
    return refused((t) => t.noCommand(command, [...Object.keys(FLAGS_OF), 'import', 'diff', 'lighten'].join(', ')));
  }
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(rest);
  } catch (error) {
    return refused(notParsed(error));
  }
  const { values, positionals } = parsed;
  const known: readonly string[] = [...FLAGS_OF[command], 'help'];
  const foreign = Object.keys(values).find((flag) => !known.includes(flag));
  if (foreign) return refused((t) => t.noOption(command, foreign));
  if (values.help) return { command: 'help' };
  const least = command === 'sources' ? 0 : 1;
  if (positionals.length < least || positionals.length > 1) {
    return refused((t) => t.oneScene(positionals.length));
  }
  const [file] = positionals;
  const { language = 'en' } = values;
  if (!isLanguage(language)) return refused((t) => t.language(language));
  if (command === 'check') return checkCall(file, values, language);
  return command === 'export' ? exportCall(file, values, language) : { command: 'sources', file, language };
}

function importCall(args: readonly string[]): Call {
  return orRefused(readImportCall(args));
}

function orRefused(call: ImportCall | ChangeCall | Why | null): Call {
  if (call === null) return { command: 'help' };
  return typeof call === 'function' ? refused(call) : call;
}

type Values = ReturnType<typeof parse>['values'];

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], allowPositionals: true, options: FLAGS });
}

function refused(why: Why): Call {
  return { command: 'refused', why };
}

function checkCall(file: string, { json = false, cell, variant }: Values, language: Language): Call {
  const asked = { command: 'check', file, json, variant, language } as const;
  if (cell === undefined) return { ...asked, cellM: undefined };
  const cellM = Number(cell);
  if (cellM >= 0.05 && cellM <= 2) return { ...asked, cellM };
  return refused((t) => t.cell(cell));
}

function exportCall(file: string, values: Values, language: Language): Call {
  const { table, xlsx } = values;
  const outputs = (['table', 'xlsx', 'svg', 'dxf', 'glb', 'html'] as const).filter((flag) => values[flag] !== undefined);
  if (outputs.length > 1) return refused((t) => t.outputs(outputs));
  const isDrawn = outputs.some((flag) => flag === 'svg' || flag === 'dxf' || flag === 'glb');
  const stray = DRAWN_FLAGS.find((flag) => values[flag] !== undefined);
  if (isDrawn) return drawnCall(file, language, values);
  if (values.html !== undefined) return handoverCall(file, language, values);
  if (stray !== undefined) return refused((t) => t.ofDrawing(stray));
  if (xlsx !== undefined) return { command: 'export', file, language, to: { workbook: xlsx } };
  const known = EXPORT_TABLES.find((id) => id === (table ?? EXPORT_TABLES[0]));
  if (!known) return refused((t) => t.table(table ?? ''));
  return { command: 'export', file, language, to: { table: known } };
}

const DRAWN_FLAGS = ['section', 'plan', 'scale', 'heights', 'stage', 'date'] as const;

function handoverCall(file: string, language: ExportLanguage, values: Values): Call {
  const { html = '', section, date } = values;
  const stray = (['plan', 'scale', 'heights', 'stage'] as const).find((flag) => values[flag] !== undefined);
  if (stray !== undefined) return refused((t) => t.notWithHtml(stray));
  const line = section === undefined ? undefined : lineOf(section);
  if (line === null) return refused((t) => t.line(section ?? ''));
  return { command: 'export', file, language, to: { handover: html, ...given({ line, date }) } };
}

function drawnCall(file: string, language: ExportLanguage, values: Values): Call {
  const { glb, svg, dxf, section, plan, stage, date } = values;
  if (glb !== undefined) {
    const stray = DRAWN_FLAGS.find((flag) => values[flag] !== undefined);
    if (stray !== undefined) return refused((t) => t.notWithGlb(stray));
    return { command: 'export', file, language, to: { drawn: 'model glb', out: glb } };
  }
  if (section === undefined && plan === undefined) return refused((t) => t.whatToDraw);
  const line = section === undefined ? undefined : lineOf(section);
  if (line === null) return refused((t) => t.line(section ?? ''));
  const stray = (['heights', 'stage'] as const).find((flag) => plan === true && values[flag] !== undefined);
  if (stray !== undefined) return refused((t) => t.ofSection(stray));
  const scale = aboveZero(values.scale);
  const exaggeration = aboveZero(values.heights);
  if (scale === null) return refused((t) => t.scale(values.scale ?? ''));
  if (exaggeration === null) return refused((t) => t.heights(values.heights ?? ''));
  if (exaggeration !== undefined && dxf !== undefined) return refused((t) => t.heightsForSvg);
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
