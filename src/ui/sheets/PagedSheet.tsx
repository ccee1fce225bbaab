/** A sheet on its pages, as they will be printed: measured once out of sight, then parted; head and foot on each page. */

import { type CSSProperties, type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { type MeasuredBlock, type PagePart, pageBreaks } from '../facts/page-breaks.ts';
import { isTable, type PaperSize, roomMm, rowsOfPart, type SheetBlock, type TableBlock } from './paged-sheet.ts';

const PX_PER_MM = 96 / 25.4;

interface Props {
  readonly paper: PaperSize;
  readonly blocks: readonly SheetBlock[];
  readonly head: ReactNode;
  readonly foot: (page: number, of: number) => ReactNode;
  readonly continued: string;
  readonly onPages: (pages: number) => void;
}

export function PagedSheet({ paper, blocks, head, foot, continued, onPages }: Props) {
  const measure = useRef<HTMLDivElement>(null);
  const [pages, setPages] = useState<readonly (readonly PagePart[])[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other blocks have other heights
  useLayoutEffect(() => {
    let stale = false;
    const lay = () => {
      if (stale || measure.current === null) return;
      const found = pageBreaks(measured(measure.current), roomMm(paper).heightMm * PX_PER_MM);
      setPages((old) => (JSON.stringify(old) === JSON.stringify(found) ? old : found));
      onPages(found.length);
    };
    lay();
    // Letters of another font have other heights.
    void document.fonts.ready.then(lay);
    return () => {
      stale = true;
    };
  }, [paper, blocks, onPages]);
  const byKey = new Map(blocks.map((block) => [block.key, block]));
  return (
    <>
      {pages.map((parts, at) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
          key={at}
          className="paper-frame"
          style={{ '--paper-width': `${paper.widthMm}mm`, '--paper-height': `${paper.heightMm}mm` } as CSSProperties}
        >
          <section className="paper" aria-label={`${at + 1} / ${pages.length}`}>
            <header className="paper-head">{head}</header>
            <div className="paper-body">
              {parts.map(({ key, from, to }) => {
                const block = byKey.get(key);
                if (block === undefined) return null;
                return <Block key={`${key} ${from ?? ''}`} block={block} from={from} to={to} continued={from ? continued : null} />;
              })}
            </div>
            <footer className="paper-foot">{foot(at + 1, pages.length)}</footer>
          </section>
        </div>
      ))}
      {/* Last: hatches are found by the first of their name, and what is hidden here draws none. */}
      <div className="paper-measure" ref={measure} style={{ width: `${roomMm(paper).widthMm}mm` }} aria-hidden="true" inert>
        {blocks.map((block) => (
          <Block key={block.key} block={block} continued={null} />
        ))}
      </div>
    </>
  );
}

function measured(root: HTMLElement): MeasuredBlock[] {
  return [...root.children].map((element): MeasuredBlock => {
    const height = element.getBoundingClientRect().height + Number.parseFloat(getComputedStyle(element).marginBottom);
    const rows = [...element.querySelectorAll(':scope > .paper-table > tbody > tr')].map((row) => row.getBoundingClientRect().height);
    const key = element.getAttribute('data-block') ?? '';
    if (rows.length === 0) return { key, height };
    const isGrouped = element.querySelector('tbody > tr > th:empty') !== null;
    const repeated = isGrouped ? Math.max(...rows) - Math.min(...rows) : 0;
    return { key, height, table: { head: height - rows.reduce((sum, row) => sum + row, 0), rows, repeated } };
  });
}

interface BlockProps {
  readonly block: SheetBlock;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly continued: string | null;
}

function Block({ block, from, to, continued }: BlockProps) {
  return (
    <div className="paper-block" data-block={block.key}>
      {isTable(block) ? <PaperTable block={block} from={from} to={to} continued={continued} /> : block.node}
    </div>
  );
}

function PaperTable({ block, from, to, continued }: BlockProps & { readonly block: TableBlock }) {
  const { title, says, columns, width = 1 } = block;
  const all = columns.reduce((sum, { part }) => sum + part, 0);
  return (
    <>
      <h3 className="paper-title">{continued === null ? title : `${title} (${continued})`}</h3>
      {says !== undefined && <p className="paper-says">{says}</p>}
      <table className="paper-table" style={{ width: `${100 * width}%` }}>
        <colgroup>
          {columns.map(({ part }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
            <col key={i} style={{ width: `${(100 * part) / all}%` }} />
          ))}
        </colgroup>
        <thead>
          <tr>
            {columns.map(({ head, text }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
              <th key={i} scope="col" data-text={text === true || i === 0}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsOfPart(block, from, to).map(({ key, cells, mark }) => (
            <tr key={key} data-mark={mark}>
              {cells.map((cell, i) => {
                const text = columns[i]?.text === true;
                return i === 0 ? (
                  <th key={columns[i]?.head} scope="row">
                    {cell}
                  </th>
                ) : (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  <td key={i} data-text={text}>
                    {cell}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
