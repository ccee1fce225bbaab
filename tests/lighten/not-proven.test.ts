/** What is called the best is the best: an answer that another one beats is replaced by it, and one held back by shared blame is not called proven. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bestAmong, lentAnswers } from '../../src/lighten/lighten.ts';
import type { LightenUnmet, LightenVariant } from '../../src/model/lighten.ts';
import type { SceneBay, SceneFile } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { read } from '../helpers/scene-builder.ts';

const variant = (given: Partial<LightenVariant>) =>
  ({ proven: true, unmet: [], savedKN: 0, exchangedM3: 0, costBefore: null, costAfter: null, ...given }) as LightenVariant;
const UNMET = { bay: 'A1' } as LightenUnmet;

describe('answers for several aims', () => {
  it('one that leaves a limit unmet gives way to one that keeps it, and is not proven', () => {
    const weight = variant({ aim: 'weight', savedKN: 90, unmet: [UNMET], proven: false });
    const change = variant({ aim: 'change', savedKN: 80, exchangedM3: 5 });
    const found = bestAmong(weight, [weight, change]);
    expect([found.aim, found.savedKN, found.unmet, found.proven]).toEqual(['weight', 80, [], false]);
    expect(bestAmong(change, [weight, change])).toBe(change);
  });

  it('among those that keep as many, the aim decides', () => {
    const weight = variant({ aim: 'weight', savedKN: 90, exchangedM3: 5 });
    const change = variant({ aim: 'change', savedKN: 95, exchangedM3: 7 });
    expect(bestAmong(weight, [weight, change]).savedKN).toBe(95);
    expect(bestAmong(change, [weight, change]).exchangedM3).toBe(5);
  });

  it('without prices none is the cheapest', () => {
    const cost = variant({ aim: 'cost', costAfter: 10 });
    expect(bestAmong(cost, [cost, variant({ aim: 'weight', costAfter: null })])).toBe(cost);
  });
});

it('an aim whose search came to nothing is lent the answer of another, which nothing proves the best; without prices it has none', () => {
  const change = variant({ aim: 'change', exchangedM3: 5 });
  const lent = lentAnswers(
    [change],
    [
      { aim: 'weight', why: 'no common answer' },
      { aim: 'cost', why: 'no prices' },
    ],
  );
  expect(lent).toEqual([{ ...change, aim: 'weight', proven: false }]);
  expect(lentAnswers([], [{ aim: 'weight', why: 'time' }])).toEqual([]);
});

describe('the problem deck with less permitted', () => {
  const scene = JSON.parse(readFileSync(new URL('../../scenes/problem-deck.scene.json', import.meta.url), 'utf8')) as SceneFile;
  const permitting = (share: number) => {
    const times = (kNm2: number | undefined) => (kNm2 === undefined ? {} : { kNm2: kNm2 * share });
    const bays = scene.deck.bays.map((bay): SceneBay => {
      const limits = (['permanentKNm2', 'totalKNm2', 'stageKNm2'] as const).map((key) => [key, times(bay[key]).kNm2] as const);
      return { ...bay, ...Object.fromEntries(limits.filter(([, kNm2]) => kNm2 !== undefined)) };
    });
    return read({ ...scene, deck: { ...scene.deck, bays } });
  };

  it('the lightest is not called proven: one finding held back several zones, though fewer might have done', () => {
    const { leftOut, variants } = lighten(permitting(0.7), { aims: ['weight'] });
    const shared = leftOut.filter((one) => leftOut.some(({ zone, says }) => says === one.says && zone !== one.zone));
    expect(shared.length).toBeGreaterThan(1);
    expect(variants.map(({ unmet, proven }) => [unmet, proven])).toEqual([[[], false]]);
  });

  it('no aim leaves more limits unmet than another', () => {
    const { variants } = lighten(permitting(0.5), { aims: ['weight', 'change'] });
    expect(variants.map(({ unmet }) => unmet.length)).toEqual([0, 0]);
  });
});
