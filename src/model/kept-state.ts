/** A copy of the open scene that the browser keeps, so that a closed tab loses nothing. */

export interface KeptState {
  /** Counts up. */
  readonly id: number;
  /** The run of the app that made it. */
  readonly session: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly name: string;
  readonly fileName: string;
  readonly text: string;
  /** Holds what lies in no file. */
  readonly unsaved: boolean;
}
