/** What is said aloud of a picked place: never "within" of a bay that nobody confirmed. */

import { describe, expect, it } from 'vitest';
import type { CoreLog } from '../../src/model/maps.ts';
import { placeSentence } from '../../src/ui/frame/LiveSummary.tsx';

const LOG: CoreLog = {
  cell: 0,
  stage: 'S5',
  at: [0, 0],
  deckAreaM2: 0.0625,
  membraneM: 0,
  finishedM: 0.5,
  layers: [],
  others: [],
  dryKNm2: 10,
  saturatedKNm2: 19,
  patchKNm2: 18.2,
  bay: 'C3',
  bayConfirmed: true,
  permittedKNm2: 15,
  permittedBasis: 'permanent',
  // by hand: 18.2 / 15 = 1.2133
  utilisation: 18.2 / 15,
};

describe('placeSentence', () => {
  it('names bay, stage, both loads, percent and judgement', () => {
    expect(placeSentence(LOG, 'stage 5')).toBe('Bay C3, stage 5: 18.20 of 15.00 kN/m², 121 percent, over the limit');
  });

  it('says over also where the limit is not confirmed', () => {
    expect(placeSentence({ ...LOG, bayConfirmed: false }, 'stage 5')).toBe(
      'Bay C3, stage 5: 18.20 of 15.00 kN/m², 121 percent, over the limit, not confirmed',
    );
  });

  it('does not say within where the limit is not confirmed', () => {
    // by hand: 6 / 15 = 0.4
    const says = placeSentence({ ...LOG, bayConfirmed: false, patchKNm2: 6, utilisation: 0.4 }, 'stage 5');
    expect(says).toBe('Bay C3, stage 5: 6.00 of 15.00 kN/m², 40 percent, not confirmed');
    expect(placeSentence({ ...LOG, patchKNm2: 6, utilisation: 0.4 }, 'stage 5')).toMatch(/40 percent, within the limit$/);
  });

  it('names who permits the load, where that is complete', () => {
    const basis = { document: 'load plan', revision: 'C', date: '2026-03-09', by: 'engineer' };
    expect(placeSentence(LOG, 'stage 5', basis)).toMatch(/over the limit\. Permitted by: load plan rev C, 2026-03-09$/);
    expect(placeSentence(LOG, 'stage 5', { document: 'load plan' })).toMatch(/over the limit$/);
  });

  it('says when there is nothing to compare with', () => {
    const alone = { ...LOG, permittedKNm2: null, utilisation: null };
    expect(placeSentence(alone, 'finished garden')).toBe('Bay C3, finished garden: 18.20\u202FkN/m², no permitted load given');
    expect(placeSentence({ ...alone, bay: null }, 'finished garden')).toMatch(/no bay here$/);
  });
});
