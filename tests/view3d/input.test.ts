/** Keys, pointers and picking: what hands do to the view. */

import { describe, expect, it } from 'vitest';
import { nearestHit } from '../../src/view3d/deck-picker.ts';
import { FrameCost } from '../../src/view3d/frame-cost.ts';
import { type KeyPress, keyAction } from '../../src/view3d/key-action.ts';
import { Sharpness } from '../../src/view3d/sharpness.ts';
import { type Tap, watchTaps } from '../../src/view3d/tap-watch.ts';

const press = (key: string, change: Partial<KeyPress> = {}): KeyPress => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  ...change,
});

describe('keys', () => {
  it('orbit with arrows, move with shift and arrows', () => {
    // The eye goes up: the view gets steeper. The eye goes right: it then looks more to the left, against the clock.
    expect(keyAction(press('ArrowUp'))).toMatchObject({ kind: 'orbit', tiltDeg: 7.5 });
    expect(keyAction(press('ArrowRight'))).toMatchObject({ kind: 'orbit', azimuthDeg: -7.5 });
    expect(keyAction(press('ArrowRight', { shiftKey: true }))).toMatchObject({ kind: 'drag', rightPx: -48 });
  });

  it('zoom in and out by factors that undo each other', () => {
    const [nearer, farther] = ['+', '-'].map((key) => keyAction(press(key)));
    if (nearer?.kind !== 'zoom' || farther?.kind !== 'zoom') throw new Error('no zoom');
    expect(nearer.factor).toBeLessThan(1);
    expect(nearer.factor * farther.factor).toBeCloseTo(1, 12);
  });

  it('go to the standard views, and drop the selection', () => {
    expect(keyAction(press('Home'))).toEqual({ kind: 'go', to: 'home' });
    expect(keyAction(press('p'))).toEqual({ kind: 'go', to: 'plan' });
    expect(keyAction(press('Escape'))).toEqual({ kind: 'drop' });
  });

  it('leave the browser its own', () => {
    expect(keyAction(press('p', { ctrlKey: true }))).toBeNull();
    expect(keyAction(press('Tab'))).toBeNull();
    expect(keyAction(press('ArrowLeft', { altKey: true }))).toBeNull();
  });
});

/** An element of 400 × 200 px that takes listeners and hands them events. */
function board() {
  const listeners = new Map<string, (event: unknown) => void>();
  const element = {
    addEventListener: (type: string, listener: (event: unknown) => void) => listeners.set(type, listener),
    removeEventListener: (type: string) => listeners.delete(type),
    getBoundingClientRect: () => ({ left: 10, top: 20, width: 400, height: 200 }),
  };
  const taps: Tap[] = [];
  const stop = watchTaps(element as unknown as HTMLElement, (tap) => taps.push(tap));
  const fire = (type: string, clientX: number, clientY: number, more: object = {}) =>
    listeners.get(type)?.({ type, clientX, clientY, pointerId: 1, isPrimary: true, button: 0, pointerType: 'mouse', ...more });
  return { taps, fire, stop, listeners };
}

describe('taps', () => {
  it('are told from the corner of the picture, even of a hand that shakes a little', () => {
    const { taps, fire } = board();
    fire('pointerdown', 110, 70);
    fire('pointermove', 112, 71);
    fire('pointerup', 112, 71, { pointerType: 'touch' });
    expect(taps).toEqual([{ x: 102, y: 51, touch: true }]);
  });

  it('are no movements, no other buttons, and nothing that the browser took away', () => {
    const { taps, fire } = board();
    // 3 px there and 3 px back are 6 px of way.
    fire('pointerdown', 100, 100);
    fire('pointermove', 103, 100);
    fire('pointermove', 100, 100);
    fire('pointerup', 100, 100);
    fire('pointerdown', 100, 100, { button: 2 });
    fire('pointerup', 100, 100, { button: 2 });
    fire('pointerdown', 100, 100, { pointerType: 'touch' });
    fire('pointercancel', 100, 100, { pointerType: 'touch' });
    expect(taps).toEqual([]);
  });

  it('are not made with two fingers', () => {
    const { taps, fire } = board();
    fire('pointerdown', 160, 120);
    fire('pointerdown', 260, 120, { pointerId: 2, isPrimary: false });
    fire('pointerup', 260, 120, { pointerId: 2, isPrimary: false });
    fire('pointerup', 160, 120);
    expect(taps).toEqual([]);
  });

  it('are told again after a mouse was let go outside', () => {
    const { taps, fire } = board();
    fire('pointerdown', 100, 100);
    fire('pointermove', 180, 100);
    fire('pointerdown', 110, 120);
    fire('pointerup', 110, 120);
    expect(taps).toEqual([{ x: 100, y: 100, touch: false }]);
  });

  it('are not watched for any more once stopped', () => {
    const { stop, listeners } = board();
    expect(listeners.size).toBeGreaterThan(0);
    stop();
    expect(listeners.size).toBe(0);
  });
});

describe('picking', () => {
  /** A square of pixels with nothing in it but the given hits. */
  function square(side: number, hits: readonly (readonly [number, number, number, number])[]): Uint8Array {
    const pixels = new Uint8Array(side * side * 4).fill(255);
    for (const [column, row, a, b] of hits) pixels.set([a >> 8, a & 255, b >> 8, b & 255], (row * side + column) * 4);
    return pixels;
  }

  it('reads two 16-bit numbers', () => {
    expect(nearestHit(square(1, [[0, 0, 40000, 123]]), 1)).toEqual([40000, 123]);
    expect(nearestHit(square(1, []), 1)).toBeNull();
  });

  it('takes the hit nearest to the middle, within a round reach', () => {
    // 5 × 5: (3, 2) is 1 from the middle, (0, 2) is 2; the corner (0, 0) is √8 away, out of reach.
    expect(
      nearestHit(
        square(5, [
          [0, 2, 1, 1],
          [3, 2, 2, 2],
        ]),
        5,
      ),
    ).toEqual([2, 2]);
    expect(nearestHit(square(5, [[0, 0, 1, 1]]), 5)).toBeNull();
  });
});

describe('sharpness', () => {
  it('gives way after three slow frames, step by step, and comes back at rest', () => {
    const sharpness = new Sharpness(2);
    const frame = (tookMs: number) => sharpness.frame(tookMs);
    expect([50, 50, 50, 50, 50, 50, 50].map(frame)).toEqual([2, 2, 1.5, 1.5, 1.5, 1, 1]);
    expect(sharpness.rest()).toBe(2);
    expect([50, 50, 16, 50, 50].map(frame)).toEqual([2, 2, 2, 2, 2]);
  });

  it('has nothing to give on a coarse screen', () => {
    const sharpness = new Sharpness(1);
    for (let i = 0; i < 6; i++) expect(sharpness.frame(90)).toBe(1);
  });
});

describe('the cost of a frame', () => {
  /** A browser that is ready for a frame at the times given, each [ms]. */
  function browser() {
    let nowMs = 0;
    let waiting: (() => void)[] = [];
    const cost = new FrameCost(
      (then) => waiting.push(then),
      () => nowMs,
    );
    /** What is drawn first in that turn asks for the next one. */
    const ready = (atMs: number, first: () => void = () => {}) => {
      nowMs = atMs;
      const called = waiting;
      waiting = [];
      first();
      for (const then of called) then();
    };
    return { ready, draw: (atMs: number) => cost.begin(atMs) };
  }

  it('is the time until the next could be drawn, however long none was asked for', () => {
    const { ready, draw } = browser();
    expect(draw(0)).toBe(0);
    ready(16);
    // Nothing moves for five seconds.
    expect(draw(5000)).toBe(16);
    ready(5640);
    expect(draw(5640)).toBe(640);
  });

  it('counts a frame that comes in the very turn in which the browser is ready', () => {
    const { ready, draw } = browser();
    draw(0);
    ready(637, () => expect(draw(637)).toBe(637));
    ready(650);
    expect(draw(700)).toBe(13);
  });
});
