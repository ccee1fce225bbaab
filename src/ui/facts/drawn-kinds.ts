/** What each drawn kind becomes in the scene, and how it is drawn: as an area, a line or a place. */

import type { Given } from '../../edit/new-part.ts';
import type { PlanForm, PlanPart, PointList } from '../../edit/point-lists.ts';
import type { DrawnKind } from '../../store/plan-draw.ts';

export interface DrawnAs {
  readonly part: PlanPart;
  readonly form: PlanForm;
  /** Kind within the part. */
  readonly kind?: string;
}

export const DRAWN_AS: Readonly<Record<DrawnKind, DrawnAs>> = {
  zone: { part: 'zone', form: 'area' },
  hole: { part: 'zone', form: 'area' },
  'finish level': { part: 'finish', form: 'point' },
  'finish breakline': { part: 'finish', form: 'line' },
  bay: { part: 'bay', form: 'area' },
  outline: { part: 'outline', form: 'area' },
  opening: { part: 'opening', form: 'area' },
  upstand: { part: 'edge', form: 'line', kind: 'upstand' },
  threshold: { part: 'edge', form: 'line', kind: 'threshold' },
  outlet: { part: 'outlet', form: 'point', kind: 'outlet' },
  overflow: { part: 'outlet', form: 'point', kind: 'overflow' },
  column: { part: 'column', form: 'point' },
  level: { part: 'levels', form: 'point' },
  breakline: { part: 'levels', form: 'line' },
  tree: { part: 'object', form: 'point', kind: 'tree' },
  line: { part: 'object', form: 'line', kind: 'line' },
  block: { part: 'object', form: 'area', kind: 'block' },
  retaining: { part: 'object', form: 'line', kind: 'retaining' },
  route: { part: 'route', form: 'line' },
  'set-up': { part: 'set-up area', form: 'area', kind: 'set-up' },
  movement: { part: 'set-up area', form: 'area', kind: 'movement' },
  'access point': { part: 'access point', form: 'point' },
  stockpile: { part: 'stockpile', form: 'area' },
  plant: { part: 'plant', form: 'line' },
};

/** Kinds by what they belong to, as the menu lists them. */
export const KIND_GROUPS = {
  garden: ['zone', 'hole', 'finish level', 'finish breakline', 'tree', 'line', 'block', 'retaining'],
  deck: ['bay', 'outline', 'opening', 'column', 'upstand', 'threshold', 'outlet', 'overflow', 'level', 'breakline'],
  site: ['route', 'set-up', 'movement', 'access point', 'stockpile', 'plant'],
} as const satisfies Readonly<Record<string, readonly DrawnKind[]>>;
export type KindGroup = keyof typeof KIND_GROUPS;

/** Only drawn while a stage is shown. */
export const needsStage = (kind: DrawnKind): boolean => kind === 'stockpile' || kind === 'plant';

/** The kind that a list of points was drawn as. */
export function kindOfList({ part, kind, form, piece }: Pick<PointList, 'part' | 'kind' | 'form' | 'piece'>): DrawnKind | null {
  if (typeof piece === 'number') return 'hole';
  if (part === 'levels') return form === 'point' ? 'level' : 'breakline';
  if (part === 'finish') return form === 'point' ? 'finish level' : 'finish breakline';
  const kinds = Object.entries(DRAWN_AS) as [DrawnKind, DrawnAs][];
  return kinds.find(([name, as]) => as.part === part && name !== 'hole' && (as.kind === undefined || as.kind === kind))?.[0] ?? null;
}

/** What is known of a new part from its kind. */
export const givenOf = ({ kind }: DrawnAs): Pick<Given, 'kind'> => (kind === undefined ? {} : { kind });
