/** Undo in the app: its keys, and what is said of a step. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Snapshot } from '../../src/model/engine.ts';
import type { SceneEdit } from '../../src/model/history.ts';
import { editText, travelledSentence } from '../../src/ui/facts/edit-names.ts';
import { wayOf } from '../../src/ui/file/use-undo-keys.ts';
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
  const layers = [{ name: 'Drain sheet' }, { name: 'Soil' }];
  const snapshot = { buildUps: [{ id: 'lawn', name: 'Lawn', layers }] as unknown as Snapshot['buildUps'] };

  it('names layer, build-up and thickness as they are now', () => {
    expect(travelledSentence(snapshot, { way: 'undo', edit })).toBe('Undone: Soil in Lawn is 200\u202fmm again.');
    expect(travelledSentence(snapshot, { way: 'redo', edit })).toBe('Done again: Soil in Lawn is 250\u202fmm.');
  });

  it('gives thicknesses in the unit chosen', () => {
    speak('de', { load: 'kN/m²', length: 'cm' });
    expect(travelledSentence(snapshot, { way: 'undo', edit })).toBe('Rückgängig gemacht: Soil in Lawn hat wieder 20,0\u202fcm.');
  });

  it('calls by its id what the scene no longer has', () => {
    expect(travelledSentence({ buildUps: [] }, { way: 'undo', edit })).toBe('Undone: 2 in lawn is 200\u202fmm again.');
  });

  it('of parts names what was done to which, in both languages', () => {
    const moved: SceneEdit = { kind: 'parts', act: 'move', part: 'zone', names: ['Z1', 'Z2'] };
    expect(editText(snapshot, moved)).toBe('zones Z1 and Z2: moved');
    expect(travelledSentence(snapshot, { way: 'undo', edit: moved })).toBe('Undone: zones Z1 and Z2: moved.');
    speak('de');
    expect(editText(snapshot, { ...moved, names: ['Z1'] })).toBe('Zone Z1: verschoben');
    expect(travelledSentence(snapshot, { way: 'redo', edit: moved })).toBe('Wiederholt: Zonen Z1 und Z2: verschoben.');
  });

  it('counts names beyond three', () => {
    const split: SceneEdit = { kind: 'parts', act: 'add', part: 'bay', names: ['A1', 'A2', 'A3', 'A4', 'A5'] };
    expect(editText(snapshot, split)).toBe('bays A1, A2, A3 and 2 more: added');
  });
});
