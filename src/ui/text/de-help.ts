/** The help sheet in German. */

import type { Texts } from './text.ts';

export const help: Texts['help'] = {
  title: 'Tasten und Hilfe',
  close: 'Schließen',
  model: 'Im Modell',
  rail: 'In den Bauzuständen',
  tables: 'In den Tabellen',
  plan: 'Im Planeditor',
  walk: 'Im Rundgang',
  still: 'Keine bewegten Bilder',
  stillAdd: 'Die Ansicht springt, statt zu fliegen; Lagen wechseln sofort. Folgt der Einstellung des Geräts, bis hier gewählt wird.',
  keys: {
    model: [
      ['Ziehen, ein Finger', 'Modell drehen'],
      ['Umschalt + Ziehen, rechte Taste, zwei Finger', 'Modell verschieben'],
      ['Mausrad, zwei Finger spreizen', 'näher, weiter weg'],
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
    plan: [
      ['Ziehen, Pfeiltasten, Leertaste + Ziehen', 'Plan verschieben'],
      ['Mausrad, zwei Finger spreizen, + und −, 0', 'näher, weiter weg, ganzer Plan'],
      ['Noch einmal klicken', 'was darunter liegt'],
      ['Umschalt + Klick, Umschalt + Ziehen', 'ein weiteres Teil dazu wählen, alle in einem Rahmen'],
      ['Strg + A', 'alle im Ausschnitt wählen'],
      ['Ecke, Seite oder Kreuz darauf ziehen', 'verschieben, Ecke einfügen'],
      ['Umschalt + Pfeiltasten, Entf', 'Gewähltes um einen Schritt verschieben, entfernen'],
      ['Alt beim Zeigen', 'nichts fangen'],
      ['Eingabe, Rücktaste, Escape', 'fertig, letzten Punkt zurücknehmen, abbrechen (auch ein Ziehen)'],
    ],
    walk: [
      ['Pfeil links, rechts, Bildtasten, Klicker', 'vorige, nächste Ansicht'],
      ['1 bis 9', 'diese Ansicht'],
      ['Klicken oder tippen', 'was unter dieser Stelle liegt'],
      ['W, A, S, D, Pfeiltasten', 'beim Gehen: wohin man geht und blickt'],
      ['Escape', 'einen Schritt zurück, dann aus dem Rundgang'],
    ],
  },
};
