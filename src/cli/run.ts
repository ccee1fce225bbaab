/** The command line as a pure function: arguments in, text and exit code out. */

import { exportDrawn } from '../export/drawn-file.ts';
import { exportFile } from '../export/export-file.ts';
import { exportHandover } from '../export/handover.ts';
import { sectionSource } from '../export/picture-source.ts';
import type { Mesher } from '../import/ifc/mesher.ts';
import { importIssueIn, mendIn } from '../import/import-language.ts';
import { readSceneText } from '../import/read-scene-text.ts';
import type { Solver } from '../lighten/solver.ts';
import type { ExportLanguage } from '../model/engine.ts';
import { issueLineIn } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { sceneOfVariant } from '../project/compare-variant.ts';
import { type Project, readProject } from '../project/evaluate-project.ts';
import { csvText } from '../project/export-csv.ts';
import { exportTable } from '../project/export-tables.ts';
import { speakProject } from '../project/speak.ts';
import { issueIn } from '../scene/issue-language.ts';
import { type Call, type DrawnTo, type HandoverTo, readCall } from './call.ts';
import { runDiff } from './diff-run.ts';
import type { ImportCall } from './import-call.ts';
import { runImport } from './import-run.ts';
import { runLighten } from './lighten-run.ts';
import { languageAsked } from './refusal.ts';
import { sourceLines } from './source-lines.ts';
import { summary } from './summary.ts';
import { REFUSALS_DE, USAGE_DE } from './words/de-usage.ts';
import { REFUSALS_EN, type RefusalWords, USAGE_EN } from './words/en-usage.ts';
import { WRITING } from './writing.ts';

export interface RunResult {
  /** Standard output. */
  readonly out: string;
  /** Standard error. */
  readonly err: string;
  /** 0 no `stop` finding · 1 at least one · 2 the file or the call is not usable. */
  readonly code: 0 | 1 | 2;
  /** A file to be written. */
  readonly file?: { readonly name: string; readonly bytes: Promise<Uint8Array> };
}

type ReadFile = (file: string) => Uint8Array;

/** What takes its time to load, and only some commands ask for. */
interface Loaded {
  /** For `lighten`, which can't do without. */
  readonly solver?: Solver;
  /** For models read by `import`. */
  readonly mesher?: Mesher;
}

const USAGES: Readonly<Record<Language, { readonly usage: string; readonly refusals: RefusalWords }>> = {
  en: { usage: USAGE_EN, refusals: REFUSALS_EN },
  de: { usage: USAGE_DE, refusals: REFUSALS_DE },
};

/**
 * Runs one call.
 * @param args - arguments after the program's name, the command first
 * @param readFile - reads a file's bytes; throws where it can't
 * @param today - date for drawings that are given none
 * @param loaded - what was loaded for this command
 * @returns what to print and to write, and the exit code
 */
export function run(args: readonly string[], readFile: ReadFile, today?: string, { solver, mesher }: Loaded = {}): RunResult {
  const call = readCall(args);
  const { usage, refusals } = USAGES[languageAsked(args)];
  switch (call.command) {
    case 'help':
      return { out: usage, err: '', code: 0 };
    case 'refused':
      return { out: '', err: `${call.why(refusals)}\n\n${usage}`, code: 2 };
    case 'check':
      return withProject(call.file, readFile, call.cellM, (project) => check(call, project), call.language);
    case 'export':
      return withProject(call.file, readFile, undefined, (project) => exported(call, project, today), call.language);
    case 'import':
      return imported(call, readFile, mesher);
    case 'diff':
      return diffed(call, readFile);
    case 'lighten':
      return withProject(
        call.file,
        readFile,
        undefined,
        (project) => {
          if (solver === undefined) throw new RangeError('run: lighten without a solver');
          return runLighten(solver, call, speakProject(project, call.language));
        },
        call.language,
      );
    case 'sources':
      if (call.file === undefined) return { out: sourceLines(null, call.language), err: '', code: 0 };
      return withProject(
        call.file,
        readFile,
        undefined,
        ({ scene }) => ({ out: sourceLines(scene, call.language), code: 0 }),
        call.language,
      );
  }
}

type Done = Omit<RunResult, 'err'> & { readonly err?: string };

/** Reads and evaluates a scene file; its messages go to standard error. */
// biome-ignore lint/complexity/useMaxParams: the last two say what to do and in which words
function withProject(
  file: string,
  readFile: ReadFile,
  cellM: number | undefined,
  then: (project: Project) => Done,
  language: Language,
): RunResult {
  let bytes: Uint8Array;
  try {
    bytes = readFile(file);
  } catch (error) {
    return { out: '', err: `${file}: ${whyUnreadable(error, language)}\n`, code: 2 };
  }
  const decoded = readSceneText(bytes);
  if ('issue' in decoded) return { out: '', err: `${file}: ${issueLineIn(importIssueIn(decoded.issue, language), language)}\n`, code: 2 };
  const reading = readProject(decoded.text, cellM);
  const { note } = WRITING[language].calls;
  const notes = decoded.mends.map((mend) => `${file}: ${note} ${mend.code}: ${mendIn(mend, language).says}\n`);
  const err = [...notes, ...reading.issues.map((issue) => `${file}: ${issueLineIn(issueIn(issue, language), language)}\n`)].join('');
  if (!reading.project) return { out: '', err, code: 2 };
  const done = then(reading.project);
  return { ...done, err: `${err}${done.err ?? ''}` };
}

function imported(call: ImportCall, readFile: ReadFile, mesher: Mesher | undefined): RunResult {
  let last = call.file;
  try {
    return runImport(
      call,
      (file) => {
        last = file;
        return readFile(file);
      },
      mesher,
    );
  } catch (error) {
    return { out: '', err: `${last}: ${whyUnreadable(error, call.language)}\n`, code: 2 };
  }
}

function diffed({ before, after, json, language }: Extract<Call, { command: 'diff' }>, readFile: ReadFile): RunResult {
  const then = (one: Project): Done =>
    withProject(after, readFile, undefined, (other) => runDiff(one, other, { json, language }), language);
  return withProject(before, readFile, undefined, then, language);
}

type CheckCall = Extract<Call, { command: 'check' }>;

function check(call: CheckCall, project: Project): Done {
  if (call.variant === undefined) return judged(call, project, '');
  const { calls } = WRITING[call.language];
  const { variants = [] } = project.scene;
  const variant = variants.find(({ id }) => id === call.variant);
  if (variant === undefined) {
    const known = variants.map(({ id, name }) => `${id} (${name})`);
    return { out: '', err: `${call.file}: ${calls.noVariant(call.variant, known)}\n`, code: 2 };
  }
  const { project: own, issues } = readProject(JSON.stringify(sceneOfVariant(project.scene, variant)), call.cellM);
  // Its lines would count in a text that nobody has.
  const told = issues.map(({ line: _, ...issue }) => issueLineIn(issueIn(issue, call.language), call.language));
  const err = told.map((says) => `${call.file}: ${calls.ofVariant(variant.id)}: ${says}\n`).join('');
  if (own === null) return { out: '', err, code: 2 };
  return { ...judged(call, own, `${calls.judgedVariant(variant.id, variant.name)}\n`), err };
}

function judged({ json, language }: CheckCall, project: Project, heading: string): Done {
  const { report, scene } = speakProject(project, language);
  const out = json ? `${JSON.stringify(report, null, 2)}\n` : `${heading}${summary(scene, report, language)}`;
  return { out, code: report.findings.some((finding) => finding.severity === 'stop') ? 1 : 0 };
}

/** What is exported says by itself which bays are over: the exit code only tells whether there is a table. */
function exported({ to, language }: Extract<Call, { command: 'export' }>, project: Project, today: string | undefined): Done {
  if ('drawn' in to) return drawn({ ...(today === undefined ? {} : { date: today }), ...to }, language, project);
  if ('handover' in to) return handover({ date: today ?? '', ...to }, language, project);
  if ('table' in to) return { out: csvText(exportTable(to.table, project.scene, project.report, language), language), code: 0 };
  const bytes = exportFile('take-off xlsx', project, language).then((file) => file.bytes);
  return { out: '', code: 0, file: { name: to.workbook, bytes } };
}

function handover(
  { handover: name, date, line }: HandoverTo & { readonly date: string },
  language: ExportLanguage,
  project: Project,
): Done {
  const options = { language, date, pictures: [], ...(line === undefined ? {} : { line }) };
  const bytes = exportHandover({ project, source: sectionSource(project) }, options).then((file) => file.bytes);
  return { out: '', code: 0, file: { name, bytes } };
}

function drawn({ drawn: kind, out, stage, ...options }: DrawnTo, language: ExportLanguage, project: Project): Done {
  const { stages } = project.evaluation.plan;
  const index = stage === undefined ? null : stages.findIndex(({ id }) => id === stage);
  if (index === -1)
    return { out: '', err: `${USAGES[language].refusals.noStage(stage ?? '', stages.map(({ id }) => id).join(', '))}\n`, code: 2 };
  const source = sectionSource(project);
  const bytes = exportDrawn(kind, { project, source }, { ...options, language, stage: index }).then((file) => file.bytes);
  return { out: '', code: 0, file: { name: out, bytes } };
}

function whyUnreadable(error: unknown, language: Language): string {
  const { unreadable } = WRITING[language].calls;
  const code = (error as { code?: string }).code;
  if (code === 'ENOENT') return unreadable.missing;
  if (code === 'EISDIR') return unreadable.folder;
  return code === 'EACCES' ? unreadable.forbidden : unreadable.other((error as Error).message);
}
