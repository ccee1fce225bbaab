/** What lies where, written above the cut: one block of lines per station and edge, with a line down to its place. */

import type { ExportLanguage } from '../model/engine.ts';
import type { SectionDrawing, SectionEdge, SectionStation } from '../model/section-drawing.ts';
import { spreadRow } from './label-row.ts';
import type { Paper } from './paper.ts';
import { CAP_MM, LINE_MM, line, PENS, type Point, type Shape, textAt } from './sheet.ts';
import { levelOn, numberOn, SHEET_WORDS, thicknessOn } from './sheet-words.ts';
import { textWidthMm, wrapped } from './text-width.ts';

interface Line {
  /** Number at the right end of its column; '' for none. */
  readonly figure: string;
  readonly text: string;
  readonly bold?: boolean;
  /** Ruled off from the line above. */
  readonly ruled?: boolean;
}

interface Callout {
  readonly alongM: number;
  /** Where its line ends [m]. */
  readonly footM: number;
  readonly lines: readonly Line[];
}

const FIGURE_MM = 9;
const TEXT_FROM_MM = FIGURE_MM + 2.5;
const NAME_MM = 48;
/** Height in which the lines go aside to their blocks [mm]. */
const ASIDE_MM = 9;
const GAP_MM = 4;

/**
 * Blocks above the cut.
 * @param drawing - section
 * @param paper - scale
 * @param options - `bottomMm` above which the blocks stand
 */
export function calloutShapes(
  drawing: SectionDrawing,
  paper: Paper,
  { bottomMm, language }: { readonly bottomMm: number; readonly language: ExportLanguage },
): Shape[] {
  const callouts = [...stationCallouts(drawing.stations, language), ...drawing.edges.map((edge) => edgeCallout(edge, language))];
  callouts.sort((p, q) => p.alongM - q.alongM);
  const widths = callouts.map(widthMm);
  const wanted = callouts.map(({ alongM }, i) => ({ wantedMm: paper.at(alongM, 0)[0] + widths[i] / 2, widthMm: widths[i] }));
  const middles = spreadRow(wanted, GAP_MM);
  const baseMm = bottomMm - ASIDE_MM;
  return callouts.flatMap((callout, i) => {
    const left = middles[i] - widths[i] / 2;
    const top = baseMm - callout.lines.length * LINE_MM;
    return [...leader(callout, paper, [left, top, baseMm]), ...blockShapes(callout.lines, left, top, widths[i])];
  });
}

function leader(callout: Callout, paper: Paper, [left, top, baseMm]: readonly [number, number, number]): Shape[] {
  const [x, foot] = paper.at(callout.alongM, callout.footM);
  const points: Point[] = [
    [left, top],
    [left, baseMm],
    [x, baseMm + ASIDE_MM],
    [x, foot],
  ];
  return [
    line('LABELS', points, PENS.thin),
    { shape: 'circle', layer: 'LABELS', at: [x, foot], radiusMm: 0.6, fill: PENS.thin.colour, pen: null },
  ];
}

function widthMm({ lines }: Callout): number {
  const ends = lines.map((one) => (isTable(one) ? TEXT_FROM_MM : 1.5) + textWidthMm(one.text, CAP_MM, one.bold));
  return Math.max(...ends);
}

const isTable = (one: Line) => one.bold !== true;

function blockShapes(lines: readonly Line[], left: number, top: number, width: number): Shape[] {
  return lines.flatMap((one, i): Shape[] => {
    const y = top + i * LINE_MM + 3.2;
    const shapes: Shape[] = [];
    if (one.figure !== '') shapes.push(textAt([left + FIGURE_MM + 1, y], one.figure, { layer: 'LABELS', anchor: 'end' }));
    const bold = one.bold === true;
    shapes.push(textAt([left + (isTable(one) ? TEXT_FROM_MM : 1.5), y], one.text, { layer: 'LABELS', bold }));
    if (one.ruled) {
      const rule: Point[] = [
        [left, y - 3],
        [left + width, y - 3],
      ];
      shapes.push(line('LABELS', rule, PENS.faint));
    }
    return shapes;
  });
}

const heading = (text: string): Line[] =>
  wrapped(text, NAME_MM + TEXT_FROM_MM, CAP_MM).map((part) => ({ figure: '', text: part, bold: true }));

function stationCallouts(stations: readonly SectionStation[], language: ExportLanguage): Callout[] {
  const words = SHEET_WORDS[language];
  const known: { readonly number: string; readonly rows: readonly Line[] }[] = [];
  return stations.map((station, i) => {
    const number = String(i + 1);
    const rows = layerRows(station, language);
    const like = known.find((one) => one.rows.length === rows.length && one.rows.every((row, k) => row.text === rows[k].text));
    const others = like ? rows.filter((row, k) => row.figure !== like.rows[k].figure) : rows;
    if (!like && rows.length > 0) known.push({ number, rows });
    const note = !like ? [] : [others.length === 0 ? words.sameAs(like.number) : words.exceptAs(like.number)];
    const totalM = station.finishedM - station.membraneM;
    return {
      alongM: station.alongM,
      footM: station.membraneM,
      lines: [
        ...heading(`${number}  ${station.zoneName}`),
        ...note.map((text) => ({ figure: '', text })),
        ...others.flatMap(({ figure, text }) =>
          wrapped(text, NAME_MM, CAP_MM).map((part, k) => ({ figure: k === 0 ? figure : '', text: part })),
        ),
        ...(rows.length === 0 ? [] : [{ figure: thicknessOn(totalM, language), text: words.inAll, ruled: true }]),
        ...(rows.length === 0 ? [] : [{ figure: '', text: `${words.finished} ${levelOn(station.finishedM, language)}` }]),
        { figure: '', text: `${words.membrane} ${levelOn(station.membraneM, language)}` },
      ],
    };
  });
}

/** Top layer first, as one sees them. */
function layerRows({ layers }: SectionStation, language: ExportLanguage): Line[] {
  return layers.map(({ name, bottomM, topM }) => ({ figure: thicknessOn(topM - bottomM, language), text: name })).reverse();
}

function edgeCallout(edge: SectionEdge, language: ExportLanguage): Callout {
  const words = SHEET_WORDS[language];
  const aboveM = edge.finishedM === null ? null : edge.membraneTopM - edge.finishedM;
  const lines: Line[] = [
    ...heading(words.edge[edge.kind](edge.id)),
    { figure: '', text: `${words.membraneTop} ${levelOn(edge.membraneTopM, language)}` },
  ];
  if (aboveM === null) lines.push({ figure: '', text: words.nothingBeside });
  else {
    // Down for what lies above, so that no height looks greater than it is.
    const heightMm = aboveM >= 0 ? Math.floor(aboveM * 1000 + 1e-6) : Math.ceil(-aboveM * 1000 - 1e-6);
    lines.push(
      { figure: numberOn(heightMm, 0, language), text: aboveM >= 0 ? words.aboveFinished : words.belowFinished, ruled: true },
      { figure: '', text: `${words.finished} ${levelOn(edge.finishedM as number, language)}` },
    );
  }
  return { alongM: edge.alongM, footM: Math.max(edge.membraneTopM, edge.deckM), lines };
}
