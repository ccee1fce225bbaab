/** Lanes, reach and retaining edges as lists: what is worst first, and where to go. */

import type { Snapshot } from '../../model/engine.ts';
import type { Finding, Rule, Severity } from '../../model/finding.ts';
import type { Report, ReportReach, ReportRoute, ReportSetUpArea, ReportWall, ReportWallCase } from '../../model/report.ts';
import type { PointM, PolygonM, SceneAccessPoint, SceneFile } from '../../model/scene-file.ts';

/** Less than this is rounding [m], [m²] or a ratio. */
const ROUNDING = 1e-6;

export interface ListedLane extends ReportRoute {
  /** How much is missing to the width asked for; null where no width is drawn [m]. */
  readonly missingM: number | null;
  /** What is found too tight, too steep or too high. */
  readonly faults: { readonly radius: boolean; readonly gradient: boolean; readonly step: boolean };
  /** Corners of its line; empty where the scene has no such lane. */
  readonly line: readonly PointM[];
}

/** Lanes in the order of the file. */
export function listLanes({ routes = [], findings }: Pick<Report, 'routes' | 'findings'>, scene: SceneFile): ListedLane[] {
  const isFound = (rule: Rule, unit: string, value: number | null) =>
    findings.some((finding) => finding.rule === rule && finding.severity !== 'note' && finding.unit === unit && finding.value === value);
  return routes.map((route) => {
    const line = scene.traffic?.find(({ id }) => id === route.id)?.route ?? [];
    const missing = route.widthM === null ? null : route.requiredM - route.widthM;
    const faults = {
      radius: isFound('traffic.bend', 'm', route.leastOuterM),
      gradient: isFound('traffic.gradient', '%', route.steepestPercent),
      step: isFound('traffic.gradient', 'mm', route.stepMm),
    };
    return { ...route, line, faults, missingM: missing !== null && missing <= ROUNDING ? 0 : missing };
  });
}

export interface ListedArea extends ReportSetUpArea {
  readonly name: string;
  readonly outline: PolygonM;
  /** The rectangle that the rule asks for has no room in it. */
  readonly small: boolean;
  readonly faults: { readonly gradient: boolean; readonly step: boolean };
}

/** Set-up and movement areas in the order of the file. */
export function listAreas({ setUpAreas = [], findings }: Pick<Report, 'setUpAreas' | 'findings'>, scene: SceneFile): ListedArea[] {
  const isFound = (unit: string, value: number | null) =>
    findings.some(({ severity, unit: of, value: found }) => severity !== 'note' && of === unit && found === value);
  return setUpAreas.map((area): ListedArea => {
    const { name = '', outline = [] } = scene.setUpAreas?.find(({ id }) => id === area.id) ?? {};
    const { insideWidthM, requiredM } = area;
    const small = requiredM !== null && insideWidthM !== null && insideWidthM < requiredM.widthM - ROUNDING;
    const faults = { gradient: isFound('%', area.steepestPercent), step: isFound('mm', area.stepMm) };
    return { ...area, name, outline, small, faults };
  });
}

/** Point half-way along a line, and how long the line is. */
export function middleOf(line: readonly PointM[]): { readonly at: PointM; readonly lengthM: number } | null {
  const steps = line.slice(1).map(([x, y], i) => Math.hypot(x - (line[i] as PointM)[0], y - (line[i] as PointM)[1]));
  const lengthM = steps.reduce((sum, step) => sum + step, 0);
  let left = lengthM / 2;
  for (const [i, step] of steps.entries()) {
    const [ax, ay] = line[i] as PointM;
    const [bx, by] = line[i + 1] as PointM;
    if (left <= step && step > 0) return { at: [ax + ((bx - ax) * left) / step, ay + ((by - ay) * left) / step], lengthM };
    left -= step;
  }
  return line[0] ? { at: line[0], lengthM } : null;
}

export interface ListedWall extends ReportWall {
  /** Its findings, worst first. */
  readonly findings: readonly Finding[];
  readonly worst: Severity | null;
  readonly line: readonly PointM[];
}

const ORDER: readonly Severity[] = ['stop', 'check', 'note'];

/** Retaining edges, those with the worst finding first. */
export function listWalls({ walls = [], findings }: Pick<Report, 'walls' | 'findings'>, scene: SceneFile): ListedWall[] {
  const listed = walls.map((wall): ListedWall => {
    const own = findings.filter(({ rule, where }) => rule.startsWith('wall.') && where.object === wall.id);
    const worst = ORDER.find((severity) => own.some((finding) => finding.severity === severity)) ?? null;
    const drawn = scene.objects?.find(({ id, kind }) => id === wall.id && kind === 'retaining');
    return { ...wall, findings: own, worst, line: drawn?.kind === 'retaining' ? drawn.line : [] };
  });
  const rank = ({ worst }: ListedWall) => (worst === null ? ORDER.length : ORDER.indexOf(worst));
  return listed.sort((a, b) => rank(a) - rank(b));
}

/** Whether the whole base presses: the resultant lies in the middle third. */
export function inMiddleThird({ eccentricityM }: ReportWallCase, { middleThirdM }: Pick<ReportWall, 'middleThirdM'>): boolean {
  return Math.abs(eccentricityM) <= middleThirdM + ROUNDING;
}

/** What a stage needs to know of the site, in the order of the file. */
export interface StageSite {
  /** Names of machines on their ways in it. */
  readonly plant: readonly string[];
  readonly access: readonly SceneAccessPoint[];
  /** Null where nothing has to be brought, or reach is not looked at. */
  readonly reach: ReportReach | null;
}

/** Machines, access points and reach of a stage. */
export function stageSite(
  { report, scene, stages, runs }: Pick<Snapshot, 'report' | 'scene' | 'stages' | 'runs'>,
  stage: string,
): StageSite {
  const index = stages.findIndex(({ id }) => id === stage);
  return {
    plant: runs.filter((run) => run.stage === index).map(({ vehicle }) => vehicle),
    access: scene.accessPoints ?? [],
    reach: report.reach?.find((one) => one.stage === stage) ?? null,
  };
}
