/** Set-up and movement areas of a scene: room and surface by the table chosen, wheels and supports on layers and in bays. */

import { fireTable, SET_UP_STEP } from '../catalogue/fire-access.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { severityOf } from '../core/findings.ts';
import { boundsOf } from '../core/geometry/ring.ts';
import { type SetUpResult, setUpFacts, setUpResults } from '../core/set-up-facts.ts';
import type { StandingPeaks } from '../core/set-up-wheels.ts';
import type { LayerPeak } from '../core/wheel-envelope.ts';
import type { FindingFact, Severity } from '../model/finding.ts';
import type { Report, ReportSetUpArea } from '../model/report.ts';
import type { SetUpInput } from '../model/route-input.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { WheelRun } from '../model/wheel-input.ts';
import { siteAlong } from './kept-ground.ts';
import type { KeptParts } from './kept-parts.ts';
import { keptStanding } from './kept-wheels.ts';
import type { MaterialOf } from './materials.ts';
import { obstaclesOf } from './obstacles.ts';
import { DEFAULT_FIRE_TABLE } from './resolve-routes.ts';
import { localLine, localRegion } from './resolve-shapes.ts';
import { basisOf, permittedInBay, vehicleInput, vehiclesOf, wheelLayers } from './resolve-wheels.ts';
import { stressFacts } from './stress-facts.ts';

export interface SetUpPart {
  readonly facts: readonly FindingFact[];
  readonly report: Pick<Report, 'setUpAreas'>;
}

/** What stands in one place, and what of its pressures is the greatest. */
interface Standing {
  readonly result: SetUpResult;
  readonly peaks: StandingPeaks;
  readonly run: WheelRun;
  readonly layers: readonly { readonly by: 'wheels' | 'support'; readonly peak: LayerPeak }[];
}

/** Rows and findings of all set-up and movement areas; nothing where the scene has none. */
export function setUpPart(scene: SceneFile, on: Evaluation, materialOf: MaterialOf, kept: KeptParts): SetUpPart {
  const { originM } = on.input;
  const { deck, objects, setUpAreas, limits, vehicles } = scene;
  const drawn = [...originM, deck, objects, setUpAreas, limits, vehicles];
  const places = kept.get('set-up places', drawn, () => setUpPlaces(scene, originM));
  if (places.length === 0) return { facts: [], report: {} };
  const results = places.flatMap((place) => {
    const { minX, minY, maxX, maxY } = boundsOf(place.area.outer);
    const across = siteAlong(on, Float64Array.of(minX, minY, maxX, maxY));
    const bays = on.input.bays.map(({ region }) => region);
    return kept.get(`set-up ${place.kind} ${place.id}`, [place, ...across, ...bays], () => {
      return setUpResults(on, [place], obstaclesOf(scene, originM));
    });
  });
  const layers = wheelLayers(scene, materialOf);
  const dynamicFactor = scene.limits?.dynamicFactor ?? 1;
  const standing = results.map((result): Standing => {
    const { id, kind, area, vehicle } = result.place;
    const run: WheelRun = { id: `${kind} area ${id}`, vehicle, route: new Float64Array(), stage: null, dynamicFactor };
    const peaks = keptStanding(kept, on, { run: { id: run.id, area, vehicle, dynamicFactor }, layers });
    return { result, peaks, run, layers: greatest(peaks) };
  });
  return {
    facts: [
      ...setUpFacts(on, results, SET_UP_STEP),
      ...standing.flatMap((one) => [...pressureFacts(on, one, materialOf), ...bayFacts(scene, on, one)]),
    ],
    report: { setUpAreas: standing.map((one) => areaReport(scene, on, one)) },
  };
}

/** Places in local coordinates, each with the table it is held against. */
export function setUpPlaces(scene: SceneFile, originM: PointM): SetUpInput[] {
  const vehicleOf = vehiclesOf(scene);
  return (scene.setUpAreas ?? []).map(({ id, kind, outline, vehicle, building }): SetUpInput => {
    const known = vehicleOf(vehicle);
    const grossKN = known.axles.reduce((sum, axle) => sum + axle.loadKN, 0);
    return {
      id,
      kind,
      area: localRegion(outline, undefined, originM),
      vehicle: vehicleInput(known),
      building: building ? localLine(building, originM) : null,
      table: fireTable(scene.limits?.fireTable ?? DEFAULT_FIRE_TABLE, grossKN),
    };
  });
}

function greatest({ wheels, support }: StandingPeaks): Standing['layers'] {
  const all = [
    ...wheels.layers.map((peak) => ({ by: 'wheels' as const, peak })),
    ...(support?.layers ?? []).map((peak) => ({ by: 'support' as const, peak })),
  ];
  const most = all.filter(
    (one) =>
      !all.some((other) => other.peak.zone === one.peak.zone && other.peak.layer === one.peak.layer && other.peak.kPa > one.peak.kPa),
  );
  return most.sort((a, b) => a.peak.zone - b.peak.zone || b.peak.layer - a.peak.layer);
}

function pressureFacts(on: Evaluation, { run, layers }: Standing, materialOf: MaterialOf): FindingFact[] {
  return (['wheels', 'support'] as const).flatMap((by) => {
    // Supports stand still.
    const of = by === 'support' ? { ...run, dynamicFactor: 1 } : run;
    const peaks = layers.filter((one) => one.by === by).map(({ peak }) => peak);
    return stressFacts({ on, run: of, materialOf }, peaks).map((fact) => ({ ...fact, facts: { ...fact.facts, by } }));
  });
}

interface BayStanding {
  readonly bay: number;
  readonly listed: boolean | null;
  readonly standingKN: number;
  readonly kNm2: number;
  readonly permittedKNm2: number | null;
}

/** Every bay the place lies on, whether or not a wheel line enters it. */
function baysOf(scene: SceneFile, on: Evaluation, { result, peaks }: Standing): BayStanding[] {
  return result.bays.map((bay) => {
    const entered = peaks.wheels.bays.find((one) => one.bay === bay);
    return {
      bay,
      listed: scene.deck.bays[bay].vehicles?.includes(result.place.vehicle.id) ?? null,
      standingKN: entered?.standingKN ?? 0,
      kNm2: entered?.kNm2 ?? 0,
      permittedKNm2: permittedInBay(on, bay),
    };
  });
}

function bayFacts(scene: SceneFile, on: Evaluation, standing: Standing): FindingFact[] {
  const { run, result } = standing;
  const [x0, y0] = on.input.originM;
  const { dirX, dirY, fromS, toS, fromT, toT } = result.around;
  const [s, t] = [(fromS + toS) / 2, (fromT + toT) / 2];
  return baysOf(scene, on, standing).flatMap(({ bay, listed, standingKN, kNm2, permittedKNm2 }): FindingFact[] => {
    const where = { bay: on.input.bays[bay].id, at: [s * dirX - t * dirY + x0, s * dirY + t * dirX + y0] as const };
    const common = { run: run.id, vehicle: run.vehicle.name, standingKN, source: basisOf(scene, bay) };
    const fact = (why: string, severity: Severity, [value, limit, unit]: [number, number, string]): FindingFact => {
      return { rule: 'traffic.bay', severity, where, value, limit, unit, facts: { why, ...common } };
    };
    const severity = permittedKNm2 === null ? null : severityOf(permittedKNm2 > 0 ? kNm2 / permittedKNm2 : kNm2 > 0 ? Number.MAX_VALUE : 0);
    return [
      ...(listed === false ? [fact('not permitted', 'stop', [1, 0, '-'])] : []),
      ...(listed === null ? [fact('not said', 'check', [1, 0, '-'])] : []),
      ...(permittedKNm2 !== null && severity ? [fact('load', severity, [kNm2, permittedKNm2, 'kN/m²'])] : []),
    ];
  });
}

function areaReport(scene: SceneFile, on: Evaluation, standing: Standing): ReportSetUpArea {
  const { result, peaks, layers } = standing;
  const { place, rule, around, fit, steepest, step, facing } = result;
  const [x0, y0] = on.input.originM;
  return {
    id: place.id,
    kind: place.kind,
    vehicle: place.vehicle.id,
    table: place.table?.id ?? null,
    areaM2: result.areaM2,
    onDeckM2: result.onDeckM2,
    lengthM: around.toS - around.fromS,
    widthM: around.toT - around.fromT,
    insideWidthM: fit?.widthM ?? null,
    requiredM: rule ? { widthM: rule.widthM.value, lengthM: rule.lengthM.value } : null,
    steepestPercent: steepest?.percent ?? null,
    stepMm: step ? 1000 * step.heightM : null,
    buildingM: facing?.distanceM ?? null,
    lies: facing?.lies ?? null,
    standing: result.standing,
    wheelsMembraneKPa: peaks.wheels.membrane?.wheelsKPa ?? null,
    supportMembraneKPa: peaks.support?.membrane?.wheelsKPa ?? null,
    bays: baysOf(scene, on, standing).map(({ bay, listed, ...rest }) => ({
      bay: on.input.bays[bay].id,
      vehiclePermitted: listed,
      ...rest,
    })),
    layers: layers.map(({ by, peak }) => {
      const { kPa, permittedKPa, x, y } = peak;
      const zone = on.input.zones[peak.zone];
      const utilisation = permittedKPa === null ? null : kPa / permittedKPa;
      const layer = zone.buildUp.layers[peak.layer].materialId;
      return { zone: zone.id, layer, by, maxKPa: kPa, permittedKPa, utilisation, at: [x + x0, y + y0] };
    }),
  };
}
