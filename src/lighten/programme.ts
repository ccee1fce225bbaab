/** A linear programme in whole numbers, and the solver that answers it. Its answers are proposals: `evaluate` judges them. */

import { solve } from 'yalps';

/** Sum of number × coefficient by column, within bounds. */
export interface Row {
  readonly entries: readonly (readonly [column: number, coefficient: number])[];
  readonly low: number;
  readonly high: number;
}

/** Least sum of costs over columns that take whole numbers from 0 up to their bound, infinite where rows hold them anyhow. */
export interface Programme {
  readonly columns: readonly { readonly cost: number; readonly high: number }[];
  readonly rows: readonly Row[];
}

export type Answer =
  | { readonly status: 'optimal' | 'stopped'; readonly values: readonly number[]; readonly cost: number }
  | { readonly status: 'infeasible' | 'time' };

/** Longest that one solution may take [ms]. */
const TIMEOUT_MS = 8000;
/** Smaller than this is rounding to the solver [-]. Much finer, its own rounding passes for a broken row, and it gives up what can be solved. */
const PRECISION = 1e-7;

/** Solves a programme. */
export function solveProgramme({ columns, rows }: Programme): Answer {
  const coefficients = columns.map((column): [string, number][] => [['cost', column.cost]]);
  const constraints: [string, { min?: number; max?: number; equal?: number }][] = [];
  const bound = (name: string, low: number, high: number) => {
    if (low === high) constraints.push([name, { equal: low }]);
    else constraints.push([name, { ...(Number.isFinite(low) ? { min: low } : {}), ...(Number.isFinite(high) ? { max: high } : {}) }]);
  };
  rows.forEach(({ entries, low, high }, r) => {
    // Rows come in kilonewtons, millimetres and cubic metres: scaled alike, one tolerance does for all.
    const scale = entries.reduce((most, [, coefficient]) => Math.max(most, Math.abs(coefficient)), 0) || 1;
    for (const [column, coefficient] of entries) coefficients[column].push([`r${r}`, coefficient / scale]);
    bound(`r${r}`, low / scale, high / scale);
  });
  columns.forEach(({ high }, c) => {
    if (!Number.isFinite(high)) return;
    coefficients[c].push([`c${c}`, 1]);
    bound(`c${c}`, -Infinity, high);
  });
  const model = {
    direction: 'minimize' as const,
    objective: 'cost',
    constraints,
    variables: coefficients.map((list, c): [number, [string, number][]] => [c, list]),
    integers: true,
  };
  const { status, result, variables } = solve(model, { timeout: TIMEOUT_MS, maxIterations: 1e6, tolerance: 0, precision: PRECISION });
  if (status === 'infeasible') return { status };
  if (status === 'cycled' || Number.isNaN(result)) return { status: 'time' };
  const values = new Array<number>(columns.length).fill(0);
  for (const [column, value] of variables) values[column] = Math.round(value);
  return { status: status === 'optimal' ? 'optimal' : 'stopped', values, cost: result };
}
