import {
  findIngredient,
  type Ingredient,
  type Labels,
  ownIngredients,
  searchIngredients,
} from '@pitwright/engine/sauce';
import { createContext, type ReactNode, use, useMemo } from 'react';

interface Known {
  readonly find: (id: string) => Ingredient | undefined;
  /** One's own first; curing salts never. */
  readonly search: (words: string, most: number) => readonly Ingredient[];
}

const KnownContext = createContext<Known | undefined>(undefined);

const isCure = ({ id }: Ingredient): boolean => id.startsWith('cure_');

/** What a cook's lines may name: the catalogue and the ingredients of one's own. */
export function KnownIngredients(props: { labels: Labels | undefined; children: ReactNode }) {
  const { labels } = props;
  const known = useMemo<Known>(() => {
    const own = ownIngredients(labels);
    return {
      find: (id) => findIngredient(id, labels),
      search: (words, most) => {
        const wanted = words.trim().toLowerCase();
        const ownFound = own.filter(({ name }) => name.toLowerCase().includes(wanted));
        const found = wanted === '' ? [] : searchIngredients(words, most).filter((one) => !isCure(one));
        return [...ownFound, ...found].slice(0, most);
      },
    };
  }, [labels]);
  return <KnownContext value={known}>{props.children}</KnownContext>;
}

export function useKnown(): Known {
  const known = use(KnownContext);
  if (!known) throw new Error('nothing is known outside of KnownIngredients');
  return known;
}
