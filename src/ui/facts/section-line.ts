/** The line of a section and the upright cut of the model: one from the other, so that both stand at the same place. */

import type { Picture } from '../../model/picture.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { SectionDrawing, SectionPiece, SectionStation, SectionZone } from '../../model/section-drawing.ts';
import type { Cut } from '../../store/view-store.ts';

type Bounds = Picture['boundsM'];

/** Points nearer than this are one [m]. */
const ONE_POINT_M = 0.005;

/** Length of a line [m]. */
export function lineLengthM(line: readonly PointM[]): number {
  return line.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - line[i][0], y - line[i][1]), 0);
}

/** Whether a section can be drawn along it. */
export function isLine(points: readonly PointM[]): boolean {
  return points.length >= 2 && lineLengthM(points) > ONE_POINT_M;
}

/** Extent of the bounds in a direction [m]. */
function extentM({ min, max }: Bounds, x: number, y: number): readonly [number, number] {
  const corners = [min, max].flatMap((a) => [min, max].map((b) => a[0] * x + b[1] * y));
  return [Math.min(...corners), Math.max(...corners)];
}

/**
 * The cut that shows a section: what lies left of the line stays, as the drawing looks at it. Null where the line bends or
 * runs beside everything drawn, as no single plane cuts along it.
 */
export function cutOfLine(line: readonly PointM[], originM: readonly [number, number], bounds: Bounds): Omit<Cut, 'on'> | null {
  const [from, to] = [line[0], line.at(-1)];
  if (from === undefined || to === undefined || !isLine(line)) return null;
  const straightM = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (lineLengthM(line) - straightM > ONE_POINT_M) return null;
  const [lookX, lookY] = [-(to[1] - from[1]) / straightM, (to[0] - from[0]) / straightM];
  const [lowM, highM] = extentM(bounds, lookX, lookY);
  const position = ((from[0] - originM[0]) * lookX + (from[1] - originM[1]) * lookY - lowM) / (highM - lowM);
  if (!(position >= 0 && position <= 1)) return null;
  const lookDeg = (Math.atan2(lookX, lookY) * 180) / Math.PI;
  return { lookDeg: Math.round(((lookDeg + 360) % 360) * 1e9) / 1e9, position };
}

/** The line on which a cut stands, from the left to the right of who looks at it, across everything drawn; to the millimetre. */
export function lineOfCut({ lookDeg, position }: Cut, originM: readonly [number, number], bounds: Bounds): readonly PointM[] {
  const angle = (lookDeg * Math.PI) / 180;
  const [lookX, lookY] = [Math.sin(angle), Math.cos(angle)];
  const [lowM, highM] = extentM(bounds, lookX, lookY);
  const awayM = lowM + (highM - lowM) * position;
  const [leftM, rightM] = extentM(bounds, lookY, -lookX);
  const at = (alongM: number): PointM => [
    round(awayM * lookX + alongM * lookY + originM[0]),
    round(awayM * lookY - alongM * lookX + originM[1]),
  ];
  return [at(leftM), at(rightM)];
}

const round = (valueM: number) => Math.round(valueM * 1000) / 1000;

/** One layer along an unbroken stretch of a zone. */
export interface SectionRow {
  readonly name: string;
  /** In the middle of the stretch; null where it has none there [mm]. */
  readonly thicknessMm: number | null;
  readonly areaM2: number;
}

export interface SectionStretch extends SectionZone {
  readonly number: number;
  readonly finishedM: number | null;
  readonly membraneM: number | null;
  /** Top to bottom. */
  readonly rows: readonly SectionRow[];
}

const SLACK_M = 1e-6;

/** The section as a table: stretches along the line, layers from the top. */
export function sectionStretches({ zones, pieces, stations }: SectionDrawing): SectionStretch[] {
  return zones.map((zone, i) => {
    const within = (at: number) => at >= zone.fromM - SLACK_M && at <= zone.toM + SLACK_M;
    const station = stations.find((one) => one.zone === zone.zone && within(one.alongM));
    const own = pieces.filter((piece) => piece.layer >= 0 && piece.owner === zone.zone && piece.outline.every(([at]) => within(at)));
    return {
      ...zone,
      number: i + 1,
      finishedM: station?.finishedM ?? null,
      membraneM: station?.membraneM ?? null,
      rows: rowsOf(own, station),
    };
  });
}

function rowsOf(pieces: readonly SectionPiece[], station: SectionStation | undefined): SectionRow[] {
  const layers = [...new Set(pieces.map(({ layer }) => layer))].sort((p, q) => q - p);
  // The station leaves out what has no thickness there: equal names are told apart by their order from the top.
  const left = [...(station?.layers ?? [])].reverse();
  return layers.map((layer) => {
    const own = pieces.filter((piece) => piece.layer === layer);
    const name = own[0]?.name ?? '';
    const found = left.findIndex((one) => one.name === name);
    const [at] = found < 0 ? [] : left.splice(found, 1);
    const areaM2 = own.reduce((sum, piece) => sum + piece.areaM2, 0);
    return { name, thicknessMm: at === undefined ? null : (at.topM - at.bottomM) * 1000, areaM2 };
  });
}
