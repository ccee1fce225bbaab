/**
 * An upright section through the deck as plain data: metres along the line drawn on the plan, and levels as in the file.
 * Made by `src/mesh`; drawings and panels show it.
 */

import type { PartKind } from './picture.ts';
import type { PointM } from './scene-file.ts';

/** Along the line and level [m]. */
export type SectionPoint = readonly [number, number];

/** One filled area of the cut. */
export interface SectionPiece {
  readonly kind: PartKind;
  /** Zone of a layer; object, edge … of anything else; '' for the slab. */
  readonly owner: string;
  /** Position in the zone's build-up from the bottom, -1 where it is no layer. */
  readonly layer: number;
  /** Material of a layer, else what it is called. */
  readonly name: string;
  /** Closed, first point not repeated. */
  readonly outline: readonly SectionPoint[];
  readonly areaM2: number;
}

/** A stretch of the line. */
export interface SectionSpan {
  readonly fromM: number;
  readonly toM: number;
}

/** Unbroken run over one zone. */
export interface SectionZone extends SectionSpan {
  readonly zone: string;
  readonly name: string;
}

export interface SectionBay extends SectionSpan {
  readonly bay: string;
  readonly permanentKNm2: number | null;
  readonly imposedKNm2: number | null;
  readonly totalKNm2: number | null;
  readonly stageKNm2: number | null;
  /** False where the basis lacks document, revision or date: then these are not limits to rely on. */
  readonly confirmed: boolean;
}

/** Part of the line without deck below it. */
export interface SectionGap extends SectionSpan {
  readonly kind: 'opening' | 'outside';
}

export interface SectionTree {
  readonly id: string;
  /** Where it stands, seen at right angles to the line [m]. */
  readonly alongM: number;
  readonly groundM: number;
  readonly heightM: number;
  readonly spreadM: number;
}

/** Upstand or sill where the line crosses it. */
export interface SectionEdge {
  readonly id: string;
  readonly kind: 'upstand' | 'threshold';
  readonly alongM: number;
  readonly deckM: number;
  readonly membraneTopM: number;
  /** Higher one of both sides; null where no layer adjoins. */
  readonly finishedM: number | null;
}

/** Layers one on the other at one place. */
export interface SectionStation {
  readonly alongM: number;
  readonly zone: string;
  readonly zoneName: string;
  readonly membraneM: number;
  readonly finishedM: number;
  /** Bottom to top; layers without thickness here are left out. */
  readonly layers: readonly {
    readonly name: string;
    readonly kind: PartKind;
    readonly bottomM: number;
    readonly topM: number;
  }[];
}

/** Sizes that the scene does not give. */
export type DrawnOnly = 'slab thickness' | 'wall height' | 'block height' | 'tree height';

export interface SectionDrawing {
  readonly scene: string;
  /** As drawn, coordinates of the file [m]. */
  readonly line: readonly PointM[];
  readonly lengthM: number;
  /** Where the line bends. */
  readonly bendsM: readonly number[];
  /** Stage shown; null for the finished garden. */
  readonly stage: { readonly id: string; readonly name: string } | null;
  /** Slab first, then layers bottom to top, then what stands on them. */
  readonly pieces: readonly SectionPiece[];
  readonly zones: readonly SectionZone[];
  readonly bays: readonly SectionBay[];
  readonly gaps: readonly SectionGap[];
  readonly trees: readonly SectionTree[];
  readonly edges: readonly SectionEdge[];
  /** Middle of every stretch of a zone; rising along the line. */
  readonly stations: readonly SectionStation[];
  /** Line of the membrane's top, one array per unbroken stretch of deck. */
  readonly membrane: readonly (readonly SectionPoint[])[];
  /** Sizes in it that are drawn by our own convention. */
  readonly drawnOnly: readonly DrawnOnly[];
  readonly lowM: number;
  readonly highM: number;
}
