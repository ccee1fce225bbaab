/** Vehicles on their lines for the app: what can be chosen, how it looks, and where it presses most. */

import type { CatalogueVehicle } from '../catalogue/vehicles.ts';
import { axlePath, pointOnPath } from '../core/loads/wheel-path.ts';
import type { Wheels } from '../core/wheel-map.ts';
import type { ReportTraffic } from '../model/report.ts';
import type { BodyForm, RunView, VehicleBody } from '../model/run.ts';
import type { SceneVehicle } from '../model/scene-file.ts';
import type { WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Project } from './evaluate-project.ts';
import { vehiclesOf, wheelLayers, wheelRuns } from './resolve-wheels.ts';
import { namesOf } from './words/names.ts';

/** Longest piece of a drawn path [m]. */
const PIECE_M = 0.5;

const known = new WeakMap<Project, Wheels>();

/** Vehicles and layers of a project, looked up once. */
export function wheelsOf(project: Project): Wheels {
  const kept = known.get(project);
  if (kept) return kept;
  const { scene, evaluation, resolved } = project;
  const found = { runs: wheelRuns(scene, evaluation), layers: wheelLayers(scene, resolved.materialOf) };
  known.set(project, found);
  return found;
}

/** All vehicles on their lines, in the order of the report: traffic, then plant by stage. */
export function runViews(project: Project): RunView[] {
  const vehicleOf = vehiclesOf(project.scene);
  const names = namesOf(project.scene, project.language);
  const traffic = new Map((project.report.traffic ?? []).map((one) => [one.id, one]));
  return wheelsOf(project).runs.map((run): RunView => {
    const { vehicle } = run;
    const path = axlePath(run.route, vehicle.radiusM);
    const pieces = Math.max(1, Math.ceil(path.lengthM / PIECE_M));
    const points = Array.from({ length: pieces + 1 }, (_, i) => pointOnPath(path, (i * path.lengthM) / pieces));
    return {
      id: run.id,
      vehicle: names.name(vehicle.name),
      stage: run.stage,
      dynamicFactor: run.dynamicFactor,
      travelM: path.lengthM + Math.max(...vehicle.axles.map(({ atM }) => atM)),
      supportM: vehicle.pad ? path.lengthM : null,
      path: Float64Array.from(points.flatMap(({ x, y }) => [x, y])),
      body: bodyOf(run, vehicleOf(vehicle.id)),
      worst: worstOf(traffic.get(run.id)),
    };
  });
}

function bodyOf({ vehicle }: WheelRun, from: SceneVehicle | CatalogueVehicle): VehicleBody {
  const axles = vehicle.axles.map(({ atM, wheels, trackM, alongM, acrossM }) => ({ atM, wheels, trackM, alongM, acrossM }));
  return { form: 'form' in from ? from.form : formOf(vehicle), widthM: from.widthM, axles };
}

/** A scene's own vehicle does not say what it looks like: long contact is a track, a heavy one a lorry. */
function formOf({ axles }: WheelRun['vehicle']): BodyForm {
  if (axles.some(({ alongM }) => alongM >= 0.7)) return 'tracked';
  return axles.reduce((sum, { loadKN }) => sum + loadKN, 0) >= 75 ? 'lorry' : 'plain';
}

function worstOf(traffic: ReportTraffic | undefined): WheelStand | null {
  if (!traffic) return null;
  const most = traffic.layers.reduce<ReportTraffic['layers'][number] | null>(
    (best, layer) => ((layer.utilisation ?? -1) > (best?.utilisation ?? -1) ? layer : best),
    null,
  );
  return most?.stand ?? traffic.stand;
}
