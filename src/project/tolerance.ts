/** Tolerances of a scene's materials, and the bands of its bays. */

import { bandFacts, type LoadBand, loadBands } from '../core/bands.ts';
import type { Evaluation } from '../core/evaluation.ts';
import type { LayerTolerance } from '../core/loads/tolerance.ts';
import type { FindingFact } from '../model/finding.ts';
import type { ReportBay } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { metresFromMm } from '../model/units.ts';
import type { MaterialOf } from './materials.ts';

export interface TolerancePart {
  /** Per bay: what the report adds to it. */
  readonly bays: readonly Pick<ReportBay, 'band'>[];
  readonly facts: readonly FindingFact[];
}

/** Bands and findings; without any tolerance in the scene there is nothing to say. */
export function tolerancePart(scene: SceneFile, on: Evaluation, materialOf: MaterialOf): TolerancePart {
  const used = scene.buildups.flatMap((buildUp) => buildUp.layers.map((layer) => materialOf(layer.material)));
  if (!scene.tolerance && !used.some((material) => material.tolerance)) return { bays: scene.deck.bays.map(() => ({})), facts: [] };
  const bands = loadBands(on, (id) => toleranceOf(scene, materialOf, id));
  return { bays: bands.map(bandReport), facts: bandFacts(on, bands) };
}

/** What the material says; where it is silent on thickness or density, what the scene says; else none. */
function toleranceOf(scene: SceneFile, materialOf: MaterialOf, id: string): LayerTolerance {
  const { thicknessMm, densityPercent } = { ...scene.tolerance, ...materialOf(id).tolerance };
  return { thicknessM: metresFromMm(thicknessMm ?? 0), density: (densityPercent ?? 0) / 100 };
}

/** Of two limits the one that comes closer to being broken. */
function bandReport(bands: readonly LoadBand[]): Pick<ReportBay, 'band'> {
  if (bands.length === 0) return {};
  const shares = bands.map(({ low, high, limitKNm2 }) => ({ low: low.kNm2 / limitKNm2, high: high.kNm2 / limitKNm2 }));
  return { band: shares.reduce((worst, band) => (band.high > worst.high ? band : worst)) };
}
