import { type CookDocument, createEntry, type Kept, removeEntry, type Subject } from '@pitwright/model';
import { newId } from '@pitwright/store';
import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { Key } from '../../parts/key.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useKeeper } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';
import { giveFile } from '../shelf/give-file.ts';

/** What can be done to a pit or a recipe as a whole, after the one deed that is its own. */
export function KeptKeys(props: { subject: Subject; file: CookDocument; name: string; children: ReactNode }) {
  const { text } = useWords();
  const keeper = useKeeper();
  const [, go] = useLocation();
  const { subject, file, name } = props;
  const duplicate = async () => {
    const id = newId();
    const document = file.kind === 'pit' ? file.pit : file.kind === 'recipe' ? file.recipe : file.cook;
    const copy = { ...document, id, name: text('web.shelf.copy-of', { name }) };
    if (await keeper.write(createEntry({ kind: subject.kind, id }, copy))) go(`/${subject.kind}/${id}`);
  };
  return (
    <div className="keys kept-keys">
      {props.children}
      <UndoKeys subject={subject} />
      <Key onClick={() => void duplicate()}>{text('web.shelf.duplicate')}</Key>
      <Key onClick={() => void giveFile(file)}>{text('web.shelf.to-file')}</Key>
      <Key onClick={() => void keeper.write(removeEntry(subject))}>{text('web.shelf.remove')}</Key>
    </div>
  );
}

/** Since when it is kept, quietly at the right of its sentence. */
export function Told(props: { kept: Kept<unknown> }) {
  const { text, print } = useWords();
  const { createdAt, changedAt } = props.kept;
  return text('web.kept.told', { created: print.date(createdAt), changed: print.date(changedAt) });
}
