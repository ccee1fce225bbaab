/**
 * Rain, design flow and overflow duty.
 * Rain: KOSTRA-DWD-2020, cell 117111, mm per duration and return period as the README of a public package reading that open data prints them.
 * Overflow duty of 75 l/s: published example, http://199.247.7.128/goa/index410. 4.7 l/s off 156 m²: blog.blechshop24.com/?p=283 (rounded up there).
 * The rest is arithmetic on those figures.
 */

import { describe, expect, it } from 'vitest';
import { designFlowLps, overflowDutyLps } from '../../src/core/water/runoff.ts';
import { peakC } from '../../src/model/runoff.ts';

/** Depth in a duration as l/(s·ha): h · 10 000 / (60 · D). */
const lpsHa = (depthMm: number, minutes: number) => (depthMm * 10_000) / (60 * minutes);

describe('rain of the open data', () => {
  it.each([
    [8.8, 5, 293.3333],
    [11.4, 5, 380],
    [21.8, 5, 726.6667],
    [16.5, 15, 183.3333],
    [31.5, 15, 350],
    [55.6, 240, 38.6111],
  ])('%d mm in %d min are %d l/(s·ha)', (depthMm, minutes, r) => {
    expect(lpsHa(depthMm, minutes)).toBeCloseTo(r, 4);
  });
});

describe('Q = r · C · A / 10 000', () => {
  it('300 l/(s·ha) on 156 m²: 4.68 l/s, printed as 4.7', () => {
    expect(designFlowLps(300, peakC(1), 156)).toBeCloseTo(4.68, 9);
  });

  it('380 l/(s·ha), C 0.2, 850 m²: 6.46 l/s', () => {
    expect(designFlowLps(lpsHa(11.4, 5), peakC(0.2), 850)).toBeCloseTo(6.46, 9);
  });

  it('75 mm/h on 500 m²: 10.416667 l/s', () => {
    expect(designFlowLps(lpsHa(75, 60), peakC(1), 500)).toBeCloseTo(10.416667, 6);
  });

  it('C 0.75, 60 mm/h, 2500 m²: 31.25 l/s', () => {
    expect(designFlowLps(lpsHa(60, 60), peakC(0.75), 2500)).toBeCloseTo(31.25, 9);
  });

  it('mixed 1040 m² of 490 m² effective: 18.62 l/s', () => {
    expect(designFlowLps(380, peakC(490 / 1040), 1040)).toBeCloseTo(18.62, 9);
  });

  it('no rain, no flow', () => {
    expect(designFlowLps(0, peakC(1), 100)).toBe(0);
  });
});

describe('overflow duty (extreme − design · C) · A', () => {
  it('published: 600 and 300 l/(s·ha), C 1, 2500 m²: 75 l/s', () => {
    expect(overflowDutyLps(600, 300, peakC(1), 2500)).toBeCloseTo(75, 9);
  });

  it('850 m², C 0.2: 55.306667 l/s, with the design flow all of the extreme rain, 61.766667 l/s', () => {
    const extreme = lpsHa(21.8, 5);
    const duty = overflowDutyLps(extreme, 380, peakC(0.2), 850);
    expect(duty).toBeCloseTo(55.306667, 6);
    expect(duty + designFlowLps(380, peakC(0.2), 850)).toBeCloseTo(61.766667, 6);
  });

  it('mixed 1040 m²: 56.953333 l/s', () => {
    expect(overflowDutyLps(lpsHa(21.8, 5), 380, peakC(490 / 1040), 1040)).toBeCloseTo(56.953333, 6);
  });

  it('is nothing where the outlets take more than falls', () => {
    expect(overflowDutyLps(200, 300, peakC(1), 100)).toBe(0);
  });
});
