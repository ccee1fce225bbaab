/** Names that sentences on drawings share: units, ways to lie, marks, roles, in English and German. */

import type { LayerRole } from '../../model/drawing.ts';
import type { LengthUnit } from '../length-unit.ts';
import type { DecimalMark } from '../number-form.ts';
import type { Separator } from '../table-form.ts';

/** How the two numbers of a point lie on the plan. */
export type Axes = 'xy' | 'yx' | 'x-y' | '-xy';
/** What a layer's role can use. */
export type Wanted = 'levels' | 'places' | 'lines' | 'outlines';

interface Terms {
  readonly units: Readonly<Record<LengthUnit | 'degrees', string>>;
  readonly axes: Readonly<Record<Axes, string>>;
  readonly separators: Readonly<Record<Separator, string>>;
  readonly marks: Readonly<Record<DecimalMark, string>>;
  readonly roles: Readonly<Record<LayerRole, string>>;
  readonly wanted: Readonly<Record<Wanted, string>>;
}

export const TERMS_EN: Terms = {
  units: {
    m: 'metres',
    cm: 'centimetres',
    mm: 'millimetres',
    ft: 'feet',
    ftUS: 'US survey feet',
    in: 'inches',
    dm: 'decimetres',
    yd: 'yards',
    km: 'kilometres',
    degrees: 'degrees',
  },
  axes: {
    xy: 'first to the right (east), second up (north)',
    yx: 'first up (north), second to the right (east)',
    'x-y': 'second number counts downwards: mirrored top to bottom',
    '-xy': 'first number counts to the left: mirrored left to right',
  },
  separators: { ';': 'a semicolon', tab: 'a tab', '|': 'a bar', ',': 'a comma', blank: 'blanks' },
  marks: { '.': 'point', ',': 'comma' },
  roles: {
    outline: 'outline',
    openings: 'openings',
    bays: 'bays',
    zones: 'zones',
    edges: 'edges',
    columns: 'columns',
    outlets: 'outlets',
    levels: 'levels',
    trees: 'trees',
    axes: 'axes',
    ignore: 'ignore',
  },
  wanted: {
    levels: 'points or texts with a level, or lines with levels',
    places: 'points, circles, small outlines or blocks',
    lines: 'lines',
    outlines: 'closed outlines',
  },
};

export const TERMS_DE: Terms = {
  units: {
    m: 'Meter',
    cm: 'Zentimeter',
    mm: 'Millimeter',
    ft: 'Fuß',
    ftUS: 'US-Vermessungsfuß',
    in: 'Zoll',
    dm: 'Dezimeter',
    yd: 'Yard',
    km: 'Kilometer',
    degrees: 'Grad',
  },
  axes: {
    xy: 'erste nach rechts (Ost), zweite nach oben (Nord)',
    yx: 'erste nach oben (Nord), zweite nach rechts (Ost)',
    'x-y': 'zweite Zahl zählt nach unten: oben und unten gespiegelt',
    '-xy': 'erste Zahl zählt nach links: links und rechts gespiegelt',
  },
  separators: { ';': 'einem Semikolon', tab: 'einem Tabulator', '|': 'einem senkrechten Strich', ',': 'einem Komma', blank: 'Leerzeichen' },
  marks: { '.': 'Punkt', ',': 'Komma' },
  roles: {
    outline: 'Umriss',
    openings: 'Öffnungen',
    bays: 'Felder',
    zones: 'Zonen',
    edges: 'Ränder',
    columns: 'Stützen',
    outlets: 'Abläufe',
    levels: 'Höhen',
    trees: 'Bäume',
    axes: 'Achsen',
    ignore: 'ohne Verwendung',
  },
  wanted: {
    levels: 'Punkte oder Texte mit Höhe, oder Linien mit Höhen',
    places: 'Punkte, Kreise, kleine Umrisse oder Blöcke',
    lines: 'Linien',
    outlines: 'geschlossene Umrisse',
  },
};
