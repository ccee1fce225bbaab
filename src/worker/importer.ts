/** Reads files for the import page. The drawing stays here; the page gets what it shows, and at the end the parts it takes over. */

import { draftIssues, draftScene } from '../import/draft-scene.ts';
import { looksLikeModel, refuseBytes } from '../import/file-kind.ts';
import { guessRoles } from '../import/guess-roles.ts';
import type { Mesher } from '../import/ifc/mesher.ts';
import { importIn, importIssueIn } from '../import/import-language.ts';
import { MAX_BYTES } from '../import/limits.ts';
import { previewOf } from '../import/preview.ts';
import { readDrawingInSlices } from '../import/read-drawing.ts';
import { kindCount } from '../import/words/kind-words.ts';
import type { ImportResult } from '../model/drawing.ts';
import type { DrawnPart, DrawnParts } from '../model/drawn-parts.ts';
import { DRAWN_PARTS } from '../model/drawn-parts.ts';
import type { DraftAsk, Importer, LayerView, Preview, ReadAsk, ReadView } from '../model/importer.ts';
import type { Language } from '../model/language.ts';
import { KNOWN_IDS } from '../project/materials.ts';

interface OpenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

interface Reading {
  readonly result: ImportResult;
  readonly preview: Preview;
}

/** Parts that stand in a scene as lists of a kind wait under its name. */
const WAITING: Readonly<Record<string, DrawnPart>> = { bay: 'bays', zone: 'zones', column: 'columns', tree: 'trees', edge: 'edges' };

const NO_FILE: OpenFile = { name: '', bytes: new Uint8Array(0) };

/**
 * A new importer without a file.
 * @param loadMesher - loads what makes surfaces of bodies in models; asked for with the first model
 */
export function createImporter(loadMesher: () => Promise<Mesher | null> = async () => null): Importer {
  let file = NO_FILE;
  let reading: Reading | null = null;
  let loading: Promise<Mesher | null> | null = null;

  const read = async ({ answers, around, language }: ReadAsk, onProgress: (share: number) => void): Promise<ReadView> => {
    // Without it, bodies that need it are left out and told.
    if (looksLikeModel(file.bytes)) loading ??= loadMesher().catch(() => null);
    const mesher = await loading;
    const result = await readDrawingInSlices(file.name, file.bytes, { answers, onProgress, mesher, ...(around && { around }) });
    reading = { result, preview: previewOf(result.layers, result.box) };
    return viewOf(reading, language);
  };
  const opened = (): Reading => {
    if (reading === null) throw new RangeError('createImporter: no file was read');
    return reading;
  };

  return {
    async open(blob, name, ask, onProgress) {
      reading = null;
      // One that broke down with the last file would fail this one too.
      loading = null;
      if (blob.size > MAX_BYTES) return tooLarge(blob, name, ask.language);
      file = { name, bytes: new Uint8Array(await blob.arrayBuffer()) };
      return read(ask, onProgress);
    },
    again: read,
    told: async (language) => viewOf(opened(), language),
    async draft(ask) {
      const draft = draftOf(opened().result, ask);
      const waiting: Partial<Record<DrawnPart, number>> = {};
      for (const { part } of draft.waiting) waiting[WAITING[part]] = (waiting[WAITING[part]] ?? 0) + 1;
      return { counts: countsOf(draft.parts), waiting, issues: issuesOf(draft, ask) };
    },
    async take(ask, on) {
      const { parts, scene, history: said } = draftOf(opened().result, ask);
      const history = said.map((says) => ({ on, says }));
      const sceneText = ask.deck === null && scene !== null ? `${JSON.stringify({ ...scene, history }, null, 2)}\n` : null;
      return { parts, history, sceneText };
    },
    async forget() {
      file = NO_FILE;
      reading = null;
    },
  };
}

/** Refused by its beginning and end alone: what it is, or that it is too large. */
async function tooLarge(blob: Blob, name: string, language: Language): Promise<ReadView> {
  const ends = new Blob([blob.slice(0, ENDS_BYTES), blob.slice(-ENDS_BYTES)]);
  const issue = refuseBytes(new Uint8Array(await ends.arrayBuffer()), blob.size);
  const preview = previewOf([], null);
  const issues = issue === null ? [] : [importIssueIn(issue, language)];
  return { name, bytes: blob.size, kind: null, layers: [], box: null, points: 0, questions: [], mends: [], issues, preview };
}

const ENDS_BYTES = 4096;

function draftOf(result: ImportResult, { roles, entries, deck, language }: DraftAsk) {
  return draftScene(result, roles, { entries, deck, language });
}

function issuesOf(draft: ReturnType<typeof draftOf>, { deck, language }: DraftAsk) {
  return deck === null ? draftIssues(draft, KNOWN_IDS, language) : draft.issues;
}

function countsOf(parts: DrawnParts): Partial<Record<DrawnPart, number>> {
  return Object.fromEntries(DRAWN_PARTS.flatMap((part) => (parts[part] === undefined ? [] : [[part, countOf(parts, part)]])));
}

function countOf(parts: DrawnParts, part: DrawnPart): number {
  if (part === 'outline') return 1;
  if (part !== 'levels') return parts[part]?.length ?? 0;
  const { spots = [], breaklines = [] } = parts.levels ?? {};
  return breaklines.reduce((sum, line) => sum + line.length, spots.length);
}

function viewOf({ result, preview }: Reading, language: Language): ReadView {
  const guesses = guessRoles(result);
  const counts = (entries: Readonly<Record<string, number>>): string[] =>
    Object.entries(entries).map(([kind, count]) => kindCount(kind, count, language));
  const layers = result.layers.map(
    ({ name, hidden, shapes, used, ignored }): LayerView => ({
      name,
      hidden,
      shapes: shapes.length,
      used: counts(used),
      ignored: counts(ignored),
      guess: guesses.get(name) ?? null,
    }),
  );
  return { ...importIn({ ...result, layers: [] }, language), layers, preview };
}
