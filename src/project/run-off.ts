/** Run-off coefficients of a scene's zones: its own, or the row of a table they fall into, or the safe side. */

import { ANNUAL_TABLE, DEFAULT_RUNOFF_TABLE, PEAK_TABLES } from '../catalogue/runoff-tables.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { meanSlope } from '../core/water/pitch.ts';
import { runoffRow } from '../core/water/runoff.ts';
import { type AnnualC, annualC, type PeakC, peakC, type RunoffArea, type RunoffRow, type RunoffTableId } from '../model/runoff.ts';
import type { SceneBuildUp, SceneFile } from '../model/scene-file.ts';
import { sourceLine } from '../model/source.ts';
import { KeptParts } from './kept-parts.ts';
import type { MaterialOf } from './materials.ts';

export interface Coefficient<C extends PeakC | AnnualC> {
  readonly c: C;
  /** Row of the table in words; null where the scene gives the value, or none fits. */
  readonly row: string | null;
  readonly source: string;
  /** False where no row fits and all rain is counted. */
  readonly known: boolean;
}

export interface ZoneRunoff {
  readonly peak: Coefficient<PeakC>;
  readonly annual: Coefficient<AnnualC>;
  /** Mean rise per length of the membrane under it [-]. */
  readonly slope: number;
}

/** Coefficients of every zone, in their order. */
export function zoneRunoffs(scene: SceneFile, on: Evaluation, materialOf: MaterialOf, kept = new KeptParts()): ZoneRunoff[] {
  const table = runoffTable(scene);
  const { grid } = on.prepared.ground;
  const buildUps = new Map(scene.buildups.map((buildUp) => [buildUp.id, buildUp]));
  return scene.zones.map((zone, z) => {
    const buildUp = buildUps.get(zone.buildup);
    if (!buildUp) throw new RangeError(`zoneRunoffs: no build-up "${zone.buildup}"`);
    const { deckLevelsM, zones } = on.prepared;
    const slope = kept.get(`slope ${z}`, [deckLevelsM, zones[z]], () => meanSlope(grid, deckLevelsM, zones[z]));
    const area = { ...areaOf(buildUp, on, z, materialOf), pitchDeg: (Math.atan(slope) * 180) / Math.PI };
    const { peak, annual } = buildUp.runoff ?? {};
    return {
      peak: peak === undefined ? fromTable(PEAK_TABLES[table], area, peakC(1)) : entered(peakC(peak)),
      annual: annual === undefined ? fromTable(ANNUAL_TABLE, area, annualC(1)) : entered(annualC(annual)),
      slope,
    };
  });
}

/** Coefficients of deck that no zone covers. */
export function bareRunoff(scene: SceneFile): Omit<ZoneRunoff, 'slope'> {
  const bare: RunoffArea = { surface: 'bare deck', depthMm: 0, pitchDeg: 0 };
  return { peak: fromTable(PEAK_TABLES[runoffTable(scene)], bare, peakC(1)), annual: fromTable(ANNUAL_TABLE, bare, annualC(1)) };
}

/** Table of peaks that a scene is judged by. */
export function runoffTable(scene: SceneFile): RunoffTableId {
  return scene.rain?.table ?? DEFAULT_RUNOFF_TABLE;
}

function entered<C extends PeakC | AnnualC>(c: C): Coefficient<C> {
  return { c, row: null, source: 'the build-up in the scene file', known: true };
}

function fromTable<C extends PeakC | AnnualC>(rows: readonly RunoffRow<C>[], area: RunoffArea, all: C): Coefficient<C> {
  const row = runoffRow(rows, area);
  if (!row) return { c: all, row: null, source: 'no row of the table fits, so all rain is counted', known: false };
  return { c: row.c, row: row.name, source: sourceLine(row.source), known: true };
}

/** What a build-up is to a table: planted where plants or soil end it, else what its surfacing says; null where nothing does. */
export function runoffSurface({ vegetation, layers }: SceneBuildUp, materialOf: MaterialOf): RunoffArea['surface'] {
  const top = layers.at(-1);
  const material = top && materialOf(top.material);
  if (material?.surface) return material.surface;
  const planted = vegetation !== undefined || material?.role === 'substrate' || material?.role === 'vegetation';
  return planted ? 'planted' : null;
}

/** Planted by its thinnest substrate. */
function areaOf(buildUp: SceneBuildUp, on: Evaluation, z: number, materialOf: MaterialOf): Omit<RunoffArea, 'pitchDeg'> {
  const surface = runoffSurface(buildUp, materialOf);
  if (surface !== 'planted') return { surface, depthMm: 0 };
  const depthM = on.input.zones[z].buildUp.layers.reduce((sum, { role, rangeM, thicknessM }) => {
    if (role !== 'substrate') return sum;
    return sum + (rangeM ? (on.zones[z].makeUpM?.min ?? rangeM.min) : thicknessM);
  }, 0);
  return { surface: 'planted', depthMm: 1000 * depthM };
}
