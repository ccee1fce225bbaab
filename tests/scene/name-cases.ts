/** Faults of ids, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import type { Json } from './scenes.ts';

const layersOf = (scene: Json): Json => scene.buildups[0].layers;

export const NAME_CASES: readonly SceneCase[] = [
  ...(
    [
      ['zones', 'zones[4].id', (s: Json) => s.zones],
      ['build-ups', 'buildups[1].id', (s: Json) => s.buildups],
      ['materials', 'materials[2].id', (s: Json) => s.materials],
      ['vehicles', 'vehicles[1].id', (s: Json) => s.vehicles],
      ['objects', 'objects[4].id', (s: Json) => s.objects],
      ['traffic', 'traffic[1].id', (s: Json) => s.traffic],
      ['stages', 'stages[1].id', (s: Json) => s.stages, 'stages[0]'],
      ['access points', 'accessPoints[1].id', (s: Json) => s.accessPoints],
      ['views', 'views[1].id', (s: Json) => s.views],
      ['bays', 'deck.bays[2].id', (s: Json) => s.deck.bays],
      ['columns', 'deck.columns[1].id', (s: Json) => s.deck.columns],
      ['outlets', 'deck.outlets[2].id', (s: Json) => s.deck.outlets],
      ['edges', 'deck.edges[1].id', (s: Json) => s.deck.edges],
      ['hold points', 'stages[0].holdPoints[1].id', (s: Json) => s.stages[0].holdPoints],
    ] as const
  ).map(([what, path, list]) => ({
    fault: `id twice in ${what}`,
    code: 'DUPLICATE_ID' as const,
    path,
    says: ['again, first at', path.replace(/\[\d+\]\.id$/, '[0].id'), 'another id'],
    put: (s: Json) => {
      const again = structuredClone(list(s)[0]);
      // Stockpiles count over all stages; only the stage's own id is in question here.
      delete again.stockpiles;
      list(s).push(again);
    },
  })),
  {
    fault: 'stockpile id in two stages',
    code: 'DUPLICATE_ID',
    path: 'stages[1].stockpiles[0].id',
    says: ['first at stages[0].stockpiles[0].id'],
    put: (s) => {
      s.stages.push({ id: 'S2', name: 'b', stockpiles: structuredClone(s.stages[0].stockpiles) });
    },
  },
  {
    fault: 'build-up of a zone',
    code: 'UNKNOWN_ID',
    path: 'zones[0].buildup',
    says: ['"lwan"', 'Did you mean "lawn"?'],
    put: (s) => {
      s.zones[0].buildup = 'lwan';
    },
  },
  {
    fault: 'material of a layer',
    code: 'UNKNOWN_ID',
    path: 'buildups[0].layers[3].material',
    says: ['Did you mean "foam-glass"?'],
    put: (s) => {
      layersOf(s)[3].material = 'foamglass';
    },
  },
  {
    fault: 'vehicle of a bay',
    code: 'UNKNOWN_ID',
    path: 'deck.bays[0].vehicles[1]',
    says: ['Did you mean "loader"?'],
    put: (s) => {
      s.deck.bays[0].vehicles[1] = 'loaders';
    },
  },
  {
    fault: 'vehicle of traffic',
    code: 'UNKNOWN_ID',
    path: 'traffic[0].vehicle',
    says: ['Did you mean "fire-16t"?'],
    put: (s) => {
      s.traffic[0].vehicle = 'fire-18t';
    },
  },
  {
    fault: 'zone of a stage',
    code: 'UNKNOWN_ID',
    path: 'stages[0].place[0].zones[0]',
    says: ['there are: Z1, Z2, Z3, Z4'],
    put: (s) => {
      s.stages[0].place[0].zones[0] = 'roof garden';
    },
  },
  {
    fault: 'object of a stage',
    code: 'UNKNOWN_ID',
    path: 'stages[0].place[1].objects[0]',
    says: ['the object "T9"'],
    put: (s) => {
      s.stages[0].place[1].objects[0] = 'T9';
    },
  },
  {
    fault: 'material of a stockpile',
    code: 'UNKNOWN_ID',
    path: 'stages[0].stockpiles[0].material',
    says: ['Did you mean "substrate-lawn"?'],
    put: (s) => {
      s.stages[0].stockpiles[0].material = 'substrat-lawn';
    },
  },
  {
    fault: 'vehicle of plant',
    code: 'UNKNOWN_ID',
    path: 'stages[0].plant[0].vehicle',
    says: ['the vehicle "crane"'],
    put: (s) => {
      s.stages[0].plant[0].vehicle = 'crane';
    },
  },
];
