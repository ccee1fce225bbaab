/** How layers behave under standing water, for the check whether light ones float. */

export interface UpliftLayer {
  /** Lifts where water stands in it. */
  readonly light: boolean;
  /** Share of its volume that pushes water aside [-]. */
  readonly displaces: number;
}
