/** A piece wrapped twice: each stage has walks of its own. Evidence: law. */
import type { Cook, Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { exampleCook } from '../../../../validation/scenarios/kitchens.ts';
import { syntheticForecast } from '../../../../validation/scenarios/synthetic-forecast.ts';
import { planCook } from './plan.ts';
import { stageNames } from './tasks/draft.ts';

const foil = (minutes: number): Stage => ({
  kind: 'foil',
  until: { by: 'clock', after: { kind: 'time', si: minutes * 60 } },
});
const bare = (minutes: number): Stage => ({ ...foil(minutes), kind: 'bare' });

/** The first rack unwrapped in the middle to set the bark again. */
function twiceWrapped(): Cook {
  const cook = exampleCook('two-racks');
  const [rack] = cook.pieces;
  const stages = [bare(120), foil(45), bare(30), foil(45), ...rack!.stages.slice(2)];
  return { ...cook, pieces: [{ ...rack!, stages }] };
}

describe('two foil stages of one piece', () => {
  const cook = twiceWrapped();
  const plan = planCook(cook, syntheticForecast(cook));
  const [piece] = cook.pieces;

  test('the plan stands, and no two tasks share an id', () => {
    const ids = plan.tasks.map((task) => task.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => id.endsWith('/wrap'))).toEqual([
      `${piece!.id}/foil/wrap`,
      `${piece!.id}/foil-2/wrap`,
    ]);
  });

  test('each stage begins with its own walk, in the order of the stages', () => {
    const starts = plan.pieces[0]!.stages.map((stage) => Date.parse(stage.startAt));
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    const second = plan.placed.find((one) => one.taskId === `${piece!.id}/foil-2/wrap`)!;
    expect(starts[3]).toBe(Date.parse(second.startAt));
  });

  test('a stage of another kind between them does not rename them', () => {
    const [first, second, , fourth] = piece!.stages;
    expect(stageNames([first!, second!, fourth!])).toEqual(['bare', 'foil', 'foil-2']);
    expect(stageNames(piece!.stages).slice(0, 4)).toEqual(['bare', 'foil', 'bare-2', 'foil-2']);
  });
});
