import { createEntry, readShareLink, type SharedCook } from '@pitwright/model';
import { newId } from '@pitwright/store';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { Answer } from '../../parts/answer.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Strip } from '../../parts/strip.tsx';
import { saidWords } from '../../said.ts';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { ReaderProvider, usePrinter, useWords } from '../../words.tsx';
import { pieceName } from '../cook/band-data.ts';
import './shared.css';

/** A cook that came in a link: looked at first, kept only when the reader says so. */
export default function Shared() {
  const { text, print } = useWords();
  const [read, setRead] = useState<SharedCook>();
  useEffect(() => {
    const open = () => void readShareLink(location.hash).then(setRead);
    open();
    addEventListener('hashchange', open);
    return () => removeEventListener('hashchange', open);
  }, []);
  return (
    <>
      <Strip name="Pitwright" home="/" places={[{ href: '/', name: text('web.place.shelf') }]} />
      <main id="page">
        {read === undefined ? null : read.ok ? (
          <Offered {...read} />
        ) : (
          <>
            <Answer>{text('web.shared.unread')}</Answer>
            <div className="shared">
              <Notice level="caution" about={text('web.shared')}>
                <ul>
                  {read.problems.map((problem) => (
                    <li key={JSON.stringify(problem)}>{saidWords(problem, print)}</li>
                  ))}
                </ul>
              </Notice>
            </div>
          </>
        )}
      </main>
    </>
  );
}

function Offered(props: Extract<SharedCook, { ok: true }>) {
  const settings = usePrinter().settings;
  return (
    <ReaderProvider writing={settings} zone={props.cook.zone}>
      <Offer {...props} />
    </ReaderProvider>
  );
}

function Offer({ cook, said }: Extract<SharedCook, { ok: true }>) {
  const { text, rich, print } = useWords();
  const keeper = useKeeper();
  const [, go] = useLocation();
  const isKnown = useKept().cooks.has(cook.id);
  const keep = async () => {
    // What stands under the cook's own id, now or once the server answers, is somebody's work: a shared cook never
    // writes over it.
    const id = newId();
    if (await keeper.write(createEntry({ kind: 'cook', id }, { ...cook, id }))) go(`/cook/${id}`);
  };
  return (
    <>
      <Answer aside={cook.isDemo ? text('web.shelf.demo') : undefined}>
        {rich('web.shared.offer', {
          name: cook.name,
          day: print.date(cook.table.at),
          hour: print.clock(cook.table.at),
          people: cook.guests.adults + cook.guests.children,
        })}
      </Answer>
      <div className="shared">
        <ul className="shared-pieces">
          {cook.pieces.map((piece) => (
            <li key={piece.id}>
              <Letter letter={piece.letter} /> {pieceName(piece, print)}
            </li>
          ))}
        </ul>
        <p>{text('web.shared.without')}</p>
        {said.map((one) => (
          <p key={one.id}>{saidWords(one, print)}</p>
        ))}
        {isKnown ? <p>{text('web.shared.known')}</p> : null}
        <div className="keys">
          <Key kind="first" onClick={() => void keep()}>
            {text('web.shared.keep')}
          </Key>
        </div>
      </div>
    </>
  );
}
