/** Findings of lanes, machines in stages and reach, in words. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import { byWhy, namesIn, number, type WhyWords, type Words } from './rule-words.ts';

/** A limit never reads as kept by rounding: what is too little is rounded down, what is too much up. */
const down = (value: number, digits = 2) => number(Math.floor(value * 10 ** digits + 1e-6) / 10 ** digits, digits);
const up = (value: number, digits = 2) => number(Math.ceil(value * 10 ** digits - 1e-6) / 10 ** digits, digits);

const ASK = 'The fire authority decides: ask it.';
const rule = ({ facts }: FindingFact) => `${facts.rule} (${facts.country})`;
const place = ({ facts }: FindingFact) => `${facts.kind === 'movement' ? 'Movement' : 'Set-up'} area ${facts.area}`;
const lane = ({ facts }: FindingFact) => `Lane ${facts.route}`;

const things = ({ facts }: FindingFact) => namesIn(facts.names).join(', ');
const stands = ({ value }: FindingFact) => (value > 1 ? 'stand' : 'stands');

export const WIDTH_EN = {
  straight: (f: FindingFact) =>
    `${lane(f)} is drawn ${down(f.value)} m wide; ${rule(f)} asks for ${number(f.limit)} m. An appliance would have wheels off the ground made for it. Widen the lane and what bears it. ${ASK}`,
  bend: (f: FindingFact) =>
    `${lane(f)} is drawn ${down(f.value)} m wide; in a bend of ${number(Number(f.facts.outerM))} m outer radius, the widest arc that fits the line drawn, ${rule(f)} asks for ${number(f.limit)} m. The rear axle cuts the corner. Widen the bend or draw it out. ${ASK}`,
  undrawn: (f: FindingFact) =>
    `${lane(f)}: no width is drawn, ${number(f.limit)} m are asked for by ${rule(f)}. Draw the width that is built and bears the appliance. ${ASK}`,
  bounded: (f: FindingFact) =>
    `${lane(f)} is drawn ${down(f.value)} m wide. Where walls or the like bound it on both sides over more than ${number(Number(f.facts.overM), 0)} m, ${rule(f)} asks for ${number(f.limit)} m; nothing in the file does, and what is not in the file is not known. ${ASK}`,
  blocked: (f: FindingFact) =>
    `${lane(f)}: ${things(f)} ${stands(f)} in its width of ${number(Number(f.facts.widthM))} m. An appliance can't pass. Keep the lane free. ${ASK}`,
  walls: (f: FindingFact) =>
    `${lane(f)}: walls, upstands or the like leave ${down(f.value)} m between them over ${down(Number(f.facts.lengthM), 1)} m; where both sides are bounded over more than ${number(Number(f.facts.overM), 0)} m, ${rule(f)} asks for ${number(f.limit)} m. Crews can't get past the appliance or open its doors. Move one side back or open it. ${ASK}`,
  setUpWidth: (f: FindingFact) =>
    `${place(f)}: a rectangle ${number(Number(f.facts.lengthM))} m long fits into it only ${down(f.value)} m wide; ${rule(f)} asks for ${number(Number(f.facts.widthM))} m by ${number(Number(f.facts.lengthM))} m. The appliance can't put its supports out. Widen what bears it. ${ASK}`,
  setUpLength: (f: FindingFact) =>
    `${place(f)}: a rectangle ${number(Number(f.facts.widthM))} m wide fits into it only ${down(f.value)} m long; ${rule(f)} asks for ${number(Number(f.facts.widthM))} m by ${number(Number(f.facts.lengthM))} m. The appliance stands partly on ground not made for it. Lengthen what bears it. ${ASK}`,
} satisfies WhyWords;

export const BEND_EN = {
  radius: (f: FindingFact) =>
    `${lane(f)}: ${Number(f.facts.count) > 1 ? `${f.facts.count} bends are too tight, the tightest, a turn of` : 'the turn of'} ${number(Number(f.facts.turnDeg), 0)}°, has an outer radius of ${down(f.value)} m with the widest arc that fits the line drawn; ${rule(f)} permits none under ${number(f.limit)} m. An appliance can't get round. Draw longer legs or a wider bend. ${ASK}`,
  transition: (f: FindingFact) =>
    `${lane(f)}: only ${down(f.value)} m of lane are drawn before or after a bend; ${rule(f)} asks for ${number(f.limit, 0)} m over which it passes from straight to bend. Check that the lane goes on as wide beyond what is drawn. ${ASK}`,
} satisfies WhyWords;

export const GRADIENT_EN = {
  gradient: (f: FindingFact) =>
    `${lane(f)}: the finish rises or falls ${up(f.value)} % along it (zone ${f.where.zone}); ${rule(f)} permits ${number(f.limit, 0)} %. Lower the high end or lengthen the slope. ${ASK}`,
  setUp: (f: FindingFact) =>
    `${lane(f)}: the finish rises or falls ${up(f.value)} % along it (zone ${f.where.zone}). That may be driven, but no ladder is set up there: ${rule(f)} permits ${number(f.limit, 0)} % for that, in every direction. ${ASK}`,
  step: (f: FindingFact) =>
    `${lane(f)}: the finish steps by ${up(f.value, 0)} mm where it enters zone ${f.where.zone}; ${rule(f)} permits ${number(f.limit, 0)} mm. Make both finishes meet. ${ASK}`,
  setUpSlope: (f: FindingFact) =>
    `${place(f)}: the finish rises or falls ${up(f.value)} % at its steepest, in any direction (zone ${f.where.zone}); ${rule(f)} permits ${number(f.limit, 0)} %. A ladder does not stand level there. Make the finish flatter. ${ASK}`,
  setUpStep: (f: FindingFact) =>
    `${place(f)}: the finish steps by ${up(f.value, 0)} mm where two zones meet (zone ${f.where.zone}); more than ${number(f.limit, 0)} mm is no even ground for supports. Make both finishes meet. ${ASK}`,
} satisfies WhyWords;

export const ROOM_EN = {
  standing: (f: FindingFact) => `${place(f)}: ${things(f)} ${stands(f)} in it. Keep it free for the appliance and its supports. ${ASK}`,
  strip: (f: FindingFact) =>
    `${place(f)}: ${things(f)} ${stands(f)} in the strip of ${number(Number(f.facts.stripM))} m beside it that ${rule(f)} wants free of obstacles, so that the ladder can swing out. Move what stands there. ${ASK}`,
  runOut: (f: FindingFact) =>
    `${place(f)}: ${things(f)} ${stands(f)} within ${number(Number(f.facts.runOutM))} m before or behind it, where ${rule(f)} wants a transition. Move what stands there. ${ASK}`,
  far: (f: FindingFact) =>
    `${place(f)} lies ${up(f.value)} m from the building, ${f.facts.lies} it; ${rule(f)} permits ${number(f.limit)} m (less for high sills). The ladder does not reach. Move the area nearer. ${ASK}`,
  near: (f: FindingFact) =>
    `${place(f)} lies ${down(f.value)} m from the building, along it; ${rule(f)} asks for at least ${number(f.limit)} m. The ladder stands too steep. Move the area away. ${ASK}`,
  beyond: (f: FindingFact) =>
    `${place(f)}: ${number(f.value)} m² of it lie off the deck or over an opening. Of that part nothing is known here: it must bear the appliance too. ${ASK}`,
} satisfies WhyWords;

function plantWords({ where, value, facts }: FindingFact): string {
  const ground =
    facts.role === 'membrane'
      ? 'the bare membrane'
      : facts.role === 'drainage element'
        ? `open elements (${facts.layer}, not filled)`
        : `${facts.layer} (${facts.role})`;
  const place = where.zone ? `in zone ${where.zone}` : 'where no zone is drawn';
  return `Stage ${where.stage}: ${facts.vehicle} drives on ${ground} ${place}, on ${number(value)} m². Judged by what lies there when the stage begins; what it lays itself does not count. Wheels tear the membrane or crush what lies on it, and nobody sees it. Fill and cover first, go another way, or bring it by crane or hose; the structural engineer decides what the deck carries.`;
}

function reachWords({ where, value, facts }: FindingFact): string {
  const means = facts.blown ? 'no crane or hose reaches it' : 'no crane reaches it';
  const unknown = facts.noReach ? ` No reach is given for ${facts.noReach}, so nothing counts as reached from there.` : '';
  return `Zone ${where.zone}, stage ${where.stage}: ${number(value)} of ${number(Number(facts.zoneM2))} m² can't be reached when their turn comes: from no gate or ramp leads ground that bears plant, and ${means}.${unknown} Lay it from far to near before the way is cut off, bring it by hand on boards, or plan another crane or hose.`;
}

export const ROUTES_EN = {
  'traffic.width': byWhy(WIDTH_EN),
  'traffic.bend': byWhy(BEND_EN),
  'traffic.gradient': byWhy(GRADIENT_EN),
  'traffic.setup': byWhy(ROOM_EN),
  'stage.plant': plantWords,
  'stage.reach': reachWords,
} satisfies Partial<Record<Rule, Words>>;
