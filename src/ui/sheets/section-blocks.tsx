/** The section drawn in the model on a sheet of its own size, the smallest common paper it fits. */

import { A3, A4, FOOT_MM, HEAD_MM, MARGIN_MM, type PaperSize, roomMm, type SheetBlock } from './paged-sheet.ts';
import type { SheetContext } from './sheet-context.ts';

const PAPERS: readonly PaperSize[] = [
  { name: 'A4 landscape', widthMm: 297, heightMm: 210 },
  A4,
  A3,
  { name: 'A2 landscape', widthMm: 594, heightMm: 420 },
  { name: 'A1 landscape', widthMm: 841, heightMm: 594 },
  { name: 'A0 landscape', widthMm: 1189, heightMm: 841 },
];

export interface SheetDrawing {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Size on paper as the file states it; null for none. */
export function drawingOf(svg: string): SheetDrawing | null {
  const size = /<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg);
  return size ? { svg, widthMm: Number(size[1]), heightMm: Number(size[2]) } : null;
}

/** The least paper with room; a drawing larger than all of them gets a page as large as it needs. */
export function paperFor({ widthMm, heightMm }: SheetDrawing): PaperSize {
  const found = PAPERS.find((paper) => {
    const room = roomMm(paper);
    return widthMm <= room.widthMm && heightMm <= room.heightMm;
  });
  const around = 2 * MARGIN_MM;
  return found ?? { name: 'own', widthMm: Math.ceil(widthMm + around), heightMm: Math.ceil(heightMm + around + HEAD_MM + FOOT_MM) };
}

export function sectionBlocks({ words }: SheetContext, drawing: SheetDrawing | null): SheetBlock[] {
  if (drawing === null) return [{ key: 'none', node: <p>{words.noSection}</p> }];
  const { svg, widthMm, heightMm } = drawing;
  const style = { width: `${widthMm}mm`, height: `${heightMm}mm` };
  const source = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  return [{ key: 'section', node: <img className="paper-drawing" src={source} alt={words.section.picture} style={style} /> }];
}
