/** Heights of all layer surfaces over a plan net: the prism that solids and sections are made from. */

import type { LayerInput } from '../model/deck-input.ts';
import type { Prism } from '../model/picture.ts';
import type { PlanNet } from './plan-net.ts';
import { splitNet } from './split-net.ts';

/** A layer thinner than this is not there [m]. */
const NOTHING_M = 1e-9;

/** A prism that does not know yet which parts its layers are. */
export type BarePrism = Omit<Prism, 'owner' | 'parts'>;

/**
 * Stacks layers on the deck. The make-up layer takes what the finished level leaves to it, held to its range; without a
 * finished level it has its nominal thickness. An infill has only its own thickness here: the volume it puts into the
 * voids of the element below lies inside that element and is not drawn a second time, so a drawn volume is
 * area × `thicknessM`, while quantities add `voidVolumeM`.
 * @param net - net of the zone [m]
 * @param layers - bottom to top [m]
 * @returns prism; the net is split where the make-up layer is held back [m]
 * @source contract.md, section 2, Make-up layer and Infill
 */
export function zonePrism(net: PlanNet, layers: readonly LayerInput[]): BarePrism {
  const makeUp = net.finishM.length === 0 ? -1 : layers.findIndex((layer) => layer.rangeM !== null);
  const rangeM = makeUp < 0 ? null : layers[makeUp].rangeM;
  const othersM = layers.reduce((sum, layer, k) => (k === makeUp ? sum : sum + layer.thicknessM), 0);
  const fine = rangeM === null ? net : splitNet(net, [othersM + rangeM.min, othersM + rangeM.max]);
  const vertices = fine.deckM.length;
  const heights = new Float64Array((layers.length + 1) * vertices);
  heights.set(fine.deckM);
  for (let k = 0; k < layers.length; k++) {
    for (let v = 0; v < vertices; v++) {
      const thicknessM =
        k === makeUp && rangeM !== null
          ? Math.min(rangeM.max, Math.max(rangeM.min, fine.finishM[v] - fine.deckM[v] - othersM))
          : layers[k].thicknessM;
      heights[(k + 1) * vertices + v] = heights[k * vertices + v] + (thicknessM > NOTHING_M ? thicknessM : 0);
    }
  }
  return { plan: fine.plan, triangles: fine.triangles, rim: fine.rim, heights };
}

/**
 * Even sheet between two heights above the deck, negative below it: the slab, or water standing on it.
 * @param net - net of the deck [m]
 * @param bottomM - lower face above the deck's level [m]
 * @param topM - upper face above the deck's level [m]
 * @returns prism of one layer [m]
 * @source none: geometry
 */
export function sheetPrism(net: PlanNet, bottomM: number, topM: number): BarePrism {
  const vertices = net.deckM.length;
  const heights = new Float64Array(2 * vertices);
  for (let v = 0; v < vertices; v++) {
    heights[v] = net.deckM[v] + bottomM;
    heights[vertices + v] = net.deckM[v] + topM;
  }
  return { plan: net.plan, triangles: net.triangles, rim: net.rim, heights };
}

/**
 * Greatest thickness of a layer.
 * @param prism - prism [m]
 * @param layer - index of the layer from the bottom [-]
 * @returns thickness, 0 where the layer is not there at all [m]
 * @source none: arithmetic
 */
export function greatestThicknessM(prism: BarePrism, layer: number): number {
  const vertices = prism.plan.length / 2;
  let greatest = 0;
  for (let v = 0; v < vertices; v++) {
    const thicknessM = prism.heights[(layer + 1) * vertices + v] - prism.heights[layer * vertices + v];
    if (thicknessM > greatest) greatest = thicknessM;
  }
  return greatest;
}
