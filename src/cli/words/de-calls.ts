/** What `diff`, `import` and `lighten` print, in German. */

import { countDe, someDe } from '../../import/words/number-words.ts';
import type { CallWords } from './en-calls.ts';

export const CALLS_DE: CallWords = {
  note: 'Hinweis',
  unreadable: {
    missing: 'Diese Datei gibt es nicht. Name und Ordner prüfen.',
    folder: 'Dies ist ein Ordner, erwartet wurde eine Datei.',
    forbidden: 'Diese Datei darf nicht gelesen werden. Ihre Rechte prüfen.',
    other: (why) => `Die Datei lässt sich nicht lesen (${why}).`,
  },

  judgedVariant: (id, name) => `Variante ${id}: ${name}`,
  ofVariant: (id) => `Variante ${id}`,
  noVariant: (id, known) =>
    known.length === 0
      ? `Eine Variante „${id}“ gibt es nicht; die Datei enthält keine Varianten.`
      : `Eine Variante „${id}“ gibt es nicht; es gibt: ${known.join(', ')}.`,

  unwritable: (file, why) => `${file}: Die Datei lässt sich nicht schreiben (${why}).`,
  deckExpected: (file) => `${file}: Erwartet wurde eine Szene; check sagt, was daran falsch ist.`,
  answersExpected: (file) => `${file}: Antworten werden als JSON erwartet, zum Beispiel { "unit": "mm" }.`,
  aScene: (name) => `${name}: eine Szene. Prüfen mit: npm run --silent check -- ${name} --language de`,
  drawing: (name, kind, points) => `${name}: ${kind}, ${someDe(points, 'Punkt', 'Punkte')}`,
  size: (width, height, place) => `${width} × ${height} m ab ${place}`,
  layers: 'Layer',
  layersHead: ['Layer', 'Formen', 'gelesen', 'weggelassen', 'wohl als'],
  layerOff: (name) => `${name} (ausgeschaltet)`,
  open: (count) => `Offene Fragen: ${count} (angenommen ist das Wahrscheinlichste; Antwort mit --answer ID=WERT)`,
  settled: 'Geklärt',
  mends: 'Änderungen und Hinweise',
  scene: 'Szene',
  noScene: 'keine, es gibt keinen Umriss',
  sceneOf: (corners, openings) => `${someDe(corners, 'Ecke', 'Ecken')}, ${someDe(openings, 'Öffnung', 'Öffnungen')}`,
  waiting: 'Wartet auf Eingaben',
  part: { bay: 'Feld', zone: 'Zone', edge: 'Rand', column: 'Stütze', tree: 'Baum' },
  needs: (count, part, keys) => `${countDe(count)} × ${part}: benötigt ${keys}`,
  unassigned: 'Layer ohne Verwendung',

  withinAll: 'Kein Feld überschreitet seine Grenze.',
  aim: { cost: 'Am günstigsten', weight: 'Am leichtesten', change: 'Am wenigsten getauscht' },
  unsolved: {
    'no common answer': 'jede Grenze lässt sich einhalten, aber nicht alle zusammen',
    time: 'in der Zeit wurde keine Lösung gefunden',
    'no prices': 'die Materialien haben keine Preise',
  },
  unmet: {
    'no common answer': 'für sich ließe sie sich einhalten, aber nicht zugleich mit den anderen',
    time: 'in der Zeit wurde keine Lösung gefunden',
  },
  stillOver: (place, after, permitted, why) => `noch über der Grenze: ${place}, ${after} von ${permitted} kN/m²: ${why}`,
  passing: {
    locked: 'sie soll bleiben, wie sie ist',
    'not within its levels': 'ihr Aufbau passt nicht zwischen ihre Höhen',
    'no layer to change': 'sie hat keine Lage, die sich ändern lässt',
  },
  passedOver: (zone, why) => `Zone ${zone} wurde übergangen: ${why}.`,
  leftOut: (zone, material, mm, says) => `Zone ${zone}: ${material} wurde ab ${mm} mm ausgeschlossen. ${says}`,
  leftThick: (zone, mm, says) => `Zone ${zone}: Substrat um ${mm} mm oder mehr dünner wurde ausgeschlossen. ${says}`,
  notACheck:
    'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis: Es entscheidet der Tragwerksplaner.',
  noPrices: 'ohne Preise',
  price: (before, after) => `Preis ${before} → ${after}`,
  variant: (aim, proven, savedKN, exchangedM3) =>
    `${aim}${proven ? '' : ' (nicht bewiesen, dass es die beste Lösung ist)'}: ${savedKN} kN weniger, ${exchangedM3} m³ getauscht`,
  limit: { permanent: 'ständig', total: 'gesamt', stage: 'Bauzustand' },
  bayAt: (bay, cases) => `Feld ${bay}, ${cases.join(', ')}`,
  inStage: (stage) => `Bauzustand ${stage}`,
  bayLoad: (before, after, permitted, binding) => `${before} → ${after} von ${permitted} kN/m²${binding ? ', maßgebend' : ''}`,
  none: 'keine',
  zoneLess: (zone, buildUp, savedKN) => `Zone ${zone} (${buildUp}), ${savedKN} kN weniger`,
  laidIn: (stage) => `Neues wird in Bauzustand ${stage} eingebaut, der dafür ergänzt wurde`,
  obstacle: (n) =>
    `${n.before} von ${n.permitted} kN/m²; so leicht wie möglich sind es noch ${n.lightest}, ${n.over} zu viel; davon ${n.others} aus dem, was sonst dort steht.`,
  inTheWay: (list) => `Im Weg: ${list}.`,
  hindrance: {
    'substrate depth': 'Mindestdicke des Substrats',
    'tree soil': 'Boden für Bäume',
    room: 'Raum zwischen Decke und Fertighöhe',
    'base course': 'Tragschicht unter dem Belag',
    'locked zones': 'gesperrte Zonen',
  },
};
