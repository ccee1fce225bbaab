/** What is baked into a picture of the model: scene, stage, map with unit and classes, and that it is no structural check. */

import { namedStyles } from '../../model/class-style.ts';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_SHORT, CELL_UNCONFIRMED, type CellMap } from '../../model/maps.ts';
import { ROLE_STYLE } from '../../model/palette.ts';
import type { PartKind } from '../../model/picture.ts';
import type { SceneState } from '../../store/scene-store.ts';
import type { ViewState } from '../../store/view-store.ts';
import {
  type DrawnFill,
  NO_DATA_DRAWN,
  namedDrawn,
  overFill,
  plainFill,
  roleFill,
  SHORT_DRAWN,
  UNCONFIRMED_DRAWN,
} from '../facts/hatch-pattern.ts';
import { mapClasses, namedClasses, shortCells, unitOf } from '../facts/map-classes.ts';
import { classText } from '../frame/class-text.ts';
import { t } from '../text/text.ts';

export interface LegendEntry {
  readonly fill: DrawnFill;
  readonly text: string;
}

export interface PictureLegend {
  readonly title: string;
  /** Of the map; '' without one. */
  readonly says: string;
  readonly entries: readonly LegendEntry[];
  readonly statement: string;
}

export function pictureLegend({ snapshot, cellMap }: SceneState, view: ViewState, stage: string): PictureLegend {
  const map = view.map !== null && cellMap?.kind === view.map ? cellMap : null;
  const unit = map === null ? '' : t.map.unit(unitOf(map));
  return {
    title: t.exports.of(snapshot?.scene.name ?? '', stage),
    says: map === null ? '' : t.exports.map(t.map.quantity(map.kind), unit, t.map.basis(map.kind)),
    entries: map === null ? roleEntries(snapshot?.picture.parts.map(({ kind }) => kind) ?? []) : mapEntries(map),
    statement: t.app.statementFull,
  };
}

function roleEntries(kinds: readonly PartKind[]): LegendEntry[] {
  const present = new Set(kinds);
  return (Object.keys(ROLE_STYLE) as PartKind[])
    .filter((kind) => present.has(kind))
    .map((kind) => ({ fill: roleFill(kind), text: t.part(kind) }));
}

function mapEntries(map: CellMap): LegendEntry[] {
  if (map.names !== null) {
    const styles = namedStyles(map);
    return namedClasses(map).flatMap(({ id, index, areaM2 }) => {
      const style = styles[index];
      return style === undefined ? [] : [{ fill: namedDrawn(style), text: t.classes.area(t.classes.name(map.kind, id), areaM2) }];
    });
  }
  const has = (flag: number) => map.flags.some((flags) => (flags & CELL_ON_DECK) !== 0 && (flags & flag) !== 0);
  return [
    ...mapClasses(map).map((one) => ({ fill: one.hatched ? overFill(one.colour) : plainFill(one.colour), text: classText(one, map) })),
    ...(map.classLimits !== null && has(CELL_UNCONFIRMED) ? [{ fill: UNCONFIRMED_DRAWN, text: t.legend.unconfirmed }] : []),
    ...(has(CELL_SHORT) ? [{ fill: SHORT_DRAWN, text: t.site.shortCells(shortCells(map)) }] : []),
    ...(has(CELL_NO_DATA) ? [{ fill: NO_DATA_DRAWN, text: t.legend.noData(map.noDataCells, map.noDataM2) }] : []),
  ];
}
