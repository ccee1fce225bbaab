/** The sentence of each change made while reading, and of each thing worth knowing. They are kept in the scene's history. */

import type { FactValue } from '../model/drawing.ts';

type Values = Readonly<Record<string, FactValue>>;

const some = (count: FactValue, one: string, more: string) => `${count} ${Number(count) === 1 ? one : more}`;

/** Every code with its words. */
export const MEND_TEXT = {
  TEXT_DECODED: (v: Values) => `Text was read as ${v.encoding}.`,
  TEXT_UNBROKEN: (v: Values) => `Letters that had been read with the wrong character set were put right: "${v.before}" is "${v.after}".`,
  LINE_ENDS: () => 'Line ends of several kinds were read alike.',
  TEXT_KEPT: (v: Values) =>
    `${some(v.count, 'text looks', 'texts look')} like a formula or markup and ${Number(v.count) === 1 ? 'is' : 'are'} kept as plain text: "${v.sample}".`,
  TEXT_SHORTENED: (v: Values) => `${some(v.count, 'text was', 'texts were')} shortened to ${v.most} characters.`,
  NUMBER_MARKS: (v: Values) =>
    `${some(v.count, 'number was', 'numbers were')} read in spite of unusual minus signs, blanks or apostrophes, for example "${v.sample}".`,
  HEADER_REPEATED: (v: Values) =>
    `The heading stands inside the table again (${some(v.count, 'time', 'times')}); those rows were left out.`,
  TABLE_READ: (v: Values) => `The table was read with ${v.separator} between columns and a decimal ${v.mark}.`,
  UNIT_CHANGED: (v: Values) => `Lengths were changed from ${v.unit} to metres: ${v.size} in the file became ${v.sizeM} m.`,
  DEGREES_CHANGED: (v: Values) => `Longitude and latitude were changed to metres east and north of ${v.latitude}° ${v.longitude}°.`,
  AXES_CHANGED: (v: Values) => `Axes were changed: ${v.how}.`,
  NORTH_EAST: () => 'The file gives north before east; the two were exchanged.',
  LEVELS_CHANGED: (v: Values) => `Levels were changed from ${v.unit} to metres: ${v.from} in the file became ${v.to} m.`,
  LEVELS_DROPPED: (v: Values) => `${some(v.count, 'level', 'levels')} of 0 ${Number(v.count) === 1 ? 'was' : 'were'} not taken for levels.`,
  LEVELS_SPLIT: (v: Values) => `Of two groups of levels, the ${v.kept} was kept; ${some(v.count, 'level', 'levels')} left out.`,
  LEVELS_DOUBLE: (v: Values) =>
    `${some(v.count, 'place has', 'places have')} more than one level; the ${v.kept} was kept. Greatest difference ${v.mostM} m, near ${v.at}.`,
  STRAY_DROPPED: (v: Values) =>
    `${some(v.count, 'point', 'points')} ${v.farM} m from the rest ${Number(v.count) === 1 ? 'was' : 'were'} left out.`,
  FAR_FROM_ORIGIN: (v: Values) =>
    `Coordinates lie near ${v.x}, ${v.y} m. The calculation works from a place nearby and gives the file's coordinates back.`,
  RINGS_CLOSED: (v: Values) =>
    `${some(v.count, 'outline was', 'outlines were')} not closed (gap up to ${v.gapMm} mm) and ${Number(v.count) === 1 ? 'was' : 'were'} closed.`,
  LINES_CHAINED: (v: Values) =>
    `${some(v.count, 'line', 'lines')} with ends at most ${v.toleranceMm} mm apart were joined to ${v.rings} closed and ${v.open} open; greatest gap ${v.gapMm} mm.`,
  POINTS_REPEATED: (v: Values) =>
    `${some(v.count, 'point', 'points')} on top of the one before ${Number(v.count) === 1 ? 'was' : 'were'} removed.`,
  SHAPES_REPEATED: (v: Values) =>
    `${some(v.count, 'shape', 'shapes')} drawn twice at the same place ${Number(v.count) === 1 ? 'was' : 'were'} taken once.`,
  CURVES_TO_CHORDS: (v: Values) =>
    `${some(v.count, 'curve was', 'curves were')} laid into straight chords at most ${v.errorMm} mm from ${Number(v.count) === 1 ? 'it' : 'them'}.`,
  SIMPLIFIED: (v: Values) =>
    `${some(v.count, 'line was', 'lines were')} simplified by at most ${v.errorMm} mm: ${v.before} points became ${v.after}, area changed by ${v.areaM2} m².`,
  FACES_TO_POINTS: (v: Values) =>
    `${some(v.count, 'triangle', 'triangles')} of the surface "${v.surface}" gave their corner points; triangles are made anew between them.`,
  FEATURES_CUT: (v: Values) =>
    `The file stops in the middle; ${some(v.count, 'entry', 'entries')} before that ${Number(v.count) === 1 ? 'was' : 'were'} read.`,
} as const satisfies Record<string, (values: Values) => string>;

export type MendCode = keyof typeof MEND_TEXT;
