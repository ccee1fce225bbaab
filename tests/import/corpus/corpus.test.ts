/**
 * The bad inputs a good tool must have an answer to, by row of the list: the code, the words, the guess, the exit code; from the
 * library and on the command line alike.
 */

import { describe, expect, it } from 'vitest';
import { run } from '../../../src/cli/run.ts';
import { draftScene } from '../../../src/import/draft-scene.ts';
import { readingSteps } from '../../../src/import/read-drawing.ts';
import { readSceneText } from '../../../src/import/read-scene-text.ts';
import { runAtOnce } from '../../../src/import/steps.ts';
import type { LayerRoles } from '../../../src/model/drawing.ts';
import { type Issue, issueLine } from '../../../src/model/issue.ts';
import { readProject } from '../../../src/project/evaluate-project.ts';
import { rect, sceneOf } from '../../helpers/scene-builder.ts';
import type { BadInput } from './bad-input.ts';
import { DRAWING_ROWS } from './drawing-rows.ts';
import { KIND_ROWS } from './kind-rows.ts';
import { SCENE_ROWS } from './scene-rows.ts';
import { TABLE_ROWS } from './table-rows.ts';

const ROWS = [...DRAWING_ROWS, ...TABLE_ROWS, ...KIND_ROWS, ...SCENE_ROWS];
/** Rows whose case stands elsewhere, or waits for a part that is not there yet. */
const ELSEWHERE: Readonly<Record<number, string>> = {
  33: 'large files: tests/import/large-files.test.ts, tests/e2e/import.test.ts',
  37: 'a model that needs more memory than there is, a worker that dies: tests/store/import-store.test.ts; damaged models: tests/import/ifc/fuzz.test.ts',
  41: 'damaged links: tests/ui/scene-link.test.ts',
};

const bytesOf = ({ file }: BadInput) => {
  const content = file();
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
};

function callOf({ by, answers = {}, roles = {}, around }: BadInput): string[] {
  if (by === 'check') return ['check', 'bad.file'];
  return [
    'import',
    'bad.file',
    ...Object.entries(answers).flatMap(([id, value]) => ['--answer', `${id}=${value}`]),
    ...Object.entries(roles).flatMap(([layer, role]) => ['--role', `${layer}=${role}`]),
    ...(around === undefined ? [] : ['--deck', 'deck.file']),
  ];
}

function onCommandLine(input: BadInput) {
  const { around } = input;
  const deck = around && sceneOf({ deck: { outline: rect(around.minX, around.minY, around.maxX, around.maxY) } });
  return run(callOf(input), (file) => (file === 'deck.file' ? new TextEncoder().encode(JSON.stringify(deck)) : bytesOf(input)));
}

/** What the library says, without the command line. */
function inLibrary(input: BadInput) {
  if (input.by === 'check') {
    const decoded = readSceneText(bytesOf(input));
    if ('issue' in decoded) return { issues: [decoded.issue], mends: [], questions: [], rules: [] };
    const { issues, project } = readProject(decoded.text);
    return { issues, mends: decoded.mends, questions: [], rules: project?.report.findings.map(({ rule }) => rule) ?? [] };
  }
  const { answers = {}, around, roles } = input;
  const result = runAtOnce(readingSteps('bad.file', bytesOf(input), { answers, ...(around === undefined ? {} : { around }) }));
  const draft = roles === undefined || result.box === null ? null : draftScene(result, roles as LayerRoles);
  const ofScene: readonly Issue[] = draft?.scene
    ? readProject(JSON.stringify(draft.scene)).issues.map(({ line: _, ...issue }) => issue)
    : [];
  return { ...result, issues: [...result.issues, ...(draft?.issues ?? []), ...ofScene], rules: [] };
}

describe.each(ROWS.map((input) => [input.row, input.by, input.what, input] as const))('row %i, %s: %s', (_, __, ___, input) => {
  const { expected } = input;

  it('the library says it', () => {
    const { issues, mends, questions, rules } = inLibrary(input);
    const levelOf = (code: string) => issues.filter((issue) => issue.code === code).map(({ level }) => level);
    const told = JSON.stringify({ issues: issues.map(issueLine), mends, questions, rules });
    if (expected.error) expect(levelOf(expected.error), told).toContain('error');
    else expect(issues.filter(({ level }) => level === 'error').map(issueLine)).toEqual([]);
    if (expected.warning) expect(levelOf(expected.warning), told).toContain('warning');
    if (expected.mend)
      expect(
        mends.map(({ code }) => code),
        told,
      ).toContain(expected.mend);
    if (expected.finding) expect(rules, told).toContain(expected.finding);
    if (!expected.asks) return;
    const [id, guess] = expected.asks;
    expect(
      questions.find((question) => question.id === id),
      told,
    ).toMatchObject({ guess, taken: guess, certain: false, answered: false });
  });

  it('the command line says the same', () => {
    const { issues, mends, questions } = inLibrary(input);
    const result = onCommandLine(input);
    const told = result.out + result.err;
    for (const issue of issues) expect(result.err).toContain(issueLine(issue));
    if (!expected.error) for (const { says } of mends) expect(told).toContain(says);
    for (const words of expected.says) expect(told).toContain(words);
    const open = questions.some(({ answered, certain }) => !answered && !certain);
    if (expected.error) expect([result.code, result.out]).toEqual([2, '']);
    else if (input.by === 'import') expect(result.code).toBe(open ? 1 : 0);
    else expect(result.code).toBeLessThan(2);
  });
});

describe('the list', () => {
  it('has a case for each of its 44 rows, or says where it is', () => {
    const covered = new Set([...ROWS.map(({ row }) => row), ...Object.keys(ELSEWHERE).map(Number)]);
    expect(Array.from({ length: 44 }, (_, i) => i + 1).filter((row) => !covered.has(row))).toEqual([]);
  });

  it('row 44: a folder, and two files at once', () => {
    const folder = () => {
      throw Object.assign(new Error('EISDIR'), { code: 'EISDIR' });
    };
    expect(run(['import', 'plans'], folder)).toMatchObject({ code: 2, err: 'plans: this is a folder, a file was expected.\n' });
    expect(run(['import', 'a.dxf', 'b.dxf'], folder).err).toContain('One file was expected, 2 were given.');
  });

  it('every message is whole: something found, something expected, a sentence to act on', () => {
    for (const input of ROWS) {
      const { issues, mends, questions } = inLibrary(input);
      for (const { got, expected, mend } of issues) {
        expect(got).not.toMatch(/^\s*$|undefined|\[object|NaN m/);
        expect(expected).not.toMatch(/^\s*$|undefined|\[object/);
        expect(mend).toMatch(/^[A-Z].*[.?]$/);
      }
      for (const { says } of [...mends, ...questions]) expect(says).toMatch(/^(?!.*(?:undefined|\[object)).+$/);
      for (const { choices } of questions) for (const { says } of choices) expect(says).not.toMatch(/undefined|\[object/);
    }
  });
});
