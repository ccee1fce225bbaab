/** What a result does not look at is named, so that "within" is never read as more than it is. */

import { expect, it } from 'vitest';
import { notChecked } from '../../src/project/not-checked.ts';
import { rect, sceneOf } from '../helpers/scene-builder.ts';

it('names nothing for a deck with loads and levels alone', () => {
  expect(notChecked(sceneOf())).toEqual([]);
});

it('names outlets where no rain is given; water with rain, wheels and reach are checked', () => {
  const scene = sceneOf({
    deck: { outline: rect(0, 0, 4, 3), outlets: [{ id: 'O1', at: [1, 1], kind: 'outlet', lps: 4.5 }] },
    traffic: [
      {
        id: 'F1',
        vehicle: 'fire-16t',
        route: [
          [0, 1],
          [4, 1],
        ],
      },
    ],
    stages: [
      { id: 'S1', name: 'One', place: [{ roles: ['substrate'] }] },
      {
        id: 'S2',
        name: 'Two',
        plant: [
          {
            vehicle: 'wheel-loader-2t',
            route: [
              [0, 1],
              [4, 1],
            ],
          },
        ],
      },
    ],
    accessPoints: [{ id: 'G1', at: [0, 0], kind: 'ramp' }],
  });
  expect(notChecked(scene)).toEqual(['flow to outlets, as no rain is given: O1']);
  expect(notChecked({ ...scene, rain: { designLpsHa: 300, extremeLpsHa: 500 } })).toEqual([]);
});

it('names kept variants with where they are judged', () => {
  const { buildups, zones } = sceneOf();
  const scene = sceneOf({ variants: [{ id: 'A', name: 'Lighter', scheme: { buildups, zones } }] });
  expect(notChecked(scene)).toEqual(['variants, each judged when it is compared: A']);
  expect(notChecked(scene, 'de')).toEqual(['Varianten, jede beim Vergleichen beurteilt: A']);
});

it("names access points where no stages are given: the derived order is nobody's plan", () => {
  const scene = sceneOf({ accessPoints: [{ id: 'G1', at: [0, 0], kind: 'ramp' }] });
  expect(notChecked(scene)).toEqual(['reach from access points, as no stages are given: G1']);
});
