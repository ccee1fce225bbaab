/** What layers most likely are, by their names and by what is on them. Proposals only: a person sees and changes them. */

import type { DrawingKind, DrawingLayer, DrawingShape, LayerRole } from '../model/drawing.ts';

/** English and German words in names of layers; the first that fits counts. */
const NAMES: readonly (readonly [LayerRole, RegExp])[] = [
  ['openings', /opening|void|hole|shaft|öffnung|oeffnung|aussparung|schacht|durchbr/],
  ['columns', /column|pillar|stütze|stuetze|säule|saeule|pfeiler/],
  ['outlets', /outlet|gull(?:y|ies)|roof.?drain|ablauf|abläufe|ablaeufe|einlauf|gully/],
  ['edges', /upstand|parapet|edge|threshold|sill|attika|aufkant|rand|ränder|schwelle/],
  ['trees', /tree|baum|bäume|baeume/],
  ['axes', /axis|axes|grid|achs|raster/],
  ['levels', /level|spot|height|elev|survey|höhe|hoehe|kote|niveau|vermess/],
  ['bays', /bay|feld|felder/],
  ['zones', /zone|planting|paving|lawn|surfac|belag|beläge|rasen|pflanz|fläche|flaeche/],
  ['outline', /outline|boundary|perimeter|deck|slab|umriss|kontur|decke/],
];

/** Layers that a building model comes in. */
const OF_MODEL: Readonly<Record<string, LayerRole>> = { IfcSlab: 'outline', 'IfcSlab z': 'levels', IfcColumn: 'columns' };

type Fits = (shape: DrawingShape) => boolean;

const isArea: Fits = ({ kind }) => kind === 'ring' || kind === 'circle';
const isPlace: Fits = ({ kind }) => kind !== 'text' && kind !== 'line';
const hasLevel: Fits = (shape) =>
  shape.kind === 'line' ? shape.levelsM !== undefined : 'levelM' in shape && shape.levelM !== null && shape.levelM !== undefined;

/** Of what is on a layer, something must be of use to the role. */
const FITS: Readonly<Record<LayerRole, Fits>> = {
  outline: isArea,
  openings: isArea,
  bays: isArea,
  zones: isArea,
  edges: ({ kind }) => kind === 'line' || kind === 'ring',
  columns: isPlace,
  outlets: isPlace,
  trees: isPlace,
  levels: hasLevel,
  axes: ({ kind }) => kind === 'line',
  ignore: () => true,
};

interface Read {
  readonly kind: DrawingKind | null;
  readonly layers: readonly DrawingLayer[];
}

/**
 * Proposes roles.
 * @param read - what was read
 * @returns role by layer; a layer that nothing speaks for has none
 */
export function guessRoles({ kind, layers }: Read): ReadonlyMap<string, LayerRole> {
  if (kind === 'ifc') return new Map(layers.flatMap(({ name }) => (name in OF_MODEL ? [[name, OF_MODEL[name]] as const] : [])));
  const roles = new Map<string, LayerRole>();
  for (const layer of layers) {
    const role = kind === 'table' || kind === 'landxml' ? ofPoints(layer) : byName(layer);
    if (role !== null) roles.set(layer.name, role);
  }
  const taken = () => [...roles.values()];
  if (!taken().includes('levels')) {
    for (const layer of layers) if (!roles.has(layer.name) && isOfLevels(layer)) roles.set(layer.name, 'levels');
  }
  if (!taken().includes('outline')) {
    const free = layers.filter(({ name, shapes }) => !roles.has(name) && shapes.some(isArea));
    if (free.length === 1) roles.set(free[0].name, 'outline');
  }
  return roles;
}

function byName({ name, shapes }: DrawingLayer): LayerRole | null {
  const lower = name.toLowerCase();
  return NAMES.find(([role, words]) => words.test(lower) && shapes.some(FITS[role]))?.[0] ?? null;
}

/** Points and texts that nearly all have a level. */
function isOfLevels({ shapes }: DrawingLayer): boolean {
  const points = shapes.filter(({ kind }) => kind === 'point' || kind === 'text');
  return points.length > 0 && points.length === shapes.length && points.filter(hasLevel).length > 0.7 * points.length;
}

/** A list of points gives levels, unless the name of its kind says otherwise. */
function ofPoints(layer: DrawingLayer): LayerRole | null {
  return byName(layer) ?? (layer.shapes.some(hasLevel) ? 'levels' : null);
}
