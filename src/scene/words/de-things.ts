/** Shapes of a scene, as messages name them, in German: by what is meant, with its values. */

import type { THINGS_EN } from './en-things.ts';

export const THINGS_DE: typeof THINGS_EN = {
  outlineOf: (v, tell) => `der Umriss (${tell(v.owner)})`,
  partOf: (v, tell) => `${tell(v.what)} (${tell(v.owner)})`,
  theDeck: () => 'die Decke',
  thisShape: () => 'diese Form',
  bay: (v) => `Feld "${v.id}"`,
  zone: (v) => `Zone "${v.id}"`,
  setUpArea: (v) => `Aufstellfläche "${v.id}"`,
  retainingEdge: (v) => `Stützwand "${v.id}"`,
  lineLoad: (v) => `Linie "${v.id}"`,
  blockLoad: (v) => `Block "${v.id}"`,
  edge: (v) => `Rand "${v.id}"`,
  stockpile: (v) => `Haufwerk "${v.id}"`,
  traffic: (v) => `Verkehr "${v.id}"`,
  plant: (v) => `Maschine "${v.id}"`,
  building: () => 'Gebäude',
  opening: (v) => `Öffnung ${v.n}`,
  hole: (v) => `Loch ${v.n}`,
};
