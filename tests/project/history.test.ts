/** Steps of an open scene: back and forth, one per gesture, a hundred deep. */

import { describe, expect, it } from 'vitest';
import { History, MOST_STEPS } from '../../src/project/history.ts';
import { Session } from '../../src/project/session.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const FILE = sceneOf({ buildups: [SOIL_100], zones: [zone('A', rect(0, 0, 4, 3), 'soil-100')] });

function opened(): { session: Session; mm: () => unknown; text: () => string } {
  const session = new Session();
  session.open(JSON.stringify(FILE));
  return {
    session,
    mm: () => session.opened().scene.buildups[0].layers[0].thicknessMm,
    text: () => JSON.stringify(session.opened().scene),
  };
}

describe('undo and redo', () => {
  it('go through the thicknesses set, one by one', () => {
    const { session, mm } = opened();
    for (const thicknessMm of [150, 200, 250]) session.setThickness('soil-100', 0, thicknessMm);
    const seen = ['undo', 'undo', 'redo', 'undo', 'undo'].map((way) => {
      session.travel(way as 'undo');
      return mm();
    });
    expect(seen).toEqual([200, 150, 200, 150, 100]);
    expect(session.history()).toMatchObject({ undo: null, redo: { fromMm: 100, toMm: 150 }, changed: false });
  });

  it('of everything give the very scene that was opened, and the report of it', () => {
    const { session, text } = opened();
    const before = text();
    const { report } = session.opened();
    for (const thicknessMm of [150, 200, 250]) session.setThickness('soil-100', 0, thicknessMm);
    for (let k = 0; k < 5; k++) session.travel('undo');
    expect(text()).toBe(before);
    expect(session.opened().report).toEqual(report);
  });

  it('take a slider dragged over fifty places as one step', () => {
    const { session, mm } = opened();
    for (let k = 1; k <= 50; k++) session.setThickness('soil-100', 0, 100 + k, 7);
    expect(session.history().undo).toMatchObject({ fromMm: 100, toMm: 150 });
    session.travel('undo');
    expect([mm(), session.history().undo]).toEqual([100, null]);
    session.travel('redo');
    expect(mm()).toBe(150);
  });

  it('take a drag that ends where it began as none', () => {
    const { session } = opened();
    for (const thicknessMm of [120, 140, 100]) session.setThickness('soil-100', 0, thicknessMm, 7);
    expect(session.history()).toEqual({ undo: null, redo: null, changed: false });
  });

  it('forget what was undone once something else is changed', () => {
    const { session, mm } = opened();
    session.setThickness('soil-100', 0, 150);
    session.travel('undo');
    session.setThickness('soil-100', 0, 170);
    expect(session.history().redo).toBeNull();
    session.travel('redo');
    expect(mm()).toBe(170);
  });

  it('keep what was undone where a drag comes back to where it began, and lose it where it does not', () => {
    const { session, mm } = opened();
    for (const thicknessMm of [150, 200]) session.setThickness('soil-100', 0, thicknessMm);
    session.travel('undo');
    session.travel('undo');
    for (const thicknessMm of [120, 140]) session.setThickness('soil-100', 0, thicknessMm, 7);
    expect(session.history().redo).toBeNull();
    session.setThickness('soil-100', 0, 100, 7);
    expect(session.history()).toMatchObject({ undo: null, redo: { fromMm: 100, toMm: 150 }, changed: false });
    session.travel('redo');
    session.travel('redo');
    expect(mm()).toBe(200);
    session.travel('undo');
    for (const thicknessMm of [160, 150, 170]) session.setThickness('soil-100', 0, thicknessMm, 8);
    expect(session.history()).toMatchObject({ undo: { fromMm: 150, toMm: 170 }, redo: null });
  });

  it('keep what was undone where parts were dragged and the drag was taken back', () => {
    const { session } = opened();
    const move = (x: number, gesture: number) => {
      const zones = [{ ...session.opened().scene.zones[0], outline: rect(x, 0, x + 4, 3) }];
      session.edit({ zones }, { kind: 'parts', act: 'move', part: 'zone', names: ['A'] }, gesture);
    };
    move(1, 1);
    session.travel('undo');
    move(0.5, 2);
    expect(session.history().redo).toBeNull();
    move(0, 2);
    expect(session.history()).toMatchObject({ undo: null, redo: { act: 'move' }, changed: false });
    session.travel('redo');
    expect(session.opened().scene.zones[0].outline[0]).toEqual([1, 0]);
  });

  it('do not count a refused change', () => {
    const { session } = opened();
    expect(session.setThickness('soil-100', 0, -1).project).toBeNull();
    expect(session.history()).toEqual({ undo: null, redo: null, changed: false });
  });

  it('bring back the warnings of that state', () => {
    const { session } = opened();
    // 3500 mm of soil is warned of as unusual, 100 mm is not.
    expect(session.setThickness('soil-100', 0, 3500).issues.map(({ code }) => code)).toContain('THICKNESS_UNUSUAL');
    expect(session.travel('undo').issues.map(({ code }) => code)).not.toContain('THICKNESS_UNUSUAL');
    expect(session.travel('redo').issues.map(({ code }) => code)).toContain('THICKNESS_UNUSUAL');
  });
});

describe('a history', () => {
  const edit = (fromMm: number) => ({ kind: 'thickness', buildUp: 'a', layer: 0, fromMm, toMm: fromMm + 1 }) as const;

  it('keeps the last hundred steps', () => {
    const states = new History(0);
    for (let k = 1; k <= 130; k++) states.push(edit(k - 1), k, null);
    let back = 0;
    while (states.go('undo') !== null) back++;
    // 130 − 100: the thirty oldest are gone
    expect([back, states.present]).toEqual([MOST_STEPS, 30]);
  });

  it('is unchanged at the state that was saved, wherever that lies', () => {
    const states = new History(0);
    states.push(edit(0), 1, null);
    states.markSaved(1);
    expect(states.isChanged).toBe(false);
    states.go('undo');
    expect(states.isChanged).toBe(true);
    states.go('redo');
    expect(states.isChanged).toBe(false);
  });
});

describe('the scene as a file', () => {
  it('is the opened text to the byte before and after everything was undone, and counts as unchanged once saved', () => {
    const text = `${JSON.stringify(FILE, null, '\t')}\r\n`;
    const session = new Session();
    session.open(text);
    expect(session.sceneText()).toBe(text);
    session.setThickness('soil-100', 0, 150);
    expect(session.sceneText()).toBe(text.replace(/("thicknessMm": )100/, '$1150'));
    expect(session.markSaved().changed).toBe(false);
    session.travel('undo');
    expect(session.sceneText()).toBe(text);
    expect(session.history().changed).toBe(true);
  });

  it('saved while the next change was made is still unsaved', () => {
    const { session } = opened();
    session.setThickness('soil-100', 0, 150);
    session.sceneText();
    session.setThickness('soil-100', 0, 160);
    expect(session.markSaved().changed).toBe(true);
  });
});
