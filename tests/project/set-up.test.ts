/** Set-up and movement areas from a scene to findings in words, with hand-worked figures. */

import { describe, expect, it } from 'vitest';
import { routeLines } from '../../src/cli/summary-routes.ts';
import { WRITING } from '../../src/cli/writing.ts';
import type { PointM, SceneFile, SceneSetUpArea } from '../../src/model/scene-file.ts';
import { sourceUses } from '../../src/project/source-uses.ts';
import { NUMBER_NAMES } from '../../src/ui/text/en-words.ts';
import { bay, buildUp, findingsOf, MATERIALS, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

const outline = rect(0, 0, 40, 40);
/** 0.30 m of stone that spreads 0.5, and bears 1000 kPa; on it no more than a slab of nothing. */
const stone = {
  id: 'stone',
  name: 'Stone',
  role: 'base course',
  density: { dry: 2000, saturated: 2000 },
  dispersal: 0.5,
  bearingKPa: 1000,
} as const;
const weak = { ...stone, id: 'weak', name: 'Weak fill', role: 'light fill', bearingKPa: 300 } as const;
const hard = buildUp('hard', [{ material: 'sheet' }, { material: 'weak', thicknessMm: 100 }, { material: 'stone', thicknessMm: 300 }]);

function yard(area: Partial<SceneSetUpArea>, parts: SceneParts = {}): SceneFile {
  return sceneOf({
    grid: { cellM: 1 },
    materials: [...MATERIALS, stone, weak],
    buildups: [hard],
    zones: [zone('Z1', outline, 'hard')],
    setUpAreas: [{ id: 'U1', kind: 'set-up', vehicle: 'fire-16t', outline: rect(10, 20, 22, 24), ...area }],
    ...parts,
    deck: {
      outline,
      bays: [bay('A1', outline, { permanentKNm2: 12, imposedKNm2: 5, vehicles: ['fire-16t', 'fire-18t-ladder'] })],
      ...parts.deck,
    },
  });
}

const told = (scene: SceneFile) => {
  const { findings } = read(scene).report;
  return findings
    .filter(({ rule }) => /^(traffic|stress)/.test(rule))
    .map(({ rule, severity, where }) => [rule, severity, where.bay ?? where.zone]);
};

describe('what stands there', () => {
  it('one support of 144 kN on 0.424264 m, 0.30 m deeper on 0.724264 m: 274.5 kPa, and 5.9 kPa of stone', () => {
    const { report } = read(yard({ vehicle: 'fire-18t-ladder' }));
    const [area] = report.setUpAreas ?? [];
    const fill = area.layers.find(({ layer }) => layer === 'weak');
    // 144/0.724264² = 274.518; 0.3 · 2000 · 9.81/1000 = 5.886
    expect(fill).toMatchObject({ by: 'support', maxKPa: expect.closeTo(144 / 0.724264 ** 2 + 5.886, 6), permittedKPa: 300 });
    expect(area.supportMembraneKPa).toBeCloseTo(144 / 0.824264 ** 2, 6);
    const [near] = findingsOf(read(yard({ vehicle: 'fire-18t-ladder' })), 'stress.layer');
    expect(near).toMatchObject({ severity: 'check', where: { zone: 'Z1' } });
    expect(near.says).toContain('set-up area U1');
    expect(near.says).toContain('one support');
  });

  it('supports have no dynamic factor, wheels do', () => {
    const still = read(yard({ vehicle: 'fire-18t-ladder' })).report.setUpAreas?.[0];
    const moving = read(yard({ vehicle: 'fire-18t-ladder' }, { limits: { dynamicFactor: 2 } })).report.setUpAreas?.[0];
    expect(moving?.supportMembraneKPa).toBeCloseTo(still?.supportMembraneKPa ?? 0, 9);
    expect(moving?.wheelsMembraneKPa).toBeCloseTo(2 * (still?.wheelsMembraneKPa ?? 0), 9);
  });

  it('every bay it lies on must list the vehicle, also one that no wheel enters', () => {
    // The bays part at y = 20.1, 0.1 m within the area: no middle of a wheel comes there.
    const bays = [
      bay('low', rect(0, 0, 40, 20.1), { permanentKNm2: 12, imposedKNm2: 5, vehicles: [] }),
      bay('high', rect(0, 20.1, 40, 40), { permanentKNm2: 12, imposedKNm2: 5 }),
    ];
    expect(told(yard({}, { deck: { bays } }))).toEqual([
      ['traffic.bay', 'stop', 'low'],
      ['traffic.bay', 'check', 'high'],
    ]);
  });

  it('16 t in a bay of 6 by 5 m: 5.23 kN/m² of 5', () => {
    const small = [bay('A1', rect(13, 19.5, 19, 24.5), { permanentKNm2: 12, imposedKNm2: 5, vehicles: ['fire-16t'] })];
    const [finding] = findingsOf(read(yard({}, { deck: { bays: small } })), 'traffic.bay');
    expect([finding.severity, finding.value, finding.limit]).toEqual(['stop', expect.closeTo(156.96 / 30, 9), 5]);
  });

  it('makes the zone one that is driven on: the slip layer is asked for', () => {
    expect(findingsOf(read(yard({})), 'order.slip').map(({ where }) => where.zone)).toEqual(['Z1']);
    const { setUpAreas: _, ...without } = yard({});
    expect(findingsOf(read(without), 'order.slip')).toEqual([]);
  });
});

describe('words', () => {
  const says = (scene: SceneFile, rule: string) => findingsOf(read(scene), rule).map((finding) => finding.says);

  it('too small: what fits and what is asked for', () => {
    const [text] = says(yard({ outline: rect(10, 20, 22, 23.2) }), 'traffic.width');
    expect(text).toContain('Set-up area U1: a rectangle 11.00 m long fits into it only 3.20 m wide');
    expect(text).toContain('fire authority');
  });

  it('a tree and an upstand in it are named', () => {
    const objects = [{ kind: 'tree', id: 'T1', at: [12, 22], massKg: 500, spreadM: 1 }] as const;
    const line: PointM[] = [
      [20, 18],
      [20, 22],
    ];
    const edges = [{ id: 'E1', line, kind: 'upstand', membraneTopM: 1 }] as const;
    const [text, ...more] = says(yard({}, { objects, deck: { edges } }), 'traffic.setup');
    expect(more).toEqual([]);
    expect(text).toContain('tree T1, upstand E1 stand in it');
  });

  it('half of it off the deck is told as a note, and an opening under it is an obstacle', () => {
    const project = read(yard({ outline: rect(34, 20, 46, 24) }));
    expect(findingsOf(project, 'traffic.setup')).toMatchObject([{ severity: 'note', value: expect.closeTo(24, 9), unit: 'm²' }]);
    expect(project.report.setUpAreas?.[0]).toMatchObject({ areaM2: 48, onDeckM2: expect.closeTo(24, 9) });
    const [opening] = says(yard({}, { deck: { openings: [rect(12, 21, 13, 22)] } }), 'traffic.setup');
    expect(opening).toContain('opening 1 stands in it');
  });

  it('a step of 100 mm where two zones meet in it', () => {
    const thin = buildUp('thin', [{ material: 'sheet' }, { material: 'weak', thicknessMm: 100 }, { material: 'stone', thicknessMm: 200 }]);
    const zones = [zone('Z1', rect(0, 0, 15, 40), 'hard'), zone('Z2', rect(15, 0, 40, 40), 'thin')];
    const [finding] = findingsOf(read(yard({}, { buildups: [hard, thin], zones })), 'traffic.gradient');
    expect([finding.value, finding.limit, finding.unit]).toEqual([expect.closeTo(100, 6), 20, 'mm']);
  });
});

it('none: no room is judged, wheels are', () => {
  const scene = yard({ outline: rect(10, 20, 12, 22), vehicle: 'fire-75000lb' }, { limits: { fireTable: 'none' } });
  expect(told(scene)).toContainEqual(['traffic.bay', 'stop', 'A1']);
  expect(told(scene).filter(([rule]) => rule === 'traffic.width')).toEqual([]);
  expect(read(scene).report.setUpAreas?.[0]).toMatchObject({ table: null, requiredM: null, insideWidthM: null });
});

it('the command line has a line per area', () => {
  const { report } = read(yard({}));
  const text = routeLines(report, WRITING.en).join('\n');
  expect(text).toMatch(/U1 +set-up +de-mrflfw +fire-16t +4\.00 × 12\.00 +4\.00 × 11\.00 +3\.50 × 11\.00 +0\.00 /);
});

it('the list of sources says what the area rests on', () => {
  const uses = sourceUses(yard({ kind: 'movement' })).filter(({ entry, usedIn }) => entry.startsWith('lanes, ') && usedIn.length > 0);
  expect(uses.map(({ number, usedIn }) => [number, usedIn])).toEqual([
    ['setUpPercent', ['traffic.gradient']],
    ['movement.widthM', ['traffic.width']],
    ['movement.lengthM', ['traffic.width']],
    ['movement.runOutM', ['traffic.setup']],
  ]);
});

it('every number of lanes and areas has a name for the list', () => {
  const numbers = new Set(sourceUses(null).flatMap(({ entry, number }) => (entry.startsWith('lanes, ') ? [number] : [])));
  expect([...numbers].filter((number) => NUMBER_NAMES[number] === undefined)).toEqual([]);
});

it('nothing drawn, nothing said', () => {
  expect(read(sceneOf()).report.setUpAreas).toBeUndefined();
});
