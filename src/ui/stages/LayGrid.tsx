/** Ticks of a stage as a table: zones under their build-ups down, roles across. */

import { Fragment, useId, useState } from 'react';
import type { Role } from '../../model/roles.ts';
import type { CellState, Tick, TickGroup, TickRow } from '../facts/stage-cells.ts';
import { Icon } from '../parts/Icon.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useTick } from './use-tick.ts';

type OnTick = (tick: Tick, on: boolean) => Promise<unknown>;

interface Props {
  readonly roles: readonly Role[];
  readonly all: TickRow;
  readonly groups: readonly TickGroup[];
  readonly caption: string;
  readonly onTick: OnTick;
}

export function LayGrid({ roles, all, groups, caption, onTick }: Props) {
  const words = t.stageEditor.lay;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <section className="wide-table lay-scroll" tabIndex={0} aria-label={caption}>
      <table className="numbers lay-grid">
        <caption className="unseen">{caption}</caption>
        <TableHead heads={[words.zone, ...roles.map((role) => t.part(role))]} />
        <tbody>
          {groups.length > 1 && <Row row={all} name={all.name} className="lay-all" onTick={onTick} />}
          {groups.map((group) => (
            <Group key={group.id} group={group} onTick={onTick} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Group({ group, onTick }: { readonly group: TickGroup; readonly onTick: OnTick }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const words = t.stageEditor.lay;
  const { zones, name } = group;
  if (zones.length === 0) return <Row row={group} name={name} onTick={onTick} />;
  return (
    <Fragment>
      <Row
        row={group}
        name={words.group(name, zones.length)}
        onTick={onTick}
        opener={
          <button type="button" className="icon-button" aria-expanded={open} aria-label={words.open(name)} onClick={() => setOpen(!open)}>
            <Icon name={open ? 'up' : 'down'} />
          </button>
        }
      />
      {open && zones.map((zone) => <Row key={`${id} ${zone.id}`} row={zone} name={zone.name} className="lay-zone" onTick={onTick} />)}
    </Fragment>
  );
}

interface RowProps {
  readonly row: TickRow;
  readonly name: string;
  readonly className?: string;
  readonly opener?: React.ReactNode;
  readonly onTick: OnTick;
}

function Row({ row, name, className, opener, onTick }: RowProps) {
  return (
    <tr className={className}>
      <th scope="row">
        <span className="lay-name">
          {opener}
          <span>{name}</span>
        </span>
      </th>
      {row.ticks.map((tick, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: columns are roles, always in one order
        <td key={i}>{tick && <TickBox tick={tick} where={name} onTick={onTick} />}</td>
      ))}
    </tr>
  );
}

function TickBox({ tick, where, onTick }: { readonly tick: Tick; readonly where: string; readonly onTick: OnTick }) {
  const { role, state, ticked, done } = tick;
  const box = useTick(ticked === 'all', (on) => onTick(tick, on));
  const mark = markOf(state);
  const says = t.stageEditor.lay.tick(t.part(role), where, stateSays(state));
  if (done)
    return (
      <span className="lay-done">
        <span aria-hidden="true">{mark}</span>
        <span className="unseen">{says}</span>
      </span>
    );
  return (
    <label className="lay-tick" data-state={state.kind} title={says}>
      <input
        type="checkbox"
        aria-label={says}
        ref={(input) => {
          if (input) input.indeterminate = ticked === 'some' && !box.waiting;
        }}
        checked={box.checked}
        onChange={box.onChange}
      />
      {mark !== '' && <span aria-hidden="true">{mark}</span>}
    </label>
  );
}

/** A word under the tick; nothing where the tick says it all. */
function markOf(state: CellState): string {
  const { mark } = t.stageEditor.lay;
  switch (state.kind) {
    case 'here':
      return state.layers === state.of ? '' : mark.here(state.layers, state.of);
    case 'before':
      return mark.before(state.stage);
    case 'later':
      return mark.later(state.stage);
    case 'mixed':
      return '';
    default:
      return mark[state.kind];
  }
}

function stateSays(state: CellState): string {
  const { state: words } = t.stageEditor.lay;
  switch (state.kind) {
    case 'here':
      return words.here(state.layers, state.of);
    case 'missing':
      return words.missing(state.roles.map((role) => t.part(role)));
    case 'before':
      return words.before(state.stage);
    case 'later':
      return words.later(state.stage);
    default:
      return words[state.kind];
  }
}
