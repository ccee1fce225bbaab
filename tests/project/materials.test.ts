/** Materials of catalogue and scene together. */

import { expect, it } from 'vitest';
import { KNOWN_IDS, materialLookup } from '../../src/project/materials.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

const OWN = { id: 'foam-glass', name: 'Own foam glass', role: 'light fill', density: { dry: 100, saturated: 200 } } as const;

it('takes the catalogue’s entry, with where its weight comes from', () => {
  const material = materialLookup(sceneOf())('foam-glass');
  expect(material.density?.dry).toBeGreaterThan(0);
  expect(material.fromScene).toBe(false);
  expect(material.sourceText).toMatch(/\(.+\)/);
});

it('takes the scene’s own entry instead, whole', () => {
  const material = materialLookup(sceneOf({ materials: [OWN] }))('foam-glass');
  expect(material.density).toEqual({ dry: 100, saturated: 200 });
  expect(material.compactionFactor).toBeUndefined();
  expect([material.fromScene, material.sourceText]).toEqual([true, 'scene file, no source given']);
  expect(materialLookup(sceneOf({ materials: [{ ...OWN, source: 'data sheet' }] }))('foam-glass').sourceText).toBe('data sheet');
});

it('refuses an id that nothing knows', () => {
  expect(() => materialLookup(sceneOf())('nonsense')).toThrow(RangeError);
  expect(KNOWN_IDS.materials.has('nonsense')).toBe(false);
  expect(KNOWN_IDS.vehicles.has('fire-16t')).toBe(true);
});
