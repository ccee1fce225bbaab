/** Build-up rules in German words: what is found, why it matters, what to do. */

import type { FindingFact } from '../../model/finding.ts';
import type { BUILD_UP_WHYS_EN, BUILD_UPS_EN } from './en-rules.ts';
import { byWhy, type Like, numberDe } from './rule-words.ts';

const mm = (value: number) => `${numberDe(value, 0)} mm`;

/** By the `why` of each rule in `src/core/rules`. */
const BUILD_UP_WHYS: Like<typeof BUILD_UP_WHYS_EN> = {
  protection: ({ where, facts }) =>
    `Zone ${where.zone}: Auf der Abdichtung liegt keine Schutzlage, als Erstes kommt „${facts.layer}“. Kanten und Körner drücken beim Bauen Löcher in die Abdichtung. Unter alles außer einer Wurzelschutzbahn ein Schutzvlies legen.`,
  root: ({ where, facts }) =>
    `Zone ${where.zone}: „${facts.layer}“ über einer Abdichtung, die nicht wurzelfest ist, und unten fehlt die Wurzelschutzbahn. Wurzeln wachsen durch die Abdichtung und ihre Nähte. Eine Wurzelschutzbahn auf die Abdichtung legen, darunter nur Schutzlage oder Gleitlage.`,
  slip: ({ where, facts }) =>
    `Zone ${where.zone}: Auf der Schutzlage unter „${facts.layer}“ fehlt die Gleitlage${facts.trafficked ? ', obwohl dort gefahren wird' : ''}. Befestigte oder befahrene Flächen schieben und ziehen die Abdichtung mit. Eine Gleitlage direkt auf die Schutzlage legen.`,
  drainage: ({ where, facts }) =>
    `Zone ${where.zone}: Unter „${facts.layer}“ liegt keine Dränung. Darin steht Wasser: Wurzeln ersticken, eine Tragschicht weicht auf und friert. Ein Dränelement oder eine Dränschüttung darunter legen.`,
  filter: ({ where, facts }) =>
    `Zone ${where.zone}: „${facts.layer}“ liegt ohne Filtervlies auf dem gröberen „${facts.below}“. Feinteile werden ausgewaschen und verstopfen, was entwässern soll. Ein Filtervlies dazwischen legen.`,
  separation: ({ where, facts }) =>
    `Zone ${where.zone}: „${facts.above}“ liegt ohne Trennlage auf „${facts.layer}“. Körner wandern in die Hohlräume und Fugen der Schüttung, die dann schwerer wird und sich setzt. Ein Trennvlies auf die Schüttung legen.`,
  orientation: orientationWords,
  infill: ({ where, facts }) =>
    `Zone ${where.zone}: „${facts.layer}“ liegt ungefüllt unter Rädern. Leere Zellen knicken unter einem Rad ein. Mit Dränschüttung bündig oder etwas darüber füllen, bevor dort gefahren wird.`,
  vegetation: ({ where, facts, value, limit }) =>
    `Zone ${where.zone}: ${mm(value)} Substrat an der dünnsten Stelle, für „${facts.form}“ werden mindestens ${mm(limit)} verlangt. Ohne Wurzelraum vertrocknen Pflanzen oder kippen um. Dort mehr Substrat einbauen oder pflanzen, was weniger braucht.`,
  'unknown form': ({ where, facts, value }) =>
    `Zone ${where.zone}: Für „${facts.form}“ ist keine Mindestdicke des Substrats bekannt, daher werden die ${mm(value)} an der dünnsten Stelle nicht beurteilt. Eine Vegetationsform des Katalogs nennen oder die Dicke unter limits.substrateMm angeben.`,
  subsoil: ({ where, facts, value, limit }) =>
    `Zone ${where.zone}: „${facts.layer}“ reicht ${mm(value)} tief, und unterhalb von ${mm(limit)} folgt kein mineralischer Unterboden. Organische Stoffe faulen dort ohne Luft, und die Fläche sackt. Darunter Unterboden ohne organische Stoffe einbauen (ein Material mit "mineral": true).`,
  base: ({ where, value, limit }) =>
    `Zone ${where.zone}: Räder fahren ${value > 0 ? `auf ${mm(value)} Tragschicht` : 'dort, wo keine Tragschicht liegt'}, üblich sind mindestens ${mm(limit)}. Eine dünne Tragschicht verteilt Räder zu wenig und bekommt Spurrinnen. Eine dickere Tragschicht einbauen oder Räder fernhalten.`,
  lift: ({ where, facts, value, limit }) =>
    `Zone ${where.zone}: „${facts.layer}“ ist ${mm(value)} dick, auf einmal lassen sich höchstens ${mm(limit)} verdichten. In ${facts.lifts} Einbaulagen einbauen und verdichten.`,
  'tree depth': ({ where, value, limit }) =>
    `Baum ${where.object}${where.zone === undefined ? '' : ` in Zone ${where.zone}`} steht in ${mm(value)} Substrat, verlangt werden mindestens ${mm(limit)}. Einen Baum ohne Wurzeltiefe wirft der Wind um, und er vertrocknet. Anhügeln oder einen kleineren pflanzen.`,
  'tree volume': ({ where, facts, value, limit }) =>
    `Baum ${where.object} in Zone ${where.zone} hat ${numberDe(value, 1)} m³ durchwurzelbares Substrat${Number(facts.sharedBy) > 1 ? `, sein Anteil unter ${facts.sharedBy} Bäumen` : ''}; verlangt werden mindestens ${numberDe(limit, 1)} m³. Ein Baum mit zu wenig Boden bleibt klein und vertrocknet. Die Pflanzfläche größer oder tiefer machen.`,
};

function orientationWords({ where, facts }: FindingFact): string {
  const laid =
    facts.laid === ''
      ? 'liegt ohne Angabe der Lage im Aufbau'
      : facts.laid === 'drained'
        ? 'ist zum Entwässern verlegt'
        : 'ist zum Speichern verlegt';
  if (facts.wanted === 'retention') {
    return `Zone ${where.zone}: „${facts.layer}“ ${laid}, unter Bepflanzung. Dort soll es Wasser für die Pflanzen speichern. Zum Speichern verlegen.`;
  }
  return `Zone ${where.zone}: „${facts.layer}“ ${laid}, unter ${facts.trafficked ? 'Rädern' : 'Belag'}. Gespeichertes Wasser weicht auf, was darauf liegt, und friert. Zum Entwässern verlegen.`;
}

const TEXT = byWhy(BUILD_UP_WHYS);

export const BUILD_UPS_DE: Like<typeof BUILD_UPS_EN> = {
  'order.protection': TEXT,
  'order.root': TEXT,
  'order.slip': TEXT,
  'order.drainage': TEXT,
  'order.filter': TEXT,
  'order.separation': TEXT,
  'order.orientation': TEXT,
  'order.infill': TEXT,
  'depth.vegetation': TEXT,
  'depth.base': TEXT,
  'depth.lift': TEXT,
};
