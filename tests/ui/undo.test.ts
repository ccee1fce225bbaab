/** Undo in the app: its keys, and what is said of a step. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Snapshot } from '../../src/model/engine.ts';
import type { SceneEdit } from '../../src/model/history.ts';
import { wayOf } from '../../src/ui/file/use-undo-keys.ts';
import { travelledSentence } from '../../src/ui/frame/LiveSummary.tsx';
import { speak } from '../../src/ui/text/text.ts';

const key = (pressed: string) => {
  const [letter, ...held] = pressed.split('+').reverse();
  return {
    key: letter ?? '',
    ctrlKey: held.includes('Ctrl'),
    metaKey: held.includes('Cmd'),
    shiftKey: held.includes('Shift'),
    altKey: held.includes('Alt'),
  };
};

describe('keys of undo', () => {
  it.each([
    ['Ctrl+z', 'undo'],
    ['Cmd+z', 'undo'],
    ['Ctrl+Shift+Z', 'redo'],
    ['Cmd+Shift+Z', 'redo'],
    ['Ctrl+y', 'redo'],
    ['z', null],
    ['Ctrl+Alt+z', null],
    ['Ctrl+x', null],
  ])('%s: %s', (pressed, way) => expect(wayOf(key(pressed))).toBe(way));
});

describe('what is said of a step', () => {
  afterEach(() => speak('en'));
  const edit: SceneEdit = { kind: 'thickness', buildUp: 'lawn', layer: 1, fromMm: 200, toMm: 250 };
  const layers = [{ name: 'Drain sheet' }, { name: 'Soil' }] as unknown as Snapshot['buildUps'][number]['layers'];
  const snapshot = { buildUps: [{ id: 'lawn', name: 'Lawn', zones: [], layers }] };

  it('names layer, build-up and thickness as they are now', () => {
    expect(travelledSentence(snapshot, { way: 'undo', edit })).toBe('Undone: Soil in Lawn is 200 mm again.');
    expect(travelledSentence(snapshot, { way: 'redo', edit })).toBe('Done again: Soil in Lawn is 250 mm.');
  });

  it('calls by its id what the scene no longer has', () => {
    expect(travelledSentence({ buildUps: [] }, { way: 'undo', edit })).toBe('Undone: 2 in lawn is 200 mm again.');
  });
});
