/** Numbers and tables as plain text for a terminal. */

/** A number with so many decimals. */
export const fixed = (value: number, digits = 2) => value.toFixed(digits);

/** A number, or a dash where there is none. */
export const orDash = (value: number | null, digits = 2) => (value === null ? '-' : fixed(value, digits));

/** A utilisation in percent, or a dash. */
export const use = (value: number | null) => (value === null ? '-' : `${fixed(100 * value, 1)} %`);

/** Columns padded to their widest cell; `align` has l or r per column. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], align: string): string[] {
  const width = head.map((title, c) => Math.max(title.length, ...rows.map((row) => row[c].length)));
  const line = (cells: readonly string[]) => {
    const padded = cells.map((cell, c) => (align[c] === 'r' ? cell.padStart(width[c]) : cell.padEnd(width[c])));
    return `  ${padded.join('  ')}`.trimEnd();
  };
  return [line(head), ...rows.map(line)];
}
