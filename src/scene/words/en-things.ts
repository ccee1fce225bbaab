/** Shapes of a scene, as messages name them, in English: by what is meant, with its values. */

import type { Phrase } from '../../model/issue.ts';
import type { Tell, Text } from './phrase-values.ts';

export const THINGS_EN = {
  outlineOf: (v: { readonly owner: Phrase }, tell: Tell) => `the outline of ${tell(v.owner)}`,
  partOf: (v: { readonly what: Phrase; readonly owner: Phrase }, tell: Tell) => `${tell(v.what)} of ${tell(v.owner)}`,
  theDeck: (_: object) => 'the deck',
  thisShape: (_: object) => 'this shape',
  bay: (v: { readonly id: Text }) => `bay "${v.id}"`,
  zone: (v: { readonly id: Text }) => `zone "${v.id}"`,
  setUpArea: (v: { readonly id: Text }) => `set-up area "${v.id}"`,
  retainingEdge: (v: { readonly id: Text }) => `retaining edge "${v.id}"`,
  lineLoad: (v: { readonly id: Text }) => `line "${v.id}"`,
  blockLoad: (v: { readonly id: Text }) => `block "${v.id}"`,
  edge: (v: { readonly id: Text }) => `edge "${v.id}"`,
  stockpile: (v: { readonly id: Text }) => `stockpile "${v.id}"`,
  traffic: (v: { readonly id: Text }) => `traffic "${v.id}"`,
  plant: (v: { readonly id: Text }) => `plant "${v.id}"`,
  building: (_: object) => 'building',
  opening: (v: { readonly n: Text }) => `opening ${v.n}`,
  hole: (v: { readonly n: Text }) => `hole ${v.n}`,
};
