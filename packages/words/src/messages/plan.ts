import type { Bite } from '@pitwright/model';
import { biteName } from '../names/words.ts';
import { messages } from './message.ts';

/** What the plan of a cook says beyond what the rooms themselves say. */
export const planMessages = messages({
  'plan.bite-unlikely': (p: { letter: string; bite: string }) =>
    `${p.letter} seldom gets to ${biteName(p.bite as Bite)} by the table.`,
});
