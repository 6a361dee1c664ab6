import type { CookPlan, Task } from '@pitwright/engine';
import type { Cook, Piece, Said } from '@pitwright/model';
import { listed, type Printer } from '@pitwright/words';

const letters = (pieces: readonly Piece[]): string => listed(pieces.map((piece) => piece.letter));

/** What a job is called: the kind of the task with the letters, the formula and the figures it concerns. */
export function taskSaid(cook: Cook, task: Task, print: Printer): Said {
  const pieces = cook.pieces.filter((piece) => task.pieceIds.includes(piece.id));
  const formula = cook.formulas.find((one) => one.id === task.formulaId);
  const only = pieces.length === 1 ? pieces[0] : undefined;
  const wrap = only?.stages.find((stage) => stage.kind === 'foil' || stage.kind === 'paper');
  const params: Record<string, NonNullable<Said['params']>[string]> = {
    pieces: letters(pieces),
    formula: formula?.name.replace(/^./u, (first) => first.toLowerCase()) ?? '',
  };
  if (task.round !== undefined) params.round = task.round;
  if (task.kind === 'meat-on' && only) {
    params.name = only.name ?? print.cut(only.cut, only.count);
    if (only.place) params.place = only.place;
  }
  if (task.kind === 'wrap' && wrap) {
    params.wrap = wrap.kind;
    if (wrap.liquid) params.liquid = wrap.liquid;
  }
  if ((task.kind === 'test-bite' || task.kind === 'slice') && only) params.bite = only.bite;
  if (task.kind === 'coal-bed') params.pit = cook.pit.temperature;
  if (task.kind === 'light-oven' && cook.kitchen.ovenTemperature) params.oven = cook.kitchen.ovenTemperature;
  return { id: `task.${task.kind}`, params };
}

/** Jobs by their id. */
export const tasksById = (plan: CookPlan): ReadonlyMap<string, Task> =>
  new Map(plan.tasks.map((task) => [task.id, task]));
