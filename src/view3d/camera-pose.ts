/** Where the camera stands, as a drawing office would say it: what it looks at, from how far, in which direction, how steeply. */

export type Xyz = readonly [number, number, number];

export interface CameraPose {
  /** Point looked at, local [m]. */
  readonly target: Xyz;
  readonly distanceM: number;
  /** Direction one looks, clockwise from +y [°]. */
  readonly azimuthDeg: number;
  /** 0 level, 90 straight down [°]. */
  readonly tiltDeg: number;
}

/** Axes of the camera in local coordinates, unit length. */
export interface CameraAxes {
  readonly right: Xyz;
  readonly up: Xyz;
  /** The way it looks. */
  readonly forward: Xyz;
}

/** What keeps the model from getting lost. */
export interface PoseLimits {
  readonly min: Xyz;
  readonly max: Xyz;
  readonly nearestM: number;
  readonly farthestM: number;
}

/** A little from below is worth seeing (outlets, columns); more is no view of a deck. */
const LOWEST_TILT_DEG = -20;
const STEEPEST_TILT_DEG = 90;

const sum = (a: Xyz, b: Xyz, factor: number): Xyz => [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]];
const clamped = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Axes that belong to a pose; whole also straight down, where "up" of the scene gives no direction. */
export function cameraAxes(pose: CameraPose): CameraAxes {
  const a = (pose.azimuthDeg * Math.PI) / 180;
  const t = (pose.tiltDeg * Math.PI) / 180;
  return {
    right: [Math.cos(a), -Math.sin(a), 0],
    up: [Math.sin(a) * Math.sin(t), Math.cos(a) * Math.sin(t), Math.cos(t)],
    forward: [Math.sin(a) * Math.cos(t), Math.cos(a) * Math.cos(t), -Math.sin(t)],
  };
}

/** Place of the camera itself, local [m]. */
export function cameraPlace(pose: CameraPose): Xyz {
  return sum(pose.target, cameraAxes(pose).forward, -pose.distanceM);
}

/** Turned about what it looks at. */
export function orbited(pose: CameraPose, byAzimuthDeg: number, byTiltDeg: number): CameraPose {
  const azimuthDeg = (((pose.azimuthDeg + byAzimuthDeg) % 360) + 360) % 360;
  return { ...pose, azimuthDeg, tiltDeg: clamped(pose.tiltDeg + byTiltDeg, LOWEST_TILT_DEG, STEEPEST_TILT_DEG) };
}

/** Below this tilt the ground runs away from the eye: the view then moves up and down, not along it [°]. */
const GROUND_TILT_DEG = 20;

/** Moved across the picture by so many metres to the right and up, along the ground as one moves a drawing on a table. */
export function panned(pose: CameraPose, rightM: number, upM: number): CameraPose {
  const { right } = cameraAxes(pose);
  const a = (pose.azimuthDeg * Math.PI) / 180;
  const t = (pose.tiltDeg * Math.PI) / 180;
  const onGround = pose.tiltDeg >= GROUND_TILT_DEG;
  const away: Xyz = onGround ? [Math.sin(a) / Math.sin(t), Math.cos(a) / Math.sin(t), 0] : [0, 0, 1 / Math.cos(t)];
  return { ...pose, target: sum(sum(pose.target, right, rightM), away, upM) };
}

/** Nearer (factor below 1) or farther, with one point staying where it is on the screen. */
export function zoomed(pose: CameraPose, factor: number, about: Xyz): CameraPose {
  const off: Xyz = [pose.target[0] - about[0], pose.target[1] - about[1], pose.target[2] - about[2]];
  return { ...pose, target: sum(about, off, factor), distanceM: pose.distanceM * factor };
}

/** Brought back within its limits. */
export function limited(pose: CameraPose, limits: PoseLimits): CameraPose {
  const along = (axis: 0 | 1 | 2) => clamped(pose.target[axis], limits.min[axis], limits.max[axis]);
  return {
    ...pose,
    target: [along(0), along(1), along(2)],
    distanceM: clamped(pose.distanceM, limits.nearestM, limits.farthestM),
  };
}

/** A pose on the way from one to another, 0 … 1: turns the shorter way, and zooms evenly to the eye. */
export function between(from: CameraPose, to: CameraPose, share: number): CameraPose {
  const mixed = (a: number, b: number) => a + (b - a) * share;
  const turn = ((((to.azimuthDeg - from.azimuthDeg + 180) % 360) + 360) % 360) - 180;
  return {
    target: [mixed(from.target[0], to.target[0]), mixed(from.target[1], to.target[1]), mixed(from.target[2], to.target[2])],
    distanceM: from.distanceM * (to.distanceM / from.distanceM) ** share,
    azimuthDeg: (from.azimuthDeg + turn * share + 360) % 360,
    tiltDeg: mixed(from.tiltDeg, to.tiltDeg),
  };
}

/** Slow at both ends. */
export function eased(share: number): number {
  return share * share * (3 - 2 * share);
}
