/** Names of the catalogue in the language spoken; what the scene names itself stays as written. */

import { materialById, vehicleById } from '../../catalogue/catalogue.ts';
import { MATERIALS_DE, NAMES_DE, VEHICLES_DE } from '../../catalogue/german-names.ts';
import type { Language } from '../../model/language.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { sourceDe } from './source-de.ts';

export interface Names {
  readonly language: Language;
  /** A name of the catalogue, or a thing with its id, in the language; any other text as it is. */
  name(this: void, text: string): string;
  /** A line that says where a number comes from. */
  source(this: void, text: string): string;
}

const same = (text: string) => text;
const ENGLISH: Names = { language: 'en', name: same, source: same };

const GERMAN: ReadonlyMap<string, string> = new Map([
  ...Object.entries(NAMES_DE),
  ...named(materialById, MATERIALS_DE),
  ...named(vehicleById, VEHICLES_DE),
  ['Vegetation', 'Vegetation'],
  ['its vegetation', 'die Vegetation'],
]);

function named(entries: ReadonlyMap<string, { readonly id: string; readonly name: string }>, german: Readonly<Record<string, string>>) {
  return [...entries.values()].map(({ id, name }): [string, string] => [name, german[id] ?? name]);
}

/** Things that stand in the way, named with their ids (`obstacles.ts`). */
const THINGS: Readonly<Record<string, string>> = {
  tree: 'Baum',
  line: 'Mauer',
  block: 'Block',
  'retaining edge': 'Stützwand',
  'set-up area': 'Aufstellfläche',
  'movement area': 'Bewegungsfläche',
  upstand: 'Aufkantung',
  opening: 'Öffnung',
};

/** Names as a scene is to be told of in a language; without a scene those of the catalogue alone. */
export function namesOf(scene: SceneFile | null, language: Language): Names {
  if (language === 'en') return ENGLISH;
  const own = new Set([...(scene?.materials ?? []), ...(scene?.vehicles ?? [])].map(({ name }) => name));
  const name = (text: string) => (own.has(text) ? text : (GERMAN.get(text) ?? thingDe(text)));
  return { language, name, source: sourceDe };
}

function thingDe(text: string): string {
  const kind = Object.keys(THINGS).find((thing) => text.startsWith(`${thing} `));
  return kind === undefined ? text : `${THINGS[kind]}${text.slice(kind.length)}`;
}
