/** New parts: the drawn points with an id of their own, and nothing that anyone would have to know and has not said. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneBasis, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import type { PlanPart, PlanPoint } from './point-lists.ts';

/** What is known of a new part besides its points. Which of it a part needs: `needsOf`. */
export interface Given {
  /** Id wanted; a free one is made of it, or of the letter of its kind. */
  readonly id?: string;
  readonly name?: string;
  /** Object: tree, line, block, retaining · outlet: outlet, overflow · edge: upstand, threshold · set-up area: set-up, movement · access point: ramp, crane, blower, gate. */
  readonly kind?: string;
  readonly buildup?: string;
  readonly use?: string;
  readonly imposedKNm2?: number;
  readonly permanentKNm2?: number;
  readonly totalKNm2?: number;
  readonly stageKNm2?: number;
  readonly basis?: SceneBasis;
  readonly membraneTopM?: number;
  readonly drainedChannel?: boolean;
  readonly lps?: number;
  readonly invertM?: number;
  readonly sizeM?: readonly [number, number];
  readonly massKg?: number;
  readonly spreadM?: number;
  readonly kNm?: number;
  readonly kNm2?: number;
  readonly widthM?: number;
  readonly heightM?: number;
  readonly side?: 'left' | 'right';
  readonly retainedM?: number;
  readonly baseM?: number;
  readonly stemM?: number;
  readonly slabM?: number;
  readonly backfill?: { readonly density: number; readonly frictionDeg: number };
  readonly baseFriction?: number;
  readonly vehicle?: string;
  readonly stage?: string;
  readonly material?: string;
  readonly reachM?: number;
  /** Level of a spot, or of all points of a breakline that come without one. */
  readonly levelM?: number;
  readonly measuredMm?: number;
  readonly layer?: string;
}

export type NewPart =
  | { readonly patch: ScenePatch; readonly selected: Selected }
  /** Entries that only a person can know and that are not given. */
  | { readonly needs: readonly (keyof Given)[] };

/**
 * Entries a part of this kind cannot be without, in the order in which to ask for them.
 * @param part - kind of part
 * @param kind - for objects: tree, line, block, retaining
 * @returns names of entries
 */
export declare function needsOf(part: PlanPart, kind?: string): readonly (keyof Given)[];

/**
 * Adds a part. A new bay has no permitted load and no basis unless given; a new zone takes the build-up given, else the first, else a new one without layers.
 * One point of levels is a spot, several are a breakline. Points for the outline of the deck replace it.
 * @param scene - the scene
 * @param part - kind of part
 * @param points - drawn points; of a place, the first counts
 * @param given - what else is known
 * @returns what changes and the new part, or what is still needed
 */
export declare function withNew(scene: SceneFile, part: PlanPart, points: readonly PlanPoint[], given?: Given): NewPart;

/**
 * Adds a hole to a zone.
 * @param scene - the scene
 * @param zone - its id
 * @param points - drawn points
 * @returns what changes; nothing where there is no such zone
 */
export declare function withNewHole(scene: SceneFile, zone: string, points: readonly PlanPoint[]): ScenePatch;

/**
 * Takes a hole out of a zone, or the building line off a set-up area.
 * @param scene - the scene
 * @param selected - the part
 * @param piece - hole by its index, or the building line
 * @returns what changes
 */
export declare function withoutPiece(scene: SceneFile, selected: Selected, piece: number | 'building'): ScenePatch;
