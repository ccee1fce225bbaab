/** A part of a scene that is pointed at: in the plan, the model or a list. */

import type { EditPart } from './history.ts';

/** Parts without an id of their own go by their place; `src/edit/point-lists.ts` says how. */
export interface Selected {
  readonly part: EditPart;
  readonly id: string;
}
