/** Flow within a drainage layer: what a layer carries full, and how high water stands in one that rain drains into. */

/**
 * Flow per metre of width that rain on a strip brings.
 * @param rainLpsHa - what reaches the layer, litres per second and hectare [l/s]
 * @param lengthM - length of the strip along the flow [m]
 * @returns flow per metre of width [l/s]
 * @source none: arithmetic
 */
export function stripFlowLsm(rainLpsHa: number, lengthM: number): number {
  return (rainLpsHa / 10_000) * lengthM;
}

/**
 * Flow per metre of width of a granular layer that runs full.
 * @param permeabilityMs - permeability, metres per second [m]
 * @param thicknessM - thickness [m]
 * @param slope - fall, rise per length [-]
 * @returns flow per metre of width [l/s]
 * @source Darcy's law, q = k · t · s
 */
export function darcyLsm(permeabilityMs: number, thicknessM: number, slope: number): number {
  return permeabilityMs * thicknessM * slope * 1000;
}

/** A layer that rain seeps into evenly, falling to a drain with free outflow. */
export interface SeepingLayer {
  /** What reaches the layer, metres per second. */
  readonly inflowMs: number;
  readonly permeabilityMs: number;
  /** Level distance from the ridge to the drain [m]. */
  readonly lengthM: number;
  /** Rise per length [-]. */
  readonly slope: number;
}

/** R within this of a quarter is taken as the limit itself, where both other branches lose their digits. */
const AT_QUARTER = 1e-6;

/**
 * Greatest height of water in a layer on a slope, steady rain.
 * @param layer - inflow, permeability, length and slope [m]
 * @returns greatest height above the bottom of the layer [m]
 * @source McEnroe (1993), J. Environ. Eng. 119(2), 262–270; formulas from memory, checked against the differential equation
 */
export function mcEnroeHeadM(layer: SeepingLayer): number {
  const { inflowMs, permeabilityMs, lengthM, slope } = layer;
  if (inflowMs === 0) return 0;
  if (slope === 0) return flatHeadM(layer);
  // sin² α = tan² α / (1 + tan² α)
  const r = (inflowMs * (1 + slope ** 2)) / (permeabilityMs * slope ** 2);
  return mcEnroeShare(r, slope) * lengthM * slope;
}

/** Greatest height over length · slope, by the ratio R and S = tan α. */
function mcEnroeShare(r: number, s: number): number {
  const rs = r * s;
  if (Math.abs(r - 0.25) < AT_QUARTER) {
    return ((r * (1 - 2 * rs)) / (1 - 2 * r)) * Math.exp((2 * r * (s - 1)) / ((1 - 2 * rs) * (1 - 2 * r)));
  }
  const root = Math.sqrt(r - rs + rs ** 2);
  if (r < 0.25) {
    const a = Math.sqrt(1 - 4 * r);
    return root * (((1 - a - 2 * r) * (1 + a - 2 * rs)) / ((1 + a - 2 * r) * (1 - a - 2 * rs))) ** (1 / (2 * a));
  }
  const b = Math.sqrt(4 * r - 1);
  return root * Math.exp((Math.atan((2 * rs - 1) / b) - Math.atan((2 * r - 1) / b)) / b);
}

/**
 * Greatest height of water in a level layer.
 * @param layer - inflow, permeability and length; the slope is not used [m]
 * @returns greatest height above the bottom of the layer [m]
 * @source Dupuit parabola over a free outlet, y = L · √(r / k)
 */
export function flatHeadM({ inflowMs, permeabilityMs, lengthM }: SeepingLayer): number {
  return lengthM * Math.sqrt(inflowMs / permeabilityMs);
}

/**
 * Greatest height of water in a layer on a slope, by a second author.
 * @param layer - inflow, permeability, length and slope above 0 [m]
 * @returns greatest height above the bottom of the layer [m]
 * @source Giroud et al. (1992, 2000), formula from memory; within 1 % of McEnroe in the cases of check-values.md, section 6
 */
export function giroudHeadM(layer: SeepingLayer): number {
  const { inflowMs, permeabilityMs, lengthM, slope } = layer;
  if (inflowMs === 0) return 0;
  if (slope === 0) return flatHeadM(layer);
  const lambda = inflowMs / (permeabilityMs * slope ** 2);
  const j = 1 - 0.12 * Math.exp(-(Math.log10(((8 * lambda) / 5) ** (5 / 8)) ** 2));
  const cosine = 1 / Math.sqrt(1 + slope ** 2);
  return (j * lengthM * (Math.sqrt(slope ** 2 + (4 * inflowMs) / permeabilityMs) - slope)) / (2 * cosine);
}
