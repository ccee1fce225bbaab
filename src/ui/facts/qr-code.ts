/** A text as the dark and light squares of a QR code (ISO/IEC 18004), in byte mode. */

import { create } from 'qrcode';

/** What the largest code holds at the lowest correction. ISO/IEC 18004, table of capacities: version 40, level L, byte mode. */
export const MOST_QR_BYTES = 2953;
/** Light squares that a reader needs on every side. ISO/IEC 18004, quiet zone. */
const QUIET = 4;

export interface QrCode {
  /** Squares along one side, with the quiet zone. */
  readonly size: number;
  /** Dark squares, as lengths of a drawing whose unit is one square. */
  readonly path: string;
}

/** Null for a text that is too long. Of codes of the same size the one that bears most dirt. */
export function qrCode(text: string): QrCode | null {
  const data = new TextEncoder().encode(text);
  if (data.length > MOST_QR_BYTES) return null;
  const least = create([{ data, mode: 'byte' }], { errorCorrectionLevel: 'L' });
  const { modules } = sturdier(data, least.version) ?? least;
  const runs = Array.from({ length: modules.size }, (_, row) => {
    return runsOf((column) => modules.get(row, column) === 1, modules.size).map(([from, length]) => {
      return `M${from + QUIET} ${row + QUIET}h${length}v1h${-length}z`;
    });
  });
  return { size: modules.size + 2 * QUIET, path: runs.flat().join('') };
}

function sturdier(data: Uint8ClampedArray | Uint8Array, version: number) {
  for (const errorCorrectionLevel of ['H', 'Q', 'M'] as const) {
    try {
      return create([{ data, mode: 'byte' }], { version, errorCorrectionLevel });
    } catch {
      // No room for so much correction in a code of this size.
    }
  }
  return null;
}

/** Start and length of every run of dark squares in a row. */
function runsOf(isDark: (at: number) => boolean, size: number): [number, number][] {
  const runs: [number, number][] = [];
  for (let at = 0; at < size; at++) {
    if (!isDark(at)) continue;
    const last = runs.at(-1);
    if (last !== undefined && last[0] + last[1] === at) last[1]++;
    else runs.push([at, 1]);
  }
  return runs;
}
