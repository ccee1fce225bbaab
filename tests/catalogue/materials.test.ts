import { describe, expect, it } from 'vitest';
import { materialById } from '../../src/catalogue/catalogue.ts';
import { MATERIALS } from '../../src/catalogue/materials.ts';
import type { CatalogueMaterial, MaterialNumber } from '../../src/model/catalogue.ts';
import { ROLES } from '../../src/model/roles.ts';

// Typed as a record so that a number added to the model cannot be forgotten here.
const NUMBERS: Record<MaterialNumber, true> = {
  density: true,
  areal: true,
  thicknessMm: true,
  voidLm2: true,
  retentionLm2: true,
  waterCapacityPercent: true,
  compactionFactor: true,
  lapPercent: true,
  bearingKPa: true,
  dispersal: true,
  flowLsm: true,
  porePercent: true,
  permeabilityMs: true,
  uplift: true,
  delivery: true,
};
const NUMBER_NAMES = Object.keys(NUMBERS) as MaterialNumber[];

function material(id: string): CatalogueMaterial {
  const found = materialById.get(id);
  if (!found) throw new Error(`no material ${id}`);
  return found;
}

function weight(of: CatalogueMaterial): { readonly dry: number; readonly saturated: number } {
  const found = of.density ?? of.areal;
  if (!found) throw new Error(`${of.id} has no weight`);
  return found;
}

describe('MATERIALS as a list', () => {
  it('has each id once, in lower case with dashes', () => {
    const ids = MATERIALS.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('has each name once', () => {
    const names = MATERIALS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it.each(ROLES)('serves the role %s', (role) => {
    expect(MATERIALS.some((entry) => entry.role === role)).toBe(true);
  });

  it('runs through the roles in stacking order', () => {
    const order = MATERIALS.map(({ role }) => ROLES.indexOf(role));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  // Ids used in the example of the contract, section 1.
  it.each([
    ['fleece-500', 'protection'],
    ['drain-60', 'drainage element'],
    ['lava-8-16', 'drainage fill'],
    ['foam-glass', 'light fill'],
    ['substrate-lawn', 'substrate'],
  ])('knows %s as %s', (id, role) => {
    expect(material(id).role).toBe(role);
  });
});

describe.each(MATERIALS.map((entry) => [entry.id, entry] as const))('%s', (_id, entry) => {
  it('has a source for every number, and none for a number it lacks', () => {
    const present = NUMBER_NAMES.filter((name) => entry[name] !== undefined);
    expect(Object.keys(entry.sources).sort()).toEqual([...present].sort());
  });

  it('has either a density or an areal weight, and a thickness with the latter', () => {
    expect((entry.density === undefined) !== (entry.areal === undefined)).toBe(true);
    if (entry.areal) expect(entry.thicknessMm).toBeGreaterThan(0);
  });

  it('is not lighter saturated than dry', () => {
    const { dry, saturated } = weight(entry);
    expect(dry).toBeGreaterThan(0);
    expect(saturated).toBeGreaterThanOrEqual(dry);
  });

  it('holds no more water than its saturated weight counts (1 kg per litre)', () => {
    const heldPercent = entry.waterCapacityPercent ?? 0;
    const { dry, saturated } = weight(entry);
    // density: percent of 1000 l/m³; areal: percent of the thickness (1 mm = 1 l/m²)
    const heldL = entry.density ? heldPercent * 10 : ((entry.thicknessMm ?? 0) * heldPercent) / 100;
    expect(heldL).toBeLessThanOrEqual(saturated - dry + 1e-9);
  });

  it('takes up no more water, and has no more void, than its thickness has room for (1 l/m² per mm)', () => {
    if (!entry.areal || entry.thicknessMm === undefined) return;
    expect(entry.areal.saturated - entry.areal.dry).toBeLessThanOrEqual(entry.thicknessMm);
    expect(entry.voidLm2 ?? 0).toBeLessThanOrEqual(entry.thicknessMm);
    expect(entry.retentionLm2 ?? 0).toBeLessThanOrEqual(entry.voidLm2 ?? 0);
  });

  it('compacts, laps, spreads and bears within what is possible', () => {
    expect(entry.compactionFactor ?? 1).toBeGreaterThanOrEqual(1);
    expect(entry.lapPercent ?? 0).toBeGreaterThanOrEqual(0);
    expect([0, 0.5, 1]).toContain(entry.dispersal);
    if (entry.bearingKPa !== undefined) expect(entry.bearingKPa).toBeGreaterThan(0);
  });
});

describe('what each role needs', () => {
  const bulk = MATERIALS.filter(({ compactionFactor }) => compactionFactor !== undefined);

  it('bulk materials have a delivery with volume and weight', () => {
    expect(bulk.length).toBeGreaterThan(10);
    expect(bulk.filter(({ delivery }) => !delivery?.m3 || !delivery.kg).map(({ id }) => id)).toEqual([]);
  });

  // Contract, section 1: `density` for granular and slabs, `areal` for sheets and elements.
  it.each(['root barrier', 'protection', 'slip', 'separation', 'filter'] as const)(
    '%s: sheets by area, with laps and no dispersal',
    (role) => {
      const wrong = MATERIALS.filter((entry) => entry.role === role).filter(
        ({ areal, lapPercent, dispersal }) => !areal || lapPercent === undefined || dispersal !== 0,
      );
      expect(wrong.map(({ id }) => id)).toEqual([]);
    },
  );

  // Contract, section 2: dispersal 0.5 for granular layers.
  it.each(['drainage fill', 'base course', 'substrate'] as const)('%s: granular, dispersal 0.5', (role) => {
    const wrong = MATERIALS.filter((entry) => entry.role === role).filter(({ density, dispersal }) => !density || dispersal !== 0.5);
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  it('drainage elements weigh the same dry and saturated: retention is counted where laid for it', () => {
    const elements = MATERIALS.filter(({ role }) => role === 'drainage element');
    expect(elements.map(({ thicknessMm }) => thicknessMm)).toEqual([25, 40, 60]);
    for (const { areal, voidLm2, retentionLm2, flowLsm } of elements) {
      expect(areal?.saturated).toBe(areal?.dry);
      expect(voidLm2).toBeGreaterThan(0);
      expect(retentionLm2).toBeGreaterThan(0);
      expect(flowLsm).toBeGreaterThan(0);
    }
  });

  it('substrates: saturated − dry is the water at the stated capacity', () => {
    for (const { density, waterCapacityPercent } of MATERIALS.filter(({ role }) => role === 'substrate')) {
      expect((density?.saturated ?? 0) - (density?.dry ?? 0)).toBe((waterCapacityPercent ?? 0) * 10);
    }
  });

  // g/m² are in the id: fleece-500 is 0.5 kg/m².
  it.each(MATERIALS.filter(({ id }) => /^(fleece|separation|filter)-\d+$/.test(id)).map(({ id, areal }) => [id, areal?.dry] as const))(
    '%s weighs what its id says',
    (id, dry) => {
      expect(dry).toBeCloseTo(Number(id.split('-')[1]) / 1000, 12);
    },
  );

  it('mixed surfacings weigh what their parts weigh', () => {
    const lawn = weight(material('substrate-lawn'));
    const concrete = weight(material('slab-80'));
    // grid: 6 kg/m² plastic + 0.045 m³/m² substrate; paver: 60 % concrete + 40 % substrate
    expect(weight(material('grass-grid-50')).dry).toBeCloseTo(6 + 0.045 * lawn.dry, 9);
    expect(weight(material('grass-grid-50')).saturated).toBeCloseTo(6 + 0.045 * lawn.saturated, 9);
    expect(weight(material('grass-paver-80')).dry).toBeCloseTo(0.6 * concrete.dry + 0.4 * lawn.dry, 9);
    expect(weight(material('grass-paver-80')).saturated).toBeCloseTo(0.6 * concrete.saturated + 0.4 * lawn.saturated, 9);
  });
});
