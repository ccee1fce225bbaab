/** What a plan draws: zones by their surface, openings, bays, edges, columns, outlets, objects, the line of a section. */

import { ringsOf } from '../core/geometry/ring.ts';
import type { DeckInput, Region, Ring } from '../model/deck-input.ts';
import { drawnAs } from '../model/palette.ts';
import type { PartKind } from '../model/picture.ts';
import type { PointM, SceneFile, SceneRetaining } from '../model/scene-file.ts';
import type { Paper } from './paper.ts';
import { type Area, BLACK, line, PENS, type Pen, type Point, type Shape, textAt } from './sheet.ts';
import { corners } from './sheet-frame.ts';

/** A plan in local coordinates. */
export interface PlanOn {
  readonly scene: SceneFile;
  readonly input: DeckInput;
  readonly paper: Paper;
}

export const BAY_PEN: Pen = { widthMm: 0.25, colour: '#1F5C6B', dashMm: [4, 1.2, 0.6, 1.2] };
export const SILL_PEN: Pen = { widthMm: 0.7, colour: '#1F5C6B', dashMm: [2, 1] };
export const UPSTAND_PEN: Pen = { widthMm: 0.7, colour: BLACK };
const SECTION_PEN: Pen = { widthMm: 0.5, colour: '#86173A', dashMm: [8, 1.5, 1, 1.5] };

const local = ({ input, paper }: PlanOn, [x, y]: PointM): Point => paper.at(x - input.originM[0], y - input.originM[1]);

/** Points of a ring on paper. */
export function onPaper(ring: Ring, paper: Paper): Point[] {
  return Array.from({ length: ring.length / 2 }, (_, i) => paper.at(ring[2 * i], ring[2 * i + 1]));
}

/** The same region in millimetres on paper, for labels. */
export function regionOnPaper(region: Region, paper: Paper): Region {
  const flat = (ring: Ring) => Float64Array.from(onPaper(ring, paper).flat());
  return { outer: flat(region.outer), holes: region.holes.map(flat) };
}

/** What one sees of a zone from above; null for a build-up without layers. */
export function surfaceOf(input: DeckInput, zone: number): { readonly kind: PartKind; readonly name: string } | null {
  const top = input.zones[zone].buildUp.layers.findLast(({ thicknessM }) => thicknessM > 0);
  return top === undefined ? null : { kind: drawnAs(top.role, top.loose ?? false), name: top.name };
}

/** Everything but words, from below upwards. */
export function planShapes(on: PlanOn): Shape[] {
  const { input, paper } = on;
  const zones = input.zones.map(
    ({ region }, z): Area => ({
      shape: 'area',
      layer: 'ZONES',
      rings: ringsOf(region).map((ring) => onPaper(ring, paper)),
      fill: null,
      hatch: surfaceOf(input, z)?.kind ?? null,
      pen: PENS.thin,
    }),
  );
  const bays = input.bays.flatMap(({ region }) =>
    ringsOf(region).map((ring): Shape => ({ shape: 'line', layer: 'BAYS', points: onPaper(ring, paper), closed: true, pen: BAY_PEN })),
  );
  return [...zones, ...objectShapes(on), ...openingShapes(on), ...bays, ...outlineShapes(on), ...edgeShapes(on), ...pointShapes(on)];
}

function openingShapes({ input, paper }: PlanOn): Shape[] {
  return input.deck.holes.flatMap((hole): Shape[] => {
    const points = onPaper(hole, paper);
    const area: Shape = { shape: 'area', layer: 'OPENINGS', rings: [points], fill: '#FFFFFF', hatch: null, pen: PENS.outline };
    // A cross from corner to corner is only plain in four-sided openings.
    if (points.length !== 4) return [area];
    return [area, line('OPENINGS', [points[0], points[2]], PENS.faint), line('OPENINGS', [points[1], points[3]], PENS.faint)];
  });
}

function outlineShapes({ input, paper }: PlanOn): Shape[] {
  return [{ shape: 'line', layer: 'OUTLINE', points: onPaper(input.deck.outer, paper), closed: true, pen: PENS.cut }];
}

function edgeShapes(on: PlanOn): Shape[] {
  return (on.scene.deck.edges ?? []).map((edge) =>
    line(
      edge.kind === 'threshold' ? 'SILLS' : 'UPSTANDS',
      edge.line.map((point) => local(on, point)),
      edge.kind === 'threshold' ? SILL_PEN : UPSTAND_PEN,
    ),
  );
}

/** Drawn sizes of outlets on paper [mm]. */
export const OUTLET_MM = 1.2;

function pointShapes(on: PlanOn): Shape[] {
  const { scene, paper } = on;
  const columns = (scene.deck.columns ?? []).map((column): Shape => {
    const [x, y] = local(on, column.at);
    const [wide, deep] = column.sizeM.map(paper.lengthMm);
    const pen: Pen = { ...PENS.edge, dashMm: [1.2, 0.6] };
    return { shape: 'line', layer: 'COLUMNS', points: corners(x - wide / 2, y - deep / 2, wide, deep), closed: true, pen };
  });
  return [...columns, ...(scene.deck.outlets ?? []).flatMap((outlet) => outletShapes(local(on, outlet.at), outlet.kind))];
}

/** An outlet is a ring with a dot, an overflow a square with one. */
export function outletShapes(at: Point, kind: 'outlet' | 'overflow'): Shape[] {
  const [x, y] = at;
  const r = OUTLET_MM;
  const dot: Shape = { shape: 'circle', layer: 'OUTLETS', at, radiusMm: 0.4, fill: BLACK, pen: null };
  if (kind === 'outlet') return [{ shape: 'circle', layer: 'OUTLETS', at, radiusMm: r, fill: '#FFFFFF', pen: PENS.edge }, dot];
  return [
    { shape: 'area', layer: 'OUTLETS', rings: [corners(x - r, y - r, 2 * r, 2 * r)], fill: '#FFFFFF', hatch: null, pen: PENS.edge },
    dot,
  ];
}

function objectShapes(on: PlanOn): Shape[] {
  const { scene, input, paper } = on;
  return input.objects.flatMap((object, o): Shape[] => {
    const entry = scene.objects?.[o];
    if (entry?.kind === 'tree') {
      const at = local(on, entry.at);
      return [
        { shape: 'circle', layer: 'TREES', at, radiusMm: paper.lengthMm(entry.spreadM / 2), fill: null, pen: PENS.thin },
        { shape: 'circle', layer: 'TREES', at, radiusMm: 0.5, fill: BLACK, pen: null },
      ];
    }
    if (entry?.kind === 'retaining') return retainingShapes(on, entry, object.pieces);
    const kind: PartKind = object.kind === 'line' ? 'line load' : 'block';
    return object.pieces.map(({ ring }) => ({
      shape: 'area',
      layer: 'OBJECTS',
      rings: [onPaper(ring, paper)],
      fill: null,
      hatch: kind,
      pen: PENS.thin,
    }));
  });
}

/** Base slab under the soil, dashed; free face of the stem as a thick line. */
export const RETAINING_PEN: Pen = { widthMm: 0.7, colour: '#6E7375' };

function retainingShapes(on: PlanOn, { line: face }: SceneRetaining, bases: readonly { readonly ring: Ring }[]): Shape[] {
  const dashed: Pen = { ...PENS.faint, dashMm: [1.2, 0.8] };
  const slabs = bases.map(({ ring }): Shape => {
    return { shape: 'line', layer: 'OBJECTS', points: onPaper(ring, on.paper), closed: true, pen: dashed };
  });
  const stem = line(
    'OBJECTS',
    face.map((point) => local(on, point)),
    RETAINING_PEN,
  );
  return [...slabs, stem];
}

/** Length of the arrows at the ends of a section's line [mm]. */
const ARROW_MM = 4;

/** The line of a section: the arrows look the way the section does, to the left of the line. */
export function sectionMark(on: PlanOn, points: readonly PointM[], name: string): Shape[] {
  const path = points.map((point) => local(on, point));
  const letter = name.split(/[–-]/)[0].trim();
  const end = (at: Point, from: Point, to: Point): Shape[] => {
    const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (!(lengthMm > 0)) return [];
    // y points down on paper, so left of the line is (dy, -dx).
    const [dx, dy] = [(to[0] - from[0]) / lengthMm, (to[1] - from[1]) / lengthMm];
    const tip: Point = [at[0] + ARROW_MM * dy, at[1] - ARROW_MM * dx];
    const wing = (side: number): Point => [tip[0] - 2 * dy + side * dx, tip[1] + 2 * dx + side * dy];
    return [
      line('SECTION', [at, tip], { widthMm: SECTION_PEN.widthMm, colour: SECTION_PEN.colour }),
      { shape: 'area', layer: 'SECTION', rings: [[tip, wing(0.9), wing(-0.9)]], fill: SECTION_PEN.colour, hatch: null, pen: null },
      textAt([at[0] + (ARROW_MM + 3.5) * dy, at[1] - (ARROW_MM + 3.5) * dx + 1.75], letter, {
        layer: 'SECTION',
        anchor: 'middle',
        bold: true,
        capMm: 3.5,
        colour: SECTION_PEN.colour,
        halo: true,
      }),
    ];
  };
  const last = path.length - 1;
  return [line('SECTION', path, SECTION_PEN), ...end(path[0], path[0], path[1]), ...end(path[last], path[last - 1], path[last])];
}
