/** What was found in a file that is no scene: drawing, map or list of points, as plain data in metres. */

import type { Issue } from './issue.ts';
import type { Point3M, PointM } from './scene-file.ts';

export type DrawingKind = 'dxf' | 'ifc' | 'geojson' | 'landxml' | 'table' | 'scene';

interface ShapeBase {
  /** Name, number or label that the file gives it. */
  readonly name?: string;
  /** Block it was drawn in, where it was drawn once and inserted. */
  readonly block?: string;
}

export type DrawingShape =
  /** Closed; the first point is not repeated. `levelM` where the whole shape lies at one level other than 0. */
  | (ShapeBase & {
      readonly kind: 'ring';
      readonly points: readonly PointM[];
      readonly holes?: readonly (readonly PointM[])[];
      readonly levelM?: number;
    })
  | (ShapeBase & { readonly kind: 'line'; readonly points: readonly PointM[]; readonly levelsM?: readonly number[] })
  | (ShapeBase & { readonly kind: 'point'; readonly at: PointM; readonly levelM: number | null })
  /** `levelM` where the text reads as a level, e.g. `+35.42`. */
  | (ShapeBase & { readonly kind: 'text'; readonly at: PointM; readonly says: string; readonly levelM: number | null })
  | (ShapeBase & { readonly kind: 'circle'; readonly at: PointM; readonly radiusM: number })
  /** Where a block stands; what is drawn in it comes as shapes of its own. */
  | (ShapeBase & { readonly kind: 'block'; readonly at: PointM; readonly turnDeg: number });

export interface DrawingLayer {
  readonly name: string;
  /** Switched off or frozen in the drawing; read all the same. */
  readonly hidden: boolean;
  readonly shapes: readonly DrawingShape[];
  /** Entities read, by their kind in the file. */
  readonly used: Readonly<Record<string, number>>;
  /** Entities left out, by their kind and why. */
  readonly ignored: Readonly<Record<string, number>>;
}

export interface DrawingBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export type FactValue = string | number;

/** One change made while reading, or one thing worth knowing; `says` is the sentence kept in the history. */
export interface Mend {
  readonly code: string;
  readonly layer?: string;
  readonly values: Readonly<Record<string, FactValue>>;
  readonly says: string;
}

export interface Choice {
  readonly value: string;
  readonly code: string;
  readonly values: Readonly<Record<string, FactValue>>;
  readonly says: string;
  /** What the drawing would measure [m]. */
  readonly sizeM?: PointM;
}

export interface Question {
  readonly id: string;
  readonly code: string;
  readonly values: Readonly<Record<string, FactValue>>;
  readonly says: string;
  readonly choices: readonly Choice[];
  /** Best guess. */
  readonly guess: string;
  /** What the result was made with: the answer, else the guess. */
  readonly taken: string;
  readonly answered: boolean;
  /** The file itself settles it: shown, may be changed, needs no answer. */
  readonly certain: boolean;
}

/** Answers by question id. */
export type Answers = Readonly<Record<string, string>>;

/** A list of points as it stands in the file, for picking columns. */
export interface TablePreview {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface ImportResult {
  readonly name: string;
  readonly bytes: number;
  /** Null where the file is of no kind that can be read. */
  readonly kind: DrawingKind | null;
  readonly layers: readonly DrawingLayer[];
  /** Around all shapes, in metres as placed; null where there are none. */
  readonly box: DrawingBox | null;
  readonly points: number;
  readonly questions: readonly Question[];
  readonly mends: readonly Mend[];
  readonly issues: readonly Issue[];
  readonly table?: TablePreview;
  /** Layers whose levels were thinned, as one surface. */
  readonly thinned?: readonly string[];
  /** The decoded text of a scene file. */
  readonly sceneText?: string;
}

export const LAYER_ROLES = [
  'outline',
  'openings',
  'bays',
  'zones',
  'edges',
  'columns',
  'outlets',
  'levels',
  'trees',
  'axes',
  'ignore',
] as const;
export type LayerRole = (typeof LAYER_ROLES)[number];
/** Role by layer name. */
export type LayerRoles = Readonly<Record<string, LayerRole>>;

/** Straight axes in two directions at right angles. */
export interface AxisGrid {
  /** Where the first axes of both directions cross. */
  readonly at: PointM;
  /** Turn of the first direction, counter-clockwise from +x [°]. */
  readonly turnDeg: number;
  /** Distances between neighbouring axes, counted along the first direction. */
  readonly alongM: readonly number[];
  /** The same across it, to the left. */
  readonly acrossM: readonly number[];
}

/** A part the import has found and that a person must complete before it can stand in a scene. */
export type WaitingPart =
  | {
      readonly part: 'bay' | 'zone';
      readonly id: string;
      readonly name?: string;
      readonly outline: readonly PointM[];
      readonly holes?: readonly (readonly PointM[])[];
      readonly needs: readonly string[];
    }
  | {
      readonly part: 'column' | 'tree';
      readonly id: string;
      readonly at: PointM;
      readonly spreadM?: number;
      readonly needs: readonly string[];
    }
  | { readonly part: 'edge'; readonly id: string; readonly line: readonly PointM[]; readonly needs: readonly string[] };

export type Levels = { readonly spots: readonly Point3M[]; readonly breaklines?: readonly (readonly Point3M[])[] };
