import { tableServed } from '@pitwright/engine';
import { type Cook, changesBetween, type Kept, type Recipe } from '@pitwright/model';
import { useLocation } from 'wouter';
import { Answer } from '../../parts/answer.tsx';
import { Ask } from '../../parts/ask.tsx';
import { Key } from '../../parts/key.tsx';
import { useKept } from '../../use-keeping.tsx';
import { useWriter } from '../../use-writer.ts';
import { useWords } from '../../words.tsx';
import { recipeOf } from '../shelf/from-cook.ts';
import { CooksOf } from './cooks-of.tsx';
import { KeptKeys } from './kept-keys.tsx';
import { ofKept } from './of-kept.tsx';
import { RecipeFormulas } from './recipe-formulas.tsx';
import { RecipePieces } from './recipe-pieces.tsx';
import { WrittenLine } from './written-line.tsx';

export default ofKept('recipe', RecipeSheet);

/** One recipe: whom it feeds, what goes on the pit, what is mixed, and the cooks made from it. */
function RecipeSheet({ kept }: { kept: Kept<Recipe> }) {
  const { text, rich } = useWords();
  const state = useKept();
  const [, go] = useLocation();
  const recipe = kept.document;
  const subject = { kind: 'recipe' as const, id: kept.id };
  const keep = useWriter(subject, recipe);
  const served = tableServed(recipe.pieces);
  const cooks = [...state.cooks.values()]
    .filter((one) => !one.isRemoved && one.document.recipe?.id === kept.id)
    .map((one) => one.document)
    .sort((a, b) => (a.table.at < b.table.at ? -1 : 1));
  const next = recipe.version + 1;
  const taken = (cook: Cook): Recipe => ({
    ...recipeOf(cook, kept.id),
    name: recipe.name,
    version: next,
    isDemo: recipe.isDemo,
    ...(recipe.note === undefined ? {} : { note: recipe.note }),
  });
  const isOther = (cook: Cook): boolean =>
    changesBetween({ ...recipe, version: next }, taken(cook)).length > 0;
  return (
    <>
      <Answer aside={text('web.recipe.version', { version: recipe.version })}>
        <Ask
          origin={{
            meaning: text('web.recipe.served.meaning', { served }),
            source: text('web.recipe.served.source'),
            doubt: text('web.recipe.served.doubt'),
          }}
        >
          {rich('web.recipe.answer', { name: recipe.name, served })}
        </Ask>
      </Answer>
      <div className="kept">
        <KeptKeys subject={subject} file={{ kind: 'recipe', recipe }} name={recipe.name}>
          <Key kind="first" onClick={() => go(`/new?recipe=${kept.id}`)}>
            {text('web.recipe.again')}
          </Key>
        </KeptKeys>
        <div className="kept-parts">
          <RecipePieces recipe={recipe} onKeep={keep} />
          <div>
            <RecipeFormulas recipe={recipe} bench={cooks.at(-1)} />
            <CooksOf
              cooks={cooks}
              none={text('web.recipe.no-cooks')}
              beside={(cook) =>
                isOther(cook) ? (
                  <>
                    <span>{text('web.recipe.differs')}</span>
                    <Key onClick={() => void keep(taken(cook))}>
                      {text('web.recipe.take', { cook: cook.name, version: next })}
                    </Key>
                  </>
                ) : null
              }
            />
            <section className="recipe-lines">
              <WrittenLine
                label={text('web.shelf.name')}
                value={recipe.name}
                isNeeded
                onKeep={(name) => void keep({ ...recipe, name: name ?? recipe.name })}
              />
              <WrittenLine
                label={text('web.kept.note')}
                value={recipe.note}
                onKeep={(note) => {
                  const { note: _, ...rest } = recipe;
                  void keep(note === undefined ? rest : { ...rest, note });
                }}
              />
            </section>
          </div>
        </div>
      </div>
    </>
  );
}
