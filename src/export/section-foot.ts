/** Below the cut: levels of the membrane, lengths of the stretches, bays with their permitted loads, and the whole length. */

import type { ExportLanguage } from '../model/engine.ts';
import type { SectionBay, SectionDrawing, SectionPoint, SectionSpan } from '../model/section-drawing.ts';
import { spreadRow } from './label-row.ts';
import type { Paper } from './paper.ts';
import { boundsOfShapes, CAP_MM, LINE_MM, line, PENS, type Point, type Shape, textAt } from './sheet.ts';
import { levelOn, numberOn, SHEET_WORDS } from './sheet-words.ts';
import { textWidthMm } from './text-width.ts';

/** Text of several lines under or on a stretch. */
interface Label extends SectionSpan {
  readonly lines: readonly string[];
}

const GAP_MM = 2.5;
const TICK_MM = 1.1;
/** Height in which lines go aside to labels that had to give way [mm]. */
const ASIDE_MM = 5;
/** Stretches shorter than this are not measured [m]. */
const LEAST_M = 0.005;

/**
 * Everything below the cut.
 * @param drawing - section
 * @param paper - scale
 * @param options - `topMm` below which it stands
 */
export function footShapes(
  drawing: SectionDrawing,
  paper: Paper,
  { topMm, language }: { readonly topMm: number; readonly language: ExportLanguage },
): Shape[] {
  const metres = (lengthM: number) => numberOn(lengthM, 2, language);
  const lengths = spansBetween(drawing).map((span) => ({ ...span, lines: [metres(span.toM - span.fromM)] }));
  const membrane = membraneRow(drawing, paper, topMm + 1, language);
  const chain = chainShapes(lengths, paper, membrane.bottomMm + 8, 'DIMENSIONS');
  const words = SHEET_WORDS[language];
  const labels: Label[] = [
    ...drawing.bays.map((bay) => ({ fromM: bay.fromM, toM: bay.toM, lines: bayLines(bay, language) })),
    ...drawing.gaps.map(({ fromM, toM, kind }) => ({ fromM, toM, lines: [words[kind]] })),
  ];
  labels.sort((p, q) => p.fromM + p.toM - q.fromM - q.toM);
  const bays = rowShapes(labels, paper, chain.bottomMm + 5, 'BAYS');
  const whole = [{ fromM: 0, toM: drawing.lengthM, lines: [metres(drawing.lengthM)] }];
  const total = drawing.lengthM > 0 ? chainShapes(whole, paper, bays.bottomMm + 6, 'DIMENSIONS') : bays;
  return [...membrane.shapes, ...chain.shapes, ...bays.shapes, ...(total === bays ? [] : total.shapes)];
}

/** The membrane where it begins, ends and changes its fall, each with a line up to its place. */
function membraneRow(drawing: SectionDrawing, paper: Paper, y: number, language: ExportLanguage): Row {
  const places = drawing.membrane.flatMap(turningPoints);
  if (places.length === 0) return { shapes: [], bottomMm: y };
  const labels = places.map(([at, levelM]): Label => ({ fromM: at, toM: at, lines: [levelOn(levelM, language)] }));
  const row = spreadLabels(labels, paper, y, 'LEVELS');
  const lines = places.map(([at, levelM]) => line('LEVELS', [paper.at(at, levelM), [paper.at(at, 0)[0], y]], PENS.faint));
  const left = boundsOfShapes(row.shapes)?.x ?? 0;
  const title = textAt([left - GAP_MM, row.bottomMm - 1], SHEET_WORDS[language].membrane, { layer: 'LEVELS', anchor: 'end' });
  return { shapes: [...lines, ...row.shapes, title], bottomMm: row.bottomMm };
}

/** Falls that differ by less than this are one [-]. */
const SAME_FALL = 0.003;
/** Turns nearer than this to one before are not told [m]. */
const LEAST_APART_M = 0.3;

function turningPoints(points: readonly SectionPoint[]): SectionPoint[] {
  const fall = (i: number) => (points[i + 1][1] - points[i][1]) / (points[i + 1][0] - points[i][0]);
  const last = points.length - 1;
  const kept: SectionPoint[] = [points[0]];
  for (let i = 1; i < last; i++) {
    if (Math.abs(fall(i) - fall(i - 1)) < SAME_FALL) continue;
    if (points[i][0] - kept[kept.length - 1][0] >= LEAST_APART_M && points[last][0] - points[i][0] >= LEAST_APART_M) kept.push(points[i]);
  }
  return last > 0 ? [...kept, points[last]] : kept;
}

/** Stretches between all ends of zones and gaps. */
function spansBetween({ zones, gaps, lengthM }: SectionDrawing): SectionSpan[] {
  const places = [0, lengthM, ...[...zones, ...gaps].flatMap(({ fromM, toM }) => [fromM, toM])].sort((p, q) => p - q);
  const kept = places.filter((at, i) => i === 0 || at - places[i - 1] > LEAST_M);
  return kept.slice(1).map((toM, i) => ({ fromM: kept[i], toM }));
}

function bayLines(bay: SectionBay, language: ExportLanguage): string[] {
  const words = SHEET_WORDS[language];
  const load = (valueKNm2: number) => numberOn(valueKNm2, 1, language);
  const loads = [
    ...(bay.permanentKNm2 === null ? [] : [words.permanent(load(bay.permanentKNm2))]),
    ...(bay.imposedKNm2 === null ? [] : [words.imposed(load(bay.imposedKNm2))]),
    ...(bay.totalKNm2 === null ? [] : [words.total(load(bay.totalKNm2))]),
    ...(bay.stageKNm2 === null ? [] : [words.building(load(bay.stageKNm2))]),
  ];
  return [words.bay(bay.bay), ...(loads.length === 0 ? [words.noLimit] : loads), ...(bay.confirmed ? [] : [words.notConfirmed])];
}

interface Row {
  readonly shapes: Shape[];
  readonly bottomMm: number;
}

/** Dimension line: numbers on it where they fit, else below it. */
function chainShapes(labels: readonly Label[], paper: Paper, y: number, layer: string): Row {
  const shapes = baseline(labels, paper, y, layer);
  const narrow: Label[] = [];
  for (const label of labels) {
    const width = textWidthMm(label.lines[0], CAP_MM);
    if (width + 2 > paper.lengthMm(label.toM - label.fromM)) narrow.push(label);
    else shapes.push(textAt([middleMm(label, paper), y - 1.2], label.lines[0], { layer, anchor: 'middle' }));
  }
  if (narrow.length === 0) return { shapes, bottomMm: y + TICK_MM };
  const below = spreadLabels(narrow, paper, y, layer);
  return { shapes: [...shapes, ...below.shapes], bottomMm: below.bottomMm };
}

/** Line with ticks and blocks of text below it. */
function rowShapes(labels: readonly Label[], paper: Paper, y: number, layer: string): Row {
  if (labels.length === 0) return { shapes: [], bottomMm: y };
  const below = spreadLabels(labels, paper, y, layer);
  return { shapes: [...baseline(labels, paper, y, layer), ...below.shapes], bottomMm: below.bottomMm };
}

const middleMm = ({ fromM, toM }: SectionSpan, paper: Paper) => paper.at((fromM + toM) / 2, 0)[0];

/** Oblique ticks at all ends, joined. */
function baseline(spans: readonly SectionSpan[], paper: Paper, y: number, layer: string): Shape[] {
  const ends = [...new Set(spans.flatMap(({ fromM, toM }) => [fromM, toM]))];
  const xOf = (at: number) => paper.at(at, 0)[0];
  return [
    ...spans.map(({ fromM, toM }) =>
      line(
        layer,
        [
          [xOf(fromM), y],
          [xOf(toM), y],
        ],
        PENS.thin,
      ),
    ),
    ...ends.map((at) => {
      const tick: Point[] = [
        [xOf(at) - TICK_MM, y + TICK_MM],
        [xOf(at) + TICK_MM, y - TICK_MM],
      ];
      return line(layer, tick, PENS.edge);
    }),
  ];
}

const isHead = (lines: readonly string[], index: number) => index === 0 && lines.length > 1;

/** Labels side by side below a line, joined to their stretch where they had to go beyond it. */
function spreadLabels(labels: readonly Label[], paper: Paper, y: number, layer: string): Row {
  const widths = labels.map(({ lines }) => Math.max(...lines.map((text, k) => textWidthMm(text, CAP_MM, isHead(lines, k)))));
  const wanted = labels.map((label, i) => ({ wantedMm: middleMm(label, paper), widthMm: widths[i] }));
  const middles = spreadRow(wanted, GAP_MM);
  const isAside = labels.map(
    (label, i) => widths[i] > paper.lengthMm(label.toM - label.fromM) || Math.abs(middles[i] - wanted[i].wantedMm) > 0.5,
  );
  const top = y + (isAside.includes(true) ? ASIDE_MM : 1.2);
  const shapes = labels.flatMap(({ lines }, i): Shape[] => {
    const joint: Point[] = [
      [wanted[i].wantedMm, y],
      [middles[i], top - 0.5],
    ];
    const texts = lines.map((text, k) =>
      textAt([middles[i], top + k * LINE_MM + 3], text, { layer, anchor: 'middle', bold: isHead(lines, k) }),
    );
    return isAside[i] ? [line(layer, joint, PENS.faint), ...texts] : texts;
  });
  return { shapes, bottomMm: top + LINE_MM * Math.max(...labels.map(({ lines }) => lines.length)) };
}
