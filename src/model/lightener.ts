/** Between the page and the worker that lightens: a scene as text goes in, an answer comes out. */

import type { Language } from './language.ts';
import type { LightenAnswer, LightenOptions, LightenProgress } from './lighten.ts';

export interface LightenAsk {
  /** The scene as it stands. */
  readonly text: string;
  /** Of the answer's findings and names. */
  readonly language: Language;
  readonly options: LightenOptions;
}

export interface Lightener {
  lighten(ask: LightenAsk, onProgress: (progress: LightenProgress) => void): Promise<LightenAnswer>;
}
