/** Column shares of whole scenes: they make the deck's load, also after an edit. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { evaluateProject, readProject } from '../../src/project/evaluate-project.ts';
import { read, sceneOf } from '../helpers/scene-builder.ts';

const COLUMNS: NonNullable<SceneFile['deck']['columns']> = [
  { id: 'C1', at: [1, 1], sizeM: [0.4, 0.4] },
  { id: 'C2', at: [3, 1], sizeM: [0.4, 0.4] },
];

describe('a plain deck', () => {
  it('is shared at x = 2: 6 m² · 1.4715 each', () => {
    const { report } = read(sceneOf({ deck: { columns: COLUMNS } }));
    const half = { shareM2: expect.closeTo(6, 9), permanentKN: expect.closeTo(8.829, 9) };
    expect(report.columns).toEqual([
      { id: 'C1', ...half },
      { id: 'C2', ...half },
    ]);
  });

  it('without columns has no such part', () => {
    expect('columns' in read(sceneOf()).report).toBe(false);
  });

  it('is shared anew when a thickness changes, and when a column moves', () => {
    const scene = sceneOf({ deck: { columns: COLUMNS } });
    const thicker = { ...scene, buildups: [{ ...scene.buildups[0], layers: [{ material: 'soil', thicknessMm: 200 }] }] };
    const edited = evaluateProject(thicker, { previous: read(scene) });
    expect(edited.report.columns?.[0].permanentKN).toBeCloseTo(17.658, 9);
    // Border at x = 1.5: 4.5 m² · 2.943
    const moved = { ...thicker, deck: { ...thicker.deck, columns: [{ ...COLUMNS[0], at: [0, 1] as const }, COLUMNS[1]] } };
    expect(evaluateProject(moved, { previous: edited }).report.columns?.[0].permanentKN).toBeCloseTo(13.2435, 9);
  });
});

it.each(['terrace', 'courtyard', 'district'])('%s: shares add up to the deck and its load', (name) => {
  const { project } = readProject(readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8'));
  const { columns, deck } = project!.report;
  expect(columns!.reduce((sum, column) => sum + column.permanentKN, 0) / deck.saturatedKN).toBeCloseTo(1, 9);
  expect(columns!.reduce((sum, column) => sum + column.shareM2, 0) / deck.areaM2).toBeCloseTo(1, 9);
});
