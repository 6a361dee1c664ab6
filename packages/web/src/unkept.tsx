import { StoreFault } from '@pitwright/store';
import { Key } from './parts/key.tsx';
import { useWords } from './words.tsx';

/** The browser keeps nothing for us: said plainly, instead of losing work later. */
export function Unkept(props: { fault: unknown }) {
  const { text } = useWords();
  return (
    <main className="page" id="page">
      <h1 className="answer">{text('web.unkept')}</h1>
      <p>{text('web.unkept.more')}</p>
      {props.fault instanceof StoreFault ? <p className="small quiet">{props.fault.said.id}</p> : null}
      <div className="keys">
        <Key kind="first" onClick={() => location.reload()}>
          {text('web.went-wrong.again')}
        </Key>
      </div>
    </main>
  );
}
