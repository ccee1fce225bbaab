/** Parts of a drawing put into a scene: added, or in place of what is there. */

import { DRAWN_PARTS, type DrawnPart, type DrawnParts, type Takings } from '../model/drawn-parts.ts';
import type { ScenePatch } from '../model/history.ts';
import type { PolygonM, SceneFile, SceneHistoryEntry, SceneLevels, SceneObject } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { freeId } from '../scene/free-id.ts';
import { removed } from './references.ts';

interface Named {
  readonly id: string;
}

/** What a part of the same name takes from the drawing; all else of it stays as it was entered. */
const DRAWN_KEYS = {
  bays: ['outline'],
  zones: ['outline', 'holes'],
  edges: ['line', 'membraneTopM'],
  columns: ['at', 'sizeM'],
  outlets: ['at'],
  trees: ['at'],
} as const satisfies Partial<Record<DrawnPart, readonly string[]>>;

const LETTERS = { bays: 'B', zones: 'Z', edges: 'E', columns: 'C', outlets: 'O', trees: 'T' } as const;

type ListPart = keyof typeof DRAWN_KEYS;

/**
 * The change that takes parts of a drawing into a scene.
 * @param before - scene as it stands
 * @param parts - what the drawing holds
 * @param takings - per kind of part whether it is added, replaces what is there, or is left; without a word it is added
 * @param history - what is kept of how they came
 * @returns patch; ids that are taken already get a number behind them
 */
export function takeParts(before: SceneFile, parts: DrawnParts, takings: Takings, history: readonly SceneHistoryEntry[]): ScenePatch {
  const wanted = Object.fromEntries(
    DRAWN_PARTS.flatMap((part) => (takings[part] === 'leave' || parts[part] === undefined ? [] : [[part, parts[part]]])),
  ) as DrawnParts;
  const without = removed(before, goneParts(before, wanted, takings));
  const scene = { ...before, ...without } as SceneFile;
  const { deck } = scene;
  const { outline = deck.outline } = wanted;
  const openings = wanted.openings && merged(deck.openings ?? [], wanted.openings, takings.openings === 'replace');
  const levels = wanted.levels && mergedLevels(deck.levels, wanted.levels, takings.levels === 'replace');
  const list = <T extends Named>(part: ListPart, old: readonly T[] | undefined): readonly T[] | undefined =>
    wanted[part] && takenList(old ?? [], wanted[part] as unknown as readonly T[], { part, replace: takings[part] === 'replace' });
  const [bays, columns, outlets, edges] = [
    list('bays', deck.bays),
    list('columns', deck.columns),
    list('outlets', deck.outlets),
    list('edges', deck.edges),
  ];
  const zones = list('zones', scene.zones);
  return {
    ...without,
    deck: {
      ...deck,
      outline,
      ...(openings && { openings }),
      ...(levels && { levels }),
      ...(bays && { bays }),
      ...(columns && { columns }),
      ...(outlets && { outlets }),
      ...(edges && { edges }),
    },
    ...(zones && { zones, buildups: withMissing(scene.buildups, parts.buildups ?? []) }),
    ...(wanted.trees && { objects: takenTrees(scene.objects ?? [], wanted.trees, takings.trees === 'replace') }),
    history: [...(scene.history ?? []), ...history],
  };
}

const SELECTED = { bays: 'bay', zones: 'zone', edges: 'edge', columns: 'column', outlets: 'outlet', trees: 'object' } as const;

/** Parts that the drawing replaces and does not hold; stages must not go on naming them. */
function goneParts({ deck, zones, objects }: SceneFile, wanted: DrawnParts, takings: Takings): readonly Selected[] {
  const trees = objects?.filter(({ kind }) => kind === 'tree');
  const old = { bays: deck.bays, zones, edges: deck.edges, columns: deck.columns, outlets: deck.outlets, trees };
  return (Object.keys(SELECTED) as ListPart[]).flatMap((part) => {
    const drawn = wanted[part];
    if (takings[part] !== 'replace' || drawn === undefined) return [];
    const stays = new Set(drawn.map(({ id }) => id));
    return (old[part] ?? []).filter(({ id }) => !stays.has(id)).map(({ id }) => ({ part: SELECTED[part], id }));
  });
}

function merged(old: readonly PolygonM[], drawn: readonly PolygonM[], replace: boolean): readonly PolygonM[] {
  return replace ? drawn : [...old, ...drawn];
}

function mergedLevels(old: SceneLevels | undefined, drawn: SceneLevels, replace: boolean): SceneLevels {
  if (replace || old === undefined) return drawn;
  const breaklines = [...(old.breaklines ?? []), ...(drawn.breaklines ?? [])];
  return { spots: [...old.spots, ...drawn.spots], ...(breaklines.length > 0 && { breaklines }) };
}

function takenList<T extends Named>(
  old: readonly T[],
  drawn: readonly T[],
  { part, replace }: { readonly part: ListPart; readonly replace: boolean },
): readonly T[] {
  if (replace) {
    const known = new Map(old.map((one) => [one.id, one]));
    return drawn.map((one) => redrawn(known.get(one.id), one, DRAWN_KEYS[part]));
  }
  const ids = new Set(old.map(({ id }) => id));
  return [...old, ...drawn.map((one) => ({ ...one, id: freeId(one.id, LETTERS[part], ids) }))];
}

/** The old part where it now lies. */
function redrawn<T extends Named>(old: T | undefined, drawn: T, keys: readonly string[]): T {
  if (old === undefined) return drawn;
  const kept = Object.entries(old).filter(([key]) => !keys.includes(key));
  const moved = Object.entries(drawn).filter(([key]) => keys.includes(key));
  return Object.fromEntries([...kept, ...moved]) as unknown as T;
}

function takenTrees(old: readonly SceneObject[], drawn: readonly SceneObject[], replace: boolean): readonly SceneObject[] {
  const trees = old.filter(({ kind }) => kind === 'tree');
  const others = old.filter(({ kind }) => kind !== 'tree');
  return [...others, ...takenList(trees, withFreeIds(drawn, others), { part: 'trees', replace })];
}

/** Objects of all kinds share their ids. */
function withFreeIds(drawn: readonly SceneObject[], others: readonly Named[]): readonly SceneObject[] {
  const ids = new Set(others.map(({ id }) => id));
  return drawn.map((one) => ({ ...one, id: freeId(one.id, LETTERS.trees, ids) }));
}

function withMissing<T extends Named>(list: readonly T[], wanted: readonly T[]): readonly T[] {
  return [...list, ...wanted.filter(({ id }) => !list.some((one) => one.id === id))];
}
