/** Between the import page and its worker: what was read, made small enough to show; the drawing itself stays in the worker. */

import type { Answers, DrawingBox, ImportResult, LayerRole, LayerRoles } from './drawing.ts';
import type { DrawnPart, DrawnParts, PartEntries } from './drawn-parts.ts';
import type { Issue } from './issue.ts';
import type { Language } from './language.ts';
import type { PointM, PolygonM, SceneHistoryEntry } from './scene-file.ts';

export interface LayerView {
  readonly name: string;
  readonly hidden: boolean;
  readonly shapes: number;
  /** What was read, kind by kind with its count, in the language asked for. */
  readonly used: readonly string[];
  /** The same for what was left out. */
  readonly ignored: readonly string[];
  /** What it most likely is, by its name and content; null where nothing speaks for anything. */
  readonly guess: LayerRole | null;
}

/** Lines of a layer, thinned to what a screen shows. */
export interface PreviewLayer {
  readonly name: string;
  /** x, y from the preview's corner [m]. */
  readonly points: Float64Array;
  /** Index of the first point of each line in `points`; a line of one point is a place. */
  readonly starts: Uint32Array;
}

export interface Preview {
  /** Corner from which points are counted [m]. */
  readonly at: PointM;
  readonly layers: readonly PreviewLayer[];
  /** Lines and places too small or too many to be drawn. */
  readonly left: number;
}

/** What was read, without the shapes. */
export interface ReadView extends Omit<ImportResult, 'layers'> {
  readonly layers: readonly LayerView[];
  readonly preview: Preview;
}

export interface ReadAsk {
  readonly answers: Answers;
  /** Box of the deck that is open [m]. */
  readonly around: DrawingBox | null;
  readonly language: Language;
}

export interface DraftAsk {
  readonly roles: LayerRoles;
  readonly entries: PartEntries;
  /** Outline of the deck whose scene takes the parts; null for a scene of its own. */
  readonly deck: PolygonM | null;
  readonly language: Language;
}

/** What would be taken over. */
export interface DraftView {
  /** Parts that can stand in a scene. */
  readonly counts: Readonly<Partial<Record<DrawnPart, number>>>;
  /** Parts that still need an entry and are left out until then. */
  readonly waiting: Readonly<Partial<Record<DrawnPart, number>>>;
  readonly issues: readonly Issue[];
}

export interface Taken {
  readonly parts: DrawnParts;
  readonly history: readonly SceneHistoryEntry[];
  /** The scene of its own, as text; null where the parts make none. */
  readonly sceneText: string | null;
}

export interface Importer {
  /** Reads a file; `onProgress` hears shares from 0 to 1. Rejects where the file cannot be read from the disk. */
  open(file: Blob, name: string, ask: ReadAsk, onProgress: (share: number) => void): Promise<ReadView>;
  /** Reads the same file again with other answers. */
  again(ask: ReadAsk, onProgress: (share: number) => void): Promise<ReadView>;
  /** What was read, told in another language. */
  told(language: Language): Promise<ReadView>;
  draft(ask: DraftAsk): Promise<DraftView>;
  /** `on`: date of the history, as ISO 8601 writes it. */
  take(ask: DraftAsk, on: string): Promise<Taken>;
  /** Lets go of the file. */
  forget(): Promise<void>;
}
