/** Decides where and how large a drawing lies: stray points, unit, degrees, order of axes. Asks where it is in doubt. */

import type { Choice, DrawingBox } from '../model/drawing.ts';
import type { PointM } from '../model/scene-file.ts';
import { type Affine, chainOf, UNMOVED } from './curves.ts';
import { metresPerDegree } from './degrees.ts';
import { choiceOf, type Gathering } from './gathering.ts';
import { guessUnit, type LengthUnit, OFFERED, UNITS } from './length-unit.ts';
import { visitPoints } from './raw-shapes.ts';
import { strayPoints, withoutStray } from './stray-points.ts';
import type { Size } from './words/number-words.ts';
import type { Axes } from './words/term-words.ts';

export interface PlaceHints {
  /** Unit the file gives. */
  readonly unit: LengthUnit | null;
  /** How sure the unit is: of a model it counts whatever the size, and one that is not known is asked even where another fits. */
  readonly unitIs?: 'given' | 'unknown';
  /** Whether the file says its numbers are longitude and latitude; null where it says nothing. */
  readonly degrees: boolean | null;
  /** Box of what the scene holds already [m]. */
  readonly around?: DrawingBox | undefined;
}

export interface Placed {
  /** From the file's numbers to metres on the plan. */
  readonly move: Affine;
  /** Metres per unit of the file; null for degrees. */
  readonly scale: number | null;
  readonly unit: LengthUnit | 'degrees';
}

const TURNS: Readonly<Record<Axes, Affine>> = {
  xy: UNMOVED,
  yx: { a: 0, b: 1, c: 1, d: 0, e: 0, f: 0 },
  'x-y': { ...UNMOVED, d: -1 },
  '-xy': { ...UNMOVED, a: -1 },
};
/** Beyond this, coordinates are those of a country's grid [m]. */
const FAR_M = 100_000;

/** Settles all of it; shapes stay in the file's numbers. */
export function settlePlace(gather: Gathering, hints: PlaceHints): Placed | null {
  const stray = strayPoints(gather.shapes);
  const core = boxOf(gather, stray.isStray);
  if (core === null) return null;
  const probable = hints.degrees === true ? { metres: 111_000 } : UNITS[guessUnit(sideOf(core), hints.unit).unit];
  if (stray.count > 0) {
    const farM = Math.round(stray.far * probable.metres);
    const [x, y] = stray.at;
    const choices = [choiceOf('leave', 'STRAY_LEAVE', {}), choiceOf('keep', 'STRAY_KEEP', {})];
    const taken = gather.ask({ id: 'stray', code: 'STRAY', values: { count: stray.count, farM, x, y }, choices, guess: 'leave' });
    if (taken === 'leave') {
      gather.shapes = withoutStray(gather, stray.isStray);
      gather.mend('STRAY_DROPPED', { count: stray.count, farM });
    }
  }
  const box = boxOf(gather, () => false);
  if (box === null) return null;
  const { move, scale, unit } = settleUnit(gather, box, hints);
  const axes = settleAxes(gather, moveBox(move, box), { scale, around: hints.around });
  const whole = chainOf(TURNS[axes], move);
  const placed = moveBox(whole, box);
  const [x, y] = [Math.round(placed.minX), Math.round(placed.minY)];
  if (Math.max(Math.abs(x), Math.abs(y)) > FAR_M) gather.mend('FAR_FROM_ORIGIN', { x, y });
  return { move: whole, scale, unit };
}

function boxOf(gather: Gathering, skip: (x: number, y: number) => boolean): DrawingBox | null {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const shape of gather.shapes) {
    visitPoints(shape, (x, y) => {
      if (skip(x, y)) return;
      box.minX = Math.min(box.minX, x);
      box.minY = Math.min(box.minY, y);
      box.maxX = Math.max(box.maxX, x);
      box.maxY = Math.max(box.maxY, y);
    });
  }
  return box.minX <= box.maxX ? box : null;
}

function sideOf({ minX, minY, maxX, maxY }: DrawingBox): number {
  return Math.max(maxX - minX, maxY - minY);
}

function moveBox({ a, b, c, d, e, f }: Affine, { minX, minY, maxX, maxY }: DrawingBox): DrawingBox {
  const xs = [a * minX + c * minY + e, a * maxX + c * maxY + e];
  const ys = [b * minX + d * minY + f, b * maxX + d * maxY + f];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

function sizeOf({ minX, minY, maxX, maxY }: DrawingBox, metres = 1): Size {
  return { width: (maxX - minX) * metres, height: (maxY - minY) * metres };
}

/** Values that could be longitude and latitude of one site: within the globe, and less than half a degree apart. */
function looksLikeDegrees(box: DrawingBox): boolean {
  const { minX, minY, maxX, maxY } = box;
  const inside = minX >= -180 && maxX <= 180 && minY >= -90 && maxY <= 90;
  return inside && sideOf(box) < 0.5 && Math.max(Math.abs(minX), Math.abs(minY)) > sideOf(box);
}

function settleUnit(gather: Gathering, box: DrawingBox, { unit: said, degrees, unitIs }: PlaceHints): Placed {
  const likely = degrees ?? (said === null && looksLikeDegrees(box));
  const fixed = unitIs === 'given' && said !== null ? { unit: said, certain: true } : null;
  const guess = likely ? { unit: 'degrees' as const, certain: degrees === true } : (fixed ?? guessUnit(sideOf(box), said));
  const units = [...new Set([guess.unit, ...(said === null ? [] : [said]), ...OFFERED])].filter(
    (unit): unit is LengthUnit => unit !== 'degrees',
  );
  const choices: Choice[] = units.map((value) => {
    const size = sizeOf(box, UNITS[value].metres);
    return choiceOf(value, 'UNIT', { ...size, unit: value }, [size.width, size.height]);
  });
  if (likely || looksLikeDegrees(box)) choices.unshift(degreesChoice(box));
  const asked = { id: 'unit', choices, guess: guess.unit, certain: guess.certain && unitIs !== 'unknown' };
  const unit = (
    likely
      ? gather.ask({ ...asked, code: 'UNIT_DEGREES', values: { x: box.minX, y: box.minY } })
      : !guess.certain && said !== null
        ? gather.ask({ ...asked, code: 'UNIT_DOUBTED', values: { ...sizeOf(box, UNITS[said].metres), said, guess: guess.unit } })
        : gather.ask({ ...asked, code: 'UNIT', values: { ...sizeOf(box), said: said ?? 'none' } })
  ) as Placed['unit'];
  if (unit === 'degrees') return fromDegrees(gather, box);
  const { metres } = UNITS[unit];
  if (unit !== 'm') {
    const { width: widthM, height: heightM } = sizeOf(box, metres);
    gather.mend('UNIT_CHANGED', { ...sizeOf(box), unit, widthM, heightM });
  }
  return { move: { ...UNMOVED, a: metres, d: metres }, scale: metres, unit };
}

function degreesChoice(box: DrawingBox): Choice {
  const { east, north } = metresPerDegree((box.minY + box.maxY) / 2);
  const sizeM: PointM = [(box.maxX - box.minX) * east, (box.maxY - box.minY) * north];
  return choiceOf('degrees', 'DEGREES', { width: sizeM[0], height: sizeM[1] }, sizeM);
}

function fromDegrees(gather: Gathering, box: DrawingBox): Placed {
  const [longitude, latitude] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2].map((value) => Number(value.toFixed(7)));
  const { east, north } = metresPerDegree(latitude);
  gather.mend('DEGREES_CHANGED', { latitude, longitude });
  return { move: { a: east, b: 0, c: 0, d: north, e: -longitude * east, f: -latitude * north }, scale: null, unit: 'degrees' };
}

function settleAxes(gather: Gathering, box: DrawingBox, { scale, around }: { scale: number | null; around: DrawingBox | undefined }): Axes {
  const doubt = scale === null ? null : axesDoubt(box, around);
  const choices = (Object.keys(TURNS) as Axes[]).map((value) => {
    const turned = moveBox(TURNS[value], box);
    return choiceOf(value, 'AXES', { axes: value }, [turned.maxX - turned.minX, turned.maxY - turned.minY]);
  });
  const axes = gather.ask({
    id: 'axes',
    code: doubt?.code ?? 'AXES',
    values: {},
    choices,
    guess: doubt?.guess ?? 'xy',
    certain: doubt === null,
  }) as Axes;
  if (axes !== 'xy') gather.mend('AXES_CHANGED', { axes });
  return axes;
}

/** Reasons to think that the axes are not east and north; null where there is none. */
function axesDoubt(
  box: DrawingBox,
  around: DrawingBox | undefined,
): { readonly guess: Axes; readonly code: 'AXES_APART' | 'AXES_NORTHING' } | null {
  if (around !== undefined) {
    const meets = (axes: Axes) => overlap(moveBox(TURNS[axes], box), around);
    const other = (['yx', 'x-y', '-xy'] as const).find(meets);
    if (meets('xy')) return null;
    if (other !== undefined) return { guess: other, code: 'AXES_APART' };
  }
  // Eastings of a country's grid have six digits before the point, northings seven (with the zone before it, eight and seven).
  const northFirst = box.minX > 1e6 && box.maxX < 1e7 && box.minY > 1e5 && box.maxY < 1e6;
  return northFirst ? { guess: 'yx', code: 'AXES_NORTHING' } : null;
}

/** Half of either lies in the other. */
function overlap(a: DrawingBox, b: DrawingBox): boolean {
  const width = Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX);
  const height = Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY);
  return width > 0 && height > 0;
}
