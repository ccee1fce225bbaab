/** The core log as a table: rows add up to the total shown, top layer first, nothing counted that is not laid yet. */

import { describe, expect, it } from 'vitest';
import type { CoreLog, CoreLogLayer, CoreLogOther } from '../../src/model/maps.ts';
import { logSum } from '../../src/ui/facts/log-rows.ts';

function layer(name: string, saturatedKNm2: number, more: Partial<CoreLogLayer> = {}): CoreLogLayer {
  return {
    zone: 'Z1',
    share: 1,
    materialId: name,
    name,
    role: 'substrate',
    loose: true,
    bottomM: 0,
    topM: 0.1,
    thicknessMm: 100,
    intoVoidsLm2: 0,
    dryKNm2: saturatedKNm2 / 2,
    saturatedKNm2,
    stage: null,
    makeUp: false,
    placed: true,
    ...more,
  };
}

const vegetation: CoreLogOther = { kind: 'vegetation', id: '', zone: 'Z1', dryKNm2: 0.05, saturatedKNm2: 0.05 };

function log(layers: readonly CoreLogLayer[], others: readonly CoreLogOther[], saturatedKNm2: number): CoreLog {
  return {
    cell: 0,
    stage: null,
    at: [0, 0],
    deckAreaM2: 0.0625,
    membraneM: 0,
    finishedM: 0.5,
    layers,
    others,
    dryKNm2: saturatedKNm2 / 2,
    saturatedKNm2,
    patchKNm2: null,
    bay: null,
    bayConfirmed: false,
    permittedKNm2: null,
    permittedBasis: '',
    utilisation: null,
  };
}

const hundredths = (value: number | null) => Math.round((value ?? 0) * 100);

describe('logSum', () => {
  it('shows rows that add up to the total shown', () => {
    // by hand: 0.034 + 0.034 + 0.034 + 3.678 + 0.05 = 3.830
    const layers = [layer('fleece', 0.034), layer('filter', 0.034), layer('slip', 0.034), layer('lawn', 3.678)];
    const sum = logSum(log(layers, [vegetation], 3.83));
    expect(sum.saturatedKNm2).toBe(3.83);
    expect(sum.rows.reduce((total, row) => total + hundredths(row.saturatedKNm2), 0)).toBe(383);
    expect(sum.unexplainedKNm2).toBe(0);
  });

  it('goes from the top down, larger zone first', () => {
    const layers = [layer('low', 1), layer('high', 2), layer('low', 0.3, { zone: 'Z2' }), layer('high', 0.4, { zone: 'Z2' })];
    const sum = logSum(log(layers, [vegetation], 3.75));
    expect(sum.rows.map((row) => row.other ?? `${row.zone} ${row.name}`)).toEqual(['vegetation', 'Z1 high', 'Z1 low', 'Z2 high', 'Z2 low']);
  });

  it('does not count what the stage shown has not laid', () => {
    const sum = logSum(log([layer('laid', 1.5), layer('to come', 4, { placed: false })], [], 1.5));
    expect(sum.saturatedKNm2).toBe(1.5);
    expect(sum.rows.map((row) => row.saturatedKNm2)).toEqual([null, 1.5]);
  });

  it('tells what the lines do not explain', () => {
    const sum = logSum(log([layer('lawn', 3)], [], 3.4));
    expect(sum.unexplainedKNm2).toBeCloseTo(0.4, 9);
  });
});
