/** Fits, wishes and limits of the camera, with the real camera controls. Expected values: trigonometry, worked out in the comments; projection checked with three. */

import { CameraControlsImpl } from '@react-three/drei';
import * as THREE from 'three';
import { PerspectiveCamera, Vector3 } from 'three';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Body, bodyBox, bodyOf, cylinderDistanceM, depthRangeM, FIELD_OF_VIEW_DEG } from '../../src/view3d/camera-fit.ts';
import { CameraRig } from '../../src/view3d/camera-rig.ts';
import { smallPicture } from './small-picture.ts';

beforeAll(() => {
  // The controls keep the place of their element in one.
  Object.assign(globalThis, { DOMRect: class {} });
  CameraControlsImpl.install({ THREE });
});

function expectClose(found: readonly number[], expected: readonly number[], digits = 6): void {
  expect(found).toHaveLength(expected.length);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i], digits);
  });
}

const corners = ({ centre, halfM }: Body) =>
  [-1, 1].flatMap((x) =>
    [-1, 1].flatMap((y) => [-1, 1].map((z) => new Vector3(centre[0] + x * halfM[0], centre[1] + y * halfM[1], centre[2] + z * halfM[2]))),
  );

/** A rig over the small picture: 10 × 6 m, from -0.2 to 0.44 m; its middle is (5, 3, 0.12). */
function rigged(aspect = 1.6, explode = 0) {
  const camera = new PerspectiveCamera(FIELD_OF_VIEW_DEG, aspect);
  camera.up.set(0, 0, 1);
  const controls = new CameraControlsImpl(camera);
  let clocks = 0;
  const rig = new CameraRig({ controls, camera, startClock: () => clocks++ });
  const listeners = new Map<string, (event: unknown) => void>();
  const element = {
    addEventListener: (type: string, listener: (event: unknown) => void) => listeners.set(type, listener),
    removeEventListener: (type: string) => listeners.delete(type),
  };
  let asked = 0;
  const stop = rig.follow(element as unknown as HTMLElement, () => asked++);
  rig.setHeight(500);
  rig.setModel(smallPicture(), explode);
  const frame = (seconds = 0.016) => {
    controls.update(seconds);
    rig.settleFrame();
  };
  frame();
  return {
    rig,
    camera,
    controls,
    frame,
    stop,
    listeners,
    clocks: () => clocks,
    asked: () => asked,
    /** Place on the screen, from the middle, -1 … 1. */
    on: (at: readonly [number, number, number]) => new Vector3(...at).project(camera),
    target: () => controls.getTarget(new Vector3()).toArray(),
    /** Frames until nothing moves any more. */
    flown: () => {
      let frames = 0;
      while (controls.update(0.016) && frames < 400) {
        rig.settleFrame();
        frames++;
      }
      rig.settleFrame();
      return frames;
    },
    /** What the controls tell while a hand moves them. */
    hand: (move: () => void) => {
      controls.dispatchEvent({ type: 'controlstart' });
      move();
      controls.dispatchEvent({ type: 'control' });
      frame();
    },
  };
}

describe('fit', () => {
  it('goes round everything drawn, exploded or not', () => {
    // Bounds 10 × 6 × 0.64 m; at 100 % the top floor is lifted by 2 m.
    const body = bodyOf(smallPicture(), 0);
    expectClose(body.centre, [5, 3, 0.12]);
    expectClose(body.halfM, [5, 3, 0.32]);
    expect(body.radiusM).toBeCloseTo(Math.hypot(5, 3), 9);
    expect(bodyOf(smallPicture(), 1).halfHeightM).toBeCloseTo(1.32, 6);
    expectClose([...bodyBox(body).min.toArray(), ...bodyBox(body).max.toArray()], [0, 0, -0.2, 10, 6, 0.44]);
  });

  it('stands so far off that a flat round deck seen from above touches the edges of the picture, but for 5 % of paper', () => {
    // 10 / sin(atan(tan 12°)) = 48.097 m across; away from the edge nearest: 10 / tan 12° = 47.046 m. 1.05 × 48.097 = 50.502 m.
    expect(FIELD_OF_VIEW_DEG).toBe(24);
    expect(cylinderDistanceM({ radiusM: 10, halfHeightM: 0 }, 90, 1)).toBeCloseTo(50.502, 2);
  });

  it.each([
    ['home', 1.6],
    ['home', 0.6],
    ['plan', 1.6],
    ['plan', 0.6],
    ['side', 1.6],
    ['side', 0.6],
  ] as const)('%s shows every corner in a picture %f times as wide as high, exploded or not, and fills a good part of it', (to, aspect) => {
    for (const explode of [0, 1]) {
      const { rig, camera, frame } = rigged(aspect, explode);
      rig.go(to, false);
      frame();
      const seen = corners(bodyOf(smallPicture(), explode)).map((corner) => corner.project(camera));
      const reach = Math.max(...seen.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
      expect(reach).toBeLessThan(1);
      expect(reach).toBeGreaterThan(0.6);
      for (const { z } of seen) expect(Math.abs(z)).toBeLessThan(1);
    }
  });

  it('turns home without losing a corner', () => {
    const { rig, camera, frame } = rigged();
    for (let turned = 0; turned < 360; turned += 30) {
      rig.orbit(30, 0, false);
      frame();
      for (const corner of corners(bodyOf(smallPicture(), 0))) {
        const { x, y } = corner.project(camera);
        expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThan(1);
      }
    }
  });

  it('shows a place from the side it is looked at now, with all floors above it', () => {
    const { rig, controls, frame, target } = rigged();
    const { azimuthAngle, polarAngle } = controls;
    rig.go({ at: [2, 1], sizeM: 4 }, false);
    frame();
    expectClose(target(), [2, 1, 0.12]);
    expectClose([controls.azimuthAngle, controls.polarAngle], [azimuthAngle, polarAngle]);
    // A sphere of 2 m: 2 / sin 12° = 9.620 m.
    expect(controls.distance).toBeCloseTo(9.6195, 3);
    // Exploded, half of 2.64 m is still less than 2 m.
    rig.setModel(smallPicture(), 1);
    expect(controls.distance).toBeCloseTo(9.6195, 3);
    rig.go({ at: [2, 1], sizeM: 1 }, false);
    // At least the nearest allowed, 1.5 m: 1.5 / sin 12° = 7.215 m.
    expect(controls.distance).toBeCloseTo(7.2146, 3);
  });

  it('has a near plane before the model and a far plane behind it', () => {
    const [near, far] = depthRangeM([5, -40, 0], bodyOf(smallPicture(), 0));
    expect(near).toBeGreaterThan(30);
    expect(near).toBeLessThan(40);
    expect(far).toBeGreaterThan(46);
    expect(depthRangeM([5, 3, 0], bodyOf(smallPicture(), 0))[0]).toBeGreaterThan(0);
  });
});

describe('standard views', () => {
  it('stand where a drawing office would: plan above with north up, side in the south', () => {
    const { rig, camera, frame, on } = rigged();
    rig.go('plan', false);
    frame();
    expectClose(camera.position.toArray().slice(0, 2), [5, 3], 3);
    expect(on([5, 6, 0.12]).y).toBeGreaterThan(0.5);
    expect(on([10, 3, 0.12]).x).toBeGreaterThan(0.5);
    rig.go('side', false);
    frame();
    expectClose([camera.position.x, camera.position.z], [5, 0.12], 3);
    expect(camera.position.y).toBeLessThan(0);
    rig.go('home', false);
    frame();
    // Looking 32° from north to east and 34° down: from the south-west, as far up as tan 34° of the way off.
    const [x, y, z] = camera.position.toArray();
    expect(Math.atan2(5 - x, 3 - y) / (Math.PI / 180)).toBeCloseTo(32, 6);
    expect(Math.atan2(z - 0.12, Math.hypot(x - 5, y - 3)) / (Math.PI / 180)).toBeCloseTo(34, 6);
  });

  it('are flown to in about 0.6 s the shorter way round, and then nothing moves', () => {
    const { rig, controls, frame, flown, clocks } = rigged();
    // Looking 350°: the plan looks 0°, 10° further on.
    rig.orbit(350 - 32, 0, false);
    frame();
    const before = controls.azimuthAngle;
    rig.go('plan', true);
    expect(clocks()).toBe(1);
    for (let i = 0; i < 38; i++) frame();
    // 38 × 16 ms = 0.608 s: nearly there, straight down.
    expect(controls.polarAngle).toBeLessThan(0.02);
    flown();
    expect(controls.polarAngle).toBeLessThan(1e-5);
    expect(Math.abs(controls.azimuthAngle - before)).toBeCloseTo((10 * Math.PI) / 180, 5);
    expect(controls.update(0.016)).toBe(false);
  });

  it('are there at once when motion is unwanted', () => {
    const { rig, camera, flown } = rigged();
    rig.go('plan', false);
    const { z } = camera.position;
    flown();
    expect(camera.position.z).toBeCloseTo(z, 9);
  });

  it('go along with a model that grows, until a hand moves the camera', () => {
    const { rig, controls, camera, frame, hand } = rigged();
    const near = controls.distance;
    rig.setModel(smallPicture(), 1);
    expect(controls.distance).toBeGreaterThan(near);
    hand(() => controls.rotate(0.1, 0, false));
    const own = camera.position.toArray();
    rig.setModel(smallPicture(), 0);
    frame();
    expectClose(camera.position.toArray(), own, 3);
  });

  it('come back after a tap that shook them', () => {
    const { rig, camera, controls, frame, hand } = rigged();
    const before = camera.position.toArray();
    hand(() => controls.rotate(0.02, 0.01, false));
    rig.tapped();
    frame();
    expectClose(camera.position.toArray(), before);
    const { distance } = controls;
    rig.setModel(smallPicture(), 1);
    expect(controls.distance).toBeGreaterThan(distance);
  });
});

describe('hands', () => {
  it('stop a flight where it is', () => {
    const { rig, controls, camera, frame } = rigged();
    rig.go('plan', true);
    for (let i = 0; i < 8; i++) frame();
    const stopped = camera.position.toArray();
    controls.dispatchEvent({ type: 'controlstart' });
    for (let i = 0; i < 8; i++) frame();
    expectClose(camera.position.toArray(), stopped);
  });

  it('turn only from straight down to a little from below', () => {
    const { rig, controls } = rigged();
    rig.orbit(0, 200, false);
    expect(controls.polarAngle).toBeCloseTo(0, 5);
    rig.orbit(0, -200, false);
    // 20° below level.
    expect(controls.polarAngle).toBeCloseTo((110 * Math.PI) / 180, 9);
  });

  it('drag what is looked at by as many pixels as they move', () => {
    const { rig, frame, on } = rigged();
    rig.go('plan', false);
    frame();
    rig.drag(60, -30, false);
    frame();
    const { x, y } = on([5, 3, 0.12]);
    // 800 × 500 px: 60 px are 0.15 of half the width, 30 px up are 0.12 of half the height.
    expectClose([x, y], [0.15, 0.12], 4);
  });

  it('move the view along the deck and keep turning about it, not about a point in the air', () => {
    const { controls, hand, target } = rigged();
    const { distance } = controls;
    // As the controls drag: in the plane of the picture, here 1 m up it.
    hand(() => controls.truck(0, -1, false));
    // On the level of the middle again, 1 / sin 34° = 1.788 m further along the deck, in direction 32°:
    // 5 + 1.788 × sin 32° = 5.948, 3 + 1.788 × cos 32° = 4.517.
    expectClose(target(), [5.9477, 4.5166, 0.12], 3);
    expect(controls.distance).toBeCloseTo(distance, 6);
  });

  it('zoom without a jump when the target goes back to the deck', () => {
    const { controls, frame, hand, on, target } = rigged();
    let before = new Vector3();
    hand(() => {
      controls.truck(0, -1, false);
      controls.dolly(8, false);
      controls.update(0);
      before = on([6, 4, 0]);
    });
    frame();
    const after = on([6, 4, 0]);
    expectClose([after.x, after.y], [before.x, before.y]);
    expectClose(target(), [5.9477, 4.5166, 0.12], 3);
  });

  it('cannot lose the model', () => {
    const { rig, controls, frame, target } = rigged();
    for (let i = 0; i < 40; i++) {
      rig.drag(400, 300, false);
      frame();
    }
    const [x, y] = target();
    expectClose([x, y], [0, 6], 6);
    for (let i = 0; i < 40; i++) rig.zoom(2, false);
    // Twice as far as the sphere round everything needs: 2 × √(34 + 0.32²) / sin 12°.
    expect(controls.distance).toBeCloseTo((2 * Math.hypot(5, 3, 0.32)) / Math.sin((12 * Math.PI) / 180), 6);
    for (let i = 0; i < 40; i++) rig.zoom(0.5, false);
    expect(controls.distance).toBe(1.5);
  });

  it('move with shift and the left button, and turn without', () => {
    const { controls, listeners, stop, asked } = rigged();
    const press = (shiftKey: boolean) => listeners.get('pointerdown')?.({ shiftKey, ctrlKey: false, metaKey: false });
    press(true);
    expect(controls.mouseButtons.left).toBe(CameraControlsImpl.ACTION.TRUCK);
    press(false);
    expect(controls.mouseButtons.left).toBe(CameraControlsImpl.ACTION.ROTATE);
    // Fingers zoom as far again as the wheel.
    expect(controls.dollySpeed).toBe(1);
    listeners.get('pointerdown')?.({ pointerType: 'touch' });
    expect(controls.dollySpeed).toBe(2);
    listeners.get('pointerup')?.({});
    expect(asked()).toBe(1);
    stop();
    expect(listeners.size).toBe(0);
  });
});
