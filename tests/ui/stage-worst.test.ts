/** What the rail says of stages and of the finished garden: an overload stays in sight, and so does an unconfirmed bay. */

import { describe, expect, it } from 'vitest';
import type { Report, ReportBay } from '../../src/model/report.ts';
import { gardenWorst, stageWorst } from '../../src/ui/facts/stage-worst.ts';
import { worstText } from '../../src/ui/stage/StageBands.tsx';

interface Given {
  readonly confirmed?: boolean;
  readonly total?: number;
}

function bay(id: string, permanent: number | null, imposed: number | null, { confirmed = true, total }: Given = {}): ReportBay {
  const load = { meanKNm2: 0, peakKNm2: 0, patchKNm2: 0, patchAt: [0, 0] as const, permittedKNm2: 10 };
  return {
    id,
    areaM2: 50,
    permanent: { ...load, utilisation: permanent },
    imposed: { maxKNm2: 0, permittedKNm2: 5, utilisation: imposed },
    ...(total === undefined ? {} : { total: { patchKNm2: 0, patchAt: [0, 0] as const, permittedKNm2: 10, utilisation: total } }),
    stages: [],
    worstStage: null,
    confirmed,
  };
}

const report = (...bays: ReportBay[]) =>
  ({ bays, stages: [{ id: 'S1', name: 'Fill', placedKN: 0, worstBay: bays[0]?.id ?? null, utilisation: 0.5 }] }) as unknown as Report;

/** The page uses narrow no-break spaces before units. */
const says = (of: Parameters<typeof worstText>[0] | null) => of && worstText(of).replaceAll('\u202F', ' ');

describe('gardenWorst', () => {
  it('takes the greatest of permanent, imposed and both together', () => {
    expect(gardenWorst(report(bay('A', 1.188, 0.2), bay('B', 0.9, 0.8)))).toMatchObject({ bay: 'A', utilisation: 1.188 });
    expect(gardenWorst(report(bay('A', 0.5, 0.2), bay('B', 0.3, 0.8)))).toMatchObject({ bay: 'B', utilisation: 0.8 });
    expect(gardenWorst(report(bay('A', null, null, { total: 0.7 }), bay('B', 0.3, 0.1)))).toMatchObject({ bay: 'A', utilisation: 0.7 });
  });

  it('is nothing where no load is permitted', () => {
    expect(gardenWorst(report(bay('A', null, null)))).toBeNull();
  });
});

describe('worstText', () => {
  it('tells of bays that are not confirmed beside the worst one', () => {
    const shown = report(bay('A', 0.5, 0.2), bay('B', 0.3, 0.1, { confirmed: false }));
    expect(says(gardenWorst(shown))).toBe('Highest 50.0 % in bay A, within the limit; 1 bay is not confirmed');
    expect(says(stageWorst(shown, 'S1'))).toBe('Highest 50.0 % in bay A, within the limit; 1 bay is not confirmed');
  });

  it('does not say it twice of the one bay it names', () => {
    expect(says(gardenWorst(report(bay('A', 0.5, 0.2, { confirmed: false }), bay('B', 0.3, 0.1))))).toBe(
      'Highest 50.0 % in bay A, not confirmed',
    );
    expect(says(gardenWorst(report(bay('A', 1.1, 0.2, { confirmed: false }))))).toBe(
      'Highest 110.0 % in bay A, over the limit; 1 bay is not confirmed',
    );
  });
});
