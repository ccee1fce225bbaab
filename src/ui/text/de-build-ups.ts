/** Sentences of the build-up editor in German. */

import type { TemplateId } from '../../edit/build-ups-templates.ts';
import { areaText, loadNumber, loadText, mmText, numberText, percentText, quantityText, thicknessOf, unitText } from '../format.ts';
import { list, many } from './en-words.ts';
import type { Texts } from './text.ts';

const SYSTEM = 'Alles Weitere ist übliche Praxis: mit den Datenblättern des Systems prüfen.';

const TEMPLATES: Readonly<Record<TemplateId, { readonly name: string; readonly says: string }>> = {
  lawn: {
    name: 'Rasen',
    says: `Rollrasen auf 25 cm Rasensubstrat; Richtwerte sind 15 bis 35 cm (FLL-Dachbegrünungsrichtlinie, aus dem Gedächtnis). ${SYSTEM}`,
  },
  perennials: {
    name: 'Stauden',
    says: `30 cm Intensivsubstrat; Richtwerte sind 15 bis 50 cm (FLL-Dachbegrünungsrichtlinie, aus dem Gedächtnis). ${SYSTEM}`,
  },
  shrubs: {
    name: 'Sträucher bis 3 m',
    says: `35 cm Intensivsubstrat auf einem Element, das mehr Wasser hält; üblich sind 30 bis 60 cm. ${SYSTEM}`,
  },
  'tree pit': {
    name: 'Kleinbäume',
    says: `35 cm Baumsubstrat auf 30 cm mineralischem Unterboden; Richtwerte für Kleinbäume sind 60 bis 125 cm und je Baum 12 m³ Boden (FLL, aus dem Gedächtnis). Ballen und Verankerung sind nicht enthalten. ${SYSTEM}`,
  },
  sedum: {
    name: 'Sedum und Kräuter',
    says: `8 cm Extensivsubstrat; Richtwerte sind 6 bis 10 cm (FLL-Dachbegrünungsrichtlinie, aus dem Gedächtnis). ${SYSTEM}`,
  },
  path: {
    name: 'Weg aus Platten',
    says: `Nur zu Fuß: Platten 6 cm auf 4 cm Bettung und 15 cm Tragschicht. ${SYSTEM}`,
  },
  terrace: {
    name: 'Terrasse auf Leichtschüttung',
    says: `Platten 6 cm auf 12 cm Tragschicht; 5 bis 40 cm Leichtschüttung gleichen die Höhe aus. ${SYSTEM}`,
  },
  'timber deck': {
    name: 'Holzdeck',
    says: `Dielen auf Lagerhölzern über 5 cm Kies; leicht, daher auf Wind und Auftrieb achten. ${SYSTEM}`,
  },
  'drive lane': {
    name: 'Fahrspur für Pkw und Lieferungen',
    says: `Platten 8 cm auf 25 cm Tragschicht in einer Einbaulage, über einem verfüllten Element; schwerere Fahrzeuge nach Nachweis. ${SYSTEM}`,
  },
  'fire lane': {
    name: 'Feuerwehrzufahrt',
    says: `Rasengittersteine 8 cm auf 25 cm Tragschicht, über einem verfüllten Element. Dicke nach Nachweis; Brandschutzdienststelle und Tragwerksplanung entscheiden. ${SYSTEM}`,
  },
  'gravel strip': {
    name: 'Kiesstreifen',
    says: `15 cm Kies entlang von Fassaden, Aufkantungen und Abläufen; üblich ist ein Streifen von 30 bis 50 cm Breite. ${SYSTEM}`,
  },
  'play surface': {
    name: 'Spielfläche',
    says: `5 cm gebundene Kiesdecke auf 15 cm Tragschicht. Fallschutz unter Geräten ist nicht enthalten: Seine Dicke folgt aus der Fallhöhe. ${SYSTEM}`,
  },
};

const zonesText = (count: number) => many(count, 'Zone', 'Zonen');

export const buildUps: Texts['buildUps'] = {
  pages: { label: 'Was bearbeiten', buildUps: 'Aufbauten', materials: 'Materialien' },
  waiting: 'Der Katalog wird gelesen …',
  list: {
    title: 'Aufbauten der Szene',
    none: 'Diese Szene hat noch keinen Aufbau. Mit einer Vorlage beginnen.',
    area: (zones, areaM2) => (zones === 0 ? 'in keiner Zone' : `${zonesText(zones)} · ${areaText(areaM2)}`),
    depth: (depthMm) => mmText(depthMm),
  },
  actions: {
    new: 'Neu',
    copy: 'Kopieren',
    assign: 'In Zonen einbauen',
    remove: 'Entfernen',
    removeUsed: (zones) =>
      `Nicht entfernt: ${zones.length === 1 ? 'Zone' : 'Zonen'} ${list(zones, 'und')} ${zones.length === 1 ? 'hat' : 'haben'} ihn. Dort zuerst einen anderen Aufbau einbauen.`,
    create: 'Anlegen',
    cancel: 'Abbrechen',
    close: 'Schließen',
  },
  template: {
    title: 'Neuer Aufbau aus einer Vorlage',
    says: 'Eigene Zusammenstellungen aus Materialien des Katalogs. Sie halten die Regeln zu Reihenfolge und Dicke ein; sie sind kein System und kein Nachweis.',
    choose: 'Nutzung',
    words: TEMPLATES,
  },
  copyOf: {
    title: (name) => `Kopie von ${name}`,
    says: 'Die Kopie lässt sich für sich ändern. Zonen wählen, die sie statt ihres Aufbaus bekommen, oder keine.',
    name: (name) => `${name}, Variante`,
  },
  zones: {
    title: 'Zonen',
    label: (id, name, buildUp) => `${name === '' ? id : `${name} (${id})`}, jetzt ${buildUp}`,
    same: (id, name) => (name === '' ? id : `${name} (${id})`),
    assignTitle: (name) => `${name} in Zonen einbauen`,
    assign: (count) => (count === 0 ? 'Zonen wählen' : `In ${zonesText(count)} einbauen`),
    find: 'Zone suchen',
    none: 'Keine andere Zone.',
  },
  name: 'Name',
  id: 'Kurzname',
  idSays: 'Nur einmal unter den Aufbauten; die Zonen folgen ihm.',
  column: {
    title: (name) => `Lagen von ${name}`,
    drawing: (names) => `Säule der Lagen im Maßstab, von oben nach unten: ${names.join(', ')}.`,
    handle: (name) => `Oberkante von ${name}: seine Dicke`,
    limit: {
      min: (name) => `Kleinste Dicke von ${name}`,
      max: (name) => `Größte Dicke von ${name}`,
    },
    membrane: 'Abdichtung',
    place: (place, of) => `Lage ${place} von ${of} von unten`,
    line: ({ depthMm, dryKNm2, saturatedKNm2 }, makeUp, infill) =>
      `${infill ? 'Hohlräume + ' : ''}${thicknessOf(depthMm)}${makeUp ? ' Ausgleich' : ''} · ${loadNumber(dryKNm2)} / ${loadNumber(saturatedKNm2)}`,
    key: () => `Dicke · trocken / gesättigt, ${unitText('kN/m²')}. Griffe oder Zeilen ziehen.`,
    lane: 'Daneben: wie dünn und wie dick die Ausgleichslage werden darf, in mm.',
    thin: 'Markierte Lagen sind dicker gezeichnet, als sie sind.',
    grip: 'An einen anderen Platz ziehen',
    keys: 'Alt mit den Pfeiltasten verschiebt eine Lage nach oben oder unten.',
  },
  live: {
    title: 'So ist es jetzt',
    nominal: 'Mit der Ausgleichslage in ihrer Nenndicke:',
    depth: 'Dicke',
    dry: 'Trocken',
    saturated: 'Gesättigt',
    held: 'Wasser gehalten',
    brief: ({ depthMm, dryKNm2, saturatedKNm2 }) => `${mmText(depthMm)} · ${loadNumber(dryKNm2)} / ${loadText(saturatedKNm2)}`,
    briefBay: (id, utilisation) => `Feld ${id} ${percentText(utilisation)}`,
    heldText: (heldLm2) => quantityText(heldLm2, 'l/m²'),
    inZones: 'In den Zonen',
    zoneLoads: (least, most) => (loadNumber(least) === loadNumber(most) ? loadText(most) : `${loadNumber(least)} bis ${loadText(most)}`),
    bay: (id) => `Ungünstigstes Feld darunter: ${id}`,
    bayUse: (utilisation) => percentText(utilisation),
    noBay: 'Kein Feld liegt darunter.',
    noZone: 'Er liegt in keiner Zone: Solange wird nichts geprüft.',
    findings: (count) => (count === 0 ? 'Kein Befund in seinen Zonen und Feldern' : many(count, 'Befund', 'Befunde')),
    findingsSay: 'In seinen Zonen und den Feldern darunter, gleich woher.',
    more: (count) => `und ${many(count, 'weiterer', 'weitere')}: siehe Befunde`,
  },
  layer: {
    title: (name) => name,
    up: 'Nach oben',
    down: 'Nach unten',
    above: 'Darüber einfügen',
    below: 'Darunter einfügen',
    swap: 'Material wechseln',
    remove: 'Entfernen',
    onlyOne: 'Die einzige Lage bleibt: Ein Aufbau hat mindestens eine.',
    voids: 'Die Schüttung darüber liegt in den Hohlräumen dieses Elements. Zuerst sie entfernen oder ein Element mit Hohlräumen wählen.',
    fixed: (mm) => `${thicknessOf(mm)} dick, wie das Material ist.`,
    thickness: 'Dicke',
    makeUp: 'Ausgleichslage: nimmt Höhenunterschiede auf',
    makeUpOther: (name) => `Ausgleichslage statt ${name}`,
    least: 'Kleinste',
    nominal: 'Nenndicke',
    greatest: 'Größte',
    orientation: 'Element verlegt',
    retention: 'Wasser haltend',
    drained: 'dränend',
    infill: (name) => `Füllt die Hohlräume von ${name}; die Dicke liegt darüber`,
    density: (dry, saturated) => `${numberText(dry, 0)} kg/m³ trocken, ${numberText(saturated, 0)} kg/m³ gesättigt`,
    areal: (dry, saturated) => `${numberText(dry, 2)} kg/m² trocken, ${numberText(saturated, 2)} kg/m² gesättigt`,
    edit: 'Werte des Materials',
    names: (name, count) => (count > 1 ? `${name} mit seiner Schüttung` : name),
  },
  table: {
    title: 'Lagen als Tabelle, von oben nach unten',
    layer: 'Lage',
    thickness: 'Dicke',
    dry: () => `Trocken, ${unitText('kN/m²')}`,
    saturated: () => `Gesättigt, ${unitText('kN/m²')}`,
    held: 'Gehalten, l/m²',
    vegetation: 'Bewuchs',
    total: 'Summe',
    up: (name) => `${name} nach oben`,
    down: (name) => `${name} nach unten`,
  },
  plants: {
    title: 'Bewuchs und Abfluss',
    form: 'Form',
    none: 'keiner',
    weight: 'Gewicht',
    least: (mm) => `Die Regeln verlangen darunter mindestens ${mmText(mm)} Substrat.`,
    unknown: 'Für diese Form kennen die Regeln keine kleinste Dicke.',
    runoff: 'Abflussbeiwerte statt der Tabelle',
    peak: 'Spitze',
    annual: 'Jahr',
    table: 'Ein leeres Feld nimmt den Wert der Tabelle.',
  },
  picker: {
    title: 'Material wählen',
    find: 'Name oder Art suchen',
    none: 'Kein Material mit diesen Worten.',
    thickness: (mm) => thicknessOf(mm),
    noSource: 'ohne Quelle',
    close: 'Liste der Materialien schließen',
  },
};
