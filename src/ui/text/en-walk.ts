/** Sentences of the walkthrough: plain words for people who do not build decks for a living. */

import type { Role } from '../../model/roles.ts';
import type { SceneBasis } from '../../model/scene-file.ts';
import type { UnderFacts } from '../facts/under.ts';
import { loadText, numberText } from '../format.ts';
import { basisShort, list, many } from './en-words.ts';

const LAYERS: Readonly<Record<Role, string>> = {
  'root barrier': 'sheet that keeps roots out',
  protection: 'mat that protects the roof skin',
  slip: 'sheet that lets the layers slide',
  'drainage element': 'board that leads water away',
  'drainage fill': 'stones that let water through',
  'light fill': 'light fill that makes up height',
  separation: 'fleece that keeps layers apart',
  filter: 'fleece that holds back the soil',
  'base course': 'gravel that bears paving and wheels',
  bedding: 'bed of fine chippings',
  surfacing: 'what one walks on',
  edging: 'edge',
  substrate: 'soil for the roots',
  vegetation: 'plants',
};

const cm = (mm: number): string => (mm < 10 ? `${numberText(mm, 1)}\u202Fmm` : `${numberText(mm / 10, mm < 100 ? 1 : 0)}\u202Fcm`);
const percent = (share: number): string => `${numberText(100 * share, 1)}\u202F%`;
const tonnes = (loadKNm2: number): string => numberText((loadKNm2 * 1000) / 9.81, 0);

export const walk = {
  enter: 'Walkthrough',
  title: 'Walkthrough',
  leave: 'Leave',
  leaveTitle: 'Back to the work',
  fullScreen: 'Full screen',
  smallScreen: 'Leave full screen',
  projector: 'Projector',
  projectorTitle: 'High contrast and thick lines for a projector',
  previous: 'Previous view',
  next: 'Next view',
  views: 'Views',
  place: (at: number, of: number) => `${at} of ${of}`,
  onFoot: 'Walk here',
  offFoot: 'Stop walking',
  footSays: 'Arrow keys or W A S D to walk, drag to look around, tap a place to go there.',
  bare: 'Show the bare deck',
  finished: 'Show the finished garden',
  bareName: 'The bare deck',
  bareSays: 'This is what the builder hands over: a waterproof roof slab. Everything above it is the garden.',
  finishedName: 'The finished garden',
  stage: (number: number, of: number, name: string) => `Step ${number} of ${of}: ${name}`,
  life: 'People and plants',
  light: 'Time of day',
  hour: (hour: number) => `${numberText(Math.floor(hour), 0)}:${hour % 1 === 0 ? '00' : '30'}`,
  slow: 'Shadows are left out: this device draws them too slowly.',
  scale: 'People, plants and benches are drawn for scale. They are not in the loads.',
  pad: { title: 'Walk', ahead: 'Walk ahead', back: 'Walk back', left: 'Turn left', right: 'Turn right' },
  frame: 'Compares entered loads with entered limits. Not a structural check.',
  allWithin: (bases: readonly SceneBasis[]) => `All bays within the permitted loads of ${list(bases.map(basisShort), 'and')}.`,
  notAll: (within: number, of: number) => `${many(within, 'bay', 'bays')} of ${of} within the permitted loads.`,
  over: (ids: readonly string[]) =>
    `More than permitted: ${list(
      ids.map((id) => `bay ${id}`),
      'and',
    )}.`,
  unsure: (ids: readonly string[]) =>
    `Permitted load not confirmed: ${list(
      ids.map((id) => `bay ${id}`),
      'and',
    )}.`,
  unlimited: (ids: readonly string[]) =>
    `No permitted load given: ${list(
      ids.map((id) => `bay ${id}`),
      'and',
    )}.`,
  otherStops: (count: number) => `${many(count, 'other point stops', 'other points stop')} the work until mended.`,
  noBays: 'Nothing says what the deck carries.',
  details: 'Which bays',
  layer: ({ role, name, thicknessMm }: { readonly role: Role; readonly name: string; readonly thicknessMm: number }) => ({
    size: cm(thicknessMm),
    name: `${name}: ${LAYERS[role]}`,
  }),
  under: {
    title: 'What is under it',
    close: 'Put it back',
    hint: 'Tap a spot of the garden to see what is under it.',
    waiting: 'Lifting the layers…',
    nothing: 'Nothing lies here: this is the bare deck.',
    purpose: ({ zone, layers, depthMm, planted }: UnderFacts) =>
      planted
        ? `${zone}: plants on ${many(layers, 'layer', 'layers')}, ${cm(depthMm)} in all, that feed them, hold water and lead the rest away.`
        : `${zone}: a surface to walk on and ${many(layers - 1, 'layer', 'layers')} below it, ${cm(depthMm)} in all.`,
    roots: ({ rootsMm, planted }: UnderFacts) => {
      if (rootsMm > 0) return `Roots have ${cm(rootsMm)} of soil here.`;
      return planted ? 'No soil of its own is entered for the plants here.' : 'Nothing grows here, so there is no soil for roots.';
    },
    weight: (loadKNm2: number) => `Soaked with water it weighs ${tonnes(loadKNm2)}\u202Fkg on every square metre (${loadText(loadKNm2)})`,
    within: (permittedKNm2: number, utilisation: number) =>
      `the deck may carry ${loadText(permittedKNm2)} here, so ${percent(utilisation)} is used.`,
    overHere: (permittedKNm2: number, utilisation: number) =>
      `that is too much: the deck may carry ${loadText(permittedKNm2)} here, and ${percent(utilisation)} is used.`,
    unconfirmed: (permittedKNm2: number, utilisation: number) =>
      `the deck is said to carry ${loadText(permittedKNm2)} here (${percent(utilisation)} used), but that is not confirmed.`,
    unknown: 'nothing says what the deck carries here.',
    bayOver: (bay: string) => `Elsewhere in bay ${bay}, or while it is built, there is more than permitted.`,
    sum: (weight: string, verdict: string) => `${weight}; ${verdict}`,
    from: (basis: SceneBasis) => `Permitted load from ${basisShort(basis)}.`,
    decides: 'The structural engineer decides.',
  },
  made: {
    overview: { name: 'The whole garden', says: 'All of it at one glance.' },
    access: (id: string) => ({ name: `From ${id}`, says: 'Here everything comes onto the deck.' }),
    deepest: (zone: string, depthMm: number) => ({ name: zone, says: `The deepest layers of the garden: ${cm(depthMm)}.` }),
    critical: (bay: string, share: number | null) => ({
      name: `Bay ${bay}`,
      says:
        share === null
          ? 'Nothing says what the deck carries here.'
          : share > 1
            ? 'Here there is more weight than the deck may carry.'
            : 'The deck is used most here, and it may carry that.',
    }),
    lane: { name: 'Along the lane', says: 'Kept free for the fire brigade.' },
  },
} as const;
