/** Decides what levels mean: unit, zeros that are none, two height systems, two levels at one place. */

import { cleanM } from './curves.ts';
import { choiceOf, type Gathering } from './gathering.ts';
import { type LengthUnit, UNITS } from './length-unit.ts';
import type { RawPoint, RawShape } from './raw-shapes.ts';

export interface LevelHints {
  /** Unit the file gives for levels. */
  readonly unit: LengthUnit | null;
  /** Metres per unit of the plan; null for degrees. */
  readonly planScale: number | null;
  readonly planUnit: LengthUnit | 'degrees';
  /** Longest side of the drawing [m]. */
  readonly sideM: number;
  /** What zeros are where all levels are 0: none in a drawing; to be asked of a list meant to give levels; levels in a model. */
  readonly zeros: 'none' | 'ask' | 'level';
}

/** Greatest difference of levels on one deck [m], or as a share of its longest side. */
const MOST_RANGE_M = 3;
const MOST_RANGE_SHARE = 0.2;
/** Highest ground [m]. */
const HIGHEST_M = 5000;
/** Gap between two height systems [m]. */
const GROUP_GAP_M = 5;

/** Levels of all shapes in metres, in place. */
export function settleLevels(gather: Gathering, hints: LevelHints): void {
  const values = levelsOf(gather.shapes);
  if (values.length === 0) return;
  const unit = values.every((z) => z === 0) ? 'm' : askUnit(gather, values, hints);
  gather.shapes = gather.shapes.map((shape) => scaled(shape, UNITS[unit].metres));
  dropZeros(gather, hints);
  dropGroup(gather);
  dropDoubles(gather);
}

function levelsOf(shapes: readonly RawShape[]): number[] {
  const values: number[] = [];
  for (const shape of shapes) {
    if (shape.kind === 'point' && shape.z !== null) values.push(shape.z);
    else if (shape.kind === 'path') for (const level of shape.levels ?? []) values.push(level);
  }
  return values;
}

function scaled(shape: RawShape, metres: number): RawShape {
  if (metres === 1) return shape;
  if (shape.kind === 'point') return shape.z === null ? shape : { ...shape, z: cleanM(shape.z * metres) };
  return shape.kind === 'path' && shape.levels !== null ? { ...shape, levels: shape.levels.map((z) => cleanM(z * metres)) } : shape;
}

function rangeOf(values: readonly number[]): { readonly low: number; readonly high: number } {
  return values.reduce(({ low, high }, z) => ({ low: Math.min(low, z), high: Math.max(high, z) }), { low: Infinity, high: -Infinity });
}

function askUnit(gather: Gathering, values: readonly number[], { unit: said, planScale, planUnit, sideM }: LevelHints): LengthUnit {
  const { low, high } = rangeOf(values);
  const usual: LengthUnit = said ?? (planScale === null || planUnit === 'degrees' ? 'm' : planUnit);
  const fits = (unit: LengthUnit) => {
    const range = (high - low) * UNITS[unit].metres;
    const tooFlat = high - low >= 0.01 && range < 0.002;
    return !tooFlat && range <= Math.max(MOST_RANGE_M, MOST_RANGE_SHARE * sideM) && Math.max(-low, high) * UNITS[unit].metres <= HIGHEST_M;
  };
  // Two height systems span much in any unit: that is another question.
  const split = splitAt(values.map((z) => z * UNITS[usual].metres)) !== null;
  const guess = fits(usual) || split ? usual : ((['m', 'cm', 'mm', 'ft'] as const).find(fits) ?? usual);
  const units = [...new Set<LengthUnit>([guess, usual, 'm', 'cm', 'mm', 'ft'])];
  const unit = gather.ask({
    id: 'levelUnit',
    code: 'LEVEL_UNIT',
    values: { from: low, to: high },
    choices: units.map((one) => {
      const { metres } = UNITS[one];
      return choiceOf(one, 'LEVEL_UNIT', { unit: one, from: low * metres, to: high * metres });
    }),
    guess,
    certain: guess === usual,
  }) as LengthUnit;
  if (unit !== 'm') {
    const { metres } = UNITS[unit];
    gather.mend('LEVELS_CHANGED', { unit, from: low, to: high, fromM: low * metres, toM: high * metres });
  }
  return unit;
}

const isPoint = (shape: RawShape): shape is RawPoint => shape.kind === 'point';

/** A drawing without levels writes 0 for all of them. */
function dropZeros(gather: Gathering, { zeros }: LevelHints): void {
  const points = gather.shapes.filter(isPoint).filter(({ z }) => z !== null);
  if (points.length === 0 || points.some(({ z }) => z !== 0)) return;
  const taken = gather.ask({
    id: 'zeroLevels',
    code: 'LEVELS_ZERO',
    values: { count: points.length },
    choices: [choiceOf('none', 'ZERO_NONE', {}), choiceOf('zero', 'ZERO_LEVEL', {})],
    guess: zeros === 'level' ? 'zero' : 'none',
    certain: zeros !== 'ask',
  });
  if (taken === 'zero') return;
  gather.shapes = gather.shapes.map((shape) => (isPoint(shape) && shape.z === 0 ? { ...shape, z: null } : shape));
  gather.mend('LEVELS_DROPPED', { count: points.length });
}

/** Level between two groups far apart, each of several levels as close as those of one deck; or null. */
function splitAt(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  let at = 0;
  for (let i = 1; i < sorted.length; i++) if (sorted[i] - sorted[i - 1] > sorted[at + 1] - sorted[at]) at = i - 1;
  const [low, high] = [sorted.slice(0, at + 1), sorted.slice(at + 1)];
  const apart = high[0] - low[low.length - 1];
  const together = [low, high].every((group) => group.length > 1 && group[group.length - 1] - group[0] <= MOST_RANGE_M);
  return together && apart > GROUP_GAP_M ? (low[low.length - 1] + high[0]) / 2 : null;
}

function dropGroup(gather: Gathering): void {
  const levels = gather.shapes.filter(isPoint).flatMap(({ z }) => (z === null ? [] : [z]));
  const split = splitAt(levels);
  if (split === null) return;
  const [low, high] = [levels.filter((z) => z < split), levels.filter((z) => z >= split)];
  const [lows, highs] = [low, high].map((group) => {
    const range = rangeOf(group);
    return { count: group.length, from: range.low, to: range.high };
  });
  const kept = gather.ask({
    id: 'levelGroups',
    code: 'LEVEL_GROUPS',
    values: { lowCount: lows.count, lowFrom: lows.from, lowTo: lows.to, highCount: highs.count, highFrom: highs.from, highTo: highs.to },
    choices: [choiceOf('low', 'GROUP_LOW', lows), choiceOf('high', 'GROUP_HIGH', highs), choiceOf('all', 'GROUP_BOTH', {})],
    guess: low.length > high.length ? 'low' : 'high',
  });
  if (kept === 'all') return;
  const out = (z: number) => (kept === 'low' ? z >= split : z < split);
  gather.shapes = gather.shapes.map((shape) => (isPoint(shape) && shape.z !== null && out(shape.z) ? { ...shape, z: null } : shape));
  gather.mend('LEVELS_SPLIT', { kept: kept === 'low' ? 'lower' : 'upper', count: (kept === 'low' ? high : low).length });
}

/** Points at one place, to the millimetre, count once; where their levels differ by more than that, it is asked which. */
function dropDoubles(gather: Gathering): void {
  const places = new Map<string, RawPoint[]>();
  for (const point of gather.shapes.filter(isPoint)) {
    if (point.z === null) continue;
    const key = `${Math.round(point.x * 1000)} ${Math.round(point.y * 1000)} ${point.layer}`;
    const place = places.get(key);
    if (place === undefined) places.set(key, [point]);
    else place.push(point);
  }
  const differing = [...places.values()].filter((place) => spreadOf(place) > 0.001 + 1e-9);
  if (differing.length === 0) return;
  const most = differing.reduce((best, place) => (spreadOf(place) > spreadOf(best) ? place : best));
  const values = { count: differing.length, mostM: spreadOf(most), x: most[0].x, y: most[0].y };
  const kept = gather.ask({
    id: 'doubleLevels',
    code: 'LEVELS_DOUBLE',
    values,
    choices: [choiceOf('lower', 'DOUBLE_LOWER', {}), choiceOf('upper', 'DOUBLE_UPPER', {})],
    guess: 'lower',
  });
  const drop = new Set<RawShape>();
  for (const place of differing) {
    const sorted = [...place].sort((a, b) => (a.z ?? 0) - (b.z ?? 0));
    const keep = kept === 'lower' ? sorted[0] : sorted[sorted.length - 1];
    for (const point of place) if (point !== keep) drop.add(point);
  }
  gather.shapes = gather.shapes.filter((shape) => !drop.has(shape));
  gather.mend('LEVELS_DOUBLE', { ...values, kept: kept === 'lower' ? 'lower' : 'upper' });
}

function spreadOf(place: readonly RawPoint[]): number {
  const { low, high } = rangeOf(place.map(({ z }) => z ?? 0));
  return high - low;
}
