/** Derivation of the pressure of wheels on a layer: load over the patch grown through the layers above, and their weight. */

import { governingPressure, mergedPatch, patchKPa } from '../core/loads/wheel-stress.ts';
import { runPose } from '../core/run-pose.ts';
import { topsInStage } from '../core/wheel-ground.ts';
import type { DerivationAsk, Term } from '../model/derivation.ts';
import type { PoseTop, PoseWheel } from '../model/run.ts';
import type { WheelRun } from '../model/wheel-input.ts';
import { DRAWING, given, layerLoad, made, plants } from './derivation-terms.ts';
import type { Project } from './evaluate-project.ts';
import { wheelsOf } from './run-views.ts';

type Ask = Extract<DerivationAsk, { kind: 'wheel' }>;

interface Under {
  readonly project: Project;
  readonly run: WheelRun;
  readonly wheels: readonly PoseWheel[];
  readonly wheel: PoseWheel;
  readonly zone: number;
  readonly tops: readonly PoseTop[];
  /** Index in `tops`. */
  readonly top: number;
}

/** Null where the vehicle does not press that layer at that place. */
export function wheelTerm(project: Project, { run: id, zone: zoneId, layer, stand, kPa }: Ask): Term | null {
  const { runs, layers } = wheelsOf(project);
  const run = runs.find((one) => one.id === id);
  const zone = project.evaluation.input.zones.findIndex((one) => one.id === zoneId);
  if (!run || zone < 0) return null;
  const { wheels } = runPose(project.evaluation, run, layers, stand);
  let found: Under | null = null;
  let nearest = Infinity;
  for (const wheel of wheels.filter(({ onLine }) => onLine)) {
    for (const ground of wheel.grounds.filter((one) => one.zone === zoneId)) {
      ground.tops.forEach((one, top) => {
        const off = Math.abs(one.kPa - kPa);
        if (one.materialId !== layer || off >= nearest) return;
        nearest = off;
        found = { project, run, wheels, wheel, zone, tops: ground.tops, top };
      });
    }
  }
  return found === null ? null : pressure(found);
}

function pressure(under: Under): Term {
  const { tops, top } = under;
  const of = tops[top].name;
  return made({ name: 'pressure', of, unit: 'kPa' }, 'sum', [ofWheels(under), weightAbove(under)]);
}

/** Layers above from the top down, with their thickness there. Of a zone beside the wheel only tops that its patch laps onto are told. */
function above({ project, run, zone, tops, top }: Under): { readonly layer: number; readonly name: string; readonly thicknessM: number }[] {
  const all = topsInStage(project.evaluation, wheelsOf(project).layers, run.stage)(zone);
  const own = all.findIndex(({ layer }) => layer === tops[top].layer);
  const { fixed, perM } = all[own].depth;
  const makeUpM = perM > 0 ? (tops[top].depthM - fixed) / perM : 0;
  const { layers } = project.evaluation.input.zones[zone].buildUp;
  return all.slice(0, own).map(({ layer }) => {
    const { name, rangeM, thicknessM } = layers[layer];
    return { layer, name, thicknessM: rangeM ? makeUpM : thicknessM };
  });
}

function growth(under: Under): Term {
  const { project, zone } = under;
  const { layers } = wheelsOf(project);
  const terms = above(under).map(({ layer, name, thicknessM }) =>
    made({ name: 'growth in layer', of: name, unit: 'm' }, 'product', [
      given({ name: 'spread', of: name, unit: '-' }, layers[zone][layer].dispersal, { from: 'material' }),
      given({ name: 'thickness', of: name, unit: 'm' }, thicknessM),
    ]),
  );
  return made({ name: 'growth', unit: 'm' }, 'sum', terms);
}

function wheelLoad({ run }: Under, wheel: PoseWheel): Term {
  const { axles } = run.vehicle;
  const axle = axles[wheel.axle];
  const named = { name: 'wheel load', of: run.vehicle.name, unit: 'kN' } as const;
  const share = axle ? (axle.loadKN / axle.wheels) * run.dynamicFactor : Number.NaN;
  if (!axle || Math.abs(share - wheel.loadKN) > 1e-9) return given(named, wheel.loadKN, { from: 'vehicle' });
  return made(named, 'product', [
    made(named, 'quotient', [
      given({ name: 'axle load', unit: 'kN' }, axle.loadKN, { from: 'vehicle' }),
      given({ name: 'wheels of the axle', unit: '-' }, axle.wheels, { from: 'vehicle' }),
    ]),
    given({ name: 'dynamic factor', unit: '-' }, run.dynamicFactor, { from: 'rule' }),
  ]);
}

function ofOneWheel(under: Under, wheel: PoseWheel): Term {
  const side = (name: 'patch along' | 'patch across', contactM: number) =>
    made({ name, unit: 'm' }, 'sum', [
      given({ name: 'contact', unit: 'm' }, contactM, { from: 'vehicle' }),
      made({ name: 'twice the growth', unit: 'm' }, 'product', [given({ name: 'two', unit: '-' }, 2, { from: 'constant' }), growth(under)]),
    ]);
  return made({ name: 'pressure of one wheel', unit: 'kPa' }, 'quotient', [
    wheelLoad(under, wheel),
    side('patch along', wheel.alongM),
    side('patch across', wheel.acrossM),
  ]);
}

function ofWheels(under: Under): Term {
  const { wheels, wheel, tops, top } = under;
  const { governs, spreadM, wheelsKPa } = tops[top];
  if (governs === 'one wheel') return ofOneWheel(under, wheel);
  const named = { name: 'pressure of wheels', unit: 'kPa' } as const;
  if (governs === 'enclosing rectangle') {
    const merged = mergedPatch(wheels, wheels.indexOf(wheel), spreadM);
    if (Math.abs(merged.kPa - wheelsKPa) > 1e-9 * wheelsKPa) return given(named, wheelsKPa, DRAWING);
    return made(named, 'quotient', [
      given({ name: 'loads together', unit: 'kN' }, merged.loadKN, { from: 'vehicle' }),
      given({ name: 'patch along', unit: 'm' }, merged.alongM, DRAWING),
      given({ name: 'patch across', unit: 'm' }, merged.acrossM, DRAWING),
    ]);
  }
  const together = wheelsTogether(under);
  if (together)
    return made(
      named,
      'sum',
      together.map((one) => ofOneWheel(under, one)),
    );
  return given(named, wheelsKPa, DRAWING);
}

/** More than this many neighbours are not tried in all combinations. */
const MOST_NEIGHBOURS = 12;

/** Those wheels whose pressures add up to the sum that governs. */
function wheelsTogether({ wheels, wheel, tops, top }: Under): readonly PoseWheel[] | null {
  const { spreadM, wheelsKPa } = tops[top];
  const near = wheels.filter((one) => one !== wheel && governingPressure([wheel, one], 0, spreadM).governs !== 'one wheel');
  if (near.length > MOST_NEIGHBOURS) return null;
  for (let mask = 1; mask < 1 << near.length; mask++) {
    const chosen = [wheel, ...near.filter((_, i) => mask & (1 << i))];
    const sum = chosen.reduce((total, one) => total + patchKPa(one, spreadM), 0);
    if (Math.abs(sum - wheelsKPa) < 1e-9 * wheelsKPa) return chosen;
  }
  return null;
}

function weightAbove(under: Under): Term {
  const { project, zone, tops, top } = under;
  const { plan, input } = project.evaluation;
  const { stage } = under.run;
  const grown = plan.vegetationStages[zone];
  const hasPlants = input.zones[zone].buildUp.vegetationKNm2 > 0 && (stage === null || (grown >= 0 && grown <= stage));
  const terms = [
    ...(hasPlants ? [plants(project, zone)] : []),
    ...above(under).map(({ layer, thicknessM }) => layerLoad({ project, zone, layer, thicknessM }, 'saturated')),
  ];
  const standsKNm2 = tops[top].aboveKPa - terms.reduce((sum, term) => sum + term.value, 0);
  if (standsKNm2 > 1e-9) terms.push(given({ name: 'load standing', unit: 'kN/m²' }, standsKNm2, DRAWING));
  return made({ name: 'weight above', unit: 'kPa' }, 'sum', terms);
}
