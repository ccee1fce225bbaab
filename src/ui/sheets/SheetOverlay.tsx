/** A print sheet over the page: a preview of its pages as the browser prints them, what can be chosen, derivations on tap. */

import { type CSSProperties, type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SheetName } from '../../store/sheet-view.ts';
import { distinctBases } from '../facts/basis.ts';
import { heapStage } from '../facts/heap-board.ts';
import { qrCode } from '../facts/qr-code.ts';
import { useShareLink } from '../file/use-share-link.ts';
import { type PrintWords, printWords } from '../text/print-words.ts';
import { useScene, useView } from '../use-stores.ts';
import { DerivationPanel } from './DerivationPanel.tsx';
import { DerivationsContext } from './Derived.tsx';
import { engineerBlocks } from './engineer-blocks.tsx';
import { FittedPage } from './FittedPage.tsx';
import { findingBlocks } from './finding-blocks.tsx';
import { heapBlocks } from './heap-blocks.tsx';
import { PagedSheet } from './PagedSheet.tsx';
import { A3, A4, type PaperSize, type SheetBlock } from './paged-sheet.ts';
import { SheetBar, type SheetChoices } from './SheetBar.tsx';
import { drawingOf, paperFor, type SheetDrawing, sectionBlocks } from './section-blocks.tsx';
import type { SheetContext } from './sheet-context.ts';
import { TalkPage } from './TalkPage.tsx';
import { usePreview } from './use-preview.ts';
import { useStagePicture } from './use-stage-picture.ts';

export function SheetOverlay() {
  const sheet = useView((state) => state.sheet);
  const snapshot = useScene((state) => state.snapshot);
  return sheet === null || snapshot === null ? null : <OpenSheet key={sheet} sheet={sheet} snapshot={snapshot} />;
}

interface OpenProps {
  readonly sheet: SheetName;
  readonly snapshot: Snapshot;
}

function OpenSheet({ sheet, snapshot }: OpenProps) {
  const spoken = useView((state) => state.language);
  const shown = useView((state) => state.stage);
  const showSheet = useView((state) => state.showSheet);
  const section = useScene((state) => state.section);
  const [choices, setChoices] = useState<SheetChoices>({ language: spoken, paper: 'A4', stage: null, material: null, scale: null });
  const [ask, setAsk] = useState<DerivationAsk | null>(null);
  const [pages, setPages] = useState(0);
  const { language } = choices;
  const words = printWords(language);
  const drawing = useMemo(() => (section === null ? null : drawingOf(section.svg)), [section]);
  const paper = paperOf(sheet, choices.paper, drawing);
  const stage = heapStage(snapshot.stages, choices.stage ?? shown);
  const picture = useStagePicture(sheet === 'talk' ? stage : null, 960, 540);
  const link = useShareLink();
  const share = useMemo(() => (sheet === 'heaps' && link !== null ? { link, code: qrCode(link) } : null), [sheet, link]);
  const on = useMemo(
    (): SheetContext => ({ snapshot, words, language, paper, stage, share }),
    [snapshot, words, language, paper, stage, share],
  );
  const { material, scale } = choices;
  const blocks = useMemo(() => blocksOf(sheet, on, { material, scale, drawing, picture }), [sheet, on, material, scale, drawing, picture]);
  const derivations = useMemo(() => ({ ask: setAsk, title: words.derivation.title }), [words]);
  const { desk, zoom, isReduced, isActual, setActual } = usePreview(paper);
  const close = useCallback(() => showSheet(null), [showSheet]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    if (ask === null) close();
    else setAsk(null);
  };
  const overlay = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    overlay.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  const style = { '--paper-zoom': zoom } as CSSProperties;
  return (
    <div
      ref={overlay}
      className="sheet-overlay"
      role="dialog"
      aria-modal="true"
      aria-label={words.sheet[sheet]}
      tabIndex={-1}
      lang={language}
      data-pages={pages}
      onKeyDown={onKeyDown}
      style={style}
    >
      <style>{`@page { size: ${paper.widthMm}mm ${paper.heightMm}mm; margin: 0; }`}</style>
      <SheetBar sheet={sheet} on={on} choices={choices} pages={pages} onChoose={setChoices} onClose={close}>
        {isReduced && (
          <button type="button" className="button" aria-pressed={isActual} onClick={() => setActual(!isActual)}>
            {words.actual}
          </button>
        )}
      </SheetBar>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: pages that scroll must be reachable by keyboard */}
      <section className="sheet-desk" ref={desk} aria-label={words.sheet[sheet]} tabIndex={0}>
        <DerivationsContext value={derivations}>
          <PagedSheet
            paper={paper}
            blocks={blocks}
            head={<Head on={on} sheet={sheet} />}
            foot={(page, of) => <Foot words={words} page={page} of={of} />}
            continued={words.continued}
            onPages={setPages}
          />
        </DerivationsContext>
      </section>
      {ask !== null && <DerivationPanel ask={ask} words={words} onClose={() => setAsk(null)} />}
    </div>
  );
}

function paperOf(sheet: SheetName, wanted: 'A4' | 'A3', drawing: SheetDrawing | null): PaperSize {
  if (sheet === 'heaps') return A3;
  if (sheet === 'section') return drawing === null ? A4 : paperFor(drawing);
  return sheet === 'engineer' && wanted === 'A3' ? A3 : A4;
}

interface Filling {
  readonly material: string | null;
  readonly scale: number | null;
  readonly drawing: SheetDrawing | null;
  readonly picture: string | null;
}

function blocksOf(sheet: SheetName, on: SheetContext, { material, scale, drawing, picture }: Filling): SheetBlock[] {
  const { snapshot, words, stage, paper } = on;
  switch (sheet) {
    case 'engineer':
      return engineerBlocks(on);
    case 'heaps':
      return heapBlocks(on, { material, scale });
    case 'findings':
      return findingBlocks(on);
    case 'section':
      return sectionBlocks(on, drawing);
    case 'talk': {
      if (stage === null) return [{ key: 'none', node: <p>{words.heaps.noPlan}</p> }];
      const page = (
        <FittedPage paper={paper}>
          <TalkPage snapshot={snapshot} words={words} stage={stage} picture={picture} />
        </FittedPage>
      );
      return [{ key: 'talk', node: page }];
    }
  }
}

function Head({ on: { snapshot, words }, sheet }: { readonly on: SheetContext; readonly sheet: SheetName }) {
  const changed = useScene((state) => state.history.changed);
  const { scene, report } = snapshot;
  const bases = distinctBases(scene.deck.bays.map(({ basis }) => basis));
  return (
    <>
      <p>
        <strong>{scene.name}</strong>
        {changed && ` (${words.edited})`} · {words.sheet[sheet]} · {words.printed(new Date())}
      </p>
      <p>{words.basis(bases, report.bays.filter(({ confirmed }) => !confirmed).length)}</p>
    </>
  );
}

function Foot({ words, page, of }: { readonly words: PrintWords; readonly page: number; readonly of: number }) {
  return (
    <>
      <span>
        <strong>{words.notACheck}</strong> {words.decides}
      </span>
      <span>{words.page(page, of)}</span>
    </>
  );
}
