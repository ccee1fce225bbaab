/** The surface asked for at many places is the one found by looking at every triangle. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { partStates } from '../../src/view3d/part-states.ts';
import { topAt } from '../../src/view3d/top-at.ts';
import { surfaceOf } from '../../src/view3d/top-index.ts';
import { createEngine } from '../../src/worker/engine.ts';

const LOOK = { hiddenKinds: new Set<never>(), hiddenZones: new Set<string>(), onlyKind: null, onlyZone: null };

it.each([null, 3, 4, 9])('of the courtyard in stage %s', async (stage) => {
  const answer = await createEngine().open(readFileSync(new URL('../../scenes/courtyard.scene.json', import.meta.url), 'utf8'));
  if (!answer.ok) throw new Error('the courtyard does not open');
  const { picture } = answer.snapshot;
  const states = partStates(picture.parts, { ...LOOK, stage });
  const surface = surfaceOf(picture, states);
  const { min, max } = picture.boundsM;
  let found = 0;
  for (let i = 0; i < 400; i++) {
    // A lattice that no straight edge of the deck runs along.
    const x = min[0] - 1 + ((i * 0.6180339887) % 1) * (max[0] - min[0] + 2);
    const y = min[1] - 1 + ((i * 0.7548776662) % 1) * (max[1] - min[1] + 2);
    const want = topAt(picture, states, x, y);
    const got = surface(x, y);
    expect(got?.part, `${x} ${y}`).toBe(want?.part);
    if (want === null || got === null) continue;
    expect(got.zM).toBeCloseTo(want.zM, 9);
    found++;
  }
  expect(found).toBeGreaterThan(200);
});

it('a fill flush with its element leaves the element on top', async () => {
  const text = readFileSync(new URL('../../scenes/courtyard.scene.json', import.meta.url), 'utf8');
  const answer = await createEngine().open(text);
  if (!answer.ok) throw new Error('the courtyard does not open');
  const { picture, stages } = answer.snapshot;
  // In S5 the fill is blown in; in the lane it stands flush, without a thickness of its own.
  const states = partStates(picture.parts, { ...LOOK, stage: stages.findIndex(({ id }) => id === 'S5') });
  const tops = picture.parts.filter((part, i) => part.owner === 'lane' && states[i]?.top);
  expect(tops.map(({ kind }) => kind)).toEqual(['drainage element']);
});
