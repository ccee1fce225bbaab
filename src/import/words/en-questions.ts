/** What is asked where a file can be read in more than one way, and the answers to choose from. */

import type { LengthUnit } from '../length-unit.ts';
import type { DecimalMark } from '../number-form.ts';
import type { Separator } from '../table-form.ts';
import { MODEL_CHOICES_EN, MODEL_QUESTIONS_EN } from './en-model.ts';
import { allEn, countEn, numberEn, type Place, placeEn, type Size, sizeEn, someEn } from './number-words.ts';
import { type Axes, TERMS_EN } from './term-words.ts';

const { units, axes, separators, marks } = TERMS_EN;

export interface Group {
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

export interface Groups {
  readonly lowCount: number;
  readonly lowFrom: number;
  readonly lowTo: number;
  readonly highCount: number;
  readonly highFrom: number;
  readonly highTo: number;
}

/** Levels there were, levels kept, what was allowed and what was found. */
export interface Thinning {
  readonly count: number;
  readonly after: number;
  readonly errorMm: number;
  readonly mostMm: number;
}

const group = ({ count, from, to }: Group) => `${countEn(count)} × ${numberEn(from)} to ${numberEn(to)}`;
const AXES = 'How do the numbers of the file lie on the plan?';

/** Every question by its code. */
export const QUESTIONS_EN = {
  ...MODEL_QUESTIONS_EN,
  ENCODING: (v: { readonly sample: string }) =>
    `Text looks read with the wrong character set, for example "${v.sample}". Which one was meant?`,
  UNIT: (v: Size & { readonly said: LengthUnit | 'none' }) =>
    `The drawing measures ${sizeEn(v)} in its own units (${v.said === 'none' ? 'no unit given' : units[v.said]}). Which unit was meant?`,
  UNIT_DOUBTED: (v: Size & { readonly said: LengthUnit; readonly guess: LengthUnit | 'degrees' }) =>
    `The file says ${units[v.said]}, that is ${sizeEn(v)} m. The size fits ${units[v.guess]} better. Which?`,
  UNIT_DEGREES: (v: Place) => `Values look like longitude and latitude (${placeEn(v, 5)}). Change them to local metres?`,
  AXES: (_: object) => AXES,
  AXES_APART: (_: object) => `The drawing would lie apart from the deck, or mirrored against it. ${AXES}`,
  AXES_NORTHING: (_: object) => `The first number looks like a northing, the second like an easting. ${AXES}`,
  STRAY: (v: Place & { readonly count: number; readonly farM: number }) =>
    `${v.count === 1 ? 'One point is' : `${countEn(v.count)} points are`} ${v.farM} m from the rest, near ${placeEn(v, 1)}. Leave out?`,
  LEVEL_UNIT: (v: { readonly from: number; readonly to: number }) =>
    `Levels range from ${numberEn(v.from)} to ${numberEn(v.to)}. In which unit?`,
  LEVELS_ZERO: (v: { readonly count: number }) =>
    `${v.count === 1 ? 'The only level is' : `${allEn(v.count, 'levels')} are`} 0. Is that the level, or is there none?`,
  LEVEL_GROUPS: (v: Groups) =>
    `Levels fall into two groups, ${group({ count: v.lowCount, from: v.lowFrom, to: v.lowTo })} and ${group({ count: v.highCount, from: v.highFrom, to: v.highTo })} m. Which height system?`,
  LEVELS_DOUBLE: (v: Place & { readonly count: number; readonly mostM: number }) =>
    `${someEn(v.count, 'place has', 'places have')} two levels that differ by up to ${numberEn(v.mostM)} m, for example at ${placeEn(v)}. Which counts?`,
  DECIMAL: (v: { readonly sample: string; readonly large: string; readonly small: string }) =>
    `"${v.sample}": ${v.large}, or ${v.small}? The answer counts for the whole file.`,
  SEPARATOR: (v: { readonly sample: string }) => `Which mark stands between the columns of "${v.sample}"?`,
  COLUMNS: (v: { readonly sample: string }) => `Which column is what? First row: ${v.sample}`,
  DATES: (v: { readonly row: number; readonly sample: string; readonly number: number }) =>
    `Row ${v.row} holds a date (${v.sample}). ${v.number} meant?`,
  TRUNCATED: (v: { readonly count: number }) =>
    `The file stops in the middle; ${someEn(v.count, 'entry before that can be read. Use it?', 'entries before that can be read. Use them?')}`,
  THIN: (v: { readonly count: number; readonly most: number }) =>
    `The survey has ${countEn(v.count)} levels; a scene holds ${countEn(v.most)} at most. How far may the surface through those that are kept differ from those left out?`,
  SIMPLIFY: (v: {
    readonly count: number;
    readonly most: number;
    readonly errorMm: number;
    readonly after: number;
    readonly areaM2: number;
  }) =>
    `${v.count === 1 ? 'One line has' : `${countEn(v.count)} lines have`} up to ${countEn(v.most)} points. Simplify by at most ${v.errorMm} mm (${countEn(v.after)} points, area changes by ${v.areaM2} m²)?`,
} as const;

export type Questions = typeof QUESTIONS_EN;

/** Every answer that can be chosen. */
export const CHOICES_EN = {
  ...MODEL_CHOICES_EN,
  ENCODING_AS: (v: { readonly encoding: string; readonly sample: string }) => `${v.encoding}: ${v.sample}`,
  ENCODING_REPAIR: (v: { readonly after: string }) => `Put right: ${v.after}`,
  ENCODING_KEEP: (v: { readonly before: string }) => `Keep as it is: ${v.before}`,
  UNIT: (v: Size & { readonly unit: LengthUnit }) => `${units[v.unit]}: ${sizeEn(v)} m`,
  DEGREES: (v: Size) => `longitude and latitude: ${sizeEn(v)} m`,
  AXES: (v: { readonly axes: Axes }) => axes[v.axes],
  STRAY_LEAVE: (_: object) => 'Leave out.',
  STRAY_KEEP: (_: object) => 'Keep.',
  LEVEL_UNIT: (v: { readonly unit: LengthUnit; readonly from: number; readonly to: number }) =>
    `${units[v.unit]}: ${numberEn(v.from)} to ${numberEn(v.to)} m`,
  ZERO_NONE: (_: object) => 'There is no level.',
  ZERO_LEVEL: (_: object) => 'The level is 0.000.',
  GROUP_LOW: (v: Group) => `Lower: ${group(v)} m`,
  GROUP_HIGH: (v: Group) => `Upper: ${group(v)} m`,
  GROUP_BOTH: (_: object) => 'Both',
  DOUBLE_LOWER: (_: object) => 'The lower one: more build-up, more load.',
  DOUBLE_UPPER: (_: object) => 'The upper one.',
  SEPARATOR: (v: { readonly separator: Separator }) => separators[v.separator],
  DECIMAL: (v: { readonly mark: DecimalMark; readonly number: string }) => `Decimal ${marks[v.mark]}: ${v.number}`,
  COLUMNS: (v: { readonly columns: string }) => v.columns,
  DATES_LEAVE: (_: object) => 'Leave these rows out.',
  DATES_NUMBER: (v: { readonly number: number }) => `Read day and month as a number: ${v.number}.`,
  CUT_STOP: (_: object) => 'No, I will get the whole file.',
  CUT_USE: (_: object) => 'Yes, use the part that was read.',
  THIN: (v: Thinning) =>
    `By at most ${v.errorMm} mm: ${someEn(v.after, 'level is', 'levels are')} kept, greatest difference found ${v.mostMm}\u00A0mm.`,
  SIMPLIFY: (v: { readonly after: number }) => `Simplify: ${countEn(v.after)} points.`,
  SIMPLIFY_KEEP: (v: { readonly before: number }) => `Keep: ${countEn(v.before)} points.`,
} as const;

export type Choices = typeof CHOICES_EN;
