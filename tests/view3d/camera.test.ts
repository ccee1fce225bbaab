/** Camera poses, fits and limits. Expected values: trigonometry, worked out in the comments; projection checked with three. */

import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { type Body, bodyOf, depthRangeM, FIELD_OF_VIEW_DEG, fitDistanceM, wishedPose } from '../../src/view3d/camera-fit.ts';
import { between, type CameraPose, cameraAxes, cameraPlace, limited, orbited, panned, zoomed } from '../../src/view3d/camera-pose.ts';
import { CameraRig } from '../../src/view3d/camera-rig.ts';
import { smallPicture } from './small-picture.ts';

const pose = (change: Partial<CameraPose> = {}): CameraPose => ({ target: [0, 0, 0], distanceM: 10, azimuthDeg: 0, tiltDeg: 0, ...change });

function expectClose(found: readonly number[], expected: readonly number[], digits = 9): void {
  expect(found).toHaveLength(expected.length);
  found.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i], digits);
  });
}

describe('pose', () => {
  it.each([
    // Looking north (+y) level: the camera stands south.
    [0, 0, [0, -10, 0]],
    // Looking east: it stands west.
    [90, 0, [-10, 0, 0]],
    // Straight down: it stands above.
    [0, 90, [0, 0, 10]],
    // Looking north at 30° down: 10 × cos 30° = 8.660 m south, 10 × sin 30° = 5 m up.
    [0, 30, [0, -8.660254037844386, 5]],
  ])('azimuth %i°, tilt %i° puts the camera at %j', (azimuthDeg, tiltDeg, place) => {
    expectClose(cameraPlace(pose({ azimuthDeg, tiltDeg })), place);
  });

  it('has axes at right angles, north up when looking straight down', () => {
    const { right, up, forward } = cameraAxes(pose({ tiltDeg: 90 }));
    expectClose(right, [1, 0, 0]);
    expectClose(up, [0, 1, 0]);
    expectClose(forward, [0, 0, -1]);
    const tilted = cameraAxes(pose({ azimuthDeg: 50, tiltDeg: 20 }));
    expectClose(
      new Vector3(...tilted.right)
        .cross(new Vector3(...tilted.up))
        .negate()
        .toArray(),
      tilted.forward,
    );
  });

  it('turns about its target and stops straight down and a little below level', () => {
    expect(orbited(pose({ azimuthDeg: 350 }), 20, 0).azimuthDeg).toBe(10);
    expect(orbited(pose(), 0, 200).tiltDeg).toBe(90);
    expect(orbited(pose(), 0, -200).tiltDeg).toBe(-20);
  });

  it('moves across the picture', () => {
    // Looking east and level, right is south (-y); up is up.
    expectClose(panned(pose({ azimuthDeg: 90 }), 2, 3).target, [0, -2, 3]);
    // At 30° down, along the ground: 3 / sin 30° = 6 m away from the eye.
    expectClose(panned(pose({ azimuthDeg: 90, tiltDeg: 30 }), 2, 3).target, [6, -2, 0]);
  });

  it('zooms about a point that stays where it is', () => {
    const before = pose({ azimuthDeg: 30, tiltDeg: 40 });
    const about = [3, 4, 0] as const;
    const after = zoomed(before, 0.5, about);
    // Halfway from the target (0, 0, 0) to the point, and half as far off.
    expectClose(after.target, [1.5, 2, 0]);
    expect(after.distanceM).toBe(5);
  });

  it('stays within limits', () => {
    const limits = { min: [0, 0, 0], max: [10, 6, 2], nearestM: 2, farthestM: 50 } as const;
    expect(limited(pose({ target: [-3, 8, 1], distanceM: 80 }), limits)).toMatchObject({ target: [0, 6, 1], distanceM: 50 });
    expect(limited(pose({ distanceM: 1 }), limits).distanceM).toBe(2);
  });

  it('flies the shorter way round, and evenly to the eye', () => {
    const halfway = between(pose({ azimuthDeg: 350, distanceM: 10 }), pose({ azimuthDeg: 30, distanceM: 40 }), 0.5);
    expect(halfway.azimuthDeg).toBeCloseTo(10, 9);
    // Geometric mean of 10 and 40.
    expect(halfway.distanceM).toBeCloseTo(20, 9);
    expect(between(pose(), pose({ tiltDeg: 60 }), 1).tiltDeg).toBe(60);
  });
});

describe('fit', () => {
  it('stands so far off that the sphere touches the edges of the picture', () => {
    // sin(24° / 2) = 0.207912: 10 m / 0.207912 = 48.097 m. In a picture half as wide as high the tangent of the half
    // angle across is 0.5 × tan 12° = 0.106278, its sine 0.106278 / √(1 + 0.106278²) = 0.105683: 10 / 0.105683 = 94.622 m.
    expect(FIELD_OF_VIEW_DEG).toBe(24);
    expect(fitDistanceM(10, 2)).toBeCloseTo(48.0973, 3);
    expect(fitDistanceM(10, 0.5)).toBeCloseTo(94.622, 2);
  });

  it('goes round everything drawn, exploded or not', () => {
    // Bounds 10 × 6 × 0.64 m; at 100 % the top floor is lifted by 2 m.
    const body = bodyOf(smallPicture(), 0);
    expectClose(body.centre, [5, 3, 0.12], 6);
    expectClose(body.halfM, [5, 3, 0.32], 6);
    expect(body.radiusM).toBeCloseTo(Math.hypot(5, 3), 9);
    expect(bodyOf(smallPicture(), 1).halfHeightM).toBeCloseTo(1.32, 6);
  });

  const corners = ({ centre, halfM }: Body) =>
    [-1, 1].flatMap((x) =>
      [-1, 1].flatMap((y) => [-1, 1].map((z) => new Vector3(centre[0] + x * halfM[0], centre[1] + y * halfM[1], centre[2] + z * halfM[2]))),
    );

  it.each([
    ['home', 1.6],
    ['home', 0.6],
    ['plan', 1.6],
    ['plan', 0.6],
    ['side', 1.6],
    ['side', 0.6],
  ] as const)('%s shows every corner in a picture %f times as wide as high, and fills a good part of it', (to, aspect) => {
    for (const explode of [0, 1]) {
      const rig = new CameraRig();
      rig.setSize(aspect * 500, 500);
      rig.setModel(smallPicture(), explode);
      rig.go(to, null);
      const camera = new PerspectiveCamera();
      rig.apply(camera);
      const seen = corners(bodyOf(smallPicture(), explode)).map((corner) => corner.project(camera));
      const reach = Math.max(...seen.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
      expect(reach).toBeLessThan(1);
      expect(reach).toBeGreaterThan(0.6);
      for (const { z } of seen) expect(Math.abs(z)).toBeLessThan(1);
    }
  });

  it('turns home without losing a corner', () => {
    const rig = new CameraRig();
    rig.setSize(800, 500);
    rig.setModel(smallPicture(), 0);
    const camera = new PerspectiveCamera();
    for (let turned = 0; turned < 360; turned += 30) {
      rig.orbit(30, 0);
      rig.apply(camera);
      for (const corner of corners(bodyOf(smallPicture(), 0))) {
        const { x, y } = corner.project(camera);
        expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThan(1);
      }
    }
  });

  it('looks at a place from where it looks now', () => {
    const body = bodyOf(smallPicture(), 0);
    const found = wishedPose({ at: [2, 1], sizeM: 20 }, body, 2, pose({ azimuthDeg: 77, tiltDeg: 12 }));
    expect(found).toMatchObject({ azimuthDeg: 77, tiltDeg: 12 });
    expectClose(found.target, [2, 1, body.centre[2]]);
    expect(found.distanceM).toBeCloseTo(48.0973, 3);
  });

  it('has a near plane before the model and a far plane behind it', () => {
    const [near, far] = depthRangeM([5, -40, 0], bodyOf(smallPicture(), 0));
    expect(near).toBeGreaterThan(30);
    expect(near).toBeLessThan(40);
    expect(far).toBeGreaterThan(46);
    expect(depthRangeM([5, 3, 0], bodyOf(smallPicture(), 0))[0]).toBeGreaterThan(0);
  });
});

describe('rig', () => {
  function rigged(): { rig: CameraRig; camera: PerspectiveCamera; on: (at: readonly [number, number, number]) => Vector3 } {
    const rig = new CameraRig();
    rig.setSize(800, 500);
    rig.setModel(smallPicture(), 0);
    const camera = new PerspectiveCamera();
    rig.apply(camera);
    return { rig, camera, on: (at) => new Vector3(...at).project(camera) };
  }

  it('keeps the place under the cursor when zooming', () => {
    const { rig, camera, on } = rigged();
    // On the level of the target, 0.12 m.
    const place = [7, 4, 0.12] as const;
    const before = on(place);
    rig.zoom(0.7, before.x, before.y);
    rig.apply(camera);
    const after = on(place);
    expectClose([after.x, after.y], [before.x, before.y], 6);
  });

  it('drags what is looked at by as many pixels as the hand moves', () => {
    const { rig, camera, on } = rigged();
    const target = [5, 3, 0.12] as const;
    rig.go('plan', null);
    rig.drag(60, -30);
    rig.apply(camera);
    const { x, y } = on(target);
    // 800 × 500 px: 60 px are 0.15 of half the width, 30 px up are 0.12 of half the height.
    expectClose([x, y], [0.15, 0.12], 6);
  });

  it('flies there in 0.6 s, or is there at once', () => {
    const { rig, camera } = rigged();
    rig.go('plan', 1000);
    expect(rig.step(1300)).toBe(true);
    rig.apply(camera);
    const halfway = camera.position.z;
    expect(rig.step(1600)).toBe(false);
    rig.apply(camera);
    expect(camera.position.z).toBeGreaterThan(halfway);
    expectClose([camera.position.x, camera.position.y], [5, 3], 6);
    rig.go('side', null);
    expect(rig.step(1700)).toBe(false);
  });

  it('goes along with a model that grows, until a hand moves the camera', () => {
    const { rig, camera } = rigged();
    const near = camera.position.length();
    rig.setModel(smallPicture(), 1);
    rig.apply(camera);
    expect(camera.position.length()).toBeGreaterThan(near);
    rig.orbit(10, 0);
    rig.apply(camera);
    const own = camera.position.clone();
    rig.setModel(smallPicture(), 0);
    rig.apply(camera);
    expectClose(camera.position.toArray(), own.toArray());
  });
});
