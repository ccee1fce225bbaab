/** The strip without plants, by true distance. */

import { describe, expect, it } from 'vitest';
import { surfaceFacts } from '../../../src/core/edge-facts.ts';
import { evaluate } from '../../../src/core/evaluate.ts';
import { isPlanted } from '../../../src/core/rules/strips.ts';
import type { DeckInput } from '../../../src/model/deck-input.ts';
import type { DeckRims, OutletInput } from '../../../src/model/edge-input.ts';
import { box, buildUp, deck, layer, region, zone } from '../../helpers/deck-builder.ts';
import { EDGE_LIMITS, edge, rims } from './rims.ts';

const PLANTED = buildUp('planted', [layer('substrate', 0.1)]);
const GRAVEL = buildUp('gravel', [layer('surfacing', 0.1)]);
const outlet = (x: number, y: number): OutletInput => ({ id: 'O', kind: 'outlet', x, y });
/** High enough for every finish here. */
const HIGH = { membraneTopM: 5 };

function strips(zones: DeckInput['zones'], on: DeckRims, cellM = 1) {
  return surfaceFacts(evaluate(deck({ zones, cellM, originM: [100, 200] })), on, EDGE_LIMITS).filter((fact) => fact.rule === 'edge.strip');
}

describe('edge.strip', () => {
  const south = edge('E', [0, 0, 4, 0], HIGH);

  it('0.30 m is enough, 0.29 m is not', () => {
    expect(strips([zone('Z', box(0, 0.3, 4, 2), PLANTED)], rims([south]))).toEqual([]);
    expect(strips([zone('Z', box(0, 0.29, 4, 2), PLANTED)], rims([south]))).toEqual([
      {
        rule: 'edge.strip',
        severity: 'check',
        where: { zone: 'Z', at: [expect.any(Number), 200.29] },
        value: expect.closeTo(0.29, 12),
        limit: 0.3,
        unit: 'm',
        facts: { kind: 'upstand', edge: 'E', source: 'strips (assumed)' },
      },
    ]);
  });

  it('does not depend on the cells', () => {
    for (const cellM of [0.05, 0.23, 0.5, 2]) {
      expect(strips([zone('Z', box(0, 0.29, 4, 2), PLANTED)], rims([south]), cellM)[0].value, `${cellM} m`).toBeCloseTo(0.29, 12);
    }
  });

  it('gravel may lie at the edge', () => {
    expect(strips([zone('Z', box(0, 0, 4, 2), GRAVEL)], rims([south], [outlet(1, 1)]))).toEqual([]);
  });

  it('round an outlet the distance to a slanted bed is that of the perpendicular', () => {
    // Bed beyond the line 2 x + 4 y = 8; from (2, 0.8): |2 · 2 + 4 · 0.8 − 8|/√(2² + 4²) = 0.8/√20 = 0.17889
    const bed = zone('Z', region([4, 0], [4, 2], [0, 2]), PLANTED);
    expect(strips([bed], rims([], [outlet(2, 0.8)]))[0].value).toBeCloseTo(0.178885438, 9);
    // 1.4/√20 = 0.31305
    expect(strips([bed], rims([], [outlet(2, 0.65)]))).toEqual([]);
  });

  it('an outlet inside the planting has no strip at all', () => {
    const [fact] = strips([zone('Z', box(0, 0, 4, 2), PLANTED)], rims([], [outlet(1, 1)]));
    expect(fact).toMatchObject({ value: 0, where: { zone: 'Z', at: [101, 201] }, facts: { kind: 'outlet', edge: 'O' } });
  });

  it('tells every zone and edge once', () => {
    const zones = [zone('A', box(0, 0, 2, 2), PLANTED), zone('B', box(2, 0, 4, 2), PLANTED)];
    const found = strips(zones, rims([south, edge('F', [0, 2, 1, 2, 1.5, 2], HIGH)]));
    expect(found.map((fact) => `${fact.facts.edge} ${fact.where.zone}`)).toEqual(['E A', 'E B', 'F A']);
  });
});

describe('planted', () => {
  it.each([
    ['substrate on top', buildUp('b', [layer('substrate', 0.1)]), true],
    ['turf on top', buildUp('b', [layer('substrate', 0.1), layer('vegetation', 0.02)]), true],
    ['sedum on drainage fill', buildUp('b', [layer('drainage fill', 0.1)], 0.1), true],
    ['slabs', buildUp('b', [layer('bedding', 0.04), layer('surfacing', 0.08)]), false],
    ['grass in a grid', buildUp('b', [layer('bedding', 0.04), layer('surfacing', 0.08)], 0.05), false],
    ['nothing', buildUp('b', []), false],
  ])('%s: %s', (_, of, planted) => {
    expect(isPlanted(of)).toBe(planted);
  });
});
