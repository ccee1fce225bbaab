/** Undo, saving, recovered work, links and working offline: the sentences in German. */

import { thicknessText, timeText } from '../format.ts';
import type { Texts } from './text.ts';

export const file: Texts['file'] = {
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  undoes: (edit) => `Rückgängig: ${edit}`,
  redoes: (edit) => `Wiederholen: ${edit}`,
  undone: (layer, buildUp, mm) => `Rückgängig gemacht: ${layer} in ${buildUp} hat wieder ${thicknessText(mm)} mm.`,
  redone: (layer, buildUp, mm) => `Wiederholt: ${layer} in ${buildUp} hat ${thicknessText(mm)} mm.`,
  thickness: (layer, buildUp, fromMm, toMm) => `${layer} in ${buildUp}, ${thicknessText(fromMm)} auf ${thicknessText(toMm)} mm`,
  changed: 'geändert, nicht gespeichert',
  lastSaved: (when) => (when === null ? 'zuletzt als Datei gespeichert: nie' : `zuletzt als Datei gespeichert: ${when}`),
  time: timeText,
  menu: 'Datei',
  save: 'Speichern',
  saveAs: 'Unter anderem Namen speichern…',
  stays: 'Gespeichert wird nur auf diesem Gerät. Nichts wird verschickt.',
  saved: (name) => `Gespeichert als ${name}.`,
  downloaded: (name) => `${name} liegt jetzt bei den Downloads des Browsers.`,
  notSaved: (why) => `Nicht gespeichert: ${why}. Bitte unter anderem Namen oder in einem anderen Ordner speichern.`,
  nameTitle: 'Szene speichern',
  name: 'Name der Datei',
  nameAdd: 'Der Browser legt sie zu seinen Downloads.',
  cancel: 'Abbrechen',
  recovered: 'Nicht gespeicherte Arbeit gefunden',
  offer: (name, when) => `Änderungen an ${name} vom ${when} wurden nicht als Datei gespeichert. Auf diesem Gerät liegt eine Kopie.`,
  openIt: 'Kopie öffnen',
  leaveIt: 'Jetzt nicht',
  kept: (count) => (count === 1 ? 'Früherer Stand, auf diesem Gerät aufgehoben' : `${count} frühere Stände, auf diesem Gerät aufgehoben`),
  keptState: (name, when) => `${name}, ${when}`,
  keepsNone: 'Dieser Browser hebt hier keine Kopien auf. Bitte als Datei speichern, bevor die Seite verlassen wird.',
};
