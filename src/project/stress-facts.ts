/** What the pressures of wheels break on the layers: by the spread patch, by the elastic second opinion, and as a stage begins. */

import { materialById } from '../catalogue/catalogue.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { severityOf } from '../core/findings.ts';
import type { LayerPeak } from '../core/wheel-envelope.ts';
import type { FindingFact, Severity, Where } from '../model/finding.ts';
import { sourceLine } from '../model/source.ts';
import type { WheelRun } from '../model/wheel-input.ts';
import type { MaterialOf } from './materials.ts';

/** Whose wheels press, and on what. */
export interface Stressed {
  readonly on: Evaluation;
  readonly run: WheelRun;
  readonly materialOf: MaterialOf;
}

/** Local place in coordinates of the file. */
export const filePlace = (on: Evaluation, x: number, y: number): [number, number] => [x + on.input.originM[0], y + on.input.originM[1]];

export const stageOf = (on: Evaluation, { stage }: WheelRun): Pick<Where, 'stage'> =>
  stage === null ? {} : { stage: on.plan.stages[stage].id };

/** Layers pressed near or beyond what they bear, and those that only the second opinion finds overloaded. */
export function stressFacts(stressed: Stressed, layers: readonly LayerPeak[]): FindingFact[] {
  const spread = layers.flatMap((peak) => {
    const severity = spreadSeverity(peak);
    return severity ? [stressFact(stressed, peak, { why: 'spread', severity, kPa: peak.kPa })] : [];
  });
  return [...spread, ...elasticFacts(stressed, layers)];
}

/**
 * Layers that would be overloaded if plant drove on them before its stage lays more on top: a matter of how the work is done,
 * so it is to be looked at, not stopped. What is overloaded either way is told once, as the stop it is.
 */
export function beginFacts(stressed: Stressed, begins: readonly LayerPeak[], ends: readonly LayerPeak[]): FindingFact[] {
  return begins.flatMap((peak) => {
    if (spreadSeverity(peak) !== 'stop') return [];
    const later = ends.find(({ zone, layer }) => zone === peak.zone && layer === peak.layer);
    if (later && spreadSeverity(later) === 'stop') return [];
    return [stressFact(stressed, peak, { why: 'begins', severity: 'check', kPa: peak.kPa })];
  });
}

const spreadSeverity = ({ kPa, permittedKPa }: LayerPeak): Severity | null =>
  permittedKPa === null ? null : severityOf(kPa / permittedKPa);

const elasticShare = ({ elasticKPa, aboveKPa, permittedKPa }: LayerPeak) =>
  permittedKPa === null ? 0 : (elasticKPa + aboveKPa) / permittedKPa;

/**
 * Layers that bear the spread patch, but not the elastic second opinion: one finding per zone, for the layer that exceeds its bearing
 * the most. Under slabs that opinion tells nothing, as they are far stiffer than what lies below and spread more than a half-space.
 */
function elasticFacts(stressed: Stressed, layers: readonly LayerPeak[]): FindingFact[] {
  const worst = new Map<number, LayerPeak>();
  for (const peak of layers) {
    if (spreadSeverity(peak) || severityOf(elasticShare(peak)) !== 'stop' || peak.underSlab) continue;
    const kept = worst.get(peak.zone);
    if (!kept || elasticShare(peak) > elasticShare(kept)) worst.set(peak.zone, peak);
  }
  return [...worst.values()].map((peak) => {
    return stressFact(stressed, peak, { why: 'elastic', severity: 'check', kPa: peak.elasticKPa + peak.aboveKPa });
  });
}

interface Verdict {
  readonly why: 'spread' | 'elastic' | 'begins';
  readonly severity: Severity;
  readonly kPa: number;
}

function stressFact({ on, run, materialOf }: Stressed, peak: LayerPeak, { why, severity, kPa }: Verdict): FindingFact {
  const zone = on.input.zones[peak.zone];
  const { materialId, name } = zone.buildUp.layers[peak.layer];
  const material = materialOf(materialId);
  const source = material.fromScene ? undefined : materialById.get(materialId)?.sources.bearingKPa;
  return {
    rule: 'stress.layer',
    severity,
    where: { zone: zone.id, ...stageOf(on, run), at: filePlace(on, peak.x, peak.y) },
    value: kPa,
    limit: peak.permittedKPa ?? 0,
    unit: 'kPa',
    facts: {
      why,
      run: run.id,
      vehicle: run.vehicle.name,
      layer: name,
      wheelsKPa: peak.wheelsKPa,
      aboveKPa: peak.aboveKPa,
      elasticKPa: peak.elasticKPa,
      governs: peak.governs,
      factor: run.dynamicFactor,
      source: source ? sourceLine(source) : material.sourceText,
    },
  };
}
