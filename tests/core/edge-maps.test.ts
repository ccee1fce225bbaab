/** Depth of substrate per cell. */

import { describe, expect, it } from 'vitest';
import { substrateDepthAtCells } from '../../src/core/edge-maps.ts';
import { evaluate } from '../../src/core/evaluate.ts';
import { box, buildUp, deck, layer, place, stage, zone } from '../helpers/deck-builder.ts';

const FIXED = buildUp('fixed', [layer('drainage fill', 0.05), layer('substrate', 0.2), layer('substrate', 0.1)]);
const MADE_UP = buildUp('made-up', [layer('drainage fill', 0.05), layer('substrate', 0.2, { rangeM: { min: 0.1, max: 1 } })]);
const PAVED = buildUp('paved', [layer('surfacing', 0.1)]);

describe('depth of substrate', () => {
  it('sums its layers, the make-up one as it comes out; none under paving and on bare deck', () => {
    const zones = [
      zone('A', box(0, 0, 1, 1), FIXED),
      // 0.65 − 0.05
      zone('B', box(1, 0, 2, 1), MADE_UP, { finish: { kind: 'plane', x: 0, y: 0, z: 0.65, slopeX: 0, slopeY: 0 } }),
      zone('C', box(2, 0, 3, 1), PAVED),
      // A cell shared 1 : 3 between 300 mm and 200 mm nominal: 225; the paved quarter of another does not count
      zone('D', box(0, 1, 0.25, 2), FIXED),
      zone('E', box(0.25, 1, 1, 2), MADE_UP),
      zone('F', box(1, 1, 1.25, 2), PAVED),
      zone('G', box(1.25, 1, 2, 2), FIXED),
    ];
    const depth = substrateDepthAtCells(evaluate(deck({ zones })), null);
    expect(Array.from(depth)).toEqual([300, 600, Number.NaN, Number.NaN, 225, 300, Number.NaN, Number.NaN].map(near));
  });

  it('by the end of a stage: only what is placed', () => {
    const stages = [stage('S1', [place(['drainage fill'])]), stage('S2', [place(['substrate'])])];
    const on = evaluate(deck({ zones: [zone('A', box(0, 0, 4, 2), FIXED)], stages }));
    expect(substrateDepthAtCells(on, 0)[0]).toBeNaN();
    expect(substrateDepthAtCells(on, 1)[0]).toBeCloseTo(300, 9);
  });
});

function near(value: number) {
  return Number.isNaN(value) ? Number.NaN : expect.closeTo(value, 9);
}
