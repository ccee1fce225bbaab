/** What is said of the layers under a spot: the figures of the core log and of the report, nothing else. */

import type { CoreLog } from '../../model/maps.ts';
import type { SceneBasis, SceneFile } from '../../model/scene-file.ts';
import type { BayVerdict } from './bay-verdict.ts';
import { judge } from './utilisation.ts';

export interface UnderFacts {
  readonly zone: string;
  readonly layers: number;
  readonly depthMm: number;
  readonly planted: boolean;
  readonly rootsMm: number;
  /** What the deck carries at the spot, soaked: mean over one square metre where it is known. */
  readonly loadKNm2: number;
  readonly permittedKNm2: number | null;
  readonly utilisation: number | null;
  readonly verdict: 'within' | 'over' | 'not confirmed' | 'no limit';
  readonly bay: string | null;
  /** The bay is over elsewhere or in a stage, though not here. */
  readonly bayOver: boolean;
  readonly basis: SceneBasis | null;
}

/** Facts of a core log; null where nothing lies. */
export function underFacts(log: CoreLog, scene: SceneFile, verdicts: readonly BayVerdict[]): UnderFacts | null {
  const zoneId = log.layers[0]?.zone;
  const zone = scene.zones.find(({ id }) => id === zoneId);
  const own = log.layers.filter((layer) => layer.zone === zoneId && layer.placed);
  const [first, last] = [own[0], own.at(-1)];
  if (zone === undefined || first === undefined || last === undefined) return null;
  const rootsMm = own.filter(({ role }) => role === 'substrate').reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const planted = scene.buildups.find(({ id }) => id === zone.buildup)?.vegetation !== undefined;
  const over = log.utilisation !== null && judge(log.utilisation) === 'over';
  const verdict = log.utilisation === null ? 'no limit' : over ? 'over' : log.bayConfirmed ? 'within' : 'not confirmed';
  return {
    zone: zone.name ?? zone.id,
    layers: own.length,
    depthMm: (last.topM - first.bottomM) * 1000,
    planted,
    rootsMm,
    loadKNm2: log.patchKNm2 ?? log.saturatedKNm2,
    permittedKNm2: log.permittedKNm2,
    utilisation: log.utilisation,
    verdict,
    bay: log.bay,
    bayOver: !over && verdicts.find(({ id }) => id === log.bay)?.status === 'over',
    basis: scene.deck.bays.find(({ id }) => id === log.bay)?.basis ?? null,
  };
}
