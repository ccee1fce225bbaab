/** Faults of set-up areas, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import type { Json } from './scenes.ts';

const areaOf = (scene: Json): Json => scene.setUpAreas[0];

export const SET_UP_CASES: readonly SceneCase[] = [
  {
    fault: 'area of two points',
    code: 'POLYGON_TOO_FEW_POINTS',
    path: 'setUpAreas[0].outline',
    says: ['set-up area "U1"'],
    put: (s) => {
      areaOf(s).outline = areaOf(s).outline.slice(0, 2);
    },
  },
  {
    fault: 'area that crosses itself',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'setUpAreas[0].outline[0]',
    says: ['set-up area "U1"'],
    put: (s) => {
      const [a, b, c, d] = areaOf(s).outline;
      areaOf(s).outline = [a, c, b, d];
    },
  },
  {
    fault: 'building of one point',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'setUpAreas[0].building',
    says: ['building of set-up area "U1"'],
    put: (s) => {
      areaOf(s).building = [[0, 10]];
    },
  },
  {
    fault: 'unknown vehicle',
    code: 'UNKNOWN_ID',
    path: 'setUpAreas[0].vehicle',
    says: ['the vehicle "fire-16"', 'Did you mean "fire-16t"?'],
    put: (s) => {
      areaOf(s).vehicle = 'fire-16';
    },
  },
  {
    fault: 'no vehicle',
    code: 'MISSING_KEY',
    path: 'setUpAreas[0].vehicle',
    says: ['no "vehicle"'],
    put: (s) => {
      delete areaOf(s).vehicle;
    },
  },
  {
    fault: 'kind in another spelling',
    code: 'WRONG_VALUE',
    path: 'setUpAreas[0].kind',
    says: ['"set-up", "movement"'],
    put: (s) => {
      areaOf(s).kind = 'setup';
    },
  },
  {
    fault: 'list in another spelling',
    code: 'UNKNOWN_KEY',
    path: 'setupAreas',
    says: ['setUpAreas'],
    put: (s) => {
      s.setupAreas = s.setUpAreas;
      delete s.setUpAreas;
    },
  },
  {
    fault: 'two areas of one id',
    code: 'DUPLICATE_ID',
    path: 'setUpAreas[1].id',
    says: ['the id "U1" again'],
    put: (s) => {
      s.setUpAreas.push({ ...areaOf(s) });
    },
  },
];
