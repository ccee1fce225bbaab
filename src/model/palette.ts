/** Colours and hatches, used alike by the 3D view, the core log and the legends. Our own table. */

import type { PartKind } from './picture.ts';
import type { Role } from './roles.ts';

/** Hatches drawn in the shader (in metres) and as SVG patterns. */
export const PATTERNS = [
  'plain',
  'dashes',
  'fine dashes',
  'fine dots',
  'cups',
  'coarse grains',
  'crumbs',
  'angular grains',
  'stipple',
  'running bond',
  'strokes',
  'blades',
  'concrete',
  'waves',
] as const;
export type Pattern = (typeof PATTERNS)[number];

export interface RoleStyle {
  readonly fill: string;
  /** Colour of the hatch and of the edges. */
  readonly line: string;
  readonly pattern: Pattern;
}

export const ROLE_STYLE: Readonly<Record<PartKind, RoleStyle>> = {
  'root barrier': { fill: '#4A4A52', line: '#2C2C31', pattern: 'plain' },
  protection: { fill: '#8FA3A8', line: '#5F7479', pattern: 'dashes' },
  slip: { fill: '#B9D3DB', line: '#7FA3AE', pattern: 'plain' },
  'drainage element': { fill: '#5D7F8C', line: '#33525D', pattern: 'cups' },
  'drainage fill': { fill: '#B08968', line: '#7C5A3C', pattern: 'coarse grains' },
  'light fill': { fill: '#9BA7A0', line: '#6A766F', pattern: 'crumbs' },
  separation: { fill: '#D8D2C2', line: '#A39A82', pattern: 'fine dashes' },
  filter: { fill: '#E5DFCF', line: '#A79F8A', pattern: 'fine dots' },
  'base course': { fill: '#A89F91', line: '#71685B', pattern: 'angular grains' },
  bedding: { fill: '#D9C9A3', line: '#A68F5B', pattern: 'stipple' },
  surfacing: { fill: '#C7BDB0', line: '#857B6E', pattern: 'running bond' },
  'loose surfacing': { fill: '#CFC6B4', line: '#8E8570', pattern: 'coarse grains' },
  edging: { fill: '#6E6A63', line: '#45423D', pattern: 'plain' },
  substrate: { fill: '#7A5638', line: '#4C331F', pattern: 'strokes' },
  vegetation: { fill: '#6F8F4E', line: '#48632E', pattern: 'blades' },
  slab: { fill: '#D3D0C9', line: '#9B978E', pattern: 'concrete' },
  column: { fill: '#BDB9B1', line: '#8B877E', pattern: 'concrete' },
  outlet: { fill: '#1F5C6B', line: '#123A44', pattern: 'plain' },
  edge: { fill: '#3C4A50', line: '#222C30', pattern: 'plain' },
  'tree trunk': { fill: '#6B4E37', line: '#45301F', pattern: 'plain' },
  'tree crown': { fill: '#7E9B62', line: '#56723E', pattern: 'plain' },
  'line load': { fill: '#8C6A5D', line: '#5E443A', pattern: 'running bond' },
  retaining: { fill: '#B9BCBB', line: '#6E7375', pattern: 'concrete' },
  block: { fill: '#A08478', line: '#6D564C', pattern: 'plain' },
  stockpile: { fill: '#94714D', line: '#5F4529', pattern: 'coarse grains' },
  'flood water': { fill: '#7FB0C4', line: '#4C869D', pattern: 'waves' },
};

/**
 * What a layer is drawn as: gravel on top is no paving.
 * @param role - role of the layer
 * @param loose - whether it lies loose
 * @returns key of its style
 */
export function drawnAs(role: Role, loose: boolean): PartKind {
  return role === 'surfacing' && loose ? 'loose surfacing' : role;
}

/** Fixed classes of utilisation: upper limits, the last open [-]. */
export const UTILISATION_LIMITS = [0.5, 0.8, 1.0, 1.2] as const;
/** One colour more than limits, each darker than the one before, also in grey; the last two are also hatched. */
export const UTILISATION_COLOURS = ['#EEF3F4', '#A8C4D4', '#C8912C', '#C4521F', '#74102F'] as const;

export const PAPER = '#F5F1E8';
export const INK = '#1E2A2E';
export const ACCENT = '#1F5C6B';
export const UNCONFIRMED = '#8A8F91';
