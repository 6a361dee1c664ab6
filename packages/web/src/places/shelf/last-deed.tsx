import type { Entry, State } from '@pitwright/model';
import { Key } from '../../parts/key.tsx';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';

type Deed = 'create' | 'set' | 'remove' | 'bring-back';
const DEEDS: readonly string[] = ['create', 'set', 'remove', 'bring-back'] satisfies Deed[];

const collectionOf = (state: State, { subject }: Entry) =>
  ({ cook: state.cooks, recipe: state.recipes, pit: state.pits, setting: undefined })[subject.kind];

/**
 * What this device did last to a cook, a recipe or a pit, and the key that takes it back. Nothing where the last thing
 * was another: how one writes is changed where it stands.
 */
export function LastDeed() {
  const { text } = useWords();
  const keeper = useKeeper();
  const state = useKept();
  const last = keeper.lastDone();
  const name = last && collectionOf(state, last)?.get(last.subject.id)?.document.name;
  const canUndo = last !== undefined && name !== undefined && DEEDS.includes(last.what);
  const canRedo = keeper.canRedo();
  if (!canUndo && !canRedo) return null;
  return (
    <div className="keys shelf-undo">
      {canUndo ? (
        <Key onClick={() => void keeper.undo()}>{text(`web.undo.${last.what as Deed}`, { name })}</Key>
      ) : null}
      {canRedo ? <Key onClick={() => void keeper.redo()}>{text('web.redo')}</Key> : null}
    </div>
  );
}
