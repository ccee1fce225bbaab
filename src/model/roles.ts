/** Roles of layers, bottom to top as usually laid (contract.md, section 1). */

export const ROLES = [
  'root barrier',
  'protection',
  'slip',
  'drainage element',
  'drainage fill',
  'light fill',
  'separation',
  'filter',
  'base course',
  'bedding',
  'surfacing',
  'edging',
  'substrate',
  'vegetation',
] as const;

export type Role = (typeof ROLES)[number];
