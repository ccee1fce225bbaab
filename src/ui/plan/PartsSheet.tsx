/** Every part of the plan as a list by kind: to find it, choose it and add others, without pointing at anything. */

import { useState } from 'react';
import { type PlanShape, planShapes } from '../../edit/plan-shapes.ts';
import type { Selected } from '../../model/selected.ts';
import { PLAN_LAYERS, type PlanLayer } from '../../store/plan-draw.ts';
import { holdsWords } from '../facts/search.ts';
import { SearchField } from '../parts/SearchField.tsx';
import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { AxesDialog } from './AxesDialog.tsx';
import { Gaps } from './Gaps.tsx';
import { LevelsDialog } from './LevelsDialog.tsx';
import { shapeTitle } from './part-title.ts';
import { usePlan } from './plan-context.ts';
import { isIn, toggledIn } from './plan-grabs.ts';
import { RestOfDeck } from './RestOfDeck.tsx';
import { useChooseInView } from './use-choose-in-view.ts';
import { useSceneFile, useStageId } from './use-drawn-lists.ts';

/** So few parts are all seen at once. */
const FEW_PARTS = 40;

export function PartsSheet() {
  const scene = useSceneFile();
  const stage = useStageId();
  const [filter, setFilter] = useState('');
  const [dialog, setDialog] = useState<'axes' | 'levels' | null>(null);
  if (scene === null) return null;
  const shapes = planShapes(scene).filter(
    ({ part, piece, stage: of }) => part !== 'probe' && piece === undefined && (of === undefined || of === stage),
  );
  const found = shapes.filter(({ id, name }) => holdsWords(`${id} ${name ?? ''}`, filter));
  const groups = PLAN_LAYERS.flatMap((layer) => {
    const of = found.filter(({ part }) => part === layer);
    return of.length === 0 ? [] : [{ layer, of }];
  });
  return (
    <>
      <div className="pe-actions">
        <button type="button" className="button" onClick={() => setDialog('axes')}>
          {t.draw.parts.axes}
        </button>
        <button type="button" className="button" onClick={() => setDialog('levels')}>
          {t.draw.parts.levels}
        </button>
        <RestOfDeck />
      </div>
      {dialog === 'axes' && <AxesDialog onClose={() => setDialog(null)} />}
      {dialog === 'levels' && <LevelsDialog onClose={() => setDialog(null)} />}
      <Gaps part="zone" title={t.draw.gaps.title} />
      <Gaps part="bay" title={t.draw.gaps.titleBays} />
      {shapes.length < 2 && <p className="small">{t.draw.parts.addFirst}</p>}
      <SearchField label={t.draw.parts.filter} value={filter} onChange={setFilter} />
      <ChooseMany />
      {groups.length === 0 && <p className="small">{t.draw.parts.none}</p>}
      {groups.map(({ layer, of }) => (
        <PartGroup key={layer} layer={layer} shapes={of} open={filter.trim() !== '' || found.length <= FEW_PARTS} />
      ))}
    </>
  );
}

/** What a box drawn in the plan does, without pointing at anything. */
function ChooseMany() {
  const { view } = useStores();
  const chooseInView = useChooseInView();
  const count = useView((state) => state.selected.length);
  return (
    <div className="pe-actions">
      <button type="button" className="button" onClick={chooseInView}>
        {t.draw.box.inView}
      </button>
      <button type="button" className="button" disabled={count === 0} onClick={() => view.getState().select([])}>
        {t.draw.box.nothing}
      </button>
      <span className="small" role="status">
        {t.draw.chosen.several(count)}
      </span>
    </div>
  );
}

interface GroupProps {
  readonly layer: PlanLayer;
  readonly shapes: readonly PlanShape[];
  readonly open: boolean;
}

function PartGroup({ layer, shapes, open }: GroupProps) {
  const { view } = useStores();
  const selected = useView((state) => state.selected);
  const showTab = usePlan((state) => state.showTab);
  const tell = usePlan((state) => state.tell);
  const setVertex = usePlan((state) => state.setVertex);
  const choose = (one: Selected, adds: boolean) => {
    setVertex(null);
    tell(null);
    view.getState().select(adds ? toggledIn(selected, one) : [one]);
    if (!adds) showTab('chosen');
  };
  return (
    <details className="pe-part-group" open={open || undefined}>
      <summary>{t.draw.parts.count(t.draw.layerNames[layer], shapes.length)}</summary>
      <ul>
        {shapes.map((shape) => {
          const one = { part: shape.part, id: shape.id } as const;
          const isChosen = isIn(selected, one);
          return (
            <li key={shape.id}>
              {one.part !== 'outline' && (
                <label className="check pe-part-check">
                  <input
                    type="checkbox"
                    aria-label={t.draw.box.add(shapeTitle(shape))}
                    checked={isChosen}
                    onChange={() => choose(one, true)}
                  />
                </label>
              )}
              <button
                type="button"
                className="pe-part"
                aria-pressed={isChosen}
                onClick={(event) => choose(one, event.shiftKey || event.ctrlKey || event.metaKey)}
              >
                <span>{shapeTitle(shape)}</span>
                {shape.name !== undefined && <span className="small">{shape.id}</span>}
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
