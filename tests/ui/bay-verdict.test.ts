/** The judgement per bay and the headline: nothing unconfirmed or uncompared may pass for within. */

import { describe, expect, it } from 'vitest';
import type { Report, ReportBay } from '../../src/model/report.ts';
import type { SceneBasis, SceneBay, SceneFile } from '../../src/model/scene-file.ts';
import { bayVerdicts, countBays } from '../../src/ui/facts/bay-verdict.ts';
import { headlineOf } from '../../src/ui/facts/headline.ts';
import { headlineText } from '../../src/ui/side/Headline.tsx';

const BASIS: SceneBasis = { document: 'load plan', revision: 'C', date: '2026-03-09' };

interface Given {
  readonly id: string;
  readonly permanent?: readonly [number, number | null];
  readonly imposed?: readonly [number, number | null];
  readonly stages?: readonly number[];
  readonly stageKNm2?: number;
  readonly basis?: SceneBasis;
}

const ratio = (load: number, permitted: number | null) => (permitted === null ? null : load / permitted);

function reportBay({ id, permanent = [6, 12], imposed = [0, null], stages = [], stageKNm2, basis = BASIS }: Given): ReportBay {
  const stageLimit = stageKNm2 ?? permanent[1];
  return {
    id,
    areaM2: 50,
    permanent: {
      meanKNm2: permanent[0],
      peakKNm2: permanent[0],
      patchKNm2: permanent[0],
      patchAt: [1, 2],
      permittedKNm2: permanent[1],
      utilisation: ratio(...permanent),
    },
    imposed: { maxKNm2: imposed[0], permittedKNm2: imposed[1], utilisation: ratio(...imposed) },
    stages: stages.map((patchKNm2, i) => ({
      stage: `S${i + 1}`,
      patchKNm2,
      patchAt: [3, 4] as const,
      permittedKNm2: stageLimit,
      utilisation: ratio(patchKNm2, stageLimit),
    })),
    worstStage: null,
    confirmed: basis.document !== undefined && basis.revision !== undefined && basis.date !== undefined,
  };
}

function sceneBay({ id, stageKNm2, permanent = [6, 12], basis = BASIS }: Given): SceneBay {
  return {
    id,
    outline: [],
    basis,
    ...(permanent[1] === null ? {} : { permanentKNm2: permanent[1] }),
    ...(stageKNm2 === undefined ? {} : { stageKNm2 }),
  };
}

function verdictsOf(...given: readonly Given[]) {
  const report = { bays: given.map(reportBay) } as unknown as Report;
  const scene = { deck: { outline: [], bays: given.map(sceneBay) } } as unknown as SceneFile;
  return bayVerdicts(report, scene);
}

const statuses = (...given: readonly Given[]) => verdictsOf(...given).map(({ id, status }) => `${id} ${status}`);

describe('status of a bay', () => {
  it('is within, at the limit or over by its worst comparison', () => {
    expect(statuses({ id: 'A', permanent: [6, 12] })).toEqual(['A within']);
    expect(statuses({ id: 'A', permanent: [12, 12] })).toEqual(['A at limit']);
    expect(statuses({ id: 'A', permanent: [12.001, 12] })).toEqual(['A over']);
    expect(statuses({ id: 'A', permanent: [6, 12], imposed: [6, 5] })).toEqual(['A over']);
    expect(statuses({ id: 'A', permanent: [6, 12], stages: [3, 13] })).toEqual(['A over']);
  });

  it('is never within without document, revision and date', () => {
    expect(statuses({ id: 'A', basis: { document: 'load plan', revision: 'C' } })).toEqual(['A not confirmed']);
    expect(statuses({ id: 'A', permanent: [12, 12], basis: {} })).toEqual(['A not confirmed']);
  });

  it('is over even where the limit is not confirmed', () => {
    expect(statuses({ id: 'A', permanent: [13, 12], basis: {} })).toEqual(['A over']);
  });

  it('is not within where a load has nothing to be compared with', () => {
    expect(statuses({ id: 'A', permanent: [6, null] })).toEqual(['A no limit']);
    expect(statuses({ id: 'A', permanent: [6, 12], imposed: [4, null] })).toEqual(['A no limit']);
    expect(statuses({ id: 'A', permanent: [6, 12], imposed: [0, null] })).toEqual(['A within']);
  });

  it('names the stage that governs, with the limit that holds while building', () => {
    // by hand: 9 / 10 = 90 % in stage 2 beats 6 / 12 = 50 %
    const [verdict] = verdictsOf({ id: 'A', permanent: [6, 12], stages: [3, 9], stageKNm2: 10 });
    expect(verdict!.governing).toMatchObject({ kind: 'stage', stage: 'S2', loadKNm2: 9, permittedKNm2: 10, at: [3, 4] });
    expect(verdict!.governing.utilisation).toBeCloseTo(0.9, 12);
  });
});

describe('order', () => {
  it('puts the worst first, and unconfirmed before confirmed within', () => {
    expect(
      statuses(
        { id: 'A', permanent: [6, 12] },
        { id: 'B', permanent: [11, 12] },
        { id: 'C', permanent: [13, 12] },
        { id: 'D', permanent: [1, 12], basis: {} },
        { id: 'E', permanent: [18, 12] },
      ),
    ).toEqual(['E over', 'C over', 'D not confirmed', 'B within', 'A within']);
  });
});

describe('headline', () => {
  const textOf = (...given: readonly Given[]) => headlineText(headlineOf(verdictsOf(...given)));

  it('says all are within, and of which plan, only when all are', () => {
    expect(textOf({ id: 'A' }, { id: 'B' })).toBe('Both bays within the permitted loads of load plan rev C');
    const other = { document: 'addendum', revision: '1', date: '2026-04-01' };
    expect(textOf({ id: 'A' }, { id: 'B' }, { id: 'C' })).toBe('All 3 bays within the permitted loads of load plan rev C');
    expect(textOf({ id: 'A' }, { id: 'B', basis: other })).toBe(
      'Both bays within the permitted loads of load plan rev C and addendum rev 1',
    );
  });

  it('counts otherwise, in groups that do not overlap', () => {
    const given: Given[] = [
      { id: 'A', permanent: [13, 12] },
      { id: 'B', permanent: [13, 12], basis: {} },
      { id: 'C', basis: {} },
      { id: 'D' },
      { id: 'E', permanent: [12, 12] },
    ];
    expect(textOf(...given)).toBe('2 over, 1 not confirmed, 2 within');
    expect(countBays(verdictsOf(...given))).toEqual({ all: 5, over: 2, overUnconfirmed: 1, notConfirmed: 1, noLimit: 0, within: 2 });
  });

  it('counts when a single bay is unconfirmed or uncompared', () => {
    expect(textOf({ id: 'A' }, { id: 'B', basis: {} })).toBe('0 over, 1 not confirmed, 1 within');
    expect(textOf({ id: 'A' }, { id: 'B', permanent: [6, null] })).toBe('0 over, 1 without a permitted load, 1 within');
    expect(textOf({ id: 'A', stages: [13] }, { id: 'B' })).toBe('1 over, 1 within');
  });

  it('promises nothing without bays', () => {
    expect(textOf()).toMatch(/no bays/);
  });
});
