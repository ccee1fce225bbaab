/** The known name nearest to a misspelt one. */

const LONGEST_NAME = 60;

/**
 * Nearest of the known names, if one is near enough to be meant.
 * @param name - name as found in the file
 * @param known - names that would have been right
 * @returns the nearest one, or null; capitals do not count
 */
export function nearestName(name: string, known: Iterable<string>): string | null {
  if (name.length > LONGEST_NAME) return null;
  const wanted = name.toLowerCase();
  let nearest: string | null = null;
  let least = Math.max(1, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    if (candidate.length > LONGEST_NAME || Math.abs(candidate.length - name.length) >= least) continue;
    const distance = editDistance(wanted, candidate.toLowerCase());
    if (distance >= least) continue;
    least = distance;
    nearest = candidate;
  }
  return nearest;
}

/** Letters to add, drop, change or swap with a neighbour (restricted Damerau-Levenshtein distance). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = cost(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(cost(last, j) + 1, cost(row, j - 1) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, cost(beforeLast, j - 2) + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return cost(last, b.length);
}

function cost(row: readonly number[], j: number): number {
  return row[j] ?? Number.POSITIVE_INFINITY;
}
