/** Sentences of the import page: what was read, asked and changed, what it becomes. */

import type { DrawingKind, LayerRole } from '../../model/drawing.ts';
import type { DrawnPart, Taking } from '../../model/drawn-parts.ts';
import type { ImportTarget } from '../../store/import-store.ts';
import { numberText } from '../format.ts';
import { many } from './en-words.ts';

/** Roles of the columns of a table, as answers name them. */
export const COLUMN_ROLES = ['id', 'x', 'y', 'z', 'layer', '-'] as const;
export type ColumnRole = (typeof COLUMN_ROLES)[number];

const KINDS: Readonly<Record<DrawingKind, string>> = {
  dxf: 'Drawing (DXF)',
  geojson: 'Map (GeoJSON)',
  landxml: 'Survey data (LandXML)',
  ifc: 'Building model (IFC)',
  table: 'Table of points',
  scene: 'Scene',
};

const ROLES: Readonly<Record<LayerRole, string>> = {
  outline: 'outline of the deck',
  openings: 'openings',
  bays: 'bays',
  zones: 'zones',
  edges: 'edges',
  columns: 'columns',
  outlets: 'outlets',
  levels: 'levels',
  trees: 'trees',
  axes: 'axes of a grid',
  ignore: 'not used',
};

const COLUMNS: Readonly<Record<ColumnRole, string>> = {
  id: 'name, no.',
  x: 'x (east)',
  y: 'y (north)',
  z: 'level',
  layer: 'kind of point',
  '-': 'not used',
};

const COUNTS: Readonly<Record<DrawnPart, (count: number) => string>> = {
  outline: () => 'Outline of the deck',
  openings: (count) => many(count, 'opening', 'openings'),
  levels: (count) => many(count, 'level', 'levels'),
  bays: (count) => many(count, 'bay', 'bays'),
  zones: (count) => many(count, 'zone', 'zones'),
  edges: (count) => many(count, 'edge', 'edges'),
  columns: (count) => many(count, 'column', 'columns'),
  outlets: (count) => many(count, 'outlet', 'outlets'),
  trees: (count) => many(count, 'tree', 'trees'),
};

const TAKINGS: Readonly<Record<Taking, string>> = { add: 'add', replace: 'replace', leave: 'leave out' };

const TARGETS: Readonly<Record<ImportTarget, string>> = {
  new: 'A new scene',
  into: 'Into the open scene',
  underlay: 'Lines under the plan, to draw over',
};

const metres = (value: number) => numberText(value, 2);

export const imports = {
  title: (name: string) => `Read from ${name}`,
  leave: 'Leave without taking anything over',
  reading: (name: string, megabytes: number) => `Reading ${name}, ${numberText(megabytes, megabytes < 10 ? 1 : 0)} MB`,
  readingAgain: 'Reading again with the answers',
  share: (share: number) => `${numberText(Math.floor(100 * share), 0)} %`,
  background: 'Everything else can go on meanwhile. The file stays on this device.',
  cancel: 'Cancel',
  crashed: (name: string) =>
    `Reading ${name} ended, most likely because memory ran out. Nothing was changed. Open a smaller export: only the layers of the deck.`,
  stays: 'Nothing is changed before it is taken over.',
  kind: (kind: DrawingKind) => KINDS[kind],
  points: (count: number) => many(count, 'point', 'points'),
  size: (widthM: number, heightM: number) => `${metres(widthM)} × ${metres(heightM)} m`,
  corner: (x: number, y: number) => `lower left corner at x ${metres(x)}, y ${metres(y)}`,
  before: 'In the file',
  after: 'As it will lie',
  beforeAfter: 'Drawing',
  fileSize: (width: number, height: number) => `${numberText(width, 2)} × ${numberText(height, 2)} in the numbers of the file`,
  picture: (which: string, size: string) => `${which}: ${size}, north at the top`,
  north: 'N',
  openDeck: 'Dashed: the deck that is open.',
  apart: (metresAway: number) =>
    `The drawing lies ${numberText(metresAway, 0)} m away from the open deck. Check unit and axes, and whether both count from the same point.`,
  notDrawn: (count: number) => `${many(count, 'small line is', 'small lines are')} left out of this picture only.`,
  questions: (count: number) => many(count, 'open question', 'open questions'),
  questionsSay: 'The best guess is marked. The drawing follows each answer.',
  settled: (count: number) => `Settled by the file (${count}); can be changed`,
  guess: 'best guess',
  table: 'Columns of the table',
  tableSays: 'The first rows as they stand in the file.',
  column: (name: string) => `Column ${name}`,
  columnRole: (role: ColumnRole) => COLUMNS[role],
  layers: (count: number) => many(count, 'layer', 'layers'),
  layersSay: 'What each layer is. Guessed from names and content; please check.',
  layer: 'Layer',
  hidden: 'switched off in the drawing',
  used: 'read',
  ignored: 'left out',
  nothing: 'nothing',
  use: 'Use as',
  roleOf: (layer: string) => `Use of layer ${layer}`,
  role: (role: LayerRole) => ROLES[role],
  mends: 'What was changed while reading',
  noMends: 'Nothing was changed.',
  onLayer: (layer: string, says: string) => `Layer ${layer}: ${says}`,
  issues: (count: number) => many(count, 'remark on the file', 'remarks on the file'),
  take: 'Take over',
  target: 'What becomes of it',
  targetName: (target: ImportTarget) => TARGETS[target],
  parts: 'What is taken over',
  part: (part: DrawnPart, count: number) => COUNTS[part](count),
  taking: (taking: Taking) => TAKINGS[taking],
  takingOf: (part: string) => `What to do with: ${part}`,
  keeps: 'Replaced parts of the same name keep what was entered for them.',
  noParts: 'Nothing yet. Give a layer a use.',
  bayLoads: (count: number) =>
    `${many(count, 'bay comes', 'bays come')} without a permitted load: enter it from the load plan. Until then it never counts as within its limit.`,
  waitZones: (count: number) => `Build-up of ${many(count, 'zone', 'zones')}`,
  starter: 'a new one: protection fleece, to be completed',
  leaveZones: 'leave the zones out',
  waitColumns: (count: number) => `Size of ${many(count, 'column', 'columns')} without one`,
  width: 'Width',
  depth: 'Depth',
  waitTrees: (count: number) => `Weight and spread of ${many(count, 'tree', 'trees')}`,
  mass: 'Weight of each',
  spread: 'Spread of each',
  waitEdges: (count: number) => `Kind and membrane top of ${many(count, 'edge', 'edges')}`,
  edgeKind: 'Kind',
  edgeKinds: (kind: 'upstand' | 'threshold') => ({ upstand: 'upstand', threshold: 'threshold of a door' })[kind],
  membraneTop: 'Top of the membrane',
  leftUntil: 'Without these entries they are left out.',
  entryWrong: 'Give a number above 0.',
  levelWrong: 'Give a level in metres.',
  withErrors: 'First mend what stands under the drawing: with an error there nothing can be taken over.',
  toNew: 'Begin the scene',
  toInto: 'Take into the scene',
  toUnderlay: 'Lay under the plan',
  refused: 'It was not taken over. The scene stays as it was.',
  history: 'What was read and mended',
  historySays: 'Kept in the scene since it was read from drawings.',
} as const;
