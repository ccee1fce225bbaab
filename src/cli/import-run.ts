/** `import` on the command line: what was read, asked, changed; on wish the draft of a scene. */

import { type Draft, draftIssues, draftScene } from '../import/draft-scene.ts';
import { guessRoles } from '../import/guess-roles.ts';
import type { Mesher } from '../import/ifc/mesher.ts';
import { importIn } from '../import/import-language.ts';
import { readingSteps } from '../import/read-drawing.ts';
import { runAtOnce } from '../import/steps.ts';
import { kindCount } from '../import/words/kind-words.ts';
import type { Answers, DrawingBox, ImportResult, LayerRoles, Question, WaitingPart } from '../model/drawing.ts';
import { type Issue, issueLineIn } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { KNOWN_IDS } from '../project/materials.ts';
import { parseScene } from '../scene/parse-scene.ts';
import type { ImportCall } from './import-call.ts';
import { table } from './text-table.ts';
import { WRITING } from './writing.ts';

interface Done {
  readonly out: string;
  readonly err: string;
  readonly code: 0 | 1 | 2;
  readonly file?: { readonly name: string; readonly bytes: Promise<Uint8Array> };
}

/**
 * Reads a drawing and says what came of it.
 * @param call - what was asked for
 * @param read - reads a file named in the call; throws where it can't
 * @param mesher - for models; without one some bodies are left out and told
 * @returns what to print and to write, and the exit code
 */
export function runImport(call: ImportCall, read: (file: string) => Uint8Array, mesher: Mesher | null = null): Done {
  const { language } = call;
  const { calls } = WRITING[language];
  const bytes = read(call.file);
  const textOf = (file: string | undefined) => (file === undefined ? null : new TextDecoder().decode(read(file)));
  const answers = allAnswers(call.answers, textOf(call.answersFile));
  const deckText = textOf(call.deckFile);
  const around = deckText === null ? undefined : boxOfDeck(deckText);
  if (around === null) return refused(calls.deckExpected(call.deckFile ?? ''));
  if (answers === null) return refused(calls.answersExpected(call.answersFile ?? ''));
  const result = importIn(
    runAtOnce(readingSteps(call.file, bytes, { answers, mesher, ...(around === undefined ? {} : { around }) })),
    language,
  );
  const draft =
    Object.keys(call.roles).length > 0 && result.box !== null ? draftScene(result, call.roles as LayerRoles, { language }) : null;
  const sceneText = draft?.scene ? `${JSON.stringify(draft.scene, null, 2)}\n` : null;
  const issues = [...result.issues, ...(draft === null ? [] : draftIssues(draft, KNOWN_IDS, language))];
  const failed = issues.some(({ level }) => level === 'error');
  const out = call.json
    ? `${JSON.stringify({ ...result, issues, ...(draft === null ? {} : { draft }) }, null, 2)}\n`
    : importText(result, draft, language);
  return {
    out: failed && !call.json ? '' : out,
    err: issues.map((issue: Issue) => `${call.file}: ${issueLineIn(issue, language)}\n`).join(''),
    code: failed ? 2 : openOf(result).length > 0 ? 1 : 0,
    ...(call.out === undefined || sceneText === null || failed
      ? {}
      : { file: { name: call.out, bytes: Promise.resolve(new TextEncoder().encode(sceneText)) } }),
  };
}

function refused(err: string): Done {
  return { out: '', err: `${err}\n`, code: 2 };
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

/** Null where the text is no scene. */
function boxOfDeck(text: string): DrawingBox | null {
  const { scene } = parseScene(text, KNOWN_IDS);
  if (scene === null) return null;
  const [xs, ys] = [scene.deck.outline.map(([x]) => x), scene.deck.outline.map(([, y]) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

const openOf = ({ questions }: ImportResult): readonly Question[] => questions.filter(({ answered, certain }) => !answered && !certain);

function importText(result: ImportResult, draft: Draft | null, language: Language): string {
  const { calls, count, fixed, place } = WRITING[language];
  if (result.kind === 'scene') return `${calls.aScene(result.name)}\n`;
  const { box } = result;
  const size =
    box === null ? '' : `, ${calls.size(fixed(box.maxX - box.minX), fixed(box.maxY - box.minY), `(${place([box.minX, box.minY])})`)}`;
  const counts = (entries: Readonly<Record<string, number>>) =>
    Object.entries(entries)
      .map(([kind, found]) => kindCount(kind, found, language))
      .join(', ') || '-';
  const guesses = guessRoles(result);
  const open = openOf(result);
  const settled = result.questions.filter((question) => !open.includes(question));
  const lines = [
    `${calls.drawing(result.name, result.kind ?? '?', result.points)}${size}`,
    '',
    calls.layers,
    ...table(
      calls.layersHead,
      result.layers.map(({ name, hidden, shapes, used, ignored }) => [
        hidden ? calls.layerOff(name) : name,
        count(shapes.length),
        counts(used),
        counts(ignored),
        guesses.get(name) ?? '-',
      ]),
      'lrlll',
    ),
    '',
    ...section(calls.open(open.length), open.flatMap(questionLines)),
    ...section(
      calls.settled,
      settled.map(({ id, taken, says }) => `${id} = ${taken}   ${says}`),
    ),
    ...section(
      calls.mends,
      result.mends.map(({ says, layer }) => (layer === undefined ? says : `${layer}: ${says}`)),
    ),
    ...(draft === null ? [] : draftLines(draft, language)),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`), ''];
}

function questionLines({ id, says, choices, taken }: Question): string[] {
  return [`${id}: ${says}`, ...choices.map(({ value, says: choice }) => `  ${value === taken ? '>' : ' '} ${value}   ${choice}`)];
}

function draftLines({ scene, waiting, unassigned }: Draft, language: Language): string[] {
  const { calls } = WRITING[language];
  const kinds = new Map<WaitingPart['part'], WaitingPart[]>();
  for (const part of waiting) kinds.set(part.part, [...(kinds.get(part.part) ?? []), part]);
  const parts = [...kinds].map(([kind, list]) => {
    const keys = [...new Set(list.flatMap(({ needs }) => needs))];
    return calls.needs(list.length, calls.part[kind], keys.join(', '));
  });
  return [
    ...section(
      calls.scene,
      scene === null ? [calls.noScene] : [calls.sceneOf(scene.deck.outline.length, scene.deck.openings?.length ?? 0)],
    ),
    ...section(calls.waiting, parts),
    ...section(calls.unassigned, unassigned),
  ];
}
