/** Arrows point down the fall, lie on the top surface, and stay away where the deck is level. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { createViewStore } from '../../src/store/view-store.ts';
import { fallArrows } from '../../src/view3d/fall-arrows.ts';
import { partStates } from '../../src/view3d/part-states.ts';
import { createEngine } from '../../src/worker/engine.ts';

it('on the terrace they run towards lower membrane, each from its tail to its tip', async () => {
  const engine = createEngine();
  const answer = await engine.open(readFileSync(new URL('../../scenes/terrace.scene.json', import.meta.url), 'utf8'));
  if (!answer.ok) throw new Error('terrace did not open');
  const { picture, grid } = answer.snapshot;
  const map = await engine.map('fall', null);
  const { positions, parts } = fallArrows(map, grid, picture, partStates(picture.parts, createViewStore().getState()));
  // A shaft and two strokes of the head, two ends each.
  expect(parts.length % 6).toBe(0);
  expect(parts.length).toBeGreaterThan(60);
  for (let v = 0; v < parts.length; v += 6) {
    const [x0, y0, , x1, y1] = positions.subarray(3 * v, 3 * v + 6);
    // by hand: the membrane is 0.02 y + 0.01 |x − 4.5|
    const level = (x: number, y: number) => 0.02 * y + 0.01 * Math.abs(x - 4.5);
    if (Math.abs((x0 + x1) / 2 - 4.5) > 0.6) expect(level(x1, y1)).toBeLessThan(level(x0, y0));
  }
});

it('there are none on a level deck', async () => {
  const scene = JSON.parse(readFileSync(new URL('../../scenes/terrace.scene.json', import.meta.url), 'utf8'));
  delete scene.deck.levels;
  const engine = createEngine();
  const answer = await engine.open(JSON.stringify(scene));
  if (!answer.ok) throw new Error('terrace did not open');
  const { picture, grid } = answer.snapshot;
  const map = await engine.map('fall', null);
  expect(fallArrows(map, grid, picture, partStates(picture.parts, createViewStore().getState())).parts).toHaveLength(0);
});
