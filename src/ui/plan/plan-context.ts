/** What every part of the plan needs: its own store and the scene it draws. */

import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { createPlanStore, type PlanActions, type PlanState, type PlanStore } from '../../store/plan-draw.ts';
import type { ViewStore } from '../../store/view-store.ts';

export const PlanContext = createContext<PlanStore | null>(null);

export function usePlanStore(): PlanStore {
  const plan = useContext(PlanContext);
  if (plan === null) throw new RangeError('usePlanStore: must be used below <PlanEditor>');
  return plan;
}

export function usePlan<T>(select: (state: PlanState & PlanActions) => T): T {
  return useStore(usePlanStore(), select);
}

const kept = new WeakMap<ViewStore, PlanStore>();

/** The plan is found again as it was left for another page of the editor. */
export function planStoreOf(view: ViewStore): PlanStore {
  const found = kept.get(view) ?? createPlanStore();
  kept.set(view, found);
  return found;
}
