/** The sheet itself, the same that is saved: dragged or scrolled about, larger and smaller, or whole. */

import { type PointerEvent, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { DrawnSection } from '../../store/scene-store.ts';
import { t } from '../text/text.ts';

interface Props {
  readonly section: DrawnSection;
  readonly zoom: number | null;
  readonly onZoom: (zoom: number | null) => void;
}

const PX_PER_MM = 96 / 25.4;
const LEAST = 0.1;
const MOST = 8;
const WHEEL_STEP = 1.2;

/** Width and height of the sheet as it says itself [mm]. */
function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width = '1', height = '1'] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}

export function SectionSheet({ section: { svg, of, drawing }, zoom, onZoom }: Props) {
  const room = useRef<HTMLElement>(null);
  const fit = useFit(room, svg);
  const address = useMemo(() => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`, [svg]);
  const size = sizeOf(svg);
  const shown = Math.min(MOST, Math.max(LEAST, zoom ?? fit));
  const latest = useRef(shown);
  latest.current = shown;
  // React's own wheel listener is passive and could not keep the page from zooming.
  useEffect(() => {
    const element = room.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      onZoom(latest.current * (event.deltaY < 0 ? WHEEL_STEP : 1 / WHEEL_STEP));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [onZoom]);
  return (
    <>
      <p className="section-says small">
        {of.heights === 1 ? t.section.trueHeights : t.section.exaggerated(of.heights)}{' '}
        {drawing.bendsM.length > 0 ? t.section.bends : t.section.cutToo} {t.app.statementShort}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section ref={room} className="section-room" tabIndex={0} aria-label={t.section.drawing} {...dragging}>
        <img
          src={address}
          alt={t.section.image(drawing.lengthM)}
          width={Math.round(size.width * PX_PER_MM * shown)}
          height={Math.round(size.height * PX_PER_MM * shown)}
          draggable={false}
        />
      </section>
    </>
  );
}

/** Zoom at which the whole sheet is seen. */
function useFit(room: RefObject<HTMLElement | null>, svg: string): number {
  const [box, setBox] = useState({ width: 1, height: 1 });
  useLayoutEffect(() => {
    const { current } = room;
    if (current === null) return;
    const measure = () => setBox({ width: current.clientWidth, height: current.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    measure();
    return () => observer.disconnect();
  }, [room]);
  const { width, height } = sizeOf(svg);
  return Math.min((box.width - 8) / (width * PX_PER_MM), (box.height - 8) / (height * PX_PER_MM));
}

/** A mouse drags the sheet; fingers scroll by themselves. */
const dragging = {
  onPointerDown(event: PointerEvent<HTMLElement>) {
    if (event.pointerType === 'mouse' && event.button === 0) event.currentTarget.setPointerCapture(event.pointerId);
  },
  onPointerMove(event: PointerEvent<HTMLElement>) {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    event.currentTarget.scrollLeft -= event.movementX;
    event.currentTarget.scrollTop -= event.movementY;
  },
};
