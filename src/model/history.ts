/** What was changed, in words' reach: for undo, redo and what is said of them. Plain data. */

/** One step: what a drag, a click or a typed number changed. */
export interface SceneEdit {
  readonly kind: 'thickness';
  readonly buildUp: string;
  /** Index in the build-up, from below. */
  readonly layer: number;
  readonly fromMm: number;
  readonly toMm: number;
}

export interface HistoryView {
  /** What undo would take back, what redo would do again. */
  readonly undo: SceneEdit | null;
  readonly redo: SceneEdit | null;
  /** The scene is not the one last opened or saved. */
  readonly changed: boolean;
}

export const NO_HISTORY: HistoryView = { undo: null, redo: null, changed: false };
