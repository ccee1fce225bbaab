/** What a scheme for a deck decides, and the variants of it that a scene keeps. */

import type { SceneFile } from './scene-file.ts';

/** Keys of a scene that a scheme decides; deck, limits, rain and views are the same for all. */
export const SCHEME_KEYS = [
  'materials',
  'vehicles',
  'buildups',
  'zones',
  'objects',
  'traffic',
  'setUpAreas',
  'stages',
  'accessPoints',
] as const satisfies readonly (keyof SceneFile)[];
export type SchemeKey = (typeof SCHEME_KEYS)[number];

export type SceneScheme = Pick<SceneFile, SchemeKey>;

export interface SceneVariant {
  readonly id: string;
  readonly name: string;
  readonly says?: string;
  readonly scheme: SceneScheme;
}
