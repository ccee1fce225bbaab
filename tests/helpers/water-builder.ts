/** Small decks with outlets for the tests of water: walls all round, 8 m × 4 m in cells of 0.25 m unless said otherwise. */

import { evaluate } from '../../src/core/evaluate.ts';
import type { Evaluation } from '../../src/core/evaluation.ts';
import { type RoutedWater, waterCourse } from '../../src/core/water-course.ts';
import type { DeckInput, LevelNet } from '../../src/model/deck-input.ts';
import type { WaterOutlet, WaterSite } from '../../src/model/water-input.ts';
import { bay, box, deck } from './deck-builder.ts';

/** A net of lines along y, each at one level: what lies between is even. */
export function levelLines(y0: number, y1: number, ...lines: readonly (readonly [number, number])[]): LevelNet {
  return { spots: new Float64Array(), breaklines: lines.map(([x, z]) => Float64Array.of(x, y0, z, x, y1, z)) };
}

/** A trough along y through x = 4, 10 % to both sides. */
export const TROUGH = levelLines(0, 4, [0, 0.4], [4, 0], [8, 0.4]);

/** Two troughs, at x = 2 and x = 6, 10 % to all sides. */
export const TWO_TROUGHS = levelLines(0, 4, [0, 0.2], [2, 0], [4, 0.2], [6, 0], [8, 0.2]);

export function wetDeck(levels: LevelNet | null, over: Partial<DeckInput> = {}): Evaluation {
  return evaluate(deck({ cellM: 0.25, deck: box(0, 0, 8, 4), levels, bays: [bay('B', box(0, 0, 8, 4))], ...over }));
}

export function outlet(id: string, x: number, y: number): WaterOutlet {
  return { id, kind: 'outlet', x, y, lps: 4.5, invertM: null };
}

export function overflow(id: string, x: number, y: number, invertM: number | null): WaterOutlet {
  return { id, kind: 'overflow', x, y, lps: 10, invertM };
}

export function routed(on: Evaluation, outlets: readonly WaterOutlet[], over: Partial<WaterSite> = {}): RoutedWater {
  return waterCourse(on, { outlets, spills: [], zones: [], bareC: 1, ...over });
}
