import { lazy, Suspense } from 'react';
import { Link, Route, Router, Switch } from 'wouter';
import { Boundary } from './parts/boundary.tsx';
import { Key } from './parts/key.tsx';
import { Strip } from './parts/strip.tsx';
import { deviceZone, guessedWriting, ReaderProvider, useWords } from './words.tsx';

const Specimen = lazy(() => import('./places/specimen/specimen.tsx'));

export function App() {
  return (
    <ReaderProvider writing={guessedWriting(navigator.language)} zone={deviceZone()}>
      <Router base={import.meta.env.BASE_URL.replace(/\/$/, '')}>
        <Boundary fallback={(again) => <WentWrong again={again} />}>
          <Suspense fallback={null}>
            <Switch>
              <Route path="/specimen" component={Specimen} />
              <Route>
                <Gone />
              </Route>
            </Switch>
          </Suspense>
        </Boundary>
      </Router>
    </ReaderProvider>
  );
}

function WentWrong(props: { again: () => void }) {
  const { text } = useWords();
  return (
    <main className="page">
      <p className="answer">{text('web.went-wrong')}</p>
      <div className="keys">
        <Key kind="first" onClick={props.again}>
          {text('web.went-wrong.again')}
        </Key>
      </div>
    </main>
  );
}

function Gone() {
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
