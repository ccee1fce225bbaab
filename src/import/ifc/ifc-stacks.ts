/** Parts that lie above each other, as layers of one slab: levels are those of the uppermost, seen from above. */

import { overlay } from '../../edit/overlay.ts';
import type { PointM } from '../../model/scene-file.ts';
import { isFlat, levelOn, type Sheet, sheetsOf } from './ifc-faces.ts';
import type { Xyz } from './ifc-model.ts';
import { type Body, laidOut, type SolidOptions } from './ifc-solids.ts';
import { directed } from './ifc-steps.ts';

interface Part {
  readonly body: Body;
  readonly areas: Parameters<typeof overlay>[0];
  readonly sheets: readonly Sheet[];
}

type StackOptions = Pick<SolidOptions, 'chord' | 'same'>;

/** The same bodies, their levels only where none of the others lies higher. */
export function uncovered(bodies: readonly Body[], options: StackOptions): readonly Body[] {
  if (bodies.length < 2) return bodies;
  const parts = bodies.map((body): Part => {
    const areas = body.tops.map(({ outer, holes }) => ({
      outline: laidOut(outer, options.chord),
      holes: holes.map((hole) => laidOut(hole, options.chord)),
    }));
    return { body, areas, sheets: sheetsOf(body.sides()).filter(isFlat) };
  });
  return parts.map((part) => {
    const above = parts.filter((other) => other !== part && touches(other, part) && isHigher(other, part, options));
    return above.length === 0 ? part.body : withoutCovered(part, above, options);
  });
}

function touches(a: Part, b: Part): boolean {
  return a.sheets.some(({ box }) =>
    b.sheets.some(({ box: other }) => box.minX < other.maxX && other.minX < box.maxX && box.minY < other.maxY && other.minY < box.maxY),
  );
}

function topAt({ sheets }: Part, [x, y]: PointM): number | null {
  const levels = sheets.map((sheet) => levelOn(sheet, x, y)).filter((level) => level !== null);
  return levels.length === 0 ? null : Math.max(...levels);
}

/** Whether one lies above another in the middle of what they have in common. */
function isHigher(upper: Part, lower: Part, { same }: StackOptions): boolean {
  const count = upper.areas.length;
  const both = (covered: readonly boolean[]) => covered.some((is, i) => is && i < count) && covered.some((is, i) => is && i >= count);
  return overlay([...upper.areas, ...lower.areas], both, same / 100).some(({ outline }) => {
    const middle = [0, 1].map((axis) => outline.reduce((sum, point) => sum + point[axis], 0) / outline.length) as [number, number];
    return [middle, ...outline].some((place) => {
      const [over, under] = [topAt(upper, place), topAt(lower, place)];
      return over !== null && under !== null && over > under + 10 * same;
    });
  });
}

function withoutCovered(part: Part, above: readonly Part[], { same }: StackOptions): Body {
  const { body, areas } = part;
  const own = (covered: readonly boolean[]) =>
    covered.some((is, i) => is && i < areas.length) && !covered.some((is, i) => is && i >= areas.length);
  const seen = overlay([...areas, ...above.flatMap((other) => other.areas)], own, same / 100);
  const isFree = ([x, y, z]: Xyz) => !above.some((other) => (topAt(other, [x, y]) ?? -Infinity) > z + 10 * same);
  const rings = seen.flatMap(({ outline, holes = [] }) =>
    [outline, ...holes].map((ring, i) =>
      directed(
        ring.map(([x, y]): Xyz => [x, y, topAt(part, [x, y]) ?? nearestLevel(body, x, y)]),
        i > 0,
      ),
    ),
  );
  return {
    ...body,
    rings,
    spots: [...rings.flat(), ...body.spots.filter(isFree)],
    folds: body.folds.filter((ends) => ends.every(isFree)),
    covered: body.covered + 1,
  };
}

function nearestLevel({ spots, high }: Body, x: number, y: number): number {
  let [least, level] = [Infinity, high];
  for (const spot of spots) {
    const far = Math.hypot(spot[0] - x, spot[1] - y);
    if (far < least) [least, level] = [far, spot[2]];
  }
  return level;
}
