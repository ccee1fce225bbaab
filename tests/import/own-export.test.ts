/** The plan that is exported as DXF comes back as the deck it was drawn from. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { draftScene } from '../../src/import/draft-scene.ts';
import { readDrawing } from '../../src/import/read-drawing.ts';
import { areaOf } from '../../src/scene/ring.ts';

const TERRACE = 'scenes/terrace.scene.json';

it('outline, bays with their names, columns', async () => {
  const scene = JSON.parse(readFileSync(TERRACE, 'utf8'));
  const exported = run(['export', TERRACE, '--plan', '--dxf', 'plan.dxf'], (file) => readFileSync(file), '2026-01-05');
  const result = readDrawing('plan.dxf', await exported.file!.bytes);
  expect(result.questions.filter(({ certain }) => !certain)).toEqual([]);
  const draft = draftScene(result, { OUTLINE: 'outline', BAYS: 'bays', COLUMNS: 'columns' });
  expect(draft.issues).toEqual([]);
  expect(areaOf(draft.scene?.deck.outline ?? [])).toBeCloseTo(areaOf(scene.deck.outline), 6);
  const bays = draft.waiting.filter(({ part }) => part === 'bay');
  expect(bays.map((bay) => ('outline' in bay ? areaOf(bay.outline) : 0))).toEqual(
    scene.deck.bays.map(({ outline }: { outline: [number, number][] }) => areaOf(outline)),
  );
  for (const [i, { id }] of scene.deck.bays.entries()) expect(bays[i]?.id).toContain(id);
  expect(draft.scene?.deck.columns).toHaveLength(scene.deck.columns.length);
});
