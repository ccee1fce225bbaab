/** The stages of the scene in order: chosen, added, copied, removed, moved by dragging, buttons or keys. */

import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { addStage, copyStage, moveStage, nextStageId, removeStage } from '../../edit/stages.ts';
import type { Snapshot } from '../../model/engine.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { Icon } from '../parts/Icon.tsx';
import { MoveButtons } from '../parts/MoveButtons.tsx';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { StageTable } from './StageTable.tsx';
import { useRowDrag } from './use-row-drag.ts';

export function StageList({ snapshot }: { readonly snapshot: Snapshot }) {
  const { list } = t.stageEditor;
  const at = useView((state) => state.stage);
  const showStage = useView((state) => state.showStage);
  const { issues, said, move, ...acts } = useStageActs(snapshot);
  const drag = useRowDrag(move);
  const scroll = useRef<HTMLDivElement>(null);
  useEffect(() => {
    keepRowInSight(scroll.current, at);
  }, [at]);
  const onKeyDown = (event: KeyboardEvent, index: number) => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (step === undefined || !event.altKey) return;
    event.preventDefault();
    move(index, index + step);
  };
  return (
    <section className="stage-list" aria-label={t.stage.title}>
      <div ref={scroll} className="stage-scroll" data-short={at !== null}>
        <StageTable
          snapshot={snapshot}
          drop={drag.drop}
          name={(stage, index) => (
            <span className="stage-name">
              <span className="stage-handle" title={list.drag} aria-hidden="true" {...drag.handle(index)}>
                <Icon name="grip" />
              </span>
              <button
                type="button"
                className="row-button"
                aria-current={index === at}
                aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
                title={list.keys}
                onClick={() => showStage(index)}
                onKeyDown={(event) => onKeyDown(event, index)}
              >
                {list.choose(index + 1, stage.name)}
              </button>
            </span>
          )}
        />
      </div>
      <p className="unseen" role="status">
        {said}
      </p>
      {at !== null && <StageTools at={at} count={snapshot.stages.length} move={move} {...acts} />}
      <Refused issues={issues} />
    </section>
  );
}

/** Scrolls the list only: `scrollIntoView` would move the page under the fingers too. */
function keepRowInSight(list: HTMLElement | null, at: number | null): void {
  const row = at === null ? undefined : list?.querySelectorAll('tbody tr')[at];
  if (!list || !row) return;
  const [box, outer] = [row.getBoundingClientRect(), list.getBoundingClientRect()];
  const headPx = list.querySelector('thead')?.getBoundingClientRect().height ?? 0;
  if (box.top < outer.top + headPx) list.scrollTop -= outer.top + headPx - box.top;
  else if (box.bottom > outer.bottom) list.scrollTop += box.bottom - outer.bottom;
}

/** What can be done with whole stages. */
function useStageActs({ scene, stages }: Snapshot) {
  const { list } = t.stageEditor;
  const { issues, run } = useEdit();
  const [said, setSaid] = useState('');
  const showStage = useView((state) => state.showStage);
  const nameAt = (index: number) => stages[index]?.name ?? '';
  const idAt = (index: number) => stages[index]?.id ?? '';
  return {
    issues,
    said,
    move: async (from: number, to: number) => {
      if (to < 0 || to >= stages.length) return;
      const name = nameAt(from);
      const done = await run((now) => moveStage(now, idAt(from), to), { act: 'order', part: 'stage', names: [name] });
      if (!done) return;
      showStage(to);
      setSaid(list.moved(name, to + 1, stages.length));
    },
    add: async (index: number) => {
      const stage = { id: nextStageId(scene), name: list.newName(index + 1) };
      if (await run((now) => addStage(now, index, stage), { act: 'add', part: 'stage', names: [stage.name] })) showStage(index);
    },
    copy: async (index: number) => {
      const stage = { id: nextStageId(scene), name: list.copyName(nameAt(index)) };
      const done = await run((now) => copyStage(now, idAt(index), stage), { act: 'copy', part: 'stage', names: [stage.name] });
      if (done) showStage(index + 1);
    },
    remove: async (index: number) => {
      const done = await run((now) => removeStage(now, idAt(index)), { act: 'remove', part: 'stage', names: [nameAt(index)] });
      if (done) showStage(stages.length === 1 ? null : Math.min(index, stages.length - 2));
    },
  };
}

interface ToolsProps extends Pick<ReturnType<typeof useStageActs>, 'move' | 'add' | 'copy' | 'remove'> {
  readonly at: number;
  readonly count: number;
}

function StageTools({ at, count, move, add, copy, remove }: ToolsProps) {
  const { list } = t.stageEditor;
  return (
    <fieldset className="stage-tools">
      <legend className="unseen">{list.tools}</legend>
      <MoveButtons
        labels={{ up: list.earlier, down: list.later }}
        first={at === 0}
        last={at === count - 1}
        onMove={(way) => move(at, way === 'up' ? at - 1 : at + 1)}
      />
      <button type="button" className="button" onClick={() => add(at)}>
        {list.before}
      </button>
      <button type="button" className="button" onClick={() => add(at + 1)}>
        {list.after}
      </button>
      <button type="button" className="button" onClick={() => copy(at)}>
        {list.copy}
      </button>
      <button type="button" className="button" onClick={() => remove(at)}>
        {list.remove}
      </button>
    </fieldset>
  );
}
