/**
 * Height of the membrane above the finished level along an edge, exact: every level is linear between known places of the line, so
 * the least height stands at one of them, whatever the size of the cells.
 */

import type { Region, ZoneInput } from '../../model/deck-input.ts';
import type { EdgeInput, RequiredEdge } from '../../model/edge-input.ts';
import type { Limit, RuleLimits } from '../../model/rule-input.ts';
import { boundsMeet, crossingShare } from '../geometry/distance.ts';
import { cellAt } from '../geometry/grid.ts';
import { boundsOf, isInside, ringsOf } from '../geometry/ring.ts';
import { fixedThicknessM, makeUpLayer } from '../layers/coefficients.ts';
import { type LevelProfile, levelProfile, profileLevelM } from '../levels/profile.ts';
import type { DeckSite } from './deck-site.ts';

/** A zone this far beside the line adjoins the edge [m]. */
const BESIDE_M = 0.001;
/** Where no zone touches the line, one this far away adjoins it: drawings stop short of render and insulation [m]. */
const NEAR_M = 0.125;
/** Stretches shorter than this are rounding [-]. */
const NO_STRETCH = 1e-9;
/** Heights this near are equal [m]. */
const SAME_HEIGHT_M = 1e-6;

/** A stretch of an edge beside one zone. */
export interface EdgeStretch {
  readonly zone: number;
  /** Straight piece of the line, ax ay bx by [m]. */
  readonly piece: readonly number[];
  /** From the line to where the zone was met [m]. */
  readonly besideM: readonly [number, number];
  /** Shares of the piece, rising; the finished level is linear between them. */
  readonly at: readonly number[];
  /** As built: the make-up layer held to its limits. */
  readonly finishedM: readonly number[];
}

/** The least height of one edge. */
export interface EdgeUpstand {
  /** Null where no zone adjoins. */
  readonly least: { readonly heightM: number; readonly x: number; readonly y: number; readonly zone: number } | null;
  readonly required: Limit;
}

/** Heights in the cells beside edges. */
export interface CellUpstands {
  readonly heightMm: Float64Array;
  /** 1 where an edge lacks what it requires. */
  readonly isShort: Uint8Array;
}

type Heights = Pick<RuleLimits, 'upstandMm' | 'sillMm'>;

/**
 * Height that an edge must keep above the finish.
 * @param edge - edge [-]
 * @param limits - limits [mm]
 * @returns limit: at a sill with a drained channel the sill's, else the upstand's [mm]
 * @source German flat-roof guideline as quoted by baunetzwissen.de, entry on upstands; check-values.md, 7
 */
export function requiredUpstand(edge: EdgeInput, limits: Heights): Limit {
  return edge.kind === 'threshold' && edge.drainedChannel ? limits.sillMm : limits.upstandMm;
}

/**
 * Least height of the membrane above the finish along an edge.
 * @param site - deck, zones and surfaces [m]
 * @param edge - edge, local [m]
 * @param limits - limits [mm]
 * @returns least height with its place on the line, and what is required [m]
 * @source contract.md, sections 2 and 4; none of it depends on the cells
 */
export function edgeUpstand(site: DeckSite, edge: EdgeInput, limits: Heights): EdgeUpstand {
  const required = requiredUpstand(edge, limits);
  const stretches = edgeStretches(site, edge);
  const highest = stretches.reduce((high, stretch) => Math.max(high, ...stretch.finishedM), -Infinity);
  for (const stretch of stretches) {
    const { at, finishedM, piece } = stretch;
    const isHighest = (i: number) => i < at.length && finishedM[i] >= highest - SAME_HEIGHT_M;
    const first = finishedM.findIndex((_, i) => isHighest(i));
    if (first < 0) continue;
    // The middle of a level stretch says more than its corner.
    let last = first;
    while (isHighest(last + 1)) last++;
    const share = (at[first] + at[last]) / 2;
    const x = piece[0] + share * (piece[2] - piece[0]);
    const y = piece[1] + share * (piece[3] - piece[1]);
    return { least: { heightM: edge.membraneTopM - highest, x, y, zone: stretch.zone }, required };
  }
  return { least: null, required };
}

/**
 * Heights of the membrane above the finish in the cells beside edges.
 * @param site - deck, zones and surfaces [m]
 * @param edges - edges, local, with what they require [m]
 * @returns least height per cell, NaN where no edge passes, and whether an edge there lacks what it requires [mm]
 * @source none: geometry
 */
export function cellUpstands(site: DeckSite, edges: readonly RequiredEdge[]): CellUpstands {
  const { grid } = site.ground;
  const heightMm = new Float64Array(grid.columns * grid.rows).fill(Number.NaN);
  const isShort = new Uint8Array(heightMm.length);
  for (const edge of edges) {
    for (const { piece, besideM, at, finishedM } of edgeStretches(site, edge)) {
      const lengthM = Math.hypot(piece[2] - piece[0], piece[3] - piece[1]);
      for (let i = 0; i + 1 < at.length; i++) {
        const steps = Math.max(2, Math.ceil(((at[i + 1] - at[i]) * lengthM) / (grid.cellM / 2)));
        for (let k = 0; k < steps; k++) {
          // Middles of the steps: the ends belong to the neighbour as well.
          const part = (k + 0.5) / steps;
          const share = at[i] + part * (at[i + 1] - at[i]);
          const x = piece[0] + share * (piece[2] - piece[0]) + besideM[0];
          const y = piece[1] + share * (piece[3] - piece[1]) + besideM[1];
          const mm = 1000 * (edge.membraneTopM - finishedM[i] - part * (finishedM[i + 1] - finishedM[i]));
          const cell = cellAt(grid, x, y);
          if (cell < 0) continue;
          if (!(heightMm[cell] <= mm)) heightMm[cell] = mm;
          if (mm < edge.requiredMm - 1000 * SAME_HEIGHT_M) isShort[cell] = 1;
        }
      }
    }
  }
  return { heightMm, isShort };
}

/**
 * Stretches of an edge beside zones, on both sides.
 * @param site - deck, zones and surfaces [m]
 * @param edge - edge, local [m]
 * @returns stretches with finished levels [m]
 * @source none: geometry
 */
export function edgeStretches(site: DeckSite, edge: Pick<EdgeInput, 'line'>): EdgeStretch[] {
  const found: EdgeStretch[] = [];
  for (let i = 0; i + 3 < edge.line.length; i += 2) {
    const piece = Array.from(edge.line.subarray(i, i + 4));
    const deckLevels = levelProfile(site.deckSurface, piece);
    for (const side of [1, -1]) {
      const touching = besides(site, piece, side * BESIDE_M);
      const gaps = uncovered(touching);
      const near = besides(site, piece, side * NEAR_M).flatMap((one) =>
        gaps.flatMap((gap) => {
          const from = Math.max(gap[0], one.from);
          const to = Math.min(gap[1], one.to);
          return to - from > NO_STRETCH ? [{ ...one, from, to }] : [];
        }),
      );
      for (const beside of [...touching, ...near]) found.push(stretchOf(site, piece, beside, deckLevels));
    }
  }
  return found;
}

/**
 * Finished levels as built along a straight piece, zone by zone.
 * @param site - deck, zones and surfaces [m]
 * @param piece - ax ay bx by, local [m]
 * @returns stretches on the deck in the order of the piece; overlapping zones each give theirs [m]
 * @source contract.md, section 2, Finished level and Make-up layer
 */
export function finishedAlong(site: DeckSite, piece: readonly number[]): EdgeStretch[] {
  const deckLevels = levelProfile(site.deckSurface, piece);
  return besides(site, piece, 0)
    .sort((p, q) => p.from - q.from)
    .map((beside) => stretchOf(site, [...piece], beside, deckLevels));
}

/** From … to: shares of the piece beside which the zone lies. */
interface Beside {
  readonly zone: number;
  readonly from: number;
  readonly to: number;
  readonly besideM: readonly [number, number];
}

function besides(site: DeckSite, piece: readonly number[], offsetM: number): Beside[] {
  const scale = offsetM / Math.hypot(piece[2] - piece[0], piece[3] - piece[1]);
  const dx = (piece[1] - piece[3]) * scale;
  const dy = (piece[2] - piece[0]) * scale;
  const moved = [piece[0] + dx, piece[1] + dy, piece[2] + dx, piece[3] + dy];
  const box = boundsOf(Float64Array.from(moved));
  return site.zones.flatMap((zone, z) => {
    if (!boundsMeet(site.zoneBounds[z], box)) return [];
    return spansInside(moved, [zone.region, site.ground.region]).map(([from, to]) => ({ zone: z, from, to, besideM: [dx, dy] as const }));
  });
}

/**
 * Shares of a piece within all the regions at once.
 * @param piece - ax ay bx by [m]
 * @param regions - regions [m]
 * @returns from … to, rising, 0 … 1 [-]
 * @source none: geometry
 */
export function spansInside(piece: readonly number[], regions: readonly Region[]): [number, number][] {
  const shares = [0, 1];
  for (const region of regions) {
    for (const ring of ringsOf(region)) {
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
        const share = crossingShare(piece, [ring[j], ring[j + 1], ring[i], ring[i + 1]]);
        if (share !== null) shares.push(share);
      }
    }
  }
  shares.sort((p, q) => p - q);
  const spans: [number, number][] = [];
  for (let i = 0; i + 1 < shares.length; i++) {
    const [from, to] = [shares[i], shares[i + 1]];
    if (to - from <= NO_STRETCH) continue;
    const middle = (from + to) / 2;
    const x = piece[0] + middle * (piece[2] - piece[0]);
    const y = piece[1] + middle * (piece[3] - piece[1]);
    if (regions.every((region) => isInside(region, x, y))) spans.push([from, to]);
  }
  return spans;
}

/** What of 0 … 1 the stretches leave open. */
function uncovered(stretches: readonly Beside[]): [number, number][] {
  const gaps: [number, number][] = [];
  let reached = 0;
  for (const { from, to } of [...stretches].sort((p, q) => p.from - q.from)) {
    if (from - reached > NO_STRETCH) gaps.push([reached, from]);
    reached = Math.max(reached, to);
  }
  if (1 - reached > NO_STRETCH) gaps.push([reached, 1]);
  return gaps;
}

/** Finished levels on the line itself, as if the zone beside it reached it. */
function stretchOf(site: DeckSite, piece: readonly number[], beside: Beside, deckLevels: LevelProfile): EdgeStretch {
  const zone = site.zones[beside.zone];
  const finish = site.finishSurfaces[beside.zone];
  const wanted = finish ? levelProfile(finish, piece) : null;
  const within = [...deckLevels.at, ...(wanted?.at ?? [])].filter((share) => share > beside.from && share < beside.to);
  const at = [beside.from, ...within.sort((p, q) => p - q), beside.to];
  const makeUp = makeUpRangeM(zone);
  const fixedM = fixedThicknessM(zone.buildUp);
  const roomM = (share: number) => (wanted ? profileLevelM(wanted, share) - profileLevelM(deckLevels, share) - fixedM : makeUp.nominal);
  const places = wanted ? withBends(at, roomM, makeUp) : at;
  const finishedM = places.map((share) => {
    return profileLevelM(deckLevels, share) + fixedM + Math.min(makeUp.max, Math.max(makeUp.min, roomM(share)));
  });
  return { zone: beside.zone, piece, besideM: beside.besideM, at: places, finishedM };
}

/**
 * Thickness the make-up layer may take.
 * @param zone - zone [m]
 * @returns least, greatest and nominal; all 0 without a make-up layer [m]
 * @source none: arithmetic
 */
export function makeUpRangeM(zone: ZoneInput): { min: number; max: number; nominal: number } {
  const index = makeUpLayer(zone.buildUp);
  if (index < 0) return { min: 0, max: 0, nominal: 0 };
  const { rangeM, thicknessM } = zone.buildUp.layers[index];
  return { min: rangeM!.min, max: rangeM!.max, nominal: thicknessM };
}

/** Adds the places where the make-up layer reaches one of its limits: there the finished level bends. */
function withBends(at: readonly number[], roomM: (share: number) => number, rangeM: { min: number; max: number }): number[] {
  const out = [...at];
  for (let i = 0; i + 1 < at.length; i++) {
    const low = roomM(at[i]);
    const high = roomM(at[i + 1]);
    for (const limit of new Set([rangeM.min, rangeM.max])) {
      if (low < limit !== high < limit) out.push(at[i] + ((limit - low) / (high - low)) * (at[i + 1] - at[i]));
    }
  }
  return out.sort((p, q) => p - q);
}
