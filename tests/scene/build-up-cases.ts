/** Faults of build-ups, materials, loads and stages, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import type { Json } from './scenes.ts';

const layersOf = (scene: Json): Json => scene.buildups[0].layers;

export const BUILD_UP_CASES: readonly SceneCase[] = [
  {
    fault: 'no layers',
    code: 'BUILDUP_EMPTY',
    level: 'warning',
    path: 'buildups[0].layers',
    says: ['build-up "lawn"'],
    put: (s) => {
      s.buildups[0].layers = [];
    },
  },
  {
    fault: 'two make-up layers',
    code: 'BUILDUP_TWO_RANGES',
    path: 'buildups[0].layers[4].thicknessMm',
    says: ['first at buildups[0].layers[3]', 'one make-up layer'],
    put: (s) => {
      layersOf(s)[4].thicknessMm = { min: 100, max: 300, nominal: 200 };
    },
  },
  {
    fault: 'nominal above max',
    code: 'THICKNESS_ORDER',
    path: 'buildups[0].layers[3].thicknessMm',
    says: ['min 80, nominal 500, max 450', 'min ≤ nominal ≤ max'],
    put: (s) => {
      layersOf(s)[3].thicknessMm.nominal = 500;
    },
  },
  {
    fault: 'min above max',
    code: 'THICKNESS_ORDER',
    path: 'buildups[0].layers[3].thicknessMm',
    says: ['Put the three in order'],
    put: (s) => {
      layersOf(s)[3].thicknessMm = { min: 450, max: 80, nominal: 200 };
    },
  },
  {
    fault: 'a layer of no thickness that is no infill',
    code: 'OUT_OF_RANGE',
    path: 'buildups[0].layers[4].thicknessMm',
    says: ['over 0 mm', 'infill'],
    put: (s) => {
      layersOf(s)[4].thicknessMm = 0;
    },
  },
  {
    fault: 'substrate without thickness',
    code: 'LAYER_NO_THICKNESS',
    path: 'buildups[0].layers[4]',
    says: ['"substrate-lawn"', 'Add "thicknessMm"'],
    put: (s) => {
      delete layersOf(s)[4].thicknessMm;
    },
  },
  {
    fault: 'element as make-up layer',
    code: 'LAYER_RANGE_AREAL',
    path: 'buildups[0].layers[1].thicknessMm',
    says: ['per m²', 'granular layer'],
    put: (s) => {
      layersOf(s)[3].thicknessMm = 200;
      layersOf(s)[1].thicknessMm = { min: 20, max: 60, nominal: 40 };
    },
  },
  {
    fault: 'element of another thickness',
    code: 'LAYER_THICKNESS_AREAL',
    path: 'buildups[0].layers[1].thicknessMm',
    says: ['40 mm for "drain-60"', '60 mm thick'],
    put: (s) => {
      layersOf(s)[1].thicknessMm = 40;
    },
  },
  {
    fault: 'sheet without thickness',
    code: 'LAYER_COUNTED_FLAT',
    path: 'buildups[0].layers[5]',
    level: 'warning',
    says: ['0 mm'],
    put: (s) => {
      s.materials.push({ id: 'net', name: 'Net', role: 'filter', areal: { dry: 0.1, saturated: 0.2 } });
      layersOf(s).push({ material: 'net' });
    },
  },
  {
    fault: 'infill at the bottom',
    code: 'INFILL_FIRST',
    path: 'buildups[0].layers[0].infill',
    says: ['element with voids directly below'],
    put: (s) => {
      s.buildups[0].layers = [layersOf(s)[2], layersOf(s)[4]];
    },
  },
  {
    fault: 'infill on a fleece',
    code: 'INFILL_NO_VOIDS',
    path: 'buildups[0].layers[1].infill',
    says: ['"lava-8-16" as infill on "fleece-500"', 'voidLm2'],
    put: (s) => {
      layersOf(s).splice(1, 1);
    },
  },
  {
    fault: 'infill of a fleece',
    code: 'INFILL_NOT_GRANULAR',
    path: 'buildups[0].layers[2].infill',
    says: ['sheet or element', 'granular'],
    put: (s) => {
      s.buildups[0].layers[2] = { material: 'fleece-500', infill: true };
    },
  },
  {
    fault: 'material without weight',
    code: 'MATERIAL_NO_WEIGHT',
    path: 'materials[0]',
    says: ['foam-glass-fine', '[kg/m³]', '[kg/m²]'],
    put: (s) => {
      delete s.materials[0].density;
    },
  },
  {
    fault: 'material with two weights',
    code: 'MATERIAL_TWO_WEIGHTS',
    path: 'materials[0]',
    says: ['one of the two'],
    put: (s) => {
      s.materials[0].areal = { dry: 1, saturated: 1 };
    },
  },
  {
    fault: 'saturated lighter than dry',
    code: 'SATURATED_BELOW_DRY',
    path: 'materials[0].density.saturated',
    level: 'warning',
    says: ['150 saturated below 180 dry', 'swapped'],
    put: (s) => {
      s.materials[0].density.saturated = 150;
    },
  },
  {
    fault: 'sheet lighter when wet',
    code: 'SATURATED_BELOW_DRY',
    path: 'materials[1].areal.saturated',
    level: 'warning',
    says: ['1 saturated below 2 dry'],
    put: (s) => {
      s.materials[1].areal.saturated = 1;
    },
  },
  // 1.1 t/m³ is 1100 kg/m³
  {
    fault: 't/m³ for kg/m³',
    code: 'DENSITY_UNUSUAL',
    path: 'materials[0].density.dry',
    level: 'warning',
    says: ['1.1 kg/m³', 'Then write 1100.'],
    put: (s) => {
      s.materials[0].density.dry = 1.1;
    },
  },
  {
    fault: 'a density beyond all',
    code: 'DENSITY_UNUSUAL',
    path: 'materials[0].density.saturated',
    level: 'warning',
    says: ['18000 kg/m³'],
    put: (s) => {
      s.materials[0].density.saturated = 18_000;
    },
  },
  {
    fault: 'substrate of 600 m',
    code: 'THICKNESS_UNUSUAL',
    path: 'buildups[0].layers[4].thicknessMm',
    level: 'warning',
    says: ['that is 600 m'],
    put: (s) => {
      layersOf(s)[4].thicknessMm = 600_000;
    },
  },
];

export const SITE_CASES: readonly SceneCase[] = [
  {
    fault: 'bay without permitted load',
    code: 'BAY_NO_LIMIT',
    level: 'warning',
    path: 'deck.bays[1]',
    says: ['bay "A2"', 'load plan'],
    put: (s) => {
      delete s.deck.bays[1].totalKNm2;
    },
  },
  {
    fault: 'bay with imposed load only',
    code: 'BAY_NO_LIMIT',
    level: 'warning',
    path: 'deck.bays[0]',
    says: ['permanentKNm2'],
    put: (s) => {
      delete s.deck.bays[0].permanentKNm2;
    },
  },
  // 1500 kg/m² · 9.81 m/s² / 1000 = 14.715 kN/m², to four digits 14.71 or 14.72
  {
    fault: 'kg/m² for kN/m²',
    code: 'LOAD_UNUSUAL',
    path: 'deck.bays[0].permanentKNm2',
    level: 'warning',
    says: ['1500 kN/m²', 'Was kg/m² meant? Then write 14.7'],
    put: (s) => {
      s.deck.bays[0].permanentKNm2 = 1500;
    },
  },
  {
    fault: 'kg/m² imposed',
    code: 'LOAD_UNUSUAL',
    path: 'zones[0].imposedKNm2',
    level: 'warning',
    says: ['Then write 3.924.'],
    put: (s) => {
      s.zones[0].imposedKNm2 = 400;
    },
  },
  {
    fault: 'kg/m² of a block',
    code: 'LOAD_UNUSUAL',
    path: 'objects[2].kNm2',
    level: 'warning',
    says: ['Then write 7.848.'],
    put: (s) => {
      s.objects[2].kNm2 = 800;
    },
  },
  {
    fault: 'tree in tonnes',
    code: 'LOAD_UNUSUAL',
    path: 'objects[0].massKg',
    level: 'warning',
    says: ['2.4 kg', 'Then write 2400.'],
    put: (s) => {
      s.objects[0].massKg = 2.4;
    },
  },
  {
    fault: 'rain swapped',
    code: 'RAIN_ORDER',
    path: 'rain.extremeLpsHa',
    level: 'warning',
    says: ['swapped'],
    put: (s) => {
      s.rain.extremeLpsHa = 200;
    },
  },
  {
    fault: 'zones without roles',
    code: 'PLACE_ZONES_WITHOUT_ROLES',
    path: 'stages[0].place[0]',
    says: ['stage "S1"', 'Add "roles"'],
    put: (s) => {
      delete s.stages[0].place[0].roles;
    },
  },
  {
    fault: 'nothing placed',
    code: 'PLACE_EMPTY',
    path: 'stages[0].place[1]',
    says: ['"roles"', '"objects"'],
    put: (s) => {
      s.stages[0].place[1] = {};
    },
  },
  {
    fault: 'heap of elements',
    code: 'STOCKPILE_NOT_LOOSE',
    path: 'stages[0].stockpiles[0].material',
    says: ['"drain-60"', 'density'],
    put: (s) => {
      s.stages[0].stockpiles[0].material = 'drain-60';
    },
  },
  {
    fault: 'date in words',
    code: 'DATE_FORM',
    path: 'deck.bays[0].basis.date',
    level: 'warning',
    says: ['9 March 2026', 'YYYY-MM-DD'],
    put: (s) => {
      s.deck.bays[0].basis.date = '9 March 2026';
    },
  },
  {
    fault: 'day that is not',
    code: 'DATE_FORM',
    path: 'stages[0].holdPoints[0].on',
    level: 'warning',
    says: ['2026-02-30'],
    put: (s) => {
      s.stages[0].holdPoints[0].on = '2026-02-30';
    },
  },
];
