/** What a section is drawn from, and the layers along its line. */

import type { DeckInput } from '../model/deck-input.ts';
import type { Part, Picture } from '../model/picture.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Furniture } from './picture-input.ts';
import type { SectionRun } from './section.ts';

export interface SectionSource {
  readonly scene: SceneFile;
  readonly input: DeckInput;
  readonly furniture: Furniture;
  readonly picture: Picture;
  /** In order, given or derived. */
  readonly stages: readonly { readonly id: string; readonly name: string }[];
  /** Level that is height 0 of the picture and the furniture [m]. */
  readonly datumM: number;
}

/** Layers of one zone over an unbroken stretch of the line. */
export interface ZoneRun {
  readonly zone: number;
  readonly run: SectionRun;
  /** Per layer; only those placed at the stage shown are drawn. */
  readonly parts: readonly Part[];
  readonly placed: readonly boolean[];
}
