/** Faults of retaining edges, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import type { Json } from './scenes.ts';

const wallOf = (scene: Json): Json => scene.objects[3];

export const WALL_CASES: readonly SceneCase[] = [
  {
    fault: 'stem as wide as the base slab',
    code: 'WALL_SHAPE',
    path: 'objects[3].stemM',
    says: ['a stem of 0.5 m on a base slab of 0.5 m', 'kind "line"'],
    put: (s) => {
      wallOf(s).stemM = 0.5;
    },
  },
  {
    fault: 'base slab in millimetres',
    code: 'WALL_SHAPE',
    path: 'objects[3].slabM',
    says: ['120 m thick', 'metres are asked for'],
    put: (s) => {
      wallOf(s).slabM = 120;
    },
  },
  {
    fault: 'backfill in kN/m³',
    code: 'DENSITY_UNUSUAL',
    level: 'warning',
    path: 'objects[3].backfill.density',
    // 19 · 1000 / 9.81 = 1936.8
    says: ['19 kg/m³', 'Was kN/m³ meant? Then write 1937.'],
    put: (s) => {
      wallOf(s).backfill.density = 19;
    },
  },
  {
    fault: 'wall in t/m³',
    code: 'DENSITY_UNUSUAL',
    level: 'warning',
    path: 'objects[3].wallDensity',
    says: ['Was t/m³ meant? Then write 2500.'],
    put: (s) => {
      wallOf(s).wallDensity = 2.5;
    },
  },
  {
    fault: 'backfill heavier than stone',
    code: 'DENSITY_UNUSUAL',
    level: 'warning',
    path: 'objects[3].backfill.density',
    says: ['Check the value; kg/m³ is asked for.'],
    put: (s) => {
      wallOf(s).backfill.density = 19000;
    },
  },
  {
    fault: 'friction under the base left out',
    code: 'MISSING_KEY',
    path: 'objects[3].baseFriction',
    says: ['no "baseFriction"'],
    put: (s) => {
      delete wallOf(s).baseFriction;
    },
  },
  {
    fault: 'friction under the base as an angle',
    code: 'OUT_OF_RANGE',
    path: 'objects[3].baseFriction',
    says: ['17', 'at most 1'],
    put: (s) => {
      wallOf(s).baseFriction = 17;
    },
  },
  {
    fault: 'soil on neither side',
    code: 'WRONG_VALUE',
    path: 'objects[3].side',
    says: ['"left", "right"'],
    put: (s) => {
      wallOf(s).side = 'north';
    },
  },
  {
    fault: 'a wall of one point',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'objects[3].line',
    says: ['retaining edge "R1"'],
    put: (s) => {
      wallOf(s).line = [[1, 7]];
    },
  },
];
