/** Roles of layers in German. */

import type { Role } from '../../model/roles.ts';

export const ROLES_DE: Readonly<Record<Role, string>> = {
  'root barrier': 'Wurzelschutz',
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
  vegetation: 'Vegetation',
};
