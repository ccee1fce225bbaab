/** People, benches, tables and plants: our own few faces each, true to size. */

import { chance, type LifeBuilder, type Ring, type Spot } from './life-builder.ts';

/** Height of every person drawn [m]: they are there to measure by. */
export const PERSON_M = 1.75;

const COATS = ['#3E5A66', '#93451F', '#C9932F', '#4A5F33', '#6B5B73', '#8C7B64', '#2F4858', '#A65E45'] as const;
const TROUSERS = ['#3A4248', '#55504A', '#2E3B47', '#6A6156'] as const;
const SKIN = ['#E0B899', '#C58F6B', '#8D5F43', '#F0CFB4'] as const;
const HAIR = ['#3B2D24', '#6A4A32', '#1F1C1B', '#A98A5E', '#8E8A85'] as const;
const LEAVES = ['#6E8C4C', '#5E7F45', '#83994F', '#4F7048', '#8FA565'] as const;
const SHRUB = ['#4F6E3F', '#5C7B47', '#3F5F40', '#6C8650'] as const;
const FLOWERS = ['#8D7AA8', '#C9932F', '#B5597A', '#F3ECD8', '#7A86B8'] as const;
const WOOD = '#A98459';
const STEEL = '#4A5257';

function pick<T>(from: readonly T[], seed: number): T {
  return from[Math.min(from.length - 1, Math.floor(chance(seed) * from.length))] as T;
}

/** A person; `strideM` 0 stands, more walks. */
export function person(to: LifeBuilder, spot: Spot, seed: number): void {
  const strideM = chance(seed + 1) < 0.55 ? 0.17 : 0.02;
  const trousers = pick(TROUSERS, seed + 2);
  const coat = pick(COATS, seed + 3);
  const skin = pick(SKIN, seed + 4);
  for (const side of [-1, 1]) {
    const step = side * strideM;
    const leg = (zM: number, ahead: number, halfM: number): Ring => ({ zM, alongM: halfM, acrossM: halfM, at: [ahead, side * 0.085] });
    to.stack(spot, [leg(0, step + 0.05, 0.1), leg(0.07, step + 0.02, 0.07)], { sides: 5, hex: '#2B2A29' });
    to.stack(spot, [leg(0.06, step, 0.06), leg(0.46, step * 0.6 + 0.02, 0.075), leg(0.86, 0, 0.095)], {
      sides: 6,
      hex: trousers,
      open: true,
    });
    const arm = (zM: number, ahead: number, out: number, halfM: number): Ring => ({
      zM,
      alongM: halfM,
      acrossM: halfM,
      at: [ahead, side * out],
    });
    to.stack(spot, [arm(0.8, -step * 0.9, 0.25, 0.04), arm(1.1, -step * 0.3, 0.25, 0.05), arm(1.4, 0, 0.21, 0.06)], {
      sides: 5,
      hex: coat,
    });
    to.stack(spot, [arm(0.72, -step, 0.25, 0.03), arm(0.81, -step * 0.9, 0.25, 0.035)], { sides: 4, hex: skin });
  }
  const body = (zM: number, alongM: number, acrossM: number): Ring => ({ zM, alongM, acrossM });
  const hem = chance(seed + 5) < 0.35 ? 0.62 : 0.82;
  to.stack(spot, [body(hem, 0.13, 0.18), body(1.02, 0.11, 0.155), body(1.36, 0.125, 0.205), body(1.46, 0.07, 0.09)], {
    sides: 8,
    hex: coat,
  });
  to.stack(spot, [body(1.44, 0.05, 0.05), body(1.52, 0.05, 0.05)], { sides: 6, hex: skin, open: true });
  to.stack(spot, [body(1.5, 0.06, 0.055), body(1.58, 0.095, 0.08), body(1.67, 0.095, 0.08)], { sides: 7, hex: skin });
  to.stack(spot, [body(1.63, 0.1, 0.088), body(1.71, 0.09, 0.08), body(PERSON_M, 0.04, 0.04)], { sides: 7, hex: pick(HAIR, seed + 6) });
}

/** A bench 1.8 m long with a back, to sit on looking ahead. */
export function bench(to: LifeBuilder, spot: Spot): void {
  for (const across of [-0.7, 0.7]) {
    to.box(spot, { at: [0, across, 0], m: [0.4, 0.06, 0.41] }, STEEL);
    to.box(spot, { at: [-0.21, across, 0.41], m: [0.04, 0.06, 0.4] }, STEEL);
  }
  for (const ahead of [-0.15, 0, 0.15]) to.box(spot, { at: [ahead, 0, 0.41], m: [0.12, 1.8, 0.04] }, WOOD);
  for (const up of [0.56, 0.7]) to.box(spot, { at: [-0.2, 0, up], m: [0.03, 1.8, 0.1] }, WOOD);
}

/** A round table with three stools. */
export function table(to: LifeBuilder, spot: Spot): void {
  const disc = (zM: number, radiusM: number): Ring => ({ zM, alongM: radiusM, acrossM: radiusM });
  to.stack(spot, [disc(0, 0.24), disc(0.03, 0.24)], { sides: 10, hex: STEEL });
  to.stack(spot, [disc(0.03, 0.04), disc(0.71, 0.04)], { sides: 6, hex: STEEL });
  to.stack(spot, [disc(0.71, 0.4), disc(0.74, 0.4)], { sides: 14, hex: WOOD });
  for (const k of [0, 1, 2]) {
    const angle = spot.turn + (2 * Math.PI * k) / 3;
    const stool = { ...spot, x: spot.x + 0.72 * Math.cos(angle), y: spot.y + 0.72 * Math.sin(angle) };
    to.stack(stool, [disc(0, 0.15), disc(0.42, 0.13)], { sides: 6, hex: STEEL });
    to.stack(stool, [disc(0.42, 0.19), disc(0.46, 0.19)], { sides: 9, hex: WOOD });
  }
}

/** A perennial: a low cushion, here and there with flowers. */
export function cushion(to: LifeBuilder, spot: Spot, seed: number): void {
  const radiusM = 0.17 + 0.15 * chance(seed + 1);
  const heightM = 0.2 + 0.28 * chance(seed + 2);
  const ring = (share: number, up: number): Ring => ({ zM: up * heightM, alongM: share * radiusM, acrossM: share * radiusM });
  to.stack(spot, [ring(0.75, -0.1), ring(1, 0.5), ring(0.3, 1)], { sides: 5, hex: pick(LEAVES, seed + 3), open: true });
  if (chance(seed + 4) > 0.42) return;
  const hex = FLOWERS[Math.floor(chance(Math.floor(spot.x / 3) * 57 + Math.floor(spot.y / 3) * 131) * FLOWERS.length)] ?? FLOWERS[0];
  for (let k = 0; k < 3; k++) {
    const angle = 2 * Math.PI * chance(seed + 5 + k);
    const at = { ...spot, x: spot.x + 0.6 * radiusM * Math.cos(angle), y: spot.y + 0.6 * radiusM * Math.sin(angle) };
    const head = (zM: number, halfM: number): Ring => ({ zM, alongM: halfM, acrossM: halfM });
    const top = heightM * (1.05 + 0.35 * chance(seed + 9 + k));
    to.stack(at, [head(top - 0.1, 0.02), head(top - 0.03, 0.06), head(top, 0.02)], { sides: 4, hex, open: true });
  }
}

/** Tall grass and herbs of a meadow. */
export function grass(to: LifeBuilder, spot: Spot, seed: number): void {
  const hex = pick(['#8A9C56', '#78914F', '#A3A765', '#6F8F4E'], seed + 1);
  for (let k = 0; k < 4; k++) {
    const turn = spot.turn + (Math.PI * k) / 2;
    const heightM = 0.22 + 0.22 * chance(seed + 2 + k);
    to.blade({ ...spot, turn }, { widthM: 0.12, heightM, leanM: 0.16 }, hex);
  }
}

/** A shrub of two or three round lumps. */
export function shrub(to: LifeBuilder, spot: Spot, seed: number): void {
  const lumps = chance(seed) < 0.5 ? 2 : 3;
  for (let k = 0; k < lumps; k++) {
    const radiusM = 0.34 + 0.22 * chance(seed + 3 * k + 1);
    const heightM = 0.55 + 0.6 * chance(seed + 3 * k + 2);
    const angle = spot.turn + (2 * Math.PI * k) / lumps;
    const at = { ...spot, x: spot.x + 0.26 * Math.cos(angle), y: spot.y + 0.26 * Math.sin(angle), turn: angle };
    const ring = (share: number, up: number): Ring => ({ zM: up * heightM, alongM: share * radiusM, acrossM: share * radiusM });
    const rings = [ring(0.5, 0), ring(0.98, 0.3), ring(0.9, 0.65), ring(0.5, 0.92), ring(0.1, 1)];
    to.stack(at, rings, { sides: 6, hex: pick(SHRUB, seed + 3 * k), open: true });
  }
}

/** A clump of leaves in a crown. */
export function leaves(to: LifeBuilder, spot: Spot, size: { readonly radiusM: number; readonly seed: number }): void {
  const { radiusM, seed } = size;
  const ring = (share: number, up: number): Ring => ({ zM: up * radiusM, alongM: share * radiusM, acrossM: share * radiusM });
  const hex = pick(['#7E9B62', '#8FAA6C', '#6F8F55', '#9DB479', '#688751'], seed);
  to.stack(spot, [ring(0.35, -0.75), ring(0.95, -0.2), ring(0.8, 0.4), ring(0.2, 0.8)], { sides: 5, hex });
}
