/** What `diff`, `import` and `lighten` print, and why a file can't be read. */

import { countEn, someEn } from '../../import/words/number-words.ts';
import type { LightenAim, LightenAnswer, LightenHindrance, LightenLoad, LightenPassing, LightenUnmet } from '../../model/lighten.ts';

type Unsolved = LightenAnswer['unsolved'][number]['why'];

export interface Unreadable {
  readonly missing: string;
  readonly folder: string;
  readonly forbidden: string;
  readonly other: (why: string) => string;
}

export interface ObstacleNumbers {
  readonly before: string;
  readonly permitted: string;
  readonly lightest: string;
  readonly over: string;
  readonly others: string;
}

export const CALLS_EN = {
  note: 'note',
  unreadable: {
    missing: 'there is no such file. Check the name and the folder.',
    folder: 'this is a folder, a file was expected.',
    forbidden: 'this file may not be read. Check its permissions.',
    other: (why) => `the file can't be read (${why}).`,
  } as Unreadable,

  judgedVariant: (id: string, name: string) => `Variant ${id}: ${name}`,
  ofVariant: (id: string) => `variant ${id}`,
  noVariant: (id: string, known: readonly string[]) =>
    known.length === 0
      ? `there is no variant "${id}"; the file keeps no variants.`
      : `there is no variant "${id}"; there are: ${known.join(', ')}.`,

  unwritable: (file: string, why: string) => `${file}: the file can't be written (${why}).`,
  deckExpected: (file: string) => `${file}: a scene was expected; check says what is wrong with it.`,
  answersExpected: (file: string) => `${file}: answers are expected as JSON, for example { "unit": "mm" }.`,
  aScene: (name: string) => `${name}: a scene. Check it with: npm run --silent check -- ${name}`,
  drawing: (name: string, kind: string, points: number) => `${name}: ${kind}, ${someEn(points, 'point', 'points')}`,
  size: (width: string, height: string, place: string) => `${width} × ${height} m from ${place}`,
  layers: 'Layers',
  layersHead: ['layer', 'shapes', 'used', 'left out', 'likely role'],
  layerOff: (name: string) => `${name} (off)`,
  open: (count: number) => `Open questions: ${count} (the best guess was taken; answer with --answer ID=VALUE)`,
  settled: 'Settled',
  mends: 'Changes and notes',
  scene: 'Scene',
  noScene: 'none, there is no outline',
  sceneOf: (corners: number, openings: number) => `${someEn(corners, 'corner', 'corners')}, ${someEn(openings, 'opening', 'openings')}`,
  waiting: 'Waits for entries',
  part: { bay: 'bay', zone: 'zone', edge: 'edge', column: 'column', tree: 'tree' } as Readonly<
    Record<'bay' | 'zone' | 'edge' | 'column' | 'tree', string>
  >,
  needs: (count: number, part: string, keys: string) => `${countEn(count)} × ${part}: needs ${keys}`,
  unassigned: 'Layers without a role',

  withinAll: 'No bay is over its limit.',
  aim: { cost: 'Cheapest', weight: 'Lightest', change: 'Least exchanged' } as Readonly<Record<LightenAim, string>>,
  unsolved: {
    'no common answer': 'each limit can be kept, but not all of them together',
    time: 'no answer was found in time',
    'no prices': 'the materials have no prices',
  } as Readonly<Record<Unsolved, string>>,
  unmet: {
    'no common answer': 'can be kept by itself, but not together with the others',
    time: 'no answer was found in time',
  } as Readonly<Record<LightenUnmet['why'], string>>,
  stillOver: (place: string, after: string, permitted: string, why: string) =>
    `still over its limit: ${place}, ${after} of ${permitted} kN/m²: ${why}`,
  passing: {
    locked: 'it is to stay as it is',
    'not within its levels': 'its build-up is not within its levels',
    'no layer to change': 'it has no layer to change',
  } as Readonly<Record<LightenPassing, string>>,
  passedOver: (zone: string, why: string) => `zone ${zone} was passed over: ${why}.`,
  leftOut: (zone: string, material: string, mm: string, says: string) => `zone ${zone}: ${material} was left out from ${mm} mm on. ${says}`,
  leftThick: (zone: string, mm: string, says: string) => `zone ${zone}: substrate thinner by ${mm} mm or more was left out. ${says}`,
  notACheck: 'Compares entered loads with entered limits. Not a structural check: the structural engineer decides.',
  noPrices: 'no prices',
  price: (before: string, after: string) => `price ${before} → ${after}`,
  variant: (aim: string, proven: boolean, savedKN: string, exchangedM3: string) =>
    `${aim}${proven ? '' : ' (not proven to be the best)'}: ${savedKN} kN less, ${exchangedM3} m³ exchanged`,
  limit: { permanent: 'permanent', total: 'total', stage: 'stage' } as Readonly<Record<LightenLoad['kind'], string>>,
  bayAt: (bay: string, cases: readonly string[]) => `bay ${bay}, ${cases.join(', ')}`,
  inStage: (stage: string) => `stage ${stage}`,
  bayLoad: (before: string, after: string, permitted: string, binding: boolean) =>
    `${before} → ${after} of ${permitted} kN/m²${binding ? ', binding' : ''}`,
  none: 'none',
  zoneLess: (zone: string, buildUp: string, savedKN: string) => `zone ${zone} (${buildUp}), ${savedKN} kN less`,
  laidIn: (stage: string) => `what is new is laid in stage ${stage}, whose places were added to`,
  obstacle: (n: ObstacleNumbers) =>
    `${n.before} of ${n.permitted} kN/m²; as light as it may be it is still ${n.lightest}, ${n.over} too much; ${n.others} of it is what else stands there.`,
  inTheWay: (list: string) => `In the way: ${list}.`,
  hindrance: {
    'substrate depth': 'least depth of the substrate',
    'tree soil': 'soil for trees',
    room: 'room between deck and finish',
    'base course': 'base course under paving',
    'locked zones': 'locked zones',
  } as Readonly<Record<LightenHindrance, string>>,
};

export type CallWords = typeof CALLS_EN;
