/** The section of water. */

import { expect, it } from 'vitest';
import { waterLines } from '../../src/cli/summary-water.ts';
import { WRITING } from '../../src/cli/writing.ts';
import { read, rect, sceneOf } from '../helpers/scene-builder.ts';

const SCENE = sceneOf({
  rain: { designLpsHa: 300, extremeLpsHa: 500, annualMm: 800, filledPercent: 60, source: 'made up' },
  deck: {
    outline: rect(0, 0, 4, 3),
    outlets: [
      { id: 'O1', at: [2, 1], kind: 'outlet', lps: 2 },
      { id: 'V1', at: [3.9, 1], kind: 'overflow', lps: 1, invertM: 0.02 },
    ],
  },
});
const lines = waterLines(read(SCENE).report, WRITING.en);
const cells = (first: string) =>
  lines
    .find((line) => line.trim().startsWith(first))
    ?.trim()
    .split(/ {2,}/);

it('nothing without outlets and rain', () => {
  expect(waterLines(read(sceneOf()).report, WRITING.en)).toEqual([]);
});

it('what is held and flows: 12 m² of 100 mm that hold 40 %, C 0.4, a year 0.5', () => {
  // 0.48 m³, 40 % of it free; 300 · 0.4 · 12 / 10 000; 0.8 · 0.5 · 12
  expect(lines[0]).toBe('Water: 0.5 m³ held when full, 40.0 l/m² of deck; 0.2 m³ of it free when 60 % full');
  expect(lines[1]).toContain('Rain 300 l/(s·ha), extreme 500 l/(s·ha) (made up)');
  expect(lines[2]).toContain(
    '0.14 l/s in the design rain, mean peak coefficient 0.400 (DIN 1986-100:2016-12, Table 9, Cs); 5 m³ a year off 800 mm',
  );
});

it('outlets and overflows in one table', () => {
  expect(cells('O1  ')).toEqual(['O1', 'outlet', '12.0', '0.14', '2.00', '7.2 %', '-', '-']);
  expect(cells('V1  ')).toEqual(['V1', 'overflow', '12.0', '0.46', '1.00', '45.6 %', '0.020', '20']);
});

it('rounds depths of water up, never down', () => {
  const report = read(SCENE).report;
  const water = report.water!;
  const rising = { ...report, water: { ...water, blocked: water.blocked.map((one) => ({ ...one, levelM: 0.02, depthMm: 33.2 })) } };
  const row = waterLines(rising, WRITING.en).find((line) => /^ +O1 +0\.020 /.test(line));
  expect(row?.trim().split(/ {2,}/)[2]).toBe('34');
});

it('says where water rises without end, and whose matter it is', () => {
  const alone = { ...SCENE, deck: { ...SCENE.deck, outlets: SCENE.deck.outlets?.slice(0, 1) ?? [] } };
  expect(waterLines(read(alone).report, WRITING.en).some((line) => /O1 +no end/.test(line))).toBe(true);
  expect(lines.at(-2)).toMatch(/drainage engineer and the local code decide/);
});

it('without rain tells so', () => {
  const { rain: _, ...dry } = SCENE;
  expect(waterLines(read(dry).report, WRITING.en)[1]).toContain('No rain in the scene: catchments are told, flows are not');
});
