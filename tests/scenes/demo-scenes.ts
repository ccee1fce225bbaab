/** Opens the demo scenes for their tests, and the few sums every hand check needs. */

import { readdirSync, readFileSync } from 'node:fs';
import type { Report } from '../../src/model/report.ts';
import type { PolygonM, SceneFile, SceneZone } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';

const FOLDER = new URL('../../scenes/', import.meta.url);
export const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.scene.json'));
export const TEXTS = new Map(FILES.map((name) => [name, readFileSync(new URL(name, FOLDER), 'utf8')]));

export function open(name: string): { scene: SceneFile; report: Report } {
  const { project, issues } = readProject(TEXTS.get(`${name}.scene.json`) ?? '');
  if (!project) throw new Error(issues.map((issue) => `${issue.path}: ${issue.got}`).join('\n'));
  return project;
}

/** Shoelace rule, relative to the first point. */
export function areaM2(polygon: PolygonM): number {
  const [[x0, y0]] = polygon;
  const twice = polygon.reduce((sum, [x, y], i) => {
    const [nx, ny] = polygon[(i + 1) % polygon.length];
    return sum + (x - x0) * (ny - y0) - (nx - x0) * (y - y0);
  }, 0);
  return Math.abs(twice) / 2;
}

export const zoneAreaM2 = (zone: SceneZone) => areaM2(zone.outline) - (zone.holes ?? []).reduce((sum, hole) => sum + areaM2(hole), 0);

/** Area of all zones with one of these build-ups. */
export function laidM2(scene: SceneFile, ...buildups: string[]): number {
  return scene.zones.filter((zone) => buildups.includes(zone.buildup)).reduce((sum, zone) => sum + zoneAreaM2(zone), 0);
}

/** One line per finding: severity, rule, and where it is. */
export const told = (report: Report) =>
  report.findings.map(({ severity, rule, where: { bay, zone, stage, object } }) =>
    [severity, rule, bay, zone, stage, object].filter((word) => word !== undefined).join(' '),
  );

export const kN = (kg: number) => (kg * 9.81) / 1000;
