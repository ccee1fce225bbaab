/** The section below the model: its line while it is drawn, then the sheet or its table, how it is drawn, and where to save it. */

import { useEffect, useRef, useState } from 'react';
import { Follows } from '../parts/Follows.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { PanelGrip } from './PanelGrip.tsx';
import { SectionBar } from './SectionBar.tsx';
import { SectionDraw } from './SectionDraw.tsx';
import { SectionSheet } from './SectionSheet.tsx';
import { SectionTable } from './SectionTable.tsx';
import { useSectionOfCut } from './use-section.ts';

/** Of the room that model and section share. */
const START_PERCENT = 50;

export function SectionPanel() {
  const drawing = useView((state) => state.sectionPoints !== null);
  const open = useView((state) => state.section !== null);
  const panel = useRef<HTMLElement>(null);
  const [percent, setPercent] = useState(START_PERCENT);
  useSectionOfCut();
  const shown = drawing || open;
  // Who opened it by keyboard goes on in it.
  useEffect(() => {
    if (shown) panel.current?.focus({ preventScroll: true });
  }, [shown]);
  if (!shown) return null;
  return (
    <section ref={panel} className="section-panel" aria-label={t.section.region} tabIndex={-1} style={{ flexBasis: `${percent}%` }}>
      <PanelGrip percent={percent} onChange={setPercent} />
      {!drawing && <Follows what="section" />}
      {drawing ? <SectionDraw /> : <Shown />}
    </section>
  );
}

function Shown() {
  const section = useScene((state) => state.section);
  const [asTable, setAsTable] = useState(false);
  const [zoom, setZoom] = useState<number | null>(null);
  return (
    <>
      <SectionBar asTable={asTable} onTable={setAsTable} zoom={zoom} onZoom={setZoom} />
      {section === null ? (
        <p className="section-note">{t.section.waiting}</p>
      ) : asTable ? (
        <SectionTable drawing={section.drawing} />
      ) : (
        <SectionSheet section={section} zoom={zoom} onZoom={setZoom} />
      )}
    </>
  );
}
