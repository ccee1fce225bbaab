/** A zone as lightening sees it: the room between membrane and finished level, cell by cell, and what must stay deep enough. */

import type { Evaluation } from '../core/evaluation.ts';
import { cellAt } from '../core/geometry/grid.ts';
import { fixedThicknessM } from '../core/layers/coefficients.ts';
import type { RuleLimits, TreeFacts, ZoneFacts } from '../model/rule-input.ts';
import type { SceneBuildUp, SceneFile } from '../model/scene-file.ts';
import type { MaterialOf } from '../project/materials.ts';
import { ruleLimits, treeFacts, zoneFacts } from '../project/resolve-rules.ts';

export interface Ground {
  /** Index of the zone. */
  readonly z: number;
  readonly id: string;
  readonly buildUp: SceneBuildUp;
  /** Levels fix the top, so that the make-up layer gives way by itself. */
  readonly fixedTop: boolean;
  readonly areaM2: number;
  /** From membrane to finish as it comes out now: of each cell of the zone [m]. */
  readonly roomM: Float64Array;
  readonly leastRoomM: number;
  readonly greatestRoomM: number;
  readonly roomM3: number;
  readonly facts: ZoneFacts;
  readonly trees: readonly (TreeFacts & { readonly roomM: number })[];
}

export interface Site {
  readonly scene: SceneFile;
  readonly on: Evaluation;
  readonly materialOf: MaterialOf;
  readonly limits: RuleLimits;
}

/** All zones on the deck. */
export function groundsOf(site: Site): Ground[] {
  const { scene, on, materialOf } = site;
  const facts = new Map(zoneFacts(scene, on, materialOf).map((zone) => [zone.id, zone]));
  const trees = treeFacts(scene, on);
  return scene.zones.flatMap((zone, z): Ground[] => {
    const fact = facts.get(zone.id);
    const buildUp = scene.buildups.find(({ id }) => id === zone.buildup);
    if (!fact || !buildUp) return [];
    return [
      {
        ...roomOf(on, z),
        z,
        id: zone.id,
        buildUp,
        facts: fact,
        trees: treesIn(
          on,
          z,
          trees.filter((tree) => tree.zone === zone.id),
        ),
      },
    ];
  });
}

function roomOf(on: Evaluation, z: number): Pick<Ground, 'fixedTop' | 'areaM2' | 'roomM' | 'leastRoomM' | 'greatestRoomM' | 'roomM3'> {
  const { buildUp, finish } = on.input.zones[z];
  const fixedM = fixedThicknessM(buildUp);
  const { cells, shares, areaM2 } = on.prepared.zones[z];
  const made = on.makeUps[z].thicknessM;
  const roomM = Float64Array.from(cells, (_, i) => fixedM + made[made.length === 1 ? 0 : i]);
  let sum = 0;
  for (let i = 0; i < cells.length; i++) sum += shares[i] * roomM[i];
  return {
    fixedTop: finish.kind !== 'build-up',
    areaM2,
    roomM,
    leastRoomM: roomM.reduce((least, room) => Math.min(least, room), Infinity),
    greatestRoomM: roomM.reduce((most, room) => Math.max(most, room), 0),
    roomM3: sum * on.input.cellM ** 2,
  };
}

function treesIn(on: Evaluation, z: number, trees: readonly TreeFacts[]): Ground['trees'] {
  const { cells } = on.prepared.zones[z];
  const fixedM = fixedThicknessM(on.input.zones[z].buildUp);
  const made = on.makeUps[z].thicknessM;
  return trees.map((tree) => {
    const [x, y] = [tree.at[0] - on.input.originM[0], tree.at[1] - on.input.originM[1]];
    const position = cells.indexOf(cellAt(on.prepared.ground.grid, x, y));
    return { ...tree, roomM: position < 0 ? fixedM : fixedM + made[made.length === 1 ? 0 : position] };
  });
}

/** Limits of a scene, with what all files of this folder need. */
export function siteOf(scene: SceneFile, on: Evaluation, materialOf: MaterialOf): Site {
  return { scene, on, materialOf, limits: ruleLimits(scene.limits) };
}
