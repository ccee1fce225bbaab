/** Fewer pixels while the picture moves and a frame takes too long; full sharpness again as soon as it stands still. */

/** A frame that takes longer than this is felt [ms]; a screen of 30 Hz takes 33. */
const SLOW_MS = 40;
const SLOW_FRAMES = 3;
/** Without a frame for so long, the picture stands still [ms]. */
export const REST_MS = 200;

/** More device pixels per CSS pixel than this cost time and show nothing more. */
const MOST_DOTS_PER_PIXEL = 2;

/** Device pixels per CSS pixel of the picture at rest. */
export function dotsPerPixel(): number {
  return Math.min(window.devicePixelRatio, MOST_DOTS_PER_PIXEL);
}

export class Sharpness {
  private readonly steps: readonly number[];
  private step = 0;
  private slow = 0;

  /** @param full - device pixels per CSS pixel of the picture at rest */
  constructor(full: number) {
    this.steps = [full, ...[1.5, 1].filter((ratio) => ratio < full)];
  }

  /**
   * A frame was drawn.
   * @param tookMs - time it took
   * @returns device pixels per CSS pixel to draw the next one with
   */
  frame(tookMs: number): number {
    this.slow = tookMs > SLOW_MS ? this.slow + 1 : 0;
    if (this.slow >= SLOW_FRAMES && this.step < this.steps.length - 1) {
      this.step++;
      this.slow = 0;
    }
    return this.steps[this.step];
  }

  /** The picture stands still. @returns device pixels per CSS pixel */
  rest(): number {
    this.step = 0;
    this.slow = 0;
    return this.steps[0];
  }
}
