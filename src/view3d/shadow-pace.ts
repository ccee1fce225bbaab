/** Gives the shadows up where a machine cannot draw them fast enough. */

/** A frame that takes longer than this is no movement any more [ms]. */
const SLOW_MS = 220;
const SLOW_FRAMES = 3;

export class ShadowPace {
  private slow = 0;
  /** Frames drawn with shadows, one after the other. */
  private shaded = 0;

  /**
   * A frame is about to be drawn. Drivers take some frames in at once and are late with the next: a quick one takes back one slow one, not all.
   * The first frame with shadows also draws their map and says nothing of the next.
   * @param tookMs - time that the frame before took
   * @param shadows - whether this one has shadows
   */
  begin(tookMs: number, shadows: boolean): void {
    if (!shadows) this.again();
    else if (this.shaded++ > 1) this.slow = tookMs > SLOW_MS ? this.slow + 1 : Math.max(0, this.slow - 1);
  }

  /** Frames have been too slow for some time. */
  get tooSlow(): boolean {
    return this.slow >= SLOW_FRAMES;
  }

  again(): void {
    this.slow = 0;
    this.shaded = 0;
  }
}
