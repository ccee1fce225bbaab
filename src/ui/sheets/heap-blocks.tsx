/** The heap board: one page with the plan; where a bay is too small for its numbers on it, a table follows. */

import { missingBasis } from '../facts/basis.ts';
import { heapBoard, heapMaterials, isUnusual } from '../facts/heap-board.ts';
import { talkMaterials } from '../facts/talk-facts.ts';
import { BAY_FILLS, fittingScales, type HeapColumn, HeapPlanPaper, heapLabels, PaperHatches } from './HeapPlanPaper.tsx';
import { roomMm, type SheetBlock, type TableBlock } from './paged-sheet.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { codeSideMm, NoShareCode, ShareCode } from './ShareCode.tsx';
import type { SheetContext } from './sheet-context.ts';

/** Title, order of the materials, legend and scale bar around the plan [mm]. */
const AROUND_MM = 40;
/** More are hard to tell apart on a board; those of the stage come first. */
const FIRST = 4;

/** Between the plan and the code beside it [mm]. */
const BESIDE_MM = 6;

export function heapScales({ snapshot, paper, share }: Pick<SheetContext, 'snapshot' | 'paper' | 'share'>): number[] {
  const room = roomMm(paper);
  const code = share?.code ? codeSideMm(share.code) + BESIDE_MM : 0;
  return fittingScales(snapshot, room.widthMm - 2 - code, room.heightMm - AROUND_MM);
}

export const ALL_MATERIALS = '*';

export interface HeapChoice {
  /** Null for those that matter most in the stage. */
  readonly material: string | null;
  readonly scale: number | null;
}

export function heapBlocks(on: SheetContext, choice: HeapChoice): SheetBlock[] {
  const { snapshot, words, stage, share } = on;
  const { report, scene, stages, materialNames } = snapshot;
  const shown = stage === null ? undefined : stages[stage];
  const all = heapMaterials(report);
  const scales = heapScales(on);
  const scale = scales.find((one) => one === choice.scale) ?? scales[0];
  if (stage === null || shown === undefined || all.length === 0 || scale === undefined) {
    return [{ key: 'none', node: <p>{words.heaps.noPlan}</p> }];
  }
  const materials = chosenMaterials(choice.material, all, talkMaterials(snapshot, stage));
  const columns = materials.map((material): HeapColumn => ({ material, entries: heapBoard(report, scene, shown.id, material) }));
  const names = materials.map((material) => materialNames.get(material) ?? material);
  const title = words.heaps.title(words.stageName(stage + 1, shown.name));
  const labels = heapLabels({ snapshot, scale }, columns, words);
  const plan = (
    <div className="heap-board">
      <h2>{title}</h2>
      <p className="paper-says">
        {words.heaps.says} {words.heaps.loadOnly}
        {columns.some(({ entries }) => isUnusual(entries)) && ` ${words.heaps.unusual}`}
      </p>
      <p className="heap-order">{materials.length === 1 ? names[0] : words.heaps.materials(names)}</p>
      <div className="heap-middle">
        <HeapPlanPaper snapshot={snapshot} scale={scale} columns={columns} labels={labels} title={title} />
        {share?.code && <ShareCode link={share.link} code={share.code} words={words} />}
      </div>
      <div className="heap-foot">
        <ScaleBar scale={scale} words={words} />
        <span>{words.scaleIs(scale)}</span>
        <Legend on={on} />
      </div>
      {share !== null && share.code === null && <NoShareCode link={share.link} words={words} />}
    </div>
  );
  const missing = scene.deck.bays.some(({ id }) => !labels.some(({ bay }) => bay === id));
  return [{ key: 'plan', node: plan }, ...(missing ? [heapTable(on, columns, names)] : [])];
}

function chosenMaterials(material: string | null, all: readonly string[], byUse: readonly string[]): readonly string[] {
  if (material === ALL_MATERIALS) return all;
  return material !== null && all.includes(material) ? [material] : byUse.slice(0, FIRST);
}

function Legend({ on: { words, snapshot } }: { readonly on: SheetContext }) {
  const entries: readonly (readonly [keyof typeof BAY_FILLS, string])[] = [
    ['free', words.heaps.free],
    ['unconfirmed', words.heaps.open],
    ['over', words.heaps.over],
    ...((snapshot.scene.deck.openings ?? []).length > 0 ? [['opening', words.heaps.opening] as const] : []),
  ];
  return (
    <ul className="heap-legend" aria-label={words.legend}>
      {entries.map(([state, says]) => (
        <li key={state}>
          <svg width="9mm" height="5mm" viewBox="0 0 9 5" aria-hidden="true">
            <PaperHatches />
            <rect
              className={state === 'opening' ? 'paper-opening' : 'paper-bay'}
              fill={BAY_FILLS[state]}
              x="0.3"
              y="0.3"
              width="8.4"
              height="4.4"
            />
          </svg>
          {says}
        </li>
      ))}
    </ul>
  );
}

function heapTable({ words }: SheetContext, columns: readonly HeapColumn[], names: readonly string[]): TableBlock {
  return {
    key: 'table',
    title: words.heaps.table,
    columns: [
      { head: words.heaps.bayHead, part: 1, text: true },
      { head: words.heaps.permittedHead, part: 1 },
      ...names.map((name, i) => ({ head: `${i + 1} ${name}`, part: 1.4 })),
      { head: words.heaps.basisHead, part: 2.5, text: true },
    ],
    rows: (columns[0]?.entries ?? []).map(({ bay, permittedKNm2, basis, confirmed }, row) => ({
      key: bay,
      mark: confirmed ? undefined : 'unconfirmed',
      cells: [
        bay,
        permittedKNm2 === null ? '–' : words.number(permittedKNm2, 2),
        ...columns.map(({ entries }) => {
          const entry = entries[row];
          return entry === undefined ? '–' : words.heaps.entry(entry);
        }),
        basis !== undefined && missingBasis(basis).length === 0 ? words.oneBasis(basis) : words.unconfirmed,
      ],
    })),
  };
}
