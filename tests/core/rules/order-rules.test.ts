/** Order rules: for each, build-ups that keep it and build-ups that break it and nothing else; read off by eye, layer by layer. */

import { describe, expect, it } from 'vitest';
import type { LayerFacts } from '../../../src/model/rule-input.ts';
import {
  broken,
  type Case,
  DRAINING,
  facts,
  HOLDING,
  INFILL,
  layer,
  PAVING,
  PLANTING,
  thick,
  without,
} from '../../helpers/rule-builder.ts';

type Row = readonly [what: string, layers: readonly LayerFacts[], over?: Case];

const LEAKY: Case = { site: { rootResistant: false } };
const WHEELS: Case = { trafficked: true };
const swapped = (layers: readonly LayerFacts[], from: LayerFacts, to: LayerFacts) =>
  layers.map((entry) => (entry.role === from.role ? to : entry));
const on = (...upper: readonly LayerFacts[]) => [layer('protection'), DRAINING, layer('filter'), ...upper];
const LIGHT = layer('light fill');

const filled = (rows: readonly Row[]) =>
  rows.map(([what, layers, over]): [string, readonly LayerFacts[], Case | undefined] => [what, layers, over]);

/** Nothing to tell. */
function keeps(rows: readonly Row[]): void {
  it.each(filled(rows))('keeps it: %s', (_, layers, over) => {
    expect(broken(layers, over)).toEqual([]);
  });
}

/** This rule once, and no other. */
function breaks(rule: string, rows: readonly Row[]): void {
  it.each(filled(rows))('breaks it: %s', (_, layers, over) => {
    expect(broken(layers, over)).toEqual([rule]);
  });
}

describe('order.protection', () => {
  keeps([
    ['protection first', PLANTING],
    ['root barrier first, protection on it', [layer('root barrier'), ...PLANTING]],
  ]);
  breaks('order.protection', [
    ['an element first', without(PLANTING, 'protection')],
    ['an element on a root barrier', [layer('root barrier'), ...without(PLANTING, 'protection')]],
    ['a root barrier alone', [layer('root barrier')]],
    ['protection further up only', [HOLDING, layer('protection'), layer('filter'), thick('substrate', 300)]],
  ]);

  it('is a stop and names what lies there instead', () => {
    expect(facts(without(PLANTING, 'protection'))).toEqual([
      {
        rule: 'order.protection',
        severity: 'stop',
        where: { zone: 'Z' },
        value: 1,
        limit: 0,
        unit: '-',
        facts: { layer: 'drainage element', layerIndex: 0, why: 'protection' },
      },
    ]);
  });
});

describe('order.slip', () => {
  keeps([
    ['slabs on bedding with a slip sheet', PAVING],
    ['wheels on them', PAVING, WHEELS],
    ['a slip sheet on protection on a root barrier', [layer('root barrier'), ...PAVING]],
    ['loose gravel straight on the filter', on(layer('surfacing'))],
    ['planting', PLANTING],
  ]);
  breaks('order.slip', [
    ['slabs on bedding', without(PAVING, 'slip')],
    ['bound gravel on base course', without(PAVING, 'slip', 'bedding')],
    ['a slip sheet above the elements only', [...without(PAVING, 'slip').slice(0, 3), layer('slip'), ...without(PAVING, 'slip').slice(3)]],
    ['wheels on a base course without surfacing', without(PAVING, 'slip', 'bedding', 'surfacing'), WHEELS],
  ]);

  it('says which surface needs it and whether wheels run there', () => {
    expect(facts(without(PAVING, 'slip'), WHEELS)[0]).toMatchObject({ severity: 'check', facts: { layer: 'surfacing', trafficked: 1 } });
  });
});

describe('order.drainage', () => {
  keeps([
    ['fill instead of elements', [layer('protection'), layer('drainage fill'), layer('filter'), thick('substrate', 300)]],
    ['no substrate and no base course', [layer('protection'), layer('surfacing')]],
  ]);
  breaks('order.drainage', [
    ['substrate on protection', [layer('protection'), thick('substrate', 300)]],
    ['base course on protection', [layer('protection'), thick('base course', 200)]],
    ['drainage above the substrate only', [layer('protection'), thick('substrate', 300), DRAINING, layer('surfacing')]],
    ['light fill alone below', [layer('protection'), LIGHT, layer('separation'), thick('substrate', 300)]],
  ]);

  it('names the lowest layer that stands in water', () => {
    const layers = [layer('protection'), thick('base course', 200), layer('filter'), thick('substrate', 200)];
    expect(facts(layers)).toMatchObject([{ rule: 'order.drainage', severity: 'check', facts: { layer: 'base course' } }]);
  });
});

describe('order.filter', () => {
  keeps([
    ['bedding on base course', PAVING],
    ['a separation instead', swapped(PLANTING, layer('filter'), layer('separation'))],
    ['infill on its element', [layer('protection'), HOLDING, INFILL, layer('filter'), thick('substrate', 300)]],
    ['light fill on elements without one', [layer('protection'), HOLDING, LIGHT, layer('separation'), thick('substrate', 300)]],
    ['two substrates', [...PLANTING, thick('substrate', 50)]],
    ['loose gravel on elements', [layer('protection'), DRAINING, layer('surfacing')]],
  ]);
  breaks('order.filter', [
    ['substrate on elements', without(PLANTING, 'filter')],
    ['substrate on infill', [layer('protection'), HOLDING, INFILL, thick('substrate', 300)]],
    ['turf on elements', [layer('protection'), HOLDING, layer('vegetation')]],
    ['base course on infill', without(PAVING, 'filter')],
    ['bedding on elements', [layer('protection'), layer('slip'), DRAINING, layer('bedding'), layer('surfacing')]],
    ['substrate on base course', on(thick('base course', 100), thick('substrate', 200)).map((l) => (l === DRAINING ? HOLDING : l))],
    ['a sheet between that is no filter', [layer('protection'), HOLDING, layer('slip'), thick('substrate', 300)]],
  ]);

  it('tells both layers', () => {
    expect(facts(without(PLANTING, 'filter'))).toMatchObject([
      { severity: 'check', facts: { layer: 'substrate', below: 'drainage element', why: 'filter' } },
    ]);
  });
});

describe('order.separation', () => {
  keeps([
    ['a separation on it', [...on(LIGHT, layer('separation'), thick('substrate', 300))].map((l) => (l === DRAINING ? HOLDING : l))],
    ['a filter on it', on(LIGHT, layer('filter'), layer('surfacing'))],
    ['two light fills, separated at the top', on(LIGHT, LIGHT, layer('separation'), layer('surfacing'))],
    ['nothing on it', on(LIGHT)],
  ]);
  breaks('order.separation', [
    ['base course on it', [layer('protection'), DRAINING, LIGHT, thick('base course', 200)]],
    ['bedding on it', [layer('protection'), layer('slip'), DRAINING, LIGHT, layer('bedding'), layer('surfacing')]],
    ['gravel on it', on(LIGHT, layer('surfacing'))],
  ]);

  it('under planting the filter is missing too', () => {
    const layers = [layer('protection'), HOLDING, LIGHT, thick('substrate', 300)];
    expect(broken(layers)).toEqual(['order.filter', 'order.separation']);
  });
});

describe('order.orientation', () => {
  const element = (orientation: LayerFacts['orientation'], retentionLm2 = 12) => layer('drainage element', { orientation, retentionLm2 });
  keeps([
    ['retention under planting', PLANTING],
    ['drained under paving', PAVING],
    ['either way where it holds nothing', swapped(PLANTING, HOLDING, element('drained', 0))],
    ['nothing on it yet', [layer('protection'), element('drained')]],
  ]);
  breaks('order.orientation', [
    ['drained under planting', swapped(PLANTING, HOLDING, element('drained'))],
    ['retention under paving', swapped(PAVING, DRAINING, element('retention'))],
    ['not said', swapped(PLANTING, HOLDING, element(null))],
    ['retention under gravel with planting beside it in the stack', [...PLANTING, layer('surfacing')]],
  ]);

  it('under wheels drains whatever grows there', () => {
    const driven = [layer('protection'), layer('slip'), HOLDING, INFILL, layer('filter'), thick('base course', 200), layer('filter')];
    expect(facts([...driven, thick('substrate', 100)], WHEELS)).toMatchObject([
      { rule: 'order.orientation', severity: 'check', facts: { wanted: 'drained', laid: 'retention', trafficked: 1 } },
    ]);
  });
});

describe('order.infill', () => {
  keeps([
    ['filled under wheels', PAVING, WHEELS],
    ['open where nobody drives', without(PAVING, 'drainage fill')],
    [
      'an element without voids under wheels',
      swapped(without(PAVING, 'drainage fill'), DRAINING, layer('drainage element', { voidLm2: 0, orientation: 'drained' })),
      WHEELS,
    ],
  ]);
  breaks('order.infill', [
    ['open under wheels', without(PAVING, 'drainage fill'), WHEELS],
    ['fill above it that is no infill', swapped(PAVING, INFILL, layer('drainage fill')), WHEELS],
  ]);
});

describe('order.root', () => {
  keeps([
    ['a membrane that resists roots', PLANTING],
    ['a membrane of which nothing is said', PLANTING, { site: { rootResistant: null } }],
    ['a root barrier first', [layer('root barrier'), ...PLANTING], LEAKY],
    ['a root barrier on protection', [layer('protection'), layer('root barrier'), ...PLANTING.slice(1)], LEAKY],
    ['paving', PAVING, LEAKY],
  ]);
  breaks('order.root', [
    ['planting without one', PLANTING, LEAKY],
    ['one above the elements only', [...PLANTING.slice(0, 2), layer('root barrier'), ...PLANTING.slice(2)], LEAKY],
    ['grass in a grid', PAVING, { ...LEAKY, form: 'lawn' }],
    ['turf without substrate', [layer('protection'), HOLDING, layer('filter'), layer('vegetation')], LEAKY],
  ]);
});
