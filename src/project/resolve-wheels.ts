/** Traffic of the finished deck and plant of the stages: vehicles and layers looked up, and what their wheels come to. */

import { vehicleById } from '../catalogue/catalogue.ts';
import type { CatalogueVehicle } from '../catalogue/vehicles.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { severityOf } from '../core/findings.ts';
import type { BayTraffic, LayerPeak, RunPeaks } from '../core/wheel-envelope.ts';
import type { FindingFact, Severity } from '../model/finding.ts';
import type { ReportTraffic } from '../model/report.ts';
import type { SceneFile, SceneVehicle } from '../model/scene-file.ts';
import type { VehicleInput, WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { KeptParts } from './kept-parts.ts';
import { keptEnvelope } from './kept-wheels.ts';
import type { MaterialOf, ResolvedMaterial } from './materials.ts';
import { isConfirmed } from './resolve-scene.ts';
import { localLine } from './resolve-shapes.ts';
import { beginFacts, filePlace as file, stageOf, stressFacts } from './stress-facts.ts';

/** Radius per wheelbase where no turning radius is known: wheels locked at 30°, 1 / sin 30°. */
const LOCK_RADIUS = 2;

export interface TrafficPart {
  readonly facts: readonly FindingFact[];
  readonly report: { readonly traffic?: readonly ReportTraffic[] };
}

/** Wheels of traffic and plant, run by run, as rows of the report and as findings; nothing where nothing drives. */
export function* trafficSteps(
  scene: SceneFile,
  on: Evaluation,
  materialOf: MaterialOf,
  kept: KeptParts,
): Generator<undefined, TrafficPart> {
  const runs = wheelRuns(scene, on);
  if (runs.length === 0) return { facts: [], report: {} };
  const layers = wheelLayers(scene, materialOf);
  const facts: FindingFact[] = [];
  const traffic: ReportTraffic[] = [];
  for (const [r, run] of runs.entries()) {
    const peaks = keptEnvelope(kept, `run ${r}`, on, { run, layers });
    yield;
    const stressed = { on, run, materialOf };
    const begin = { run: { ...run, stage: (run.stage ?? 0) - 1 }, layers };
    const begins = laysWhereDriven(on, run, peaks) ? keptEnvelope(kept, `begin of run ${r}`, on, begin).layers : [];
    facts.push(...stressFacts(stressed, peaks.layers), ...beginFacts(stressed, begins, peaks.layers), ...bayFacts(scene, on, run, peaks));
    traffic.push(trafficReport(scene, on, run, peaks));
    yield;
  }
  return { facts, report: { traffic } };
}

/** Else a stage begins as it ends, for its plant. */
function laysWhereDriven({ plan }: Evaluation, { stage }: WheelRun, { layers }: RunPeaks): boolean {
  return stage !== null && layers.some(({ zone }) => plan.layerStages[zone].includes(stage));
}

/** All lines that wheels follow: traffic first, then plant by stage. */
export function wheelRuns(scene: SceneFile, on: Pick<Evaluation, 'input'>): WheelRun[] {
  const { originM } = on.input;
  const known = vehiclesOf(scene);
  const vehicleOf = (id: string) => vehicleInput(known(id));
  const dynamicFactor = scene.limits?.dynamicFactor ?? 1;
  const traffic = (scene.traffic ?? []).map(({ id, vehicle, route }): WheelRun => {
    return { id, vehicle: vehicleOf(vehicle), route: localLine(route, originM), stage: null, dynamicFactor };
  });
  const plant = (scene.stages ?? []).flatMap((stage, s) =>
    (stage.plant ?? []).map(({ vehicle, route }, p, all): WheelRun => {
      const before = all.slice(0, p).filter((one) => one.vehicle === vehicle).length;
      const id = `${stage.id} ${vehicle}${before > 0 ? ` ${before + 1}` : ''}`;
      return { id, vehicle: vehicleOf(vehicle), route: localLine(route, originM), stage: s, dynamicFactor };
    }),
  );
  return [...traffic, ...plant];
}

/** Vehicles by id: the scene's own before those of the catalogue. */
export function vehiclesOf(scene: SceneFile): (id: string) => SceneVehicle | CatalogueVehicle {
  const own = new Map((scene.vehicles ?? []).map((vehicle) => [vehicle.id, vehicle]));
  return (id) => {
    const vehicle = own.get(id) ?? vehicleById.get(id);
    if (!vehicle) throw new RangeError(`vehiclesOf: no vehicle "${id}" in catalogue or scene`);
    return vehicle;
  };
}

/** A vehicle as the core takes it. */
export function vehicleInput(vehicle: SceneVehicle | CatalogueVehicle): VehicleInput {
  const axles = vehicle.axles.map(({ contactM: [alongM, acrossM], ...axle }) => ({ ...axle, alongM, acrossM }));
  const wheelbaseM = Math.max(...axles.map((axle) => axle.atM));
  const turningM = 'turningRadiusM' in vehicle ? vehicle.turningRadiusM : undefined;
  return {
    id: vehicle.id,
    name: vehicle.name,
    axles,
    pad: ('pads' in vehicle ? vehicle.pads : undefined) ?? null,
    radiusM: turningM === undefined ? LOCK_RADIUS * wheelbaseM : Math.max(0, turningM - vehicle.widthM / 2),
  };
}

/** How the layers of every zone spread and bear; contract, section 2, Wheels, for layers that don't say. */
export function wheelLayers(scene: SceneFile, materialOf: MaterialOf): WheelLayer[][] {
  const buildUps = new Map(scene.buildups.map((buildUp) => [buildUp.id, buildUp]));
  return scene.zones.map((zone) =>
    (buildUps.get(zone.buildup)?.layers ?? []).map((layer): WheelLayer => {
      const material = materialOf(layer.material);
      return { dispersal: material.dispersal ?? usualDispersal(material), bearingKPa: material.bearingKPa ?? null };
    }),
  );
}

/** Slabs come in a thickness of their own; what is tipped does not. */
function usualDispersal({ density, role, thicknessMm }: ResolvedMaterial): number {
  if (!density) return 0;
  return (role === 'surfacing' || role === 'edging') && thicknessMm !== undefined ? 1 : 0.5;
}

/** Where only a total is permitted, what the finished garden leaves of it on the mean. */
export function permittedInBay(on: Evaluation, b: number): number | null {
  const { imposedKNm2, totalKNm2 } = on.input.bays[b];
  if (imposedKNm2 !== null) return imposedKNm2;
  return totalKNm2 === null ? null : Math.max(0, totalKNm2 - on.bays[b].meanKNm2);
}

/** Null where the load plan lists no vehicles for the bay. */
function vehiclePermitted(scene: SceneFile, b: number, run: WheelRun): boolean | null {
  return scene.deck.bays[b].vehicles?.includes(run.vehicle.id) ?? null;
}

function bayFacts(scene: SceneFile, on: Evaluation, run: WheelRun, { bays }: RunPeaks): FindingFact[] {
  return bays.flatMap((entry): FindingFact[] => {
    const where = { bay: on.input.bays[entry.bay].id, ...stageOf(on, run), at: file(on, entry.membrane.x, entry.membrane.y) };
    const common = { run: run.id, vehicle: run.vehicle.name, standingKN: entry.standingKN, source: basisOf(scene, entry.bay) };
    const fact = (why: string, severity: Severity, value: number, limit: number): FindingFact => ({
      rule: 'traffic.bay',
      severity,
      where,
      value,
      limit,
      unit: why === 'load' ? 'kN/m²' : '-',
      facts: { why, ...common },
    });
    const listed = vehiclePermitted(scene, entry.bay, run);
    const limit = permittedInBay(on, entry.bay);
    const severity = limit === null ? null : severityOf(shareOf(entry, limit));
    return [
      ...(listed === false ? [fact('not permitted', 'stop', 1, 0)] : []),
      ...(listed === null ? [fact('not said', 'check', 1, 0)] : []),
      ...(limit !== null && severity ? [fact('load', severity, entry.kNm2, limit)] : []),
    ];
  });
}

const shareOf = ({ kNm2 }: BayTraffic, limitKNm2: number) => (limitKNm2 > 0 ? kNm2 / limitKNm2 : Number.MAX_VALUE);

/** Where the permitted load of a bay comes from, in words. */
export function basisOf(scene: SceneFile, b: number): string {
  const bay = scene.deck.bays[b];
  if (!bay.basis || !isConfirmed(bay)) return 'permitted load not confirmed: basis incomplete';
  return `${bay.basis.document}, revision ${bay.basis.revision}, ${bay.basis.date}`;
}

function trafficReport(scene: SceneFile, on: Evaluation, run: WheelRun, { membrane, bays, layers }: RunPeaks): ReportTraffic {
  return {
    id: run.id,
    vehicle: run.vehicle.id,
    stage: run.stage === null ? null : on.plan.stages[run.stage].id,
    dynamicFactor: run.dynamicFactor,
    maxMembraneKPa: membrane?.wheelsKPa ?? null,
    elasticMembraneKPa: membrane?.elasticKPa ?? null,
    governs: membrane?.governs ?? null,
    at: membrane ? file(on, membrane.x, membrane.y) : null,
    stand: membrane?.stand ?? null,
    baysEntered: bays.map(({ bay }) => on.input.bays[bay].id),
    bays: bays.map((entry) => {
      const permittedKNm2 = permittedInBay(on, entry.bay);
      return {
        bay: on.input.bays[entry.bay].id,
        maxMembraneKPa: entry.membrane.wheelsKPa,
        at: file(on, entry.membrane.x, entry.membrane.y),
        standingKN: entry.standingKN,
        kNm2: entry.kNm2,
        permittedKNm2,
        utilisation: permittedKNm2 === null || permittedKNm2 === 0 ? null : entry.kNm2 / permittedKNm2,
        vehiclePermitted: vehiclePermitted(scene, entry.bay, run),
      };
    }),
    layers: layers.map((peak) => layerReport(on, peak)),
  };
}

function layerReport(on: Evaluation, peak: LayerPeak): ReportTraffic['layers'][number] {
  const { kPa, permittedKPa, wheelsKPa, elasticKPa, governs } = peak;
  const zone = on.input.zones[peak.zone];
  return {
    zone: zone.id,
    layer: zone.buildUp.layers[peak.layer].materialId,
    maxKPa: kPa,
    permittedKPa,
    utilisation: permittedKPa === null ? null : kPa / permittedKPa,
    wheelsKPa,
    elasticKPa,
    governs,
    at: file(on, peak.x, peak.y),
    stand: peak.stand,
  };
}
