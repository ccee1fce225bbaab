/**
 * Vertical pressure in an elastic half-space under loads on its surface: the second opinion on wheels. It presumes ground
 * of one kind without end, not layers on a stiff slab; under thin cover its peak is higher than a spread patch tells.
 */

import type { WheelPatch } from '../../model/wheel-input.ts';

/**
 * Share of the surface pressure that arrives under the corner of an evenly loaded rectangle.
 * @param m - length of one side / depth [-]
 * @param n - length of the other side / depth [-]
 * @returns influence value, 0 … 0.25 [-]
 * @source Newmark 1935 and Fadum 1948, in the form that needs no change of branch
 */
export function cornerInfluence(m: number, n: number): number {
  const s = m * m + n * n + 1;
  const k = (m * n) / Math.sqrt(s);
  return (Math.atan(k) + k * (1 / (1 + m * m) + 1 / (1 + n * n))) / (2 * Math.PI);
}

/**
 * Pressure under any point by an evenly loaded rectangle, as the sum of four rectangles with a corner over the point.
 * @param sizeM - length along x and y, the middle at 0, 0 [m]
 * @param surfaceKPa - pressure on the surface [kPa]
 * @param at - x and y of the point [m]
 * @param depthM - depth, above 0 [m]
 * @returns vertical pressure [kPa]
 * @source Newmark 1935; superposition of corners
 */
export function underRectangleKPa(
  sizeM: readonly [number, number],
  surfaceKPa: number,
  at: readonly [number, number],
  depthM: number,
): number {
  const corner = (x: number, y: number) => Math.sign(x) * Math.sign(y) * cornerInfluence(Math.abs(x) / depthM, Math.abs(y) / depthM);
  const [right, left] = [at[0] + sizeM[0] / 2, at[0] - sizeM[0] / 2];
  const [top, bottom] = [at[1] + sizeM[1] / 2, at[1] - sizeM[1] / 2];
  return surfaceKPa * (corner(right, top) - corner(left, top) - corner(right, bottom) + corner(left, bottom));
}

/**
 * Pressure by a load on one point of the surface.
 * @param loadKN - load [kN]
 * @param asideM - distance from under the load [m]
 * @param depthM - depth, above 0 [m]
 * @returns vertical pressure [kPa]
 * @source Boussinesq 1885
 */
export function underPointKPa(loadKN: number, asideM: number, depthM: number): number {
  return ((3 * loadKN) / (2 * Math.PI * depthM * depthM)) * (1 + (asideM / depthM) ** 2) ** -2.5;
}

/**
 * Pressure by all wheels of a vehicle under one point, each an evenly pressed rectangle on the surface.
 * @param wheels - wheels with their loads [kN]
 * @param x - point [m]
 * @param y - point [m]
 * @param depthM - depth; at the surface itself it is the pressure of the wheel there [m]
 * @returns vertical pressure [kPa]
 * @source Newmark 1935; superposition of loads
 */
export function underWheelsKPa(wheels: readonly WheelPatch[], x: number, y: number, depthM: number): number {
  // Nearer to the surface than this the influence values no longer change in their digits.
  const depth = Math.max(depthM, 1e-6);
  return wheels.reduce((sum, { x: wx, y: wy, dirX, dirY, alongM, acrossM, loadKN }) => {
    const along = (x - wx) * dirX + (y - wy) * dirY;
    const across = (y - wy) * dirX - (x - wx) * dirY;
    return sum + underRectangleKPa([alongM, acrossM], loadKN / (alongM * acrossM), [along, across], depth);
  }, 0);
}

/**
 * Greatest elastic pressure near a wheel: under its middle, and under the middles of other wheels and halfway between any two
 * where these places lie under its own patch, grown by half the depth.
 * @param wheels - all wheels standing [kN]
 * @param index - wheel looked at [-]
 * @param depthM - depth [m]
 * @returns vertical pressure [kPa]
 * @source Newmark 1935; superposition of loads
 */
export function elasticPeakKPa(wheels: readonly WheelPatch[], index: number, depthM: number): number {
  const own = wheels[index];
  let peak = underWheelsKPa(wheels, own.x, own.y, depthM);
  wheels.forEach((one, i) => {
    for (const other of wheels.slice(i)) {
      const [x, y] = [(one.x + other.x) / 2, (one.y + other.y) / 2];
      const [dx, dy] = [x - own.x, y - own.y];
      const along = Math.abs(dx * own.dirX + dy * own.dirY);
      const across = Math.abs(dy * own.dirX - dx * own.dirY);
      if (along > (own.alongM + depthM) / 2 || across > (own.acrossM + depthM) / 2) continue;
      peak = Math.max(peak, underWheelsKPa(wheels, x, y, depthM));
    }
  });
  return peak;
}
