/** Layers of one build-up, bottom to top: move, insert, take out, exchange, make-up, infill. Each gives new layers and leaves the old ones alone. */

import type { Role } from '../model/roles.ts';
import type { SceneLayer, SceneMaterial, SceneThickness } from '../model/scene-file.ts';

export type Layers = readonly SceneLayer[];

/** Layers after a step, and where the one it was about lies now; -1 where it is gone. */
export interface LayerStep {
  readonly layers: Layers;
  readonly index: number;
}

export interface MakeUpRange {
  readonly min: number;
  readonly nominal: number;
  readonly max: number;
}

/** What a new layer begins with where its material has no thickness of its own: low ends of common practice, to be changed [mm]. */
const START_MM: Readonly<Partial<Record<Role, number>>> = {
  'drainage fill': 50,
  'light fill': 100,
  'base course': 150,
  bedding: 40,
  surfacing: 50,
  edging: 250,
  substrate: 150,
};

const LEAST_START_MM = 50;

/**
 * An element and the fill in its voids are one piece: apart from each other neither is what it was.
 * @param layers - layers of a build-up
 * @returns indices of the layers of each piece, bottom to top
 */
export function piecesOf(layers: Layers): readonly (readonly number[])[] {
  const pieces: number[][] = [];
  layers.forEach((layer, i) => {
    const last = pieces.at(-1);
    if (layer.infill === true && last) last.push(i);
    else pieces.push([i]);
  });
  return pieces;
}

const pieceAt = (pieces: readonly (readonly number[])[], index: number) => pieces.findIndex((piece) => piece.includes(index));

/**
 * A layer, with the fill or element that belongs to it, in another place.
 * @param layers - layers of a build-up
 * @param index - the layer
 * @param place - number of the piece that it becomes, counted from below; beyond the ends it stops there
 * @returns layers in the new order
 */
export function moveLayer(layers: Layers, index: number, place: number): LayerStep {
  const pieces = [...piecesOf(layers)];
  const from = pieceAt(pieces, index);
  const [moved] = pieces.splice(from, 1);
  if (moved === undefined) throw new RangeError(`moveLayer: no layer ${index}`);
  pieces.splice(Math.min(Math.max(place, 0), pieces.length), 0, moved);
  const order = pieces.flat();
  return { layers: order.map((i) => layers[i]), index: order.indexOf(index) };
}

/**
 * One place up or down.
 * @param layers - layers of a build-up
 * @param index - the layer
 * @param way - where to
 * @returns layers in the new order; the very same where there is no place further
 */
export function stepLayer(layers: Layers, index: number, way: 'up' | 'down'): LayerStep {
  const pieces = piecesOf(layers);
  const to = pieceAt(pieces, index) + (way === 'up' ? 1 : -1);
  return to < 0 || to >= pieces.length ? { layers, index } : moveLayer(layers, index, to);
}

/**
 * A new layer above or below another; never between an element and its fill.
 * @param layers - layers of a build-up
 * @param index - the layer beside which it goes
 * @param where - above or below that
 * @param material - what it is made of
 * @returns layers with the new one
 */
export function insertLayer(layers: Layers, index: number, where: 'above' | 'below', material: SceneMaterial): LayerStep {
  const pieces = piecesOf(layers);
  const piece = pieces[pieceAt(pieces, index)] ?? [];
  const at = where === 'above' ? (piece.at(-1) ?? layers.length - 1) + 1 : (piece[0] ?? 0);
  const layer = startLayer(material);
  return { layers: [...layers.slice(0, at), layer, ...layers.slice(at)], index: at };
}

/**
 * Takes a layer out; with an element goes the fill in its voids.
 * @param layers - layers of a build-up
 * @param index - the layer
 * @returns the others; empty where it was the only one
 */
export function removeLayer(layers: Layers, index: number): Layers {
  const piece = piecesOf(layers).find((one) => one[0] === index);
  const gone = piece ?? [index];
  return layers.filter((_, i) => !gone.includes(i));
}

/**
 * Another material in the same place. What the new one cannot have goes: a thickness of its own on a sheet, a way up on what holds no
 * water, voids to fill.
 * @param layers - layers of a build-up
 * @param index - the layer
 * @param before - its material
 * @param material - the new one
 * @returns layers, or null where the fill above would lose the voids it lies in
 */
export function swapMaterial(layers: Layers, index: number, before: SceneMaterial | undefined, material: SceneMaterial): Layers | null {
  const fillAbove = layers[index].infill !== true && layers[index + 1]?.infill === true;
  if (fillAbove && !((material.voidLm2 ?? 0) > 0)) return null;
  const { orientation, infill, thicknessMm } = layers[index];
  const granular = material.density !== undefined;
  const own = material.thicknessMm !== undefined;
  // A sheet's weight is per m² and a slab has its own thickness: only what is poured keeps the one it had.
  const kept = granular && !own ? thicknessMm : undefined;
  const needs = granular && !own && kept === undefined && infill !== true;
  const layer: SceneLayer = {
    material: material.id,
    ...wayUp(material, orientation),
    ...(infill === true && granular ? { infill } : {}),
    ...(kept === undefined ? {} : { thicknessMm: kept }),
    ...(needs ? { thicknessMm: before?.density && before.thicknessMm ? before.thicknessMm : startMm(material.role) } : {}),
  };
  return layers.map((one, i) => (i === index ? layer : one));
}

function startLayer(material: SceneMaterial): SceneLayer {
  const needs = material.density !== undefined && material.thicknessMm === undefined;
  return { material: material.id, ...wayUp(material, undefined), ...(needs ? { thicknessMm: startMm(material.role) } : {}) };
}

const startMm = (role: Role): number => START_MM[role] ?? LEAST_START_MM;

/** Only what could hold water has a way up. Without one given it drains: nothing is counted as held that nobody asked for. */
function wayUp({ retentionLm2 }: SceneMaterial, given: SceneLayer['orientation']): Pick<SceneLayer, 'orientation'> {
  return (retentionLm2 ?? 0) > 0 ? { orientation: given ?? 'drained' } : {};
}

/**
 * Which way up an element lies.
 * @param layers - layers of a build-up
 * @param index - the element
 * @param orientation - to hold water or to let it go
 */
export function turnLayer(layers: Layers, index: number, orientation: NonNullable<SceneLayer['orientation']>): Layers {
  return changed(layers, index, (layer) => ({ ...layer, orientation }));
}

/**
 * A layer into the voids of the element below it, or out of them: then as thick as the voids were, so that no less of it is there.
 * @param layers - layers of a build-up
 * @param index - the fill
 * @param on - into the voids
 * @param voidLm2 - voids of the element below [l/m²]
 */
export function setInfill(layers: Layers, index: number, on: boolean, voidLm2: number): Layers {
  return changed(layers, index, ({ infill: _, thicknessMm, ...layer }) => {
    if (on) return { ...layer, infill: true, thicknessMm: typeof thicknessMm === 'number' ? Math.max(0, thicknessMm - voidLm2) : 0 };
    const aboveMm = typeof thicknessMm === 'number' ? thicknessMm : 0;
    return { ...layer, thicknessMm: aboveMm + voidLm2 || LEAST_START_MM };
  });
}

/**
 * Makes one layer the make-up layer, or none of them: the one that was it keeps its nominal thickness.
 * @param layers - layers of a build-up
 * @param index - the layer that takes up differences in level
 * @param range - its least, usual and greatest thickness [mm]; null for none
 */
export function setMakeUp(layers: Layers, index: number, range: MakeUpRange | null): Layers {
  return layers.map((layer, i) => {
    if (i === index && range !== null) return { ...layer, thicknessMm: range };
    return typeof layer.thicknessMm === 'object' ? { ...layer, thicknessMm: layer.thicknessMm.nominal } : layer;
  });
}

/** A range around a thickness to begin with: half of it to twice as much, in whole centimetres. */
export function startRange(thicknessMm: number): MakeUpRange {
  const min = Math.max(1, Math.min(thicknessMm, Math.floor(thicknessMm / 20) * 10));
  return { min, nominal: thicknessMm, max: Math.max(thicknessMm, Math.ceil((2 * thicknessMm) / 10) * 10) };
}

/**
 * Another thickness, or range, of one layer.
 * @param layers - layers of a build-up
 * @param index - the layer
 * @param thicknessMm - thickness [mm]; of a make-up layer its range
 */
export function setThicknessOf(layers: Layers, index: number, thicknessMm: SceneThickness): Layers {
  return changed(layers, index, (layer) => ({ ...layer, thicknessMm }));
}

function changed(layers: Layers, index: number, change: (layer: SceneLayer) => SceneLayer): Layers {
  return layers.map((layer, i) => (i === index ? change(layer) : layer));
}
