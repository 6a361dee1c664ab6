import type { Subject } from '@pitwright/model';
import { useKeeper, useKept } from '../use-keeping.tsx';
import { useWords } from '../words.tsx';
import { Key } from './key.tsx';

/** Undo and redo of what this device wrote, in full size and without a question before. */
export function UndoKeys(props: { subject?: Subject; atPit?: boolean }) {
  const { text } = useWords();
  const keeper = useKeeper();
  // What can be taken back changes with what is kept.
  useKept();
  const canUndo = keeper.canUndo(props.subject);
  return (
    <>
      <Key disabled={!canUndo} atPit={props.atPit ?? false} onClick={() => keeper.undo(props.subject)}>
        {canUndo ? text('web.undo') : text('web.nothing-to-undo')}
      </Key>
      {keeper.canRedo(props.subject) ? (
        <Key atPit={props.atPit ?? false} onClick={() => keeper.redo(props.subject)}>
          {text('web.redo')}
        </Key>
      ) : null}
    </>
  );
}
