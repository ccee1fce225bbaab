/** The table twin of the map: the highest cells, or those of the picked bay, each leading to its core log. */

import { useMemo, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { type CellMap, MAP_KINDS } from '../../model/maps.ts';
import { type CellList, isLowFirst, type ListedCell, listCells } from '../facts/cell-list.ts';
import { unitOf } from '../facts/map-classes.ts';
import { isOffered } from '../facts/map-groups.ts';
import { cellCentre, cellPlace } from '../facts/place.ts';
import { cellText, coordinateText } from '../format.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useMapMatter } from '../use-map-matter.ts';
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
  const matter = useMapMatter();
  return (
    <div className="choose-map">
      <p>{t.cells.chooseMap}</p>
      <ul>
        {MAP_KINDS.filter((kind) => isOffered(kind, matter)).map((kind) => (
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
            label={map.names !== null ? t.classes.everywhere : isLowFirst(map.kind) ? t.cells.lowest : t.cells.highest}
            checked={scope === null}
            onChoose={() => setInBay(false)}
          />
          <ScopeChoice label={t.cells.inBay(bay)} checked={scope !== null} onChoose={() => setInBay(true)} />
        </fieldset>
      )}
      <table className="cells numbers">
        <caption>
          {map.names === null
            ? t.cells.caption(t.map.quantity(map.kind), t.map.unit(unitOf(map)), stage)
            : t.classes.caption(t.map.quantity(map.kind), stage)}
          <span className="small block">{t.map.basis(map.kind)}.</span>
          <span className="small block">{list.of === 0 ? t.cells.none : shownText(map, list)}</span>
        </caption>
        <thead>
          <tr>
            {[t.cells.column, t.cells.row, 'x m', 'y m', map.names === null ? t.cells.value : t.classes.head, t.cells.remark].map(
              (head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {list.cells.map((cell) => (
            <CellRow key={cell.cell} cell={cell} map={map} snapshot={snapshot} />
          ))}
        </tbody>
      </table>
    </>
  );
}

function shownText({ kind, names }: CellMap, { cells, of }: CellList): string {
  return names === null ? t.cells.shown(cells.length, of, isLowFirst(kind)) : t.classes.shown(cells.length, of);
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
  readonly map: CellMap;
  readonly snapshot: Snapshot;
}

function CellRow({ cell: listed, map, snapshot: { grid, originM } }: CellRowProps) {
  const { cell, value, over, unconfirmed, short, atEdge, directionDeg } = listed;
  const picked = useView((state) => state.cell === cell);
  const go = useGo();
  const { column, row } = cellPlace(grid, cell);
  const [x, y] = cellCentre(grid, cell);
  const remarks = [
    ...(directionDeg === null ? [] : [map.kind === 'reach' ? t.site.towards(directionDeg) : t.cells.towards(directionDeg)]),
    ...(atEdge ? [t.site.band] : []),
    ...(over ? [t.cells.over] : []),
    ...(short ? [t.site.short] : []),
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
        <strong>{map.names === null ? cellText(value, unitOf(map)) : t.classes.short(map.kind, map.names[value] ?? '')}</strong>
      </td>
      <td className="cell-remark">{remarks.join(', ')}</td>
    </tr>
  );
}
