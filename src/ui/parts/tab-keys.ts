/** Arrow keys, Home and End in a row of tabs. */

/**
 * Where a key leads in a row of tabs, round its ends.
 * @returns index of the tab, or null for any other key
 */
export function tabAfter(key: string, at: number, count: number): number | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowRight: at + 1,
    ArrowUp: at - 1,
    ArrowLeft: at - 1,
    Home: 0,
    End: count - 1,
  };
  const to = steps[key];
  return to === undefined ? null : (to + count) % count;
}
