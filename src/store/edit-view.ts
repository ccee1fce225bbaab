/** What of the scene is being changed, as far as the view store knows it. */

/** Pages of the editor beside the model. */
export const EDITORS = ['plan', 'build-ups', 'stages', 'variants', 'lighten', 'views'] as const;
export type EditorName = (typeof EDITORS)[number];

export const isEditor = (text: unknown): text is EditorName => EDITORS.some((editor) => editor === text);

export type { Selected } from '../model/selected.ts';
