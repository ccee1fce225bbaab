/** Roles of layers, bottom to top as usually laid (contract.md, section 1). */

import type { Language } from './language.ts';

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

/** In German, where a role is told to people. */
export const ROLES_DE: Readonly<Record<Role, string>> = {
  'root barrier': 'Durchwurzelungsschutz',
  protection: 'Schutzlage',
  slip: 'Gleitlage',
  'drainage element': 'Dränelement',
  'drainage fill': 'Dränschüttung',
  'light fill': 'Leichtschüttung',
  separation: 'Trennlage',
  filter: 'Filtervlies',
  'base course': 'Tragschicht',
  bedding: 'Bettung',
  surfacing: 'Belag',
  edging: 'Einfassung',
  substrate: 'Substrat',
  vegetation: 'Bewuchs',
};

/** Name of a stage that was derived, in the language spoken: it is called after the role it lays. */
export function derivedStageName(name: string, language: Language): string {
  if (language === 'en') return name;
  if (name === 'Trees, walls and blocks') return 'Bäume, Mauern und Blöcke';
  const [, role, count] = /^(.*?)( \(\d+\))?$/.exec(name) ?? [];
  const german = Object.entries(ROLES_DE).find(([key]) => key === role?.toLowerCase())?.[1];
  return german === undefined ? name : `${german}${count ?? ''}`;
}
