/** Heap board: which stage, which materials, what is said of each bay. */

import { describe, expect, it } from 'vitest';
import type { StageView } from '../../src/model/maps.ts';
import type { Report, ReportBay } from '../../src/model/report.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { heapBoard, heapMaterials, heapStage, isUnusual } from '../../src/ui/facts/heap-board.ts';
import { heaps } from '../../src/ui/text/en-sheets.ts';

const BASIS = { document: 'load plan', revision: 'C', date: '2026-03-09' };

function bayOf(id: string, confirmed: boolean, heapM: ReportBay['heapM']): ReportBay {
  const stages = [{ stage: 'S1', patchKNm2: 3, patchAt: [0, 0], permittedKNm2: 8, utilisation: 0.375 }];
  return { id, confirmed, stages, heapM } as unknown as ReportBay;
}

const heap = (material: string, heightM: number, overKNm2 = 0) => ({ stage: 'S1', material, heightM, overKNm2 });

const REPORT = {
  bays: [
    bayOf('A10', true, [heap('soil', 0.55), heap('sand', 0.3)]),
    bayOf('A2', false, [heap('soil', 0, 1.24), heap('sand', 0, 1.24)]),
    bayOf('B', true, []),
    bayOf('C', false, [heap('soil', 0.4), heap('sand', 0.2)]),
  ],
} as unknown as Report;

const SCENE = {
  deck: { bays: [{ id: 'A10', basis: BASIS }, { id: 'A2' }, { id: 'B', basis: BASIS }, { id: 'C' }] },
} as unknown as SceneFile;

describe('the stage of the board', () => {
  const stages = ['S1', 'S2', 'S3'].map((id) => ({ id }) as StageView);
  it.each([
    [0, 0],
    [2, 2],
    // The finished garden has no heaps of its own.
    [null, 2],
  ])('rail at %s: stage %s', (rail, wanted) => expect(heapStage(stages, rail)).toBe(wanted));

  it('is none where there are no stages', () => expect(heapStage([], null)).toBeNull());
});

it('materials come once each, as the report names them', () => {
  expect(heapMaterials(REPORT)).toEqual(['soil', 'sand']);
});

describe('one material at one stage', () => {
  const board = heapBoard(REPORT, SCENE, 'S1', 'soil');

  it('has every bay, 2 before 10', () => {
    expect(board.map(({ bay }) => bay)).toEqual(['A2', 'A10', 'B', 'C']);
  });

  it('says height, overload, or that nothing is permitted, with limit and basis', () => {
    expect(board[1]).toEqual({ bay: 'A10', state: 'free', heightM: 0.55, overKNm2: 0, confirmed: true, permittedKNm2: 8, basis: BASIS });
    expect(board[0]).toMatchObject({ state: 'over', overKNm2: 1.24, confirmed: false, basis: undefined });
    expect(board[2]).toMatchObject({ state: 'no limit' });
  });

  it('is unusual where a height is above 2 m', () => {
    expect(isUnusual([{ heightM: 0.5 }, { heightM: 2 }])).toBe(false);
    expect(isUnusual([{ heightM: 0.5 }, { heightM: 2.05 }])).toBe(true);
  });

  it('in words: numbers of bays that nobody confirmed stand in brackets', () => {
    expect(board.map((entry) => heaps.entry(entry))).toEqual([
      '(over by 1.24\u202FkN/m²)',
      '0.55\u202Fm',
      'nothing permitted',
      '(0.40\u202Fm)',
    ]);
    expect(board.map((entry) => heaps.lines(entry))).toEqual([['(over by', '1.24\u202FkN/m²)'], ['0.55\u202Fm'], ['–'], ['(0.40\u202Fm)']]);
  });
});
