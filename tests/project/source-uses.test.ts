/** Which sources a scene rests on: what it uses of the catalogue, what it replaces, what it brings itself. */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { sourceUses } from '../../src/project/source-uses.ts';

const SCENE = {
  materials: [{ id: 'own-soil', name: 'Own soil', role: 'substrate', source: 'data sheet 7' }],
  limits: { upstandMm: 120, source: 'agreed with the client' },
  deck: { bays: [{ id: 'A', vehicles: ['fire-16t'] }] },
  buildups: [
    { id: 'lawn', vegetation: { form: 'lawn', kNm2: 0.05 }, layers: [{ material: 'fleece-500' }, { material: 'own-soil' }] },
    { id: 'meadow', vegetation: { form: 'lawn', kNm2: 0.2 }, layers: [{ material: 'fleece-500' }] },
  ],
  stages: [{ id: 'S1', stockpiles: [{ material: 'own-soil' }] }],
} as unknown as SceneFile;

const USES = sourceUses(SCENE);
const usedIn = (entry: string, number: string) => USES.find((one) => one.entry === entry && one.number === number)?.usedIn;

describe('what the catalogue gives', () => {
  it('is used by the build-ups, bays and stages that name it', () => {
    expect(usedIn('fleece-500', 'areal')).toEqual(['lawn', 'meadow']);
    expect(USES.filter(({ entry, usedIn: users }) => entry === 'fire-16t' && users.includes('A')).length).toBeGreaterThan(0);
    expect(usedIn('lava-8-16', 'density')).toEqual([]);
  });

  it('gives the weight of plants only where the scene took it over', () => {
    // The table has 5 kg/m², 0.049 kN/m²; the meadow's 0.2 is the scene's own.
    expect(usedIn('lawn', 'kNm2')).toEqual(['lawn']);
  });

  it('gives a rule value by its rule, unless the scene replaces it', () => {
    expect(usedIn('all decks', 'sillMm')).toEqual(['edge.upstand']);
    expect(usedIn('lawn', 'substrateMm')).toEqual(['lawn', 'meadow']);
    const upstands = USES.filter(({ number }) => number === 'upstandMm').map(({ source, usedIn: users }) => [source.grade, users]);
    expect(upstands).toEqual([
      ['secondary', []],
      ['entered', ['edge.upstand']],
    ]);
  });
});

it('rows of the run-off table that a scene with rain can fall into, and its own rain and factors', () => {
  const scene = {
    ...SCENE,
    rain: { designLpsHa: 300, extremeLpsHa: 500, source: 'rain data' },
    flotation: { upFactor: 1.1, source: 'annex' },
  };
  const uses = sourceUses(scene as unknown as SceneFile);
  const of = (entry: string, name: string) => uses.find((one) => one.entry === entry && one.number === name)?.usedIn;
  const din = 'run-off, DIN 1986-100:2016-12, Table 9, Cs';
  expect(of(din, 'intensive planting from 30 cm at up to 5°')).toEqual(['water.outlet']);
  // No paving in the scene, another table not chosen, no rain of a year
  expect(of(din, 'paving or slabs with open joints')).toEqual([]);
  expect(of('run-off, FLL green-roof guideline by depth', 'planting over 50 cm at up to 5°')).toEqual([]);
  expect(of('run-off of a year', 'planting over 50 cm')).toEqual([]);
  const factors = uses.filter(({ number }) => number === 'upFactor').map(({ source, usedIn: users }) => [source.document, users]);
  expect(factors.slice(-1)).toEqual([['annex', ['float.uplift']]]);
  expect(factors[0][1]).toEqual([]);
  expect(uses.find(({ entry }) => entry === 'rain')?.source.document).toBe('rain data');
  expect(usedIn(din, 'intensive planting from 30 cm at up to 5°')).toEqual([]);
});

it('what the scene brings has the source it names', () => {
  const own = USES.find(({ entry }) => entry === 'own-soil');
  expect(own).toMatchObject({ name: 'Own soil', source: { document: 'data sheet 7', grade: 'entered' }, usedIn: ['lawn', 'S1'] });
});

it('without a scene nothing is used', () => {
  const all = sourceUses(null);
  expect(all.length).toBeGreaterThan(50);
  expect(all.every(({ usedIn: users }) => users.length === 0)).toBe(true);
});
