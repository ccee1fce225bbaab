/** What an editor of build-ups shows of the report and of the materials it chooses from. */

import type { CatalogueView, MaterialView } from '../../model/catalogue-view.ts';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import type { Finding, Severity } from '../../model/finding.ts';
import { ROLES, type Role } from '../../model/roles.ts';
import type { SceneFile, SceneMaterial } from '../../model/scene-file.ts';
import { type BayVerdict, bayVerdicts } from './bay-verdict.ts';
import { holdsWords } from './search.ts';

/** A material one can choose: of the scene, or of the catalogue where the scene has none of that id. */
export interface Choice {
  readonly material: SceneMaterial;
  readonly own: boolean;
  /** One line on where its weight comes from; empty for none. */
  readonly source: string;
}

export function choicesOf(scene: Pick<SceneFile, 'materials'>, catalogue: CatalogueView): Choice[] {
  const own = scene.materials ?? [];
  const ids = new Set(own.map(({ id }) => id));
  return [
    ...own.map((material): Choice => ({ material, own: true, source: material.source?.trim() ?? '' })),
    ...catalogue.materials
      .filter(({ material }) => !ids.has(material.id))
      .map((view) => ({ material: view.material, own: false, source: sourceOf(view) })),
  ];
}

const sourceOf = ({ sources }: MaterialView): string =>
  sources.find(({ number }) => number === 'density' || number === 'areal')?.text ?? '';

/** The choice of an id; scenes are checked, so that it is there once the catalogue is. */
export const choiceOf = (choices: readonly Choice[], id: string): Choice | undefined => choices.find(({ material }) => material.id === id);

export interface ChoiceGroup {
  /** Null for those of the scene. */
  readonly role: Role | null;
  readonly choices: readonly Choice[];
}

/** The scene's own first, then role by role, one role before the others; only those with all words of a search in name, role or short name. */
export function groupChoices(choices: readonly Choice[], search: string, roleName: (role: Role) => string, first?: Role): ChoiceGroup[] {
  const found = choices.filter(({ material: { id, name, role } }) => holdsWords(`${name} ${roleName(role)} ${id}`, search));
  const roles = first === undefined ? ROLES : [first, ...ROLES.filter((role) => role !== first)];
  const groups: ChoiceGroup[] = [
    { role: null, choices: found.filter(({ own }) => own) },
    ...roles.map((role) => ({ role, choices: found.filter(({ own, material }) => !own && material.role === role) })),
  ];
  return groups.filter((group) => group.choices.length > 0);
}

/** The bay under a build-up that comes off worst; null where none lies beneath. */
export function worstBay({ report, scene }: Pick<Snapshot, 'report' | 'scene'>, buildUp: Pick<BuildUpView, 'bays'>): BayVerdict | null {
  return bayVerdicts(report, scene).find(({ id }) => buildUp.bays.includes(id)) ?? null;
}

const ORDER: readonly Severity[] = ['stop', 'check', 'note'];

/** A sentence of the report with how often it is said. */
export interface BuildUpFinding {
  readonly finding: Finding;
  readonly count: number;
}

/** Findings of the build-up's zones, then of the bays beneath them, gravest first; one line for each rule in a kind of place. */
export function findingsUnder(findings: readonly Finding[], { zones, bays }: Pick<BuildUpView, 'zones' | 'bays'>): BuildUpFinding[] {
  const lines = new Map<string, BuildUpFinding>();
  for (const finding of findings) {
    const { zone, bay } = finding.where;
    const inZone = zone !== undefined && zones.includes(zone);
    if (!inZone && !(zone === undefined && bay !== undefined && bays.includes(bay))) continue;
    const key = `${finding.severity} ${finding.rule} ${inZone}`;
    const known = lines.get(key);
    lines.set(key, { finding: known?.finding ?? finding, count: (known?.count ?? 0) + 1 });
  }
  const rank = ({ finding }: BuildUpFinding) => ORDER.indexOf(finding.severity) * 2 + (finding.where.zone === undefined ? 1 : 0);
  return [...lines.values()].sort((a, b) => rank(a) - rank(b));
}

/** Least and greatest saturated load on average over each of the zones [kN/m²]; null where there is none. */
export function zoneLoads(report: Snapshot['report'], zones: readonly string[]): readonly [number, number] | null {
  const means = report.zones.filter(({ id, areaM2 }) => zones.includes(id) && areaM2 > 0).map(({ saturatedKNm2 }) => saturatedKNm2.mean);
  return means.length === 0 ? null : [Math.min(...means), Math.max(...means)];
}
