/** The plan as a drawing on paper: zones by surface and name, bays with a number if one is given, deck, edges, what stands on it. */

import type { DeckInput } from '../model/deck-input.ts';
import type { ExportLanguage } from '../model/engine.ts';
import type { PartKind } from '../model/picture.ts';
import type { PointM, SceneFile, SceneObject } from '../model/scene-file.ts';
import { paperAt } from './paper.ts';
import { type PlanLabel, placeLabels } from './plan-labels.ts';
import {
  BAY_PEN,
  outletShapes,
  type PlanOn,
  planShapes,
  RETAINING_PEN,
  regionOnPaper,
  SILL_PEN,
  sectionMark,
  surfaceOf,
  UPSTAND_PEN,
} from './plan-shapes.ts';
import { type Box, boundsOfShapes, line, PENS, type Pen, type Point, type Shape, type Sheet, textAt } from './sheet.ts';
import { corners, framed, type LegendEntry, SWATCH } from './sheet-frame.ts';
import { SHEET_WORDS } from './sheet-words.ts';
import { wrapped } from './text-width.ts';

export interface PlanSheetOptions {
  readonly scale: number;
  readonly language: ExportLanguage;
  /** Null for none. */
  readonly date: string | null;
  /** Documents that permit the loads. */
  readonly basis: readonly string[];
  /** Written large in each bay, by its id: a use, a heap's height … */
  readonly bayTexts?: ReadonlyMap<string, string>;
  /** What these are, for the title block. */
  readonly bayTextsAre?: string;
  /** Line of a section to be marked. */
  readonly section?: { readonly name: string; readonly line: readonly PointM[] };
}

/**
 * Lays out a plan.
 * @param scene - scene
 * @param input - the same, resolved
 * @param options - scale, language and what is written
 * @returns sheet
 */
export function planSheet(scene: SceneFile, input: DeckInput, options: PlanSheetOptions): Sheet {
  const { language, scale, date, basis, section } = options;
  const words = SHEET_WORDS[language];
  const on: PlanOn = { scene, input, paper: paperAt(scale) };
  const mark = section === undefined ? [] : sectionMark(on, section.line, section.name);
  const drawn = planShapes(on);
  const taken = [...mark.filter((shape) => shape.shape === 'text'), ...drawn.filter(({ layer }) => KEPT_CLEAR.has(layer))].flatMap(boxOf);
  const bays = placeLabels(bayLabels(on, options), taken).flatMap(({ shapes }) => shapes);
  const zones = placeLabels(zoneLabels(on), taken);
  const names = zoneNames(scene);
  const keyed = new Set(names.filter((name, z) => isKey(zones[z].variant, zoneText(name))));
  const lines = [
    words.plan,
    ...(options.bayTextsAre === undefined ? [] : [options.bayTextsAre]),
    `${words.scale(`1 : ${scale}`)}`,
    ...(date === null ? [] : [words.date(date)]),
    ...(basis.length === 0 ? [words.noBasis] : basis.map((document) => words.basis(document))),
  ];
  return framed([...drawn, ...mark, ...zones.flatMap(({ shapes }) => shapes), ...bays], {
    title: scene.name,
    lines,
    legend: [...surfaceEntries(on), ...signEntries(on, options), ...[...keyed].map((name) => keyEntry(keyOf(names, name), name))],
    notes: [],
    scale,
    originM: input.originM,
    language,
  });
}

/** No label stands on what is on these layers. */
const KEPT_CLEAR: ReadonlySet<string> = new Set(['COLUMNS', 'OUTLETS', 'OPENINGS']);

const boxOf = (shape: Shape): Box[] => [boundsOfShapes([shape])].filter((box) => box !== null);

function bayLabels({ input, paper }: PlanOn, { bayTexts }: PlanSheetOptions): PlanLabel[] {
  return input.bays.flatMap(({ id, region }): PlanLabel[] => {
    const text = bayTexts?.get(id);
    const on = regionOnPaper(region, paper);
    const colour = BAY_PEN.colour;
    const names: PlanLabel = { region: on, variants: [[id]], looks: { layer: 'BAYS', bold: true, colour }, best: 'upper left' };
    if (text === undefined) return [names];
    return [{ region: on, variants: [[text]], looks: { layer: 'NUMBERS', bold: true, capMm: 3.5 }, best: 'middle' }, names];
  });
}

/** Widths that a name is broken to, one after the other [mm]. */
const BREAKS_MM = [60, 30, 20];

function zoneText(name: string): string[][] {
  const variants = BREAKS_MM.map((width) => wrapped(name, width, 2.5));
  return variants.filter((lines, i) => i === 0 || lines.length > variants[i - 1].length);
}

/** Whether a placed label is only the number of its zone. */
const isKey = (variant: number, names: readonly string[][]) => variant >= names.length;

const zoneNames = ({ zones }: SceneFile) => zones.map(({ id, name }) => name ?? id);

/** Zones of one name share one number. */
const keyOf = (names: readonly string[], name: string) => String([...new Set(names)].indexOf(name) + 1);

function zoneLabels({ scene, input, paper }: PlanOn): PlanLabel[] {
  const names = zoneNames(scene);
  return input.zones.map(({ region }, z) => {
    const variants = [...zoneText(names[z]), [keyOf(names, names[z])]];
    return { region: regionOnPaper(region, paper), variants, looks: { layer: 'LABELS' }, best: 'middle' };
  });
}

function keyEntry(text: string, name: string): LegendEntry {
  return { text: name, swatch: ([x, y]) => [textAt([x + SWATCH[0] / 2, y + 3.2], text, { layer: 'LEGEND', anchor: 'middle' })] };
}

function surfaceEntries({ input }: PlanOn): LegendEntry[] {
  const seen = new Map<string, { readonly kind: PartKind; readonly name: string }>();
  input.zones.forEach((_, z) => {
    const surface = surfaceOf(input, z);
    if (surface !== null) seen.set(`${surface.kind} ${surface.name}`, surface);
  });
  return [...seen.values()].map(({ kind, name }) => ({
    text: name,
    swatch: ([x, y]) => [
      { shape: 'area', layer: 'LEGEND', rings: [corners(x, y, SWATCH[0], SWATCH[1])], fill: null, hatch: kind, pen: PENS.thin },
    ],
  }));
}

function signEntries({ scene }: PlanOn, { language }: PlanSheetOptions): LegendEntry[] {
  const words = SHEET_WORDS[language].plans;
  const { deck } = scene;
  const stroke =
    (pen: Pen) =>
    ([x, y]: Point) => [
      line(
        'LEGEND',
        [
          [x, y + 2],
          [x + SWATCH[0], y + 2],
        ],
        pen,
      ),
    ];
  const middle = ([x, y]: Point): Point => [x + SWATCH[0] / 2, y + 2];
  const has = (kind: 'outlet' | 'overflow') => (deck.outlets ?? []).some((outlet) => outlet.kind === kind);
  const hasEdge = (kind: 'upstand' | 'threshold') => (deck.edges ?? []).some((edge) => edge.kind === kind);
  const hasObject = (kind: SceneObject['kind']) => (scene.objects ?? []).some((object) => object.kind === kind);
  const hatched =
    (kind: PartKind) =>
    ([x, y]: Point): Shape[] => [
      { shape: 'area', layer: 'LEGEND', rings: [corners(x, y + 1, SWATCH[0], 2)], fill: null, hatch: kind, pen: PENS.thin },
    ];
  const circle = (at: Point): Shape => ({ shape: 'circle', layer: 'LEGEND', at, radiusMm: 2, fill: null, pen: PENS.thin });
  const box = ([x, y]: Point): Shape => ({
    shape: 'line',
    layer: 'LEGEND',
    points: corners(x - 1.5, y - 1.5, 3, 3),
    closed: true,
    pen: { ...PENS.edge, dashMm: [1.2, 0.6] },
  });
  const entries: readonly (LegendEntry | false)[] = [
    { text: words.bay, swatch: stroke(BAY_PEN) },
    hasEdge('upstand') && { text: words.upstand, swatch: stroke(UPSTAND_PEN) },
    hasEdge('threshold') && { text: words.sill, swatch: stroke(SILL_PEN) },
    has('outlet') && { text: words.outlet, swatch: (at) => outletShapes(middle(at), 'outlet') },
    has('overflow') && { text: words.overflow, swatch: (at) => outletShapes(middle(at), 'overflow') },
    (deck.columns ?? []).length > 0 && { text: words.column, swatch: (at) => [box(middle(at))] },
    hasObject('tree') && { text: words.tree, swatch: (at) => [circle(middle(at))] },
    hasObject('line') && { text: words.wall, swatch: hatched('line load') },
    hasObject('retaining') && { text: words.retaining, swatch: stroke(RETAINING_PEN) },
    hasObject('block') && { text: words.block, swatch: hatched('block') },
  ];
  return entries.filter((entry): entry is LegendEntry => entry !== false);
}
