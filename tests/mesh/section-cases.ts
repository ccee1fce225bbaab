/** Small decks for sections, and measures of what is drawn. */

import { expect } from 'vitest';
import { sectionSource } from '../../src/export/picture-source.ts';
import { drawSection } from '../../src/mesh/section-drawing.ts';
import type { PointM, SceneFile } from '../../src/model/scene-file.ts';
import type { SectionDrawing } from '../../src/model/section-drawing.ts';
import { buildUp, MAKE_UP, read, type SceneParts, sceneOf } from '../helpers/scene-builder.ts';

/** Two layers of 0.10 and 0.40 m. */
const DEEP = buildUp('deep', [
  { material: 'light', thicknessMm: 100 },
  { material: 'soil', thicknessMm: 400 },
]);
const SHALLOW = buildUp('shallow', [{ material: 'soil', thicknessMm: 250 }]);

export const section = (scene: SceneFile, line: PointM[], stage: number | null = null) =>
  drawSection(sectionSource(read(scene)), line, stage);
export const deckOf = (parts: SceneParts) => sceneOf({ buildups: [DEEP, SHALLOW, MAKE_UP], ...parts });

/** Area of the pieces of one owner and layer. */
export const areaM2 = (drawing: SectionDrawing, owner: string, layer: number) =>
  drawing.pieces.filter((p) => p.owner === owner && p.layer === layer).reduce((sum, p) => sum + p.areaM2, 0);
export const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 6));
