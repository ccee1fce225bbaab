/** Bays and zones of a drawing: closed outlines, named by the text that stands in them. */

import type { DrawingLayer, DrawingShape, WaitingPart } from '../model/drawing.ts';
import { pointInRing, ringOf } from '../scene/ring.ts';
import type { DraftIssues, RoleLayers } from './draft-scene.ts';
import { freeId } from './free-id.ts';

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

/** Bays wait for a permitted load, zones for a build-up. */
export function areaParts(layersOf: RoleLayers, issues: DraftIssues): WaitingPart[] {
  return [...parts('bay', layersOf('bays'), issues), ...parts('zone', layersOf('zones'), issues)];
}

function parts(part: 'bay' | 'zone', layers: readonly DrawingLayer[], issues: DraftIssues): WaitingPart[] {
  const taken = new Set<string>();
  return layers.flatMap((layer) => {
    const texts = layer.shapes.filter((shape) => shape.kind === 'text');
    return ringsOf(layer, issues).map(({ points, holes, name }) => {
      const ring = ringOf(points);
      const label = name ?? texts.find(({ at }) => pointInRing(at, ring) > 0)?.says;
      const id = freeId(label, part === 'bay' ? 'B' : 'Z', taken);
      return {
        part,
        id,
        ...(label === undefined || label === id ? {} : { name: label }),
        outline: points,
        ...(holes === undefined ? {} : { holes }),
        needs: [part === 'bay' ? 'permanentKNm2' : 'buildup'],
      };
    });
  });
}
