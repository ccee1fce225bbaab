/** Starting values of the rules against the ranges they are taken from; written out here once more. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS, MUNICIPAL_SOIL, SUBSTRATE_DEPTHS, WALL_DENSITY } from '../../src/catalogue/rule-limits.ts';
import { VEGETATION_FORMS } from '../../src/catalogue/vegetation.ts';

const least = (form: string) => SUBSTRATE_DEPTHS.find((row) => row.form === form)?.leastMm;

describe('depths of substrate', () => {
  // FLL green-roof guideline, guide values as remembered, not confirmed (cm): moss and sedum 2–6, sedum, moss, herbs 6–10, sedum, herbs, grass
  // 10–15, grass and herbs 15–20, lawn 15–35, perennials and low shrubs 15–50, shrubs 20–60, tall shrubs 35–70, small trees 60–125, trees 100.
  it.each([
    ['moss and sedum', 2],
    ['sedum, moss and herbs', 6],
    ['sedum, herbs and grass', 10],
    ['extensive grass', 15],
    ['lawn', 15],
    ['low shrubs', 15],
    ['perennials', 15],
    ['shrubs to 1.5 m', 20],
    ['large shrubs to 6 m', 35],
    ['small trees to 10 m', 60],
    ['trees to 15 m', 100],
  ])('%s: the low end, %d cm', (form, cm) => {
    expect(least(form)).toBe(cm * 10);
    expect(DEFAULT_LIMITS.substrateMm.get(form)?.source.grade).toBe('from memory');
  });

  it('shrubs to 3 m: 30 cm, common practice on podium decks', () => {
    expect(least('shrubs to 3 m')).toBe(300);
    expect(DEFAULT_LIMITS.substrateMm.get('shrubs to 3 m')?.source.grade).toBe('common practice');
  });

  it('are known for every form that has a weight, and never less for taller plants', () => {
    const depths = VEGETATION_FORMS.map(({ form }) => least(form) ?? Number.NaN);
    expect(depths.every((depth) => depth > 0)).toBe(true);
    expect([...SUBSTRATE_DEPTHS].map((row) => row.leastMm)).toEqual([...SUBSTRATE_DEPTHS].map((row) => row.leastMm).sort((a, b) => a - b));
  });
});

it('other values: 12 m³, 600, 400, 150, 250, 150 and 50 mm, 0.3 m, 1.5 %, 20 mm, 1.5 times', () => {
  const keys = [
    'treeSoilM3',
    'treeSoilMm',
    'subsoilBelowMm',
    'baseCourseMm',
    'liftMm',
    'upstandMm',
    'sillMm',
    'stripM',
    'fallPercent',
    'pondMm',
    'slidingRatio',
    'overturningRatio',
  ] as const;
  const limits = keys.map((key) => DEFAULT_LIMITS[key]);
  expect(limits.map((limit) => limit.value)).toEqual([12, 600, 400, 150, 250, 150, 50, 0.3, 1.5, 20, 1.5, 1.5]);
  // 30 cm loose at a factor of 1.20 (low end of 1.20 to 1.30 for base gravel): 250 mm compacted
  expect(DEFAULT_LIMITS.liftMm.value * 1.2).toBe(300);
});

it('the municipal rule is read, and asks for more than the starting values', () => {
  const { substrateMm, treeSoilM2, treeSoilMm } = MUNICIPAL_SOIL;
  expect([substrateMm.value, treeSoilM2.value, treeSoilMm.value]).toEqual([800, 12, 1000]);
  expect(substrateMm.source.grade).toBe('read');
});

it('walls: factors are from memory and say so; concrete of 2500 kg/m³ comes within 2 % of the 25 kN/m³ of EN 1991-1-1, Table A.1', () => {
  expect([DEFAULT_LIMITS.slidingRatio.source.grade, DEFAULT_LIMITS.overturningRatio.source.grade]).toEqual(['from memory', 'from memory']);
  expect(Math.abs((WALL_DENSITY.value * 9.81) / 25000 - 1)).toBeLessThan(0.02);
});
