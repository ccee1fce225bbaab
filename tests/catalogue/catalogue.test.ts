import { describe, expect, it } from 'vitest';
import { CATALOGUE_SOURCES, materialById, vehicleById } from '../../src/catalogue/catalogue.ts';
import { FIRE_TABLES } from '../../src/catalogue/fire-access.ts';
import { MATERIALS } from '../../src/catalogue/materials.ts';
import { SUBSTRATE_DEPTHS } from '../../src/catalogue/rule-limits.ts';
import { VEGETATION_FORMS } from '../../src/catalogue/vegetation.ts';
import { VEHICLES } from '../../src/catalogue/vehicles.ts';
import type { SourceGrade } from '../../src/model/source.ts';

const GRADES: Record<SourceGrade, true> = {
  read: true,
  secondary: true,
  'common practice': true,
  'from memory': true,
  assumed: true,
  entered: true,
  none: true,
};

describe('look-up', () => {
  it('finds every material and vehicle under its id', () => {
    expect([...materialById.values()]).toEqual(MATERIALS);
    expect([...vehicleById.values()]).toEqual(VEHICLES);
  });

  it('finds nothing under an unknown id', () => {
    expect(materialById.get('fleece-501')).toBeUndefined();
    expect(vehicleById.get('fire-7t')).toBeUndefined();
  });
});

describe('CATALOGUE_SOURCES', () => {
  it('lists every entry of the tables', () => {
    const listed = new Set(CATALOGUE_SOURCES.map(({ kind, entry }) => `${kind} ${entry}`));
    const entries = [
      ...MATERIALS.map(({ id }) => `material ${id}`),
      ...VEHICLES.map(({ id }) => `vehicle ${id}`),
      ...VEGETATION_FORMS.map(({ form }) => `vegetation ${form}`),
      ...SUBSTRATE_DEPTHS.map(({ form }) => `rule ${form}`),
      'rule all decks',
      'rule one city, no default',
      'rule run-off, DIN 1986-100:2016-12, Table 9, Cs',
      'rule run-off, FLL green-roof guideline by depth',
      'rule run-off of a year',
      ...FIRE_TABLES.map(({ name }) => `rule lanes, ${name}`),
    ];
    expect([...listed].sort()).toEqual(entries.sort());
  });

  it('lists each number of an entry once', () => {
    const keys = CATALOGUE_SOURCES.map(({ kind, entry, number }) => `${kind} ${entry} ${number}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('gives every number a document in words and a known grade', () => {
    const wrong = CATALOGUE_SOURCES.filter(({ source }) => source.document.trim().length < 10 || !(source.grade in GRADES));
    expect(wrong).toEqual([]);
  });

  it('never uses `none`: every number of the catalogue rests on something', () => {
    expect(CATALOGUE_SOURCES.filter(({ source }) => source.grade === 'none')).toEqual([]);
  });

  it('gives an address wherever a number counts as read', () => {
    const read = CATALOGUE_SOURCES.filter(({ source }) => source.grade === 'read');
    expect(read.length).toBeGreaterThan(0);
    expect(read.filter(({ source }) => !source.url)).toEqual([]);
  });

  it('writes addresses as addresses', () => {
    const urls = CATALOGUE_SOURCES.flatMap(({ source }) => source.url ?? []);
    expect(urls.filter((url) => !URL.canParse(url) || !/^https?:$/.test(new URL(url).protocol))).toEqual([]);
  });
});
