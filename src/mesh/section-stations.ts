/** Where a section is measured: the middle of every stretch of a zone, and the edges that its line crosses. */

import type { SectionEdge, SectionStation } from '../model/section-drawing.ts';
import type { SectionRun } from './section.ts';
import { onPlane, type SectionLeg } from './section-line.ts';
import { heightsAt, spanOf } from './section-runs.ts';
import type { SectionSource, ZoneRun } from './section-source.ts';

/** The layers beside an edge are looked up this far from it: beyond its own thickness [m]. */
const BESIDE_EDGE_M = 0.1;
/** A layer thinner than this is not there [m]. */
const NOTHING_M = 1e-9;
/** Ends nearer than this are one [m]. */
const NEAR_M = 1e-6;

interface Runs {
  readonly slab: readonly SectionRun[];
  readonly zones: readonly ZoneRun[];
}

/**
 * Layers one on the other in the middle of every stretch.
 * @param source - scene with its picture [m]
 * @param zones - stretches of zones [m]
 * @returns stations, rising along the line [m]
 * @source none: geometry
 */
export function sectionStations(source: SectionSource, zones: readonly ZoneRun[]): SectionStation[] {
  const stations = zones.map((zone): SectionStation => {
    const { fromM, toM } = spanOf(zone.run);
    const alongM = (fromM + toM) / 2;
    const heights = heightsAt(zone.run, alongM).map((level) => level + source.datumM);
    const { id } = source.input.zones[zone.zone];
    const layers = zone.parts.flatMap(({ name, kind }, k) => {
      const [bottomM, topM] = [heights[k], heights[k + 1]];
      return zone.placed[k] && topM - bottomM > NOTHING_M ? [{ name, kind, bottomM, topM }] : [];
    });
    return {
      alongM,
      zone: id,
      zoneName: source.scene.zones[zone.zone]?.name ?? id,
      membraneM: heights[0],
      finishedM: layers.at(-1)?.topM ?? heights[0],
      layers,
    };
  });
  return stations.sort((p, q) => p.alongM - q.alongM);
}

/**
 * Upstands and sills crossed by the line, or ended by it within their own thickness.
 * @param source - scene with its picture [m]
 * @param legs - legs of the line [m]
 * @param runs - stretches of slab and zones [m]
 * @returns edges, rising along the line [m]
 * @source none: geometry
 */
export function sectionEdges(source: SectionSource, legs: readonly SectionLeg[], runs: Runs): SectionEdge[] {
  const edges: SectionEdge[] = [];
  for (const edge of source.furniture.edges) {
    for (const alongM of crossingsM(edge.line, legs)) {
      const deckM = deckAt(runs.slab, alongM);
      if (deckM === null) continue;
      const { id, kind, membraneTopM } = edge;
      const finished = finishedBeside(runs.zones, alongM);
      edges.push({
        id,
        kind,
        alongM,
        deckM: deckM + source.datumM,
        membraneTopM: membraneTopM + source.datumM,
        finishedM: finished.length === 0 ? null : Math.max(...finished) + source.datumM,
      });
    }
  }
  return edges.sort((p, q) => p.alongM - q.alongM);
}

/** Where a line meets the legs; a leg that ends on it meets it. */
function crossingsM(line: Float64Array, legs: readonly SectionLeg[]): number[] {
  const found: number[] = [];
  for (const { plane, startM, lengthM } of legs) {
    for (let i = 2; i < line.length; i += 2) {
      const [aAlong, aLeft] = onPlane(plane, line[i - 2], line[i - 1]);
      const [bAlong, bLeft] = onPlane(plane, line[i], line[i + 1]);
      if (aLeft > 0 === bLeft > 0) continue;
      const at = aAlong + (aLeft / (aLeft - bLeft)) * (bAlong - aAlong);
      if (at < -NEAR_M || at > lengthM + NEAR_M) continue;
      // Two legs that meet on it meet it once.
      if (!found.some((known) => Math.abs(known - startM - at) <= NEAR_M)) found.push(startM + at);
    }
  }
  return found;
}

function deckAt(slab: readonly SectionRun[], alongM: number): number | null {
  const run = slab.find((one) => spanOf(one).fromM - NEAR_M <= alongM && alongM <= spanOf(one).toM + NEAR_M);
  return run === undefined ? null : heightsAt(run, alongM)[1];
}

/** Finished levels on both sides. */
function finishedBeside(zones: readonly ZoneRun[], alongM: number): number[] {
  return zones.flatMap((zone) => {
    const { fromM, toM } = spanOf(zone.run);
    const top = zone.placed.lastIndexOf(true) + 1;
    const places = [alongM - BESIDE_EDGE_M, alongM + BESIDE_EDGE_M].filter((at) => fromM <= at && at <= toM);
    return top === 0 ? [] : places.map((at) => heightsAt(zone.run, at)[top]);
  });
}
