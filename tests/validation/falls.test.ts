/**
 * Falls over a run of 12 m.
 *
 * [read] 2 % as the least fall of flat roofs (several German roofing pages), 1 : 80 finished and 1 : 40 designed as BS 6229:2018 is
 *        quoted at fmuk-online.co.uk/798; the rises over 12 m are arithmetic.
 */

import { describe, expect, it } from 'vitest';
import type { SceneFinish } from '../../src/model/scene-file.ts';
import { MAKE_UP, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

// Cells of 1 m on 13 m: the first and last centres are 12 m apart.
const FALLS: [string, number, number][] = [
  ['2 %', 2, 0.24], // by hand: 12 · 0.02
  ['1 : 80', 1.25, 0.15], // by hand: 12 / 80
  ['1 : 40', 2.5, 0.3], // by hand: 12 / 40
];

function planeDeck(finish: SceneFinish, run: 'x' | 'y') {
  const outline = run === 'x' ? rect(0, 0, 13, 2) : rect(0, 0, 2, 13);
  return read(sceneOf({ deck: { outline }, buildups: [MAKE_UP], zones: [zone('Z1', outline, 'make-up', { finish })] }), 1);
}

describe.each(FALLS)('fall of %s over 12 m', (_, fallPercent, dropM) => {
  it('drops a finished plane', () => {
    const { report } = planeDeck({ kind: 'plane', at: [0, 0, 1], fallPercent, towardsDeg: 90 }, 'x');
    const { finishedM, makeUpMm } = report.zones[0];
    expect(finishedM.max - finishedM.min).toBeCloseTo(dropM, 12);
    // A level membrane: the make-up layer takes all of it.
    expect((makeUpMm?.max ?? 0) - (makeUpMm?.min ?? 0)).toBeCloseTo(1000 * dropM, 9);
    expect(finishedM.mean).toBeCloseTo(1 - (6.5 * fallPercent) / 100, 12); // by hand: the middle lies 6.5 m from the start
  });

  it('is taken up by the make-up layer under a level finish', () => {
    const outline = rect(0, 0, 13, 2);
    const rise = (13 * fallPercent) / 100;
    const spots: [number, number, number][] = [
      [0, 0, 0],
      [13, 0, rise],
      [13, 2, rise],
      [0, 2, 0],
    ];
    const zones = [zone('Z1', outline, 'make-up', { finish: { kind: 'level', levelM: 1 } })];
    const { report } = read(sceneOf({ deck: { outline, levels: { spots } }, buildups: [MAKE_UP], zones }), 1);
    const { finishedM, makeUpMm } = report.zones[0];
    expect((makeUpMm?.max ?? 0) - (makeUpMm?.min ?? 0)).toBeCloseTo(1000 * dropM, 9);
    expect(finishedM.max - finishedM.min).toBeCloseTo(0, 12);
    expect(makeUpMm?.mean).toBeCloseTo(1000 * (1 - 0.11 - rise / 2), 9); // by hand: 1.00 less sheet and soil, less half the rise
  });
});

describe('bearing of a fall, clockwise from +y', () => {
  // by hand: level at the cell centre 0.5 m and 12.5 m along the deck, start 1.000 at the corner (0, 0), 2 %.
  it.each<[number, 'x' | 'y', number]>([
    [90, 'x', 1 - 0.01 * 25], // towards +x: lowest 12.5 m on
    [270, 'x', 1 + 0.01 * 1], // towards −x: rises; lowest 0.5 m on
    [0, 'y', 1 - 0.01 * 25],
    [180, 'y', 1 + 0.01 * 1],
  ])('%d° along %s', (towardsDeg, run, lowestM) => {
    const { report } = planeDeck({ kind: 'plane', at: [0, 0, 1], fallPercent: 2, towardsDeg }, run);
    expect(report.zones[0].finishedM.min).toBeCloseTo(lowestM, 12);
  });
});
