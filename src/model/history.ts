/** What was changed, in words' reach: for undo, redo and what is said of them. Plain data. */

import type { SceneFile } from './scene-file.ts';

/** Parts of a scene as people call them; their words stand in `ui/text/en-edits.ts`. */
export const EDIT_PARTS = [
  'scene',
  'outline',
  'opening',
  'levels',
  /** Levels that a zone's finish is given by. */
  'finish',
  'bay',
  'zone',
  'edge',
  'outlet',
  'column',
  'object',
  'route',
  'set-up area',
  'stockpile',
  'plant',
  'access point',
  'build-up',
  'layer',
  'material',
  'vehicle',
  'stage',
  'hold point',
  'view',
  'rain',
  'limits',
  'probe',
  'variant',
  /** Parts of different kinds. */
  'several',
] as const;
export type EditPart = (typeof EDIT_PARTS)[number];

export const EDIT_ACTS = [
  'add',
  'change',
  'move',
  'remove',
  'rename',
  'split',
  'merge',
  'copy',
  'order',
  'import',
  'derive',
  'lighten',
  'exchange',
] as const;
export type EditAct = (typeof EDIT_ACTS)[number];

/** What was done to which parts. */
export interface PartsEdit {
  readonly kind: 'parts';
  readonly act: EditAct;
  readonly part: EditPart;
  /** Names or ids, as they stand after the edit. */
  readonly names: readonly string[];
}

/** One thickness that was dragged, stepped or typed. */
export interface ThicknessEdit {
  readonly kind: 'thickness';
  readonly buildUp: string;
  /** Index in the build-up, from below. */
  readonly layer: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** One step: what a drag, a click or a typed number changed. */
export type SceneEdit = ThicknessEdit | PartsEdit;

/** Keys of a scene that an edit may exchange. */
export type PatchKey = Exclude<keyof SceneFile, '$schema' | 'format' | 'version'>;

/** New values for keys of a scene; null takes an optional key out. What is not named stays the very same. */
export type ScenePatch = { readonly [Key in PatchKey]?: SceneFile[Key] | null };

export interface HistoryView {
  /** What undo would take back, what redo would do again. */
  readonly undo: SceneEdit | null;
  readonly redo: SceneEdit | null;
  /** The scene is not the one last opened or saved. */
  readonly changed: boolean;
}

export const NO_HISTORY: HistoryView = { undo: null, redo: null, changed: false };
