/** Coordinates, lengths and angles as people type them. */

import type { PointM } from '../model/scene-file.ts';
import type { Refused } from './refusal.ts';

export type Typed =
  /** `12.5; 3.2` */
  | { readonly kind: 'absolute'; readonly at: PointM }
  /** `@2.5; 0` from the point before. */
  | { readonly kind: 'relative'; readonly by: PointM }
  /** `5 < 30` or `@5<30`: length and angle from the point before, counter-clockwise from +x [m] [°]. */
  | { readonly kind: 'polar'; readonly lengthM: number; readonly angleDeg: number }
  /** `5`: along the direction of the pointer [m]. */
  | { readonly kind: 'length'; readonly lengthM: number };

export type TypedRead =
  | { readonly ok: true; readonly typed: Typed }
  | { readonly ok: false; readonly why: 'empty' | 'not understood' }
  /** The text can mean each of these; choosing one means typing it. */
  | { readonly ok: false; readonly why: 'ambiguous'; readonly choices: readonly string[] };

/**
 * Reads a typed point or length. Decimal comma and decimal point are both read; `12,5` alone and `1.234` are asked back.
 * @param text - as typed
 * @returns what it means, or why it means nothing
 */
export declare function readTyped(text: string): TypedRead;

/**
 * The place a typed entry means.
 * @param typed - from `readTyped`
 * @param from - point before
 * @param towards - the pointer, snapped or not
 * @returns the place, or why there is none
 */
export declare function typedPoint(typed: Typed, from: PointM | null, towards: PointM | null): { readonly at: PointM } | Refused;
