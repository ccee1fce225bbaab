import { expect, it } from 'vitest';
import { VEGETATION_FORMS, VEGETATION_SOURCE } from '../../src/catalogue/vegetation.ts';

it('names each form once', () => {
  const forms = VEGETATION_FORMS.map(({ form }) => form);
  expect(new Set(forms).size).toBe(forms.length);
});

// FLL surface loads as remembered, not confirmed: 5, 10, 20, 30, 40, 60, 150 kg/m², times 9.81 / 1000.
it.each([
  ['lawn', 5, 0.04905],
  ['low shrubs', 10, 0.0981],
  ['perennials', 20, 0.1962],
  ['shrubs to 3 m', 30, 0.2943],
  ['large shrubs to 6 m', 40, 0.3924],
  ['small trees to 10 m', 60, 0.5886],
  ['trees to 15 m', 150, 1.4715],
])('%s weighs %d kg/m² = %d kN/m²', (form, arealKgM2, kNm2) => {
  const row = VEGETATION_FORMS.find((entry) => entry.form === form);
  expect(row?.arealKgM2).toBe(arealKgM2);
  expect(row?.kNm2).toBe(kNm2);
});

it('has the weight of every row at 9.81 m/s²', () => {
  for (const { arealKgM2, kNm2 } of VEGETATION_FORMS) expect(kNm2).toBeCloseTo((arealKgM2 * 9.81) / 1000, 10);
});

it('says that the values are from memory', () => {
  expect(VEGETATION_SOURCE.grade).toBe('from memory');
});
