/** The toolbox talk on a tablet: five cards, read from two metres away, turned with gloves on. */

import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import { LANGUAGES, type Language } from '../../model/language.ts';
import { CARDS, type CardName } from '../../store/sheet-view.ts';
import { heapStage } from '../facts/heap-board.ts';
import { talkMaterials } from '../facts/talk-facts.ts';
import { printWords } from '../text/print-words.ts';
import { useScene, useStores, useView } from '../use-stores.ts';
import { TalkHeaps, TalkLayers, TalkPicture, type TalkProps, TalkSafety, TalkStops } from './talk-parts.tsx';
import { useAwake } from './use-awake.ts';
import { useStagePicture } from './use-stage-picture.ts';

export function TalkMode() {
  const card = useView((state) => state.card);
  const sheet = useView((state) => state.sheet);
  const snapshot = useScene((state) => state.snapshot);
  const shown = useView((state) => state.stage);
  // While its page is printed the sheet stands in front.
  if (card === null || snapshot === null || sheet !== null) return null;
  const stage = heapStage(snapshot.stages, shown);
  return stage === null ? null : <OpenTalk card={card} snapshot={snapshot} stage={stage} />;
}

interface OpenProps extends Pick<TalkProps, 'snapshot' | 'stage'> {
  readonly card: number;
}

/** A finger that moved this far sideways turned the card [px]. */
const SWIPE_PX = 60;

function useSwipe(go: (step: number) => void) {
  const start = useRef<{ readonly x: number; readonly y: number } | null>(null);
  return {
    onPointerDown: ({ clientX, clientY, isPrimary }: PointerEvent) => {
      start.current = isPrimary ? { x: clientX, y: clientY } : null;
    },
    onPointerUp: ({ clientX, clientY }: PointerEvent) => {
      const from = start.current;
      start.current = null;
      if (from === null) return;
      const [dx, dy] = [clientX - from.x, clientY - from.y];
      if (Math.abs(dx) > SWIPE_PX && Math.abs(dx) > 2 * Math.abs(dy)) go(dx < 0 ? 1 : -1);
    },
    onPointerCancel: () => {
      start.current = null;
    },
  };
}

/** Sun while the talk lasts, whatever looked before. */
function useSunTheme(): void {
  const { view } = useStores();
  useEffect(() => {
    const before = view.getState().theme;
    view.getState().setTheme('sun');
    return () => view.getState().setTheme(before);
  }, [view]);
}

function OpenTalk({ snapshot, stage, card }: OpenProps) {
  const showCard = useView((state) => state.showCard);
  const showSheet = useView((state) => state.showSheet);
  const showStage = useView((state) => state.showStage);
  const shown = useView((state) => state.stage);
  const spoken = useView((state) => state.language);
  const [languages, setLanguages] = useState<Readonly<Partial<Record<CardName, Language>>>>({});
  const awake = useAwake();
  useSunTheme();
  // Heaps belong to a stage, and the picture must be of the same.
  useEffect(() => {
    if (shown === null) showStage(stage);
  }, [shown, stage, showStage]);
  const picture = useStagePicture(stage, 1280, 720);
  const name = CARDS[card] ?? 'picture';
  const language = languages[name] ?? spoken;
  const words = printWords(language);
  const go = (step: number) => showCard(Math.min(CARDS.length - 1, Math.max(0, card + step)));
  const swipe = useSwipe(go);
  const onKeyDown = ({ key, target }: KeyboardEvent) => {
    if (key === 'Escape') showCard(null);
    if (target instanceof HTMLSelectElement) return;
    if (key === 'ArrowRight' || key === 'PageDown') go(1);
    if (key === 'ArrowLeft' || key === 'PageUp') go(-1);
  };
  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    root.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  const face = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each card begins at its top
  useEffect(() => face.current?.scrollTo(0, 0), [card]);
  const title = words.talk.title(words.stageName(stage + 1, snapshot.stages[stage]?.name ?? ''));
  return (
    <div
      ref={root}
      className="talk"
      role="dialog"
      aria-modal="true"
      aria-label={title}
      tabIndex={-1}
      lang={language}
      data-awake={awake}
      onKeyDown={onKeyDown}
      {...swipe}
    >
      <header className="talk-top">
        <p className="talk-title">{title}</p>
        <div className="talk-actions">
          {LANGUAGES.map((one) => (
            <button
              key={one}
              type="button"
              className="talk-button"
              lang={one}
              aria-pressed={language === one}
              onClick={() => setLanguages({ ...languages, [name]: one })}
            >
              {one.toUpperCase()}
            </button>
          ))}
          <button type="button" className="talk-button" onClick={() => showSheet('talk')}>
            {words.talk.sheet}
          </button>
          <button type="button" className="talk-button" onClick={() => showCard(null)}>
            {words.talk.leave}
          </button>
        </div>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a card that scrolls must be reachable by keyboard */}
      <main ref={face} className="talk-card" aria-live="polite" tabIndex={0}>
        <h2>
          {card + 1} {words.talk.card[name]}
        </h2>
        <Card name={name} snapshot={snapshot} words={words} stage={stage} picture={picture} />
      </main>
      <footer className="talk-foot">
        <button type="button" className="talk-button" disabled={card === 0} onClick={() => go(-1)}>
          {words.talk.previous}
        </button>
        <p>
          {words.talk.cardOf(card + 1, CARDS.length)}
          <span className="talk-frame">{words.notACheck}</span>
        </p>
        <button type="button" className="talk-button" disabled={card === CARDS.length - 1} onClick={() => go(1)}>
          {words.talk.next}
        </button>
      </footer>
    </div>
  );
}

interface CardProps extends TalkProps {
  readonly name: CardName;
  readonly picture: string | null;
}

function Card({ name, picture, ...talk }: CardProps) {
  switch (name) {
    case 'picture':
      return <TalkPicture {...talk} picture={picture} />;
    case 'heaps':
      return <HeapCard {...talk} />;
    case 'layers':
      return <TalkLayers {...talk} />;
    case 'stops':
      return <TalkStops {...talk} />;
    case 'safety':
      return <TalkSafety {...talk} />;
  }
}

/** More at once push the plan off the screen. */
const FIRST = 3;

function HeapCard(talk: TalkProps) {
  const { snapshot, stage } = talk;
  const materials = talkMaterials(snapshot, stage);
  const [chosen, setChosen] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const material = materials.find((one) => one === chosen) ?? materials[0];
  return (
    <>
      {materials.length > 1 && (
        <div className="talk-materials">
          {materials.slice(0, all ? undefined : FIRST).map((id) => (
            <button key={id} type="button" className="talk-button" aria-pressed={id === material} onClick={() => setChosen(id)}>
              {snapshot.materialNames.get(id) ?? id}
            </button>
          ))}
          {!all && materials.length > FIRST && (
            <button type="button" className="talk-button" onClick={() => setAll(true)}>
              {talk.words.talk.others(materials.length - FIRST)}
            </button>
          )}
        </div>
      )}
      <TalkHeaps {...talk} material={material} plan />
    </>
  );
}
