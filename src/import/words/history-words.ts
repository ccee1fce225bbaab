/** Sentences for a scene's history: what was read, asked and taken, in English and German. */

import type { LayerRole, WaitingPart } from '../../model/drawing.ts';
import type { DrawnParts, PartEntries } from '../../model/drawn-parts.ts';
import type { Language } from '../../model/language.ts';
import { numberDe, numberEn, someDe, someEn } from './number-words.ts';
import { TERMS_DE, TERMS_EN } from './term-words.ts';

interface HistoryWords {
  readonly deckName: string;
  readonly layer: (name: string, role: LayerRole, shapes: number) => string;
  readonly read: (file: string, kind: string, layers: readonly string[]) => string;
  readonly answered: (question: string, answer: string) => string;
  readonly guessed: (question: string, taken: string) => string;
  readonly onLayer: (layer: string, mend: string) => string;
  readonly starter: string;
  readonly cut: (bays: number) => string;
  readonly zonesOn: (zones: number, buildup: string) => string;
  readonly columnsOf: (widthM: number, depthM: number) => string;
  readonly treesOf: (massKg: number, spreadM: number) => string;
  readonly edgesAt: (kind: 'upstand' | 'threshold', membraneTopM: number) => string;
  readonly leftOut: (part: WaitingPart['part'], count: number) => string;
}

const EN_LEFT: Readonly<Record<WaitingPart['part'], (count: number) => string>> = {
  bay: (count) => `${someEn(count, 'bay came', 'bays came')} without a permitted load.`,
  zone: (count) => someEn(count, 'zone', 'zones'),
  column: (count) => someEn(count, 'column', 'columns'),
  tree: (count) => someEn(count, 'tree', 'trees'),
  edge: (count) => someEn(count, 'edge', 'edges'),
};

const DE_LEFT: typeof EN_LEFT = {
  bay: (count) => `${someDe(count, 'Feld kam', 'Felder kamen')} ohne zulässige Last.`,
  zone: (count) => someDe(count, 'Zone', 'Zonen'),
  column: (count) => someDe(count, 'Stütze', 'Stützen'),
  tree: (count) => someDe(count, 'Baum', 'Bäume'),
  edge: (count) => someDe(count, 'Rand', 'Ränder'),
};

const EN: HistoryWords = {
  deckName: 'Imported deck',
  layer: (name, role, shapes) => `${name} as ${TERMS_EN.roles[role]} (${someEn(shapes, 'shape', 'shapes')})`,
  read: (file, kind, layers) => `Read from "${file}" (${kind}): ${layers.length === 0 ? 'no layers' : layers.join(', ')}.`,
  answered: (question, answer) => `Asked: ${question} Answer: ${answer}.`,
  guessed: (question, taken) => `Not answered: ${question} Taken: ${taken}.`,
  onLayer: (layer, mend) => `Layer ${layer}: ${mend}`,
  starter: 'To be designed',
  cut: (bays) => `${someEn(bays, 'bay was', 'bays were')} cut from the grid of axes.`,
  zonesOn: (zones, buildup) => `Entered: ${someEn(zones, 'zone begins', 'zones begin')} with the build-up ${buildup}.`,
  columnsOf: (widthM, depthM) => `Entered: columns without a drawn size measure ${numberEn(widthM)} × ${numberEn(depthM)} m.`,
  treesOf: (massKg, spreadM) =>
    `Entered: each tree has ${numberEn(massKg)} kg; without a drawn size it spreads over ${numberEn(spreadM)} m.`,
  edgesAt: (kind, membraneTopM) =>
    `Entered: edges are ${kind === 'upstand' ? 'upstands' : 'thresholds'}; without a drawn level the membrane ends at ${numberEn(membraneTopM)} m.`,
  leftOut: (part, count) => (part === 'bay' ? EN_LEFT.bay(count) : `Left out, since entries are missing: ${EN_LEFT[part](count)}.`),
};

const DE: HistoryWords = {
  deckName: 'Eingelesene Decke',
  layer: (name, role, shapes) => `${name} als ${TERMS_DE.roles[role]} (${someDe(shapes, 'Form', 'Formen')})`,
  read: (file, kind, layers) => `Gelesen aus „${file}“ (${kind}): ${layers.length === 0 ? 'keine Layer' : layers.join(', ')}.`,
  answered: (question, answer) => `Gefragt: ${question} Antwort: ${answer}.`,
  guessed: (question, taken) => `Nicht beantwortet: ${question} Angenommen: ${taken}.`,
  onLayer: (layer, mend) => `Layer ${layer}: ${mend}`,
  starter: 'Noch zu planen',
  cut: (bays) => `${someDe(bays, 'Feld wurde', 'Felder wurden')} aus dem Achsraster geschnitten.`,
  zonesOn: (zones, buildup) => `Eingegeben: ${someDe(zones, 'Zone beginnt', 'Zonen beginnen')} mit dem Aufbau ${buildup}.`,
  columnsOf: (widthM, depthM) => `Eingegeben: Stützen ohne gezeichnete Größe messen ${numberDe(widthM)} × ${numberDe(depthM)} m.`,
  treesOf: (massKg, spreadM) =>
    `Eingegeben: Jeder Baum wiegt ${numberDe(massKg)} kg; ohne gezeichnete Größe verteilt er sich auf ${numberDe(spreadM)} m.`,
  edgesAt: (kind, membraneTopM) =>
    `Eingegeben: Ränder sind ${kind === 'upstand' ? 'Aufkantungen' : 'Schwellen'}; ohne gezeichnete Höhe endet die Abdichtung bei ${numberDe(membraneTopM)} m.`,
  leftOut: (part, count) => (part === 'bay' ? DE_LEFT.bay(count) : `Weggelassen, weil Angaben fehlen: ${DE_LEFT[part](count)}.`),
};

export const HISTORY_WORDS: Readonly<Record<Language, HistoryWords>> = { en: EN, de: DE };

/** What a person entered for parts that a drawing gives only the place of. */
export function enteredWords({ buildup, columnM, tree, edge }: PartEntries, parts: DrawnParts, words: HistoryWords): string[] {
  const named = parts.buildups?.find(({ id }) => id === buildup)?.name ?? buildup;
  return [
    ...(parts.zones && named !== undefined ? [words.zonesOn(parts.zones.length, named)] : []),
    ...(parts.columns && columnM ? [words.columnsOf(...columnM)] : []),
    ...(parts.trees && tree ? [words.treesOf(tree.massKg, tree.spreadM)] : []),
    ...(parts.edges && edge ? [words.edgesAt(edge.kind, edge.membraneTopM)] : []),
  ];
}

/** What a drawing holds and the scene does not, or not whole. */
export function leftOutWords(waiting: readonly WaitingPart[], words: HistoryWords): string[] {
  const counts = new Map<WaitingPart['part'], number>();
  for (const { part } of waiting) counts.set(part, (counts.get(part) ?? 0) + 1);
  return [...counts].map(([part, count]) => words.leftOut(part, count));
}
