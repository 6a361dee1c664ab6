import type { Cook } from '@pitwright/model';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { ReaderProvider, usePrinter, useWords } from '../../words.tsx';

/** The cooks of a pit or a recipe, each with what stands beside it. */
export function CooksOf(props: { cooks: readonly Cook[]; none: string; beside: (cook: Cook) => ReactNode }) {
  const { text } = useWords();
  const { settings } = usePrinter();
  return (
    <section>
      <h2>{text('web.kept.cooks')}</h2>
      {props.cooks.length === 0 ? <p className="quiet">{props.none}</p> : null}
      <ul className="cooks-of">
        {props.cooks.map((cook) => (
          <li key={cook.id}>
            <Link href={`/cook/${cook.id}`}>{cook.name}</Link>
            <ReaderProvider writing={settings} zone={cook.zone}>
              <When cook={cook} />
            </ReaderProvider>
            {props.beside(cook)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function When({ cook }: { cook: Cook }) {
  const { text, print } = useWords();
  return (
    <span className="quiet">
      {text('web.shelf.cook-line', {
        day: print.date(cook.table.at),
        hour: print.clock(cook.table.at),
        people: cook.guests.adults + cook.guests.children,
      })}
    </span>
  );
}
