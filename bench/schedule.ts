/** Figures of the run sheet: first plan, plan with the solver, and the conflict of a kitchen that cannot be. */
import { planCook } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { regattaInBoxes, scenarios } from '../validation/scenarios/kitchens.ts';
import { loadSolver } from '../validation/scenarios/solver.ts';
import { syntheticForecast } from '../validation/scenarios/synthetic-forecast.ts';
import { type Figure, measured } from './measure.ts';

/** The regatta dinner cut down to about so many tasks. */
function cooks(): { readonly cook: Cook; readonly letters: string }[] {
  const whole = regattaInBoxes();
  return ['E', 'A', 'AD', 'ABD', 'ABCDE'].map((letters) => ({
    letters,
    cook: {
      ...whole,
      pieces: whole.pieces.filter((piece) => letters.includes(piece.letter)),
      ...(letters === 'E' && { formulas: [] }),
    },
  }));
}

export async function scheduleFigures(): Promise<Figure[]> {
  const solveLp = await loadSolver();
  const figures: Figure[] = [];
  for (const { cook, letters } of cooks()) {
    const forecast = syntheticForecast(cook);
    const { placed } = planCook(cook, forecast);
    const gap = planCook(cook, forecast, { solveLp }).solved.gap ?? 'unproven';
    figures.push(
      await measured(
        `first plan, ${placed.length} tasks (${letters})`,
        () => void planCook(cook, forecast),
        2000,
      ),
      await measured(
        `plan with the solver, ${placed.length} tasks, gap ${gap}`,
        () => void planCook(cook, forecast, { solveLp }),
        2000,
      ),
    );
  }
  const full = scenarios().find((scenario) => scenario.name === 'a full grate')!.cook;
  const forecast = syntheticForecast(full);
  figures.push(await measured('the conflict of a full grate', () => void planCook(full, forecast), 5000));
  return figures;
}
