/** What standing water does in the layers of a build-up: pores it fills, volume it is pushed out of, flow in the drainage. */

import type { BuildUpInput } from '../model/deck-input.ts';
import type { SceneBuildUp } from '../model/scene-file.ts';
import { WATER_KG_PER_L } from '../model/units.ts';
import type { UpliftLayer } from '../model/uplift-input.ts';
import type { MaterialOf, ResolvedMaterial } from './materials.ts';

/** Water per volume [kg/m³]. */
const WATER_KGM3 = 1000 * WATER_KG_PER_L;
/** No mineral grain of the trade is heavier: solids take at least the dry mass over this of the volume [kg/m³]. */
const HEAVIEST_GRAIN_KGM3 = 2700;

/**
 * Share of each layer that ponded water fills besides what it holds. An infill lies in the voids of its element: of the volume
 * of the element it leaves its own pores.
 */
export function freePores(buildUp: SceneBuildUp, input: BuildUpInput, materialOf: MaterialOf): number[] {
  return buildUp.layers.map((layer, i) => {
    const material = materialOf(layer.material);
    const pores = (material.porePercent ?? 0) / 100;
    const thicknessMm = 1000 * input.layers[i].thicknessM;
    if (material.areal === undefined || thicknessMm === 0) return pores;
    const above = buildUp.layers[i + 1];
    const infillLm2 = above?.infill ? (material.voidLm2 ?? 0) : 0;
    const infillPores = above?.infill ? (materialOf(above.material).porePercent ?? 0) / 100 : 0;
    const keptLm2 = layer.orientation === 'retention' ? (material.retentionLm2 ?? 0) : 0;
    const freeLm2 = pores * thicknessMm - keptLm2 - infillLm2 * (1 - infillPores);
    // Kept water and infill share cups, so that counted apart they may be more than there is room for.
    return Math.max(0, freeLm2) / thicknessMm;
  });
}

/** How each layer of a build-up behaves in standing water. */
export function upliftLayers(buildUp: SceneBuildUp, materialOf: MaterialOf): UpliftLayer[] {
  return buildUp.layers.map(({ material }) => upliftLayer(materialOf(material)));
}

/** Light fill counts as a sealed block unless its material says that water gets in between its grains. */
export function upliftLayer(material: ResolvedMaterial): UpliftLayer {
  const { role, uplift, density, porePercent } = material;
  const pores = (porePercent ?? 0) / 100;
  if (role === 'light fill' || uplift !== undefined) return { light: true, displaces: uplift === 'grains' ? 1 - pores : 1 };
  // Sheets and hollow elements weigh about nothing in water.
  if (!density) return { light: false, displaces: arealDisplaces(material) };
  const soaked = (density.saturated - density.dry) / WATER_KGM3;
  const displaces = Math.min(1, Math.max(1 - pores - soaked, density.dry / HEAVIEST_GRAIN_KGM3));
  return { light: density.dry < WATER_KGM3 * displaces, displaces };
}

function arealDisplaces({ areal, thicknessMm }: ResolvedMaterial): number {
  return areal && thicknessMm ? Math.min(1, areal.dry / WATER_KG_PER_L / thicknessMm) : 0;
}

/** What drains a build-up below: an element with a flow, or else granular fill with a permeability. */
export type Drain =
  | { readonly kind: 'element'; readonly material: string; readonly name: string; readonly flowLsm: number; readonly thicknessM: number }
  | {
      readonly kind: 'fill';
      readonly material: string;
      readonly name: string;
      readonly permeabilityMs: number;
      readonly thicknessM: number;
    };

/** The lowest element that names a flow, else the thickest granular drain; null where neither says what it can carry. */
export function drainOf(buildUp: SceneBuildUp, input: BuildUpInput, materialOf: MaterialOf): Drain | null {
  const layers = buildUp.layers.map((layer, i) => ({ ...materialOf(layer.material), of: input.layers[i] }));
  const leastM = ({ of }: (typeof layers)[number]) => of.rangeM?.min ?? of.thicknessM;
  const element = layers.find(({ role }) => role === 'drainage element');
  if (element) {
    if (element.flowLsm === undefined) return null;
    return { kind: 'element', material: element.id, name: element.name, flowLsm: element.flowLsm, thicknessM: leastM(element) };
  }
  const fills = layers.filter(({ role }) => role === 'drainage fill').sort((a, b) => leastM(b) - leastM(a));
  const fill = fills.find(({ permeabilityMs }) => permeabilityMs !== undefined);
  if (fill?.permeabilityMs === undefined) return null;
  return { kind: 'fill', material: fill.id, name: fill.name, permeabilityMs: fill.permeabilityMs, thicknessM: leastM(fill) };
}
