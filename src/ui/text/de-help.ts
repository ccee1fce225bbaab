/** The help sheet in German. */

import type { Texts } from './text.ts';

export const help: Texts['help'] = {
  title: 'Tasten und Hilfe',
  close: 'Schließen',
  model: 'Im Modell',
  rail: 'In den Bauzuständen',
  tables: 'In den Tabellen',
  still: 'Keine bewegten Bilder',
  stillAdd: 'Die Ansicht springt, statt zu fliegen; Lagen wechseln sofort. Folgt der Einstellung des Geräts, bis hier gewählt wird.',
  keys: {
    model: [
      ['Pfeiltasten', 'Modell drehen'],
      ['Umschalt + Pfeiltasten', 'Modell verschieben'],
      ['+ und −', 'näher, weiter weg'],
      ['Pos1, P, S', 'ganzes Modell, von oben, von der Seite'],
      ['Klicken oder tippen', 'Schichtprofil dieser Stelle'],
      ['Escape', 'gewählte Stelle aufheben'],
    ],
    rail: [
      ['Pfeil links, rechts', 'voriger, nächster Bauzustand'],
      ['Pos1, Ende', 'erster Bauzustand, fertige Anlage'],
    ],
    tables: [
      ['Tabulator', 'nächstes Bedienfeld'],
      ['Pfeiltasten', 'im Register: nächstes Blatt'],
      ['Eingabe', 'zu Feld, Befund, Zone oder Zelle gehen'],
    ],
  },
};
