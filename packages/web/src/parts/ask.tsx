import {
  createContext,
  type ReactNode,
  use,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useLocation } from 'wouter';
import { useWords } from '../words.tsx';
import { Key } from './key.tsx';

/** What a figure rests on. */
export interface Origin {
  readonly meaning: string;
  readonly source: string;
  readonly doubt: string;
}

/** A figure that is asked, as it stands on the page. */
interface Figure {
  readonly askedBy: string;
  readonly origin: Origin;
  readonly shown: ReactNode;
}

interface Asking {
  readonly open: (figure: Figure) => void;
  /** What is open goes on telling its figure as the page has it. */
  readonly renew: (figure: Figure) => void;
}

const AskingContext = createContext<Asking | undefined>(undefined);

/**
 * Holds what a figure that was asked rests on: beside the page, not inside the sentence that asks, for a heading holds
 * no dialog, and a figure that an answer takes off the page does not take it from who reads.
 */
export function AskedFigures(props: { children: ReactNode }) {
  const [asked, setAsked] = useState<Figure>();
  const [place] = useLocation();
  const askedBy = useRef<string>(undefined);
  const asking = useMemo((): Asking => {
    const open = (figure: Figure | undefined) => {
      askedBy.current = figure?.askedBy;
      setAsked(figure);
    };
    return {
      open,
      renew: (figure) => {
        if (askedBy.current === figure.askedBy) setAsked(figure);
      },
    };
  }, []);
  const close = () => {
    askedBy.current = undefined;
    setAsked(undefined);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever leads to another place closes it
  useEffect(() => close, [place]);
  return (
    <AskingContext value={asking}>
      {props.children}
      {asked ? <Asked key={asked.askedBy} figure={asked} onClose={close} /> : null}
    </AskingContext>
  );
}

/** A figure that can be asked: opens what it is, where it is from and how sure it is. */
export function Ask(props: { origin: Origin; children: ReactNode }) {
  const { origin, children } = props;
  const asking = use(AskingContext);
  if (!asking) throw new Error('nothing is asked outside of AskedFigures');
  const askedBy = useId();
  useLayoutEffect(
    () => asking.renew({ askedBy, origin, shown: children }),
    [asking, askedBy, origin, children],
  );
  return (
    <button
      type="button"
      className="ask"
      aria-haspopup="dialog"
      onClick={() => asking.open({ askedBy, origin, shown: children })}
    >
      {children}
    </button>
  );
}

function Asked(props: { figure: Figure; onClose: () => void }) {
  const { text } = useWords();
  const sheet = useRef<HTMLDialogElement>(null);
  const title = useId();
  const { origin, shown } = props.figure;
  useEffect(() => {
    if (!sheet.current?.open) sheet.current?.showModal();
  }, []);
  return (
    <dialog className="asked" ref={sheet} aria-labelledby={title} onClose={props.onClose}>
      <h2 id={title}>{shown}</h2>
      <dl>
        <dt>{text('web.ask.meaning')}</dt>
        <dd>{origin.meaning}</dd>
        <dt>{text('web.ask.source')}</dt>
        <dd>{origin.source}</dd>
        <dt>{text('web.ask.doubt')}</dt>
        <dd>{origin.doubt}</dd>
      </dl>
      <Key kind="first" onClick={() => sheet.current?.close()}>
        {text('web.close')}
      </Key>
    </dialog>
  );
}
