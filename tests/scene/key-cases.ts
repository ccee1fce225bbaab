/** Faults of keys, types and ranges, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import { type Json, square } from './scenes.ts';

const layersOf = (scene: Json): Json => scene.buildups[0].layers;

export const SHAPE_OF_FILE_CASES: readonly SceneCase[] = [
  {
    fault: 'misspelt key',
    code: 'UNKNOWN_KEY',
    path: 'zones[0].outlin',
    says: ['Did you mean "outline"?', 'holes'],
    put: (s) => {
      s.zones[0].outlin = s.zones[0].outline;
      delete s.zones[0].outline;
    },
  },
  {
    fault: 'unknown key',
    code: 'UNKNOWN_KEY',
    path: 'deck.colour',
    says: ['one of outline, openings'],
    put: (s) => {
      s.deck.colour = 'red';
    },
  },
  {
    fault: 'key of another variant',
    code: 'UNKNOWN_KEY',
    path: 'objects[0].outline',
    says: ['spreadM'],
    put: (s) => {
      s.objects[0].outline = square(0, 0, 1);
    },
  },
  {
    fault: 'odd key',
    code: 'UNKNOWN_KEY',
    path: 'deck["a b"]',
    says: ['"a b"'],
    put: (s) => {
      s.deck['a b'] = 1;
    },
  },
  {
    fault: 'missing key',
    code: 'MISSING_KEY',
    path: 'zones[1].buildup',
    says: ['no "buildup"', 'Add "buildup" to zones[1].'],
    put: (s) => {
      delete s.zones[1].buildup;
    },
  },
  {
    fault: 'missing kind',
    code: 'MISSING_KEY',
    path: 'objects[1].kind',
    says: ['"tree", "line", "block"'],
    put: (s) => {
      delete s.objects[1].kind;
    },
  },
  {
    fault: 'null',
    code: 'WRONG_TYPE',
    path: 'deck.slabMm',
    says: ['null', 'leave the key out'],
    put: (s) => {
      s.deck.slabMm = null;
    },
  },
  {
    fault: 'number as text',
    code: 'WRONG_TYPE',
    path: 'deck.slabMm',
    says: ['"350"', '[mm]', 'Write 350 without quotation marks.'],
    put: (s) => {
      s.deck.slabMm = '350';
    },
  },
  {
    fault: 'number with unit',
    code: 'WRONG_TYPE',
    path: 'deck.slabMm',
    says: ['Write 350 alone'],
    put: (s) => {
      s.deck.slabMm = '350 mm';
    },
  },
  {
    fault: 'text as number',
    code: 'WRONG_TYPE',
    path: 'zones[0].id',
    says: ['Write "7" in quotation marks.'],
    put: (s) => {
      s.zones[0].id = 7;
    },
  },
  {
    fault: 'list for object',
    code: 'WRONG_TYPE',
    path: 'deck',
    says: ['[]', 'object in braces'],
    put: (s) => {
      s.deck = [];
    },
  },
  {
    fault: 'object for list',
    code: 'WRONG_TYPE',
    path: 'zones',
    says: ['an object with a', 'a list'],
    put: (s) => {
      s.zones = { a: 1 };
    },
  },
  {
    fault: 'true as text',
    code: 'WRONG_TYPE',
    path: 'deck.rootResistant',
    says: ['Write true without quotation marks.'],
    put: (s) => {
      s.deck.rootResistant = 'true';
    },
  },
  {
    fault: 'decimal comma as text',
    code: 'DECIMAL_COMMA',
    path: 'stages[0].stockpiles[0].heightM',
    says: ['"0,8"', 'Write 0.8'],
    put: (s) => {
      s.stages[0].stockpiles[0].heightM = '0,8';
    },
  },
  {
    fault: 'thousands and decimal comma',
    code: 'DECIMAL_COMMA',
    path: 'objects[0].massKg',
    says: ['Write 2400.5'],
    put: (s) => {
      s.objects[0].massKg = '2.400,5';
    },
  },
  {
    fault: 'comma of unclear meaning',
    code: 'DECIMAL_COMMA',
    path: 'objects[0].massKg',
    says: ['Write 2.400', 'or 2400 if the comma parts thousands'],
    put: (s) => {
      s.objects[0].massKg = '2,400';
    },
  },
  {
    fault: 'decimal comma in a thickness',
    code: 'DECIMAL_COMMA',
    path: 'buildups[0].layers[4].thicknessMm',
    says: ['Write 12.5'],
    put: (s) => {
      layersOf(s)[4].thicknessMm = '12,5';
    },
  },
  {
    fault: 'point with decimal commas',
    code: 'DECIMAL_COMMA',
    path: 'deck.outline[1]',
    says: ['[1,5,2,3]', 'write [1.5, 2.3]'],
    put: (s) => {
      s.deck.outline[1] = [1, 5, 2, 3];
    },
  },
  {
    fault: 'point with level',
    code: 'WRONG_LENGTH',
    path: 'deck.outline[1]',
    says: ['3 entries', 'two numbers [x, y]'],
    put: (s) => {
      s.deck.outline[1] = [20, 0, 0.2];
    },
  },
  {
    fault: 'level without z',
    code: 'WRONG_LENGTH',
    path: 'deck.levels.spots[1]',
    says: ['2 entries', 'three numbers [x, y, z]'],
    put: (s) => {
      s.deck.levels.spots[1] = [20, 0];
    },
  },
  {
    fault: 'empty id',
    code: 'WRONG_LENGTH',
    path: 'zones[0].id',
    says: ['1 to 100'],
    put: (s) => {
      s.zones[0].id = '';
    },
  },
  {
    fault: 'no axles',
    code: 'WRONG_LENGTH',
    path: 'vehicles[0].axles',
    says: ['at least one'],
    put: (s) => {
      s.vehicles[0].axles = [];
    },
  },
  {
    fault: 'negative thickness',
    code: 'OUT_OF_RANGE',
    path: 'buildups[0].layers[4].thicknessMm',
    says: ['-250', 'above 0', 'sign'],
    put: (s) => {
      layersOf(s)[4].thicknessMm = -250;
    },
  },
  {
    fault: 'zero load',
    code: 'OUT_OF_RANGE',
    path: 'deck.bays[0].permanentKNm2',
    says: ['above 0 [kN/m²]'],
    put: (s) => {
      s.deck.bays[0].permanentKNm2 = 0;
    },
  },
  {
    fault: 'coarse grid',
    code: 'OUT_OF_RANGE',
    path: 'grid.cellM',
    says: ['from 0.05 to 2 [m]'],
    put: (s) => {
      s.grid.cellM = 25;
    },
  },
  {
    fault: 'more than all',
    code: 'OUT_OF_RANGE',
    path: 'materials[0].waterCapacityPercent',
    says: ['from 0 to 100 [%]'],
    put: (s) => {
      s.materials[0].waterCapacityPercent = 350;
    },
  },
  {
    fault: 'half a wheel',
    code: 'OUT_OF_RANGE',
    path: 'vehicles[0].axles[0].wheels',
    says: ['whole number'],
    put: (s) => {
      s.vehicles[0].axles[0].wheels = 1.5;
    },
  },
  {
    fault: 'weightless tree',
    code: 'OUT_OF_RANGE',
    path: 'objects[0].massKg',
    says: ['above 0 [kg]'],
    put: (s) => {
      s.objects[0].massKg = 0;
    },
  },
  {
    fault: 'wrong role',
    code: 'WRONG_VALUE',
    path: 'materials[0].role',
    says: ['Did you mean "drainage fill"?'],
    put: (s) => {
      s.materials[0].role = 'drainage fil';
    },
  },
  {
    fault: 'wrong kind',
    code: 'WRONG_VALUE',
    path: 'zones[0].finish.kind',
    says: ['"build-up", "level", "plane", "spots"', 'Did you mean "level"?'],
    put: (s) => {
      s.zones[0].finish.kind = 'Level';
    },
  },
  {
    fault: 'range without max',
    code: 'MISSING_KEY',
    path: 'buildups[0].layers[3].thicknessMm.max',
    says: ['greatest thickness'],
    put: (s) => {
      delete layersOf(s)[3].thicknessMm.max;
    },
  },
  {
    fault: 'long list of points',
    code: 'TOO_MANY_POINTS',
    path: 'zones[0].outline',
    says: ['at most 20,000'],
    put: (s) => {
      s.zones[0].outline = Array.from({ length: 20_001 }, (_, i) => [i, 0]);
    },
  },
  {
    fault: 'far too many points',
    code: 'TOO_MANY_POINTS',
    path: '',
    says: ['at most 200,000'],
    put: (s) => {
      s.zones[0].outline = Array.from({ length: 200_001 }, () => [0, 0]);
    },
  },
  {
    fault: 'lost letters',
    code: 'TEXT_DAMAGED',
    path: '',
    level: 'warning',
    says: ['UTF-8', 'line 1'],
    put: (s) => {
      s.name = 'B\uFFFDro';
    },
  },
];
