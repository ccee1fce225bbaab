/** Build-up rules in words: what is found, why it matters, what to do. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import { byWhy, number, type WhyWords, type Words } from './rule-words.ts';

const mm = (value: number) => `${number(value, 0)} mm`;

/** By the `why` of each rule in `src/core/rules`. */
export const BUILD_UP_WHYS_EN = {
  protection: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: no protection lies on the membrane, ${facts.layer} comes first. Its edges and the grit of the works press holes into the membrane. Lay a protection fleece beneath everything but a root barrier.`,
  root: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: ${facts.layer} over a membrane that does not resist roots, and no root barrier at the bottom. Roots grow through the membrane and its seams. Lay a root barrier on the membrane, with nothing but protection or a slip sheet beneath it.`,
  slip: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: no slip layer lies on the protection beneath ${facts.layer}${facts.trafficked ? ', where wheels run' : ''}. Paved or driven surfaces push sideways and drag the membrane with them. Lay a slip sheet straight on the protection.`,
  drainage: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: no drainage lies beneath ${facts.layer}. Water stands in it: roots drown, a base course softens and freezes. Lay a drainage element or drainage fill beneath it.`,
  filter: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: ${facts.layer} lies on the coarser ${facts.below} without a filter between them. Fines wash down and clog what should drain. Lay a filter fleece between the two.`,
  separation: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: ${facts.above} lies on ${facts.layer} without a separation. Its grains work into the voids and joints of the fill, which then weighs more and settles. Lay a separation fleece on the fill.`,
  orientation: orientationWords,
  infill: ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: ${facts.layer} lies open beneath wheels. Empty cells buckle under a wheel. Fill them with drainage fill, flush or a little over, before anything drives there.`,
  vegetation: ({ where, facts, value, limit }: FindingFact) =>
    `Zone ${where.zone}: ${mm(value)} of substrate at the thinnest place, for "${facts.form}" at least ${mm(limit)} are asked for. Plants dry out or topple where roots have no depth. Lay more substrate there, or plant what needs less.`,
  'unknown form': ({ where, facts, value }: FindingFact) =>
    `Zone ${where.zone}: no least depth of substrate is known for "${facts.form}", so its ${mm(value)} at the thinnest place are not judged. Name a form of the catalogue, or give its depth under limits.substrateMm.`,
  subsoil: ({ where, facts, value, limit }: FindingFact) =>
    `Zone ${where.zone}: ${facts.layer} reaches ${mm(value)} deep, and no mineral subsoil takes over below ${mm(limit)}. Organic matter rots without air down there and the ground sinks. Lay subsoil without organic matter beneath it (a material that is "mineral": true).`,
  base: ({ where, value, limit }: FindingFact) =>
    `Zone ${where.zone}: wheels run ${value > 0 ? `on ${mm(value)} of base course` : 'where no base course lies'}, at least ${mm(limit)} are usual. A thin base spreads wheels too little and ruts. Lay a thicker base course, or keep wheels off.`,
  lift: ({ where, facts, value, limit }: FindingFact) =>
    `Zone ${where.zone}: ${facts.layer} is ${mm(value)} thick, and at most ${mm(limit)} compact at once. Lay and compact it in ${facts.lifts} lifts.`,
  'tree depth': ({ where, value, limit }: FindingFact) =>
    `Tree ${where.object}${where.zone === undefined ? '' : ` in zone ${where.zone}`} stands in ${mm(value)} of substrate, at least ${mm(limit)} are asked for. A tree without depth is thrown by wind and dries out. Raise a mound, or plant a smaller one.`,
  'tree volume': ({ where, facts, value, limit }: FindingFact) =>
    `Tree ${where.object} in zone ${where.zone} has ${number(value, 1)} m³ of substrate to root in${Number(facts.sharedBy) > 1 ? `, its share among ${facts.sharedBy} trees` : ''}; at least ${number(limit, 1)} m³ are asked for. A tree short of soil stays small and dries out. Make the planted area larger or deeper.`,
} satisfies WhyWords;

function orientationWords({ where, facts }: FindingFact): string {
  const laid =
    facts.laid === '' ? 'is laid no way up that the build-up says' : `is laid ${facts.laid === 'drained' ? 'to drain' : 'to hold water'}`;
  if (facts.wanted === 'retention') {
    return `Zone ${where.zone}: ${facts.layer} ${laid}, under planting. There it should hold water for the plants. Lay it for retention.`;
  }
  return `Zone ${where.zone}: ${facts.layer} ${laid}, under ${facts.trafficked ? 'wheels' : 'paving'}. Water held there softens what lies on it and freezes. Lay it to drain.`;
}

const TEXT = byWhy(BUILD_UP_WHYS_EN);

export const BUILD_UPS_EN = {
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
} satisfies Partial<Record<Rule, Words>>;
