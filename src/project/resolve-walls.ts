/** Retaining edges of a scene: their statics, what they stand on, and what that breaks. */

import { materialById } from '../catalogue/catalogue.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { ROUNDING, severityOf } from '../core/findings.ts';
import { type RetainingCase, type RetainingResult, retainingStatics } from '../core/loads/retaining.ts';
import { type WallPlace, wallPlaces } from '../core/walls.ts';
import type { FindingFact, Severity, Where } from '../model/finding.ts';
import type { Report, ReportWall } from '../model/report.ts';
import type { Role } from '../model/roles.ts';
import type { Limit } from '../model/rule-input.ts';
import type { SceneFile, SceneRetaining } from '../model/scene-file.ts';
import { sourceLine } from '../model/source.ts';
import { weightKN } from '../model/units.ts';
import type { MaterialOf } from './materials.ts';
import { ruleLimits } from './resolve-rules.ts';
import { localLine, wallKNm3 } from './resolve-shapes.ts';

export interface WallPart {
  readonly report: Pick<Report, 'walls'>;
  readonly facts: readonly FindingFact[];
}

/** Soil that ends this little below the top of the wall is rounding of the drawing [m]. */
const SOIL_SHORT_M = 0.01;

/** Sheets pass pressure on; what counts is what they lie on. */
const SHEETS: ReadonlySet<Role> = new Set(['root barrier', 'protection', 'slip', 'separation', 'filter']);

/** Rows and findings of all retaining edges; nothing where the scene has none. */
export function wallPart(scene: SceneFile, on: Evaluation, materialOf: MaterialOf): WallPart {
  const edges = (scene.objects ?? []).filter((object) => object.kind === 'retaining');
  if (edges.length === 0) return { report: {}, facts: [] };
  const walls = edges.map((edge) => wallOf(edge, on, materialOf));
  const limits = ruleLimits(scene.limits);
  return { report: { walls: walls.map(wallReport) }, facts: walls.flatMap((wall) => wallFacts(wall, on, limits)) };
}

/** The layer with the least bearing of those under a base. */
interface Bearing {
  readonly materialId: string;
  readonly name: string;
  readonly kPa: number;
  readonly source: string;
  readonly place: WallPlace;
}

interface Wall {
  readonly edge: SceneRetaining;
  readonly surchargeKNm2: number;
  readonly statics: RetainingResult;
  readonly places: readonly WallPlace[];
  readonly bearing: Bearing | null;
  /** First place where nothing of known bearing lies under the base. */
  readonly unknown: WallPlace | null;
}

function wallOf(edge: SceneRetaining, on: Evaluation, materialOf: MaterialOf): Wall {
  const places = wallPlaces(on, { ...edge, line: localLine(edge.line, on.input.originM) });
  const imposedKNm2 = places.reduce((most, { zone }) => Math.max(most, zone < 0 ? 0 : on.input.zones[zone].imposedKNm2), 0);
  const surchargeKNm2 = edge.surchargeKNm2 ?? imposedKNm2;
  const { density, frictionDeg } = edge.backfill;
  const statics = retainingStatics({ ...edge, soilKNm3: weightKN(density), frictionDeg, surchargeKNm2, wallKNm3: wallKNm3(edge) });
  const bearings = places.map((place) => bearingAt(on, place, materialOf));
  const bearing = bearings.reduce((least, one) => (one && !(least && least.kPa <= one.kPa) ? one : least), null);
  return { edge, surchargeKNm2, statics, places, bearing, unknown: places.find((_, i) => !bearings[i]) ?? null };
}

/** No spread of the pressure is counted, so the weakest layer below decides. Null where one that carries has no bearing given. */
function bearingAt(on: Evaluation, place: WallPlace, materialOf: MaterialOf): Bearing | null {
  let least: Bearing | null = null;
  for (const i of place.under) {
    const { materialId, name, role } = on.input.zones[place.zone].buildUp.layers[i];
    const { bearingKPa } = materialOf(materialId);
    if (bearingKPa === undefined) {
      if (SHEETS.has(role)) continue;
      return null;
    }
    if (!least || bearingKPa < least.kPa)
      least = { materialId, name, kPa: bearingKPa, source: bearingSource(materialId, materialOf), place };
  }
  return least;
}

function bearingSource(id: string, materialOf: MaterialOf): string {
  const { fromScene, sourceText } = materialOf(id);
  const source = fromScene ? undefined : materialById.get(id)?.sources.bearingKPa;
  return source ? sourceLine(source) : sourceText;
}

function wallReport({ edge, surchargeKNm2, statics, bearing, unknown }: Wall): ReportWall {
  const known = unknown ? null : bearing;
  return {
    id: edge.id,
    ownKNm: statics.ownKNm,
    surchargeKNm2,
    active: statics.active,
    thrustKNm: statics.soilThrustKNm + statics.surchargeThrustKNm,
    bare: caseReport(statics.bare),
    loaded: caseReport(statics.loaded),
    middleThirdM: edge.baseM / 6,
    standsOn: known?.materialId ?? null,
    permittedKPa: known?.kPa ?? null,
  };
}

function caseReport({ verticalKNm, eccentricityM, pressure, slidingRatio, overturningRatio }: RetainingCase) {
  return { verticalKNm, eccentricityM, pressure, slidingRatio, overturningRatio };
}

type WallLimits = Readonly<Record<'slidingRatio' | 'overturningRatio', Limit>>;

function wallFacts(wall: Wall, on: Evaluation, limits: WallLimits): FindingFact[] {
  const { edge, statics, places } = wall;
  const middle = places[Math.floor((places.length - 1) / 2)];
  const at = (place: WallPlace): Where => ({
    ...(place.zone < 0 ? {} : { zone: on.input.zones[place.zone].id }),
    object: edge.id,
    at: [place.x + on.input.originM[0], place.y + on.input.originM[1]],
  });
  const ratio = (why: 'sliding' | 'overturning', limit: Limit): FindingFact[] => {
    // The live load may be anywhere, so the lesser of both cases counts.
    const value = Math.min(statics.bare[`${why}Ratio`], statics.loaded[`${why}Ratio`]);
    const severity = ratioSeverity(value, limit.value);
    if (!severity) return [];
    const facts = { why, baseFriction: edge.baseFriction, source: sourceLine(limit.source) };
    return [{ rule: 'wall.sliding', severity, where: at(middle), value, limit: limit.value, unit: '-', facts }];
  };
  return [
    ...ratio('sliding', limits.slidingRatio),
    ...ratio('overturning', limits.overturningRatio),
    ...bearingFacts(wall, at, middle),
    ...soilFacts(wall, at),
  ];
}

function ratioSeverity(value: number, limit: number): Severity | null {
  if (value < 1 - ROUNDING) return 'stop';
  return value < limit - ROUNDING ? 'check' : null;
}

function bearingFacts({ edge, statics, bearing, unknown }: Wall, at: (place: WallPlace) => Where, middle: WallPlace): FindingFact[] {
  const { bare, loaded } = statics;
  // Where the resultant leaves the base there is no pressure to tell; that it falls over is told by its ratio.
  if (!bare.pressure || !loaded.pressure) return [];
  const facts: FindingFact[] = [];
  const add = (severity: Severity, place: WallPlace, value: readonly [number, number, string], more: FindingFact['facts']) => {
    facts.push({ rule: 'wall.bearing', severity, where: at(place), value: value[0], limit: value[1], unit: value[2], facts: more });
  };
  const maxKPa = Math.max(bare.pressure.maxKPa, loaded.pressure.maxKPa);
  if (unknown) add('check', unknown, [maxKPa, 0, 'kPa'], { why: 'unknown', layers: unknown.under.length, source: 'the scene file' });
  const severity = bearing ? severityOf(maxKPa / bearing.kPa) : null;
  if (bearing && severity)
    add(severity, bearing.place, [maxKPa, bearing.kPa, 'kPa'], { why: 'pressure', layer: bearing.name, source: bearing.source });
  const awayM = Math.max(Math.abs(bare.eccentricityM), Math.abs(loaded.eccentricityM));
  if (awayM > edge.baseM / 6 + ROUNDING) {
    const contactM = Math.min(bare.pressure.contactM, loaded.pressure.contactM);
    const source = 'statics: beyond a sixth of its width a base that cannot pull opens';
    add('check', middle, [awayM, edge.baseM / 6, 'm'], { why: 'tension', contactM, baseM: edge.baseM, source });
  }
  return facts;
}

/** Where the zone is shallower than the wall is high, its soil is not in the loads of the deck in full. */
function soilFacts({ edge, places }: Wall, at: (place: WallPlace) => Where): FindingFact[] {
  const least = places.reduce((low, place) => (place.depthM < low.depthM ? place : low));
  if (least.depthM >= edge.retainedM - SOIL_SHORT_M) return [];
  const missingKNm2 = weightKN(edge.backfill.density) * (edge.retainedM - least.depthM);
  const facts = { why: 'soil', missingKNm2, source: 'the scene file' };
  return [{ rule: 'wall.bearing', severity: 'check', where: at(least), value: least.depthM, limit: edge.retainedM, unit: 'm', facts }];
}
