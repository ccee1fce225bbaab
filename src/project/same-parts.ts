/** Whether two scenes list the same parts in the same order, so that what was said of one can stand beside the other for a moment. */

/**
 * Texts, lengths of lists and names of values must be equal; numbers may differ.
 * @param before - plain data
 * @param now - plain data; what it shares with `before` is not looked at
 * @returns true where nothing but numbers differs
 */
export function sameParts(before: unknown, now: unknown): boolean {
  if (Object.is(before, now)) return true;
  if (typeof before === 'number' && typeof now === 'number') return true;
  if (typeof before !== 'object' || typeof now !== 'object' || before === null || now === null) return false;
  const [old, keys] = [Object.keys(before), Object.keys(now)];
  return (
    Array.isArray(before) === Array.isArray(now) &&
    old.length === keys.length &&
    keys.every((key, i) => old[i] === key && sameParts(before[key as keyof typeof before], now[key as keyof typeof now]))
  );
}
