/** Distances between axes as people write them. */

export type AxisTextRead =
  | { readonly ok: true; readonly stepsM: readonly number[] }
  /** `piece` is the part of the text that is not understood. */
  | { readonly ok: false; readonly why: 'empty' | 'not understood' | 'not above 0' | 'too many'; readonly piece: string }
  | { readonly ok: false; readonly why: 'ambiguous'; readonly piece: string; readonly choices: readonly string[] };

/**
 * Reads `5 x 6.00; 2 x 7.50`, `6 6 6 7,5`, `3 × 6,00 + 7,50`.
 * @param text - as typed
 * @returns distances in order [m], or why not
 */
export declare function readAxisText(text: string): AxisTextRead;

/**
 * Writes distances so that `readAxisText` reads them back.
 * @param stepsM - distances [m]
 * @param mark - decimal mark
 * @returns e.g. `5 x 6.00; 2 x 7.50`
 */
export declare function axisText(stepsM: readonly number[], mark: '.' | ','): string;
