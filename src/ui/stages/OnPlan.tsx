/** The way to the plan page, with the tool in hand for the stage shown. */

import { planStoreOf } from '../plan/plan-context.ts';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';

export function OnPlan({ kind }: { readonly kind: 'stockpile' | 'plant' }) {
  const { view } = useStores();
  const onClick = () => {
    planStoreOf(view)
      .getState()
      .takeUp(kind, kind === 'stockpile');
    view.getState().edit('plan');
  };
  return (
    <button type="button" className="button stage-on-plan" onClick={onClick}>
      {t.stageEditor.page.plan}
    </button>
  );
}
