import { lazy, type ReactNode, Suspense, useState, useSyncExternalStore } from 'react';
import { Link, useLocation } from 'wouter';
import { chooseLight, LIGHTS } from '../light/light.ts';
import { useChosenLight } from '../light/use-light.ts';
import { newerEdition, onNewerEdition, takeNewerEdition } from '../offline.ts';
import { useFault } from '../use-keeping.tsx';
import { useWords } from '../words.tsx';
import { InStep } from './in-step.tsx';
import { Key } from './key.tsx';

export interface PlaceLink {
  readonly href: string;
  readonly name: string;
}

/** The title strip: what is open, the places that exist, a few cells of what holds today, the light. */
export function Strip(props: {
  name: string;
  home: string;
  places: readonly PlaceLink[];
  cells?: readonly ReactNode[];
}) {
  const { text } = useWords();
  const [location] = useLocation();
  const [isOpen, setOpen] = useState(false);
  const links = props.places.map((place) => (
    <Link
      key={place.href}
      href={place.href}
      aria-current={place.href === location ? 'page' : undefined}
      onClick={() => setOpen(false)}
    >
      {place.name}
    </Link>
  ));
  return (
    <header className="not-printed">
      <a className="skip" href="#page">
        {text('web.skip')}
      </a>
      <div className="strip">
        <Link className="strip-name" href={props.home}>
          <span>{props.name}</span>
        </Link>
        <nav aria-label={text('web.places')}>{links}</nav>
        {props.cells?.map((cell, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the cells of a strip keep their order
          <div className="strip-cell" key={index}>
            {cell}
          </div>
        ))}
        <div className="strip-cell">
          <InStep />
        </div>
        <LightKey />
        <button
          type="button"
          className="strip-places"
          aria-expanded={isOpen}
          onClick={() => setOpen((open) => !open)}
        >
          {text('web.places')}
        </button>
      </div>
      {isOpen ? (
        <nav className="places-list" aria-label={text('web.places')}>
          {links}
          <p className="places-note">
            <InStep />
          </p>
        </nav>
      ) : null}
      <LastNotKept />
      <NewerEdition />
    </header>
  );
}

/** One key goes round the lights: by the clock, paper, lamp, sun. */
function LightKey() {
  const { text } = useWords();
  const light = useChosenLight();
  const next = LIGHTS[(LIGHTS.indexOf(light) + 1) % LIGHTS.length] ?? 'by-clock';
  return (
    <button type="button" className="strip-light" onClick={() => chooseLight(next)}>
      {text('web.light.now', { light: text(`web.light.${light}`) })}
    </button>
  );
}

/** Its words come when they are needed. */
const NotKept = lazy(() => import('./not-kept.tsx'));

function LastNotKept() {
  const fault = useFault();
  if (fault === undefined) return null;
  return (
    <Suspense fallback={null}>
      <NotKept fault={fault} />
    </Suspense>
  );
}

function NewerEdition() {
  const { text } = useWords();
  const waiting = useSyncExternalStore(onNewerEdition, newerEdition);
  if (!waiting) return null;
  return (
    <div className="newer">
      {text('web.newer')} <Key onClick={takeNewerEdition}>{text('web.newer.open')}</Key>
    </div>
  );
}
