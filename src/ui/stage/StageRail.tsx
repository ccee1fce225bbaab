/** The stages as a ranging rod laid flat: numbered bands, the finished garden last; play, step, and what the stage brings. */

import { type KeyboardEvent, useRef, useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { printWords } from '../text/print-words.ts';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { StageBands } from './StageBands.tsx';
import { StageLine, StageSheet } from './StageSheet.tsx';

/** `full`: the whole stage sheet stands below the rail instead of opening above it. */
export function StageRail({ full = false }: { readonly full?: boolean }) {
  const stages = useScene((state) => state.snapshot?.stages);
  const count = stages?.length ?? 0;
  const [sheet, setSheet] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  if (stages === undefined || count === 0) return <div className="rail rail-empty" />;
  const onClose = () => {
    setSheet(false);
    opener.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && sheet && !full) onClose();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only listens to what bubbles up from the controls in it
    <div className="rail" onKeyDown={onKeyDown}>
      {sheet && !full && <StageSheet onClose={onClose} />}
      <div className="rail-row">
        <StageButtons count={count} />
        <StageBands stages={stages} />
      </div>
      {full ? (
        <>
          <TalkButton />
          <StageSheet onClose={null} />
        </>
      ) : (
        <div className="rail-row rail-details">
          <StageLine />
          <TalkButton />
          <button ref={opener} type="button" className="button" aria-expanded={sheet} onClick={() => setSheet(!sheet)}>
            {t.stage.sheetOpen}
            <Icon name={sheet ? 'down' : 'up'} />
          </button>
        </div>
      )}
    </div>
  );
}

/** The stage told to the crew. */
function TalkButton() {
  const showCard = useView((state) => state.showCard);
  const words = printWords(useView((state) => state.language)).talk;
  return (
    <button type="button" className="button" title={words.enterTitle} onClick={() => showCard(0)}>
      {words.enter}
    </button>
  );
}

function StageButtons({ count }: { readonly count: number }) {
  const stage = useView((state) => state.stage);
  const playing = useView((state) => state.playing);
  const stepStage = useView((state) => state.stepStage);
  const showStage = useView((state) => state.showStage);
  const setPlaying = useView((state) => state.setPlaying);
  const onPlay = () => {
    // From the finished garden there is nothing to play but the whole from its start.
    if (!playing && stage === null) showStage(0);
    setPlaying(!playing);
  };
  return (
    <div className="rail-buttons">
      <button
        type="button"
        className="icon-button"
        aria-label={t.stage.previous}
        title={t.stage.previous}
        disabled={stage === 0}
        onClick={() => stepStage(-1, count)}
      >
        <Icon name="previous" />
      </button>
      <button
        type="button"
        className="icon-button"
        aria-label={playing ? t.stage.pause : t.stage.play}
        title={playing ? t.stage.pause : t.stage.play}
        onClick={onPlay}
      >
        <Icon name={playing ? 'pause' : 'play'} />
      </button>
      <button
        type="button"
        className="icon-button"
        aria-label={t.stage.next}
        title={t.stage.next}
        disabled={stage === null}
        onClick={() => stepStage(1, count)}
      >
        <Icon name="next" />
      </button>
    </div>
  );
}
