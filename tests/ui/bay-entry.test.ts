/** Load plans as people type them. */

import { describe, expect, it } from 'vitest';
import { readBayLoads, readBayNames } from '../../src/ui/facts/bay-entry.ts';

const BAYS = ['A1', 'A2', 'A3', 'A10', 'B1', 'B2', 'C-1'];

describe('names of bays', () => {
  it.each([
    ['A1', ['A1'], []],
    ['a1, B2', ['A1', 'B2'], []],
    ['A1-A3', ['A1', 'A2', 'A3'], []],
    ['A1–3', ['A1', 'A2', 'A3'], []],
    ['A1 - A3, B1', ['A1', 'A2', 'A3', 'B1'], []],
    ['A1 B1', ['A1', 'B1'], []],
    ['all', BAYS, []],
    ['alle', BAYS, []],
    // A bay of that very name, not a range.
    ['C-1', ['C-1'], []],
    ['A3-A5', ['A3'], ['A4', 'A5']],
    ['Z9', [], ['Z9']],
    // Backwards and from row to row mean nothing.
    ['A3-A1', [], ['A3-A1']],
    ['A1-B2', [], ['A1-B2']],
    ['', [], []],
  ] as const)('%s', (text, ids, missing) => {
    expect(readBayNames(text, BAYS)).toEqual({ ids, missing });
  });
});

describe('loads', () => {
  it('two are permanent and imposed, one is the total', () => {
    expect(readBayLoads('12/5', 'kN/m²')?.loads).toEqual({ permanentKNm2: 12, imposedKNm2: 5 });
    expect(readBayLoads('12,5 / 5', 'kN/m²')?.loads).toEqual({ permanentKNm2: 12.5, imposedKNm2: 5 });
    expect(readBayLoads('17', 'kN/m²')?.loads).toEqual({ totalKNm2: 17 });
  });

  it('a unit holds for both; its own stroke divides nothing', () => {
    expect(readBayLoads('12/5 kN/m²', 'kg/m²')?.loads).toEqual({ permanentKNm2: 12, imposedKNm2: 5 });
    // 1000 · 9.81 / 1000 and 500 · 9.81 / 1000
    expect(readBayLoads('1000/500 kg/m2', 'kN/m²')?.loads).toEqual({ permanentKNm2: 9.81, imposedKNm2: 4.905 });
  });

  it('anything else is nothing', () => {
    for (const text of ['', '/', '12/', 'a/b', '1/2/3', '1.500/5']) expect(readBayLoads(text, 'kN/m²')).toBeNull();
  });
});
