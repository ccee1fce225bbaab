/** The rod itself: one band per stage and one for the finished garden, chosen by pointer or arrow keys. */

import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { StageView } from '../../model/maps.ts';
import { UTILISATION_COLOURS } from '../../model/palette.ts';
import type { Report } from '../../model/report.ts';
import { judge, utilisationClass } from '../facts/utilisation.ts';
import { classFill, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { Icon } from '../parts/Icon.tsx';
import { en as t } from '../text/en.ts';
import { useScene, useView } from '../use-stores.ts';

/** The greatest utilisation of a stage and whether its bay is confirmed. */
export interface StageWorst {
  readonly utilisation: number;
  readonly bay: string;
  readonly confirmed: boolean;
}

export function stageWorst(report: Report, stage: string): StageWorst | null {
  const found = report.stages.find(({ id }) => id === stage);
  if (found === undefined || found.utilisation === null || found.worstBay === null) return null;
  const confirmed = report.bays.find(({ id }) => id === found.worstBay)?.confirmed ?? false;
  return { utilisation: found.utilisation, bay: found.worstBay, confirmed };
}

export function worstText({ utilisation, bay, confirmed }: StageWorst): string {
  const judgement = judge(utilisation);
  return confirmed || judgement === 'over' ? t.stage.worst(utilisation, bay, judgement) : t.stage.worstUnconfirmed(utilisation, bay);
}

export function StageBands({ stages }: { readonly stages: readonly StageView[] }) {
  const stage = useView((state) => state.stage);
  const showStage = useView((state) => state.showStage);
  const setPlaying = useView((state) => state.setPlaying);
  const last = stages.length;
  const at = stage ?? last;
  const rod = useRef<HTMLDivElement>(null);
  useEffect(() => {
    rod.current?.querySelector(`#stage-${at}`)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [at]);
  const choose = (index: number) => {
    setPlaying(false);
    showStage(index >= last ? null : Math.max(0, index));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const steps: Readonly<Record<string, number>> = {
      ArrowRight: at + 1,
      ArrowDown: at + 1,
      ArrowLeft: at - 1,
      ArrowUp: at - 1,
      Home: 0,
      End: last,
    };
    const to = steps[event.key];
    if (to === undefined) return;
    event.preventDefault();
    choose(to);
  };
  return (
    <div
      ref={rod}
      className="rod"
      role="listbox"
      aria-label={t.stage.list}
      aria-orientation="horizontal"
      aria-activedescendant={`stage-${at}`}
      tabIndex={0}
      onKeyDown={onKeyDown}
    >
      {stages.map((one, i) => (
        <Band key={one.id} index={i} stage={one} selected={i === at} onChoose={choose} />
      ))}
      <Band index={last} stage={null} selected={at === last} onChoose={choose} />
    </div>
  );
}

interface BandProps {
  readonly index: number;
  /** Null for the finished garden. */
  readonly stage: StageView | null;
  readonly selected: boolean;
  readonly onChoose: (index: number) => void;
}

function Band({ index, stage, selected, onChoose }: BandProps) {
  const report = useScene((state) => state.snapshot?.report);
  const worst = report && stage ? stageWorst(report, stage.id) : null;
  const name = stage?.name ?? t.stage.finished;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox around it takes the keys
    <div id={`stage-${index}`} className="band" role="option" tabIndex={-1} aria-selected={selected} onClick={() => onChoose(index)}>
      <span className="band-number">{stage === null ? <Icon name="garden" /> : index + 1}</span>
      <span className="band-name">{name}</span>
      {worst && <span className="unseen">{worstText(worst)}</span>}
      {worst && <BandStrip worst={worst} />}
    </div>
  );
}

/** A strip in the class of the stage's worst bay; over the limit also with a mark. */
function BandStrip({ worst: { utilisation, confirmed } }: { readonly worst: StageWorst }) {
  const index = utilisationClass(utilisation);
  const over = judge(utilisation) === 'over';
  const fill = !confirmed && !over ? UNCONFIRMED_FILL : classFill(index, UTILISATION_COLOURS[index] ?? '');
  return (
    <>
      <svg className="band-strip" width="100%" height="6" aria-hidden="true" focusable="false">
        <rect width="100%" height="6" fill={fill} />
      </svg>
      {over && (
        <span className="band-over" aria-hidden="true">
          !
        </span>
      )}
    </>
  );
}
