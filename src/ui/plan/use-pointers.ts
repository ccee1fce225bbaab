/** Mouse, pen and fingers on the plan: one acts or moves the sheet, two fingers move and zoom it, the wheel zooms at the pointer. */

import { type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import type { PlanStore } from '../../store/plan-draw.ts';
import { panned, pinched, zoomed } from '../facts/plan-surface.ts';

/** How near a finger and a mouse have to come [px]. */
export const REACH_PX = { mouse: 12, touch: 22 } as const;
export type Reach = keyof typeof REACH_PX;

export interface PointerAct {
  /** From the upper left corner of the surface [px]. */
  readonly at: PointM;
  readonly by: Reach;
  /** Adds to what is chosen. */
  readonly adds: boolean;
  /** Places are taken as they are, without snapping. */
  readonly free: boolean;
}

export interface PointerDoes {
  hover(act: PointerAct | null): void;
  tap(act: PointerAct): void;
  /** Whether a drag from here does something; otherwise it moves the sheet. */
  grabs(act: PointerAct): boolean;
  drag(act: PointerAct): void;
  drop(act: PointerAct): void;
  /** A second finger came, or the browser took the pointer away. */
  cancel(): void;
}

/** Farther than this a press is a drag [px]. */
const STILL_PX = 4;
const STILL_TOUCH_PX = 8;
const WHEEL_RATE = 0.0016;
/** Pinching on a touch pad comes as a wheel with the control key, in small steps. */
const PINCH_RATE = 0.01;
const LINE_PX = 16;
const MIDDLE = 1;
const RIGHT = 2;

interface Held {
  readonly from: PointM;
  now: PointM;
  /** Not yet moved; then what a drag turned out to be. */
  as: 'press' | 'pan' | 'act';
}

export function usePointers(element: RefObject<SVGSVGElement | null>, plan: PlanStore, does: PointerDoes) {
  const latest = useRef(does);
  latest.current = does;
  const spaceHeld = useSpaceKey();
  useWheel(element, plan);
  return useMemo(() => pointerHandlers(plan, latest, spaceHeld), [plan, spaceHeld]);
}

function actOf(event: PointerEvent<SVGSVGElement>): PointerAct {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    at: [event.clientX - box.left, event.clientY - box.top],
    by: event.pointerType === 'touch' ? 'touch' : 'mouse',
    adds: event.shiftKey || event.ctrlKey || event.metaKey,
    free: event.altKey,
  };
}

function pointerHandlers(plan: PlanStore, does: RefObject<PointerDoes>, spaceHeld: RefObject<boolean>) {
  const held = new Map<number, Held>();
  const move = (change: (surface: NonNullable<ReturnType<PlanStore['getState']>['surface']>) => ReturnType<typeof panned>) => {
    const { surface, setSurface } = plan.getState();
    if (surface !== null) setSurface(change(surface));
  };
  const end = (event: PointerEvent<SVGSVGElement>) => {
    const one = held.get(event.pointerId);
    held.delete(event.pointerId);
    return one;
  };
  return {
    onPointerDown(event: PointerEvent<SVGSVGElement>) {
      const act = actOf(event);
      event.currentTarget.setPointerCapture(event.pointerId);
      const pans = event.button === MIDDLE || event.button === RIGHT || spaceHeld.current;
      if (held.size > 0) does.current.cancel();
      for (const other of held.values()) other.as = 'pan';
      held.set(event.pointerId, { from: act.at, now: act.at, as: pans || held.size > 0 ? 'pan' : 'press' });
      if (act.by === 'touch' && held.size === 1) does.current.hover(act);
    },
    onPointerMove(event: PointerEvent<SVGSVGElement>) {
      const act = actOf(event);
      const one = held.get(event.pointerId);
      if (one === undefined) {
        if (act.by === 'mouse') does.current.hover(act);
        return;
      }
      if (held.size > 1) {
        pinch(held, event.pointerId, act.at, move);
        return;
      }
      const far = Math.hypot(act.at[0] - one.from[0], act.at[1] - one.from[1]);
      if (one.as === 'press' && far > (act.by === 'touch' ? STILL_TOUCH_PX : STILL_PX)) {
        one.as = does.current.grabs({ ...act, at: one.from }) ? 'act' : 'pan';
      }
      if (one.as === 'pan') move((surface) => panned(surface, act.at[0] - one.now[0], act.at[1] - one.now[1]));
      if (one.as === 'act') does.current.drag(act);
      one.now = act.at;
    },
    onPointerUp(event: PointerEvent<SVGSVGElement>) {
      const one = end(event);
      const act = actOf(event);
      if (one?.as === 'press') does.current.tap(act);
      if (one?.as === 'act') does.current.drop(act);
      if (act.by === 'touch' && one?.as !== 'act') does.current.hover(null);
    },
    onPointerCancel(event: PointerEvent<SVGSVGElement>) {
      end(event);
      does.current.cancel();
    },
    onPointerLeave: () => held.size === 0 && does.current.hover(null),
    // The right button moves the sheet.
    onContextMenu: (event: { preventDefault(): void }) => event.preventDefault(),
  };
}

type Mover = (change: (surface: NonNullable<ReturnType<PlanStore['getState']>['surface']>) => ReturnType<typeof panned>) => void;

function pinch(held: Map<number, Held>, moved: number, to: PointM, move: Mover): void {
  const [first, second] = [...held.entries()].slice(0, 2);
  if (first === undefined || second === undefined) return;
  const from = [first[1].now, second[1].now] as const;
  const one = held.get(moved);
  if (one !== undefined) one.now = to;
  move((surface) => pinched(surface, from, [first[1].now, second[1].now]));
}

function useSpaceKey(): RefObject<boolean> {
  const isHeld = useRef(false);
  useEffect(() => {
    const follow = (event: KeyboardEvent) => {
      if (event.key === ' ') isHeld.current = event.type === 'keydown';
    };
    window.addEventListener('keydown', follow);
    window.addEventListener('keyup', follow);
    return () => {
      window.removeEventListener('keydown', follow);
      window.removeEventListener('keyup', follow);
    };
  }, []);
  return isHeld;
}

/** Not passive, so that neither the page scrolls nor the browser zooms. */
function useWheel(element: RefObject<SVGSVGElement | null>, plan: PlanStore): void {
  useEffect(() => {
    const { current } = element;
    if (current === null) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const { surface, setSurface } = plan.getState();
      if (surface === null) return;
      const box = current.getBoundingClientRect();
      const deltaPx = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * LINE_PX : event.deltaY;
      const factor = Math.exp(-deltaPx * (event.ctrlKey ? PINCH_RATE : WHEEL_RATE));
      setSurface(zoomed(surface, factor, [event.clientX - box.left, event.clientY - box.top]));
    };
    current.addEventListener('wheel', turn, { passive: false });
    return () => current.removeEventListener('wheel', turn);
  }, [element, plan]);
}
