/** The cut itself on paper: slab, layers, what stands on them, trees behind, bends, and a ruler of levels. */

import type { ExportLanguage } from '../model/engine.ts';
import type { PartKind } from '../model/picture.ts';
import type { SectionDrawing, SectionPiece, SectionTree } from '../model/section-drawing.ts';
import type { Paper } from './paper.ts';
import { type Area, line, PENS, type Pen, type Point, type Shape, textAt } from './sheet.ts';
import { levelOn } from './sheet-words.ts';

/** Name of the DXF layer of a kind of part. */
export function layerName(kind: PartKind): string {
  return `CUT-${kind.toUpperCase().replaceAll(' ', '-')}`;
}

/** Everything cut, trees first so that they lie behind. */
export function cutShapes(drawing: SectionDrawing, paper: Paper): Shape[] {
  return [
    ...drawing.trees.flatMap((tree) => treeShapes(tree, paper)),
    ...drawing.pieces.map((piece) => pieceShape(piece, paper)),
    ...drawing.membrane.map((points) =>
      line(
        'MEMBRANE',
        points.map(([at, level]) => paper.at(at, level)),
        PENS.cut,
      ),
    ),
  ];
}

const PEN_OF: Readonly<Partial<Record<PartKind, Pen>>> = {
  slab: PENS.outline,
  edge: PENS.outline,
  retaining: PENS.outline,
  block: PENS.outline,
};
const STANDING_PEN = PENS.edge;

/** A layer drawn thinner than this would be nothing but its outline [mm]. */
const LINE_ONLY_MM = 0.4;

function pieceShape(piece: SectionPiece, paper: Paper): Area {
  const ring = piece.outline.map(([at, level]) => paper.at(at, level));
  const isLayer = piece.layer >= 0;
  const pen = PEN_OF[piece.kind] ?? (isLayer ? layerPen(piece, paper) : STANDING_PEN);
  return { shape: 'area', layer: layerName(piece.kind), rings: [ring], fill: null, hatch: piece.kind, pen };
}

function layerPen(piece: SectionPiece, paper: Paper): Pen {
  const alongs = piece.outline.map(([at]) => at);
  const lengthM = Math.max(...alongs) - Math.min(...alongs);
  return paper.heightMm(piece.areaM2 / lengthM) < LINE_ONLY_MM ? PENS.faint : PENS.thin;
}

/** Bumps round a crown, and how far they go out and in. */
const BUMPS = 9;
const POINTS_PER_BUMP = 6;

function treeShapes({ alongM, groundM, heightM, spreadM }: SectionTree, paper: Paper): Shape[] {
  const crownM = { middle: groundM + 0.64 * heightM, half: 0.36 * heightM };
  const outline: Point[] = [];
  for (let i = 0; i < BUMPS * POINTS_PER_BUMP; i++) {
    const angle = (2 * Math.PI * i) / (BUMPS * POINTS_PER_BUMP);
    const reach = 0.88 + 0.12 * Math.abs(Math.sin((BUMPS * angle) / 2));
    outline.push(paper.at(alongM + (reach * Math.cos(angle) * spreadM) / 2, crownM.middle + reach * Math.sin(angle) * crownM.half));
  }
  const trunkM = Math.max(0.04, 0.012 * heightM);
  const trunk = [-1, 1].map((side) =>
    line(
      'TREES',
      [paper.at(alongM + side * trunkM, groundM), paper.at(alongM + side * 0.7 * trunkM, crownM.middle - 0.8 * crownM.half)],
      PENS.faint,
    ),
  );
  return [...trunk, { shape: 'line', layer: 'TREES', points: outline, closed: true, pen: PENS.faint }];
}

/** Dash-dot lines where the line of the section bends. */
export function bendShapes(drawing: SectionDrawing, paper: Paper, box: { readonly topMm: number; readonly bottomMm: number }): Shape[] {
  return drawing.bendsM.map((alongM) => {
    const [x] = paper.at(alongM, 0);
    const points: Point[] = [
      [x, box.topMm],
      [x, box.bottomMm],
    ];
    return line('BENDS', points, { ...PENS.thin, dashMm: [6, 1.5, 0.5, 1.5] });
  });
}

/** Steps of the ruler of levels [m]. */
const STEPS_M = [0.05, 0.1, 0.25, 0.5, 1, 2, 5];
const LEAST_STEP_MM = 5;

/** Ruler of levels left of the cut. */
export function levelRuler(drawing: SectionDrawing, paper: Paper, language: ExportLanguage): Shape[] {
  const stepM = STEPS_M.find((step) => paper.heightMm(step) >= LEAST_STEP_MM) ?? STEPS_M[STEPS_M.length - 1];
  const first = Math.floor(drawing.lowM / stepM + 1e-6);
  const last = Math.ceil(drawing.highM / stepM - 1e-6);
  const x = paper.at(0, 0)[0] - 6;
  const yOf = (step: number) => paper.at(0, step * stepM)[1];
  const shapes: Shape[] = [
    line(
      'LEVELS',
      [
        [x, yOf(first)],
        [x, yOf(last)],
      ],
      PENS.thin,
    ),
  ];
  for (let step = first; step <= last; step++) {
    const y = yOf(step);
    shapes.push(
      line(
        'LEVELS',
        [
          [x - 1.5, y],
          [x, y],
        ],
        PENS.thin,
      ),
      textAt([x - 2.5, y + 1.25], levelOn(step * stepM, language).replace(/0$/, ''), { layer: 'LEVELS', anchor: 'end' }),
    );
  }
  return shapes;
}
