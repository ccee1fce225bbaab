/** Going to a place: picks its cell, marks its bay, flies there. Used by every table. */

import { useMemo } from 'react';
import type { Snapshot } from '../model/engine.ts';
import type { PointM, PolygonM, SceneObject } from '../model/scene-file.ts';
import type { ViewActions, ViewState } from '../store/view-store.ts';
import { boxOf, boxSizeM, cellAt, cellCentre, innerPoint, toLocal } from './facts/place.ts';
import { useScene, useStores } from './use-stores.ts';

export interface Go {
  /** To a point of the file [m], seen with `sizeM` around it. */
  toPoint(at: PointM, sizeM: number): void;
  /** To a bay, at `at` (file coordinates) or in its middle. */
  toBay(id: string, at: PointM | null): void;
  toZone(id: string): void;
  /** To a tree, line or block. */
  toObject(id: string): void;
  toCell(cell: number): void;
}

/** Around a single place: enough to see the layers and where one is. */
const PLACE_SIZE_M = 8;

type View = ViewState & ViewActions;

function bayOfCell(snapshot: Snapshot, cell: number): string | null {
  return snapshot.report.bays[snapshot.bayAt[cell] ?? -1]?.id ?? null;
}

function goToPoint(snapshot: Snapshot, view: View, at: PointM, sizeM: number): void {
  const local = toLocal(at, snapshot.originM);
  const cell = cellAt(snapshot.grid, local);
  if (cell !== null) {
    view.pickCell(cell);
    view.pickBay(bayOfCell(snapshot, cell));
  }
  view.moveCamera({ at: local, sizeM });
}

function goToShape(snapshot: Snapshot, view: View, outline: PolygonM, at: PointM | null): void {
  const point = at ?? innerPoint(outline);
  if (point !== null) goToPoint(snapshot, view, point, boxSizeM(boxOf(outline)));
}

function objectPoint(object: SceneObject): PointM | null {
  if (object.kind === 'tree') return object.at;
  return object.kind === 'block' ? innerPoint(object.outline) : (object.line[Math.floor((object.line.length - 1) / 2)] ?? null);
}

export function useGo(): Go {
  const snapshot = useScene((state) => state.snapshot);
  const { view } = useStores();
  return useMemo(() => {
    const withScene = (act: (snapshot: Snapshot, view: View) => void) => {
      if (snapshot !== null) act(snapshot, view.getState());
    };
    return {
      toPoint: (at, sizeM) => withScene((scene, state) => goToPoint(scene, state, at, sizeM)),
      toBay: (id, at) =>
        withScene((scene, state) => {
          const bay = scene.scene.deck.bays.find((one) => one.id === id);
          if (bay === undefined) return;
          goToShape(scene, state, bay.outline, at);
          state.pickBay(id);
        }),
      toZone: (id) =>
        withScene((scene, state) => {
          const zone = scene.scene.zones.find((one) => one.id === id);
          if (zone === undefined) return;
          goToShape(scene, state, zone.outline, innerPoint(zone.outline, zone.holes));
        }),
      toObject: (id) =>
        withScene((scene, state) => {
          const object = scene.scene.objects?.find((one) => one.id === id);
          const at = object && objectPoint(object);
          if (at) goToPoint(scene, state, at, PLACE_SIZE_M);
        }),
      toCell: (cell) =>
        withScene((scene, state) => {
          state.pickCell(cell);
          state.pickBay(bayOfCell(scene, cell));
          state.moveCamera({ at: cellCentre(scene.grid, cell), sizeM: PLACE_SIZE_M });
        }),
    };
  }, [snapshot, view]);
}
