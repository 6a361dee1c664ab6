import { type Alternative, variantsOf } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { Key } from '../parts/key.tsx';
import { saidWords } from '../said.ts';
import { useWords } from '../words.tsx';

/** Makes the cook the one that a way foresaw, as one change; nothing for the way that the plan goes already. */
export function TakeWay(props: { cook: Cook; way: Alternative; onKeep: (cook: Cook) => unknown }) {
  const { text, print } = useWords();
  const { cook, way, onKeep } = props;
  const taken = variantsOf(cook).find(({ id }) => id === way.id)?.cook;
  if (!taken) return null;
  return (
    <Key
      kind="plain"
      aria-label={text('web.way.take-of', { way: saidWords(way.said, print) })}
      onClick={() => void onKeep(taken)}
    >
      {text('web.compare.take')}
    </Key>
  );
}
