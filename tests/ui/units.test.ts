/** Units of reading and typing: definitions from outside, round trips, and no number changed by looking at it. */

import { afterEach, describe, expect, it } from 'vitest';
import { LENGTH_UNITS, LOAD_UNITS, PER_KNM2, USUAL_UNITS } from '../../src/model/shown-units.ts';
import { inField, readField } from '../../src/ui/field-units.ts';
import {
  cellText,
  loadText,
  measureIn,
  mmText,
  quantityOf,
  signedMmText,
  thicknessOf,
  thicknessText,
  unitText,
} from '../../src/ui/format.ts';
import { speak, t } from '../../src/ui/text/text.ts';

const plain = (text: string) => text.replaceAll('\u202F', ' ');
afterEach(() => {
  speak('en');
});

describe('factors', () => {
  it('of pounds per square foot', () => {
    // By definition 1 lbf = 0.45359237 · 9.80665 N = 4.4482216 N and 1 ft² = 0.09290304 m²: 1 psf = 47.880259 Pa,
    // 1 kN/m² = 1000 / 47.880259 = 20.885434 psf (NIST SP 811, B.8: 1 psf = 4.788 026 E+01 Pa)
    expect(PER_KNM2.psf).toBeCloseTo(20.885434, 5);
  });

  it('of tonnes and kilograms by the gravity of every weight here', () => {
    // by hand: 9.81 kN/m² is 1 t/m²
    expect(9.81 * PER_KNM2['t/m²']).toBeCloseTo(1, 12);
    expect(9.81 * PER_KNM2['kg/m²']).toBeCloseTo(1000, 9);
  });
});

describe('reading', () => {
  // by hand: 12 · 20.885434 = 250.6 psf; 12 / 9.81 = 1.223 t; 1223 kg
  it.each([
    ['kN/m²', '12.00 kN/m²'],
    ['psf', '250.6 psf'],
    ['t/m²', '1.223 t/m²'],
    ['kg/m²', '1,223 kg/m²'],
  ] as const)('12 kN/m² in %s', (load, says) => {
    measureIn({ load, length: 'mm' });
    expect(plain(loadText(12))).toBe(says);
    expect(plain(`${cellText(12, 'kN/m²')} ${unitText('kN/m²')}`)).toBe(says);
    expect(plain(quantityOf(12, 2, 'kN/m²'))).toBe(says);
  });

  // by hand: 1270 mm = 50 in = 4 ft 2 in; 250 / 25.4 = 9.8425 in; 304.8 mm = 1 ft; 304.75 mm = 11.998 in
  it.each([
    [1270, '4 ft 2 in'],
    [250, '9.84 in'],
    [304.8, '1 ft'],
    [304.79, '1 ft'],
    [0, '0 in'],
  ])('%d mm in feet and inches', (mm, says) => {
    measureIn({ load: 'kN/m²', length: 'ft-in' });
    expect(plain(mmText(mm))).toBe(says);
    expect(plain(signedMmText(-1270))).toBe('\u22124 ft 2 in');
  });

  it.each([
    ['mm', '250 mm'],
    ['cm', '25.0 cm'],
    ['m', '0.250 m'],
  ] as const)('250 mm in %s', (length, says) => {
    measureIn({ load: 'kN/m²', length });
    expect(plain(mmText(250))).toBe(says);
  });

  it('heads columns of loads with the unit of their numbers', () => {
    speak('en', { load: 'psf', length: 'mm' });
    expect(t.bays.load).toBe('Load and permitted, psf');
    expect(t.bays.of(12, 15)).toBe('250.6 of 313.3'); // by hand: 15 · 20.885434 = 313.28
    expect(t.core.unit).toBe('psf');
    speak('de', { load: 't/m²', length: 'mm' });
    expect(t.bays.load).toContain('t/m²');
    speak('en');
    expect(t.bays.load).toBe('Load and permitted, kN/m²');
  });
});

describe('tables', () => {
  it('head columns of thicknesses with the unit of their numbers', () => {
    speak('en', { load: 'kN/m²', length: 'cm' });
    expect([t.zones.depth, t.core.mm, t.edges.caption]).toEqual([
      'Depth, cm',
      'cm',
      'Edges: least height, required height and what is missing, in cm',
    ]);
    // by hand: 612 mm = 61.2 cm
    expect(cellText(612, 'mm')).toBe('61.2');
    speak('de', { load: 'psf', length: 'm' });
    expect([t.zones.depth, t.zones.load]).toEqual(['Aufbau\u00ADhöhe, m', 'Gesättigt, psf']);
    expect(cellText(612, 'mm')).toBe('0,612');
    speak('de');
    expect(t.zones.depth).toBe('Aufbau\u00ADhöhe, mm');
  });

  // by hand: 1.2 mm = 0.12 cm = 0.0012 m; 0.2 mm = 0.0079 in; 120 mm = 12 cm = 4.724 in
  it.each([
    ['mm', 1.2, '1.2', '1.2 mm'],
    ['cm', 1.2, '0.12', '0.12 cm'],
    ['m', 1.2, '0.0012', '0.0012 m'],
    ['ft-in', 0.2, '0.01 in', '0.01 in'],
    ['cm', 120, '12.0', '12.0 cm'],
    ['ft-in', 120, '4.72 in', '4.72 in'],
  ] as const)('show thin sheets as finely in %s: %d mm', (length, mm, number, says) => {
    measureIn({ load: 'kN/m²', length });
    expect(plain(thicknessText(mm))).toBe(number);
    expect(plain(thicknessOf(mm))).toBe(says);
  });
});

describe('typing', () => {
  it.each([
    ['12.5', 'mm', 'mm', 12.5],
    ['12,5', 'mm', 'mm', 12.5],
    ['12,5', 'cm', 'mm', 125],
    ['0.41 ft', 'mm', 'mm', 124.968], // by hand: 0.41 · 304.8
    ['4 ft 2 in', 'mm', 'mm', 1270],
    ['4\'2"', 'mm', 'mm', 1270],
    ['−1 ft 0,5 in', 'mm', 'mm', -317.5], // by hand: −(12.5 · 25.4)
    ['9.84 in', 'ft-in', 'mm', 249.936],
    ['25 cm', 'ft-in', 'mm', 250],
    ['0.25m', 'mm', 'mm', 250],
    ['100 ft', 'mm', 'm', 30.48],
    ['7,5', 'ft-in', 'm', 7.5],
  ] as const)('%s with %s shown, into a field of %s', (typed, length, unit, value) => {
    measureIn({ load: 'kN/m²', length });
    expect(readField(typed, unit)).toEqual({ ok: true, value });
  });

  it.each([
    ['12', 'ft-in', 'no unit'],
    ['4 ft 14 in', 'mm', 'not a number'],
    ['1.234', 'mm', 'ambiguous'],
    ['1.234 cm', 'mm', 'ambiguous'],
    ['5 yd', 'mm', 'not a number'],
    ['', 'mm', 'empty'],
  ] as const)('%s with %s shown is asked back', (typed, length, why) => {
    measureIn({ load: 'kN/m²', length });
    expect(readField(typed, 'mm')).toMatchObject({ ok: false, why });
  });

  it('what a field shows is read as the value it shows', () => {
    for (const length of LENGTH_UNITS) {
      measureIn({ load: LOAD_UNITS[0], length });
      // Half of the last digit shown: 1 mm, 0.1 cm, 0.001 m, 0.01 in
      const half = length === 'ft-in' ? 0.005 * 25.4 : 0.5;
      for (const mm of [1, 40, 250, 305, 914, 1270.0, 1524]) {
        const read = readField(inField(mm, 'mm', 0).replaceAll(',', ''), 'mm');
        // 1.270 m could be 1270 m as well and is asked back, as everywhere.
        expect(read.ok || (length === 'm' && mm >= 1000 && read.why === 'ambiguous'), `${mm} in ${length}`).toBe(true);
        if (read.ok) expect(Math.abs(read.value - mm)).toBeLessThanOrEqual(half + 1e-9);
      }
    }
    measureIn(USUAL_UNITS);
  });
});
