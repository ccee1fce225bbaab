/**
 * How much of a change a zone may take. What broke a rule is tried again at less, half way to what held, and at more as long as that
 * is wanted: as exact as the steps are, where what breaks a rule breaks it at more as well.
 */

import { type DepthRow, thicknessOf } from './depth-rows.ts';
import type { Ground } from './ground.ts';
import { type Amount, amountAfter, type Choice } from './options.ts';
import { type Recipe, STEP_MM } from './recipe.ts';

export interface Cap {
  /** Most that broke no rule [mm]. */
  readonly heldMm: number;
  /** Least that broke one [mm]. */
  readonly brokeMm: number;
  /** What may be tried [mm]. */
  readonly mostMm: number;
}

/** By zone and change. */
export type Caps = Map<string, Cap>;

export const capKey = ({ id }: Ground, change: string) => JSON.stringify([id, change]);

/** Thickness of a material that a recipe brings, at its thickest; of `substrate` by how much it gets thinner [mm]. */
function amountOf({ layers, steps, ...recipe }: Recipe, change: string, { greatestRoomM }: Ground): Amount {
  if (change !== 'substrate') {
    return thicknessOf({ layers, steps, ...recipe }, (i) => layers[i].material.id === change, greatestRoomM * 1000);
  }
  // A step that moves two layers swaps soils and takes no depth.
  const isThinner = (layer: number) => layers[layer].material.role === 'substrate';
  const perStep = steps.map(({ moves }) => (moves.length === 1 && isThinner(moves[0].layer) ? Math.max(0, -moves[0].mm) : 0));
  return { fixed: 0, perStep };
}

/** How much of a change a choice makes [mm]. */
export function changeMm(recipes: readonly Recipe[], { recipe, counts }: Choice, change: string, ground: Ground): number {
  return amountAfter(amountOf(recipes[recipe], change, ground), counts);
}

/** Rows that keep a recipe within the caps of its zone. */
export function capRows(recipe: Recipe, ground: Ground, caps: Caps): DepthRow[] {
  return recipe.changes.flatMap((change): DepthRow[] => {
    const cap = caps.get(capKey(ground, change));
    if (cap === undefined) return [];
    const { fixed, perStep } = amountOf(recipe, change, ground);
    return [{ fixed: cap.mostMm - fixed + 1e-6, perStep: perStep.map((mm) => -mm), family: 'always' }];
  });
}

function between(heldMm: number, brokeMm: number): number {
  return brokeMm - heldMm <= STEP_MM ? heldMm : Math.max((heldMm + brokeMm) / 2, heldMm + STEP_MM);
}

/** Takes down that so much broke a rule. */
export function lower(caps: Caps, key: string, mm: number): void {
  const known = caps.get(key);
  const brokeMm = Math.min(known?.brokeMm ?? Infinity, mm);
  // What held beside other changes may break a rule now.
  const heldMm = known && known.heldMm < brokeMm ? known.heldMm : 0;
  caps.set(key, { heldMm, brokeMm, mostMm: brokeMm <= 0 ? -1 : between(heldMm, brokeMm) });
}

/** Takes down that so much held; true where more is wanted and may be tried. */
export function raise(caps: Caps, key: string, mm: number): boolean {
  const known = caps.get(key);
  if (known === undefined || mm >= known.brokeMm) return false;
  const heldMm = Math.max(known.heldMm, mm);
  const isWanted = mm > known.mostMm - STEP_MM;
  const mostMm = isWanted ? Math.max(known.mostMm, between(heldMm, known.brokeMm)) : known.mostMm;
  caps.set(key, { ...known, heldMm, mostMm });
  return mostMm > known.mostMm;
}
