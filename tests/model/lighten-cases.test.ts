/** Limits told once for all the cases in which they come out the same. */

import { expect, it } from 'vitest';
import { byCases } from '../../src/model/lighten-cases.ts';

const load = (bay: string, stage: string | null, lightestKNm2: number) =>
  ({ bay, kind: stage === null ? 'permanent' : 'stage', stage, permittedKNm2: 10, at: [1, 2], lightestKNm2 }) as const;

it('the finished garden and two stages with the very same load are one; another number, place or bay is another', () => {
  // 0.1 + 0.2 is 0.30000000000000004: the same but for rounding.
  const loads = [
    load('E3', null, 0.3),
    load('D3', 'S11', 15.54),
    load('E3', 'S11', 0.1 + 0.2),
    load('E3', 'S12', 0.3),
    load('E3', 'S13', 0.31),
  ];
  expect(byCases(loads).map(({ bay, lightestKNm2, cases }) => [bay, lightestKNm2, cases.map(({ kind, stage }) => stage ?? kind)])).toEqual([
    ['E3', 0.3, ['permanent', 'S11', 'S12']],
    ['D3', 15.54, ['S11']],
    ['E3', 0.31, ['S13']],
  ]);
  const moved = { ...load('E3', 'S12', 0.3), at: [1, 3] } as const;
  expect(byCases([load('E3', 'S11', 0.3), moved])).toHaveLength(2);
});
