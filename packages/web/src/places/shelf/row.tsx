import { bringBackEntry, createEntry, removeEntry, type Subject, setEntry } from '@pitwright/model';
import { newId } from '@pitwright/store';
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { useKeeper } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';

interface Thing {
  readonly id: string;
  readonly name: string;
  readonly isDemo?: boolean;
}

/** One line of the shelf, with what can be done to it behind one key. */
export function ShelfRow(props: {
  subject: Subject;
  document: Thing;
  href?: string;
  what: string;
  letters?: readonly string[];
  /** Deeds of this kind of thing alone. */
  deeds?: ReactNode;
}) {
  const { text } = useWords();
  const keeper = useKeeper();
  const [isOpen, setOpen] = useState(false);
  const [newName, setNewName] = useState<string>();
  const { subject, document } = props;
  const duplicate = () => {
    const id = newId();
    const copy = { ...document, id, name: text('web.shelf.copy-of', { name: document.name }) };
    keeper.write(createEntry({ kind: subject.kind, id }, copy));
  };
  const rename = () => {
    const name = newName?.trim();
    if (name && name !== document.name) keeper.write(setEntry(subject, [{ path: ['name'], value: name }]));
    setNewName(undefined);
  };
  return (
    <li className="shelf-row">
      {props.href ? (
        <Link className="shelf-name" href={props.href}>
          {document.name}
          {document.isDemo ? <span className="demo-mark">{text('web.shelf.demo')}</span> : null}
        </Link>
      ) : (
        <span className="shelf-name">{document.name}</span>
      )}
      <span className="shelf-what">{props.what}</span>
      {props.letters ? (
        <span className="letters" aria-hidden="true">
          {props.letters.map((letter) => (
            <Letter key={letter} letter={letter} />
          ))}
        </span>
      ) : null}
      <Key
        aria-expanded={isOpen}
        aria-label={`${text('web.shelf.more')}: ${document.name}`}
        onClick={() => setOpen((open) => !open)}
      >
        {text('web.shelf.more')}
      </Key>
      {isOpen && newName === undefined ? (
        <div className="keys shelf-deeds">
          <Key onClick={() => setNewName(document.name)}>{text('web.shelf.rename')}</Key>
          <Key onClick={duplicate}>{text('web.shelf.duplicate')}</Key>
          {props.deeds}
          <Key onClick={() => keeper.write(removeEntry(subject))}>{text('web.shelf.remove')}</Key>
        </div>
      ) : null}
      {newName === undefined ? null : (
        <form
          className="shelf-rename"
          onSubmit={(event) => {
            event.preventDefault();
            rename();
          }}
        >
          <Field
            label={text('web.shelf.name')}
            value={newName}
            autoFocus
            onChange={(event) => setNewName(event.target.value)}
          />
          <Key kind="first" type="submit">
            {text('web.keep')}
          </Key>
        </form>
      )}
    </li>
  );
}

/** What was removed waits here to be brought back. */
export function RemovedRow(props: { subject: Subject; name: string }) {
  const { text } = useWords();
  const keeper = useKeeper();
  return (
    <li className="shelf-row removed">
      <span className="shelf-name">{props.name}</span>
      <Key
        aria-label={`${text('web.shelf.bring-back')}: ${props.name}`}
        onClick={() => keeper.write(bringBackEntry(props.subject))}
      >
        {text('web.shelf.bring-back')}
      </Key>
    </li>
  );
}
