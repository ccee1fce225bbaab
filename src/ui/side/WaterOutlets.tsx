/** Outlets with what comes to them and a button that blocks each; overflows with their duty. */

import { useMemo, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { judge } from '../facts/utilisation.ts';
import { type ListedOutlet, type ListedOverflow, listOutlets, listOverflows } from '../facts/water-list.ts';
import { numberText } from '../format.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useView } from '../use-stores.ts';

const AROUND_M = 12;
/** More rows at first would push the rest of the sheet out of sight. */
const FIRST = 12;

interface Props {
  readonly snapshot: Snapshot;
}

/** The first rows of a list, and a button for the others. */
function useFirst<T>(all: readonly T[]): { readonly rows: readonly T[]; readonly more: number; readonly showAll: () => void } {
  const [open, setOpen] = useState(false);
  const rows = open ? all : all.slice(0, FIRST);
  return { rows, more: all.length - rows.length, showAll: () => setOpen(true) };
}

const isOver = (share: number | null) => share !== null && judge(share) === 'over';

export function OutletsTable({ snapshot: { report, scene } }: Props) {
  const listed = useMemo(() => listOutlets(report, scene), [report, scene]);
  const { rows, more, showAll } = useFirst(listed);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.outlets}</h2>
      <p className="small">{listed.length === 0 ? t.water.noOutlets : t.water.outletsSay}</p>
      {listed.length > 0 && (
        <table className="numbers water-outlets">
          <caption className="unseen">{t.water.outletsCaption}</caption>
          <thead>
            <tr>
              {[t.water.outlet, t.water.area, t.water.flow, t.water.block].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((outlet) => (
              <OutletRow key={outlet.id} outlet={outlet} />
            ))}
          </tbody>
        </table>
      )}
      {more > 0 && (
        <button type="button" className="button" onClick={showAll}>
          {t.water.more(more)}
        </button>
      )}
    </section>
  );
}

function OutletRow({ outlet }: { readonly outlet: ListedOutlet }) {
  const { id, at, catchmentM2, designLps, capacityLps, utilisation, blockable } = outlet;
  const go = useGo();
  const blocked = useView((state) => state.blocked === id);
  const block = useView((state) => state.blockOutlet);
  return (
    <tr data-picked={blocked}>
      <th scope="row">
        <button
          type="button"
          className="row-button"
          disabled={at === null}
          aria-label={t.water.pick(id)}
          onClick={() => at && go.toPoint(at, AROUND_M)}
        >
          {id}
        </button>
      </th>
      <td>{numberText(catchmentM2, 1)}</td>
      <td>
        {capacityLps === null && designLps === null ? t.water.noCapacity : t.water.ofCapacity(designLps, capacityLps)}
        <span className={isOver(utilisation) ? 'small block water-wrong' : 'small block'}>
          {isOver(utilisation) && utilisation !== null ? t.water.judged(utilisation) : t.water.used(utilisation)}
        </span>
      </td>
      <td>
        {blockable && (
          <button
            type="button"
            className="button water-block"
            aria-pressed={blocked}
            aria-label={blocked ? t.water.open(id) : t.water.blockPick(id)}
            onClick={() => block(blocked ? null : id)}
          >
            {blocked ? t.water.openShort : t.water.block}
          </button>
        )}
      </td>
    </tr>
  );
}

export function OverflowsTable({ snapshot: { report, scene } }: Props) {
  const listed = useMemo(() => listOverflows(report, scene), [report, scene]);
  const { rows, more, showAll } = useFirst(listed);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.overflows}</h2>
      <p className={listed.length === 0 ? 'water-missing' : 'small'}>{listed.length === 0 ? t.water.noOverflows : t.water.overflowsSay}</p>
      {listed.length > 0 && (
        <table className="numbers water-outlets">
          <caption className="unseen">{t.water.overflowsCaption}</caption>
          <thead>
            <tr>
              {[t.water.overflow, t.water.area, t.water.duty].map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((overflow) => (
              <OverflowRow key={overflow.id} overflow={overflow} />
            ))}
          </tbody>
        </table>
      )}
      {more > 0 && (
        <button type="button" className="button" onClick={showAll}>
          {t.water.more(more)}
        </button>
      )}
    </section>
  );
}

function OverflowRow({ overflow }: { readonly overflow: ListedOverflow }) {
  const { id, at, areaM2, dutyLps, capacityLps, utilisation, invertM, depthMm } = overflow;
  const go = useGo();
  return (
    <tr>
      <th scope="row">
        <button
          type="button"
          className="row-button"
          disabled={at === null}
          aria-label={t.water.pick(id)}
          onClick={() => at && go.toPoint(at, AROUND_M)}
        >
          {id}
        </button>
        <span className="small block">{t.water.levelAt(invertM, depthMm)}</span>
      </th>
      <td>{numberText(areaM2, 1)}</td>
      <td>
        {t.water.ofCapacity(dutyLps, capacityLps)}
        <span className={isOver(utilisation) ? 'small block water-wrong' : 'small block'}>
          {isOver(utilisation) && utilisation !== null ? t.water.judged(utilisation) : t.water.used(utilisation)}
        </span>
      </td>
    </tr>
  );
}
