/** Draws a column of layers to scale into a given height; sheets too thin to be seen get a least height and are marked. */

export interface Band {
  /** Pixels from the top of the column. */
  readonly top: number;
  readonly bottom: number;
  /** Drawn thicker than to scale. */
  readonly enlarged: boolean;
}

export interface ColumnScale {
  /** Same order as the layers given: bottom to top. */
  readonly bands: readonly Band[];
  /** Pixels per millimetre of everything that is drawn to scale. */
  readonly pxPerMm: number;
}

/** Thicknesses from the bottom to the top of the column [mm] into `heightPx` pixels. */
export function scaleColumn(thicknessesMm: readonly number[], heightPx: number, leastPx: number): ColumnScale {
  const enlarged = thicknessesMm.map(() => false);
  let pxPerMm = 0;
  for (let changed = true; changed; ) {
    const trueMm = thicknessesMm.reduce((sum, mm, i) => (enlarged[i] ? sum : sum + mm), 0);
    const room = heightPx - enlarged.filter(Boolean).length * leastPx;
    pxPerMm = trueMm > 0 ? Math.max(0, room / trueMm) : 0;
    changed = false;
    thicknessesMm.forEach((mm, i) => {
      if (enlarged[i] || mm * pxPerMm >= leastPx) return;
      enlarged[i] = true;
      changed = true;
    });
  }
  return columnAt(thicknessesMm, heightPx, leastPx, pxPerMm);
}

/** Layers at a scale that is given, standing on the bottom of `heightPx`: while one is dragged the scale stays as it was. */
export function columnAt(thicknessesMm: readonly number[], heightPx: number, leastPx: number, pxPerMm: number): ColumnScale {
  let y = heightPx;
  const bands = thicknessesMm.map((mm): Band => {
    const bottom = y;
    const enlarged = mm * pxPerMm < leastPx;
    y -= enlarged ? leastPx : mm * pxPerMm;
    return { top: y, bottom, enlarged };
  });
  return { bands, pxPerMm };
}

export interface Tick {
  readonly depthMm: number;
  readonly y: number;
  readonly labelled: boolean;
}

/** Ticks of the depth rule, from the top down: every `stepMm`, labelled every second, the first and nothing closer than `leastPx` to it. */
export function depthTicks(thicknessesMm: readonly number[], scale: ColumnScale, stepMm: number): Tick[] {
  const ticks: Tick[] = [];
  let aboveMm = 0;
  for (let i = thicknessesMm.length - 1; i >= 0; i--) {
    const mm = thicknessesMm[i] as number;
    const band = scale.bands[i] as Band;
    for (let n = Math.max(0, Math.ceil(aboveMm / stepMm - 1e-9)); n * stepMm < aboveMm + mm - 1e-9; n++) {
      const depthMm = n * stepMm;
      const y = band.top + ((depthMm - aboveMm) / mm) * (band.bottom - band.top);
      ticks.push({ depthMm, y, labelled: n % 2 === 0 });
    }
    aboveMm += mm;
  }
  return ticks;
}

/** A round step so that labelled ticks stand at least `apartPx` apart. */
export function tickStepMm(pxPerMm: number, apartPx: number): number {
  const steps = [5, 10, 25, 50, 100, 250, 500, 1000, 2500, 5000];
  return steps.find((step) => 2 * step * pxPerMm >= apartPx) ?? 10_000;
}
