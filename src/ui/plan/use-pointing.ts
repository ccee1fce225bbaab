/** What is chosen in the plan is pointed at in the model and the tables too: its bay, and a place of it. */

import { useEffect } from 'react';
import { shapeOf } from '../../edit/plan-shapes.ts';
import type { Snapshot } from '../../model/engine.ts';
import { cellAt, innerPoint, toLocal } from '../facts/place.ts';
import { flatPoint } from '../facts/plan-drag.ts';
import { useStores, useView } from '../use-stores.ts';

export function usePointing(snapshot: Snapshot | null): void {
  const { view } = useStores();
  const selected = useView((state) => state.selected);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a choice points once; edits of what is chosen do not point again
  useEffect(() => {
    const [one] = selected;
    if (snapshot === null || one === undefined || selected.length !== 1) return;
    const shape = one.part === 'bay' || one.part === 'zone' ? shapeOf(snapshot.scene, one) : null;
    if (shape === null) return;
    const inside = innerPoint(shape.points.map(flatPoint), shape.holes);
    const cell = inside && cellAt(snapshot.grid, toLocal(inside, snapshot.originM));
    if (cell === null) return;
    const { pickCell, pickBay } = view.getState();
    pickCell(cell);
    pickBay(one.part === 'bay' ? one.id : (snapshot.report.bays[snapshot.bayAt[cell] ?? -1]?.id ?? null));
  }, [selected]);
}
