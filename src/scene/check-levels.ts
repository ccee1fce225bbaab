/** Checks nets of levels: enough points, and never two levels at one place. */

import type { Point3M, PointM, SceneFile } from '../model/scene-file.ts';
import { tooManyPoints } from './check-shapes.ts';
import type { IssueList } from './issue-list.ts';
import type { Path } from './path.ts';
import { distinctPoints } from './ring.ts';
import { along, boxOf, contactOf, type Segment, samePoint, side } from './segment-contact.ts';
import { pointText } from './shape-faults.ts';
import { type Box, sweepBoxes } from './sweep-boxes.ts';
import { phrase, worded } from './words/phrase.ts';

interface Net {
  readonly spots: readonly Point3M[];
  readonly breaklines?: readonly (readonly Point3M[])[];
}

/** Points nearer to each other than this are one place [m]. */
const SAME_PLACE_M = 0.001;
/** Levels nearer to each other than this are the same [m]; the slack takes up the rounding of decimal numbers. */
const SAME_LEVEL_M = 0.001 + 1e-9;
/** Places shown for one net. */
const MOST_PLACES = 5;

/** Checks the deck's levels and each zone's own. */
export function checkLevels(scene: SceneFile, issues: IssueList): void {
  if (scene.deck.levels !== undefined) checkNet(scene.deck.levels, ['deck', 'levels'], issues);
  for (const [i, zone] of scene.zones.entries()) {
    if (zone.finish?.kind === 'spots') checkNet(zone.finish, ['zones', i, 'finish'], issues);
  }
}

function checkNet(net: Net, path: Path, issues: IssueList): void {
  const lines = net.breaklines ?? [];
  for (const [i, line] of lines.entries()) {
    if (distinctPoints(line.map(planOf)) >= 2) continue;
    issues.error('LINE_TOO_FEW_POINTS', [...path, 'breaklines', i], () =>
      worded(phrase('shortBreakline', { n: line.length }), phrase('breaklinePoints'), phrase('addPointsOrDropBreakline')),
    );
  }
  const all = [...net.spots, ...lines.flat()];
  if (tooManyPoints(all.length, path, issues)) return;
  if (all.length === 0) {
    issues.error('LEVELS_EMPTY', path, () =>
      worded(phrase('noLevels'), phrase('aLevel'), phrase(path[0] === 'deck' ? 'addDeckLevels' : 'addFinishLevels')),
    );
    return;
  }
  if (onOneLine(all.map(planOf))) {
    issues.warning('LEVELS_NO_NET', path, () =>
      worded(phrase('levelsOnLine', { n: all.length }), phrase('threeLevels'), phrase('levelBeside')),
    );
  }
  checkConflicts(net, path, issues);
}

function planOf([x, y]: Point3M): PointM {
  return [x, y];
}

function onOneLine(points: readonly PointM[]): boolean {
  const [first] = points;
  const second = points.find((p) => first !== undefined && !samePoint(p, first));
  if (first === undefined || second === undefined) return true;
  return points.every((p) => side(first, second, p) === 0);
}

interface LevelPoint extends Box {
  readonly point: Point3M;
  readonly path: Path;
}

interface LevelEdge extends Segment {
  readonly from: Point3M;
  readonly to: Point3M;
  readonly path: Path;
}

type LevelItem = LevelPoint | LevelEdge;

function checkConflicts(net: Net, path: Path, issues: IssueList): void {
  let found = 0;
  sweepBoxes(itemsOf(net, path), (s, t) => {
    if ('point' in s && 'point' in t) found += comparePoints(s, t, issues);
    else if ('point' in s) found += 'from' in t ? comparePointEdge(s, t, issues) : 0;
    else found += 'point' in t ? comparePointEdge(t, s, issues) : compareEdges(s, t, issues);
    return found < MOST_PLACES;
  });
}

function itemsOf(net: Net, path: Path): readonly LevelItem[] {
  const items: LevelItem[] = net.spots.map((point, i) => levelPoint(point, [...path, 'spots', i]));
  for (const [i, line] of (net.breaklines ?? []).entries()) {
    for (const [j, point] of line.entries()) {
      const place = [...path, 'breaklines', i, j];
      items.push(levelPoint(point, place));
      const to = line[j + 1];
      if (to === undefined || samePoint(planOf(point), planOf(to))) continue;
      const [a, b] = [planOf(point), planOf(to)];
      items.push({ a, b, from: point, to, path: place, ...boxOf(a, b) });
    }
  }
  return items;
}

function levelPoint(point: Point3M, path: Path): LevelPoint {
  return { point, path, ...boxOf(planOf(point), planOf(point), SAME_PLACE_M) };
}

function distance(p: PointM, q: PointM): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}

/** 1 where the two contradict each other and that is reported, else 0. */
function comparePoints(s: LevelPoint, t: LevelPoint, issues: IssueList): 0 | 1 {
  if (distance(planOf(s.point), planOf(t.point)) > SAME_PLACE_M) return 0;
  return compareLevels(s, t.point[2], t.path, issues);
}

/** A spot on a breakline; near the breakline's ends the points themselves are compared. */
function comparePointEdge(s: LevelPoint, edge: LevelEdge, issues: IssueList): 0 | 1 {
  const p = planOf(s.point);
  if (distance(p, edge.a) <= SAME_PLACE_M || distance(p, edge.b) <= SAME_PLACE_M) return 0;
  const share = shareOf(p, edge);
  if (share <= 0 || share >= 1 || distance(p, along(edge, share)) > SAME_PLACE_M) return 0;
  return compareLevels(s, levelAt(edge, share), edge.path, issues);
}

function compareLevels(s: LevelPoint, level: number, otherPath: Path, issues: IssueList): 0 | 1 {
  if (Math.abs(s.point[2] - level) <= SAME_LEVEL_M) return 0;
  const line = issues.lineAt(otherPath);
  const two = { at: pointText(planOf(s.point)), a: s.point[2].toFixed(3), b: level.toFixed(3) };
  issues.error('LEVELS_CONFLICT', s.path, () =>
    worded(
      line === undefined ? phrase('levelsElsewhere', two) : phrase('levelsInLine', { ...two, line }),
      phrase('oneLevelAtPlace'),
      phrase('stepApart'),
    ),
  );
  return 1;
}

function compareEdges(s: LevelEdge, t: LevelEdge, issues: IssueList): 0 | 1 {
  const contact = contactOf(s, t);
  if (contact?.kind !== 'cross') return 0;
  const [levelS, levelT] = [levelAt(s, shareOf(contact.at, s)), levelAt(t, shareOf(contact.at, t))];
  if (Math.abs(levelS - levelT) <= SAME_LEVEL_M) return 0;
  const line = issues.lineAt(t.path);
  const two = { at: pointText(contact.at), a: levelS.toFixed(3), b: levelT.toFixed(3) };
  issues.error('BREAKLINES_CROSS', s.path, () =>
    worded(
      line === undefined ? phrase('breaklinesCross', two) : phrase('breaklinesCrossInLine', { ...two, line }),
      phrase('oneLevelAtCrossing'),
      phrase('sameLevelThere'),
    ),
  );
  return 1;
}

function shareOf(p: PointM, edge: LevelEdge): number {
  const [dx, dy] = [edge.b[0] - edge.a[0], edge.b[1] - edge.a[1]];
  return ((p[0] - edge.a[0]) * dx + (p[1] - edge.a[1]) * dy) / (dx * dx + dy * dy);
}

function levelAt(edge: LevelEdge, share: number): number {
  return edge.from[2] + share * (edge.to[2] - edge.from[2]);
}
