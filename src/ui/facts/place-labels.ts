/** Puts labels of one height beside their marks so that none covers another. */

/**
 * Centres of the labels: as near to the wanted centres as possible (least squares), in the same order, at least `size`
 * apart and inside `from … to`. `wanted` rises. Throws RangeError where they cannot all fit.
 */
export function placeLabels(wanted: readonly number[], size: number, from: number, to: number): number[] {
  const span = wanted.length * size;
  if (span > to - from + 1e-9) throw new RangeError(`placeLabels: ${wanted.length} labels of ${size} must fit into ${to - from}`);
  // Without their own room the labels may touch: what remains is a rising row nearest to the wanted one.
  const blocks: { sum: number; count: number }[] = [];
  wanted.forEach((centre, i) => {
    let block = { sum: centre - i * size, count: 1 };
    for (let last = blocks.at(-1); last !== undefined && last.sum / last.count > block.sum / block.count; last = blocks.at(-1)) {
      blocks.pop();
      block = { sum: last.sum + block.sum, count: last.count + block.count };
    }
    blocks.push(block);
  });
  const low = from + size / 2;
  const high = to + size / 2 - span;
  const bases = blocks.flatMap(({ sum, count }) => Array<number>(count).fill(Math.min(Math.max(sum / count, low), Math.max(low, high))));
  return bases.map((base, i) => base + i * size);
}
