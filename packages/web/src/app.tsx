import type { Journal } from '@pitwright/store';
import { lazy, type ReactNode, Suspense } from 'react';
import { Route, Router, Switch } from 'wouter';
import { AskedFigures } from './parts/ask.tsx';
import { Boundary } from './parts/boundary.tsx';
import { Key } from './parts/key.tsx';
import { Gone } from './places/gone.tsx';
import { writingOf } from './settings.ts';
import { KeepingProvider, useDevice, useKept } from './use-keeping.tsx';
import { deviceZone, ReaderProvider, useWords } from './words.tsx';

const shelf = () => import('./places/shelf/shelf.tsx');
const Shelf = lazy(shelf);
// Most visits begin there: it is fetched while what is kept here is opened.
if (location.pathname === import.meta.env.BASE_URL) void shelf();
const CookPlace = lazy(() => import('./places/cook/cook.tsx'));
const Guests = lazy(() => import('./places/guests/guests.tsx'));
const RunSheet = lazy(() => import('./places/run-sheet/run-sheet.tsx'));
const Bench = lazy(() => import('./places/bench/bench.tsx'));
const NewCook = lazy(() => import('./places/new-cook/new-cook.tsx'));
const Pit = lazy(() => import('./places/kept/pit.tsx'));
const Recipe = lazy(() => import('./places/kept/recipe.tsx'));
const TwoCooks = lazy(() => import('./places/compare/two-cooks.tsx'));
const Shared = lazy(() => import('./places/shared/shared.tsx'));
const Specimen = lazy(() => import('./places/specimen/specimen.tsx'));

export function App(props: { journal: Journal }) {
  return (
    <KeepingProvider journal={props.journal}>
      <Reading>
        <Router base={import.meta.env.BASE_URL.replace(/\/$/, '')}>
          <Boundary fallback={(again) => <WentWrong again={again} />}>
            <AskedFigures>
              <Suspense fallback={null}>
                <Switch>
                  <Route path="/" component={Shelf} />
                  <Route path="/new" component={NewCook} />
                  <Route path="/cook/:id" component={CookPlace} />
                  <Route path="/cook/:id/guests" component={Guests} />
                  <Route path="/cook/:id/run-sheet" component={RunSheet} />
                  <Route path="/cook/:id/bench" component={Bench} />
                  <Route path="/pit/:id" component={Pit} />
                  <Route path="/recipe/:id" component={Recipe} />
                  <Route path="/side-by-side" component={TwoCooks} />
                  <Route path="/shared" component={Shared} />
                  <Route path="/specimen" component={Specimen} />
                  <Route>
                    <Gone />
                  </Route>
                </Switch>
              </Suspense>
            </AskedFigures>
          </Boundary>
        </Router>
      </Reading>
    </KeepingProvider>
  );
}

/** Everything is printed as this person writes; clock times on the device's wall until a cook is open. */
function Reading(props: { children: ReactNode }) {
  const state = useKept();
  return (
    <ReaderProvider writing={writingOf(state, useDevice())} zone={deviceZone()}>
      {props.children}
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
