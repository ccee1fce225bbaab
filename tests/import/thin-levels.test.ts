/** Surveys of more levels than a scene holds: thinned by a tolerance that is asked for, every left-out level checked by brute force. */

import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { netSurface } from '../../src/core/levels/net.ts';
import { surfaceLevelM } from '../../src/core/levels/surface.ts';
import { draftScene } from '../../src/import/draft-scene.ts';
import { Gathering } from '../../src/import/gathering.ts';
import { importIn } from '../../src/import/import-language.ts';
import { MAX_THINNED } from '../../src/import/limits.ts';
import { thinLevels } from '../../src/import/thin-levels.ts';
import type { DrawingShape, ImportResult } from '../../src/model/drawing.ts';
import type { Point3M } from '../../src/model/scene-file.ts';
import { MAX_LIST_POINTS } from '../../src/scene/limits.ts';
import { codes, readText } from './reading.ts';

type Height = (x: number, y: number) => number;

/** A fall of 2 % with hills of 4 cm, in coordinates of a national grid. */
const HILLS: Height = (x, y) => 35 + 0.02 * x + 0.04 * Math.sin(x / 2) * Math.cos(y / 3);
const AT = [412_300, 5_318_700] as const;

function survey(count: number, height: Height): readonly Point3M[] {
  const across = Math.ceil(Math.sqrt(count));
  return Array.from({ length: count }, (_, i) => {
    const [x, y] = [(i % across) / 10, Math.floor(i / across) / 10];
    return [AT[0] + x, AT[1] + y, Math.round(1000 * height(x, y)) / 1000];
  });
}

const csv = (points: readonly Point3M[], layer = '') =>
  `x;y;z${layer === '' ? '' : ';code'}\n${points.map(([x, y, z]) => `${x.toFixed(2)};${y.toFixed(2)};${z.toFixed(3)}${layer}`).join('\n')}\n`;

function spotsOf(result: ImportResult): readonly Point3M[] {
  return draftScene(result, Object.fromEntries(result.layers.map(({ name }) => [name, 'levels']))).parts.levels?.spots ?? [];
}

/** Greatest distance of a point from the surface through the others. */
function greatestM(all: readonly Point3M[], kept: readonly Point3M[]): number {
  const local = (points: readonly Point3M[]) => Float64Array.from(points.flatMap(([x, y, z]) => [x - AT[0], y - AT[1], z]));
  const surface = netSurface({ spots: local(kept), breaklines: [] }, 100);
  return all.reduce((worst, [x, y, z]) => Math.max(worst, Math.abs(z - surfaceLevelM(surface, x - AT[0], y - AT[1]))), 0);
}

const POINTS = survey(22_500, HILLS);
const TEXT = csv(POINTS);

describe('a survey of more levels than a scene holds', () => {
  const read = readText(TEXT);
  const question = read.questions.find(({ id }) => id === 'thin');

  it('asks, and proposes the finest tolerance', () => {
    expect(codes(read)).toMatchObject({ mends: expect.arrayContaining(['LEVELS_THINNED']), issues: [], open: ['thin'] });
    expect(question?.says).toBe(
      'The survey has 22,500 levels; a scene holds 20,000 at most. How far may the surface through those that are kept differ from those left out?',
    );
    expect(question?.choices.map(({ value }) => value)).toEqual(['2', '5', '10', '20', '50']);
    expect(question?.taken).toBe('2');
  });

  it.each(['2', '5', '20'])('%s mm: no left-out level is further off, and count and difference are told', (answer) => {
    const result = readText(TEXT, { thin: answer });
    const kept = spotsOf(result);
    const all = new Set(POINTS.map((point) => point.join()));
    for (const point of kept) expect(all.has(point.join())).toBe(true);
    const worstMm = 1000 * greatestM(POINTS, kept);
    expect(worstMm).toBeLessThanOrEqual(Number(answer) + 1e-6);
    expect(kept.length).toBeLessThan(MAX_LIST_POINTS);
    const told = result.mends.find(({ code }) => code === 'LEVELS_THINNED');
    // Told to a tenth, and never smaller than it is.
    expect(told?.values.mostMm).toBeGreaterThanOrEqual(worstMm - 1e-6);
    expect(told?.values.mostMm).toBeLessThan(worstMm + 0.1);
    expect(told?.values).toMatchObject({ count: 22_500, after: kept.length, errorMm: Number(answer) });
    expect(result.thinned).toEqual(result.layers.map(({ name }) => name));
  });

  it('stands in the history of the scene, in both languages', () => {
    const result = readText(TEXT, { thin: '5' });
    const roles = Object.fromEntries(result.layers.map(({ name }) => [name, 'levels'] as const));
    const deck = [
      [AT[0], AT[1]],
      [AT[0] + 10, AT[1]],
      [AT[0] + 10, AT[1] + 10],
    ] as const;
    const { history } = draftScene(result, roles, { deck });
    const mend = /^Of 22,500 levels, [\d,]+ were kept: .* at most 5 mm; greatest difference found (?:4\.[5-9]|5) mm\.$/;
    expect(history.filter((line) => mend.test(line))).toHaveLength(1);
    expect(draftScene(result, roles, { deck, language: 'de' }).history.join('\n')).toMatch(
      /Von 22\.500 Höhen wurden [\d.]+ behalten: Die Fläche durch sie weicht von jeder weggelassenen Höhe um höchstens 5 mm ab; größte gefundene Abweichung (?:4,[5-9]|5) mm\./,
    );
    expect(importIn(result, 'de').questions.find(({ id }) => id === 'thin')?.says).toMatch(
      /^Die Vermessung hat 22\.500 Höhen, eine Szene fasst höchstens 20\.000\./,
    );
  });

  it('is asked and answered on the command line alike', () => {
    const call = (...more: string[]) => run(['import', 'survey.csv', ...more], () => new TextEncoder().encode(TEXT));
    expect(call().out).toContain('thin: The survey has 22,500 levels');
    const result = call('--answer', 'thin=10', '--json');
    expect(JSON.parse(result.out).mends.find(({ code }: { code: string }) => code === 'LEVELS_THINNED').values.errorMm).toBe(10);
  });

  it('a plane needs its corners alone', () => {
    const plane = readText(csv(survey(22_500, (x, y) => 35 + 0.05 * x + 0.1 * y)));
    // 150 × 150 levels at steps of 10 cm, rounded to the millimetre: 2 mm are never reached.
    expect(spotsOf(plane).length).toBeLessThanOrEqual(8);
  });

  it('up to 20 000 levels nothing is asked or changed', () => {
    const points = survey(20_000, HILLS);
    const result = readText(csv(points));
    expect(result.questions.map(({ id }) => id)).not.toContain('thin');
    expect(spotsOf(result)).toHaveLength(20_000);
  });

  it('what is not levels stays whole', () => {
    const trees = survey(30, HILLS).map(([x, y, z]) => [x + 0.05, y + 0.05, z] as const);
    const both = `${csv(POINTS, ';ground')}${csv(trees, ';tree').split('\n').slice(1).join('\n')}`;
    const result = readText(both);
    expect(result.thinned).toEqual(['ground']);
    expect(result.layers.find(({ name }) => name === 'tree')?.shapes).toHaveLength(30);
    // Used as levels after all, they make another surface: that is said.
    const issues = (roles: Record<string, 'levels' | 'trees' | 'ignore'>) => draftScene(result, roles).issues.map(({ code }) => code);
    expect(issues({ ground: 'levels', tree: 'levels' })).toContain('LEVELS_THINNED_APART');
    expect(issues({ ground: 'levels', tree: 'trees' })).not.toContain('LEVELS_THINNED_APART');
  });
});

describe('what cannot be thinned', () => {
  it('too rough: told, and nothing is left out', () => {
    const rough = readText(csv(survey(22_500, (x, y) => 35 + (Math.round(10 * (x + y)) % 2))));
    expect(codes(rough).issues).toEqual(['warning LEVELS_TOO_ROUGH']);
    expect(rough.thinned).toBeUndefined();
    expect(spotsOf(rough)).toHaveLength(22_500);
  });

  it('above the limit: told with the limit, before any work', () => {
    const spot: DrawingShape = { kind: 'point', at: [0, 0], levelM: 1 };
    const layer = { name: 'ground', hidden: false, shapes: new Array<DrawingShape>(MAX_THINNED + 1).fill(spot), used: {}, ignored: {} };
    const gather = new Gathering({});
    const steps = thinLevels([layer], 'table', gather);
    expect(steps.next()).toEqual({ done: true, value: { layers: [layer], thinned: [] } });
    expect(gather.issues()).toMatchObject([
      {
        code: 'LEVELS_TOO_MANY',
        level: 'warning',
        got: '1,000,001 levels and 0 points on lines with levels',
        expected: 'at most 1,000,000 levels and 10,000 points on lines, which can then be thinned',
      },
    ]);
  });
});
