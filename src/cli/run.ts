/** The command line as a pure function: arguments in, text and exit code out. */

import { exportDrawn } from '../export/drawn-file.ts';
import { exportFile } from '../export/export-file.ts';
import { exportHandover } from '../export/handover.ts';
import { sectionSource } from '../export/picture-source.ts';
import { readSceneText } from '../import/read-scene-text.ts';
import type { ExportLanguage } from '../model/engine.ts';
import { issueLine, issueLineIn } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { type Project, readProject } from '../project/evaluate-project.ts';
import { csvText } from '../project/export-csv.ts';
import { exportTable } from '../project/export-tables.ts';
import { speakProject } from '../project/speak.ts';
import { issueIn } from '../scene/issue-language.ts';
import { type Call, type DrawnTo, type HandoverTo, readCall, USAGE } from './call.ts';
import { runDiff } from './diff-run.ts';
import type { ImportCall } from './import-call.ts';
import { runImport } from './import-run.ts';
import { runLighten } from './lighten-run.ts';
import { sourceLines } from './source-lines.ts';
import { summary } from './summary.ts';

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

/**
 * Runs one call.
 * @param args - arguments after the program's name, the command first
 * @param readFile - reads a file's bytes; throws where it can't
 * @param today - date for drawings that are given none
 * @returns what to print and to write, and the exit code
 */
export function run(args: readonly string[], readFile: ReadFile, today?: string): RunResult {
  const call = readCall(args);
  switch (call.command) {
    case 'help':
      return { out: USAGE, err: '', code: 0 };
    case 'refused':
      return { out: '', err: `${call.why}\n\n${USAGE}`, code: 2 };
    case 'check':
      return withProject(call.file, readFile, call.cellM, (project) => check(call, speakProject(project, call.language)), call.language);
    case 'export':
      return withProject(call.file, readFile, undefined, (project) => exported(call, project, today), call.language);
    case 'import':
      return imported(call, readFile);
    case 'diff':
      return withProject(call.before, readFile, undefined, (before) =>
        withProject(call.after, readFile, undefined, (after) => runDiff(before, after, call.json)),
      );
    case 'lighten':
      return withProject(call.file, readFile, undefined, (project) => runLighten(call, project));
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
  language: Language = 'en',
): RunResult {
  let bytes: Uint8Array;
  try {
    bytes = readFile(file);
  } catch (error) {
    return { out: '', err: `${file}: ${whyUnreadable(error)}\n`, code: 2 };
  }
  const decoded = readSceneText(bytes);
  if ('issue' in decoded) return { out: '', err: `${file}: ${issueLine(decoded.issue)}\n`, code: 2 };
  const reading = readProject(decoded.text, cellM);
  const notes = decoded.mends.map(({ code, says }) => `${file}: note ${code}: ${says}\n`);
  const err = [...notes, ...reading.issues.map((issue) => `${file}: ${issueLineIn(issueIn(issue, language), language)}\n`)].join('');
  if (!reading.project) return { out: '', err, code: 2 };
  const done = then(reading.project);
  return { ...done, err: `${err}${done.err ?? ''}` };
}

function imported(call: ImportCall, readFile: ReadFile): RunResult {
  let last = call.file;
  try {
    return runImport(call, (file) => {
      last = file;
      return readFile(file);
    });
  } catch (error) {
    return { out: '', err: `${last}: ${whyUnreadable(error)}\n`, code: 2 };
  }
}

function check({ json }: Extract<Call, { command: 'check' }>, { report, scene }: Project): Done {
  const out = json ? `${JSON.stringify(report, null, 2)}\n` : summary(scene, report);
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
    return { out: '', err: `There is no stage "${stage}"; there are: ${stages.map(({ id }) => id).join(', ')}.\n`, code: 2 };
  const source = sectionSource(project);
  const bytes = exportDrawn(kind, { project, source }, { ...options, language, stage: index }).then((file) => file.bytes);
  return { out: '', code: 0, file: { name: out, bytes } };
}

function whyUnreadable(error: unknown): string {
  const code = (error as { code?: string }).code;
  if (code === 'ENOENT') return 'there is no such file. Check the name and the folder.';
  if (code === 'EISDIR') return 'this is a folder, a file was expected.';
  if (code === 'EACCES') return 'this file may not be read. Check its permissions.';
  return `the file can't be read (${(error as Error).message}).`;
}
