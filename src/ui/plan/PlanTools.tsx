/** Tools of the plan: choose, draw what, how, and what catches. */

import { type ReactNode, useId } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { DRAWN_KINDS, type DrawnKind } from '../../store/plan-draw.ts';
import { DRAWN_AS, KIND_GROUPS, type KindGroup, needsStage } from '../facts/drawn-kinds.ts';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useLayout } from '../use-media.ts';
import { usePlan } from './plan-context.ts';
import { useStageId } from './use-drawn-lists.ts';

interface ToolProps {
  readonly icon: IconName;
  readonly label: string;
  readonly pressed: boolean;
  readonly onClick: () => void;
}

function Tool({ icon, label, pressed, onClick }: ToolProps) {
  return (
    <button type="button" className="icon-button" aria-pressed={pressed} aria-label={label} title={label} onClick={onClick}>
      <Icon name={icon} />
    </button>
  );
}

function ToolGroup({ children }: { readonly children: ReactNode }) {
  return <div className="pe-group">{children}</div>;
}

export function PlanTools() {
  const { tool, kind, rectangle, snapping, shared, wide, choose, draw, toggle } = usePlan(
    useShallow(({ tool, kind, rectangle, snapping, shared, wide, choose, draw, toggle }) => ({
      tool,
      kind,
      rectangle,
      snapping,
      shared,
      wide,
      choose,
      draw,
      toggle,
    })),
  );
  const id = useId();
  const hasStage = useStageId() !== null;
  const lookAt = usePlan((state) => state.lookAt);
  const { use, showTab } = usePlan(useShallow(({ use, showTab }) => ({ use, showTab })));
  // What is chosen so, and how it is done, stands on the sheet of what is chosen.
  const box = () => {
    use('box');
    showTab('chosen');
  };
  const layout = useLayout();
  // Shown whole in its new room, once that has its size.
  const widen = () => {
    toggle('wide');
    requestAnimationFrame(() => requestAnimationFrame(() => lookAt('all')));
  };
  const isArea = DRAWN_AS[kind].form === 'area';
  const pick = (text: string) => {
    const next = DRAWN_KINDS.find((one) => one === text);
    if (next !== undefined) draw(next);
  };
  const groups = Object.entries(KIND_GROUPS) as [KindGroup, readonly DrawnKind[]][];
  return (
    <div className="pe-tools" role="toolbar" aria-label={t.draw.tools.label}>
      <ToolGroup>
        <Tool icon="arrow" label={t.draw.tools.choose} pressed={tool === 'choose'} onClick={choose} />
        <button
          type="button"
          className="icon-button"
          aria-pressed={tool === 'box'}
          aria-label={t.draw.tools.box}
          title={t.draw.tools.box}
          onClick={box}
        >
          <svg className="icon" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
            <path d="M2.5 5V3H5M7 3h2.5M11.5 3h2v2M13.5 7.5v1M2.5 7v2.5M2.5 11.5v2h2M6.5 13.5h1.5M8 8l6 3-2.6.7L10.2 14z" />
          </svg>
        </button>
      </ToolGroup>
      <ToolGroup>
        <button type="button" className="button pe-draw-button" aria-pressed={tool === 'draw'} onClick={() => draw(kind)}>
          <Icon name="pencil" />
          <span>{t.draw.tools.draw}</span>
        </button>
        <label className="unseen" htmlFor={id}>
          {t.draw.tools.kind}
        </label>
        <select id={id} value={kind} onChange={(event) => pick(event.target.value)}>
          {groups.map(([group, kinds]) => (
            <optgroup key={group} label={t.draw.groups[group]}>
              {kinds.map((one) => (
                <option key={one} value={one} disabled={needsStage(one) && !hasStage}>
                  {t.draw.kinds[one]}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </ToolGroup>
      {isArea && (
        <ToolGroup>
          <Tool icon="outline" label={t.draw.tools.byPoints} pressed={tool === 'draw' && !rectangle} onClick={() => draw(kind, false)} />
          <Tool icon="rectangle" label={t.draw.tools.rectangle} pressed={tool === 'draw' && rectangle} onClick={() => draw(kind, true)} />
        </ToolGroup>
      )}
      <ToolGroup>
        <Tool icon="magnet" label={t.draw.tools.snapping} pressed={snapping} onClick={() => toggle('snapping')} />
        <Tool icon="shared" label={t.draw.tools.shared} pressed={shared} onClick={() => toggle('shared')} />
        {layout !== 'phone' && <Tool icon="wide" label={wide ? t.draw.tools.narrow : t.draw.tools.wide} pressed={wide} onClick={widen} />}
      </ToolGroup>
    </div>
  );
}
