/** Views of the walkthrough: those of the scene, or sensible ones made from what it holds. File coordinates. */

import type { Snapshot } from '../../model/engine.ts';
import type { Point3M, PointM, SceneView } from '../../model/scene-file.ts';
import type { Texts } from '../text/text.ts';
import { bayVerdicts } from './bay-verdict.ts';
import { boxOf, boxSizeM, innerPoint } from './place.ts';

type Words = Texts['walk']['made'];

interface Look {
  readonly id: string;
  readonly name: string;
  readonly says: string;
}

/** Looks down on a place from the south-east. */
function lookingAt(look: Look, at: Point3M, awayM: number): SceneView {
  const eye: Point3M = [at[0] + 0.45 * awayM, at[1] - 0.72 * awayM, at[2] + 0.52 * awayM];
  return { ...look, eye, target: at };
}

/** All views in the order they are stepped through. */
export function walkViews(snapshot: Snapshot, words: Words): readonly SceneView[] {
  const given = snapshot.scene.views ?? [];
  return given.length > 0 ? given : madeViews(snapshot, words);
}

function madeViews(snapshot: Snapshot, words: Words): SceneView[] {
  const { scene, picture, originM, datumM } = snapshot;
  const { min, max } = picture.boundsM;
  const sizeM = Math.hypot(max[0] - min[0], max[1] - min[1]);
  const levelM = datumM + (min[2] + max[2]) / 2;
  const middle: Point3M = [originM[0] + (min[0] + max[0]) / 2, originM[1] + (min[1] + max[1]) / 2, levelM];
  const on = ([x, y]: PointM): Point3M => [x, y, levelM];
  const views = [lookingAt({ id: 'overview', ...words.overview }, middle, 1.5 * sizeM)];
  for (const { id, at } of scene.accessPoints ?? []) {
    const away = Math.hypot(at[0] - middle[0], at[1] - middle[1]) || 1;
    const back = 0.15 * sizeM;
    const eye: Point3M = [at[0] + ((at[0] - middle[0]) / away) * back, at[1] + ((at[1] - middle[1]) / away) * back, levelM + 0.2 * sizeM];
    views.push({ id: `access-${id}`, ...words.access(id), eye, target: middle });
  }
  const deep = deepest(snapshot);
  if (deep !== null)
    views.push({ ...lookingAt({ id: 'deepest', ...words.deepest(deep.name, deep.depthMm) }, on(deep.at), 9), show: { lift: true } });
  const [worst] = bayVerdicts(snapshot.report, scene);
  const bay = scene.deck.bays.find(({ id }) => id === worst?.id);
  const inBay = bay && (worst?.governing.at ?? innerPoint(bay.outline));
  if (bay && worst && inBay) {
    const look = { id: 'critical', ...words.critical(bay.id, worst.governing.utilisation) };
    views.push(lookingAt(look, on(inBay), 1.6 * boxSizeM(boxOf(bay.outline))));
  }
  const route = scene.traffic?.[0]?.route;
  const [from, to] = [route?.[0], route?.at(-1)];
  if (from && to) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const eye: Point3M = [from[0] - (6 * (to[0] - from[0])) / length, from[1] - (6 * (to[1] - from[1])) / length, levelM + 4];
    views.push({ id: 'lane', ...words.lane, eye, target: on([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]) });
  }
  return views;
}

/** Zone with the thickest layers. */
function deepest({ scene, picture }: Snapshot): { readonly name: string; readonly depthMm: number; readonly at: PointM } | null {
  let best: { readonly owner: string; readonly depthM: number } | null = null;
  for (const { owner, plan, heights } of picture.prisms) {
    const count = plan.length / 2;
    for (let v = 0; owner !== '' && v < count; v++) {
      const depthM = (heights[heights.length - count + v] ?? 0) - (heights[v] ?? 0);
      if (best === null || depthM > best.depthM) best = { owner, depthM };
    }
  }
  const zone = scene.zones.find(({ id }) => id === best?.owner);
  const at = zone && innerPoint(zone.outline, zone.holes);
  return zone && at && best ? { name: zone.name ?? zone.id, depthMm: best.depthM * 1000, at } : null;
}
