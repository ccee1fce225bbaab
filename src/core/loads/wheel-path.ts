/**
 * Where the wheels of a vehicle stand along a line. The line is the path of every axle's middle: off-tracking of rear axles
 * is not followed. At a bend the path is the arc that touches both sides: of the vehicle's tightest radius where there is
 * room, else the largest that keeps within half of either side (the whole of a first or last one). A vehicle that turns
 * on the spot, or a line that turns back (over 150°), keeps the corner.
 */

import type { PadInput, VehicleInput, WheelPatch } from '../../model/wheel-input.ts';

/** A straight piece, or an arc where `turn` is not 0. */
interface PathPiece {
  readonly fromM: number;
  readonly lengthM: number;
  readonly x: number;
  readonly y: number;
  readonly dirX: number;
  readonly dirY: number;
  /** Turning per metre, left positive. */
  readonly turn: number;
}

export interface AxlePath {
  readonly pieces: readonly PathPiece[];
  readonly lengthM: number;
}

export interface PathPoint {
  readonly x: number;
  readonly y: number;
  readonly dirX: number;
  readonly dirY: number;
}

/** Lines that turn by more than this turn back [-], in radians. */
const TURNS_BACK = (150 * Math.PI) / 180;
/** Pieces shorter than this have no direction [m]. */
const NO_LENGTH_M = 1e-9;

interface Corner {
  readonly cutM: number;
  readonly angle: number;
}

/**
 * Smooths a line into the path of the axles.
 * @param route - x y per vertex [m]
 * @param radiusM - tightest radius the vehicle drives, 0 where it turns on the spot [m]
 * @returns path of straight pieces and arcs [m]
 * @throws RangeError if the line has no length
 * @source none: geometry
 */
export function axlePath(route: ArrayLike<number>, radiusM: number): AxlePath {
  const sides = sidesOf(route);
  if (sides.length === 0) throw new RangeError('axlePath: the line must have a length, got none');
  const corners = sides.slice(1).map((side, i) => cornerBetween(sides, i, side, radiusM));
  const pieces: PathPiece[] = [];
  let fromM = 0;
  const push = (piece: Omit<PathPiece, 'fromM'>) => {
    if (piece.lengthM <= NO_LENGTH_M) return;
    pieces.push({ fromM, ...piece });
    fromM += piece.lengthM;
  };
  sides.forEach(({ x, y, dirX, dirY, lengthM }, i) => {
    const before = corners[i - 1]?.cutM ?? 0;
    const after = corners[i]?.cutM ?? 0;
    push({ x: x + before * dirX, y: y + before * dirY, dirX, dirY, lengthM: lengthM - before - after, turn: 0 });
    if (after === 0) return;
    const { angle, cutM } = corners[i];
    const radius = cutM / Math.tan(Math.abs(angle) / 2);
    const end = lengthM - cutM;
    push({ x: x + end * dirX, y: y + end * dirY, dirX, dirY, lengthM: radius * Math.abs(angle), turn: Math.sign(angle) / radius });
  });
  return { pieces, lengthM: fromM };
}

type Side = PathPoint & { readonly lengthM: number };

function sidesOf(route: ArrayLike<number>): Side[] {
  const sides: Side[] = [];
  let [x, y] = [route[0], route[1]];
  for (let i = 2; i + 1 < route.length; i += 2) {
    const lengthM = Math.hypot(route[i] - x, route[i + 1] - y);
    if (lengthM <= NO_LENGTH_M) continue;
    sides.push({ x, y, dirX: (route[i] - x) / lengthM, dirY: (route[i + 1] - y) / lengthM, lengthM });
    [x, y] = [route[i], route[i + 1]];
  }
  return sides;
}

function cornerBetween(sides: readonly Side[], i: number, next: Side, radiusM: number): Corner {
  const side = sides[i];
  const angle = Math.atan2(side.dirX * next.dirY - side.dirY * next.dirX, side.dirX * next.dirX + side.dirY * next.dirY);
  if (Math.abs(angle) > TURNS_BACK || Math.abs(angle) < 1e-9) return { cutM: 0, angle };
  const room = Math.min(side.lengthM / (i === 0 ? 1 : 2), next.lengthM / (i + 2 === sides.length ? 1 : 2));
  return { cutM: Math.min(room, radiusM * Math.tan(Math.abs(angle) / 2)), angle };
}

/**
 * Place and heading on a path; before its start and beyond its end it runs straight on.
 * @param path - path [m]
 * @param alongM - distance from the start [m]
 * @returns place and heading [m]
 * @source none: geometry
 */
export function pointOnPath({ pieces }: AxlePath, alongM: number): PathPoint {
  let low = 0;
  let high = pieces.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (pieces[middle].fromM <= alongM) low = middle;
    else high = middle - 1;
  }
  const piece = pieces[low];
  const { x, y, dirX, dirY, turn, lengthM } = piece;
  const into = alongM - piece.fromM;
  // Beyond the first or last piece it goes straight on, also where that piece is an arc.
  const bent = Math.min(Math.max(into, 0), lengthM);
  const angle = turn * bent;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const forward = turn === 0 ? bent : sin / turn;
  const left = turn === 0 ? 0 : (1 - cos) / turn;
  const outX = dirX * cos - dirY * sin;
  const outY = dirX * sin + dirY * cos;
  const rest = into - bent;
  return { x: x + forward * dirX - left * dirY + rest * outX, y: y + forward * dirY + left * dirX + rest * outY, dirX: outX, dirY: outY };
}

/**
 * Places of the front axle: every axle travels the whole line, in even steps.
 * @param path - path [m]
 * @param lastM - distance of the last axle behind the front one [m]
 * @param stepM - longest step [m]
 * @returns distances from the start of the line, rising [m]
 * @source contract.md, section 2, Wheels (positions no more than one cell apart)
 */
export function frontPlaces(path: AxlePath, lastM: number, stepM: number): Float64Array {
  const wholeM = path.lengthM + lastM;
  const steps = Math.max(1, Math.ceil(wholeM / stepM - 1e-9));
  return Float64Array.from({ length: steps + 1 }, (_, i) => (i * wholeM) / steps);
}

/** A wheel of a vehicle on its path. */
export interface StandingWheel extends WheelPatch {
  /** Its axle stands on the drawn line, not before its start or beyond its end. */
  readonly onLine: boolean;
}

/**
 * Wheels of a vehicle at one place of its path.
 * @param path - path [m]
 * @param vehicle - vehicle; an odd wheel stands in the middle, the others side by side around half the track [m]
 * @param frontM - place of the front axle along the path [m]
 * @param factor - multiplies the loads [-]
 * @returns wheels with their loads [kN]
 * @source contract.md, section 1, vehicles
 */
export function wheelsAt(path: AxlePath, vehicle: VehicleInput, frontM: number, factor: number): StandingWheel[] {
  return vehicle.axles.flatMap(({ atM, loadKN, wheels, trackM, alongM, acrossM }) => {
    const placeM = frontM - atM;
    const onLine = placeM >= -1e-9 && placeM <= path.lengthM + 1e-9;
    const { x, y, dirX, dirY } = pointOnPath(path, placeM);
    return wheelOffsetsM(wheels, trackM, acrossM).map((left) => ({
      x: x - left * dirY,
      y: y + left * dirX,
      dirX,
      dirY,
      alongM,
      acrossM,
      loadKN: (loadKN * factor) / wheels,
      onLine,
    }));
  });
}

/**
 * A support set down on the line.
 * @param path - path [m]
 * @param pad - load and size of the support [kN]
 * @param placeM - its place along the path [m]
 * @returns the support with its load [kN]
 * @source contract.md, section 1, vehicles
 */
export function supportAt(path: AxlePath, { loadKN, sizeM: [alongM, acrossM] }: PadInput, placeM: number): StandingWheel {
  return { ...pointOnPath(path, placeM), alongM, acrossM, loadKN, onLine: true };
}

function wheelOffsetsM(wheels: number, trackM: number, acrossM: number): number[] {
  const offsets = wheels % 2 === 1 ? [0] : [];
  const perSide = Math.floor(wheels / 2);
  for (let i = 0; i < perSide; i++) {
    const off = trackM / 2 + (i - (perSide - 1) / 2) * acrossM;
    offsets.push(off, -off);
  }
  return offsets;
}
