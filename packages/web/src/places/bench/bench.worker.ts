import { pasteRecipe } from '@pitwright/engine/sauce';
import { consequences } from './consequences.ts';
import type { Answer, Ask } from './messages.ts';

function answer(ask: Ask): Answer {
  const { job } = ask;
  try {
    if (ask.kind === 'read')
      return {
        kind: 'recipe',
        job,
        recipe: pasteRecipe(ask.text, {
          ...(ask.system && { system: ask.system }),
          ...(ask.labels && { labels: ask.labels }),
        }),
      };
    const formula = ask.cook.formulas.find((one) => one.id === ask.formulaId);
    if (!formula) throw new Error(`no formula ${ask.formulaId}`);
    return { kind: 'seen', job, seen: consequences(ask.cook, formula, ask.corrections, ask.swap, ask.wish) };
  } catch (error) {
    return { kind: 'failed', job, message: error instanceof Error ? error.message : String(error) };
  }
}

self.onmessage = (event: MessageEvent<Ask>) => {
  self.postMessage(answer(event.data));
};
