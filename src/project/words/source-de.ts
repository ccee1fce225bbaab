/** Where numbers come from, in German: our words about them; titles that a scene enters stay as written. */

import { CATALOGUE_SOURCES } from '../../catalogue/catalogue.ts';
import { DOCUMENTS_DE, PLACES_DE } from '../../catalogue/german-sources.ts';
import type { Source, SourceGrade } from '../../model/source.ts';

const GRADES_DE: Readonly<Record<SourceGrade, string>> = {
  read: 'gelesen',
  secondary: 'aus zweiter Hand',
  'common practice': 'übliche Praxis',
  'from memory': 'aus dem Gedächtnis',
  assumed: 'angenommen',
  entered: 'eingegeben',
  none: 'keine',
};

/** Whole lines of our own. */
const OUR_LINES: Readonly<Record<string, string>> = {
  'common practice': 'übliche Praxis',
  'the scene file': 'die Szenendatei',
  'scene file, no source given': 'Szenendatei, keine Quelle angegeben',
  'value in the scene file, no source given': 'Wert in der Szenendatei, keine Quelle angegeben',
  'no source': 'keine Quelle',
  'none given': 'keiner angegeben',
  'the build-up in the scene file': 'der Aufbau in der Szenendatei',
  'no row of the table fits, so all rain is counted': 'keine Zeile der Tabelle passt, daher zählt der ganze Regen',
  'the load plan and the levels in the scene file': 'der Lastenplan und die Höhen in der Szenendatei',
  'permitted load not confirmed: basis incomplete': 'zulässige Last nicht bestätigt: Grundlage unvollständig',
  'statics: beyond a sixth of its width a base that cannot pull opens':
    'Statik: Jenseits eines Sechstels der Breite klafft eine Fuge, die nicht ziehen kann',
  'EN 12056-3 and DIN 1986-100, an outlet and an overflow at each low place, as two trade pages repeat it':
    'EN 12056-3 und DIN 1986-100, ein Ablauf und ein Notüberlauf an jedem Tiefpunkt, wie zwei Fachseiten es wiedergeben',
  'DIN 1986-100:2016-12, Table 9, Cs': 'DIN 1986-100:2016-12, Tabelle 9, Cs',
  'FLL green-roof guideline by depth': 'FLL-Dachbegrünungsrichtlinie nach Schichtdicke',
};

/** Document and place as they stand in a line, English to German. */
const IN_CATALOGUE: ReadonlyMap<string, string> = new Map(
  CATALOGUE_SOURCES.map(({ source }) => [placed(source), placed(sourcePartsDe(source))]),
);

function placed({ document, place }: Pick<Source, 'document' | 'place'>): string {
  return place ? `${document}, ${place}` : document;
}

/** A source of the catalogue with our words in German. */
export function sourcePartsDe(source: Source): Source {
  const document = DOCUMENTS_DE[source.document] ?? OUR_LINES[source.document] ?? source.document;
  return source.place === undefined ? { ...source, document } : { ...source, document, place: PLACES_DE[source.place] ?? source.place };
}

const GRADED = /^(.*) \(([a-z ]+)\)$/s;
const FLOW = /^rain: (.*); run-off: (.*)$/s;
const UPLIFT = /^EN 1997-1, 2\.4\.7\.4; (\S+) up: (.*); (\S+) down: (.*)$/s;

/** A line as `sourceLine` and the findings write it. */
export function sourceDe(text: string): string {
  const flow = FLOW.exec(text);
  if (flow) return `Regen: ${sourceDe(flow[1])}; Abfluss: ${sourceDe(flow[2])}`;
  const uplift = UPLIFT.exec(text);
  if (uplift) {
    const [, up, upSource, down, downSource] = uplift;
    return `EN 1997-1, 2.4.7.4; ${comma(up)} nach oben: ${sourceDe(upSource)}; ${comma(down)} nach unten: ${sourceDe(downSource)}`;
  }
  const graded = GRADED.exec(text);
  const grade = graded && Object.hasOwn(GRADES_DE, graded[2]) ? GRADES_DE[graded[2] as SourceGrade] : null;
  if (graded && grade !== null) return `${bodyDe(graded[1])} (${grade})`;
  return bodyDe(text);
}

const comma = (text: string) => text.replace('.', ',');

function bodyDe(text: string): string {
  return IN_CATALOGUE.get(text) ?? OUR_LINES[text] ?? text;
}
