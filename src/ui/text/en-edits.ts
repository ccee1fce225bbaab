/** Sentences of steps that draw, change or take away parts of a scene. */

import type { EditAct, EditPart, PartsEdit } from '../../model/history.ts';
import { numberText } from '../format.ts';

const PARTS: Readonly<Record<EditPart, readonly [one: string, more: string]>> = {
  scene: ['scene', 'scenes'],
  outline: ['outline of the deck', 'outlines of the deck'],
  opening: ['opening', 'openings'],
  levels: ['deck levels', 'deck levels'],
  finish: ['finished level', 'finished levels'],
  bay: ['bay', 'bays'],
  zone: ['zone', 'zones'],
  edge: ['edge', 'edges'],
  outlet: ['outlet', 'outlets'],
  column: ['column', 'columns'],
  object: ['object', 'objects'],
  route: ['route', 'routes'],
  'set-up area': ['set-up area', 'set-up areas'],
  stockpile: ['stockpile', 'stockpiles'],
  plant: ['machine', 'machines'],
  'access point': ['access point', 'access points'],
  'build-up': ['build-up', 'build-ups'],
  layer: ['layer', 'layers'],
  material: ['material', 'materials'],
  vehicle: ['vehicle', 'vehicles'],
  stage: ['stage', 'stages'],
  'hold point': ['hold point', 'hold points'],
  view: ['view', 'views'],
  rain: ['rain', 'rain'],
  limits: ['limits', 'limits'],
  probe: ['probe', 'probes'],
  variant: ['variant', 'variants'],
  several: ['part', 'parts'],
};

const ACTS: Readonly<Record<EditAct, string>> = {
  add: 'added',
  change: 'changed',
  move: 'moved',
  remove: 'removed',
  rename: 'renamed',
  split: 'split',
  merge: 'merged',
  copy: 'copied',
  order: 'put in another order',
  import: 'imported',
  derive: 'derived',
  lighten: 'lightened',
  exchange: 'exchanged',
};

/** Names told in full. */
const MOST_NAMES = 3;

function listed(names: readonly string[]): string {
  const more = names.length - MOST_NAMES;
  if (more > 0) return `${names.slice(0, MOST_NAMES).join(', ')} and ${more} more`;
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

const step = ({ act, part, names }: PartsEdit) =>
  `${[PARTS[part][names.length > 1 ? 1 : 0], listed(names)].filter((word) => word !== '').join(' ')}: ${ACTS[act]}`;

export const edits = {
  step,
  undone: (edit: PartsEdit) => `Undone: ${step(edit)}.`,
  redone: (edit: PartsEdit) => `Done again: ${step(edit)}.`,
} as const;

export const edit = {
  open: 'Edit',
  title: 'Editor',
  leave: 'Leave the editor',
  pages: { plan: 'Plan', 'build-ups': 'Build-ups', stages: 'Stages', variants: 'Variants', lighten: 'Lighten', views: 'Views' },
} as const;

export const newScene = {
  open: 'New scene…',
  title: 'New scene',
  name: 'Name',
  unnamed: 'New deck',
  withoutName: (name: string) => `Without a name it is called “${name}”.`,
  length: 'Length of the deck',
  width: 'Width of the deck',
  says: 'A rectangle to begin with. Its outline can then be drawn over, or taken from a drawing.',
  begin: 'Begin',
  sidesWrong: (least: number, most: number) =>
    `Give both sides of the deck, each from ${numberText(least, 0)} to ${numberText(most, 0)} m.`,
} as const;
