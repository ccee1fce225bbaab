/** Everything a reader must know of a map: unit, basis, stage, classes, spread, cells without a value. */

import { CELL_UNCONFIRMED, type CellMap, type MapKind } from '../../model/maps.ts';
import { type MapClass, mapClasses, unitOf } from '../facts/map-classes.ts';
import { cellText, wholePercentText } from '../format.ts';
import { classFill, NO_DATA_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { en as t } from '../text/en.ts';
import { useStageName } from '../use-stage-name.ts';
import { useScene } from '../use-stores.ts';

export function MapLegend({ kind }: { readonly kind: MapKind }) {
  const found = useScene((state) => state.cellMap);
  const cellM = useScene((state) => state.snapshot?.grid.cellM ?? 0);
  const stage = useStageName(kind);
  const map = found?.kind === kind ? found : null;
  return (
    <>
      <p>
        <strong>{stage}.</strong> {t.map.basis(kind)}.
      </p>
      {map === null ? <p>{t.legend.waiting}</p> : <MapFacts map={map} cellM={cellM} />}
      <p className="small legend-statement">{t.app.statementShort}</p>
    </>
  );
}

function MapFacts({ map, cellM }: { readonly map: CellMap; readonly cellM: number }) {
  const classes = mapClasses(map);
  const { min, mean, max, noDataCells, noDataM2, dataCells } = map;
  const unit = unitOf(map);
  const hasUnconfirmed = map.classLimits !== null && map.flags.some((flags) => (flags & CELL_UNCONFIRMED) !== 0);
  return (
    <>
      <p>
        {t.legend.unit(t.map.unit(unit))} · {t.legend.cells(dataCells, cellM)}
      </p>
      <ul className="legend-classes">
        {classes.map((one, i) => (
          <li key={one.colour}>
            <Swatch wide fill={map.classLimits === null ? one.colour : classFill(i, one.colour)} />
            <span>{classText(one, map)}</span>
          </li>
        ))}
        {hasUnconfirmed && (
          <li>
            <Swatch wide fill={UNCONFIRMED_FILL} />
            <span>{t.legend.unconfirmed}</span>
          </li>
        )}
        <li>
          <Swatch wide fill={NO_DATA_FILL} />
          <span>{t.legend.noData(noDataCells, noDataM2)}</span>
        </li>
      </ul>
      <p>{dataCells === 0 ? t.legend.empty : t.legend.spread(cellText(min, unit), cellText(mean, unit), cellText(max, unit))}</p>
    </>
  );
}

function classText({ from, to, hatched }: MapClass, map: CellMap): string {
  const unit = unitOf(map);
  // Limits are round numbers: 50 %, not 50.0 %.
  const limit = (value: number) => (unit === '-' ? wholePercentText(value) : cellText(value, unit));
  if (map.classLimits === null) return from === null || to === null ? '' : t.legend.range(limit(from), limit(to));
  const over = hatched ? `: ${t.legend.overWord}` : '';
  if (to === null) return `${t.legend.above(limit(from ?? 0))}${over}`;
  if (from === null || from === 0) return t.legend.upTo(limit(to));
  return `${t.legend.range(limit(from), limit(to))}${over}`;
}
