/** Tells a tap or click from a movement of the hand. */

export interface Tap {
  /** From the upper left corner [CSS px]. */
  readonly x: number;
  readonly y: number;
  readonly touch: boolean;
}

/** Less movement than this is a tap [CSS px]. */
const TAP_PX = 6;

/**
 * Listens on an element. The camera controls tell only that a hand was there, not that it stayed where it was.
 * @param element - the canvas
 * @param tapped - called with each tap
 * @returns stops listening
 */
export function watchTaps(element: HTMLElement, tapped: (tap: Tap) => void): () => void {
  const held = new Set<number>();
  const last = { x: 0, y: 0 };
  /** Way gone since the first pointer came down; infinite when this can be no tap any more. */
  let wayPx = 0;

  function down(event: PointerEvent): void {
    // A mouse let go outside the canvas was never seen to go up.
    if (event.isPrimary) held.clear();
    held.add(event.pointerId);
    wayPx = held.size === 1 && event.button === 0 ? 0 : Number.POSITIVE_INFINITY;
    last.x = event.clientX;
    last.y = event.clientY;
  }

  function move(event: PointerEvent): void {
    if (!held.has(event.pointerId)) return;
    wayPx += Math.hypot(event.clientX - last.x, event.clientY - last.y);
    last.x = event.clientX;
    last.y = event.clientY;
  }

  function up(event: PointerEvent): void {
    if (!held.delete(event.pointerId) || held.size > 0 || wayPx >= TAP_PX || event.type !== 'pointerup') return;
    const box = element.getBoundingClientRect();
    tapped({ x: event.clientX - box.left, y: event.clientY - box.top, touch: event.pointerType === 'touch' });
  }

  element.addEventListener('pointerdown', down);
  element.addEventListener('pointermove', move);
  element.addEventListener('pointerup', up);
  element.addEventListener('pointercancel', up);
  return () => {
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('pointermove', move);
    element.removeEventListener('pointerup', up);
    element.removeEventListener('pointercancel', up);
  };
}

/**
 * Drags of one pointer, as they go on.
 * @param element - the canvas
 * @param dragged - called with the way since the last call, right and down [CSS px]
 * @returns stops listening
 */
export function watchLooks(element: HTMLElement, dragged: (rightPx: number, downPx: number) => void): () => void {
  let held: number | null = null;
  const last = { x: 0, y: 0 };
  const down = (event: PointerEvent) => {
    if (!event.isPrimary) return;
    held = event.pointerId;
    last.x = event.clientX;
    last.y = event.clientY;
  };
  const move = (event: PointerEvent) => {
    if (event.pointerId !== held) return;
    dragged(event.clientX - last.x, event.clientY - last.y);
    last.x = event.clientX;
    last.y = event.clientY;
  };
  const up = () => {
    held = null;
  };
  element.addEventListener('pointerdown', down);
  // A drag that leaves the picture goes on.
  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', up);
  window.addEventListener('pointercancel', up);
  return () => {
    element.removeEventListener('pointerdown', down);
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', up);
    window.removeEventListener('pointercancel', up);
  };
}
