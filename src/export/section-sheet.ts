/** A section as a drawing on paper: the cut, what lies where, lengths, bays, legend and title block. */

import type { ExportLanguage } from '../model/engine.ts';
import type { PartKind } from '../model/picture.ts';
import { ROLES } from '../model/roles.ts';
import type { SectionDrawing } from '../model/section-drawing.ts';
import { paperAt } from './paper.ts';
import { calloutShapes } from './section-callouts.ts';
import { bendShapes, cutShapes, layerName, levelRuler } from './section-cut.ts';
import { footShapes } from './section-foot.ts';
import { boundsOfShapes, PENS, type Shape, type Sheet, textAt } from './sheet.ts';
import { corners, framed, type LegendEntry, SWATCH } from './sheet-frame.ts';
import { numberOn, SHEET_WORDS } from './sheet-words.ts';

export interface SectionSheetOptions {
  /** As written at the ends of its line on the plan: A–A. */
  readonly name: string;
  readonly scale: number;
  /** Heights are drawn this many times as large as lengths. */
  readonly exaggeration: number;
  readonly language: ExportLanguage;
  /** Null for none. */
  readonly date: string | null;
  /** Documents that permit the loads. */
  readonly basis: readonly string[];
}

/**
 * Lays out a section.
 * @param drawing - section
 * @param options - scale, language and what the title block says
 * @returns sheet
 */
export function sectionSheet(drawing: SectionDrawing, options: SectionSheetOptions): Sheet {
  const { language, scale } = options;
  const words = SHEET_WORDS[language];
  const paper = paperAt(scale, options.exaggeration);
  if (drawing.pieces.length === 0) return framed([textAt([0, 0], words.noDeck)], { ...frameOf(drawing, options), legend: [] });
  const cut = [...cutShapes(drawing, paper), ...levelRuler(drawing, paper, language)];
  const box = boundsOfShapes(cut) as NonNullable<ReturnType<typeof boundsOfShapes>>;
  const [topMm, bottomMm] = [box.y - 3, box.y + box.height];
  const foot = footShapes(drawing, paper, { topMm: bottomMm, language });
  const callouts = calloutShapes(drawing, paper, { bottomMm: topMm, language });
  const shapes = [...cut, ...bendShapes(drawing, paper, { topMm, bottomMm: bottomMm + 2 }), ...foot, ...callouts];
  return framed(shapes, frameOf(drawing, options));
}

function frameOf(drawing: SectionDrawing, options: SectionSheetOptions) {
  const { language, scale, exaggeration, date, basis, name } = options;
  const words = SHEET_WORDS[language];
  const ratio = (to: number) => `1 : ${numberOn(to, Number.isInteger(to) ? 0 : 1, language)}`;
  const times = numberOn(exaggeration, Number.isInteger(exaggeration) ? 0 : 1, language);
  const heights = exaggeration === 1 ? words.trueHeights : words.heights(times, ratio(scale / exaggeration));
  const sizes = drawing.drawnOnly.map((size) => words.sizes[size]);
  const state = drawing.stage === null ? words.garden : words.stage(drawing.stage.name);
  return {
    title: drawing.scene,
    lines: [
      `${words.section(name)}, ${state}`,
      `${words.scale(ratio(scale))}, ${heights}`,
      ...(date === null ? [] : [words.date(date)]),
      ...(basis.length === 0 ? [words.noBasis] : basis.map((document) => words.basis(document))),
    ],
    legend: legendOf(drawing, language),
    notes: [words.levels, ...(sizes.length === 0 ? [] : [words.drawnOnly(sizes.join(', '))])],
    scale,
    originM: [0, 0] as const,
    language,
  };
}

/** Layers by role as usually laid, then everything else; each material once. */
function legendOf({ pieces, trees }: SectionDrawing, language: ExportLanguage): LegendEntry[] {
  const { kinds } = SHEET_WORDS[language];
  const rank = (kind: PartKind) => (ROLES as readonly string[]).indexOf(kind.replace('loose ', ''));
  const layers = new Map<string, { readonly kind: PartKind; readonly text: string }>();
  const others = new Map<string, { readonly kind: PartKind; readonly text: string }>();
  for (const { kind, layer, name } of pieces) {
    const text = layer >= 0 ? name : (kinds[kind] ?? kind);
    (layer >= 0 ? layers : others).set(`${kind} ${text}`, { kind, text });
  }
  const entries = [...[...layers.values()].sort((p, q) => rank(p.kind) - rank(q.kind)), ...others.values()];
  const swatches = entries.map(({ kind, text }): LegendEntry => ({ text, swatch: ([x, y]) => [swatchOf(kind, x, y)] }));
  if (trees.length === 0) return swatches;
  const tree: LegendEntry = {
    text: kinds['tree crown'] ?? '',
    swatch: ([x, y]) => [{ shape: 'circle', layer: 'LEGEND', at: [x + SWATCH[0] / 2, y + 2], radiusMm: 2, fill: null, pen: PENS.faint }],
  };
  return [...swatches, tree];
}

function swatchOf(kind: PartKind, x: number, y: number): Shape {
  return { shape: 'area', layer: layerName(kind), rings: [corners(x, y, SWATCH[0], SWATCH[1])], fill: null, hatch: kind, pen: PENS.thin };
}
