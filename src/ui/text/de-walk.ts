/** The walkthrough in German: plain words for people who do not build decks for a living. */

import type { Role } from '../../model/roles.ts';
import { loadText, numberText } from '../format.ts';
import { basisShort } from './de-words.ts';
import { list } from './en-words.ts';
import type { Texts } from './text.ts';

const LAYERS: Readonly<Record<Role, string>> = {
  'root barrier': 'Bahn, die Wurzeln abhält',
  protection: 'Matte, die die Abdichtung schützt',
  slip: 'Bahn, auf der die Lagen gleiten können',
  'drainage element': 'Platte, die das Wasser ableitet',
  'drainage fill': 'Steine, die das Wasser durchlassen',
  'light fill': 'leichte Schüttung, die Höhe schafft',
  separation: 'Vlies, das die Lagen trennt',
  filter: 'Vlies, das die Erde zurückhält',
  'base course': 'Schotter, der Belag und Räder trägt',
  bedding: 'Bett aus feinem Splitt',
  surfacing: 'worauf man geht',
  edging: 'Einfassung',
  substrate: 'Erde für die Wurzeln',
  vegetation: 'Pflanzen',
};

const cm = (mm: number): string => (mm < 10 ? `${numberText(mm, 1)}\u202Fmm` : `${numberText(mm / 10, mm < 100 ? 1 : 0)}\u202Fcm`);
const percent = (share: number): string => `${numberText(100 * share, 1)}\u202F%`;
const kilograms = (loadKNm2: number): string => numberText((loadKNm2 * 1000) / 9.81, 0);

const bays = (ids: readonly string[]): string =>
  list(
    ids.map((id) => `Feld ${id}`),
    'und',
  );

const layersDative = (count: number): string => (count === 1 ? 'einer Lage' : `${numberText(count, 0)} Lagen`);
const layersBelow = (count: number): string => (count === 1 ? 'eine Lage' : `${numberText(count, 0)} Lagen`);

const criticalSays = (share: number | null): string => {
  if (share === null) return 'Nichts sagt, was die Decke hier trägt.';
  return share > 1
    ? 'Hier liegt mehr Gewicht, als die Decke tragen darf.'
    : 'Hier ist die Decke am stärksten ausgenutzt, und das darf sie tragen.';
};

export const walk: Texts['walk'] = {
  enter: 'Rundgang',
  title: 'Rundgang',
  leave: 'Verlassen',
  leaveTitle: 'Zurück zur Arbeit',
  fullScreen: 'Vollbild',
  smallScreen: 'Vollbild verlassen',
  projector: 'Beamer',
  projectorTitle: 'Starker Kontrast und dicke Linien für einen Beamer',
  previous: 'Vorige Ansicht',
  next: 'Nächste Ansicht',
  views: 'Ansichten',
  place: (at, of) => `${at} von ${of}`,
  onFoot: 'Hier gehen',
  offFoot: 'Nicht mehr gehen',
  footSays: 'Mit Pfeiltasten oder W A S D gehen, zum Umsehen ziehen, auf eine Stelle tippen, um hinzugehen.',
  bare: 'Die bloße Decke zeigen',
  finished: 'Den fertigen Garten zeigen',
  bareName: 'Die bloße Decke',
  bareSays: 'Das übergibt der Rohbau: eine abgedichtete Decke. Alles darüber ist der Garten.',
  finishedName: 'Der fertige Garten',
  stage: (number, of, name) => `Schritt ${number} von ${of}: ${name}`,
  life: 'Menschen und Pflanzen',
  light: 'Tageszeit',
  hour: (hour) => `${numberText(Math.floor(hour), 0)}:${hour % 1 === 0 ? '00' : '30'} Uhr`,
  slow: 'Ohne Schatten: Dieses Gerät zeichnet sie zu langsam.',
  scale: 'Menschen, Pflanzen und Bänke sind als Maßstab gezeichnet. Sie stecken nicht in den Lasten.',
  pad: { title: 'Gehen', ahead: 'Vorwärts gehen', back: 'Rückwärts gehen', left: 'Nach links drehen', right: 'Nach rechts drehen' },
  frame: 'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis.',
  allWithin: (bases) => `Alle Felder halten die zulässigen Lasten ein: ${list(bases.map(basisShort), 'und')}.`,
  notAll: (within, of) => `${within} von ${of} Feldern halten die zulässigen Lasten ein.`,
  over: (ids) => `Mehr als zulässig: ${bays(ids)}.`,
  unsure: (ids) => `Zulässige Last nicht bestätigt: ${bays(ids)}.`,
  unlimited: (ids) => `Keine zulässige Last angegeben: ${bays(ids)}.`,
  otherStops: (count) =>
    count === 1
      ? 'Ein weiterer Punkt hält die Arbeit auf, bis er behoben ist.'
      : `${numberText(count, 0)} weitere Punkte halten die Arbeit auf, bis sie behoben sind.`,
  noBays: 'Nichts sagt, was die Decke trägt.',
  details: 'Welche Felder',
  layer: ({ role, name, thicknessMm }) => ({ size: cm(thicknessMm), name: `${name}: ${LAYERS[role]}` }),
  under: {
    title: 'Was darunter liegt',
    close: 'Wieder hinlegen',
    hint: 'Auf eine Stelle des Gartens tippen, um zu sehen, was darunter liegt.',
    waiting: 'Die Lagen werden angehoben…',
    nothing: 'Hier liegt nichts: Das ist die bloße Decke.',
    purpose: ({ zone, layers, depthMm, planted }) =>
      planted
        ? `${zone}: Pflanzen auf ${layersDative(layers)}, zusammen ${cm(depthMm)}, die sie ernähren, Wasser halten und den Rest ableiten.`
        : `${zone}: ein Belag zum Begehen und ${layersBelow(layers - 1)} darunter, zusammen ${cm(depthMm)}.`,
    roots: ({ rootsMm, planted }) => {
      if (rootsMm > 0) return `Die Wurzeln haben hier ${cm(rootsMm)} Erde.`;
      return planted
        ? 'Für die Pflanzen ist hier keine eigene Erde eingegeben.'
        : 'Hier wächst nichts, darum gibt es keine Erde für Wurzeln.';
    },
    weight: (loadKNm2) => `Mit Wasser vollgesogen wiegt das ${kilograms(loadKNm2)}\u202Fkg auf jedem Quadratmeter (${loadText(loadKNm2)})`,
    within: (permittedKNm2, utilisation) =>
      `die Decke darf hier ${loadText(permittedKNm2)} tragen, damit sind ${percent(utilisation)} ausgenutzt.`,
    overHere: (permittedKNm2, utilisation) =>
      `das ist zu viel: Die Decke darf hier ${loadText(permittedKNm2)} tragen, und ${percent(utilisation)} sind ausgenutzt.`,
    unconfirmed: (permittedKNm2, utilisation) =>
      `die Decke soll hier ${loadText(permittedKNm2)} tragen (${percent(utilisation)} ausgenutzt), aber das ist nicht bestätigt.`,
    unknown: 'nichts sagt, was die Decke hier trägt.',
    bayOver: (bay) => `An anderer Stelle in Feld ${bay}, oder während gebaut wird, ist es mehr als zulässig.`,
    sum: (weight, verdict) => `${weight}; ${verdict}`,
    from: (basis) => `Zulässige Last nach ${basisShort(basis)}.`,
    decides: 'Es entscheidet der Tragwerksplaner.',
  },
  made: {
    overview: { name: 'Der ganze Garten', says: 'Alles auf einen Blick.' },
    access: (id) => ({ name: `Von ${id} aus`, says: 'Hier kommt alles auf die Decke.' }),
    deepest: (zone, depthMm) => ({ name: zone, says: `Die dicksten Lagen des Gartens: ${cm(depthMm)}.` }),
    critical: (bay, share) => ({ name: `Feld ${bay}`, says: criticalSays(share) }),
    lane: { name: 'Die Zufahrt entlang', says: 'Wird für die Feuerwehr freigehalten.' },
  },
};
