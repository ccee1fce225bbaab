/** The table twin of the map: the highest cells, or those of the picked bay, each leading to its core log. */

import { useMemo, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { type CellMap, MAP_KINDS } from '../../model/maps.ts';
import { isLowFirst, type ListedCell, listCells } from '../facts/cell-list.ts';
import { unitOf } from '../facts/map-classes.ts';
import { cellCentre, cellPlace } from '../facts/place.ts';
import { cellText, coordinateText } from '../format.ts';
import { en as t } from '../text/en.ts';
import { useGo } from '../use-go.ts';
import { useStageName } from '../use-stage-name.ts';
import { useScene, useView } from '../use-stores.ts';

const AT_MOST = 200;

export function CellsTable() {
  const kind = useView((state) => state.map);
  const map = useScene((state) => state.cellMap);
  const snapshot = useScene((state) => state.snapshot);
  if (snapshot === null) return null;
  if (kind === null) return <ChooseMap />;
  return map?.kind === kind ? <MapTable map={map} snapshot={snapshot} /> : <p>{t.legend.waiting}</p>;
}

function ChooseMap() {
  const showMap = useView((state) => state.showMap);
  return (
    <div className="choose-map">
      <p>{t.cells.chooseMap}</p>
      <ul>
        {MAP_KINDS.map((kind) => (
          <li key={kind}>
            <button type="button" className="button" onClick={() => showMap(kind)}>
              {t.map.quantity(kind)}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function MapTable({ map, snapshot }: { readonly map: CellMap; readonly snapshot: Snapshot }) {
  const bay = useView((state) => state.bay);
  const bayIndex = snapshot.report.bays.findIndex(({ id }) => id === bay);
  const [inBay, setInBay] = useState(false);
  const scope = inBay && bayIndex >= 0 ? bayIndex : null;
  const list = useMemo(() => listCells(map, snapshot.bayAt, scope, AT_MOST), [map, snapshot.bayAt, scope]);
  const stage = useStageName(map.kind);
  return (
    <>
      {bay !== null && bayIndex >= 0 && (
        <fieldset className="segments">
          <legend className="unseen">{t.cells.scope}</legend>
          <ScopeChoice
            label={isLowFirst(map.kind) ? t.cells.lowest : t.cells.highest}
            checked={scope === null}
            onChoose={() => setInBay(false)}
          />
          <ScopeChoice label={t.cells.inBay(bay)} checked={scope !== null} onChoose={() => setInBay(true)} />
        </fieldset>
      )}
      <table className="cells numbers">
        <caption>
          {t.cells.caption(t.map.quantity(map.kind), t.map.unit(unitOf(map)), stage)}
          <span className="small block">{t.map.basis(map.kind)}.</span>
          <span className="small block">
            {list.of === 0 ? t.cells.none : t.cells.shown(list.cells.length, list.of, isLowFirst(map.kind))}
          </span>
        </caption>
        <thead>
          <tr>
            {[t.cells.column, t.cells.row, 'x m', 'y m', t.cells.value, t.cells.remark].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {list.cells.map((cell) => (
            <CellRow key={cell.cell} cell={cell} unit={unitOf(map)} snapshot={snapshot} />
          ))}
        </tbody>
      </table>
    </>
  );
}

function ScopeChoice({ label, checked, onChoose }: { readonly label: string; readonly checked: boolean; readonly onChoose: () => void }) {
  return (
    <label className="segment">
      <input type="radio" name="cells-scope" checked={checked} onChange={onChoose} />
      <span>{label}</span>
    </label>
  );
}

interface CellRowProps {
  readonly cell: ListedCell;
  readonly unit: string;
  readonly snapshot: Snapshot;
}

function CellRow({ cell: { cell, value, over, unconfirmed, directionDeg }, unit, snapshot: { grid, originM } }: CellRowProps) {
  const picked = useView((state) => state.cell === cell);
  const go = useGo();
  const { column, row } = cellPlace(grid, cell);
  const [x, y] = cellCentre(grid, cell);
  const remarks = [
    ...(directionDeg === null ? [] : [t.cells.towards(directionDeg)]),
    ...(over ? [t.cells.over] : []),
    ...(unconfirmed ? [t.cells.unconfirmed] : []),
  ];
  return (
    <tr className="cell-row" data-picked={picked} onClick={() => go.toCell(cell)}>
      <th scope="row">
        <button type="button" className="row-button" aria-pressed={picked} aria-label={t.cells.pick(column, row)}>
          {column}
        </button>
      </th>
      <td>{row}</td>
      <td>{coordinateText(x + originM[0])}</td>
      <td>{coordinateText(y + originM[1])}</td>
      <td>
        <strong>{cellText(value, unit)}</strong>
      </td>
      <td className="cell-remark">{remarks.join(', ')}</td>
    </tr>
  );
}
