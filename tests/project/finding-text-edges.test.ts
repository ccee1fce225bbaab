/** Words of edges, strips and falls, and the report of edges. */

import { describe, expect, it } from 'vitest';
import type { FindingFact } from '../../src/model/finding.ts';
import type { SceneEdge } from '../../src/model/scene-file.ts';
import { wordFinding } from '../../src/project/finding-text.ts';
import { deckRims } from '../../src/project/resolve-edges.ts';
import { buildUp, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SCENE = sceneOf();

function say(over: Partial<FindingFact>): string {
  const fact: FindingFact = {
    rule: 'edge.upstand',
    severity: 'stop',
    where: { zone: 'Z1', at: [1, 2] },
    value: 20,
    limit: 50,
    unit: 'mm',
    facts: {},
    ...over,
  };
  const { says, source } = wordFinding({ ...fact, facts: { source: 'a guideline (read)', ...fact.facts } }, SCENE);
  expect(says).not.toMatch(/undefined|NaN|Infinity/);
  expect(source).toBe('a guideline (read)');
  return says;
}

describe('edge.upstand', () => {
  const sill = { edge: 'S', kind: 'threshold', drained: 1, missingMm: 30 };

  it('says height, zone, what is needed and what is missing', () => {
    expect(say({ facts: sill })).toMatch(
      /^Sill S: the membrane ends 20 mm above the finish of zone Z1, at least 50 mm are needed, 30 mm are missing\./,
    );
  });

  it('speaks of the special construction at drained sills only', () => {
    expect(say({ facts: sill })).toContain('special construction');
    expect(say({ facts: { ...sill, drained: 0 } })).toContain('drained channel');
    expect(say({ facts: { ...sill, drained: 0 } })).not.toContain('special construction');
    expect(say({ facts: { ...sill, kind: 'upstand' } })).toMatch(/^Upstand S.*carried higher\.$/);
  });

  it('rounds to the unsafe side: 49.6 of 50 mm are 49, and 1 is missing', () => {
    expect(say({ value: 49.6, facts: { ...sill, missingMm: 0.4 } })).toContain(
      'ends 49 mm above the finish of zone Z1, at least 50 mm are needed, 1 mm are missing',
    );
  });

  it('says when the finish lies above the membrane', () => {
    expect(say({ value: -12.5, facts: { ...sill, missingMm: 62.5 } })).toContain(
      'the finish of zone Z1 lies 13 mm above the end of the membrane',
    );
  });
});

describe('edge.strip', () => {
  const near = (value: number, kind: string) =>
    say({ rule: 'edge.strip', severity: 'check', value, limit: 0.3, unit: 'm', facts: { kind, edge: 'O1' } });

  it('says how near, to what, and what to lay', () => {
    expect(near(0.25, 'upstand')).toMatch(/comes within 0\.25 m of upstand O1; 0\.30 m without plants.*along it\.$/);
    expect(near(0, 'outlet')).toMatch(/reaches outlet O1;.*round it\.$/);
  });

  it('never rounds a strip that is too narrow up to its limit', () => {
    expect(near(0.299, 'overflow')).toContain('within 0.29 m');
  });
});

describe('level.fall', () => {
  const flat = { areaM2: 28, largestM2: 20, places: 2, mostPercent: 1, surface: 'membrane' };
  const fall = (over: Partial<FindingFact>) =>
    say({ rule: 'level.fall', severity: 'check', value: 0.5, limit: 1.5, unit: '%', facts: flat, ...over });

  it('says between what, on how much, and the largest place', () => {
    expect(fall({})).toContain('The membrane falls 0.50 to 1.00 % on 28.00 m² in 2 places, the largest 20.00 m²');
    expect(fall({ value: 1, facts: { ...flat, places: 1 } })).toContain('falls 1.00 % on 28.00 m², less than 1.50 %');
  });

  it('has other words for a note and for paving', () => {
    expect(fall({ severity: 'note', limit: 2 })).toContain('recommended');
    expect(fall({ facts: { ...flat, surface: 'paving' } })).toMatch(/finish of paving.*zone Z1/);
  });
});

describe('level.fall in German', () => {
  it('names the zone beside the largest place, and closes what is put in between', () => {
    const facts = { areaM2: 28, largestM2: 20, places: 2, mostPercent: 1, surface: 'paving', source: 'a guideline (read)' };
    const fact: FindingFact = { rule: 'level.fall', severity: 'note', where: { zone: 'Z1' }, value: 0.5, limit: 1.5, unit: '%', facts };
    const said = (over: object) => wordFinding({ ...fact, facts: { ...facts, ...over } }, SCENE, 'de').says;
    expect(said({})).toContain('auf 28,00 m² an 2 Stellen, die größte 20,00 m² (Zone Z1), nur 0,50 bis 1,00 % Gefälle, weniger als 1,50 %');
    expect(said({ places: 1 })).toContain('auf 28,00 m² (Zone Z1) nur 0,50 bis 1,00 % Gefälle');
    expect(said({ surface: 'membrane' })).toContain('an 2 Stellen, die größte 20,00 m², nur');
  });
});

describe('report of edges', () => {
  const outline = rect(100, 200, 104, 203);
  const soil = buildUp('soil-100', [{ material: 'soil', thicknessMm: 100 }]);
  const of = (edges?: SceneEdge[]) =>
    read(
      sceneOf({
        deck: { outline, ...(edges ? { edges } : {}) },
        buildups: [soil],
        zones: [zone('Z1', rect(100, 201, 104, 203), 'soil-100')],
      }),
    ).report.edges;

  it('gives places in the coordinates of the file, and null where nothing adjoins', () => {
    const north: SceneEdge = {
      id: 'N',
      line: [
        [100, 203],
        [104, 203],
      ],
      kind: 'upstand',
      membraneTopM: 0.4,
    };
    const south: SceneEdge = {
      id: 'S',
      line: [
        [100, 200],
        [104, 200],
      ],
      kind: 'threshold',
      membraneTopM: 0.4,
      drainedChannel: true,
    };
    expect(of([north, south])).toEqual([
      // 0.4 − 0.1
      { id: 'N', leastUpstandMm: expect.closeTo(300, 9), at: [expect.closeTo(102, 9), 203], zone: 'Z1', requiredMm: 150 },
      { id: 'S', leastUpstandMm: null, at: null, zone: null, requiredMm: 50 },
    ]);
  });

  it('is left out where the scene draws no edges', () => {
    expect(of()).toBeUndefined();
  });
});

it('edges and outlets come in local coordinates', () => {
  const scene = sceneOf({
    deck: {
      edges: [
        {
          id: 'E',
          line: [
            [1, 1],
            [1, 1],
            [3, 1],
          ],
          kind: 'upstand',
          membraneTopM: 0.5,
        },
      ],
      outlets: [{ id: 'O', at: [2, 2], kind: 'overflow', invertM: 0.1 }],
    },
  });
  expect(deckRims(scene, [1, 0])).toEqual({
    edges: [{ id: 'E', kind: 'upstand', drainedChannel: false, line: Float64Array.of(0, 1, 2, 1), membraneTopM: 0.5 }],
    outlets: [{ id: 'O', kind: 'overflow', x: 1, y: 2 }],
  });
});
