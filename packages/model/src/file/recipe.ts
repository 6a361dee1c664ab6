import type { Piece, Pit, Recipe } from '../nouns.ts';
import { demoField, type Head, headFields } from './cook.ts';
import { derived, type Form, list, mapped, optional, record, required } from './form.ts';
import { formula } from './formula.ts';
import { checkLabels, label } from './label.ts';
import { timelessPiece } from './piece.ts';
import { pitFields } from './pit.ts';
import { checkReferences, toIds, toLetters } from './references.ts';
import { slug } from './slug.ts';
import { id, name, note, number } from './values.ts';

type WrittenRecipe = Head<'recipe'> & Recipe;

/** The intent alone: pieces, and formulas with their declared variants; no hour, so no piece says when it goes on. */
export const recipeForm: Form<Recipe> = mapped(
  record<WrittenRecipe>(
    {
      ...headFields<'recipe', WrittenRecipe>('recipe'),
      name: required('name', name),
      id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'recipe'))),
      version: required('recipe-version', number(1, 1e6, { whole: true })),
      isDemo: demoField(),
      note: optional('note', note),
      pieces: required('pieces', list(timelessPiece)),
      labels: optional('labels', list(label)),
      formulas: derived('formulas', list(formula, { min: 0 }), () => []),
    },
    {
      check: (recipe, locate, reader) => {
        checkReferences(recipe, locate('pieces'), locate('formulas'), reader);
        checkLabels(recipe.labels ?? [], locate('labels'), reader);
      },
    },
  ),
  ({ kind: _kind, form: _form, ...recipe }, _node, reader) =>
    reader.problems.length > 0 ? undefined : toIds(recipe),
  (recipe): WrittenRecipe => ({
    kind: 'recipe',
    form: 1,
    ...toLetters({ ...recipe, pieces: recipe.pieces.map(withoutHour) }),
  }),
);

function withoutHour({ onAt: _onAt, ...piece }: Piece): Piece {
  return piece;
}

type WrittenPit = Head<'pit'> & Pit;

/** A pit alone. */
export const pitForm: Form<Pit> = mapped(
  record<WrittenPit>({ ...headFields<'pit', WrittenPit>('pit'), ...pitFields }),
  ({ kind: _kind, form: _form, ...pit }) => pit,
  (pit): WrittenPit => ({ kind: 'pit', form: 1, ...pit }),
);
