/** Says in words, for people who do not see the picture, what was just opened, picked or stepped to. */

import { useMemo } from 'react';
import type { CoreLog } from '../../model/maps.ts';
import type { SceneBasis } from '../../model/scene-file.ts';
import { missingBasis } from '../facts/basis.ts';
import { bayVerdicts } from '../facts/bay-verdict.ts';
import { travelledSentence } from '../facts/edit-names.ts';
import { headlineOf } from '../facts/headline.ts';
import { judge } from '../facts/utilisation.ts';
import { headlineText } from '../side/Headline.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

/** What is said of the picked place; with a permitted load also who permits it. */
export function placeSentence(log: CoreLog, stage: string, basis?: SceneBasis): string {
  const load = log.patchKNm2 ?? log.saturatedKNm2;
  if (log.bay === null) return t.live.noBay(stage, load);
  if (log.permittedKNm2 === null || log.utilisation === null) return t.live.noLimit(log.bay, stage, load);
  const place = t.live.place(log.bay, stage, load, log.permittedKNm2);
  const says = t.live.verdict(place, log.utilisation, judge(log.utilisation), log.bayConfirmed);
  const missing = missingBasis(basis);
  return missing.length > 0 ? says : t.live.withBasis(says, t.basis.short(basis, missing));
}

export function LiveSummary() {
  const snapshot = useScene((state) => state.snapshot);
  const log = useScene((state) => state.coreLog);
  const travelled = useScene((state) => state.travelled);
  const stage = useView((state) => state.stage);
  const headline = useMemo(() => snapshot && headlineOf(bayVerdicts(snapshot.report, snapshot.scene)), [snapshot]);
  const opened = snapshot && headline ? t.live.opened(snapshot.scene.name, headlineText(headline)) : '';
  const stageText = stage === null ? t.live.garden : t.live.stageNumber(stage + 1);
  const stageName = stage === null ? '' : (snapshot?.stages[stage]?.name ?? '');
  const stepped = stage === null ? '' : t.legend.stage(stage + 1, stageName);
  const basis = snapshot?.scene.deck.bays.find(({ id }) => id === log?.bay)?.basis;
  const placed = log === null ? stepped || opened : placeSentence(log, stageText, basis);
  const says = snapshot && travelled ? travelledSentence(snapshot, travelled) : placed;
  return (
    <p className="unseen" role="status" aria-live="polite" data-testid="live">
      {says}
    </p>
  );
}
