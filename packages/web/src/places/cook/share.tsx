import { type Cook, type Private, type ShareLink, shareLink } from '@pitwright/model';
import { useEffect, useState } from 'react';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';

const PRIVATE: readonly Private[] = ['coordinates', 'allergies', 'names'];

/** Where a shared cook is opened; what it carries stands after `#` and is sent to no server. */
const addressOf = (fragment: string): string =>
  `${new URL(`${import.meta.env.BASE_URL}shared`, location.origin).href}#${fragment}`;

/** A link that carries this cook: what stays out of it is said before it is copied. */
export function Share(props: { cook: Cook }) {
  const { text } = useWords();
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Key aria-expanded={isOpen} onClick={() => setOpen((open) => !open)}>
        {text('web.share')}
      </Key>
      {isOpen ? <ShareSheet cook={props.cook} /> : null}
    </>
  );
}

function ShareSheet(props: { cook: Cook }) {
  const { text, print } = useWords();
  const { cook } = props;
  const [ticked, setTicked] = useState<readonly Private[]>([]);
  const [link, setLink] = useState<ShareLink>();
  const [isCopied, setCopied] = useState(false);
  useEffect(() => {
    let isWanted = true;
    void shareLink(cook, ticked).then((made) => {
      if (!isWanted) return;
      setLink(made);
      setCopied(false);
    });
    return () => {
      isWanted = false;
    };
  }, [cook, ticked]);
  const address = link?.ok ? addressOf(link.fragment) : undefined;
  const copy = async () => {
    if (!address) return;
    await navigator.clipboard.writeText(address);
    setCopied(true);
  };
  return (
    <section className="share" aria-label={text('web.share')}>
      <p>{text('web.share.carries')}</p>
      <fieldset>
        <legend>{text('web.share.left-out')}</legend>
        {PRIVATE.map((what) => (
          <label key={what}>
            <input
              type="checkbox"
              checked={ticked.includes(what)}
              onChange={(event) =>
                setTicked(event.target.checked ? [...ticked, what] : ticked.filter((one) => one !== what))
              }
            />
            {text(`web.share.${what}`)}
          </label>
        ))}
      </fieldset>
      {link?.said.map((said) => (
        <p key={said.id}>{saidWords(said, print)}</p>
      ))}
      {address ? (
        <div className="keys">
          <Key kind="first" onClick={() => void copy()}>
            {text('web.share.copy')}
          </Key>
          <label className="share-address">
            <span className="vh">{text('web.share.address')}</span>
            <input readOnly value={address} onFocus={(event) => event.target.select()} />
          </label>
          <span role="status">{isCopied ? text('web.share.copied') : ''}</span>
        </div>
      ) : null}
    </section>
  );
}
