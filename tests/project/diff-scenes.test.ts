/** Comparing scenes: each of several edits is named exactly once, and the other way round likewise. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SceneChange } from '../../src/model/scene-change.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { diffReports } from '../../src/project/diff-reports.ts';
import { diffScenes } from '../../src/project/diff-scenes.ts';
import { changeLine, DIFF_TEXT } from '../../src/project/diff-text.ts';
import { bay, read, rect } from '../helpers/scene-builder.ts';
import { gardenScene } from '../properties/random-scene.ts';

type Loose = Record<string, unknown>;

interface Edit {
  readonly does: (scene: SceneFile) => void;
  /** Kind, item, id and path of the one change it makes. */
  readonly gives: readonly [kind: string, item: string, id: string, what: string];
}

const named = (list: readonly { readonly id: string }[] | undefined, id: string) =>
  (list ?? []).find((one) => one.id === id) as unknown as Loose;

/** Where the stage names it too, as in any valid file. */
function renamePlanter(scene: SceneFile): void {
  named(scene.objects, 'P1').id = 'Planter';
  named(scene.stages, 'S3').place = [{ roles: ['substrate'] }, { objects: ['T1', 'W1', 'Planter'] }];
}

/** Independent of each other, so that any subset may be made at once. */
const EDITS: readonly Edit[] = [
  { does: ({ deck }) => (named(deck.bays, 'SE').permanentKNm2 = 6.5), gives: ['changed', 'bay', 'SE', 'permanentKNm2'] },
  { does: ({ deck }) => ((named(deck.bays, 'SW').basis as Loose).revision = 'B'), gives: ['changed', 'bay', 'SW', 'basis.revision'] },
  { does: ({ deck }) => ((named(deck.bays, 'SW').basis as Loose).date = '2026-07-01'), gives: ['changed', 'bay', 'SW', 'basis.date'] },
  { does: ({ deck }) => (named(deck.bays, 'NW').vehicles = ['fire-16t']), gives: ['changed', 'bay', 'NW', 'vehicles'] },
  { does: ({ deck }) => (named(deck.bays, 'NE').id = 'North-east'), gives: ['renamed', 'bay', 'NE', 'id'] },
  { does: ({ deck }) => (deck.bays as unknown as object[]).push(bay('New', rect(0, 0, 1, 1))), gives: ['added', 'bay', 'New', ''] },
  { does: ({ deck }) => ((deck as unknown as Loose).slabMm = 275), gives: ['changed', 'deck', '', 'slabMm'] },
  {
    does: ({ zones }) => (named(zones, 'Middle').finish = { kind: 'level', levelM: 0.6 }),
    gives: ['changed', 'zone', 'Middle', 'finish.levelM'],
  },
  { does: ({ zones }) => (named(zones, 'East').imposedKNm2 = 3), gives: ['changed', 'zone', 'East', 'imposedKNm2'] },
  {
    does: ({ buildups }) => ((buildups[1].layers[2] as unknown as Loose).thicknessMm = 199),
    gives: ['changed', 'build-up', 'planted', 'layers[soil].thicknessMm'],
  },
  {
    does: ({ materials }) => ((named(materials, 'light') as Loose & { density: Loose }).density = { dry: 200, saturated: 310 }),
    gives: ['changed', 'material', 'light', 'density.saturated'],
  },
  { does: ({ objects }) => (named(objects, 'T1').massKg = 1800), gives: ['changed', 'object', 'T1', 'massKg'] },
  { does: ({ objects }) => (named(objects, 'W1').kNm = 7), gives: ['changed', 'object', 'W1', 'kNm'] },
  { does: (scene) => renamePlanter(scene), gives: ['renamed', 'object', 'P1', 'id'] },
  { does: (scene) => (named(scene.stages, 'S1').floodTestMm = 80), gives: ['changed', 'stage', 'S1', 'floodTestMm'] },
  {
    does: (scene) => ((named(scene.stages, 'S2').stockpiles as Loose[])[0].heightM = 0.5),
    gives: ['changed', 'stage', 'S2', 'stockpiles[K1].heightM'],
  },
  { does: (scene) => ((scene as unknown as Loose).name = 'Other garden'), gives: ['changed', 'scene', '', 'name'] },
];

const edited = (scene: SceneFile, edits: readonly Edit[]): SceneFile => {
  const copy = structuredClone(scene) as SceneFile;
  for (const { does } of edits) does(copy);
  return copy;
};

const key = ({ kind, item, id, what }: SceneChange) => JSON.stringify([kind, item, id, what]);

describe('diffScenes', () => {
  it('names any subset of edits, each exactly once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.subarray([...EDITS]), (seed, edits) => {
        const scene = gardenScene(seed);
        const changes = diffScenes(scene, edited(scene, edits));
        expect(changes.map(key).sort()).toEqual(edits.map(({ gives }) => JSON.stringify(gives)).sort());
      }),
      { numRuns: 120 },
    );
  });

  it('mirrors: the other way round what was before is after, what was added is removed', () => {
    fc.assert(
      fc.property(fc.subarray([...EDITS]), (edits) => {
        const [a, b] = [gardenScene(3), edited(gardenScene(3), edits)];
        const mirror = { added: 'removed', removed: 'added' } as Record<string, string>;
        const told = (changes: readonly SceneChange[], flip: boolean) =>
          changes
            .map(({ kind, item, what, before, after }) =>
              JSON.stringify(flip ? [mirror[kind] ?? kind, item, what, after, before] : [kind, item, what, before, after]),
            )
            .sort();
        expect(told(diffScenes(b, a), false)).toEqual(told(diffScenes(a, b), true));
      }),
      { numRuns: 60 },
    );
  });

  it('finds nothing between a scene and itself', () => {
    for (const seed of [1, 2, 3]) expect(diffScenes(gardenScene(seed), structuredClone(gardenScene(seed)))).toEqual([]);
  });

  it('puts the load plan first and gives units', () => {
    const scene = gardenScene(1);
    const changes = diffScenes(scene, edited(scene, EDITS));
    const groups = changes.map(({ group }) => group);
    expect(groups.lastIndexOf('load plan')).toBe(groups.filter((group) => group === 'load plan').length - 1);
    expect(changes.find(({ what }) => what === 'permanentKNm2')).toMatchObject({ before: 7, after: 6.5, unit: 'kN/m²' });
    expect(changes.find(({ what }) => what === 'slabMm')).toMatchObject({ before: null, after: 275, unit: 'mm' });
  });

  it('gives the name of what has one, beside its id', () => {
    const scene = gardenScene(1);
    const { name } = named(scene.stages, 'S1') as unknown as { name: string };
    const text = DIFF_TEXT.en;
    const [flooded] = diffScenes(
      scene,
      edited(scene, [{ does: (one) => (named(one.stages, 'S1').floodTestMm = 80), gives: ['', '', '', ''] }]),
    );
    expect(changeLine(flooded, text)).toBe(`stage S1 (${name}): floodTestMm before 100 mm; now 80 mm`);
    const [gone] = diffScenes(scene, { ...scene, stages: (scene.stages ?? []).filter(({ id }) => id !== 'S1') });
    expect(changeLine(gone, text)).toBe(`stage S1 (${name}) is gone`);
    // A new name is told by itself.
    const [called] = diffScenes(
      scene,
      edited(scene, [{ does: (one) => (named(one.stages, 'S1').name = 'Else'), gives: ['', '', '', ''] }]),
    );
    expect(changeLine(called, text)).toBe(`stage S1: name before ${name}; now Else`);
  });

  it('gives the area an outline gains and loses', () => {
    const scene = gardenScene(1);
    // The bay of 6 m × 4.5 m moved by 1 m: a strip of 4.5 m² each side.
    const moved = edited(scene, [{ does: ({ deck }) => (named(deck.bays, 'SW').outline = rect(1, 0, 7, 4.5)), gives: ['', '', '', ''] }]);
    const [change, ...rest] = diffScenes(scene, moved);
    expect(rest).toEqual([]);
    expect([change.kind, change.group, change.what]).toEqual(['moved', 'geometry', 'outline']);
    expect(change.area?.addedM2).toBeCloseTo(4.5, 9);
    expect(change.area?.removedM2).toBeCloseTo(4.5, 9);
  });
});

describe('diffReports', () => {
  it('gives utilisation before and after of a bay whose limit changed, and of no other', () => {
    const scene = gardenScene(2);
    const [a, b] = [read(scene), read(edited(scene, [EDITS[0]]))];
    const { bays, zones, saturatedKN } = diffReports(a.report, b.report);
    expect(bays.map(({ id }) => id)).toEqual(['SE']);
    // 7 of 7 permitted becomes 7 of 6.5: 7 / 6.5 times as much.
    expect(bays[0].utilisation.after! / bays[0].utilisation.before!).toBeCloseTo(7 / 6.5, 9);
    expect(zones).toEqual([]);
    expect(saturatedKN.after).toBe(saturatedKN.before);
  });
});
