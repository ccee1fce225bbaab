/** Distances between axes as people write them. */

import { readNumber } from '../model/parse-number.ts';
import { MOST_FIELDS } from './axis-bays.ts';

export type AxisTextRead =
  | { readonly ok: true; readonly stepsM: readonly number[] }
  /** `piece` is the part of the text that is not understood. */
  | { readonly ok: false; readonly why: 'empty' | 'not understood' | 'not above 0' | 'too many'; readonly piece: string }
  | { readonly ok: false; readonly why: 'ambiguous'; readonly piece: string; readonly choices: readonly string[] };

const TIMES = /^(\d{1,5})\s*[x×*]\s*(.+)$/i;
/** Digits, comma, digits, comma, digits: a list without blanks, or decimals? */
const TWOFOLD_COMMAS = /^\d+(?:,\d+){2,}$/;

/**
 * Reads `5 x 6.00; 2 x 7.50`, `6 6 6 7,5`, `3 × 6,00 + 7,50`. Distances are set apart by a semicolon, a plus, a slash, a blank, or a comma with a blank.
 * @param text - as typed
 * @returns distances in order [m], or why not
 */
export function readAxisText(text: string): AxisTextRead {
  const whole = text.trim().replace(/\s*([x×*])\s*/gi, '$1');
  const pieces = whole
    .split(/[;+/]|,(?=\s)|\s+/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  if (pieces.length === 0) return { ok: false, why: 'empty', piece: '' };
  const stepsM: number[] = [];
  for (const piece of pieces) {
    const read = readPiece(piece);
    if (!read.ok) return read;
    if (stepsM.length + read.count > MOST_FIELDS) return { ok: false, why: 'too many', piece };
    stepsM.push(...new Array<number>(read.count).fill(read.stepM));
  }
  return { ok: true, stepsM };
}

type PieceRead = { readonly ok: true; readonly count: number; readonly stepM: number } | Exclude<AxisTextRead, { ok: true }>;

function readPiece(piece: string): PieceRead {
  const times = TIMES.exec(piece);
  const count = times === null ? 1 : Number(times[1]);
  const said = times?.[2] ?? piece;
  if (TWOFOLD_COMMAS.test(said)) return { ok: false, why: 'ambiguous', piece, choices: [said.replaceAll(',', ' ')] };
  const read = readNumber(said.replace(/m$/, ''));
  if (!read.ok) {
    if (read.why !== 'ambiguous') return { ok: false, why: 'not understood', piece };
    const again = (choice: string) => (times === null ? choice : `${count} x ${choice}`);
    return { ok: false, why: 'ambiguous', piece, choices: [again(read.small), again(read.large)] };
  }
  if (!(read.value > 0) || count === 0) return { ok: false, why: 'not above 0', piece };
  return { ok: true, count, stepM: read.value };
}

/**
 * Writes distances so that `readAxisText` reads them back.
 * @param stepsM - distances [m]
 * @param mark - decimal mark
 * @returns e.g. `5 x 6.00; 2 x 7.50`
 */
export function axisText(stepsM: readonly number[], mark: '.' | ','): string {
  const runs: { stepM: number; count: number }[] = [];
  for (const stepM of stepsM) {
    const last = runs.at(-1);
    if (last?.stepM === stepM) last.count++;
    else runs.push({ stepM, count: 1 });
  }
  return runs.map(({ stepM, count }) => `${count > 1 ? `${count} x ` : ''}${stepText(stepM).replace('.', mark)}`).join('; ');
}

/** At least two decimals, and never three, which would be asked back; as exact as the number is. */
function stepText(stepM: number): string {
  const decimals = (String(stepM).split('.')[1] ?? '').length;
  return stepM.toFixed(Math.min(20, decimals === 3 ? 4 : Math.max(2, decimals)));
}
