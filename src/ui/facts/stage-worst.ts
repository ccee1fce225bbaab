/** The greatest utilisation of a stage or of the finished garden, for the rail. */

import type { Report } from '../../model/report.ts';

export interface StageWorst {
  readonly utilisation: number;
  readonly bay: string;
  /** Whether that bay is confirmed. */
  readonly confirmed: boolean;
  /** Bays of the deck that are not confirmed, that one included. */
  readonly unconfirmed: number;
}

const unconfirmedOf = ({ bays }: Report) => bays.filter(({ confirmed }) => !confirmed).length;

/** Of a stage; null where no bay has a permitted load to compare with. */
export function stageWorst(report: Report, stage: string): StageWorst | null {
  const found = report.stages.find(({ id }) => id === stage);
  if (found === undefined || found.utilisation === null || found.worstBay === null) return null;
  const confirmed = report.bays.find(({ id }) => id === found.worstBay)?.confirmed ?? false;
  return { utilisation: found.utilisation, bay: found.worstBay, confirmed, unconfirmed: unconfirmedOf(report) };
}

/** Of the finished garden: permanent, imposed and both together. */
export function gardenWorst(report: Report): StageWorst | null {
  let worst: StageWorst | null = null;
  for (const { id, confirmed, permanent, imposed, total } of report.bays) {
    for (const utilisation of [permanent.utilisation, imposed.utilisation, total?.utilisation ?? null]) {
      if (utilisation === null || utilisation <= (worst?.utilisation ?? -1)) continue;
      worst = { utilisation, bay: id, confirmed, unconfirmed: unconfirmedOf(report) };
    }
  }
  return worst;
}
