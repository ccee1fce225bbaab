/** How fast a list scrolls under something that is held at its upper or lower end. */

/** So near to an end it begins [px]. */
const EDGE_PX = 40;
/** Per frame at the very end, and beyond it. */
const FASTEST_PX = 14;

/** Steps of scrolling with each frame, below 0 upwards; 0 away from both ends [px]. */
export function edgeScrollPx(atPx: number, { top, bottom }: { readonly top: number; readonly bottom: number }): number {
  // Both ends of a low list would meet.
  const edgePx = Math.min(EDGE_PX, (bottom - top) / 3);
  if (edgePx <= 0) return 0;
  const into = (depthPx: number) => Math.ceil(FASTEST_PX * Math.min(1, depthPx / edgePx));
  if (atPx < top + edgePx) return -into(top + edgePx - atPx);
  return atPx > bottom - edgePx ? into(atPx - bottom + edgePx) : 0;
}
