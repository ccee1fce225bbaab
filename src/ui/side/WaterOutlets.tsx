/** Outlets with what comes to them and a button that blocks each; overflows with their duty. */

import { type ReactNode, useMemo, useState } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';
import type { Snapshot } from '../../model/engine.ts';
import { judge } from '../facts/utilisation.ts';
import { type ListedOutlet, type ListedOverflow, listOutlets, listOverflows } from '../facts/water-list.ts';
import { numberText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useView } from '../use-stores.ts';

const AROUND_M = 12;
/** More rows at first would push the rest of the sheet out of sight. */
const FIRST = 12;

interface Props {
  readonly snapshot: Snapshot;
}

interface ListProps<T> {
  readonly title: string;
  readonly says: string;
  /** Having none is a fault. */
  readonly wanted?: boolean;
  readonly caption: string;
  readonly heads: readonly string[];
  readonly listed: readonly T[];
  readonly row: (one: T) => ReactNode;
}

/** A titled table of its first rows, and a button for the others. */
function ListPart<T>({ title, says, wanted = false, caption, heads, listed, row }: ListProps<T>) {
  const [open, setOpen] = useState(false);
  const rows = open ? listed : listed.slice(0, FIRST);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{title}</h2>
      <p className={wanted && listed.length === 0 ? 'water-missing' : 'small'}>{says}</p>
      {listed.length > 0 && (
        <table className="numbers water-outlets">
          <caption className="unseen">{caption}</caption>
          <TableHead heads={heads} />
          <tbody>{rows.map(row)}</tbody>
        </table>
      )}
      {listed.length > rows.length && (
        <button type="button" className="button" onClick={() => setOpen(true)}>
          {t.water.more(listed.length - rows.length)}
        </button>
      )}
    </section>
  );
}

/** Share of a capacity, in words that tell when it is too much. */
function Used({ share, ask }: { readonly share: number | null; readonly ask: DerivationAsk }) {
  const over = share !== null && judge(share) === 'over';
  return (
    <span className={over ? 'small block water-wrong' : 'small block'}>
      <OrPlain ask={ask} derived={share !== null}>
        {over ? t.water.judged(share) : t.water.used(share)}
      </OrPlain>
    </span>
  );
}

/** A number that there is only sometimes. */
function OrPlain({ ask, derived, children }: { readonly ask: DerivationAsk; readonly derived: boolean; readonly children: ReactNode }) {
  return derived ? <Derived ask={ask}>{children}</Derived> : children;
}

function PlaceButton({ id, at }: Pick<ListedOutlet, 'id' | 'at'>) {
  const go = useGo();
  return (
    <button
      type="button"
      className="row-button"
      disabled={at === null}
      aria-label={t.water.pick(id)}
      onClick={() => at && go.toPoint(at, AROUND_M)}
    >
      {id}
    </button>
  );
}

export function OutletsTable({ snapshot: { report, scene } }: Props) {
  const listed = useMemo(() => listOutlets(report, scene), [report, scene]);
  return (
    <ListPart
      title={t.water.outlets}
      says={listed.length === 0 ? t.water.noOutlets : t.water.outletsSay}
      caption={t.water.outletsCaption}
      heads={[t.water.outlet, t.water.area, t.water.flow, t.water.block]}
      listed={listed}
      row={(outlet) => <OutletRow key={outlet.id} outlet={outlet} />}
    />
  );
}

function OutletRow({ outlet }: { readonly outlet: ListedOutlet }) {
  const { id, at, catchmentM2, designLps, capacityLps, utilisation, blockable } = outlet;
  const blocked = useView((state) => state.blocked === id);
  const block = useView((state) => state.blockOutlet);
  return (
    <tr data-picked={blocked}>
      <th scope="row">
        <PlaceButton id={id} at={at} />
      </th>
      <td>
        <Derived ask={{ kind: 'catchment', outlet: id }}>{numberText(catchmentM2, 1)}</Derived>
      </td>
      <td>
        <OrPlain ask={{ kind: 'design flow', outlet: id }} derived={designLps !== null}>
          {capacityLps === null && designLps === null ? t.water.noCapacity : t.water.ofCapacity(designLps, capacityLps)}
        </OrPlain>
        <Used share={utilisation} ask={{ kind: 'outlet use', outlet: id }} />
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
  return (
    <ListPart
      title={t.water.overflows}
      says={listed.length === 0 ? t.water.noOverflows : t.water.overflowsSay}
      wanted
      caption={t.water.overflowsCaption}
      heads={[t.water.overflow, t.water.area, t.water.duty]}
      listed={listed}
      row={(overflow) => <OverflowRow key={overflow.id} overflow={overflow} />}
    />
  );
}

function OverflowRow({ overflow }: { readonly overflow: ListedOverflow }) {
  const { id, at, areaM2, dutyLps, capacityLps, utilisation, invertM, depthMm } = overflow;
  return (
    <tr>
      <th scope="row">
        <PlaceButton id={id} at={at} />
        <span className="small block">{t.water.levelAt(invertM, depthMm)}</span>
      </th>
      <td>
        <Derived ask={{ kind: 'overflow area', outlet: id }}>{numberText(areaM2, 1)}</Derived>
      </td>
      <td>
        <OrPlain ask={{ kind: 'overflow duty', outlet: id }} derived={dutyLps !== null}>
          {t.water.ofCapacity(dutyLps, capacityLps)}
        </OrPlain>
        <Used share={utilisation} ask={{ kind: 'overflow use', outlet: id }} />
      </td>
    </tr>
  );
}
