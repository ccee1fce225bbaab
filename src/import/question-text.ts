/** What is asked where a file can be read in more than one way. */

import type { FactValue } from '../model/drawing.ts';

type Values = Readonly<Record<string, FactValue>>;

/** Every question by its code. */
export const QUESTION_TEXT = {
  ENCODING: (v: Values) => `Text looks read with the wrong character set, for example "${v.sample}". Which one was meant?`,
  UNIT: (v: Values) => `The drawing measures ${v.size} in its own units (${v.said}). Which unit was meant?`,
  UNIT_DOUBTED: (v: Values) => `The file says ${v.said}, that is ${v.sizeSaid} m. The size fits ${v.guess} better. Which?`,
  UNIT_DEGREES: (v: Values) => `Values look like longitude and latitude (${v.sample}). Change them to local metres?`,
  AXES: () => 'How do the numbers of the file lie on the plan?',
  AXES_DOUBTED: (v: Values) => `${v.why} How do the numbers of the file lie on the plan?`,
  STRAY: (v: Values) =>
    `${Number(v.count) === 1 ? 'One point is' : `${v.count} points are`} ${v.farM} m from the rest, near ${v.at}. Leave out?`,
  LEVEL_UNIT: (v: Values) => `Levels range from ${v.from} to ${v.to}. In which unit?`,
  LEVELS_ZERO: (v: Values) =>
    `${Number(v.count) === 1 ? 'The only level is' : `All ${v.count} levels are`} 0. Is that the level, or is there none?`,
  LEVEL_GROUPS: (v: Values) => `Levels fall into two groups, ${v.low} and ${v.high} m. Which height system?`,
  LEVELS_DOUBLE: (v: Values) =>
    `${Number(v.count) === 1 ? '1 place has' : `${v.count} places have`} two levels that differ by up to ${v.mostM} m, for example at ${v.at}. Which counts?`,
  DECIMAL: (v: Values) => `"${v.sample}": ${v.large}, or ${v.small}? The answer counts for the whole file.`,
  SEPARATOR: (v: Values) => `Which mark stands between the columns of "${v.sample}"?`,
  COLUMNS: (v: Values) => `Which column is what? First row: ${v.sample}`,
  DATES: (v: Values) => `Row ${v.row} holds a date (${v.sample}). ${v.number} meant?`,
  TRUNCATED: (v: Values) => `The file stops in the middle; ${v.count} entries before that can be read. Use them?`,
  SIMPLIFY: (v: Values) =>
    `${v.count === 1 ? 'One line has' : `${v.count} lines have`} up to ${v.most} points. Simplify by at most ${v.errorMm} mm (${v.after} points, area changes by ${v.areaM2} m²)?`,
} as const satisfies Record<string, (values: Values) => string>;

export type QuestionCode = keyof typeof QUESTION_TEXT;
