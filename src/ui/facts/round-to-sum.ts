/** Rounds the rows of a sum so that what is shown adds up to the total shown. */

/**
 * Each value rounded up or down to `decimals`, never by a whole step, so that the rounded values add up to the rounded
 * sum: the rows with the largest remainders are rounded up.
 */
export function roundToSum(values: readonly number[], decimals: number): number[] {
  const scale = 10 ** decimals;
  // Sums of decimals fall a hair short of the whole (0.29 · 100 = 28.999…): such a value counts as whole.
  const units = values.map((value) => {
    const unit = value * scale;
    return Math.abs(unit - Math.round(unit)) < 1e-6 ? Math.round(unit) : unit;
  });
  const floors = units.map(Math.floor);
  const total = Math.round(units.reduce((sum, unit) => sum + unit, 0));
  let left = total - floors.reduce((sum, floor) => sum + floor, 0);
  const byRemainder = units.map((unit, i) => ({ i, remainder: unit - (floors[i] as number) })).sort((a, b) => b.remainder - a.remainder);
  const rounded = [...floors];
  for (const { i } of byRemainder) {
    if (left <= 0) break;
    rounded[i] = (rounded[i] as number) + 1;
    left--;
  }
  return rounded.map((unit) => unit / scale);
}
