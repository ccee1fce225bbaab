/** Gives the shadows up where a machine cannot draw them fast enough. */

/** A frame that takes longer than this is no movement any more [ms]. */
const SLOW_MS = 220;
const SLOW_FRAMES = 5;

export class ShadowPace {
  private askedMs: number | null = null;
  private slow = 0;

  asked(nowMs: number): void {
    this.askedMs ??= nowMs;
  }

  /**
   * A frame is drawn.
   * @param nowMs - its time
   * @returns whether frames have been too slow for some time
   */
  frame(nowMs: number): boolean {
    const late = this.askedMs !== null && nowMs - this.askedMs > SLOW_MS;
    this.askedMs = null;
    this.slow = late ? this.slow + 1 : 0;
    return this.slow >= SLOW_FRAMES;
  }

  again(): void {
    this.slow = 0;
    this.askedMs = null;
  }
}
