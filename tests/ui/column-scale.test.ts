/** The column of the core log: to scale, except for marked sheets. */

import { describe, expect, it } from 'vitest';
import { columnAt, depthTicks, scaleColumn, tickStepMm } from '../../src/ui/facts/column-scale.ts';

describe('scaleColumn', () => {
  it('draws thick layers to scale', () => {
    // by hand: 100 + 300 mm into 200 px is 0.5 px/mm: 50 px below 150 px
    const { bands, pxPerMm } = scaleColumn([100, 300], 200, 4);
    expect(pxPerMm).toBe(0.5);
    expect(bands).toEqual([
      { top: 150, bottom: 200, enlarged: false },
      { top: 0, bottom: 150, enlarged: false },
    ]);
  });

  it('gives a sheet its least height, marks it, and keeps the rest to one scale', () => {
    // by hand: the 1 mm sheet takes 4 px; 100 + 300 mm share 196 px, that is 0.49 px/mm
    const { bands, pxPerMm } = scaleColumn([100, 1, 300], 200, 4);
    expect(pxPerMm).toBeCloseTo(0.49, 12);
    expect(bands.map((band) => band.enlarged)).toEqual([false, true, false]);
    expect(bands[1]!.bottom - bands[1]!.top).toBeCloseTo(4, 12);
    expect(bands[0]!.bottom).toBe(200);
    expect(bands[2]!.top).toBeCloseTo(0, 9);
  });

  it('marks a layer that only becomes too thin once the sheets have taken their room', () => {
    // by hand: 20 sheets of 0 mm take 80 of 100 px; of 10 and 90 mm the first would get 0.2 · 10 = 2 px, so 4, and the last 16
    const { bands } = scaleColumn([10, ...Array<number>(20).fill(0), 90], 100, 4);
    expect(bands[0]).toMatchObject({ enlarged: true });
    expect(bands.at(-1)!.bottom - bands.at(-1)!.top).toBeCloseTo(16, 9);
  });
});

describe('depthTicks', () => {
  it('stand at their depth below the top, also past an enlarged sheet', () => {
    // by hand: top layer 200 mm at 0.49 px/mm is 98 px; the tick at 250 mm lies 49 mm into the lower layer, below 98 + 4 px
    const thicknesses = [200, 1, 200];
    const scale = scaleColumn(thicknesses, 200, 4);
    const ticks = depthTicks(thicknesses, scale, 50);
    expect(ticks.map((tick) => tick.depthMm)).toEqual([0, 50, 100, 150, 200, 250, 300, 350, 400]);
    const at250 = ticks.find((tick) => tick.depthMm === 250)!;
    expect(at250.y).toBeCloseTo(98 + 4 + 49 * 0.49, 9);
    expect(ticks.filter((tick) => tick.labelled).map((tick) => tick.depthMm)).toEqual([0, 100, 200, 300, 400]);
  });

  it('take a round step wide enough for the labels', () => {
    // by hand: at 0.5 px/mm two steps of 25 mm are 25 px, of 50 mm are 50 px; 28 px are asked for
    expect(tickStepMm(0.5, 28)).toBe(50);
    expect(tickStepMm(0.5, 25)).toBe(25);
  });
});

describe('a column at a scale that is given', () => {
  it('stands on its foot, whatever room is left above', () => {
    // 100 mm and 50 mm at half a pixel per millimetre: 50 and 25 px from the foot at 200.
    expect(columnAt([100, 50], 200, 4, 0.5).bands).toEqual([
      { top: 150, bottom: 200, enlarged: false },
      { top: 125, bottom: 150, enlarged: false },
    ]);
  });

  it('draws thin layers as thick as asked for and says so', () => {
    expect(columnAt([2], 100, 4, 0.5).bands).toEqual([{ top: 96, bottom: 100, enlarged: true }]);
  });
});
