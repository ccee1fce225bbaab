/** Words and numbers on drawings, in English and German. */

import { dayIn } from '../model/date-text.ts';
import type { ExportLanguage } from '../model/engine.ts';
import type { PartKind } from '../model/picture.ts';
import type { DrawnOnly } from '../model/section-drawing.ts';

export interface SheetWords {
  readonly section: (name: string) => string;
  readonly plan: string;
  readonly garden: string;
  readonly stage: (name: string) => string;
  readonly scale: (scale: string) => string;
  /** Heights drawn larger than lengths. */
  readonly heights: (times: string, scale: string) => string;
  readonly trueHeights: string;
  readonly date: (date: string) => string;
  readonly basis: (documents: string) => string;
  readonly noBasis: string;
  readonly revision: (revision: string) => string;
  readonly notACheck: string;
  readonly legend: string;
  readonly inAll: string;
  readonly finished: string;
  readonly membrane: string;
  readonly membraneTop: string;
  readonly aboveFinished: string;
  readonly belowFinished: string;
  readonly nothingBeside: string;
  readonly sameAs: (number: string) => string;
  readonly exceptAs: (number: string) => string;
  readonly edge: Readonly<Record<'upstand' | 'threshold', (id: string) => string>>;
  readonly bay: (id: string) => string;
  readonly permanent: (load: string) => string;
  readonly imposed: (load: string) => string;
  readonly total: (load: string) => string;
  readonly building: (load: string) => string;
  readonly noLimit: string;
  readonly notConfirmed: string;
  readonly opening: string;
  readonly outside: string;
  readonly bend: string;
  readonly noDeck: string;
  readonly levels: string;
  readonly drawnOnly: (sizes: string) => string;
  readonly sizes: Readonly<Record<DrawnOnly, string>>;
  readonly kinds: Readonly<Partial<Record<PartKind, string>>>;
  readonly plans: {
    readonly bay: string;
    readonly column: string;
    readonly outlet: string;
    readonly overflow: string;
    readonly upstand: string;
    readonly sill: string;
    readonly tree: string;
    readonly wall: string;
    readonly retaining: string;
    readonly block: string;
    readonly opening: string;
    readonly zones: string;
  };
}

const EN: SheetWords = {
  section: (name) => `Section ${name}`,
  plan: 'Plan',
  garden: 'finished garden',
  stage: (name) => `stage: ${name}`,
  scale: (scale) => `Scale ${scale}`,
  heights: (times, scale) => `heights × ${times} (${scale})`,
  trueHeights: 'heights true to scale',
  date: (date) => `Date ${date}`,
  basis: (documents) => `Permitted loads: ${documents}`,
  noBasis: 'Permitted loads: no document entered',
  revision: (revision) => `rev. ${revision}`,
  notACheck: 'Compares entered loads with entered limits; not a structural check.',
  legend: 'Legend',
  inAll: 'in all',
  finished: 'finished',
  membrane: 'membrane',
  membraneTop: 'membrane up to',
  aboveFinished: 'mm above finished',
  belowFinished: 'mm BELOW finished',
  nothingBeside: 'nothing laid beside it',
  sameAs: (number) => `as ${number}`,
  exceptAs: (number) => `as ${number}, but:`,
  edge: { upstand: (id) => `Upstand ${id}`, threshold: (id) => `Sill ${id}` },
  bay: (id) => `Bay ${id}`,
  permanent: (load) => `permanent ${load}`,
  imposed: (load) => `imposed ${load}`,
  total: (load) => `total ${load}`,
  building: (load) => `building ${load}`,
  noLimit: 'no permitted load',
  notConfirmed: 'NOT CONFIRMED',
  opening: 'opening',
  outside: 'no deck',
  bend: 'bend',
  noDeck: 'The line does not meet the deck.',
  levels: 'Levels in m, thicknesses in mm, permitted loads in kN/m²',
  drawnOnly: (sizes) => `Not given, for the picture only: ${sizes}`,
  sizes: {
    'slab thickness': 'thickness of the slab',
    'wall height': 'height of walls and edgings',
    'block height': 'height of planters and blocks',
    'tree height': 'height of trees',
  },
  kinds: {
    slab: 'slab',
    edge: 'upstand, sill',
    outlet: 'outlet',
    'line load': 'wall, edging',
    retaining: 'retaining edge',
    block: 'planter, block',
    stockpile: 'heap',
    'flood water': 'water of the flood test',
    'tree crown': 'tree',
  },
  plans: {
    bay: 'bay',
    column: 'column below',
    outlet: 'outlet',
    overflow: 'overflow',
    upstand: 'upstand',
    sill: 'sill',
    tree: 'tree',
    wall: 'wall, edging',
    retaining: 'retaining edge',
    block: 'planter, block',
    opening: 'opening',
    zones: 'Zones',
  },
};

const DE: SheetWords = {
  section: (name) => `Schnitt ${name}`,
  plan: 'Grundriss',
  garden: 'fertige Anlage',
  stage: (name) => `Bauzustand: ${name}`,
  scale: (scale) => `Maßstab ${scale}`,
  heights: (times, scale) => `Höhen × ${times} (${scale})`,
  trueHeights: 'Höhen maßstäblich',
  date: (date) => `Datum ${dayIn(date, 'de')}`,
  basis: (documents) => `Zulässige Lasten: ${documents}`,
  noBasis: 'Zulässige Lasten: kein Dokument angegeben',
  revision: (revision) => `Index ${revision}`,
  notACheck: 'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten; kein Standsicherheitsnachweis.',
  legend: 'Legende',
  inAll: 'gesamt',
  finished: 'Oberkante',
  membrane: 'Abdichtung',
  membraneTop: 'Abdichtung bis',
  aboveFinished: 'mm über Oberkante',
  belowFinished: 'mm UNTER Oberkante',
  nothingBeside: 'nichts daneben verlegt',
  sameAs: (number) => `wie ${number}`,
  exceptAs: (number) => `wie ${number}, aber:`,
  edge: { upstand: (id) => `Aufkantung ${id}`, threshold: (id) => `Schwelle ${id}` },
  bay: (id) => `Feld ${id}`,
  permanent: (load) => `ständig ${load}`,
  imposed: (load) => `Nutzlast ${load}`,
  total: (load) => `gesamt ${load}`,
  building: (load) => `im Bau ${load}`,
  noLimit: 'keine zulässige Last',
  notConfirmed: 'NICHT BESTÄTIGT',
  opening: 'Öffnung',
  outside: 'keine Decke',
  bend: 'Knick',
  noDeck: 'Die Linie trifft die Decke nicht.',
  levels: 'Höhen in m, Dicken in mm, zulässige Lasten in kN/m²',
  drawnOnly: (sizes) => `Nicht angegeben, nur gezeichnet: ${sizes}`,
  sizes: {
    'slab thickness': 'Dicke der Decke',
    'wall height': 'Höhe der Mauern und Einfassungen',
    'block height': 'Höhe der Pflanzgefäße und Blöcke',
    'tree height': 'Höhe der Bäume',
  },
  kinds: {
    slab: 'Decke',
    edge: 'Aufkantung, Schwelle',
    outlet: 'Ablauf',
    'line load': 'Mauer, Einfassung',
    retaining: 'Stützwand',
    block: 'Pflanzgefäß, Block',
    stockpile: 'Haufwerk',
    'flood water': 'Wasser der Flutprobe',
    'tree crown': 'Baum',
  },
  plans: {
    bay: 'Feld',
    column: 'Stütze darunter',
    outlet: 'Ablauf',
    overflow: 'Notüberlauf',
    upstand: 'Aufkantung',
    sill: 'Schwelle',
    tree: 'Baum',
    wall: 'Mauer, Einfassung',
    retaining: 'Stützwand',
    block: 'Pflanzgefäß, Block',
    opening: 'Öffnung',
    zones: 'Zonen',
  },
};

export const SHEET_WORDS: Readonly<Record<ExportLanguage, SheetWords>> = { en: EN, de: DE };

/** A number with fixed decimals, a true minus sign and the language's decimal mark; never "-0". */
export function numberOn(value: number, decimals: number, language: ExportLanguage): string {
  const fixed = value.toFixed(decimals);
  const text = Number(fixed) === 0 ? fixed.replace('-', '') : fixed.replace('-', '\u2212');
  return language === 'de' ? text.replace('.', ',') : text;
}

/** A level with its sign; the zero level has ±. */
export function levelOn(levelM: number, language: ExportLanguage): string {
  const text = numberOn(levelM, 3, language);
  if (Number(levelM.toFixed(3)) === 0) return `±${text}`;
  return levelM > 0 ? `+${text}` : text;
}

/** A thickness in millimetres: sheets thinner than 10 mm with a decimal where they need one. */
export function thicknessOn(thicknessM: number, language: ExportLanguage): string {
  const valueMm = thicknessM * 1000;
  return numberOn(valueMm, valueMm < 9.95 && Math.abs(valueMm - Math.round(valueMm)) > 0.04 ? 1 : 0, language);
}
