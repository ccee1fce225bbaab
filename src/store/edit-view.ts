/** What of the scene is being changed, as far as the view store knows it. */

import type { EditPart } from '../model/history.ts';

/** Pages of the editor beside the model. */
export const EDITORS = ['plan', 'build-ups', 'stages', 'variants'] as const;
export type EditorName = (typeof EDITORS)[number];

export const isEditor = (text: unknown): text is EditorName => EDITORS.some((editor) => editor === text);

/** A part of the scene, chosen in the plan, the model or a list. Parts without an id of their own go by their index. */
export interface Selected {
  readonly part: EditPart;
  readonly id: string;
}
