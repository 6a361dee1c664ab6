import { bringBackEntry, type Kept, type Pit, type Recipe, type State } from '@pitwright/model';
import type { ComponentType } from 'react';
import { useParams } from 'wouter';
import { Answer } from '../../parts/answer.tsx';
import { Key } from '../../parts/key.tsx';
import { Strip } from '../../parts/strip.tsx';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';
import { Gone } from '../gone.tsx';
// The stages and the written figures look as they do on a cook.
import '../cook/cook.css';
import './kept.css';

interface Documents {
  readonly pit: Pit;
  readonly recipe: Recipe;
}

const COLLECTIONS = {
  pit: (state: State) => state.pits,
  recipe: (state: State) => state.recipes,
} as const;

/** A place of the pit or recipe that its address names; a removed one can be brought back there. */
export function ofKept<K extends keyof Documents>(
  kind: K,
  Sheet: ComponentType<{ kept: Kept<Documents[K]> }>,
): ComponentType {
  return function PlaceOfKept() {
    const { text, rich } = useWords();
    const { id = '' } = useParams();
    const keeper = useKeeper();
    const kept = COLLECTIONS[kind](useKept()).get(id) as Kept<Documents[K]> | undefined;
    if (!kept) return <Gone />;
    const { name } = kept.document;
    return (
      <>
        <Strip
          name={name}
          home={`/${kind}/${id}`}
          places={[
            { href: '/', name: text('web.place.shelf') },
            { href: `/${kind}/${id}`, name: text(`web.place.${kind}`) },
          ]}
        />
        <main id="page">
          {kept.isRemoved ? (
            <>
              <Answer>{rich('web.kept.removed', { kind, name })}</Answer>
              <div className="kept">
                <p>{text('web.kept.removed.more')}</p>
                <div className="keys">
                  <Key kind="first" onClick={() => void keeper.write(bringBackEntry({ kind, id }))}>
                    {text('web.shelf.bring-back')}
                  </Key>
                </div>
              </div>
            </>
          ) : (
            <Sheet kept={kept} key={id} />
          )}
        </main>
      </>
    );
  };
}
