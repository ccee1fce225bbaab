/** Parts of a scene as drawings give them, and what a person adds where a drawing cannot know. Plain data. */

import type {
  PointM,
  PolygonM,
  SceneBay,
  SceneBuildUp,
  SceneDeck,
  SceneEdge,
  SceneLevels,
  SceneObject,
  SceneOutlet,
  SceneZone,
} from './scene-file.ts';

export type SceneColumn = NonNullable<SceneDeck['columns']>[number];
export type SceneTree = Extract<SceneObject, { kind: 'tree' }>;

export const DRAWN_PARTS = ['outline', 'openings', 'levels', 'bays', 'zones', 'edges', 'columns', 'outlets', 'trees'] as const;
export type DrawnPart = (typeof DRAWN_PARTS)[number];

/** Each is left out where the drawing has none. */
export interface DrawnParts {
  readonly outline?: PolygonM;
  readonly openings?: readonly PolygonM[];
  readonly levels?: SceneLevels;
  readonly bays?: readonly SceneBay[];
  readonly zones?: readonly SceneZone[];
  readonly edges?: readonly SceneEdge[];
  readonly columns?: readonly SceneColumn[];
  readonly outlets?: readonly SceneOutlet[];
  readonly trees?: readonly SceneTree[];
  /** Build-ups that the zones need. */
  readonly buildups?: readonly SceneBuildUp[];
}

/** What becomes of the parts of the open scene; an outline can only be replaced. */
export type Taking = 'add' | 'replace' | 'leave';
export type Takings = Readonly<Partial<Record<DrawnPart, Taking>>>;

/** One entry for all parts of a kind that wait for it. */
export interface PartEntries {
  /** Build-up of zones; `STARTER` makes one of a protection fleece alone, to be completed. */
  readonly buildup?: string;
  readonly columnM?: PointM;
  readonly tree?: { readonly massKg: number; readonly spreadM: number };
  readonly edge?: Pick<SceneEdge, 'kind' | 'membraneTopM'>;
}

/** Id of the build-up that zones of a drawing may begin with. */
export const STARTER = 'to-design';
