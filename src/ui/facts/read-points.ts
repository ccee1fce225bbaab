/** Points of a line or outline as people type them: one point per line, x and y set apart by a blank, semicolon or tab; decimal comma or point. */

import { type NumberRead, readNumber } from '../../model/parse-number.ts';
import type { PointM } from '../../model/scene-file.ts';
import { numberText } from '../format.ts';

export type PointsRead =
  | { readonly ok: true; readonly points: readonly PointM[] }
  /** Line counted from 1; `number` says what is wrong with one of its numbers. */
  | { readonly ok: false; readonly why: 'two numbers'; readonly line: number }
  | { readonly ok: false; readonly why: 'number'; readonly line: number; readonly read: Exclude<NumberRead, { ok: true }> }
  | { readonly ok: false; readonly why: 'too few'; readonly least: number };

const MOST_DECIMALS = 4;

/** A coordinate as it is written in a field, to the tenth of a millimetre. Three decimals get a fourth: "4.125" could be read as thousands. */
function fieldNumber(valueM: number): string {
  const exact = String(Number(valueM.toFixed(MOST_DECIMALS)));
  const text = /\.\d{3}$/.test(exact) ? `${exact}0` : exact;
  return text.replace('.', numberText(0.5, 1).slice(1, 2));
}

const pointText = (point: PointM): string => point.map(fieldNumber).join('; ');

/** Points as they are written in a field, one per line. */
export const pointsText = (points: readonly PointM[]): string => points.map(pointText).join('\n');

/**
 * Points that read like those that were there are the very same: what the field rounds does not move them.
 * @param points - as read
 * @param before - as they were
 */
export const keptPoints = (points: readonly PointM[], before: readonly PointM[]): readonly PointM[] =>
  points.map((point) => before.find((one) => pointText(one) === pointText(point)) ?? point);

/**
 * Reads typed points.
 * @param typed - as typed; empty lines do not count
 * @param least - fewest points that make sense
 */
export function readPoints(typed: string, least: number): PointsRead {
  const points: PointM[] = [];
  for (const [i, line] of typed.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const parts = partsOf(line.trim());
    if (parts.length !== 2) return { ok: false, why: 'two numbers', line: i + 1 };
    const [x, y] = parts.map(readNumber) as [NumberRead, NumberRead];
    if (!x.ok) return { ok: false, why: 'number', line: i + 1, read: x };
    if (!y.ok) return { ok: false, why: 'number', line: i + 1, read: y };
    points.push([x.value, y.value]);
  }
  return points.length < least ? { ok: false, why: 'too few', least } : { ok: true, points };
}

/** A semicolon or tab sets numbers apart; else a comma followed by a blank, else blanks. */
function partsOf(line: string): string[] {
  const marked = line.split(/[;\t]/);
  if (marked.length > 1) return marked.map((part) => part.trim()).filter((part) => part !== '');
  const listed = line.split(/,\s+/);
  return listed.length > 1 ? listed : line.split(/\s+/);
}
