/** Everything a reader must know of a map: unit, basis, stage, classes, spread, cells without a value. */

import { useMemo } from 'react';
import { type NamedStyle, namedStyles } from '../../model/class-style.ts';
import { CELL_UNCONFIRMED, type CellMap, isWaterMap, type MapKind } from '../../model/maps.ts';
import { distinctBases } from '../facts/basis.ts';
import { hasEdgeBand, type MapClass, mapClasses, namedClasses, shortCells, unitOf } from '../facts/map-classes.ts';
import { cellText } from '../format.ts';
import { Follows } from '../parts/Follows.tsx';
import { classFill, EDGE_BAND_FILL, NamedHatches, NO_DATA_FILL, namedFill, SHORT_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { useStageName } from '../use-stage-name.ts';
import { useScene, useView } from '../use-stores.ts';
import { classText, limitText } from './class-text.ts';
import { ExplodedRemark } from './RoleLegend.tsx';

export function MapLegend({ kind }: { readonly kind: MapKind }) {
  const found = useScene((state) => state.cellMap);
  const stage = useStageName(kind);
  const blocked = useView((state) => state.blocked);
  const map = found?.kind === kind ? found : null;
  return (
    <div className="map-legend">
      <Follows what="map" />
      <p>
        <strong>{t.map.quantity(kind)}</strong> · {kind === 'blocked' && blocked !== null && `${t.water.chosen(blocked)}. `}
        {stage}. {t.map.basis(kind)}.{judgesBays(kind) && <PermittedBases />}
      </p>
      {map === null ? <p>{t.legend.waiting}</p> : map.names ? <NamedScale map={map} /> : <Scale map={map} />}
      <p>
        {map !== null && map.names === null && <Spread map={map} />} <ExplodedRemark /> <strong>{t.app.statementShort}</strong>
      </p>
    </div>
  );
}

/** Whether a map tells of loads that bays must carry. */
function judgesBays(kind: MapKind): boolean {
  return kind === 'load' || kind === 'utilisation' || kind === 'worst-stage';
}

/** Who says what the bays may carry. */
function PermittedBases() {
  const bays = useScene((state) => state.snapshot?.scene.deck.bays);
  const bases = useMemo(() => distinctBases(bays?.map(({ basis }) => basis) ?? []), [bays]);
  return bases.length === 0 ? null : ` ${t.legend.bases(bases)}.`;
}

/** The classes side by side with their limits below, then what is no class. */
function Scale({ map }: { readonly map: CellMap }) {
  const classes = mapClasses(map);
  const { noDataCells, noDataM2 } = map;
  const short = shortCells(map);
  const hasUnconfirmed = map.classLimits !== null && map.flags.some((flags) => (flags & CELL_UNCONFIRMED) !== 0);
  return (
    <div className="legend-scale">
      <ul className="class-bar">
        {classes.map((one, i) => (
          <ClassField key={one.colour} of={one} index={i} map={map} />
        ))}
      </ul>
      <ul className="legend-others">
        {hasUnconfirmed && (
          <li>
            <Swatch fill={UNCONFIRMED_FILL} /> {t.legend.unconfirmed}
          </li>
        )}
        {short > 0 && (
          <li>
            <Swatch fill={SHORT_FILL} /> {t.site.shortCells(short)}
          </li>
        )}
        <li>
          <Swatch fill={NO_DATA_FILL} /> {isDepth(map) ? t.water.dry(noDataCells, noDataM2) : t.legend.noData(noDataCells, noDataM2)}
        </li>
        {isWaterMap(map.kind) && hasArrows(map) && <li>{t.water.arrows}</li>}
      </ul>
    </div>
  );
}

function hasArrows({ directionDeg }: CellMap): boolean {
  return directionDeg?.some((deg) => !Number.isNaN(deg)) ?? false;
}

/** Of standing water: what has none is dry. */
function isDepth({ kind }: CellMap): boolean {
  return kind === 'ponding' || kind === 'blocked';
}

/** Why a map of named classes has nothing to show; null where it has. */
function useWhyEmpty(map: CellMap): string | null {
  const snapshot = useScene((state) => state.snapshot);
  if (map.dataCells > 0) return null;
  if (map.kind !== 'reach') return t.legend.empty;
  if (map.stage === null) return t.site.reachGarden;
  return snapshot?.stages[map.stage]?.derived ? t.site.reachDerived : t.site.reachNoAccess;
}

/** The classes that occur, each with its area; what is marked besides. */
function NamedScale({ map }: { readonly map: CellMap }) {
  const styles = namedStyles(map);
  const classes = namedClasses(map);
  const why = useWhyEmpty(map);
  if (why !== null) return <p>{why}</p>;
  return (
    <>
      <NamedHatches styles={styles} />
      <ul className="legend-classes">
        {classes.map(({ id, index, areaM2 }) => (
          <li key={id}>
            <Swatch fill={namedFill(styles[index] as NamedStyle)} /> {t.classes.area(t.classes.name(map.kind, id), areaM2)}
          </li>
        ))}
        {hasEdgeBand(map) && (
          <li>
            <Swatch fill={EDGE_BAND_FILL} /> {t.site.band}
          </li>
        )}
        {hasArrows(map) && <li>{map.kind === 'reach' ? t.site.arrows : t.water.arrows}</li>}
      </ul>
    </>
  );
}

interface ClassFieldProps {
  readonly of: MapClass;
  readonly index: number;
  readonly map: CellMap;
}

function ClassField({ of, index, map }: ClassFieldProps) {
  const { from, to, colour, hatched } = of;
  return (
    <li>
      <svg width="100%" height="14" aria-hidden="true" focusable="false">
        <rect width="100%" height="14" fill={map.classLimits === null ? colour : classFill(index, colour)} />
      </svg>
      <span className="unseen">{classText(of, map)}</span>
      <span className="class-limits" aria-hidden="true">
        {index === 0 && from !== null && <span className="class-from">{limitText(from, map)}</span>}
        {hatched && <span className="class-over">{t.legend.overShort}</span>}
        {to !== null && <span className="class-to">{limitText(to, map)}</span>}
      </span>
    </li>
  );
}

function Spread({ map }: { readonly map: CellMap }) {
  const cellM = useScene((state) => state.snapshot?.grid.cellM ?? 0);
  const { min, mean, max, dataCells } = map;
  const unit = unitOf(map);
  const values = dataCells === 0 ? t.legend.empty : t.legend.spread(cellText(min, unit), cellText(mean, unit), cellText(max, unit));
  return (
    <>
      {t.legend.unit(t.map.unit(unit))} · {values} · {t.legend.cells(dataCells, cellM)} ·
    </>
  );
}
