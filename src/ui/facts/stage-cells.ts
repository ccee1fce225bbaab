/** The grid of a stage for reading: zones under their build-ups, and one state per tick, also of several zones at once. */

import type { GridCell, StageGrid } from '../../edit/stage-grid.ts';
import type { Role } from '../../model/roles.ts';
import type { SceneFile } from '../../model/scene-file.ts';

/** Stages are counted from 1. */
export type CellState =
  | { readonly kind: 'here'; readonly layers: number; readonly of: number }
  | { readonly kind: 'missing'; readonly roles: readonly Role[] }
  | { readonly kind: 'before' | 'later'; readonly stage: number }
  | { readonly kind: 'withTop' | 'never' | 'idle' | 'mixed' };

/** A tick of one zone, or of all zones that have the role. */
export interface Tick {
  readonly role: Role;
  readonly zones: readonly string[];
  readonly ticked: 'all' | 'some' | 'none';
  readonly state: CellState;
  /** Nothing of it is left to be laid, and nothing is ticked. */
  readonly done: boolean;
}

export interface TickRow {
  readonly id: string;
  readonly name: string;
  /** Null where no build-up of the row has the role. */
  readonly ticks: readonly (Tick | null)[];
}

export interface TickGroup extends TickRow {
  /** Several zones; a single one stands for itself. */
  readonly zones: readonly TickRow[];
}

function stateOf({ ticked, here, layers, before, later, never, missing }: GridCell): CellState {
  if (missing.length > 0) return { kind: 'missing', roles: missing };
  if (here > 0) return ticked ? { kind: 'here', layers: here, of: layers } : { kind: 'withTop' };
  if (later !== null) return { kind: 'later', stage: later + 1 };
  if (never > 0) return { kind: 'never' };
  if (ticked) return { kind: 'idle' };
  return { kind: 'before', stage: (before ?? 0) + 1 };
}

function tickOf(role: Role, cells: readonly GridCell[]): Tick | null {
  if (cells.length === 0) return null;
  const states = cells.map(stateOf);
  const count = cells.filter(({ ticked }) => ticked).length;
  return {
    role,
    zones: cells.map(({ zone }) => zone),
    ticked: count === cells.length ? 'all' : count > 0 ? 'some' : 'none',
    state: common(states),
    done: states.every(({ kind }) => kind === 'before') && count === 0,
  };
}

/** What all have in common; what lacks something below is told though it be one zone of many. */
function common(states: readonly CellState[]): CellState {
  const missing = states.flatMap((state) => (state.kind === 'missing' ? state.roles : []));
  if (missing.length > 0) return { kind: 'missing', roles: [...new Set(missing)] };
  const [first, ...rest] = states;
  const same = rest.every((state) => JSON.stringify(state) === JSON.stringify(first));
  return first && same ? first : { kind: 'mixed' };
}

type Rows = StageGrid['rows'];

function ticksOf(roles: readonly Role[], rows: Rows): (Tick | null)[] {
  return roles.map((role) => {
    return tickOf(
      role,
      rows.flatMap(({ cells }) => cells.get(role) ?? []),
    );
  });
}

/** All zones as one row. */
export const allZones = ({ roles, rows }: StageGrid, name: string): TickRow => ({ id: '', name, ticks: ticksOf(roles, rows) });

/** Roles of which every zone that has them has all its layers by then. */
export const doneRoles = (grid: StageGrid): Role[] => allZones(grid, '').ticks.flatMap((tick) => (tick?.done ? [tick.role] : []));

/** Build-ups that lie somewhere, in the order of the scene, with their zones. */
export function tickGroups({ roles, rows }: StageGrid, scene: Pick<SceneFile, 'buildups' | 'zones'>): TickGroup[] {
  const names = new Map(scene.zones.map(({ id, name }) => [id, name ?? id]));
  const rowOf = (row: Rows[number]): TickRow => ({ id: row.zone, name: names.get(row.zone) ?? row.zone, ticks: ticksOf(roles, [row]) });
  return scene.buildups.flatMap(({ id, name }): TickGroup[] => {
    const own = rows.filter(({ buildUp }) => buildUp === id);
    if (own.length === 0) return [];
    const zones = own.map(rowOf);
    const single = zones.length === 1 ? zones[0] : undefined;
    return [single ? { ...single, zones: [] } : { id, name, ticks: ticksOf(roles, own), zones }];
  });
}
