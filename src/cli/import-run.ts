/** `import` on the command line: what was read, asked, changed; on wish the draft of a scene. */

import { type Draft, draftScene } from '../import/draft-scene.ts';
import { readDrawing } from '../import/read-drawing.ts';
import type { Answers, ImportResult, LayerRoles, Question, WaitingPart } from '../model/drawing.ts';
import { type Issue, issueLine } from '../model/issue.ts';
import { KNOWN_IDS } from '../project/materials.ts';
import { parseScene } from '../scene/parse-scene.ts';
import type { ImportCall } from './import-call.ts';
import { fixed, table } from './text-table.ts';

interface Done {
  readonly out: string;
  readonly err: string;
  readonly code: 0 | 1 | 2;
  readonly file?: { readonly name: string; readonly bytes: Promise<Uint8Array> };
}

/**
 * Reads a drawing and says what came of it.
 * @param call - what was asked for
 * @param bytes - the file
 * @param answersText - text of the file with answers, if one was named
 */
export function runImport(call: ImportCall, bytes: Uint8Array, answersText: string | null): Done {
  const answers = allAnswers(call.answers, answersText);
  if (answers === null)
    return { out: '', err: `${call.answersFile}: answers are expected as JSON, for example { "unit": "mm" }.\n`, code: 2 };
  const result = readDrawing(call.file, bytes, answers);
  const draft = Object.keys(call.roles).length > 0 && result.box !== null ? draftScene(result, call.roles as LayerRoles) : null;
  const sceneText = draft?.scene ? `${JSON.stringify(draft.scene, null, 2)}\n` : null;
  const issues = [...result.issues, ...(draft?.issues ?? []), ...(sceneText === null ? [] : parseScene(sceneText, KNOWN_IDS).issues)];
  const failed = issues.some(({ level }) => level === 'error');
  const out = call.json
    ? `${JSON.stringify({ ...result, issues, ...(draft === null ? {} : { draft }) }, null, 2)}\n`
    : importText(result, draft);
  return {
    out: failed && !call.json ? '' : out,
    err: issues.map((issue: Issue) => `${call.file}: ${issueLine(issue)}\n`).join(''),
    code: failed ? 2 : openOf(result).length > 0 ? 1 : 0,
    ...(call.out === undefined || sceneText === null || failed
      ? {}
      : { file: { name: call.out, bytes: Promise.resolve(new TextEncoder().encode(sceneText)) } }),
  };
}

/** Those on the command line come before those of the file. */
function allAnswers(own: Answers, text: string | null): Answers | null {
  if (text === null) return own;
  try {
    const read: unknown = JSON.parse(text);
    if (typeof read !== 'object' || read === null || Array.isArray(read)) return null;
    const entries = Object.entries(read).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
    return { ...Object.fromEntries(entries), ...own };
  } catch {
    return null;
  }
}

const openOf = ({ questions }: ImportResult): readonly Question[] => questions.filter(({ answered, certain }) => !answered && !certain);

function importText(result: ImportResult, draft: Draft | null): string {
  if (result.kind === 'scene') return `${result.name}: a scene. Check it with: npm run --silent check -- ${result.name}\n`;
  const { box } = result;
  const size =
    box === null ? '' : `, ${fixed(box.maxX - box.minX)} × ${fixed(box.maxY - box.minY)} m from (${fixed(box.minX)}, ${fixed(box.minY)})`;
  const open = openOf(result);
  const lines = [
    `${result.name}: ${result.kind}, ${result.points} points${size}`,
    '',
    'Layers',
    ...table(
      ['layer', 'shapes', 'used', 'left out'],
      result.layers.map(({ name, hidden, shapes, used, ignored }) => [
        hidden ? `${name} (off)` : name,
        String(shapes.length),
        counts(used),
        counts(ignored),
      ]),
      'lrll',
    ),
    '',
    ...section(`Open questions: ${open.length} (the best guess was taken; answer with --answer ID=VALUE)`, open.flatMap(questionLines)),
    ...section(
      'Settled',
      result.questions.filter((question) => !open.includes(question)).map(({ id, taken, says }) => `${id} = ${taken}   ${says}`),
    ),
    ...section(
      'Changes and notes',
      result.mends.map(({ says, layer }) => (layer === undefined ? says : `${layer}: ${says}`)),
    ),
    ...(draft === null ? [] : draftLines(draft)),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function counts(entries: Readonly<Record<string, number>>): string {
  return (
    Object.entries(entries)
      .map(([kind, count]) => `${count} ${kind}`)
      .join(', ') || '-'
  );
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`), ''];
}

function questionLines({ id, says, choices, taken }: Question): string[] {
  return [`${id}: ${says}`, ...choices.map(({ value, says: choice }) => `  ${value === taken ? '>' : ' '} ${value}   ${choice}`)];
}

function draftLines({ scene, waiting, unassigned }: Draft): string[] {
  const kinds = new Map<string, WaitingPart[]>();
  for (const part of waiting) kinds.set(part.part, [...(kinds.get(part.part) ?? []), part]);
  const parts = [...kinds].map(
    ([kind, list]) => `${list.length} × ${kind}: needs ${[...new Set(list.flatMap(({ needs }) => needs))].join(', ')}`,
  );
  return [
    ...section(
      'Scene',
      scene === null
        ? ['none, there is no outline']
        : [`${scene.deck.outline.length} corners, ${scene.deck.openings?.length ?? 0} openings`],
    ),
    ...section('Waits for entries', parts),
    ...section('Layers without a role', unassigned),
  ];
}
