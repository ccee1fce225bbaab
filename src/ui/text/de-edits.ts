/** Steps that draw, change or take away parts of a scene: the sentences in German. */

import type { EditAct, EditPart, PartsEdit } from '../../model/history.ts';
import { numberText } from '../format.ts';
import type { Texts } from './text.ts';

const PARTS: Readonly<Record<EditPart, readonly [one: string, more: string]>> = {
  scene: ['Szene', 'Szenen'],
  outline: ['Umriss der Decke', 'Umrisse der Decke'],
  opening: ['Öffnung', 'Öffnungen'],
  levels: ['Höhen der Decke', 'Höhen der Decke'],
  finish: ['Fertighöhe', 'Fertighöhen'],
  bay: ['Feld', 'Felder'],
  zone: ['Zone', 'Zonen'],
  edge: ['Rand', 'Ränder'],
  outlet: ['Ablauf', 'Abläufe'],
  column: ['Stütze', 'Stützen'],
  object: ['Objekt', 'Objekte'],
  route: ['Fahrweg', 'Fahrwege'],
  'set-up area': ['Aufstellfläche', 'Aufstellflächen'],
  stockpile: ['Haufwerk', 'Haufwerke'],
  plant: ['Maschine', 'Maschinen'],
  'access point': ['Zugang', 'Zugänge'],
  'build-up': ['Aufbau', 'Aufbauten'],
  layer: ['Lage', 'Lagen'],
  material: ['Material', 'Materialien'],
  vehicle: ['Fahrzeug', 'Fahrzeuge'],
  stage: ['Bauzustand', 'Bauzustände'],
  'hold point': ['Haltepunkt', 'Haltepunkte'],
  view: ['Ansicht', 'Ansichten'],
  rain: ['Regen', 'Regen'],
  limits: ['Grenzwerte', 'Grenzwerte'],
  probe: ['Messung', 'Messungen'],
  variant: ['Variante', 'Varianten'],
  several: ['Teil', 'Teile'],
};

const ACTS: Readonly<Record<EditAct, string>> = {
  add: 'hinzugefügt',
  change: 'geändert',
  move: 'verschoben',
  remove: 'entfernt',
  rename: 'umbenannt',
  split: 'geteilt',
  merge: 'vereinigt',
  copy: 'kopiert',
  order: 'umgeordnet',
  import: 'eingelesen',
  derive: 'abgeleitet',
  lighten: 'leichter gemacht',
  exchange: 'ausgetauscht',
};

/** Names told in full. */
const MOST_NAMES = 3;

function listed(names: readonly string[]): string {
  const more = names.length - MOST_NAMES;
  if (more > 0) return `${names.slice(0, MOST_NAMES).join(', ')} und ${more} weitere`;
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
}

const step = ({ act, part, names }: PartsEdit) =>
  `${[PARTS[part][names.length > 1 ? 1 : 0], listed(names)].filter((word) => word !== '').join(' ')}: ${ACTS[act]}`;

export const edits: Texts['edits'] = {
  step,
  undone: (edit) => `Rückgängig gemacht: ${step(edit)}.`,
  redone: (edit) => `Wiederholt: ${step(edit)}.`,
};

export const edit: Texts['edit'] = {
  open: 'Bearbeiten',
  title: 'Bearbeiten',
  leave: 'Bearbeiten beenden',
  pages: { plan: 'Plan', 'build-ups': 'Aufbauten', stages: 'Bauzustände', variants: 'Varianten', lighten: 'Leichter', views: 'Ansichten' },
};

export const newScene: Texts['newScene'] = {
  open: 'Neue Szene…',
  title: 'Neue Szene',
  name: 'Name',
  unnamed: 'Neue Decke',
  withoutName: (name) => `Ohne Namen heißt sie „${name}“.`,
  length: 'Länge der Decke',
  width: 'Breite der Decke',
  says: 'Zum Anfang ein Rechteck. Sein Umriss lässt sich danach neu zeichnen oder aus einer Zeichnung übernehmen.',
  begin: 'Beginnen',
  sidesWrong: (least, most) => `Beide Seiten der Decke angeben, jede von ${numberText(least, 0)} bis ${numberText(most, 0)} m.`,
};
