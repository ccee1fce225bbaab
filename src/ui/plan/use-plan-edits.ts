/** Changes of the scene from the plan: refused ones are told beside the drawing, in their own words and with their place. */

import { useMemo } from 'react';
import { withPlanNote } from '../../edit/load-plan.ts';
import { patched } from '../../edit/point-lists.ts';
import { isRefused, type Refusal, type Refused } from '../../edit/refusal.ts';
import type { EditAct, EditPart, PartsEdit, ScenePatch } from '../../model/history.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import type { PlanStore } from '../../store/plan-draw.ts';
import { placeOfIssue } from '../facts/plan-place.ts';
import { t } from '../text/text.ts';
import { type Stores, useStores } from '../use-stores.ts';
import { usePlanStore } from './plan-context.ts';

export type Step = Omit<PartsEdit, 'kind'>;

/** What an operation of `src/edit` gives: a patch, perhaps with what is to be chosen afterwards. */
export interface Made {
  readonly patch: ScenePatch;
  readonly selected?: Selected | readonly Selected[];
}

export interface PlanEdits {
  /** True where it was done. */
  run(make: (scene: SceneFile) => Made | Refused, step: Step | ((made: Made) => Step), gesture?: number): Promise<boolean>;
  /** Names of parts for the words of undo. */
  names(refs: readonly Selected[]): readonly string[];
  refuse(why: Refusal): void;
}

export const stepOf = (act: EditAct, part: EditPart, names: readonly string[]): Step => ({ act, part, names });

/** What is to be chosen after an operation. */
export const chosenBy = ({ selected = [] }: Made): readonly Selected[] => ('part' in selected ? [selected] : selected);

/** The same of one part or several, of one kind or of many. */
export function stepOfParts(act: EditAct, refs: readonly Selected[]): Step {
  const kinds = new Set(refs.map(({ part }) => part));
  const [kind = 'scene'] = kinds;
  return stepOf(
    act,
    kinds.size > 1 ? 'several' : kind,
    refs.map(({ id }) => id),
  );
}

export function usePlanEdits(): PlanEdits {
  const stores = useStores();
  const plan = usePlanStore();
  return useMemo(() => planEdits(stores, plan), [stores, plan]);
}

/** A load plan that is entered is told in the history, so that the file knows of it. */
const noted = (scene: SceneFile, patch: ScenePatch): ScenePatch =>
  withPlanNote(scene, patch, { on: new Date().toISOString().slice(0, 10), says: t.draw.bays.entered });

export function planEdits({ scene: store, view }: Stores, plan: PlanStore): PlanEdits {
  const refuse = (why: Refusal) => plan.getState().tell({ issues: [], says: t.draw.refused(why), at: null });
  return {
    refuse,
    names: (refs) => refs.map(({ id }) => id),
    async run(make, step, gesture) {
      const { snapshot, edit } = store.getState();
      if (snapshot === null) return false;
      const now = snapshot.scene;
      const made = make(now);
      if (isRefused(made)) {
        refuse(made.refused);
        return false;
      }
      if (Object.keys(made.patch).length === 0) return true;
      const again = (scene: SceneFile): ScenePatch => {
        const later = scene === now ? made : make(scene);
        return isRefused(later) ? {} : noted(scene, later.patch);
      };
      const said = typeof step === 'function' ? step(made) : step;
      const issues = await edit(again, { kind: 'parts', ...said }, gesture);
      if (issues.length > 0) {
        const would = patched(now, made.patch);
        const at = issues.map((issue) => placeOfIssue(would, issue)).find((place) => place !== null) ?? null;
        plan.getState().tell({ issues, at });
        return false;
      }
      plan.getState().tell(null);
      if (made.selected !== undefined) view.getState().select(chosenBy(made));
      return true;
    },
  };
}
