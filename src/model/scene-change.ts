/** What differs between two scenes, each change once; the words stand elsewhere. */

export const CHANGE_GROUPS = ['load plan', 'geometry', 'build-ups', 'materials', 'stages', 'objects', 'water', 'traffic', 'other'] as const;
export type ChangeGroup = (typeof CHANGE_GROUPS)[number];

export const CHANGED_ITEMS = [
  'scene',
  'deck',
  'bay',
  'column',
  'outlet',
  'edge',
  'material',
  'vehicle',
  'build-up',
  'zone',
  'object',
  'lane',
  'set-up area',
  'stage',
  'access point',
  'view',
  'probe',
] as const;
export type ChangedItem = (typeof CHANGED_ITEMS)[number];

export type ChangeKind = 'added' | 'removed' | 'renamed' | 'moved' | 'changed' | 'reordered';

/** A value as it stands in the file; null where it is not given. */
export type ChangedValue = unknown;

export interface SceneChange {
  readonly group: ChangeGroup;
  readonly kind: ChangeKind;
  readonly item: ChangedItem;
  /** Empty for scene and deck; of a renamed item its old one. */
  readonly id: string;
  /** What the scene calls it besides, where it does. */
  readonly name?: string;
  /** Path within the item, e.g. `permanentKNm2` or `layers[2].thicknessMm`; empty for the item as a whole. */
  readonly what: string;
  readonly before: ChangedValue;
  readonly after: ChangedValue;
  /** Empty for what is no quantity. */
  readonly unit: string;
  /** Of outlines. */
  readonly area?: { readonly addedM2: number; readonly removedM2: number };
}

export interface BeforeAfter {
  readonly before: number | null;
  readonly after: number | null;
}

/** What the reports of two scenes tell of bays and zones that differ; null where one has none. */
export interface ReportChange {
  readonly bays: readonly {
    readonly id: string;
    /** Finished garden. */
    readonly utilisation: BeforeAfter;
    readonly worstStageUtilisation: BeforeAfter;
  }[];
  readonly zones: readonly {
    readonly id: string;
    readonly meanDepthMm: BeforeAfter;
    readonly greatestKNm2: BeforeAfter;
  }[];
  readonly saturatedKN: BeforeAfter;
}
