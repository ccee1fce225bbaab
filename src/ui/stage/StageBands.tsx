/** The rod itself: one band per stage and one for the finished garden, chosen by pointer or arrow keys. */

import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { StageView } from '../../model/maps.ts';
import { UTILISATION_COLOURS } from '../../model/palette.ts';
import { gardenWorst, type StageWorst, stageWorst } from '../facts/stage-worst.ts';
import { judge, utilisationClass } from '../facts/utilisation.ts';
import { classFill, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

export function worstText({ utilisation, bay, confirmed, unconfirmed }: StageWorst): string {
  const judgement = judge(utilisation);
  const says = confirmed || judgement === 'over' ? t.stage.worst(utilisation, bay, judgement) : t.stage.worstUnconfirmed(utilisation, bay);
  // What the worst bay already says of itself need not be said again.
  const isSaid = !confirmed && judgement !== 'over' && unconfirmed === 1;
  return unconfirmed === 0 || isSaid ? says : `${says}; ${t.stage.unconfirmed(unconfirmed)}`;
}

/** Moves the rod only: `scrollIntoView` would also make the next Tab start from here instead of from the top of the page. */
function keepInSight(rod: HTMLElement | null, band: string): void {
  const found = rod?.querySelector(band)?.getBoundingClientRect();
  if (!rod || !found) return;
  const { left, right } = rod.getBoundingClientRect();
  if (found.left < left) rod.scrollLeft -= left - found.left;
  else if (found.right > right) rod.scrollLeft += found.right - right;
}

export function StageBands({ stages }: { readonly stages: readonly StageView[] }) {
  const stage = useView((state) => state.stage);
  const showStage = useView((state) => state.showStage);
  const setPlaying = useView((state) => state.setPlaying);
  const last = stages.length;
  const at = stage ?? last;
  const rod = useRef<HTMLDivElement>(null);
  useEffect(() => {
    keepInSight(rod.current, `#stage-${at}`);
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
  const worst = report ? (stage ? stageWorst(report, stage.id) : gardenWorst(report)) : null;
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
