/** Loads entered or permitted twice, and load plans that are out of date: what is told, how seriously, and what is not. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { SceneBasis, SceneBay, SceneObject } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { speakProject } from '../../src/project/speak.ts';
import { bay, ON_SOUND, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

const OURS = ['included', 'total below', 'total other', 'twice', 'earlier'];

function told(parts: SceneParts) {
  const project = read(sceneOf({ ...ON_SOUND, ...parts }));
  const german = speakProject(project, 'de').report.findings;
  return project.facts.flatMap((fact, i) => {
    const { why } = fact.facts;
    if (!OURS.includes(String(why))) return [];
    const [one, other] = [project.report.findings[i], german[i]];
    for (const { says } of [one, other]) expect(says).not.toMatch(/undefined|NaN|\s{2}|\[object/);
    return [{ why, severity: one.severity, rule: one.rule, where: one.where, says: one.says, german: other.says, source: one.source }];
  });
}

const basis = (over: SceneBasis) => ({ document: 'load plan', revision: 'A', date: '2026-01-05', ...over });
const ofBay = (limits: Partial<SceneBay>, over: SceneBasis = {}) =>
  told({ deck: { bays: [{ ...bay('A1', rect(0, 0, 4, 3), limits), basis: basis(over) }] } });

describe('permitted twice', () => {
  it('a basis that says the imposed load is in it, beside a permanent load: someone must look', () => {
    const [one, ...others] = ofBay({ permanentKNm2: 17, imposedKNm2: 5 }, { document: 'Load plan, incl. imposed load' });
    expect(others).toEqual([]);
    expect(one).toMatchObject({ why: 'included', severity: 'check', rule: 'load.basis', where: { bay: 'A1' } });
    expect(one?.says).toContain('“incl. imposed”, yet 17.00 kN/m² stand as permitted permanent load, and 5.00 kN/m² of imposed load');
    expect(one?.german).toContain('17,00 kN/m²');
    expect(one?.source).toBe('Load plan, incl. imposed load, revision A, 2026-01-05');
  });

  it.each([
    'Lastenplan inkl. Nutzlast',
    'Lastenplan einschließlich der Verkehrslasten',
    'values including live load',
    'einschl. Nutzlast 5',
  ])('also in: %s', (document) => expect(ofBay({ permanentKNm2: 17 }, { document })).toMatchObject([{ why: 'included' }]));

  it.each(['Load plan, permanent and imposed loads', 'Lastenplan mit Nutzlasten', 'loads excl. imposed', 'nicht inkl. Nutzlast'])(
    'not in: %s',
    (document) => expect(ofBay({ permanentKNm2: 12, imposedKNm2: 5 }, { document })).toEqual([]),
  );

  it('not where the load is entered as the total', () =>
    expect(ofBay({ totalKNm2: 17 }, { document: 'Lastenplan inkl. Nutzlast' })).toEqual([]));
});

describe('a total beside its parts', () => {
  it('the sum of both, or the total alone, is as it should be', () => {
    expect(ofBay({ permanentKNm2: 12.3, imposedKNm2: 5.1, totalKNm2: 17.4 })).toEqual([]);
    expect(ofBay({ totalKNm2: 17 })).toEqual([]);
    expect(ofBay({ permanentKNm2: 12, totalKNm2: 17 })).toEqual([]);
  });

  it('another sum is told as a note with all three', () => {
    const [one] = ofBay({ permanentKNm2: 12, imposedKNm2: 5, totalKNm2: 15 });
    expect(one).toMatchObject({ why: 'total other', severity: 'note' });
    expect(one?.says).toContain('12.00 kN/m² permanent and 5.00 kN/m² imposed, together 17.00 kN/m², and a total of 15.00 kN/m²');
  });

  it('less than one part alone: someone must look', () => {
    expect(ofBay({ permanentKNm2: 12, imposedKNm2: 5, totalKNm2: 10 })).toMatchObject([{ why: 'total below', severity: 'check' }]);
    expect(ofBay({ permanentKNm2: 2, imposedKNm2: 5, totalKNm2: 4 })[0]?.says).toContain('permitted imposed load of 5.00');
  });
});

describe('entered twice', () => {
  const over = (object: SceneObject, imposedKNm2 = 5) =>
    told({ zones: [zone('Z1', rect(0, 0, 4, 3), 'sound', { imposedKNm2 })], objects: [object] });
  const block = (more: Partial<Extract<SceneObject, { kind: 'block' }>>): SceneObject => ({
    kind: 'block',
    id: 'P1',
    outline: rect(0, 0, 4, 3),
    kNm2: 5,
    ...more,
  });

  it('a block with the same load over the whole zone: a note that names both', () => {
    const [one] = over(block({}));
    expect(one).toMatchObject({
      why: 'twice',
      severity: 'note',
      rule: 'load.imposed',
      where: { zone: 'Z1', object: 'P1' },
      source: 'the scene file',
    });
    // 4 m × 3 m
    expect(one?.says).toContain('5.00 kN/m² imposed load, and on 12.0 m² of it P1 brings 5.00 kN/m² more');
  });

  it('an object called live load, whatever its value; a strip of 2.5 kN/m on 0.5 m is 5 kN/m²', () => {
    expect(over(block({ name: 'Nutzlast Feier', kNm2: 3, outline: rect(0, 0, 2, 2) }))).toMatchObject([{ why: 'twice' }]);
    const strip: SceneObject = {
      kind: 'line',
      id: 'W1',
      name: 'live load',
      line: [
        [0, 1],
        [4, 1],
      ],
      kNm: 2.5,
      widthM: 0.5,
    };
    // 4 m × 0.5 m = 2 m²
    expect(over(strip, 4)[0]?.says).toContain('on 2.0 m² of it live load brings 5.00 kN/m²');
  });

  it('not planters, nor another load, nor a zone without imposed load', () => {
    expect(over(block({ name: 'Planter', outline: rect(1, 1, 2, 2) }))).toEqual([]);
    expect(over(block({ name: 'Water basin', kNm2: 6 }))).toEqual([]);
    expect(told({ objects: [block({ name: 'live load' })] })).toEqual([]);
  });
});

describe('an earlier edition', () => {
  const bays = (...editions: readonly SceneBasis[]) =>
    editions.map((one, i) => ({ ...bay(`A${i + 1}`, rect(i, 0, i + 1, 3)), basis: basis(one) }));
  const B = { revision: 'B', date: '2026-03-03' };
  const C = { revision: 'C', date: '2026-05-09' };

  it('where other bays know a later one', () => {
    const found = told({ deck: { bays: bays(B, C, C, B) } });
    expect(found.map(({ where }) => where.bay)).toEqual(['A1', 'A4']);
    expect(found[0]).toMatchObject({ why: 'earlier', severity: 'check', rule: 'load.basis' });
    expect(found[0]?.says).toContain('from load plan, revision B of 2026-03-03; bays A2, A3 know revision C of 2026-05-09.');
    expect(found[0]?.german).toContain('Index B vom 03.03.2026; bekannt ist in den Feldern A2, A3 Index C vom 09.05.2026.');
  });

  it('where only the history of the file does', () => {
    const history = [{ on: '2026-05-10', says: 'Load plan revision C of 2026-05-09 entered for A9' }];
    const found = told({ deck: { bays: bays(B, B, B, B) }, history });
    expect(found).toHaveLength(4);
    expect(found[0]?.says).toContain('the history of the file knows revision C of 2026-05-09');
    expect(told({ deck: { bays: bays(C, C, C, C) }, history })).toEqual([]);
  });

  it('not of another document, nor where nothing is said', () => {
    expect(told({ deck: { bays: bays(B, { ...C, document: 'crane plan' }, B, B) } })).toEqual([]);
    expect(told({ deck: { bays: bays(B, { revision: '', date: '' }, B, B) } })).toEqual([]);
  });
});

it.each(['terrace', 'courtyard', 'problem-deck', 'district'])('no false alarm in %s', (name) => {
  const { project } = readProject(readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8'));
  expect(project?.facts.filter(({ facts }) => OURS.includes(String(facts.why)))).toEqual([]);
});
