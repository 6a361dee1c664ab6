import {
  type Cook,
  type CookDocument,
  changesBetween,
  createEntry,
  type EntryDraft,
  type Pit,
  type Recipe,
  type State,
  type Subject,
  setEntry,
} from '@pitwright/model';
import { type DragEvent, type ReactNode, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { FileReading } from '../../file-door.ts';
import { Notice } from '../../parts/notice.tsx';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';

/** The reader of files comes when it is first asked for. */
const door = () => import('../../file-door.ts');

type Document = { readonly subject: Subject; readonly document: Cook | Recipe | Pit };

/**
 * What a file's document becomes: a new subject, or, where that id is kept already, the changes that make what is
 * kept equal to the file. A removed one comes back.
 */
function entriesOfFile(state: State, { subject, document }: Document): EntryDraft[] {
  const collection = { cook: state.cooks, recipe: state.recipes, pit: state.pits, setting: state.settings }[
    subject.kind
  ];
  const kept = collection.get(subject.id);
  if (!kept) return [createEntry(subject, document)];
  const entries: EntryDraft[] = kept.isRemoved ? [{ subject, what: 'bring-back', schema: 1, body: {} }] : [];
  const changes = changesBetween(kept.document, document);
  return changes.length > 0 ? [...entries, setEntry(subject, changes)] : entries;
}

function subjectOf(reading: CookDocument): Document {
  switch (reading.kind) {
    case 'cook':
      return { subject: { kind: 'cook', id: reading.cook.id }, document: reading.cook };
    case 'recipe':
      return { subject: { kind: 'recipe', id: reading.recipe.id }, document: reading.recipe };
    case 'pit':
      return { subject: { kind: 'pit', id: reading.pit.id }, document: reading.pit };
  }
}

export interface CookFiles {
  readonly dropZone: {
    readonly onDragOver: (event: DragEvent) => void;
    readonly onDragLeave: (event: DragEvent) => void;
    readonly onDrop: (event: DragEvent) => void;
    readonly className: string | undefined;
  };
  readonly input: ReactNode;
  readonly problems: ReactNode;
  readonly choose: () => void;
}

/** Cook files in, by drop or by key. */
export function useCookFiles(): CookFiles {
  const { text, print } = useWords();
  const keeper = useKeeper();
  const state = useKept();
  const [, go] = useLocation();
  const input = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const [result, setResult] = useState<{ file: string; reading: FileReading }>();

  const take = async (files: readonly File[]) => {
    const { readFile } = await door();
    for (const file of files) {
      const reading = readFile(await file.text(), print.settings);
      setResult({ file: file.name, reading });
      if (!reading.ok) return;
      const read = subjectOf(reading.document);
      const isKept = await keeper.write(...entriesOfFile(state, read));
      if (isKept && files.length === 1 && reading.remarks.length === 0)
        go(`/${read.subject.kind}/${read.subject.id}`);
    }
  };
  const hasFiles = (event: DragEvent) => event.dataTransfer.types.includes('Files');

  return {
    dropZone: {
      className: isOver ? 'dropping' : undefined,
      onDragOver: (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(true);
      },
      onDragLeave: (event) => {
        if (event.currentTarget === event.target) setOver(false);
      },
      onDrop: (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(false);
        void take([...event.dataTransfer.files]);
      },
    },
    input: (
      <input
        ref={input}
        type="file"
        className="vh"
        tabIndex={-1}
        aria-label={text('web.shelf.open-file')}
        accept=".yaml,.yml"
        multiple
        onChange={(event) => {
          void take([...(event.target.files ?? [])]);
          event.target.value = '';
        }}
      />
    ),
    problems: result ? <Result {...result} /> : null,
    choose: () => input.current?.click(),
  };
}

function Result(props: { file: string; reading: FileReading }) {
  const { text } = useWords();
  const { reading, file } = props;
  if (reading.ok) {
    if (reading.remarks.length === 0) return null;
    return (
      <div className="file-result">
        <Notice level="information" about={file}>
          {reading.remarks.join(' ')}
        </Notice>
      </div>
    );
  }
  return (
    <div className="file-result" role="alert">
      <Notice
        level="caution"
        about={text('web.shelf.file-problems', { file, count: reading.problems.length })}
      >
        <ul>
          {reading.problems.map((problem) => (
            <li key={`${problem.line}:${problem.column}:${problem.words}`}>
              <b>{text('web.shelf.file-line', problem)}</b> {problem.words}
            </li>
          ))}
        </ul>
      </Notice>
    </div>
  );
}
