/** Bands of bays, by hand: 0.1 m of soil at 1500 kg/m³ is 1.4715 kN/m². */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { bay, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const TOLERANCE = { thicknessMm: 20, densityPercent: 10 };

function permitting(permanentKNm2: number, parts: Partial<SceneFile> = {}) {
  const { deck: _, ...rest } = parts;
  return read(sceneOf({ tolerance: TOLERANCE, ...rest, deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2 })] } }));
}
const bandOf = (project: ReturnType<typeof read>) => project.report.bays[0].band;
const toleranceFindings = (project: ReturnType<typeof read>) => project.report.findings.filter((f) => f.says.includes('within tolerances'));

describe('the band of a bay', () => {
  // High 0.12 · 1650 · 9.81/1000 = 1.94238, low 0.08 · 1350 · 9.81/1000 = 1.05948
  it('holds the planned use between its ends', () => {
    const project = permitting(2);
    expect(bandOf(project)).toEqual({ low: expect.closeTo(0.52974, 9), high: expect.closeTo(0.97119, 9) });
    expect(project.report.bays[0].permanent.utilisation).toBeCloseTo(0.73575, 9);
  });

  it('is not there without any tolerance', () => {
    expect('band' in read(sceneOf()).report.bays[0]).toBe(false);
  });

  it('takes a material’s own tolerance, and the scene’s where the material is silent', () => {
    const materials = MATERIALS.map((material) => (material.id === 'soil' ? { ...material, tolerance: { thicknessMm: 5 } } : material));
    // Thickness 5 mm of the material, density 10 % of the scene: 0.105 · 1650 · 9.81/1000 = 1.6995825
    expect(bandOf(permitting(2, { materials }))?.high).toBeCloseTo(0.84979125, 9);
    const alone = read(sceneOf({ materials, deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 2 })] } }));
    // 0.105 · 1500 · 9.81/1000 = 1.545075
    expect(alone.report.bays[0].band?.high).toBeCloseTo(0.7725375, 9);
  });

  it('of a total limit holds the imposed load as planned: (1.94238 + 2)/8 and (1.05948 + 2)/8', () => {
    const scene = sceneOf({
      tolerance: TOLERANCE,
      zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100', { imposedKNm2: 2 })],
      deck: { bays: [bay('A1', rect(0, 0, 4, 3), { totalKNm2: 8 })] },
    });
    expect(read(scene).report.bays[0].band).toEqual({ low: expect.closeTo(0.382435, 9), high: expect.closeTo(0.4927975, 9) });
  });

  it('of two limits is the closer one: 1.94238/4 against 3.94238/5', () => {
    const scene = sceneOf({
      tolerance: TOLERANCE,
      zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100', { imposedKNm2: 2 })],
      deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 4, totalKNm2: 5 })] },
    });
    expect(read(scene).report.bays[0].band?.high).toBeCloseTo(0.788476, 9);
  });

  it('leaves objects as they are: a block of 3 on half the deck', () => {
    const objects = [{ kind: 'block', id: 'P1', outline: rect(0, 0, 2, 3), kNm2: 3 }] as const;
    expect(bandOf(permitting(10, { objects }))?.high).toBeCloseTo(0.494238, 9);
  });
});

describe('bays that could go over', () => {
  it('within by plan, over within tolerances: 1.4715 planned, 1.94238 at most, 1.7 permitted', () => {
    const [finding, ...others] = toleranceFindings(permitting(1.7));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      rule: 'load.permanent',
      severity: 'check',
      where: { bay: 'A1', at: [expect.any(Number), expect.any(Number)] },
    });
    expect([finding.value, finding.limit]).toEqual([expect.closeTo(1.94238, 9), 1.7]);
    // 1.94238/1.7 = 114.3 %
    expect(finding.says).toMatch(/Bay A1 could go over.*1\.94 kN\/m².*1\.70 kN\/m².*114\.3 %.*1\.47 kN\/m²/);
    expect(finding.source).toBe('load plan, revision A, 2026-01-05');
  });

  it('are not told where the band stays within, nor where the plan itself is over', () => {
    expect(toleranceFindings(permitting(1.95))).toEqual([]);
    expect(toleranceFindings(permitting(1.4))).toEqual([]);
  });

  it('by a total limit are told by that rule: 3.4715 planned, 3.94238 at most, 3.9 permitted', () => {
    const scene = sceneOf({
      tolerance: TOLERANCE,
      zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100', { imposedKNm2: 2 })],
      deck: { bays: [bay('A1', rect(0, 0, 4, 3), { totalKNm2: 3.9 })] },
    });
    const [finding] = toleranceFindings(read(scene));
    expect(finding.rule).toBe('load.total');
    expect(finding.says).toContain('imposed load included');
  });
});

it('a make-up layer under a set level adds density only: fill 0.39 · 300, soil 0.12 · 1650, sheet 2', () => {
  const project = permitting(10, {
    buildups: [
      {
        id: 'make-up',
        name: 'make-up',
        layers: [
          { material: 'sheet' },
          { material: 'light', thicknessMm: { min: 50, max: 2000, nominal: 200 } },
          { material: 'soil', thicknessMm: 100 },
        ],
      },
    ],
    zones: [zone('Z1', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } })],
  });
  // (2 + 0.39 · 330 + 0.12 · 1650) · 9.81/1000 = 328.7 · 0.00981
  expect(bandOf(project)?.high).toBeCloseTo(0.3224547, 9);
});
