/** The section along a line drawn on the plan, computed from the layers: see `model/section-drawing.ts`. */

import type { Part, PartKind, Picture } from '../model/picture.ts';
import type { PointM } from '../model/scene-file.ts';
import type {
  DrawnOnly,
  SectionBay,
  SectionDrawing,
  SectionGap,
  SectionPiece,
  SectionSpan,
  SectionTree,
  SectionZone,
} from '../model/section-drawing.ts';
import type { SectionRun } from './section.ts';
import { onPlane, type SectionLeg, sectionLegs, spansInside } from './section-line.ts';
import { layerOutlines, lineRuns, spanOf, surfaceLine } from './section-runs.ts';
import type { SectionSource, ZoneRun } from './section-source.ts';
import { sectionEdges, sectionStations } from './section-stations.ts';
import { cutSolids, outlineAreaM2 } from './solid-cut.ts';

/** Drawn from their solids; trees are outlines, columns hang below the slab. */
const CUT_KINDS: ReadonlySet<PartKind> = new Set<PartKind>([
  'edge',
  'outlet',
  'line load',
  'retaining',
  'block',
  'stockpile',
  'flood water',
]);

/**
 * Draws a section.
 * @param source - scene with its picture [m]
 * @param line - two or more points, coordinates of the file [m]
 * @param stage - index of the stage shown, null for the finished garden [-]
 * @returns the section; without pieces where the line does not meet the deck [m]
 * @source none: geometry
 */
export function drawSection(source: SectionSource, line: readonly PointM[], stage: number | null): SectionDrawing {
  const [originX, originY] = source.input.originM;
  const legs = sectionLegs(line.map(([x, y]) => [x - originX, y - originY]));
  const shown = source.picture.parts.map((part) => isPlaced(part, stage));
  const slab = slabRuns(source, legs);
  const zones = zoneRuns(source, legs, shown);
  const pieces = [...slab.flatMap(slabPieces), ...zones.flatMap(layerPieces), ...objectPieces(source, legs, shown)];
  const trees = treesAlong(source, legs, shown);
  const last = legs.at(-1);
  return {
    scene: source.scene.name,
    line,
    lengthM: last === undefined ? 0 : last.startM + last.lengthM,
    bendsM: legs.slice(1).map((leg) => leg.startM),
    stage: stage === null ? null : { id: source.stages[stage].id, name: source.stages[stage].name },
    pieces: pieces.map((piece) => ({ ...piece, outline: piece.outline.map(([at, level]) => [at, level + source.datumM] as const) })),
    zones: zones.map((zone) => zoneSpan(source, zone)).sort(byPlace),
    bays: baySpans(source, legs),
    gaps: gapsBetween(source, legs, slab),
    trees,
    edges: sectionEdges(source, legs, { slab, zones }),
    stations: sectionStations(source, zones),
    membrane: slab.map((run) => surfaceLine(run, 1).map(([at, level]) => [at, level + source.datumM] as const)),
    drawnOnly: drawnOnly(source, pieces, trees),
    ...extentM(pieces, source.datumM),
  };
}

/** Whether a stage has placed a part and not yet taken it away; null is the finished garden. */
function isPlaced(part: Part, stage: number | null): boolean {
  if (stage === null) return part.stageTo < 0;
  return part.stageFrom <= stage && (part.stageTo < 0 || stage <= part.stageTo);
}

const byPlace = (p: SectionSpan, q: SectionSpan) => p.fromM - q.fromM || p.toM - q.toM;

function slabRuns({ picture }: SectionSource, legs: readonly SectionLeg[]): SectionRun[] {
  return picture.prisms.filter((prism) => picture.parts[prism.parts[0]]?.kind === 'slab').flatMap((prism) => lineRuns(prism, legs));
}

function zoneRuns({ picture, input }: SectionSource, legs: readonly SectionLeg[], shown: readonly boolean[]): ZoneRun[] {
  const indexOf = new Map(input.zones.map((zone, z) => [zone.id, z]));
  return picture.prisms.flatMap((prism) => {
    const zone = indexOf.get(prism.owner);
    if (zone === undefined) return [];
    const parts = prism.parts.map((part) => picture.parts[part]);
    const placed = prism.parts.map((part) => shown[part]);
    return lineRuns(prism, legs).map((run): ZoneRun => ({ zone, run, parts, placed }));
  });
}

function slabPieces(run: SectionRun): SectionPiece[] {
  return layerOutlines(run, 0).map((outline) => ({
    kind: 'slab',
    owner: '',
    layer: -1,
    name: '',
    outline,
    areaM2: outlineAreaM2(outline),
  }));
}

function layerPieces({ run, parts, placed }: ZoneRun): SectionPiece[] {
  return parts.flatMap(({ kind, owner, layer, name }, k) =>
    placed[k] ? layerOutlines(run, k).map((outline) => ({ kind, owner, layer, name, outline, areaM2: outlineAreaM2(outline) })) : [],
  );
}

function objectPieces({ picture, scene }: SectionSource, legs: readonly SectionLeg[], shown: readonly boolean[]): SectionPiece[] {
  const { parts, solids } = picture;
  const names = new Map((scene.objects ?? []).map((object) => [object.id, object.name ?? object.id]));
  const wanted = (part: number) => shown[part] && CUT_KINDS.has(parts[part].kind);
  return legs.flatMap((leg) =>
    cutSolids(solids, wanted, leg).map(({ part, outline }) => {
      const { kind, owner, name } = parts[part];
      const isObject = kind === 'line load' || kind === 'retaining' || kind === 'block';
      return { kind, owner, layer: -1, name: (isObject && names.get(owner)) || name, outline, areaM2: outlineAreaM2(outline) };
    }),
  );
}

function zoneSpan({ scene, input }: SectionSource, { zone, run }: ZoneRun): SectionZone {
  const { id } = input.zones[zone];
  return { zone: id, name: scene.zones[zone]?.name ?? id, ...spanOf(run) };
}

function baySpans({ input }: SectionSource, legs: readonly SectionLeg[]): SectionBay[] {
  const spans = input.bays.flatMap((bay) => {
    const { id, permanentKNm2, imposedKNm2, totalKNm2, stageKNm2, confirmed } = bay;
    return spansInside(legs, bay.region).map((span) => ({
      ...span,
      bay: id,
      permanentKNm2,
      imposedKNm2,
      totalKNm2,
      stageKNm2,
      confirmed,
    }));
  });
  return spans.sort(byPlace);
}

/** Everything between the stretches of slab. */
function gapsBetween({ input }: SectionSource, legs: readonly SectionLeg[], slab: readonly SectionRun[]): SectionGap[] {
  const last = legs.at(-1);
  if (last === undefined) return [];
  const openings = input.deck.holes.flatMap((hole) => spansInside(legs, { outer: hole, holes: [] }));
  const gaps: SectionGap[] = [];
  let reachedM = 0;
  for (const { fromM, toM } of [...slab.map(spanOf).sort(byPlace), { fromM: last.startM + last.lengthM, toM: Infinity }]) {
    if (fromM - reachedM > 1e-6) {
      const middle = (reachedM + fromM) / 2;
      const isOpening = openings.some((span) => span.fromM <= middle && middle <= span.toM);
      gaps.push({ fromM: reachedM, toM: fromM, kind: isOpening ? 'opening' : 'outside' });
    }
    reachedM = Math.max(reachedM, toM);
  }
  return gaps;
}

/** Trees whose crown the line crosses. */
function treesAlong(source: SectionSource, legs: readonly SectionLeg[], shown: readonly boolean[]): SectionTree[] {
  const { picture, furniture, input, datumM } = source;
  const footM = lowestOf(picture, 'tree trunk');
  const standing = new Set(picture.parts.flatMap((part, i) => (part.kind === 'tree trunk' && shown[i] ? [part.owner] : [])));
  return furniture.trees.flatMap((tree) => {
    const { id } = input.objects[tree.object];
    const groundM = footM.get(id);
    if (!standing.has(id) || groundM === undefined) return [];
    const near = nearestPlace(legs, tree.x, tree.y);
    if (near === null || near.offM >= tree.spreadM / 2) return [];
    return [{ id, alongM: near.alongM, groundM: groundM + datumM, heightM: tree.heightM, spreadM: tree.spreadM }];
  });
}

function lowestOf({ parts, solids }: Picture, kind: PartKind): Map<string, number> {
  const lowest = new Map<string, number>();
  for (let v = 0; v < solids.parts.length; v++) {
    const part = parts[solids.parts[v]];
    if (part.kind !== kind) continue;
    const z = solids.positions[3 * v + 2];
    if (z < (lowest.get(part.owner) ?? Infinity)) lowest.set(part.owner, z);
  }
  return lowest;
}

function nearestPlace(legs: readonly SectionLeg[], x: number, y: number): { readonly alongM: number; readonly offM: number } | null {
  let nearest: { alongM: number; offM: number } | null = null;
  for (const { plane, startM, lengthM } of legs) {
    const [along, left] = onPlane(plane, x, y);
    const held = Math.min(lengthM, Math.max(0, along));
    const offM = Math.hypot(along - held, left);
    if (nearest === null || offM < nearest.offM) nearest = { alongM: startM + held, offM };
  }
  return nearest;
}

/** Which sizes of what is drawn the scene does not give. */
function drawnOnly({ scene }: SectionSource, pieces: readonly SectionPiece[], trees: readonly SectionTree[]): DrawnOnly[] {
  const withHeight = new Set(
    (scene.objects ?? []).flatMap((object) => (object.kind === 'block' && object.heightM !== undefined ? [object.id] : [])),
  );
  const has = (kind: PartKind) => pieces.some((piece) => piece.kind === kind);
  const found: readonly (DrawnOnly | false)[] = [
    scene.deck.slabMm === undefined && has('slab') && 'slab thickness',
    has('line load') && 'wall height',
    pieces.some((piece) => piece.kind === 'block' && !withHeight.has(piece.owner)) && 'block height',
    trees.length > 0 && 'tree height',
  ];
  return found.filter((one): one is DrawnOnly => one !== false);
}

function extentM(pieces: readonly SectionPiece[], datumM: number): { lowM: number; highM: number } {
  let [low, high] = [Infinity, -Infinity];
  for (const { outline } of pieces) {
    for (const [, level] of outline) {
      low = Math.min(low, level);
      high = Math.max(high, level);
    }
  }
  return low <= high ? { lowM: low + datumM, highM: high + datumM } : { lowM: datumM, highM: datumM };
}
