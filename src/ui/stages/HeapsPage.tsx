/** Stockpiles of a stage: material, height, place, weight, and how high they may be. */

import { nextId } from '../../edit/next-id.ts';
import { stockpileIds } from '../../edit/stages.ts';
import { baysUnder, type Rectangle, rectangleOf, rectangleOutline } from '../../edit/stockpiles.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneStage, SceneStockpile } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { heapBoard } from '../facts/heap-board.ts';
import { type LooseChoices, looseChoices } from '../facts/loose-choices.ts';
import { PointsField } from '../parts/PointsField.tsx';
import { t } from '../text/text.ts';
import { HIGHEST_M, LEAST_M, MaterialChoice, Metres, RectangleFields } from './HeapFields.tsx';
import { NewHeap } from './NewHeap.tsx';
import { OnPlan } from './OnPlan.tsx';
import type { PageProps } from './StagePage.tsx';
import { useCatalogue } from './use-catalogue.ts';
import { changedAt, useStageEdit, without } from './use-stage-edit.ts';

export function HeapsPage({ snapshot, stage }: PageProps) {
  const { issues, change } = useStageEdit(stage.id);
  const choices = looseChoices(snapshot, useCatalogue());
  const words = t.stageEditor.heaps;
  const piles = stage.stockpiles ?? [];
  const set = (act: 'change' | 'move', i: number, id: string, to: PileChange) =>
    void change(act, 'stockpile', id, (now) => ({ stockpiles: changedAt(now.stockpiles, i, (pile) => ({ ...pile, ...to(pile) })) }));
  const onAdd = (pile: Omit<SceneStockpile, 'id'>) => {
    const id = nextId('K', stockpileIds(snapshot.scene));
    return change('add', 'stockpile', id, (now) => ({ stockpiles: [...(now.stockpiles ?? []), { id, ...pile }] }));
  };
  return (
    <>
      <p>{words.says}</p>
      <Refused issues={issues} />
      {piles.length === 0 && <p>{words.none}</p>}
      {piles.map((pile, i) => (
        <Heap
          key={pile.id}
          snapshot={snapshot}
          stage={stage}
          pile={pile}
          choices={choices}
          onChange={(act, to) => set(act, i, pile.id, to)}
          onRemove={() => void change('remove', 'stockpile', pile.id, (now) => ({ stockpiles: without(now.stockpiles, i) }))}
        />
      ))}
      <NewHeap snapshot={snapshot} stage={stage} choices={choices} onAdd={onAdd} />
      <OnPlan kind="stockpile" />
    </>
  );
}

type PileChange = (pile: SceneStockpile) => Partial<SceneStockpile>;

interface HeapProps {
  readonly snapshot: Snapshot;
  readonly stage: SceneStage;
  readonly pile: SceneStockpile;
  readonly choices: LooseChoices;
  readonly onChange: (act: 'change' | 'move', to: PileChange) => void;
  readonly onRemove: () => void;
}

function Heap({ snapshot, stage, pile, choices, onChange, onRemove }: HeapProps) {
  const words = t.stageEditor.heaps;
  const rectangle = rectangleOf(pile.outline);
  const view = snapshot.stages.find(({ id }) => id === stage.id)?.stockpiles.find(({ id }) => id === pile.id);
  return (
    <fieldset className="stage-card">
      <legend>{words.title(pile.id)}</legend>
      <div className="stage-fields">
        <MaterialChoice choices={choices} value={pile.material} onChoose={(material) => onChange('change', () => ({ material }))} />
        <Metres
          label={words.height}
          value={pile.heightM}
          range={[LEAST_M, HIGHEST_M]}
          onCommit={(heightM) => onChange('change', () => ({ heightM }))}
        />
        {rectangle ? (
          <RectangleFields
            rectangle={rectangle}
            onCommit={(part) => onChange('move', (now) => ({ outline: moved(now, rectangle, part) }))}
          />
        ) : (
          <PointsField label={words.outline} value={pile.outline} least={3} onCommit={(outline) => onChange('move', () => ({ outline }))} />
        )}
      </div>
      {view && <p className="small">{words.weight(view.areaM2, view.weightKN)}</p>}
      <HeapRoom snapshot={snapshot} stage={stage} pile={pile} />
      <button type="button" className="button" aria-label={words.remove(pile.id)} onClick={onRemove}>
        {t.stageEditor.list.remove}
      </button>
    </fieldset>
  );
}

/** One side of the rectangle that the heap is by then. */
function moved(pile: SceneStockpile, shown: Rectangle, part: Partial<Rectangle>): SceneStockpile['outline'] {
  return rectangleOutline({ ...(rectangleOf(pile.outline) ?? shown), ...part });
}

/** What the heap board says of the bays under a heap, itself counted. */
function HeapRoom({ snapshot: { report, scene }, stage, pile }: Pick<HeapProps, 'snapshot' | 'stage' | 'pile'>) {
  const words = t.stageEditor.heaps;
  const bays = baysUnder(scene, pile.outline);
  if (bays.length === 0) return <p className="stage-warn">{words.offDeck}</p>;
  const board = heapBoard(report, scene, stage.id, pile.material);
  return (
    <ul className="stage-room">
      {bays.map((bay) => {
        const entry = board.find((one) => one.bay === bay);
        return (
          entry && (
            <li key={bay} data-heap={entry.state}>
              {words.room(entry)}
            </li>
          )
        );
      })}
    </ul>
  );
}
