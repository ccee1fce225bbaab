/** Derivations recompute to the numbers of the report, in every demo scene; worked examples say what is in them. */

import { describe, expect, it } from 'vitest';
import { coreLog } from '../../src/core/core-log.ts';
import type { DerivationAsk, Term } from '../../src/model/derivation.ts';
import { derive } from '../../src/project/derivation.ts';
import { type Project, readProject } from '../../src/project/evaluate-project.ts';
import { askOf, bayVerdicts } from '../../src/ui/facts/bay-verdict.ts';
import { MAKE_UP, read, rect, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';
import { TEXTS } from '../scenes/demo-scenes.ts';

/** Worked out again from what is given alone. */
function worked({ value, how }: Term): number {
  if ('source' in how) return value;
  const values = how.terms.map(worked);
  const [first = 0, ...others] = values;
  switch (how.does) {
    case 'sum':
      return values.reduce((sum, one) => sum + one, 0);
    case 'difference':
      return others.reduce((left, one) => left - one, first);
    case 'product':
      return values.reduce((product, one) => product * one, 1);
    case 'quotient':
      return others.reduce((left, one) => left / one, first);
    case 'whole steps':
      return Math.floor(first / others[0]! + 1e-9) * others[0]!;
  }
}

function expectDerived(project: Project, ask: DerivationAsk, value: number): Term {
  const term = derive(project, ask);
  if (term === null) throw new Error(`nothing derived for ${JSON.stringify(ask)}`);
  const what = JSON.stringify(ask);
  expect(worked(term), what).toBeCloseTo(value, 7);
  expect(term.value, what).toBeCloseTo(value, 7);
  return term;
}

function open(text: string): Project {
  const { project, issues } = readProject(text);
  if (!project) throw new Error(issues.map(({ got }) => got).join());
  return project;
}

describe.each([...TEXTS])('%s', (_, text) => {
  const project = open(text);
  const { report, evaluation } = project;
  const bays = report.bays.filter((_, i) => i % Math.ceil(report.bays.length / 12) === 0);

  it('means and utilisations of bays', () => {
    for (const { id, permanent, stages } of bays) {
      if (permanent.meanKNm2 > 0) expectDerived(project, { kind: 'mean', bay: id }, permanent.meanKNm2);
      if (permanent.utilisation !== null) expectDerived(project, { kind: 'utilisation', bay: id, stage: null }, permanent.utilisation);
      for (const { stage, utilisation } of stages) {
        if (utilisation !== null) expectDerived(project, { kind: 'utilisation', bay: id, stage }, utilisation);
      }
    }
  });

  it('what the list of bays shows of each: load and utilisation of the worst case', () => {
    for (const { id, governing } of bayVerdicts(report, project.scene)) {
      expectDerived(project, askOf('load', id, governing), governing.loadKNm2);
      const ask = askOf('utilisation', id, governing);
      if (governing.utilisation === null) expect(derive(project, ask)).toBeNull();
      else expectDerived(project, ask, governing.utilisation);
    }
  });

  it('imposed loads, and both together where that is limited', () => {
    for (const { id, imposed, total } of report.bays) {
      const ask = { bay: id, stage: null } as const;
      expectDerived(project, { ...ask, kind: 'load', of: 'imposed' }, imposed.maxKNm2);
      if (imposed.utilisation !== null) expectDerived(project, { ...ask, kind: 'utilisation', of: 'imposed' }, imposed.utilisation);
      if (total?.utilisation != null) expectDerived(project, { ...ask, kind: 'utilisation', of: 'total' }, total.utilisation);
      else if (!total) expect(derive(project, { ...ask, kind: 'load', of: 'total' })).toBeNull();
    }
  });

  it('depths and loads of zones', () => {
    for (const { id, areaM2, depthMm, saturatedKNm2 } of report.zones) {
      if (areaM2 === 0) continue;
      expectDerived(project, { kind: 'depth', zone: id }, depthMm.mean / 1000);
      expectDerived(project, { kind: 'zone load', zone: id }, saturatedKNm2.mean);
    }
  });

  it('heights of heaps', () => {
    for (const { id, heapM } of bays.slice(0, 4)) {
      for (const { stage, material, heightM, overKNm2 } of heapM ?? []) {
        if (overKNm2 === 0 && heightM === 0) continue;
        expectDerived(project, { kind: 'heap', bay: id, stage, material }, overKNm2 > 0 ? overKNm2 : heightM);
      }
    }
  });

  it('shares of columns, masses, water held', () => {
    for (const { id, permanentKN } of report.columns ?? []) expectDerived(project, { kind: 'column', column: id }, permanentKN);
    for (const { material, massKg } of report.takeoff ?? []) {
      const term = derive(project, { kind: 'mass', material });
      expect(worked(term!) / massKg, material).toBeCloseTo(1, 9);
    }
    for (const { id, heldLm2, areaM2 } of report.zones) if (areaM2 > 0) expectDerived(project, { kind: 'held', zone: id }, heldLm2.mean);
  });

  it('sums of core logs, dry and saturated', () => {
    const { deckShare } = evaluation.prepared.ground;
    const cells = [...deckShare.keys()].filter((cell) => deckShare[cell]! > 0);
    for (let i = 0; i < 40; i++) {
      const cell = cells[Math.floor((i * cells.length) / 40)]!;
      // The field of loads is worked out without core logs.
      expectDerived(project, { kind: 'core log', cell, stage: null, state: 'saturated' }, evaluation.loadKNm2[cell]!);
      for (const [at, { id }] of evaluation.plan.stages.entries()) {
        const log = coreLog(evaluation, cell, at)!;
        expectDerived(project, { kind: 'core log', cell, stage: id, state: 'dry' }, log.dryKNm2);
        expectDerived(project, { kind: 'core log', cell, stage: id, state: 'saturated' }, log.saturatedKNm2);
      }
    }
  });

  it('outlets and overflows: areas, flows, duties, use', () => {
    const some = <T>(list: readonly T[] = []) => list.filter((_, i) => i % Math.ceil(list.length / 8) === 0);
    for (const { id, catchmentM2, designLps, utilisation } of some(report.outlets)) {
      if (designLps === null) continue;
      expectDerived(project, { kind: 'catchment', outlet: id }, catchmentM2);
      expectDerived(project, { kind: 'design flow', outlet: id }, designLps);
      if (utilisation !== null) expectDerived(project, { kind: 'outlet use', outlet: id }, utilisation);
      else expect(derive(project, { kind: 'outlet use', outlet: id })).toBeNull();
    }
    for (const { id, areaM2, dutyLps, utilisation } of some(report.water?.overflows)) {
      if (dutyLps === null) continue;
      expectDerived(project, { kind: 'overflow area', outlet: id }, areaM2);
      if (dutyLps > 0) expectDerived(project, { kind: 'overflow duty', outlet: id }, dutyLps);
      if (dutyLps > 0 && utilisation !== null) expectDerived(project, { kind: 'overflow use', outlet: id }, utilisation);
    }
  });

  it('pressures of wheels', () => {
    for (const { id, layers } of report.traffic ?? []) {
      for (const { zone: inZone, layer, maxKPa, stand } of layers) {
        expectDerived(project, { kind: 'wheel', run: id, zone: inZone, layer, stand, kPa: maxKPa }, maxKPa);
      }
    }
  });
});

describe('worked by hand', () => {
  const project = read(
    sceneOf({
      buildups: [MAKE_UP, SOUND],
      zones: [zone('A', rect(0, 0, 2, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } }), zone('B', rect(2, 0, 4, 3), 'sound')],
    }),
  );
  const id = project.report.bays[0]!.id;

  it('mean of a bay: 6 m² of each zone over 12 m²', () => {
    // A: sheet 2 kg, fill 0.39 m · 300 = 117 kg, soil 150 kg: 269 kg; B: 176 kg; mean 222.5 kg/m² · 0.00981 = 2.182725
    const term = expectDerived(project, { kind: 'mean', bay: id }, 2.182725);
    const names = JSON.stringify(term);
    expect(names).toContain('"density saturated"');
    expect(names).toContain('"value":300');
  });

  it('water held in B: 20 l/m² in the element and 0.1 m · 40 %', () => {
    // 20 + 0.1 · 40 · 10 = 60
    expectDerived(project, { kind: 'held', zone: 'B' }, 60);
  });

  it('depth of A to its finished level, and its load', () => {
    // Level 0.5 m over the deck at 0; 269 kg/m² · 0.00981 = 2.63889
    expectDerived(project, { kind: 'depth', zone: 'A' }, 0.5);
    expectDerived(project, { kind: 'zone load', zone: 'A' }, 2.63889);
  });

  it('nothing of what the scene has not', () => {
    expect(derive(project, { kind: 'mean', bay: 'none' })).toBeNull();
    expect(derive(project, { kind: 'utilisation', bay: id, stage: 'none' })).toBeNull();
    expect(derive(project, { kind: 'column', column: 'none' })).toBeNull();
    expect(derive(project, { kind: 'held', zone: 'none' })).toBeNull();
  });
});
