/** What an id can be of. */

export const KINDS_EN = {
  'build-up': { bare: 'build-up', one: 'a build-up' },
  material: { bare: 'material', one: 'a material' },
  vehicle: { bare: 'vehicle', one: 'a vehicle' },
  zone: { bare: 'zone', one: 'a zone' },
  object: { bare: 'object', one: 'an object' },
} as const;

export type Kind = keyof typeof KINDS_EN;

export const KINDS_DE: Readonly<Record<Kind, string>> = {
  'build-up': 'der Aufbau',
  material: 'das Material',
  vehicle: 'das Fahrzeug',
  zone: 'die Zone',
  object: 'das Objekt',
};
