/** Bays and zones of a drawing: closed outlines, named by the text that stands in them. */

import type { DrawingLayer, DrawingShape, WaitingPart } from '../model/drawing.ts';
import type { PartEntries } from '../model/drawn-parts.ts';
import type { PolygonM, SceneBay, SceneZone } from '../model/scene-file.ts';
import { freeId } from '../scene/free-id.ts';
import { pointInRing, ringOf } from '../scene/ring.ts';
import type { DraftIssues, RoleLayers } from './draft-scene.ts';

type Ring = Extract<DrawingShape, { kind: 'ring' }>;

/** Closed outlines of a layer; open lines are told, since an outline was expected. */
export function ringsOf({ name, shapes }: DrawingLayer, issues: DraftIssues): readonly Ring[] {
  const rings: Ring[] = [];
  let unfit = 0;
  for (const shape of shapes) {
    if (shape.kind === 'ring') rings.push(shape);
    else if (shape.kind === 'circle') rings.push(asRing(shape));
    else if (shape.kind === 'line') {
      const { points } = shape;
      const [a, b] = [points[0], points[points.length - 1]];
      // Levels of a closed outline come as a line beside it.
      if (shape.levelsM !== undefined && a[0] === b[0] && a[1] === b[1]) continue;
      const gapMm = Math.round(1000 * Math.hypot(a[0] - b[0], a[1] - b[1]));
      issues.add('error', 'RING_OPEN', name, { layer: name, gapMm, x: a[0], y: a[1], endX: b[0], endY: b[1] });
    } else if (shape.kind !== 'text' && shape.kind !== 'block') unfit += 1;
  }
  issues.unfit(name, unfit, 'outlines');
  return rings;
}

/** Corners of the ring that stands for a circle: chords at most 5 mm from a circle of 10 m. */
const CORNERS = 96;

function asRing({ at, radiusM, name }: Extract<DrawingShape, { kind: 'circle' }>): Ring {
  const points = Array.from({ length: CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / CORNERS;
    return [at[0] + radiusM * Math.cos(angle), at[1] + radiusM * Math.sin(angle)] as const;
  });
  return { kind: 'ring', points, ...(name === undefined ? {} : { name }) };
}

export interface AreaParts {
  readonly bays: readonly SceneBay[];
  readonly zones: readonly SceneZone[];
  readonly waiting: readonly WaitingPart[];
}

/** Bays stand in the scene before their permitted load is entered; zones wait for a build-up. */
export function areaParts(layersOf: RoleLayers, issues: DraftIssues, { buildup }: PartEntries): AreaParts {
  const bays = areas('bay', layersOf('bays'), issues);
  const zones = areas('zone', layersOf('zones'), issues);
  const withHoles = bays.filter(({ holes }) => holes !== undefined);
  if (withHoles.length > 0) issues.add('warning', 'BAY_HOLES', layersOf('bays')[0].name, { count: withHoles.length });
  return {
    bays: bays.map(({ id, outline }) => ({ id, outline })),
    zones: buildup === undefined ? [] : zones.map((zone) => ({ ...zone, buildup })),
    waiting: [
      ...bays.map(({ holes: _, ...bay }): WaitingPart => ({ part: 'bay', ...bay, needs: ['permanentKNm2'] })),
      ...(buildup === undefined ? zones.map((zone): WaitingPart => ({ part: 'zone', ...zone, needs: ['buildup'] })) : []),
    ],
  };
}

interface Area {
  readonly id: string;
  readonly name?: string;
  readonly outline: PolygonM;
  readonly holes?: readonly PolygonM[];
}

function areas(part: 'bay' | 'zone', layers: readonly DrawingLayer[], issues: DraftIssues): Area[] {
  const taken = new Set<string>();
  return layers.flatMap((layer) => {
    const texts = layer.shapes.filter((shape) => shape.kind === 'text');
    return ringsOf(layer, issues).map(({ points, holes, name }) => {
      const ring = ringOf(points);
      const label = name ?? texts.find(({ at }) => pointInRing(at, ring) > 0)?.says;
      const id = freeId(label, part === 'bay' ? 'B' : 'Z', taken);
      return {
        id,
        ...(label === undefined || label === id ? {} : { name: label }),
        outline: points,
        ...(holes === undefined ? {} : { holes }),
      };
    });
  });
}
