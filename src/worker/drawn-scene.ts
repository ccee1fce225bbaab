/** What of a scene is shown at once: its picture, built on what the last one holds, and what else rests on the calculation alone. */

import { onDatum, type Surface } from '../core/levels/surface.ts';
import { datumOf, pictureInput, sourceOn } from '../export/picture-source.ts';
import { buildPicture, type PictureMemory } from '../mesh/build-picture.ts';
import type { SectionSource } from '../mesh/section-source.ts';
import type { Preview } from '../model/engine.ts';
import type { Calculated } from '../project/evaluate-project.ts';
import type { Session } from '../project/session.ts';

export class DrawnScene {
  private memory: PictureMemory | undefined;
  private drawn: SectionSource | undefined;
  /** The same surface must stay the same object, or nothing drawn could be kept. */
  private lowered = new WeakMap<Surface, Surface>();
  private loweredBy = 0;

  /** Draws the scene as it stands; `evaluatedMs` is what its calculation took. */
  draw(session: Session, evaluatedMs: number): Omit<Preview, 'map'> {
    const calculated: Calculated = session.standing();
    const { scene, evaluation } = calculated;
    const datumM = datumOf(calculated);
    const on = pictureInput(calculated, datumM, (surface) => this.lower(surface, datumM));
    const { picture, memory } = buildPicture(on, this.memory);
    this.memory = memory;
    this.drawn = sourceOn(calculated, on, picture, datumM);
    return {
      scene,
      grid: evaluation.prepared.ground.grid,
      originM: evaluation.input.originM,
      picture,
      datumM,
      bayAt: evaluation.bayAt,
      buildUps: session.buildUps(),
      history: session.history(),
      evaluatedMs,
    };
  }

  /** What sections and models are made from. */
  get source(): SectionSource {
    if (!this.drawn) throw new RangeError('createEngine: no scene is open');
    return this.drawn;
  }

  private lower(surface: Surface, datumM: number): Surface {
    if (datumM !== this.loweredBy) this.lowered = new WeakMap();
    this.loweredBy = datumM;
    if (datumM === 0) return surface;
    const known = this.lowered.get(surface) ?? onDatum(surface, datumM);
    this.lowered.set(surface, known);
    return known;
  }
}
