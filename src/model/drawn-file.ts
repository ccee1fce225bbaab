/** Drawings and models that can be saved, and what may be said about them. */

import type { PointM } from './scene-file.ts';

export const DRAWN_KINDS = ['section svg', 'section dxf', 'plan svg', 'plan dxf', 'model glb'] as const;
export type DrawnKind = (typeof DRAWN_KINDS)[number];

export interface DrawnOptions {
  readonly language: 'en' | 'de';
  /** 50 for 1:50; without it 50 for sections and 100 for plans. */
  readonly scale?: number;
  /** Line of the section, coordinates of the file: needed by a section, marked on a plan. */
  readonly line?: readonly PointM[];
  /** As written at the ends of that line; A–A without it. */
  readonly name?: string;
  /** Heights of a section are drawn this many times as large as lengths; a DXF is always true. */
  readonly exaggeration?: number;
  /** Index of the stage that a section shows; null for the finished garden. */
  readonly stage?: number | null;
  /** Written in the title block. */
  readonly date?: string;
  /** Written large in each bay of a plan, by its id, and what they are. */
  readonly bayTexts?: ReadonlyMap<string, string>;
  readonly bayTextsAre?: string;
}
