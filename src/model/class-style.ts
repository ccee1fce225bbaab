/** Colours and hatches of maps whose values are named classes: no two classes differ by colour alone. */

import type { CellMap, ReachClass } from './maps.ts';
import { REACH_CLASSES } from './maps.ts';

export const CLASS_HATCHES = ['none', 'rising', 'falling', 'crossed'] as const;
export type ClassHatch = (typeof CLASS_HATCHES)[number];

export interface NamedStyle {
  readonly fill: string;
  /** Colour of the hatch. */
  readonly line: string;
  readonly hatch: ClassHatch;
}

const INK_LINE = '#1E2A2E';

const REACH_STYLE: Readonly<Record<ReachClass, NamedStyle>> = {
  driven: { fill: '#A9C492', line: INK_LINE, hatch: 'none' },
  lifted: { fill: '#A8C4D4', line: INK_LINE, hatch: 'falling' },
  unreached: { fill: '#D9744A', line: INK_LINE, hatch: 'crossed' },
  idle: { fill: '#EDE8DC', line: INK_LINE, hatch: 'none' },
};

const lighter = (fill: string): NamedStyle => ({ fill, line: INK_LINE, hatch: 'falling' });
const heavier = (fill: string): NamedStyle => ({ fill, line: INK_LINE, hatch: 'rising' });
const PLAIN: NamedStyle = { fill: '#F5F1E8', line: INK_LINE, hatch: 'none' };

/**
 * In the order of `DIFFERENCE_CLASSES`. Steps of interpolateRdBu of d3-scale-chromatic 3.1.1, t = 0.95, 0.85, 0.75, 0.62 to the
 * blue side and 0.38, 0.25, 0.15, 0.05 to the red: written out, as this folder imports no package. Which way it goes is told by the hatch too.
 */
export const DIFFERENCE_STYLES: readonly NamedStyle[] = [
  lighter('#134B85'),
  lighter('#337CB7'),
  lighter('#6BACD0'),
  lighter('#C2DDEB'),
  PLAIN,
  heavier('#FACEB7'),
  heavier('#E48268'),
  heavier('#C33D3D'),
  heavier('#8C0D25'),
];

/** Apart in hue and in lightness, so that any two are told apart in grey too; not in the order of lightness, for they have none. */
const CYCLE = ['#9CC0CF', '#F3E6AE', '#8B5F8C', '#7C9A5E'] as const;

/**
 * Styles of all classes of a map, in the order of its names. Colours come round after four, then with the next hatch:
 * sixteen classes look different, and beyond that their labels tell them apart.
 * @param map - kind and names
 * @returns one style per class
 */
export function namedStyles({ kind, names }: Pick<CellMap, 'kind' | 'names'>): readonly NamedStyle[] {
  if (kind === 'difference') return DIFFERENCE_STYLES;
  if (kind === 'reach') return REACH_CLASSES.map((id) => REACH_STYLE[id]);
  return (names ?? []).map((_, i) => ({
    fill: CYCLE[i % CYCLE.length] as string,
    line: INK_LINE,
    hatch: CLASS_HATCHES[Math.floor(i / CYCLE.length) % CLASS_HATCHES.length] as ClassHatch,
  }));
}
