/**
 * How long frames take. A frame that is asked for says nothing about that: hands and flights ask just before the browser draws.
 * Its cost is the time until the browser is ready for the next one, whether one comes or not.
 */

export class FrameCost {
  private readonly whenReady: (then: () => void) => void;
  private readonly now: () => number;
  private startMs: number | null = null;
  private tookMs = 0;

  /**
   * @param whenReady - calls back as soon as the next frame could be drawn
   * @param now - time [ms]
   */
  constructor(
    whenReady: (then: () => void) => void = (then) => void requestAnimationFrame(then),
    now: () => number = () => performance.now(),
  ) {
    this.whenReady = whenReady;
    this.now = now;
  }

  /**
   * A frame is about to be drawn.
   * @param nowMs - its time
   * @returns how long the frame before took [ms]; 0 for the first
   */
  begin(nowMs: number): number {
    if (this.startMs !== null) this.tookMs = nowMs - this.startMs;
    this.startMs = nowMs;
    this.whenReady(() => {
      // A next frame may have begun in the same turn, and has counted already.
      if (this.startMs !== nowMs) return;
      this.tookMs = this.now() - nowMs;
      this.startMs = null;
    });
    return this.tookMs;
  }
}
