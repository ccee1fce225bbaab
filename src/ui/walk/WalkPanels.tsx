/** All that stands round the picture in the walkthrough: safety above, caption and buttons below. Nothing here edits but that views can be kept. */

import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { bayVerdicts } from '../facts/bay-verdict.ts';
import { Icon } from '../parts/Icon.tsx';
import { walk as t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { KeepView } from '../views/KeepView.tsx';
import { UnderPanel } from './UnderPanel.tsx';
import { useWalkKeys } from './use-walk-keys.ts';
import { useBeforeAfter, useWalkViews, type WalkViews } from './use-walk-views.ts';
import { WalkPad } from './WalkPad.tsx';
import { WalkSafety } from './WalkSafety.tsx';

export function WalkPanels() {
  const snapshot = useScene((state) => state.snapshot);
  return snapshot === null ? null : <Panels snapshot={snapshot} />;
}

function Panels({ snapshot }: { readonly snapshot: Snapshot }) {
  const views = useWalkViews(snapshot);
  const leaveWalk = useView((state) => state.leaveWalk);
  const lifted = useView((state) => state.walk?.lifted ?? false);
  const onFoot = useView((state) => state.walk?.onFoot ?? false);
  const leave = useCallback(() => {
    if (document.fullscreenElement !== null) void document.exitFullscreen();
    leaveWalk();
  }, [leaveWalk]);
  const verdicts = useMemo(() => bayVerdicts(snapshot.report, snapshot.scene), [snapshot]);
  useWalkKeys(views, leave);
  // The first view is where the walkthrough begins; one that is kept on the way is no reason to begin again.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it begins
  useEffect(() => views.go(0), []);
  return (
    <>
      <header className="walk-top">
        <h1>{snapshot.scene.name}</h1>
        <WalkSafety verdicts={verdicts} />
        <TopButtons onLeave={leave} />
      </header>
      {lifted && <UnderPanel verdicts={verdicts} />}
      {onFoot && <WalkPad />}
      <footer className="walk-foot">
        <Caption snapshot={snapshot} views={views} />
        <WalkTools snapshot={snapshot} views={views} />
      </footer>
    </>
  );
}

function TopButtons({ onLeave }: { readonly onLeave: () => void }) {
  const theme = useView((state) => state.theme);
  const setTheme = useView((state) => state.setTheme);
  const [full, setFull] = useState(document.fullscreenElement !== null);
  useEffect(() => {
    const changed = () => setFull(document.fullscreenElement !== null);
    document.addEventListener('fullscreenchange', changed);
    return () => document.removeEventListener('fullscreenchange', changed);
  }, []);
  const toggleFull = () =>
    void (full ? document.exitFullscreen() : document.documentElement.requestFullscreen().catch(() => setFull(false)));
  return (
    <div className="walk-buttons">
      <button
        type="button"
        className="walk-button"
        aria-pressed={theme === 'projector'}
        title={t.projectorTitle}
        onClick={() => setTheme(theme === 'projector' ? 'paper' : 'projector')}
      >
        {t.projector}
      </button>
      {document.fullscreenEnabled && (
        <button type="button" className="walk-button" onClick={toggleFull}>
          {full ? t.smallScreen : t.fullScreen}
        </button>
      )}
      <button type="button" className="walk-button" title={t.leaveTitle} onClick={onLeave}>
        <Icon name="close" />
        {t.leave}
      </button>
    </div>
  );
}

/** What one sees, in one line and one sentence. */
function useCaption(snapshot: Snapshot, views: WalkViews): { readonly name: string; readonly says: string } {
  const walk = useView((state) => state.walk);
  const stage = useView((state) => state.stage);
  const view = views.views[walk?.at ?? 0];
  if (walk?.onFoot) return { name: t.onFoot, says: t.footSays };
  if (walk?.bare) return { name: t.bareName, says: t.bareSays };
  if (walk?.changing) {
    if (stage === null) return { name: t.finishedName, says: '' };
    return { name: t.stage(stage + 1, snapshot.stages.length, snapshot.stages[stage]?.name ?? ''), says: '' };
  }
  return { name: view?.name ?? '', says: view?.says ?? '' };
}

function Caption({ snapshot, views }: { readonly snapshot: Snapshot; readonly views: WalkViews }) {
  const { name, says } = useCaption(snapshot, views);
  const at = useView((state) => state.walk?.at ?? 0);
  const slow = useView((state) => state.walk?.shadow === 'slow');
  return (
    <div className="walk-caption">
      <div className="walk-steps">
        <button type="button" className="walk-step" aria-label={t.previous} disabled={at === 0} onClick={() => views.step(-1)}>
          <Icon name="previous" />
        </button>
        <button
          type="button"
          className="walk-step"
          aria-label={t.next}
          disabled={at >= views.views.length - 1}
          onClick={() => views.step(1)}
        >
          <Icon name="next" />
        </button>
      </div>
      <div className="walk-says" role="status" aria-live="polite" data-testid="walk-caption">
        <p className="walk-name">
          {name} <span className="walk-place">{t.place(at + 1, views.views.length)}</span>
        </p>
        <p>{says}</p>
        {slow && <p className="small">{t.slow}</p>}
      </div>
    </div>
  );
}

function WalkTools({ snapshot, views }: { readonly snapshot: Snapshot; readonly views: WalkViews }) {
  const walk = useView((state) => state.walk);
  const setWalk = useView((state) => state.setWalk);
  const beforeAfter = useBeforeAfter(snapshot.stages.length);
  if (walk === null) return null;
  return (
    <div className="walk-tools">
      <ol className="walk-list" aria-label={t.views}>
        {views.views.map(({ id, name }, index) => (
          <li key={id}>
            <button
              type="button"
              className="walk-view"
              title={name}
              aria-label={`${index + 1}: ${name}`}
              aria-current={index === walk.at ? 'true' : undefined}
              onClick={() => views.go(index)}
            >
              {index + 1}
            </button>
          </li>
        ))}
      </ol>
      <button type="button" className="walk-button" onClick={beforeAfter}>
        {walk.bare ? t.finished : t.bare}
      </button>
      <button
        type="button"
        className="walk-button walk-go"
        aria-pressed={walk.onFoot}
        onClick={() => (walk.onFoot ? views.go(walk.at) : setWalk({ onFoot: true, bare: false, changing: false, lifted: false }))}
      >
        {walk.onFoot ? t.offFoot : t.onFoot}
      </button>
      <button type="button" className="walk-button" aria-pressed={walk.life} title={t.scale} onClick={() => setWalk({ life: !walk.life })}>
        {t.life}
      </button>
      <label className="walk-light">
        <span>{t.light}</span>
        <input
          type="range"
          min={6}
          max={20}
          step={0.5}
          value={walk.hour}
          aria-valuetext={t.hour(walk.hour)}
          onChange={(event) => setWalk({ hour: Number(event.target.value) })}
        />
        <output>{t.hour(walk.hour)}</output>
      </label>
      {!walk.onFoot && !walk.bare && !walk.changing && (
        <KeepView snapshot={snapshot} views={views.views} at={walk.at + 1} className="walk-button" onKept={(at) => setWalk({ at })} />
      )}
      <p className="walk-note">{walk.lifted || walk.onFoot ? t.scale : `${t.under.hint} ${t.scale}`}</p>
    </div>
  );
}
