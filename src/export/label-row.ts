/** Labels in one row, each as near to its place as its neighbours allow. */

export interface RowLabel {
  /** Where its middle wants to be. */
  readonly wantedMm: number;
  readonly widthMm: number;
}

interface Group {
  /** Sum over labels of wanted middle less its offset in the group. */
  sumMm: number;
  widthMm: number;
  readonly labels: number[];
  /** Middle of each label from the left end of the group. */
  readonly offsetsMm: number[];
}

/**
 * Middles of labels so that none overlap, their order stays, and the squares of their displacements are least.
 * @param labels - labels in the order of their wanted places
 * @param gapMm - least space between two [mm]
 * @returns middles in the same order [mm]
 */
export function spreadRow(labels: readonly RowLabel[], gapMm: number): number[] {
  const groups: Group[] = [];
  labels.forEach(({ wantedMm, widthMm }, i) => {
    let group: Group = { sumMm: wantedMm - widthMm / 2, widthMm, labels: [i], offsetsMm: [widthMm / 2] };
    // Groups that touch are pushed apart no further: they become one that moves as a whole.
    for (let last = groups.at(-1); last !== undefined && leftOf(last) + last.widthMm + gapMm > leftOf(group); last = groups.at(-1)) {
      groups.pop();
      group = merged(last, group, gapMm);
    }
    groups.push(group);
  });
  const middles = new Array<number>(labels.length);
  for (const group of groups) {
    group.labels.forEach((label, k) => {
      middles[label] = leftOf(group) + group.offsetsMm[k];
    });
  }
  return middles;
}

const leftOf = (group: Group) => group.sumMm / group.labels.length;

function merged(left: Group, right: Group, gapMm: number): Group {
  const shiftMm = left.widthMm + gapMm;
  return {
    sumMm: left.sumMm + right.sumMm - shiftMm * right.labels.length,
    widthMm: shiftMm + right.widthMm,
    labels: [...left.labels, ...right.labels],
    offsetsMm: [...left.offsetsMm, ...right.offsetsMm.map((offset) => offset + shiftMm)],
  };
}
