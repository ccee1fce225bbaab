/** How the numbers of outlets and overflows come about: areas by zone, run-off coefficients, rain. */

import { catchmentsByZone } from '../core/water-course.ts';
import type { DerivationAsk, Term } from '../model/derivation.ts';
import type { SceneRain } from '../model/scene-file.ts';
import type { WaterSite } from '../model/water-input.ts';
import { given, made } from './derivation-terms.ts';
import type { Project } from './evaluate-project.ts';
import { waterStudy } from './water-study.ts';

export type WaterAsk = Extract<DerivationAsk, { readonly outlet: string }>;

/** Square metres of a hectare. */
const M2_PER_HA = 10_000;

/** What arrives at one outlet, by zone; null where it takes no water. */
interface Arriving {
  readonly project: Project;
  readonly id: string;
  readonly site: WaterSite;
  /** Last that of deck without a zone. */
  readonly areasM2: Float64Array;
  /** Where the coefficients come from; last that of deck without a zone. */
  readonly sources: readonly string[];
  readonly lps: number | null;
}

/** Null where there is no such number. */
export function waterTerm(project: Project, { kind, outlet }: WaterAsk): Term | null {
  const overflows = kind.startsWith('overflow');
  const on = arriving(project, outlet, overflows);
  const { rain } = project.scene;
  if (on === null) return null;
  if (kind === 'catchment' || kind === 'overflow area') return catchment(on);
  const flow = rain && (overflows ? duty(on, rain) : designFlow(on, rain));
  if (!flow) return null;
  if (kind === 'design flow' || kind === 'overflow duty') return flow;
  if (on.lps === null) return null;
  return made({ name: 'outlet use', of: outlet, unit: '-' }, 'quotient', [
    flow,
    given({ name: 'outlet capacity', of: outlet, unit: 'l/s' }, on.lps),
  ]);
}

/** All outlets of a deck are asked for one by one. */
const known = new WeakMap<WaterSite, readonly Float64Array[]>();

function arriving(project: Project, id: string, overflows: boolean): Arriving | null {
  const { scene, evaluation, resolved } = project;
  const study = waterStudy(scene, evaluation, resolved.materialOf);
  const course = study && (overflows ? study.emergency : study.course);
  const index = course?.site.outlets.findIndex((one) => one.id === id) ?? -1;
  if (!study || !course || index < 0 || course.outletCells[index] < 0) return null;
  const byZone = known.get(course.site) ?? catchmentsByZone(evaluation, course.site);
  known.set(course.site, byZone);
  return {
    project,
    id,
    site: course.site,
    areasM2: byZone[index],
    sources: [...study.runoffs, study.bare].map(({ peak }) => peak.source),
    lps: course.site.outlets[index].lps,
  };
}

/** Deck that drains there; of one zone alone that zone. */
function catchment(on: Arriving): Term {
  return made(
    { name: 'catchment', of: on.id, unit: 'm²' },
    'sum',
    areaTerms(on).map(({ area }) => area),
  );
}

function areaTerms({ project, areasM2 }: Arriving): { readonly z: number; readonly area: Term }[] {
  const { zones } = project.evaluation.input;
  return [...areasM2].flatMap((areaM2, z) => {
    if (areaM2 === 0) return [];
    const named =
      z < zones.length ? ({ name: 'catchment in zone', of: zones[z].id } as const) : ({ name: 'catchment without zone' } as const);
    return [{ z, area: given({ ...named, unit: 'm²' }, areaM2, { from: 'falls' }) }];
  });
}

function effectiveArea(on: Arriving): Term {
  const { zones, bareC } = on.site;
  const parts = areaTerms(on).map(({ z, area }) => {
    const c = z < zones.length ? zones[z].peakC : bareC;
    const coefficient = given({ name: 'run-off coefficient', of: area.of, unit: '-' }, c, { from: 'table', text: on.sources[z] });
    return made({ name: 'effective part', of: area.of, unit: 'm²' }, 'product', [area, coefficient]);
  });
  return made({ name: 'effective area', unit: 'm²' }, 'sum', parts);
}

function rainTerm(lpsHa: number, { source }: SceneRain): Term {
  const text = source?.trim();
  return made({ name: 'rain per area', unit: 'l/(s·m²)' }, 'quotient', [
    given({ name: 'rain', unit: 'l/(s·ha)' }, lpsHa, text ? { from: 'table', text } : { from: 'scene' }),
    given({ name: 'hectare', unit: 'm²/ha' }, M2_PER_HA, { from: 'constant' }),
  ]);
}

function designFlow(on: Arriving, rain: SceneRain): Term {
  return made({ name: 'design flow', of: on.id, unit: 'l/s' }, 'product', [rainTerm(rain.designLpsHa, rain), effectiveArea(on)]);
}

/** (extreme − design · C) · area; null where the outlets take even the extreme rain. */
function duty(on: Arriving, rain: SceneRain): Term | null {
  const term = made({ name: 'overflow duty', of: on.id, unit: 'l/s' }, 'difference', [
    made({ name: 'extreme rain', unit: 'l/s' }, 'product', [rainTerm(rain.extremeLpsHa, rain), catchment(on)]),
    made({ name: 'taken by outlets', unit: 'l/s' }, 'product', [rainTerm(rain.designLpsHa, rain), effectiveArea(on)]),
  ]);
  return term.value < 0 ? null : term;
}
