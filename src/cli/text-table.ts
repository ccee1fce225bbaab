/** Tables as plain text for a terminal. */

/** Columns padded to their widest cell; `align` has l or r per column. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], align: string): string[] {
  const width = head.map((title, c) => Math.max(title.length, ...rows.map((row) => row[c].length)));
  const line = (cells: readonly string[]) => {
    const padded = cells.map((cell, c) => (align[c] === 'r' ? cell.padStart(width[c]) : cell.padEnd(width[c])));
    return `  ${padded.join('  ')}`.trimEnd();
  };
  return [line(head), ...rows.map(line)];
}
