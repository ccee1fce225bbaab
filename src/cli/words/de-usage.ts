/** Help of the command line in German, and why a call is refused. */

import { EXPORT_TABLES } from '../../model/export-table.ts';
import { LIGHTEN_AIMS } from '../../model/lighten.ts';
import type { RefusalWords } from './en-usage.ts';

export const USAGE_DE = `Aufruf: npm run --silent check -- DATEI [--json] [--cell M] [--variant ID] [--language en|de]
     npm run --silent export -- DATEI [--table NAME | --xlsx ZIEL] [--language en|de]
     npm run --silent export -- DATEI --section X,Y,X,Y (--svg ZIEL | --dxf ZIEL) [--scale N] [--heights N] [--stage ID]
     npm run --silent export -- DATEI --plan (--svg ZIEL | --dxf ZIEL) [--scale N] [--section X,Y,X,Y]
     npm run --silent export -- DATEI --glb ZIEL
     npm run --silent export -- DATEI --html ZIEL [--language en|de] [--section X,Y,X,Y]
     npm run --silent sources -- [DATEI] [--language en|de]
     npm run --silent diff -- A B [--json] [--language en|de]
     npm run --silent lighten -- DATEI [--by cost|weight|change] [--zones A,B] [--locked A,B] [--out NEU] [--json] [--language en|de]
     npm run --silent import -- DATEI [--answer ID=WERT]… [--answers DATEI] [--role LAYER=ROLLE]… [--deck SZENE] [--scene ZIEL] [--json] [--language en|de]

check: Lasten, Aufbauhöhen, Höhenlagen, Befunde
  DATEI          eine Szene (*.scene.json)
  --json         auf der Standardausgabe nur der Bericht als JSON
  --cell M       Seitenlänge der Rasterzellen in Metern (0.05 bis 2) anstelle der in der Szene
  --variant ID   beurteilt eine in der Datei aufgehobene Variante anstelle dessen, was die Szene zeigt
  --language L   en oder de: Überschriften, Befunde, Meldungen und Namen auf Deutsch
export: eine Tabelle als CSV auf der Standardausgabe
  --table NAME   ${EXPORT_TABLES.join(', ')} (ohne Angabe die erste)
  --xlsx ZIEL    alle Tabellen als Arbeitsmappe in der Datei ZIEL
  --language L   en oder de: deutsche Überschriften, Strichpunkte und Dezimalkommas
  --section LINIE Schnitt entlang einer Linie: x,y,x,y … in Metern der Datei (--section=-1,2,… wenn die erste Zahl negativ ist)
  --plan         Grundriss der Decke; mit --section ist die Schnittlinie darin eingetragen
  --svg ZIEL     Zeichnung in Millimetern auf Papier in der Datei ZIEL
  --dxf ZIEL     dieselbe in Metern
  --scale N      1:N (ohne Angabe 50 für Schnitte, 100 für Grundrisse)
  --heights N    zeichnet die Höhen eines Schnitts N-fach überhöht (nur SVG)
  --stage ID     Schnitt am Ende eines Bauzustands anstelle der fertigen Anlage
  --date D       Datum im Schriftfeld, ohne Angabe das heutige
  --html ZIEL    Übergabe: alles über die Szene in einer Seite, die ohne Server aufgeht
  --glb ZIEL     die fertige Anlage als Modell: Meter, Y nach oben, ein Knoten je Lage und Zone
sources: woher jede Zahl des Katalogs und der Regeln stammt, und mit einer DATEI, was darin auf welcher Quelle beruht
diff: jede Änderung von Szene A zu Szene B einmal, Änderungen des Lastenplans zuerst; dann die Felder und Zonen mit anderem Ergebnis
                 Exit-Code 1: B hat einen Befund mit Stopp, wie bei check
lighten: andere Schüttungen und Dicken für Zonen, die für ihre Felder zu schwer sind, bei gleicher Fertighöhe; oder die Grenze, die im Weg steht
  --by ZIEL      ${LIGHTEN_AIMS.join(', ')}: niedrigster Preis, geringstes Gewicht, kleinstes getauschtes Volumen (ohne Angabe alle)
  --zones A,B    diese Zonen anstelle derer auf überlasteten Feldern
  --locked A,B   Zonen, die bleiben, wie sie sind
  --out NEU      schreibt die Szene der ersten Lösung nach NEU
                 Exit-Code 1: eine Grenze bleibt überschritten; dort hilft nichts
import: liest eine Zeichnung (DXF), ein Gebäudemodell (IFC), eine Karte (GeoJSON), Punkte (CSV, LandXML); nichts wird geändert, ohne dass es gesagt wird
  --answer I=W   Antwort auf eine Frage, mit deren Kennung; auch mehrmals
  --answers DATEI dasselbe aus einer JSON-Datei: { "unit": "mm" }
  --role L=R     was ein Layer ist: outline, openings, bays, zones, edges, columns, outlets, levels, trees, axes, ignore
  --deck SZENE   eine Szene, zu deren Decke die Zeichnung passen soll: zeigt, ob Achsen vertauscht oder gespiegelt sind
  --language L   en oder de: Fragen, Änderungen, Meldungen und Verlauf des Entwurfs auf Deutsch
  --scene ZIEL   schreibt den Teil einer Szene, den die Datei enthält, nach ZIEL
                 Exit-Code 1 hier: eine Frage ist offen, angenommen ist das Wahrscheinlichste

Exit-Code 0: kein Befund mit Stopp; 1: mindestens einer; 2: Die Datei lässt sich nicht lesen oder ist nicht gültig.
Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis.
`;

const given = (count: number): string => (count === 0 ? 'angegeben ist keine' : `angegeben sind ${count}`);

export const REFUSALS_DE: RefusalWords = {
  noCommand: (found, known) => `Einen Befehl „${found}“ gibt es nicht; es gibt: ${known}.`,
  notUnderstood: (said) => `Der Aufruf wurde nicht verstanden: ${said}`,
  option: (code, flag) => {
    if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `Der Aufruf wurde nicht verstanden: Eine Option „${flag}“ gibt es nicht.`;
    if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE')
      return `Der Aufruf wurde nicht verstanden: „${flag}“ verlangt einen Wert oder steht allein; ein Wert, der mit - beginnt, wird als ${flag}=WERT geschrieben.`;
    return null;
  },
  noOption: (command, flag) => `Der Aufruf wurde nicht verstanden: „${command}“ hat keine Option „--${flag}“.`,
  oneScene: (count) => `Erwartet wurde eine Szene als Datei, ${given(count)}.`,
  oneFile: (count) => `Erwartet wurde eine Datei, ${given(count)}. Mehrere Dateien bitte nacheinander einlesen.`,
  twoScenes: (count) => `Erwartet wurden zwei Szenen als Dateien, zuerst die frühere, dann die spätere; ${given(count)}.`,
  language: (found) => `--language nimmt en oder de, gefunden „${found}“.`,
  cell: (found) => `--cell nimmt Meter von 0.05 bis 2 mit Dezimalpunkt, gefunden „${found}“.`,
  outputs: (flags) => `--${flags.join(' und --')} schließen einander aus: Jedes ergibt eine eigene Datei oder Tabelle.`,
  ofDrawing: (flag) => `--${flag} gehört zu einer Zeichnung: auch --svg ZIEL oder --dxf ZIEL angeben.`,
  notWithHtml: (flag) => `--${flag} gehört zu einer Zeichnung; --html schreibt den Grundriss in seinem eigenen Maßstab.`,
  notWithGlb: (flag) => `--${flag} gehört zu einer Zeichnung; --glb schreibt das ganze Modell.`,
  ofSection: (flag) => `--${flag} gehört zu einem Schnitt; ein Grundriss hat das nicht.`,
  table: (found) => `--table nimmt eines von: ${EXPORT_TABLES.join(', ')}; gefunden „${found}“.`,
  line: (found) => `--section nimmt x,y von zwei oder mehr Punkten, in Metern mit Dezimalpunkten; gefunden „${found}“.`,
  whatToDraw: '--svg und --dxf zeichnen einen Schnitt oder einen Grundriss: --section X,Y,X,Y oder --plan angeben.',
  scale: (found) => `--scale nimmt N von 1:N, eine Zahl über 0; gefunden „${found}“.`,
  heights: (found) => `--heights nimmt eine Zahl über 0; gefunden „${found}“.`,
  heightsForSvg: '--heights gilt für --svg: In einer DXF-Datei sind Höhen immer wahr.',
  noStage: (found, known) => `Einen Bauzustand „${found}“ gibt es nicht; es gibt: ${known}.`,
  ofLighten: (flag) => `--${flag} gehört zu lighten.`,
  by: (found) => `--by nimmt eines von: ${LIGHTEN_AIMS.join(', ')}; gefunden „${found}“.`,
  answer: '--answer nimmt ID=WERT, zum Beispiel --answer unit=mm.',
  role: '--role nimmt LAYER=ROLLE, zum Beispiel --role Decke=outline.',
  sceneNeedsRole: '--scene braucht --role LAYER=ROLLE: Was ist der Umriss der Decke?',
};
