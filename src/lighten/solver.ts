/** HiGHS, the solver of linear programmes in whole numbers, in WebAssembly. It answers alike everywhere: it is held by nodes, never by time. */

import loadHighs, { type Highs, type Model, type ModelData } from 'highs';

export interface Column {
  readonly cost: number;
  /** From 0 up to this. */
  readonly most: number;
  readonly whole: boolean;
}

/** Sum of column × factor, within bounds. */
export interface Row {
  readonly factors: readonly (readonly [column: number, factor: number])[];
  readonly low: number;
  readonly high: number;
}

/** Least sum of costs. Costs and factors should be of about the same size throughout: there is one tolerance for all. */
export interface Programme {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export type Solution =
  | { readonly status: 'optimal'; readonly values: Float64Array }
  /** Out of nodes: the best so far, if there is one. */
  | { readonly status: 'stopped'; readonly values: Float64Array | null }
  | { readonly status: 'infeasible' };

export interface Solver {
  solve(programme: Programme): Solution;
}

/** Steps in which a programme is branched on, at most. */
export const MOST_NODES = 2000;

/** Nothing but the very best is called the best; below the tolerance it is all the same [-]. */
const TOLERANCE = 1e-9;
const OPTIONS = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: TOLERANCE,
  mip_feasibility_tolerance: TOLERANCE,
  primal_feasibility_tolerance: TOLERANCE,
  dual_feasibility_tolerance: TOLERANCE,
  small_matrix_value: 1e-12,
  random_seed: 0,
} as const;

let loading: Promise<Highs> | null = null;

/** The solver; its code is loaded once. */
export async function loadSolver(mostNodes = MOST_NODES): Promise<Solver> {
  loading ??= loadHighs();
  const highs = await loading;
  return { solve: (programme) => solved(highs, programme, mostNodes) };
}

function solved(highs: Highs, programme: Programme, mostNodes: number): Solution {
  return highs.withModel(modelOf(highs, programme), (model: Model): Solution => {
    model.options.set({ ...OPTIONS, mip_max_nodes: mostNodes });
    model.run();
    const { modelStatus, solutionStatus } = highs.constants;
    const status = model.getModelStatus();
    // Every column has bounds: nothing is unbounded.
    if (status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible) return { status: 'infeasible' };
    const isKept = model.info.get('primal_solution_status') === solutionStatus.feasible;
    const values = isKept ? model.getSolution().colValue : null;
    return status === modelStatus.optimal && values ? { status: 'optimal', values } : { status: 'stopped', values };
  });
}

function modelOf({ constants, infinity }: Highs, { columns, rows }: Programme): ModelData {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { factors } of rows) {
    for (const [column, factor] of factors) {
      indices.push(column);
      values.push(factor);
    }
    starts.push(indices.length);
  }
  const bounded = (value: number) => Math.min(infinity, Math.max(-infinity, value));
  const { continuous, integer } = constants.variableType;
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(({ most }) => bounded(most)),
    rowLower: rows.map(({ low }) => bounded(low)),
    rowUpper: rows.map(({ high }) => bounded(high)),
    matrix: { format: 'csr', numRows: rows.length, numCols: columns.length, starts, indices, values },
    integrality: columns.map(({ whole }) => (whole ? integer : continuous)),
  };
}
