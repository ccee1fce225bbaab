/** What the import page shows: columns that stay readable, sizes, what becomes of parts, drawings on their sheet. */

import { describe, expect, it } from 'vitest';
import { readDrawing } from '../../src/import/read-drawing.ts';
import type { Preview } from '../../src/model/importer.ts';
import {
  columnRoles,
  fileSize,
  gapM,
  hasPart,
  lieOf,
  namesPlaces,
  sortQuestions,
  takingsOf,
  withColumnRole,
} from '../../src/ui/facts/import-facts.ts';
import { previewSheet } from '../../src/ui/facts/preview-paths.ts';
import { rect, sceneOf } from '../helpers/scene-builder.ts';
import { dxf, rectangle } from '../import/dxf-builder.ts';

const read = (text: string, answers = {}) => readDrawing('test', new TextEncoder().encode(text), answers);

describe('columns', () => {
  it('are as many as the table has', () => {
    expect(columnRoles('x,y', 4)).toEqual(['x', 'y', '-', '-']);
  });

  it('a role stands once: columns exchange theirs', () => {
    expect(withColumnRole(['id', 'x', 'y', 'z'], 1, 'y')).toBe('id,y,x,z');
    expect(withColumnRole(['id', 'x', 'y', 'z'], 3, 'layer')).toBe('id,x,y,layer');
  });

  it('without x or y there is nothing to read', () => {
    expect(namesPlaces(withColumnRole(['x', 'y', 'z'], 0, '-'))).toBe(false);
    expect(namesPlaces('id,y,x')).toBe(true);
  });
});

describe('questions', () => {
  it('stay where they were asked once they are answered', () => {
    const text = dxf({ entities: [rectangle('Deck', 40_000, 60_000)] });
    const before = sortQuestions(read(text).questions);
    const after = sortQuestions(read(text, { unit: 'mm' }).questions);
    expect([before.open.map(({ id }) => id), before.openCount]).toEqual([['unit'], 1]);
    expect([after.open.map(({ id }) => id), after.openCount]).toEqual([['unit'], 0]);
  });

  it('columns of a table are asked above it', () => {
    const { columns, open } = sortQuestions(read('0.5,0.5,1.25\n40.5,0.5,1.30\n40.5,30.5,1.35\n').questions);
    expect(columns?.guess).toBe('x,y,z');
    expect(open.map(({ id }) => id)).not.toContain('columns');
  });
});

describe('before and after', () => {
  it('the size in the numbers of the file, where they are no metres', () => {
    const text = dxf({ entities: [rectangle('Deck', 40_000, 60_000)] });
    expect(fileSize(read(text))).toEqual([40_000, 60_000]);
    expect(fileSize(read(text, { unit: 'm' }))).toBeNull();
  });

  it('leads back to how the file lies', () => {
    const north = '5812000.50 392000.12 35.42\n5812000.50 392040.12 35.40\n5812030.50 392040.12 35.32\n';
    expect(lieOf(read(north))?.([40, 30])).toEqual([30, 40]);
    expect(lieOf(read(north, { axes: 'x-y' }))?.([40, 30])).toEqual([40, -30]);
    expect(lieOf(read(north, { axes: 'xy' }))).toBeNull();
  });

  it('a gap between drawing and deck', () => {
    const deck = rect(0, 0, 40, 30);
    expect(gapM({ minX: 45, minY: 0, maxX: 50, maxY: 30 }, deck)).toBe(5);
    expect(gapM({ minX: 10, minY: -9, maxX: 50, maxY: -7 }, deck)).toBe(7);
    expect(gapM({ minX: 39, minY: 29, maxX: 50, maxY: 70 }, deck)).toBe(0);
  });
});

describe('what becomes of parts', () => {
  const draft = { counts: { outline: 1, levels: 12, bays: 4 }, waiting: {}, issues: [] } as const;

  it('bays are added, levels and outline replaced, unless chosen otherwise', () => {
    expect(takingsOf(draft, {})).toEqual({ outline: 'replace', levels: 'replace', bays: 'add' });
    expect(takingsOf(draft, { bays: 'replace', zones: 'add' })).toEqual({ outline: 'replace', levels: 'replace', bays: 'replace' });
  });

  it('knows what the scene has', () => {
    const scene = sceneOf();
    expect([hasPart(scene, 'bays'), hasPart(scene, 'trees')]).toEqual([true, false]);
  });
});

describe('the sheet', () => {
  const preview: Preview = {
    at: [100, 200],
    layers: [{ name: 'Deck', points: Float64Array.of(0, 0, 60, 0, 60, 30, 10, 10), starts: Uint32Array.of(0, 3) }],
    left: 0,
  };

  // 60 m on 300 units: 5 units per metre, y downwards from 30 m.
  it('draws lines and places, with a bar of round metres', () => {
    const { layers, bar, deck } = previewSheet(preview, null, null);
    expect(layers[0]?.d).toBe('M0.0 150.0L300.0 150.0L300.0 0.0M50.0 100.0h0');
    // A third of 60 m is 20 m.
    expect([bar.metres, bar.length, deck]).toEqual([20, 100, '']);
  });

  it('turns with the file: first number north', () => {
    const { layers } = previewSheet(preview, ([x, y]) => [y, x], null);
    // 30 m wide and 60 m high: 5 units per metre again.
    expect(layers[0]?.d).toBe('M0.0 300.0L0.0 0.0L150.0 0.0M50.0 250.0h0');
  });

  it('a deck nearby is drawn beside it, one far away does not shrink it to a dot', () => {
    expect(previewSheet(preview, null, rect(100, 200, 130, 215)).deck).toBe('M0.0 150.0L150.0 150.0L150.0 75.0L0.0 75.0Z');
    expect(previewSheet(preview, null, rect(0, 0, 9, 9)).layers[0]?.d).not.toBe(previewSheet(preview, null, null).layers[0]?.d);
    expect(previewSheet(preview, null, rect(90_000, 0, 90_040, 30)).layers[0]?.d).toBe(previewSheet(preview, null, null).layers[0]?.d);
  });
});
