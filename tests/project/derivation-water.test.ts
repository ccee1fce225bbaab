/** Derivations of outlets and overflows, worked by hand: which zone sends what, and what rain makes of it. */

import { describe, expect, it } from 'vitest';
import type { DerivationAsk, Term } from '../../src/model/derivation.ts';
import { derive } from '../../src/project/derivation.ts';
import { bay, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const soil = (id: string, peak: number) => ({
  id,
  name: id,
  runoff: { peak, annual: 0.5 },
  layers: [{ material: 'soil', thicknessMm: 100 }],
});
const flat = rect(0, 0, 8, 5);
/** 8 m × 5 m falling 2 % to x = 0; the left half runs off by 0.4, the right by 0.8; outlet and overflow at the low edge. */
const project = read(
  sceneOf({
    deck: {
      outline: flat,
      bays: [bay('A1', flat)],
      levels: {
        spots: [
          [0, 0, 0],
          [0, 5, 0],
          [8, 0, 0.16],
          [8, 5, 0.16],
        ],
      },
      outlets: [
        { id: 'O1', kind: 'outlet', at: [0.125, 2.375], lps: 2 },
        { id: 'N1', kind: 'overflow', at: [0.125, 1.125], invertM: 0.05, lps: 1 },
        { id: 'N2', kind: 'overflow', at: [0.125, 4.125] },
      ],
    },
    buildups: [soil('half', 0.4), soil('most', 0.8)],
    zones: [zone('L', rect(0, 0, 4, 5), 'half'), zone('R', rect(4, 0, 8, 5), 'most')],
    rain: { designLpsHa: 300, extremeLpsHa: 500, source: 'made up' },
  }),
);
const ask = (kind: Extract<DerivationAsk, { outlet: string }>['kind'], outlet: string) => derive(project, { kind, outlet });
const below = (term: Term | null) => (term && 'terms' in term.how ? term.how.terms : []);

describe('an outlet that takes all', () => {
  it('its catchment is both halves', () => {
    const term = ask('catchment', 'O1');
    expect(term?.value).toBeCloseTo(40, 9);
    expect(below(term).map(({ of, value }) => [of, Math.round(value * 1e6) / 1e6])).toEqual([
      ['L', 20],
      ['R', 20],
    ]);
  });

  it('its flow: 300 l/(s·ha) on 20 · 0.4 + 20 · 0.8 = 24 m² are 0.72 l/s, 36 % of 2 l/s', () => {
    const flow = ask('design flow', 'O1');
    expect(flow?.value).toBeCloseTo(0.72, 9);
    expect(JSON.stringify(flow)).toContain('the build-up in the scene file');
    expect(JSON.stringify(flow)).toContain('made up');
    expect(ask('outlet use', 'O1')?.value).toBeCloseTo(0.36, 9);
  });
});

describe('an overflow with the outlet closed', () => {
  it('its duty: 500 on 40 m² less 300 on 24 m² are 2 - 0.72 = 1.28 l/s, 128 % of 1 l/s', () => {
    expect(ask('overflow area', 'N1')?.value).toBeCloseTo(40, 9);
    const duty = ask('overflow duty', 'N1');
    expect(duty?.value).toBeCloseTo(1.28, 9);
    expect(below(duty).map(({ value }) => Math.round(value * 1e6) / 1e6)).toEqual([2, 0.72]);
    expect(ask('overflow use', 'N1')?.value).toBeCloseTo(1.28, 9);
  });

  it('nothing of one without a level, nor of what there is not', () => {
    expect(ask('overflow area', 'N2')).toBeNull();
    expect(ask('overflow duty', 'O1')).toBeNull();
    expect(ask('catchment', 'none')).toBeNull();
  });
});

it('no flow without rain, but the area', () => {
  const { rain: _, ...dry } = project.scene;
  const other = read(dry);
  expect(derive(other, { kind: 'catchment', outlet: 'O1' })?.value).toBeCloseTo(40, 9);
  expect(derive(other, { kind: 'design flow', outlet: 'O1' })).toBeNull();
});
