/** Sentences of saved views in German. */

import type { Texts } from './text.ts';

export const savedViews: Texts['savedViews'] = {
  says: 'Das Modell so drehen, wie es zu sehen sein soll, dann die Ansicht festhalten: Bauzustand, Fächern, Karte und Anschnitt gehören dazu. Der Rundgang zeigt die Ansichten in dieser Reihenfolge.',
  made: 'Die Szene hält keine eigenen Ansichten fest. Der Rundgang bildet diese; die erste eigene übernimmt sie.',
  take: 'Übernehmen',
  caption: 'Ansichten in der Reihenfolge des Rundgangs',
  head: 'Ansicht',
  shows: 'Zeigt',
  finished: 'fertige Anlage',
  stage: (number, name) => `Bauzustand ${number}, ${name}`,
  exploded: 'aufgefächert',
  map: (name) => `Karte ${name}`,
  cut: 'Anschnitt',
  lift: 'Lagen herausgehoben',
  plain: 'als Zeichnung',
  go: (number, name) => `${number} ${name}`,
  keep: 'Diese Ansicht festhalten',
  newName: (number) => `Ansicht ${number}`,
  name: 'Name',
  words: 'Bildtext',
  chosen: 'Die gewählte Ansicht',
  again: 'So, wie jetzt zu sehen',
  earlier: 'Früher',
  later: 'Später',
  remove: 'Entfernen',
  moved: (name, number, count) => `${name} ist jetzt Ansicht ${number} von ${count}.`,
  kept: (name) => `${name} ist festgehalten.`,
  cutLost: 'Ein Anschnitt wird nur festgehalten, wenn man auf seine Fläche blickt; von hier gesehen entfällt er.',
  noView: 'Das Modell ist hier nicht zu sehen. Wo es zu sehen ist, auch im Rundgang, lassen sich Ansichten festhalten.',
};
