/** How wide a text may come out in a common sans-serif face: rather too wide, so that nothing runs into its neighbour. */

/** Font size over height of capitals in common sans-serif faces [-]; common practice. */
export const FONT_SIZE_PER_CAP = 1 / 0.716;

/** Widths as shares of the font size, a little above those of common sans-serif faces [-]; from memory. */
const NARROW = 0.3;
const SLIM = 0.38;
const COMMON = 0.585;
const WIDE = 0.75;
const WIDEST = 0.96;

/** Bold letters are wider by this. */
export const BOLD = 1.08;

function shareOf(character: string): number {
  if ("ijlI|.,:;'!·".includes(character)) return NARROW;
  if ('ftr()[]{}/\\- \u202F\u00A0"°²³'.includes(character)) return SLIM;
  if ('mwMW%@—'.includes(character)) return WIDEST;
  if (/\p{Lu}/u.test(character) || '&#×÷±√'.includes(character)) return WIDE;
  return COMMON;
}

/**
 * Width of a text.
 * @param text - one line
 * @param capMm - height of its capitals [mm]
 * @param bold - whether it is bold
 * @returns width [mm]
 */
export function textWidthMm(text: string, capMm: number, bold = false): number {
  let shares = 0;
  for (const character of text) shares += shareOf(character);
  return shares * capMm * FONT_SIZE_PER_CAP * (bold ? BOLD : 1);
}

/** Words in lines no wider than a width; a word that is wider stands alone. */
export function wrapped(text: string, widthMm: number, capMm: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidthMm(`${last} ${word}`, capMm) <= widthMm) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
