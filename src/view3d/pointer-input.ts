/** Mouse, touch and pen on the picture: one finger or left button turns, two fingers or right button move and zoom, a tap picks. */

export interface PointerTarget {
  orbit(byAzimuthDeg: number, byTiltDeg: number): void;
  drag(rightPx: number, downPx: number): void;
  /** About a point from the middle of the picture, -1 … 1, up positive. */
  zoom(factor: number, x: number, y: number): void;
  /** Point from the upper left corner [CSS px]. */
  tap(x: number, y: number, touch: boolean): void;
}

/** Less movement than this is a tap [CSS px]. */
const TAP_PX = 6;
const DEG_PER_PX = 0.3;

interface Held {
  x: number;
  y: number;
}

/**
 * Listens on an element.
 * @param element - the canvas
 * @param target - what the hands do
 * @returns stops listening
 */
export function listenToPointers(element: HTMLElement, target: PointerTarget): () => void {
  const held = new Map<number, Held>();
  let moves = false;
  /** Way gone since the first pointer came down; negative when this can be no tap any more. */
  let wayPx = 0;

  function down(event: PointerEvent): void {
    element.setPointerCapture(event.pointerId);
    held.set(event.pointerId, { x: event.clientX, y: event.clientY });
    wayPx = held.size === 1 ? 0 : Number.POSITIVE_INFINITY;
    moves = event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey;
  }

  function move(event: PointerEvent): void {
    const before = held.get(event.pointerId);
    if (before === undefined) return;
    const dx = event.clientX - before.x;
    const dy = event.clientY - before.y;
    wayPx += Math.hypot(dx, dy);
    if (held.size === 2) {
      pinch(event, before);
    } else if (held.size === 1 && wayPx >= TAP_PX) {
      if (moves) target.drag(dx, dy);
      else target.orbit(dx * DEG_PER_PX, dy * DEG_PER_PX);
    }
    before.x = event.clientX;
    before.y = event.clientY;
  }

  function pinch(event: PointerEvent, before: Held): void {
    const other = [...held.entries()].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) return;
    const was = Math.hypot(before.x - other.x, before.y - other.y);
    const is = Math.hypot(event.clientX - other.x, event.clientY - other.y);
    const [x, y] = fromMiddle((event.clientX + other.x) / 2, (event.clientY + other.y) / 2);
    // The middle of both fingers goes half as far as the one that moves.
    target.drag((event.clientX - before.x) / 2, (event.clientY - before.y) / 2);
    if (is > 1 && was > 1) target.zoom(was / is, x, y);
  }

  function up(event: PointerEvent): void {
    const last = held.get(event.pointerId);
    held.delete(event.pointerId);
    if (last === undefined || held.size > 0 || wayPx >= TAP_PX || event.type !== 'pointerup' || event.button !== 0) return;
    const box = element.getBoundingClientRect();
    target.tap(event.clientX - box.left, event.clientY - box.top, event.pointerType === 'touch');
  }

  function wheel(event: WheelEvent): void {
    event.preventDefault();
    target.zoom(wheelFactor(event), ...fromMiddle(event.clientX, event.clientY));
  }

  function fromMiddle(clientX: number, clientY: number): [number, number] {
    const box = element.getBoundingClientRect();
    return [((clientX - box.left) / box.width) * 2 - 1, 1 - ((clientY - box.top) / box.height) * 2];
  }

  return listen(element, {
    pointerdown: down,
    pointermove: move,
    pointerup: up,
    pointercancel: up,
    wheel,
    contextmenu: (event) => event.preventDefault(),
  });
}

type Listeners = { readonly [K in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[K]) => void };

function listen(element: HTMLElement, listeners: Listeners): () => void {
  const all = Object.entries(listeners) as [string, EventListener][];
  // Not passive: the wheel would otherwise scroll or zoom the page as well.
  for (const [type, listener] of all) element.addEventListener(type, listener, { passive: false });
  return () => {
    for (const [type, listener] of all) element.removeEventListener(type, listener);
  };
}

function wheelFactor(event: WheelEvent): number {
  const linePx = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? 400 : 1;
  // A trackpad pinch comes as a wheel with the control key, in small steps.
  const strength = event.ctrlKey ? 0.01 : 0.0012;
  return Math.exp(Math.min(0.6, Math.max(-0.6, event.deltaY * linePx * strength)));
}
