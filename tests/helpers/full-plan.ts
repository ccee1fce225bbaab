/** A scene with one of everything that is drawn in a plan, and how it is changed and checked. An invented place. */

import { patched } from '../../src/edit/point-lists.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { PointM, SceneFile } from '../../src/model/scene-file.ts';
import { KNOWN_IDS } from '../../src/project/materials.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { bay, rect, SOIL_100, SOUND, sceneOf, zone } from './scene-builder.ts';

/** One of everything. */
export const PLAN: SceneFile = sceneOf({
  deck: {
    outline: rect(0, 0, 20, 10),
    openings: [rect(1, 1, 2, 2), rect(3, 1, 4, 2)],
    bays: [
      bay('A1', rect(0, 0, 10, 10), { permanentKNm2: 12, imposedKNm2: 5, vehicles: ['loader', 'van'] }),
      bay('A2', rect(10, 0, 20, 10)),
    ],
    columns: [{ id: 'C1', at: [5, 5], sizeM: [0.4, 0.4] }],
    outlets: [{ id: 'O1', at: [6, 6], kind: 'outlet' }],
    edges: [
      {
        id: 'E1',
        line: [
          [0, 0],
          [20, 0],
        ],
        kind: 'upstand',
        membraneTopM: 0.3,
      },
    ],
    levels: {
      spots: [
        [0, 0, 0.1],
        [20, 0, 0.2],
        [0, 10, 0.3],
      ],
      breaklines: [
        [
          [1, 5, 0],
          [19, 5, 0],
        ],
      ],
    },
  },
  buildups: [SOIL_100, SOUND],
  zones: [
    zone('Z1', rect(0, 0, 10, 10), 'soil-100', {
      holes: [rect(1, 1, 2, 2), rect(3, 1, 4, 2)],
      finish: { kind: 'plane', at: [2, 3, 0.5], fallPercent: 2, towardsDeg: 90 },
    }),
    zone('Z2', rect(10, 0, 20, 10), 'sound', {
      finish: {
        kind: 'spots',
        spots: [
          [10, 0, 0.5],
          [20, 0, 0.6],
          [15, 9, 0.7],
        ],
        breaklines: [
          [
            [11, 5, 0.55],
            [19, 5, 0.55],
          ],
        ],
      },
    }),
  ],
  objects: [
    { kind: 'tree', id: 'T1', at: [8, 8], massKg: 900, spreadM: 2 },
    { kind: 'block', id: 'P1', outline: rect(15, 5, 16, 6), kNm2: 4 },
  ],
  vehicles: ['loader', 'van'].map((id) => ({
    id,
    name: id,
    widthM: 1.8,
    axles: [{ atM: 0, loadKN: 40, wheels: 2, trackM: 1.5, contactM: [0.2, 0.3] as PointM }],
  })),
  traffic: [
    {
      id: 'F1',
      vehicle: 'van',
      route: [
        [0, 5],
        [20, 5],
      ],
    },
  ],
  setUpAreas: [
    {
      id: 'U1',
      kind: 'set-up',
      outline: rect(11, 1, 14, 9),
      vehicle: 'van',
      building: [
        [11, 10],
        [14, 10],
      ],
    },
  ],
  stages: [
    {
      id: 'S1',
      name: 'First',
      place: [
        { zones: ['Z1'], roles: ['protection'] },
        { zones: ['Z2'], roles: ['substrate'], objects: ['T1'] },
        { objects: ['P1', 'T1'] },
      ],
      stockpiles: [{ id: 'K1', outline: rect(17, 1, 19, 3), material: 'soil', heightM: 0.5 }],
      plant: [
        {
          vehicle: 'loader',
          route: [
            [0, 1],
            [5, 1],
          ],
        },
      ],
    },
  ],
  accessPoints: [{ id: 'G1', at: [0, 5], kind: 'gate' }],
  probes: [{ id: 'P1', at: [4, 4], measuredMm: 100, layer: 'soil' }],
  views: [{ id: 'V1', name: 'View', eye: [0, 0, 9], target: [5, 5, 0], show: { stage: 'S1', explode: 0.5 } }],
});
/** Errors by which a scene would be refused. */
export const errorsOf = (scene: SceneFile) =>
  parseScene(JSON.stringify(scene), KNOWN_IDS)
    .issues.filter(({ level }) => level === 'error')
    .map(({ code, path }) => `${code} ${path}`);

export const withPatch = (patch: ScenePatch) => patched(PLAN, patch);
