/** Findings in German: what, where, why it matters, what to do. */

import type { FindingFact } from '../../model/finding.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { EDGES_DE } from './de-edges.ts';
import { LOAD_PLAN_DE } from './de-load-plan.ts';
import { ROUTES_DE } from './de-routes.ts';
import { BUILD_UPS_DE } from './de-rules.ts';
import { SITE_DE } from './de-site.ts';
import { WALLS_DE } from './de-walls.ts';
import { WATER_DE } from './de-water.ts';
import { WHEELS_DE } from './de-wheels.ts';
import { namesIn, numberDe, type RuleWords, type WhyWords } from './rule-words.ts';

/** Loads that are not as planned; undefined for any other fact. */
const siteWords = (fact: FindingFact, scene: SceneFile) => (SITE_DE as WhyWords)[String(fact.facts.why)]?.(fact, scene);

/** Load plans that contradict themselves, loads entered twice; undefined for any other fact. */
const planWords = (fact: FindingFact, scene: SceneFile) => (LOAD_PLAN_DE as WhyWords)[String(fact.facts.why)]?.(fact, scene);
const percent = (fact: FindingFact) => `${numberDe((100 * fact.value) / fact.limit, 1)} %`;
const kNm2 = (value: number) => `${numberDe(value)} kN/m²`;
const areaM2 = (value: number) => (value < 0.01 ? `${numberDe(value * 1e4, 1)} cm²` : `${numberDe(value)} m²`);
const over = (fact: FindingFact) => (fact.severity === 'stop' ? `um ${kNm2(fact.value - fact.limit)} überschritten` : 'nahe der Grenze');

const BASIS = { document: 'Dokument', revision: 'Index', date: 'Datum' } as const;

export const FINDINGS_DE: RuleWords = {
  'load.permanent': (f, scene) =>
    siteWords(f, scene) ??
    `Feld ${f.where.bay}: Die fertige Anlage bringt wassergesättigt auf ihrem ungünstigsten Bereich von 1 m × 1 m ${kNm2(f.value)}, zulässig sind ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Dort einen leichteren oder dünneren Aufbau wählen oder den Tragwerksplaner fragen.`,
  'load.imposed': (f, scene) =>
    planWords(f, scene) ??
    `Feld ${f.where.bay}: Eine Zone darauf soll ${kNm2(f.value)} Nutzlast tragen, zulässig sind ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Die Nutzung ändern oder den Tragwerksplaner fragen.`,
  'load.total': (f, scene) =>
    siteWords(f, scene) ??
    `Feld ${f.where.bay}: Ständige Last und Nutzlast erreichen zusammen auf dem ungünstigsten Bereich von 1 m × 1 m ${kNm2(f.value)}, insgesamt zulässig sind ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Aufbau oder Nutzung leichter machen oder den Tragwerksplaner fragen.`,
  'load.stage': (f) =>
    `Feld ${f.where.bay}, Bauzustand ${f.where.stage}: ${kNm2(f.value)} auf dem ungünstigsten Bereich von 1 m × 1 m während des Bauens, zulässig sind ${kNm2(f.limit)}${f.facts.ownLimit ? '' : ' (Grenze der fertigen Anlage, da keine Last für Bauzustände angegeben ist)'} (${percent(f)}, ${over(f)}). ${f.facts.heaped ? 'Weniger oder woanders aufhäufen' : 'Leichter machen, was dann dort liegt,'} oder den Tragwerksplaner fragen.`,
  'load.basis': (f, scene) => {
    const said = planWords(f, scene);
    if (said !== undefined) return said;
    const given = scene.deck.bays.find((bay) => bay.id === f.where.bay);
    if (given?.permanentKNm2 === undefined && given?.totalKNm2 === undefined) {
      return `Feld ${f.where.bay}: Weder eine zulässige ständige Last noch eine zulässige Gesamtlast ist angegeben, deshalb wird es nicht beurteilt. Den Tragwerksplaner um den Lastenplan bitten; bis dahin gilt dieses Feld nie als eingehalten.`;
    }
    const basis = given.basis ?? {};
    const missing = (['document', 'revision', 'date'] as const).filter((key) => !basis[key]?.trim());
    const listed = missing.map((key) => BASIS[key]).join(', ');
    return `Feld ${f.where.bay}: Die zulässige Last ist nicht bestätigt, in ihrer Grundlage ${missing.length === 1 ? 'fehlt' : 'fehlen'}: ${listed}. Den Tragwerksplaner um den Lastenplan bitten; bis dahin gilt dieses Feld nie als eingehalten.`;
  },
  'depth.short': (f) =>
    `Zone ${f.where.zone}: Auf ${areaM2(f.value)} ist kein Platz für den Aufbau: Die Fertighöhe fällt bis zu ${numberDe(Number(f.facts.mostMm), 0)} mm zu hoch aus. Dort einen dünneren Aufbau wählen oder die Fertighöhe anheben.`,
  'depth.over': (f) =>
    `Zone ${f.where.zone}: Auf ${areaM2(f.value)} erreicht der Aufbau die Fertighöhe nicht: Es fehlen bis zu ${numberDe(Number(f.facts.mostMm), 0)} mm. Eine dickere Ausgleichslage zulassen oder die Fertighöhe senken.`,
  'level.outside': (f) =>
    f.where.zone
      ? `Zone ${f.where.zone}: ${areaM2(f.value)} von ${areaM2(Number(f.facts.zoneM2))} liegen außerhalb ihrer Fertighöhen; dort gilt die Höhe des nächsten Höhenpunkts oder der nächsten Kante zwischen Punkten. Für den fehlenden Teil Höhen angeben.`
      : `${areaM2(f.value)} von ${areaM2(Number(f.facts.deckM2))} Decke liegen außerhalb der aufgemessenen Höhen; dort gilt die Höhe der nächsten aufgemessenen Kante. Den fehlenden Teil aufmessen.`,
  'zone.gap': (f) =>
    f.where.zone
      ? `Zone ${f.where.zone}: Ihr Aufbau hat noch keine Lagen, deshalb zählen ${areaM2(f.value)} als leere Decke. Lagen angeben.`
      : `${f.facts.count === 1 ? 'Eine Lücke' : `${f.facts.count} Lücken`} zwischen Zonen, insgesamt ${areaM2(f.value)}${f.facts.count === 1 ? '' : `, die größte ${areaM2(Number(f.facts.largestM2))}`}: Dort liegt kein Aufbau, und seine Last zählt nicht. Die Lücke schließen oder angeben, was dort liegt.`,
  'zone.overlap': (f) =>
    `Zonen ${f.where.zone} und ${f.facts.other} überlappen sich um ${areaM2(f.value)}; dort zählen beide Aufbauten. Eine gemeinsame Kante zeichnen.`,
  'zone.outside': (f) => {
    if (f.where.object) {
      return `${f.where.object}${f.where.stage ? ` in Bauzustand ${f.where.stage}` : ''} steht mit ${areaM2(f.value)} neben der Decke oder über einer Öffnung; ${numberDe(Number(f.facts.weightKN))} kN davon zählen nicht auf der Decke. Versetzen oder zeichnen, was es trägt.`;
    }
    return `Zone ${f.where.zone} liegt mit ${areaM2(f.value)} neben der Decke oder über einer Öffnung; dieser Teil bleibt außer Betracht. Die Zone am Rand abschneiden.`;
  },
  'bay.gap': (f) =>
    f.facts.beyond
      ? `Feld ${f.where.bay} hat gar keine Decke, daher wird damit nichts beurteilt. Seinen Umriss mit dem der Decke vergleichen.`
      : `${areaM2(f.value)} der Decke gehören zu keinem Feld (${f.facts.count === 1 ? 'eine Stelle' : `${f.facts.count} Stellen`}): Was sie tragen, ist nicht bekannt, und dort wird nichts beurteilt. Den Lastenplan vervollständigen.`,
  'bay.overlap': (f) =>
    `Felder ${f.where.bay} und ${f.facts.other} überlappen sich um ${areaM2(f.value)}; beide werden mit diesem Teil beurteilt, die Karten zeigen das schwächere. Eine gemeinsame Kante zeichnen.`,
  'stage.order': (f) =>
    `Zone ${f.where.zone}, Bauzustand ${f.where.stage}: „${f.facts.layer}“ kommt vor „${f.facts.below}“, gehört aber darüber. Die Reihenfolge der Bauzustände ändern.`,
  'stage.left': (f) =>
    f.where.object
      ? `${f.where.object} kommt in keinem Bauzustand vor, daher fehlt sein Gewicht in jedem. In den Bauzustand aufnehmen, der es bringt.`
      : `Zone ${f.where.zone}: Kein Bauzustand bringt ein: ${namesIn(f.facts.layers).join(', ')}; daher fehlt das Gewicht in jedem Bauzustand. Die Funktion in einen Bauzustand aufnehmen.`,
  ...BUILD_UPS_DE,
  ...EDGES_DE,
  ...WHEELS_DE,
  ...WALLS_DE,
  ...WATER_DE,
  ...ROUTES_DE,
};
