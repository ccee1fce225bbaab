/** An edited scene shows what the same scene shows when it is opened: report, facts, views, maps and picture, to the bit. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DECK_MAP_KINDS } from '../../src/core/maps.ts';
import type { Engine, OpenAnswer, Preview, Snapshot, Spoken } from '../../src/model/engine.ts';
import type { MapKind } from '../../src/model/maps.ts';
import type { PointM, SceneFile, SceneLayer } from '../../src/model/scene-file.ts';
import { createEngine } from '../../src/worker/engine.ts';
import { randomFrom } from '../helpers/scene-builder.ts';

const SEED = Number(process.env.SEED ?? 7107);
/** Edits per scene: few, as each is held against a whole evaluation. */
const EDITS_IN_A_ROW = Number(process.env.EDITS ?? 6);

type Random = () => number;
type Edit = (scene: SceneFile, random: Random) => Partial<SceneFile>;
const pick = <T>(random: Random, list: readonly T[]): number => Math.floor(random() * list.length);
const changed = <T>(list: readonly T[], at: number, change: (entry: T) => T): T[] =>
  list.map((entry, i) => (i === at ? change(entry) : entry));
const off = (random: Random, byM: number) => Math.round((2 * random() - 1) * byM * 1000) / 1000;
const moved = (random: Random, byM: number) => {
  const [dx, dy] = [off(random, byM), off(random, byM)];
  return ([x, y]: PointM): PointM => [x + dx, y + dy];
};

function thicker(layer: SceneLayer, random: Random): SceneLayer {
  const { thicknessMm } = layer;
  if (thicknessMm === undefined) return layer;
  if (typeof thicknessMm === 'number') return { ...layer, thicknessMm: Math.max(5, thicknessMm + Math.round(off(random, 60))) };
  return { ...layer, thicknessMm: { ...thicknessMm, max: thicknessMm.max + Math.round(100 * random()) } };
}

const EDITS: Readonly<Record<string, Edit>> = {
  'a layer': ({ buildups }, random) => ({
    buildups: changed(buildups, pick(random, buildups), (built) => {
      return { ...built, layers: changed(built.layers, pick(random, built.layers), (layer) => thicker(layer, random)) };
    }),
  }),
  'a corner of a zone': ({ zones }, random) => ({
    zones: changed(zones, pick(random, zones), (zone) => ({
      ...zone,
      outline: changed(zone.outline, pick(random, zone.outline), moved(random, 0.3)),
    })),
  }),
  'the build-up of a zone': ({ zones, buildups }, random) => ({
    zones: changed(zones, pick(random, zones), (zone) => ({ ...zone, buildup: buildups[pick(random, buildups)].id })),
  }),
  'the place of an object': ({ objects = [] }, random) => ({
    objects: changed(objects, pick(random, objects), (one) => ('at' in one ? { ...one, at: moved(random, 2)(one.at) } : one)),
  }),
  'a route': ({ traffic = [] }, random) => ({
    traffic: changed(traffic, pick(random, traffic), (one) => ({ ...one, route: one.route.map(moved(random, 0.5)) })),
  }),
  'an outlet': ({ deck }, random) => ({
    deck: {
      ...deck,
      outlets: changed(deck.outlets ?? [], pick(random, deck.outlets ?? []), (one) => ({ ...one, at: moved(random, 0.6)(one.at) })),
    },
  }),
  'the limits of a bay': ({ deck }, random) => ({
    deck: { ...deck, bays: changed(deck.bays, pick(random, deck.bays), (bay) => ({ ...bay, stageKNm2: 5 + Math.round(10 * random()) })) },
  }),
  'a stage left out': ({ stages = [] }) => ({ stages: stages.slice(0, -1) }),
};

/** Mostly what is dragged: layers and corners. */
const ORDER = ['a layer', 'a corner of a zone', 'a layer', ...Object.keys(EDITS)];

function different(a: unknown, b: unknown, path: string): string[] {
  if (Object.is(a, b)) return [];
  if (ArrayBuffer.isView(a) && ArrayBuffer.isView(b)) {
    const bytes = (view: ArrayBufferView) => Buffer.from(view.buffer, view.byteOffset, view.byteLength);
    return a.constructor === b.constructor && bytes(a).equals(bytes(b)) ? [] : [path];
  }
  if (a instanceof Map && b instanceof Map) return different([...a], [...b], path);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return [`${path}: ${a} instead of ${b}`];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) => {
    return different(a[key as keyof typeof a], b[key as keyof typeof b], `${path}.${key}`);
  });
}

const STAGED_MAPS: readonly MapKind[] = [...DECK_MAP_KINDS, 'reach', 'wheel-membrane', 'wheel-bearing'];
const WATER_MAPS: readonly MapKind[] = ['catchment', 'flow', 'ponding', 'blocked'];

async function mapsOf(engine: Engine, scene: SceneFile, stage: number | null): Promise<unknown[]> {
  const maps = await Promise.all(STAGED_MAPS.map((kind) => engine.map(kind, stage)));
  if (!scene.rain && !scene.deck.outlets?.length) return maps;
  const outlet = scene.deck.outlets?.find(({ kind }) => kind === 'outlet')?.id ?? null;
  return [...maps, ...(await Promise.all(WATER_MAPS.map((kind) => engine.map(kind, null, outlet))))];
}

/** What a preview shows, against the same scene opened. */
async function expectPreview({ map, ...preview }: Preview): Promise<void> {
  const fresh = createEngine();
  const opened = await fresh.open(JSON.stringify(preview.scene), false);
  if (!opened.ok) throw new Error('refused when opened');
  const wanted = Object.fromEntries(Object.keys(preview).map((key) => [key, opened.snapshot[key as keyof Snapshot]]));
  const bare = (shown: object) => ({ ...shown, evaluatedMs: 0, history: null });
  expect(different(bare(preview), bare(wanted), 'preview')).toEqual([]);
  expect(different(map, await fresh.map('utilisation', null), 'map of a preview')).toEqual([]);
}

/** A drag whose reports are never asked for, begun and overtaken, or made; in the end all is of the last state. */
async function drag(engine: Engine, from: Snapshot, edit: Edit, random: Random): Promise<Snapshot> {
  let shown = from;
  const take = (spoken: Spoken | null) => {
    if (spoken === null) return;
    const { warnings: _, ...words } = spoken;
    shown = { ...shown, ...words };
  };
  for (let n = 0; n < 3; n++) {
    const begun = random() < 0.7 ? engine.finish(true) : null;
    // As far as the report gets by then.
    for (let breaths = Math.floor(4 * random()); breaths > 0; breaths--) await new Promise((done) => setTimeout(done));
    const part = { kind: 'parts', act: 'change', part: 'scene', names: [] } as const;
    const within = { gesture: 1, map: { kind: 'utilisation', stage: null } } as const;
    const answer = await engine.edit(edit(shown.scene, random), part, within);
    take(await begun);
    if (!answer.ok) continue;
    if ('snapshot' in answer) {
      shown = answer.snapshot;
      continue;
    }
    await expectPreview(answer.preview);
    const { map: _, ...preview } = answer.preview;
    shown = { ...shown, ...preview };
  }
  take(await engine.finish(false));
  return shown;
}

async function expectAsOpened(edited: Engine, answer: OpenAnswer, name: string, maps: boolean): Promise<void> {
  if (!answer.ok) throw new Error(`${name}: refused`);
  const { scene } = answer.snapshot;
  const fresh = createEngine();
  const opened = await fresh.open(JSON.stringify(scene), false);
  if (!opened.ok) throw new Error(`${name}: refused when opened`);
  const shown = ({ evaluatedMs: _, history: __, ...rest }: typeof opened.snapshot) => rest;
  expect(different(shown(answer.snapshot), shown(opened.snapshot), name).slice(0, 5)).toEqual([]);
  if (!maps) return;
  const stage = opened.snapshot.stages.length > 1 ? 1 : null;
  expect(different(await mapsOf(edited, scene, stage), await mapsOf(fresh, scene, stage), `${name}, maps`).slice(0, 5)).toEqual([]);
}

describe(`edits in a row (seed ${SEED})`, () => {
  it.each(['terrace', 'courtyard', 'problem-deck'])(
    '%s',
    async (file) => {
      const random = randomFrom(SEED);
      const text = JSON.parse(readFileSync(new URL(`../../scenes/${file}.scene.json`, import.meta.url), 'utf8')) as SceneFile;
      const engine = createEngine();
      const first = await engine.open(JSON.stringify({ ...text, grid: { cellM: 0.5 } }), false);
      if (!first.ok) throw new Error('the demo scene does not open');
      let { scene } = first.snapshot;
      let taken = 0;
      for (let n = 0; taken < EDITS_IN_A_ROW && n < 3 * EDITS_IN_A_ROW; n++) {
        const name = ORDER[pick(random, ORDER)];
        const answer = await engine.edit(EDITS[name](scene, random), { kind: 'parts', act: 'change', part: 'scene', names: [] });
        // What a file could not hold is refused, and leaves all as it was.
        if (!answer.ok) continue;
        if (!('snapshot' in answer)) throw new Error('without its report, though no gesture goes on');
        taken++;
        await expectAsOpened(engine, answer, `${n}: ${name}`, taken % 3 === 0);
        scene = answer.snapshot.scene;
      }
      expect(taken).toBeGreaterThan(EDITS_IN_A_ROW / 2);
    },
    60_000,
  );
  it.each(['terrace', 'courtyard', 'problem-deck'])(
    '%s, dragged',
    async (file) => {
      const random = randomFrom(SEED + 1);
      const text = JSON.parse(readFileSync(new URL(`../../scenes/${file}.scene.json`, import.meta.url), 'utf8')) as SceneFile;
      const engine = createEngine();
      const first = await engine.open(JSON.stringify({ ...text, grid: { cellM: 0.5 } }), false);
      if (!first.ok) throw new Error('the demo scene does not open');
      let { snapshot } = first;
      for (const name of ['a layer', 'a corner of a zone']) {
        snapshot = await drag(engine, snapshot, EDITS[name], random);
        await expectAsOpened(engine, { ok: true, snapshot, warnings: [] }, `${name}, dragged`, true);
      }
      expect(snapshot).not.toBe(first.snapshot);
    },
    60_000,
  );
});
