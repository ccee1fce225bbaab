/** Findings of lanes, machines in stages and reach, in German words. */

import type { FindingFact } from '../../model/finding.ts';
import { ROLES_DE } from '../../model/roles.ts';
import type { BEND_EN, GRADIENT_EN, ROOM_EN, ROUTES_EN, WIDTH_EN } from './en-routes.ts';
import { byWhy, type Like, namesIn, numberDe } from './rule-words.ts';

/** A limit never reads as kept by rounding: what is too little is rounded down, what is too much up. */
const down = (value: number, digits = 2) => numberDe(Math.floor(value * 10 ** digits + 1e-6) / 10 ** digits, digits);
const up = (value: number, digits = 2) => numberDe(Math.ceil(value * 10 ** digits - 1e-6) / 10 ** digits, digits);

const ASK = 'Es entscheidet die Brandschutzdienststelle: dort nachfragen.';
const rule = ({ facts }: FindingFact) => `„${facts.rule}“ (${facts.country})`;
const place = ({ facts }: FindingFact) => `${facts.kind === 'movement' ? 'Bewegungsfläche' : 'Aufstellfläche'} ${facts.area}`;
const lane = ({ facts }: FindingFact) => `Feuerwehrzufahrt ${facts.route}`;

const things = ({ facts }: FindingFact) => namesIn(facts.names).join(', ');
const stands = ({ value }: FindingFact) => (value > 1 ? 'stehen' : 'steht');

const WIDTH: Like<typeof WIDTH_EN> = {
  straight: (f) =>
    `${lane(f)} ist ${down(f.value)} m breit gezeichnet; ${rule(f)} verlangt ${numberDe(f.limit)} m. Ein Fahrzeug hätte Räder neben der dafür gebauten Fläche. Die Zufahrt und ihren Unterbau verbreitern. ${ASK}`,
  bend: (f) =>
    `${lane(f)} ist ${down(f.value)} m breit gezeichnet; in einer Kurve mit ${numberDe(Number(f.facts.outerM))} m Außenradius, dem weitesten Bogen in der gezeichneten Linie, verlangt ${rule(f)} ${numberDe(f.limit)} m. Die Hinterachse schneidet die Kurve. Die Kurve verbreitern oder weiter ausziehen. ${ASK}`,
  undrawn: (f) =>
    `${lane(f)}: Es ist keine Breite gezeichnet, ${rule(f)} verlangt ${numberDe(f.limit)} m. Die Breite zeichnen, die gebaut wird und das Fahrzeug trägt. ${ASK}`,
  bounded: (f) =>
    `${lane(f)} ist ${down(f.value)} m breit gezeichnet. Wo sie auf mehr als ${numberDe(Number(f.facts.overM), 0)} m Länge beidseitig durch Wände oder Ähnliches begrenzt ist, verlangt ${rule(f)} ${numberDe(f.limit)} m; in der Datei ist das nirgends so, und was nicht in der Datei steht, ist nicht bekannt. ${ASK}`,
  blocked: (f) =>
    `${lane(f)}: In ihrer Breite von ${numberDe(Number(f.facts.widthM))} m ${stands(f)}: ${things(f)}. Ein Fahrzeug kommt nicht vorbei. Die Zufahrt frei halten. ${ASK}`,
  walls: (f) =>
    `${lane(f)}: Wände, Aufkantungen oder Ähnliches lassen auf ${down(Number(f.facts.lengthM), 1)} m Länge nur ${down(f.value)} m zwischen sich; wo beide Seiten auf mehr als ${numberDe(Number(f.facts.overM), 0)} m begrenzt sind, verlangt ${rule(f)} ${numberDe(f.limit)} m. Die Mannschaft kommt nicht am Fahrzeug vorbei und kann die Türen nicht öffnen. Eine Seite zurücksetzen oder öffnen. ${ASK}`,
  setUpWidth: (f) =>
    `${place(f)}: Ein ${numberDe(Number(f.facts.lengthM))} m langes Rechteck passt nur ${down(f.value)} m breit hinein; ${rule(f)} verlangt ${numberDe(Number(f.facts.widthM))} m mal ${numberDe(Number(f.facts.lengthM))} m. Das Fahrzeug kann nicht abstützen. Die tragende Fläche verbreitern. ${ASK}`,
  setUpLength: (f) =>
    `${place(f)}: Ein ${numberDe(Number(f.facts.widthM))} m breites Rechteck passt nur ${down(f.value)} m lang hinein; ${rule(f)} verlangt ${numberDe(Number(f.facts.widthM))} m mal ${numberDe(Number(f.facts.lengthM))} m. Das Fahrzeug steht teils neben der dafür gebauten Fläche. Die tragende Fläche verlängern. ${ASK}`,
};

const BEND: Like<typeof BEND_EN> = {
  radius: (f) =>
    `${lane(f)}: ${Number(f.facts.count) > 1 ? `${f.facts.count} Kurven sind zu eng, die engste, eine Richtungsänderung um` : 'die Richtungsänderung um'} ${numberDe(Number(f.facts.turnDeg), 0)}°, hat mit dem weitesten Bogen in der gezeichneten Linie einen Außenradius von ${down(f.value)} m; ${rule(f)} lässt keinen unter ${numberDe(f.limit)} m zu. Ein Fahrzeug kommt nicht herum. Längere Schenkel oder eine weitere Kurve zeichnen. ${ASK}`,
  transition: (f) =>
    `${lane(f)}: Vor oder nach einer Kurve sind nur ${down(f.value)} m Zufahrt gezeichnet; ${rule(f)} verlangt ${numberDe(f.limit, 0)} m Übergang zwischen Gerade und Kurve. Prüfen, ob die Zufahrt jenseits der Zeichnung gleich breit weitergeht. ${ASK}`,
};

const GRADIENT: Like<typeof GRADIENT_EN> = {
  gradient: (f) =>
    `${lane(f)}: Der Belag steigt oder fällt in Längsrichtung um ${up(f.value)} % (Zone ${f.where.zone}); ${rule(f)} lässt ${numberDe(f.limit, 0)} % zu. Das hohe Ende tiefer legen oder die Steigung strecken. ${ASK}`,
  setUp: (f) =>
    `${lane(f)}: Der Belag steigt oder fällt in Längsrichtung um ${up(f.value)} % (Zone ${f.where.zone}). Das darf befahren werden, eine Leiter wird dort aber nicht aufgestellt: ${rule(f)} lässt dafür ${numberDe(f.limit, 0)} % zu, in jeder Richtung. ${ASK}`,
  step: (f) =>
    `${lane(f)}: Beim Übergang in Zone ${f.where.zone} hat der Belag eine Stufe von ${up(f.value, 0)} mm; ${rule(f)} lässt ${numberDe(f.limit, 0)} mm zu. Beide Beläge auf gleiche Höhe bringen. ${ASK}`,
  setUpSlope: (f) =>
    `${place(f)}: Der Belag steigt oder fällt an der steilsten Stelle um ${up(f.value)} %, in beliebiger Richtung (Zone ${f.where.zone}); ${rule(f)} lässt ${numberDe(f.limit, 0)} % zu. Eine Leiter steht dort nicht waagerecht. Den Belag flacher anlegen. ${ASK}`,
  setUpStep: (f) =>
    `${place(f)}: Wo zwei Zonen aneinanderstoßen, hat der Belag eine Stufe von ${up(f.value, 0)} mm (Zone ${f.where.zone}); mehr als ${numberDe(f.limit, 0)} mm sind kein ebener Grund für Abstützungen. Beide Beläge auf gleiche Höhe bringen. ${ASK}`,
};

const ROOM: Like<typeof ROOM_EN> = {
  standing: (f) => `${place(f)}: Darin ${stands(f)}: ${things(f)}. Für das Fahrzeug und seine Abstützungen frei halten. ${ASK}`,
  strip: (f) =>
    `${place(f)}: Im Streifen von ${numberDe(Number(f.facts.stripM))} m daneben, den ${rule(f)} frei von Hindernissen verlangt, damit die Leiter ausschwenken kann, ${stands(f)}: ${things(f)}. Versetzen, was dort steht. ${ASK}`,
  runOut: (f) =>
    `${place(f)}: Auf den ${numberDe(Number(f.facts.runOutM))} m davor oder dahinter, wo ${rule(f)} einen Übergang verlangt, ${stands(f)}: ${things(f)}. Versetzen, was dort steht. ${ASK}`,
  far: (f) =>
    `${place(f)} liegt ${up(f.value)} m vom Gebäude entfernt, ${f.facts.lies === 'along' ? 'längs' : 'quer'} dazu; ${rule(f)} lässt ${numberDe(f.limit)} m zu (weniger bei hohen Brüstungen). Die Leiter reicht nicht hin. Die Fläche näher heranrücken. ${ASK}`,
  near: (f) =>
    `${place(f)} liegt ${down(f.value)} m vom Gebäude entfernt, längs dazu; ${rule(f)} verlangt mindestens ${numberDe(f.limit)} m. Die Leiter steht zu steil. Die Fläche weiter wegrücken. ${ASK}`,
  beyond: (f) =>
    `${place(f)}: ${numberDe(f.value)} m² davon liegen neben der Decke oder über einer Öffnung. Über diesen Teil ist hier nichts bekannt: Auch er muss das Fahrzeug tragen. ${ASK}`,
};

function plantWords({ where, value, facts }: FindingFact): string {
  const ground =
    facts.role === 'membrane'
      ? 'der bloßen Abdichtung'
      : facts.role === 'drainage element'
        ? `offenen Elementen („${facts.layer}“, nicht gefüllt)`
        : `„${facts.layer}“ (${ROLES_DE[String(facts.role) as keyof typeof ROLES_DE] ?? facts.role})`;
  const zone = where.zone ? `in Zone ${where.zone}` : 'wo keine Zone gezeichnet ist';
  return `Bauzustand ${where.stage}: ${facts.vehicle} fährt auf ${ground}, ${zone}, auf ${numberDe(value)} m². Beurteilt nach dem, was zu Beginn des Bauzustands dort liegt; was dabei erst eingebaut wird, zählt nicht. Räder reißen die Abdichtung auf oder zerdrücken, was darauf liegt, und niemand sieht es. Zuerst füllen und überdecken, einen anderen Weg nehmen oder mit Kran oder Schlauch fördern; was die Decke trägt, entscheidet der Tragwerksplaner.`;
}

function reachWords({ where, value, facts }: FindingFact): string {
  const means = facts.blown ? 'und kein Kran oder Schlauch reicht hin' : 'und kein Kran reicht hin';
  const unknown = facts.noReach ? ` Für ${facts.noReach} ist keine Reichweite angegeben, daher gilt von dort nichts als erreicht.` : '';
  return `Zone ${where.zone}, Bauzustand ${where.stage}: ${numberDe(value)} von ${numberDe(Number(facts.zoneM2))} m² sind nicht erreichbar, wenn sie an der Reihe sind: Von keinem Tor und keiner Rampe führt befahrbarer Grund hin, ${means}.${unknown} Von hinten nach vorn einbauen, bevor der Weg abgeschnitten ist, von Hand über Bohlen fördern oder einen anderen Kran oder Schlauch einplanen.`;
}

export const ROUTES_DE: Like<typeof ROUTES_EN> = {
  'traffic.width': byWhy(WIDTH),
  'traffic.bend': byWhy(BEND),
  'traffic.gradient': byWhy(GRADIENT),
  'traffic.setup': byWhy(ROOM),
  'stage.plant': plantWords,
  'stage.reach': reachWords,
};
