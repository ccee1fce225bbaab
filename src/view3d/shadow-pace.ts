/** Gives the shadows up where a machine cannot draw them fast enough. */

/** A frame that takes longer than this is no movement any more [ms]. */
const SLOW_MS = 220;
const SLOW_FRAMES = 3;

export class ShadowPace {
  private slow = 0;

  /**
   * A frame was drawn. Drivers take some frames in at once and are late with the next: a quick one takes back one slow one, not all.
   * @param tookMs - time it took
   */
  took(tookMs: number): void {
    this.slow = tookMs > SLOW_MS ? this.slow + 1 : Math.max(0, this.slow - 1);
  }

  /** Frames have been too slow for some time. */
  get tooSlow(): boolean {
    return this.slow >= SLOW_FRAMES;
  }

  again(): void {
    this.slow = 0;
  }
}
