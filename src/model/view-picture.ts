/** A picture of the 3D view, drawn for itself and not taken from the screen. */

export interface ViewPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Red, green, blue, alpha per pixel, the upper row first. */
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** Null while nothing can be drawn. */
export type TakePicture = (widthPx: number, heightPx: number) => ViewPicture | null;

/** Where one stands and what one looks at, once a flight under way has ended; local [m]. */
export interface ViewStand {
  readonly eye: readonly [number, number, number];
  readonly target: readonly [number, number, number];
}
