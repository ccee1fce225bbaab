/** The command `diff`: what differs between two scene files, load plan first, and what comes out otherwise. */

import type { Language } from '../model/language.ts';
import { diffReports } from '../project/diff-reports.ts';
import { diffScenes } from '../project/diff-scenes.ts';
import { DIFF_TEXT, diffLines } from '../project/diff-text.ts';
import type { Project } from '../project/evaluate-project.ts';

interface DiffWish {
  readonly json: boolean;
  readonly language: Language;
}

/** Text or JSON of a comparison; the exit code is that of `check` on the second scene. */
export function runDiff(a: Project, b: Project, { json, language }: DiffWish): { readonly out: string; readonly code: 0 | 1 } {
  const changes = diffScenes(a.scene, b.scene);
  const report = diffReports(a.report, b.report);
  const out = json
    ? JSON.stringify({ format: 'loamdeck-diff', version: 1, changes, report }, null, 2)
    : diffLines(changes, report, DIFF_TEXT[language]).join('\n');
  return { out: `${out}\n`, code: b.report.findings.some(({ severity }) => severity === 'stop') ? 1 : 0 };
}
