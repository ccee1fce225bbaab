/** The sentence of each change made while reading, and of each thing worth knowing. They are kept in the scene's history. */

import type { LengthUnit } from '../length-unit.ts';
import type { DecimalMark } from '../number-form.ts';
import type { Separator } from '../table-form.ts';
import { MODEL_MENDS_EN } from './en-model.ts';
import type { Thinning } from './en-questions.ts';
import { countEn, numberEn, type Place, placeEn, type Size, sizeEn, someEn } from './number-words.ts';
import { type Axes, TERMS_EN } from './term-words.ts';

const { units, axes, separators, marks } = TERMS_EN;

interface Count {
  readonly count: number;
}
interface Sample {
  readonly sample: string;
}

const was = ({ count }: Count) => (count === 1 ? 'was' : 'were');

/** Every code with its words. */
export const MENDS_EN = {
  ...MODEL_MENDS_EN,
  TEXT_DECODED: (v: { readonly encoding: string }) => `Text was read as ${v.encoding}.`,
  TEXT_DECODED_LOSSY: (_: object) => 'Text was read as UTF-8 with lost letters.',
  TEXT_UNBROKEN: (v: { readonly before: string; readonly after: string }) =>
    `Letters that had been read with the wrong character set were put right: "${v.before}" is "${v.after}".`,
  LINE_ENDS: (_: object) => 'Line ends of several kinds were read alike.',
  TEXT_KEPT: (v: Count & Sample) =>
    `${someEn(v.count, 'text looks', 'texts look')} like a formula or markup and ${v.count === 1 ? 'is' : 'are'} kept as plain text: "${v.sample}".`,
  TEXT_SHORTENED: (v: Count & { readonly most: number }) =>
    `${someEn(v.count, 'text was', 'texts were')} shortened to ${countEn(v.most)} characters.`,
  NUMBER_MARKS: (v: Count & Sample) =>
    `${someEn(v.count, 'number was', 'numbers were')} read in spite of unusual minus signs, blanks or apostrophes, for example "${v.sample}".`,
  HEADER_REPEATED: (v: Count) =>
    `The heading stands inside the table again (${someEn(v.count, 'time', 'times')}); those rows were left out.`,
  TABLE_READ: (v: { readonly separator: Separator; readonly mark: DecimalMark }) =>
    `The table was read with ${separators[v.separator]} between columns and a decimal ${marks[v.mark]}.`,
  UNIT_CHANGED: (v: Size & { readonly unit: LengthUnit; readonly widthM: number; readonly heightM: number }) =>
    `Lengths were changed from ${units[v.unit]} to metres: ${sizeEn(v)} in the file became ${sizeEn({ width: v.widthM, height: v.heightM })} m.`,
  DEGREES_CHANGED: (v: { readonly latitude: number; readonly longitude: number }) =>
    `Longitude and latitude were changed to metres east and north of ${v.latitude}° ${v.longitude}°.`,
  AXES_CHANGED: (v: { readonly axes: Axes }) => `Axes were changed: ${axes[v.axes]}.`,
  NORTH_EAST: (_: object) => 'The file gives north before east; the two were exchanged.',
  LEVELS_CHANGED: (v: {
    readonly unit: LengthUnit;
    readonly from: number;
    readonly to: number;
    readonly fromM: number;
    readonly toM: number;
  }) =>
    `Levels were changed from ${units[v.unit]} to metres: ${numberEn(v.from)} to ${numberEn(v.to)} in the file became ${numberEn(v.fromM)} to ${numberEn(v.toM)} m.`,
  LEVELS_DROPPED: (v: Count) => `${someEn(v.count, 'level', 'levels')} of 0 ${was(v)} not taken for levels.`,
  LEVELS_SPLIT: (v: Count & { readonly kept: 'lower' | 'upper' }) =>
    `Of two groups of levels, the ${v.kept} was kept; ${someEn(v.count, 'level', 'levels')} left out.`,
  LEVELS_DOUBLE: (v: Count & Place & { readonly kept: 'lower' | 'upper'; readonly mostM: number }) =>
    `${someEn(v.count, 'place has', 'places have')} more than one level; the ${v.kept} was kept. Greatest difference ${numberEn(v.mostM)} m, near ${placeEn(v)}.`,
  STRAY_DROPPED: (v: Count & { readonly farM: number }) =>
    `${someEn(v.count, 'point', 'points')} ${v.farM} m from the rest ${was(v)} left out.`,
  FAR_FROM_ORIGIN: (v: Place) =>
    `Coordinates lie near ${v.x}, ${v.y} m. The calculation works from a place nearby and gives the file's coordinates back.`,
  RINGS_CLOSED: (v: Count & { readonly gapMm: number }) =>
    `${someEn(v.count, 'outline was', 'outlines were')} not closed (gap up to ${v.gapMm} mm) and ${was(v)} closed.`,
  LINES_CHAINED: (v: Count & { readonly toleranceMm: number; readonly rings: number; readonly open: number; readonly gapMm: number }) =>
    `${someEn(v.count, 'line', 'lines')} with ends at most ${v.toleranceMm} mm apart were joined to ${countEn(v.rings)} closed and ${countEn(v.open)} open; greatest gap ${v.gapMm} mm.`,
  POINTS_REPEATED: (v: Count) => `${someEn(v.count, 'point', 'points')} on top of the one before ${was(v)} removed.`,
  SHAPES_REPEATED: (v: Count) => `${someEn(v.count, 'shape', 'shapes')} drawn twice at the same place ${was(v)} taken once.`,
  CURVES_TO_CHORDS: (v: Count & { readonly errorMm: number }) =>
    `${someEn(v.count, 'curve was', 'curves were')} laid into straight chords at most ${v.errorMm} mm from ${v.count === 1 ? 'it' : 'them'}.`,
  SIMPLIFIED: (v: Count & { readonly errorMm: number; readonly before: number; readonly after: number; readonly areaM2: number }) =>
    `${someEn(v.count, 'line was', 'lines were')} simplified by at most ${v.errorMm} mm: ${countEn(v.before)} points became ${countEn(v.after)}, area changed by ${v.areaM2} m².`,
  LEVELS_THINNED: (v: Thinning) =>
    `Of ${countEn(v.count)} levels, ${countEn(v.after)} were kept: the surface through them differs from each level left out by at most ${v.errorMm} mm; greatest difference found ${v.mostMm} mm.`,
  FACES_TO_POINTS: (v: Count & { readonly surface: string }) =>
    `${someEn(v.count, 'triangle', 'triangles')} of the surface "${v.surface}" gave their corner points; triangles are made anew between them.`,
  FEATURES_CUT: (v: Count) => `The file stops in the middle; ${someEn(v.count, 'entry', 'entries')} before that ${was(v)} read.`,
} as const;

export type Mends = typeof MENDS_EN;
