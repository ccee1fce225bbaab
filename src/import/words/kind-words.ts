/** Kinds of entities as they are counted by layer: their name in the file, and why one was left out. */

/** What is counted without a name of the file. */
const WHOLE = {
  row: 'Zeile',
  'point of the surface': 'Punkt der Oberfläche',
  'far from the rest': 'weit vom Rest entfernt',
  'row without numbers': 'Zeile ohne Zahlen',
  'row without x and y': 'Zeile ohne x und y',
  'line of no length': 'Linie ohne Länge',
  'outline of fewer than three points': 'Umriss aus weniger als drei Punkten',
  'outline without area': 'Umriss ohne Fläche',
  'feature without geometry': 'Objekt ohne Geometrie',
  'list of points': 'Liste von Punkten',
} as const;

/** What stands behind a name of the file. */
const BEHIND = {
  'in a block': 'in einem Block',
  'in paper space': 'im Papierbereich',
  'set invisible': 'unsichtbar gesetzt',
  tilted: 'gekippt',
  empty: 'leer',
  'without radius': 'ohne Radius',
  'over a whole turn': 'über eine volle Drehung',
  'without size': 'ohne Größe',
  'given by points to pass through': 'durch Stützpunkte gegeben',
  damaged: 'beschädigt',
  'of a kind not known': 'unbekannter Art',
  mesh: 'als Netz',
  'with a bad number': 'mit ungültiger Zahl',
  'out of form': 'in falscher Form',
  'empty or not known': 'leer oder unbekannt',
  'of a block that is not there': 'eines fehlenden Blocks',
  'of another drawing (XREF)': 'einer anderen Zeichnung (XREF)',
  'inside itself': 'in sich selbst',
} as const;

export type WholeKind = keyof typeof WHOLE;
export type KindNote = keyof typeof BEHIND;

/** A counted kind: the file's name for it, with a note. */
export function notedKind(name: string, note: KindNote): string {
  return `${name.slice(0, 40)} ${note}`;
}

/** Longest first: one note may end another. */
const NOTES = (Object.keys(BEHIND) as KindNote[]).sort((a, b) => b.length - a.length);

/** A counted kind in German. */
export function kindDe(kind: string): string {
  if (Object.hasOwn(WHOLE, kind)) return WHOLE[kind as WholeKind];
  const note = NOTES.find((one) => kind.endsWith(` ${one}`));
  return note === undefined ? kind : `${kindDe(kind.slice(0, -note.length - 1))} ${BEHIND[note]}`;
}

/** Kinds with their counts in one text, which can be told again in another language. */
export function kindsText(counts: readonly (readonly [kind: string, count: number])[]): string {
  return counts.map(([kind, count]) => `${count}\t${kind}`).join('\n');
}

const told = (text: string, tell: (kind: string) => string) =>
  text
    .split('\n')
    .map((line) => line.split('\t'))
    .map(([count, kind = '']) => `${count} × ${tell(kind)}`)
    .join(', ');

export const kindsEn = (text: string) => told(text, (kind) => kind);
export const kindsDe = (text: string) => told(text, kindDe);
