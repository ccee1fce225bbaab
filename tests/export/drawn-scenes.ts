/** Decks with drawings that can be worked out in the head. */

import { exportDrawn } from '../../src/export/drawn-file.ts';
import { sectionSource } from '../../src/export/picture-source.ts';
import type { DrawnKind, DrawnOptions } from '../../src/model/drawn-file.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { bay, buildUp, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** 4 m × 3 m with 0.10 m of light fill below 0.40 m of soil on a slab of 0.20 m; somewhere on a national grid if moved. */
export function drawnScene(moveX = 0, moveY = 0): SceneFile {
  const at = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => [x + moveX, y + moveY] as const);
  const deck = at(rect(0, 0, 4, 3));
  return sceneOf({
    name: 'Hof “Süd” & <Garten>',
    buildups: [
      buildUp('deep', [
        { material: 'light', thicknessMm: 100 },
        { material: 'soil', thicknessMm: 400 },
      ]),
    ],
    zones: [zone('Z', deck, 'deep', { name: 'Größe Ä & <b>' })],
    deck: {
      outline: deck,
      slabMm: 200,
      bays: [bay('A1', deck)],
      edges: [
        {
          id: 'E1',
          kind: 'upstand',
          membraneTopM: 0.65,
          line: at([
            [0, 0],
            [0, 3],
          ]),
        },
      ],
      columns: [{ id: 'C1', at: at([[2, 1.5]])[0], sizeM: [0.4, 0.3] }],
      outlets: [{ id: 'O1', at: at([[3, 1]])[0], kind: 'outlet', lps: 4 }],
    },
    objects: [
      { kind: 'block', id: 'P', name: 'Kübel', outline: at(rect(1, 1, 2, 2)), kNm2: 3, heightM: 0.6 },
      { kind: 'tree', id: 'T', at: at([[3, 2]])[0], massKg: 500, spreadM: 2 },
    ],
  });
}

export async function drawnBytes(scene: SceneFile, kind: DrawnKind, options: Partial<DrawnOptions> = {}): Promise<Uint8Array> {
  const project = read(scene);
  const file = await exportDrawn(kind, { project, source: sectionSource(project) }, { language: 'en', ...options });
  return file.bytes;
}

export async function drawnText(scene: SceneFile, kind: DrawnKind, options: Partial<DrawnOptions> = {}): Promise<string> {
  return new TextDecoder('utf-8', { fatal: true }).decode(await drawnBytes(scene, kind, options));
}
