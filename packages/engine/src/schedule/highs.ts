import type { LpSolution, SolveLp } from './types.ts';

/** What is used of the `highs` package once it is loaded: the same in Node and in a browser's worker. */
export interface LoadedHighs {
  // biome-ignore lint/suspicious/noExplicitAny: the package's own option and result types, which are not exported
  readonly solve: (lpText: string, options?: any) => any;
}

/** One seed and one thread: the same nodes in every machine. */
const OPTIONS = { output_flag: false, random_seed: 1, threads: 1 };

/**
 * HiGHS as the run sheet asks for it. Load the package outside (`await loadHighs()`), call this in a worker: a solve
 * blocks its thread.
 */
export const highsSolver =
  (highs: LoadedHighs): SolveLp =>
  (lpText, { gap, nodes }): LpSolution => {
    const result = highs.solve(lpText, { ...OPTIONS, mip_rel_gap: gap, mip_max_nodes: nodes });
    if (result.Status === 'Infeasible') return { status: 'infeasible' };
    const values: Record<string, number> = {};
    for (const [name, column] of Object.entries<{ Primal?: number }>(result.Columns ?? {}))
      if (column.Primal !== undefined) values[name] = column.Primal;
    if (Object.keys(values).length === 0) return { status: 'stopped' };
    return result.Status === 'Optimal'
      ? { status: 'optimal', objective: result.ObjectiveValue, gap, values }
      : { status: 'feasible', objective: result.ObjectiveValue, values };
  };
