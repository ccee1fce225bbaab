/** Undo, saving, recovered work, links and working offline: the sentences in German. */

import { numberText, thicknessOf, timeText } from '../format.ts';
import type { Texts } from './text.ts';

export const file: Texts['file'] = {
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  undoes: (edit) => `Rückgängig: ${edit}`,
  redoes: (edit) => `Wiederholen: ${edit}`,
  undone: (layer, buildUp, mm) => `Rückgängig gemacht: ${layer} in ${buildUp} hat wieder ${thicknessOf(mm)}.`,
  redone: (layer, buildUp, mm) => `Wiederholt: ${layer} in ${buildUp} hat ${thicknessOf(mm)}.`,
  thickness: (layer, buildUp, fromMm, toMm) => `${layer} in ${buildUp}, ${thicknessOf(fromMm)} auf ${thicknessOf(toMm)}`,
  changed: 'nicht gespeichert',
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
  built: (when) =>
    `Fassung vom ${when}. Läuft ab dem zweiten Besuch auch ohne Netz; eine neuere Fassung wartet, bis die Seite geschlossen ist.`,
  link: (characters) => `Link mit der ganzen Szene, ${numberText(characters, 0)} Zeichen`,
  copyLink: 'Link kopieren',
  linkCopied: 'Kopiert',
  linkSays: 'Wer den Link hat, hat die Szene. Er geht nur dorthin, wohin Sie ihn schicken; beim Öffnen wird nichts verschickt.',
  linkTooLong: (characters, most) =>
    `Ein Link mit dieser Szene hat ${numberText(characters, 0)} Zeichen; Programme kürzen Links über ${numberText(most, 0)}. Bitte die Szene speichern und die Datei schicken.`,
  fromLink: 'Szene aus dem Link',
  incomplete: (arrived, sent) =>
    `Der Link ist unvollständig: ${numberText(arrived, 0)} von ${numberText(sent, 0)} Zeichen sind angekommen. Bitte noch einmal in einer Zeile schicken lassen oder um die Datei bitten.`,
  badLink: (why) =>
    ({
      damaged: 'Der Link wurde unterwegs verändert und ist nicht lesbar. Bitte noch einmal schicken lassen oder um die Datei bitten.',
      newer: 'Der Link stammt aus einer neueren Fassung von Loamdeck. Bitte diese Seite neu laden oder um die Datei bitten.',
      'too large': 'Der Link enthält mehr, als eine Szene sein kann. Er wurde nicht geöffnet. Bitte um die Datei bitten.',
    })[why],
  recovered: 'Nicht gespeicherte Arbeit gefunden',
  offer: (name, when) => `Änderungen an ${name} vom ${when} wurden nicht als Datei gespeichert. Auf diesem Gerät liegt eine Kopie.`,
  openIt: 'Kopie öffnen',
  leaveIt: 'Jetzt nicht',
  kept: (count) => (count === 1 ? 'Früherer Stand, auf diesem Gerät aufgehoben' : `${count} frühere Stände, auf diesem Gerät aufgehoben`),
  keptState: (name, when) => `${name}, ${when}`,
  keptNone: 'Auf diesem Gerät sind keine früheren Stände aufgehoben.',
  keepsNone: 'Dieser Browser hebt hier keine Kopien auf. Bitte als Datei speichern, bevor die Seite verlassen wird.',
  address: 'Zur Adresse',
  unknownWish: ({ what, wanted, known }) =>
    ({
      scene: `Die Adresse verlangt eine Szene „${wanted}“, die es hier nicht gibt. Geöffnet ist stattdessen die erste Beispielszene. Es gibt: ${known.join(', ')}.`,
      show: `Die Adresse verlangt die Ansicht „${wanted}“, die es nicht gibt. Gezeigt wird das Modell. Es gibt: ${known.join(', ')}.`,
      lang: `Die Adresse verlangt die Sprache „${wanted}“, die diese Seite nicht spricht. Sie spricht: ${known.join(', ')}.`,
    })[what],
  understood: 'Verstanden',
};
