import type { Cook, Recipe } from '@pitwright/model';

/** The intent of a cook, free of its day: pieces and formulas without hours. */
export function recipeOf(cook: Cook, id: string): Recipe {
  return {
    id,
    name: cook.name,
    version: 1,
    isDemo: cook.isDemo,
    pieces: cook.pieces.map(({ onAt: _, ...piece }) => piece),
    ...(cook.labels && { labels: cook.labels }),
    formulas: cook.formulas,
    ...(cook.note === undefined ? {} : { note: cook.note }),
  };
}
