import { Link } from 'wouter';
import { Strip } from '../parts/strip.tsx';
import { useWords } from '../words.tsx';

/** Nothing stands under this address. */
export function Gone() {
  const { text } = useWords();
  return (
    <>
      <Strip name="Pitwright" home="/" places={[{ href: '/', name: text('web.place.shelf') }]} />
      <main className="page" id="page">
        <h1 className="answer">{text('web.gone')}</h1>
        <p>
          <Link href="/">{text('web.gone.back')}</Link>
        </p>
      </main>
    </>
  );
}
