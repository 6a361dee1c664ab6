import type { LpSolution, SolveLp } from '@pitwright/engine';
import loadHighs from 'highs';

/** HiGHS in Node, as the engine asks for it: stopped by gap and nodes, one seed, no clock. */
export async function loadSolver(): Promise<SolveLp> {
  const highs = await loadHighs();
  return (lpText, { gap, nodes }): LpSolution => {
    const result = highs.solve(lpText, {
      output_flag: false,
      mip_rel_gap: gap,
      mip_max_nodes: nodes,
      random_seed: 1,
      threads: 1,
    });
    if (result.Status === 'Infeasible') return { status: 'infeasible' };
    const values: Record<string, number> = {};
    for (const [name, column] of Object.entries(result.Columns))
      if ('Primal' in column && typeof column.Primal === 'number') values[name] = column.Primal;
    if (!Object.keys(values).length) return { status: 'stopped' };
    return {
      status: result.Status === 'Optimal' ? 'optimal' : 'feasible',
      objective: result.ObjectiveValue,
      gap: result.Status === 'Optimal' ? gap : Infinity,
      values,
    };
  };
}
