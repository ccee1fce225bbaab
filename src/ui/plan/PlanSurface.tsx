/** The drawing: the scene, what is chosen, what is being drawn and where it is wrong; pans and zooms by pointers and keys. */

import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { PointM } from '../../model/scene-file.ts';
import { isDrawing, type Surface } from '../../store/plan-draw.ts';
import { boxOf, toLocal } from '../facts/place.ts';
import { fitted, fittedBeside, panned, type SizePx, toPixel, zoomed } from '../facts/plan-surface.ts';
import { t } from '../text/text.ts';
import { useMedia } from '../use-media.ts';
import { useScene, useView } from '../use-stores.ts';
import { PlanChosen } from './PlanChosen.tsx';
import { PlanDrawn } from './PlanDrawn.tsx';
import { PlanGrid } from './PlanGrid.tsx';
import { PlanScene } from './PlanScene.tsx';
import { PlanTint } from './PlanTint.tsx';
import { PlanUnderlay } from './PlanUnderlay.tsx';
import { PlanUnderlayLines } from './PlanUnderlayLines.tsx';
import { ProblemNote } from './ProblemNote.tsx';
import { usePlan, usePlanStore } from './plan-context.ts';
import { SurfaceCorner } from './SurfaceCorner.tsx';
import { useChooseInView } from './use-choose-in-view.ts';
import { useNudge } from './use-nudge.ts';
import { type PlanActs, usePlanActs } from './use-plan-acts.ts';
import { usePointers } from './use-pointers.ts';

const MARGIN_PX = 34;
/** What the buttons for near and far take up in their corner, with the room around them. */
const ZOOM_PX: SizePx = { width: 50, height: 100 };
const ZOOM_TOUCH_PX: SizePx = { width: 66, height: 150 };
const COARSE = '(pointer: coarse)';
const PAN_PX = 48;
const ZOOM = 1.25;
/** A place looked at is seen with so much around it [m]. */
const LOOK_SIZE_M = 8;

export function PlanSurface({ snapshot }: { readonly snapshot: Snapshot }) {
  const svg = useRef<SVGSVGElement>(null);
  const plan = usePlanStore();
  const surface = usePlan((state) => state.surface);
  const hidden = usePlan((state) => state.hidden);
  const tool = usePlan((state) => state.tool);
  const stage = useView((state) => state.stage);
  const acts = usePlanActs(snapshot.originM);
  const handlers = usePointers(svg, plan, acts.does);
  const size = useFitting(svg, snapshot);
  const onKeyDown = useSurfaceKeys(snapshot, size, acts);
  const [panX, panY] = surface?.panPx ?? [0, 0];
  return (
    <div className="pe-surface">
      {/* A drawing of its own, so that what follows the pointer does not paint the scene anew. */}
      <svg className="pe-static" aria-hidden="true">
        {surface && (
          <>
            <PlanUnderlay surface={surface} originM={snapshot.originM} />
            <PlanUnderlayLines surface={surface} originM={snapshot.originM} />
            {!hidden.has('grid') && <PlanGrid surface={surface} size={size} originM={snapshot.originM} />}
            <g transform={`translate(${panX} ${panY})`}>
              <PlanScene snapshot={snapshot} stage={stage} hidden={hidden} scalePx={surface.scalePx} />
              {!hidden.has('map') && <PlanTint snapshot={snapshot} scalePx={surface.scalePx} />}
            </g>
          </>
        )}
      </svg>
      <svg
        ref={svg}
        className="pe-drawing"
        data-tool={tool}
        data-over={acts.hovered !== null}
        role="application"
        aria-label={t.draw.label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: moved and zoomed by keys
        tabIndex={0}
        onKeyDown={onKeyDown}
        {...handlers}
      >
        {surface && (
          <>
            <PlanChosen snapshot={snapshot} surface={surface} acts={acts} />
            <PlanDrawn originM={snapshot.originM} surface={surface} size={size} />
          </>
        )}
      </svg>
      {surface && <SurfaceCorner surface={surface} originM={snapshot.originM} onAll={() => plan.getState().lookAt('all')} size={size} />}
      <p className="pe-follows" role="status" data-follows={acts.dragging?.follows}>
        {acts.dragging !== null && acts.dragging.follows !== 'now' && t.draw.live.follows[acts.dragging.follows]}
      </p>
      <ProblemNote />
    </div>
  );
}

/** The surface knows its size, shows all at first, and goes where it is told to look. */
function useFitting(svg: React.RefObject<SVGSVGElement | null>, snapshot: Snapshot): SizePx {
  const plan = usePlanStore();
  const size = usePlan((state) => state.sizePx);
  const look = usePlan((state) => state.look);
  const fileName = useScene((state) => state.fileName);
  const touch = useMedia(COARSE);
  const seen = useRef({ look: look.count, size });
  useLayoutEffect(() => {
    const { current } = svg;
    if (current === null) return;
    const measure = () => plan.getState().setSize({ width: current.clientWidth, height: current.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    measure();
    return () => observer.disconnect();
  }, [svg, plan]);
  const isKnown = size.width > 0;
  const { originM } = snapshot;
  useEffect(() => {
    if (!isKnown) return;
    const { surface, setSurface, of, showDeck } = plan.getState();
    // Another deck is shown whole; an edit leaves the view alone.
    const deck = `${fileName} ${originM.join(' ')}`;
    if (of !== deck) {
      seen.current = { look: look.count, size };
      showDeck(deck, whole(snapshot, size, touch));
      return;
    }
    const asked = look.count !== seen.current.look;
    const before = seen.current.size;
    seen.current = { look: look.count, size };
    if (surface !== null && !asked) {
      // What was in the middle stays there when the room becomes larger or smaller.
      if (before.width > 0 && before !== size)
        setSurface(panned(surface, (size.width - before.width) / 2, (size.height - before.height) / 2));
      return;
    }
    setSurface(asked && look.at !== 'all' ? lookingAt(look.at, originM, surface, size) : whole(snapshot, size, touch));
  }, [isKnown, plan, look, originM, fileName, size, snapshot, touch]);
  return size;
}

const whole = ({ scene, originM }: Snapshot, size: SizePx, touch: boolean): Surface =>
  fittedBeside(boxOf(scene.deck.outline.map((point) => toLocal(point, originM))), size, MARGIN_PX, touch ? ZOOM_TOUCH_PX : ZOOM_PX);

/** In the middle, and near enough to see it. */
function lookingAt(at: PointM, originM: PointM, surface: Surface | null, size: SizePx): Surface {
  const [x, y] = toLocal(at, originM);
  const half = LOOK_SIZE_M / 2;
  const near = fitted({ min: [x - half, y - half], max: [x + half, y + half] }, size, 0);
  if (surface === null || surface.scalePx < near.scalePx) return near;
  const [nowX, nowY] = toPixel([x, y], surface);
  return panned(surface, size.width / 2 - nowX, size.height / 2 - nowY);
}

function useSurfaceKeys(snapshot: Snapshot, size: SizePx, { drawing, does: pointers, dragging }: PlanActs) {
  const plan = usePlanStore();
  const select = useView((state) => state.select);
  const nudge = useNudge();
  const chooseInView = useChooseInView();
  const touch = useMedia(COARSE);
  return (event: KeyboardEvent<SVGSVGElement>) => {
    if (event.ctrlKey || event.metaKey) {
      if (event.key.toLowerCase() !== 'a') return;
      event.preventDefault();
      chooseInView();
      return;
    }
    const { surface, setSurface, tool, points, box, choose, setPoints, vertex, setVertex } = plan.getState();
    if (surface === null) return;
    const middle: PointM = [size.width / 2, size.height / 2];
    const arrows: Readonly<Record<string, PointM>> = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
    const arrow = arrows[event.key];
    const does = (act: () => void) => {
      event.preventDefault();
      act();
    };
    if (arrow && event.shiftKey) does(() => nudge.move(-arrow[0], arrow[1]));
    else if (arrow) does(() => setSurface(panned(surface, arrow[0] * PAN_PX, arrow[1] * PAN_PX)));
    else if (event.key === '+' || event.key === '=') does(() => setSurface(zoomed(surface, ZOOM, middle)));
    else if (event.key === '-' || event.key === '−') does(() => setSurface(zoomed(surface, 1 / ZOOM, middle)));
    else if (event.key === '0') does(() => setSurface(whole(snapshot, size, touch)));
    else if (event.key === 'Enter' && isDrawing(tool) && points.length > 0) does(drawing.finish);
    else if (event.key === 'Backspace' && isDrawing(tool)) does(drawing.back);
    else if (event.key === 'Delete') does(nudge.remove);
    else if (event.key === 'Escape') {
      if (dragging !== null || box !== null) pointers.cancel();
      else if (points.length > 0) setPoints([]);
      else if (tool !== 'choose') choose();
      else if (vertex !== null) setVertex(null);
      else select([]);
    }
  };
}
