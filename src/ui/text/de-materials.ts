/** Sentences of the material editor in German, and all of the build-up editor together. */

import type { MaterialDoubt } from '../../edit/materials.ts';
import type { MaterialNumber } from '../../model/catalogue.ts';
import type { RunoffSurface } from '../../model/runoff.ts';
import { numberText, quantityOf } from '../format.ts';
import { buildUps } from './de-build-ups.ts';
import type { MaterialField } from './en-materials.ts';
import { list } from './en-words.ts';
import type { Texts } from './text.ts';

const FIELDS: Readonly<Record<MaterialField, { readonly label: string; readonly hint: string }>> = {
  dry: { label: 'Trocken', hint: 'Eingebaut und verdichtet.' },
  saturated: { label: 'Gesättigt', hint: 'Voll Wasser; damit rechnet die ständige Last.' },
  thicknessMm: { label: 'Dicke', hint: 'Von Bahnen, Elementen und Platten; Geschüttetes bekommt sie im Aufbau.' },
  voidLm2: { label: 'Hohlräume', hint: 'Was eine Schüttung im Element einnimmt.' },
  retentionLm2: { label: 'In den Mulden gehalten', hint: 'Wasser haltend verlegt.' },
  waterCapacityPercent: { label: 'Wasserkapazität', hint: 'Wasser, das das Material gegen die Schwerkraft hält, vom Volumen.' },
  porePercent: { label: 'Weitere Poren', hint: 'Nur stehendes Wasser füllt sie, vom Volumen.' },
  permeabilityMs: { label: 'Durchlässigkeit', hint: 'Einer Schüttung, die dränt.' },
  flowLsm: { label: 'Abflussvermögen', hint: 'In der Ebene je Meter Breite, beim Gefälle der Decke.' },
  compactionFactor: { label: 'Verdichtungsfaktor', hint: 'Loses zu eingebautem Volumen: üblich 1,2 bis 1,35.' },
  lapPercent: { label: 'Überlappung und Verschnitt', hint: 'Mehr zu bestellen als zu verlegen.' },
  bearingKPa: { label: 'Trägt', hint: 'Zulässige Pressung auf der Oberseite.' },
  dispersal: { label: 'Lastausbreitung', hint: 'Zunahme je Seite und Tiefe unter einem Rad: 0,5 körnig, 1,0 Platten, 0 Bahnen.' },
  priceAmount: { label: 'Preis', hint: 'In der Währung der Szene.' },
  deliveryM3: { label: 'Volumen einer Lieferung', hint: 'Lose, wie geliefert.' },
  deliveryKg: { label: 'Masse einer Lieferung', hint: 'Was der Lkw laden darf.' },
  toleranceMm: { label: 'Abweichung der Dicke', hint: 'Mehr oder weniger; leer gilt die der Szene.' },
  tolerancePercent: { label: 'Abweichung der Dichte', hint: 'Mehr oder weniger; leer gilt die der Szene.' },
};

const SURFACES: Readonly<Record<RunoffSurface, string>> = {
  sealed: 'Pflaster mit geschlossenen Fugen',
  'open joints': 'Pflaster mit offenen Fugen',
  gravel: 'Kies',
  'grass paver': 'Rasengittersteine',
  'bound gravel': 'wassergebundene Decke',
};

const NUMBERS: Readonly<Record<MaterialNumber, string>> = {
  density: 'Dichte',
  areal: 'Flächengewicht',
  thicknessMm: 'Dicke',
  voidLm2: 'Hohlräume',
  retentionLm2: 'In den Mulden gehalten',
  waterCapacityPercent: 'Wasserkapazität',
  compactionFactor: 'Verdichtungsfaktor',
  lapPercent: 'Überlappung und Verschnitt',
  bearingKPa: 'Trägt',
  dispersal: 'Lastausbreitung',
  flowLsm: 'Abflussvermögen',
  porePercent: 'Weitere Poren',
  permeabilityMs: 'Durchlässigkeit',
  uplift: 'Unter Wasser',
  delivery: 'Lieferung',
};

const digits = (value: number) => numberText(value, Number.isInteger(value) ? 0 : Math.abs(value) < 10 ? 2 : 1);

function doubtText({ why, found, meant }: MaterialDoubt, unit: string): string {
  const typed = `${digits(found)} ${unit}`;
  if (why === 'saturated below dry') return `Gesättigt (${typed}) ist leichter als trocken (${digits(meant ?? 0)} ${unit}). Vertauscht?`;
  if (why === 'unusual') return `${typed} ist schwerer als alles, was man auf eine Decke legt. Stimmt das?`;
  return `${typed} ist ungewöhnlich wenig. Waren ${digits(found)} ${why} gemeint, also ${digits(meant ?? 0)} ${unit}?`;
}

const doubtMuch = ({ found, meant }: MaterialDoubt, unit: string) =>
  `${digits(found)} ${unit} ist ungewöhnlich viel für eine Bahn. Waren ${digits(found)} g/m² gemeint, also ${digits(meant ?? 0)} ${unit}?`;

const materials: Texts['materials'] = {
  list: 'Materialien',
  own: 'Dieser Szene',
  ofCatalogue: 'Des Katalogs',
  find: 'Name oder Art suchen',
  noOwn: 'Diese Szene hat kein eigenes Material. Eines des Katalogs wählen und davon eine eigene Kopie anlegen.',
  isReplaced: 'durch das der Szene ersetzt',
  inPlace: 'Eigene Kopie an seiner Stelle',
  inPlaceSays: 'Behält den Kurznamen: Jeder Aufbau, der es verwendet, nimmt die neuen Werte.',
  beside: 'Eigene Kopie daneben',
  besideSays: 'Bekommt einen eigenen Kurznamen: Die Aufbauten behalten das des Katalogs, bis man ihre Lagen ändert.',
  copyName: (name) => `${name}, eigene Werte`,
  reset: 'Zurück zu den Werten des Katalogs',
  remove: 'Aus der Szene entfernen',
  removeUsed: 'Es bleibt, solange es verwendet wird.',
  usedIn: (buildUps, others) =>
    buildUps.length + others.length === 0
      ? 'In dieser Szene nirgends verwendet.'
      : [
          ...(buildUps.length > 0 ? [`In Aufbauten verwendet: ${list(buildUps, 'und')}.`] : []),
          ...(others.length > 0 ? [`Außerdem genannt bei: ${list(others, 'und')}.`] : []),
        ].join(' '),
  sources: 'Woher die Zahlen des Katalogs kommen',
  numbers: NUMBERS,
  name: 'Name',
  id: 'Kurzname',
  role: 'Art',
  source: 'Quelle',
  sourceHint: 'Datenblatt mit Datum, oder wer es sagt. Sonst werden die Werte als ohne Quelle gezeigt.',
  noSource: 'ohne Quelle',
  fields: FIELDS,
  weight: (kind) => (kind === 'density' ? 'Gewicht nach Volumen' : 'Gewicht nach Fläche'),
  groups: { water: 'Wasser', bearing: 'Unter Last', order: 'Zum Bestellen', more: 'Weiteres' },
  per: 'Preis je',
  perUnit: { m3: 'm³', m2: 'm²', t: 'Tonne' },
  delivery: 'Geliefert als',
  uplift: 'Unter Wasser',
  upliftOf: { none: 'nicht angegeben', sealed: 'als dichter Block gehoben', grains: 'Korn für Korn gehoben' },
  surface: 'Oberfläche für den Abfluss',
  surfaceOf: { none: 'nach seiner Art', ...SURFACES },
  mineral: 'Mineralisch, ohne organische Stoffe: darf tief liegen',
  doubt: (doubt, unit) => (doubt.why === 'g/m²' ? doubtMuch(doubt, unit) : doubtText(doubt, unit)),
  takeMeant: (meant, unit) => `${digits(meant)} ${unit} nehmen`,
  swap: 'Beide tauschen',
  keep: (found, unit) => `Es sind ${digits(found)} ${unit}`,
  forget: 'Lassen, wie es war',
  value: (value, decimals, unit) => quantityOf(value, decimals, unit),
};

/** Registered in the table as a whole. */
export const buildUpTexts = { buildUps, materials };
