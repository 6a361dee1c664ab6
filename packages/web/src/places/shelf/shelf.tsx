import { type Cook, createEntry, type Kept, type Pit, type Recipe, setEntry } from '@pitwright/model';
import { newId } from '@pitwright/store';
import { capital, clock, date, pitName } from '@pitwright/words';
import { lazy, type ReactNode, Suspense, useState } from 'react';
import { useLocation } from 'wouter';
import { Answer } from '../../parts/answer.tsx';
import { Key } from '../../parts/key.tsx';
import { Strip } from '../../parts/strip.tsx';
import { toldWriting } from '../../settings.ts';
import { useDevice, useKeeper, useKept } from '../../use-keeping.tsx';
import { ReaderProvider, usePrinter, useWords } from '../../words.tsx';
import { tellingApart } from '../apart.ts';
import { useCookFiles } from './cook-files.tsx';
import { recipeOf } from './from-cook.ts';
import { giveFile } from './give-file.ts';
import { LastDeed } from './last-deed.tsx';
import { shelveCooks } from './order.ts';
import { RemovedRow, ShelfRow } from './row.tsx';
import { WritingChoice } from './writing.tsx';
import './shelf.css';

/** It knows what is out of the ordinary, and that weighs more than the shelf. */
const PitForm = lazy(() => import('./pit-form.tsx'));

/** Recipes, cooks and pits: what is kept on this device. */
export default function Shelf() {
  const words = useWords();
  const { text, rich, print } = words;
  const state = useKept();
  const files = useCookFiles();
  const [addsPit, setAddsPit] = useState(false);
  const [, go] = useLocation();
  const isFirst = toldWriting(state, useDevice()) === undefined;
  const cooks = shelveCooks(state.cooks.values(), Date.now());
  const standing = <T,>(map: ReadonlyMap<string, Kept<T>>) =>
    [...map.values()].filter((kept) => !kept.isRemoved);
  const removedOf = <T extends { name: string }>(
    kind: 'recipe' | 'pit' | 'cook',
    map: ReadonlyMap<string, Kept<T>>,
  ) =>
    [...map.values()]
      .filter((kept) => kept.isRemoved)
      .map((kept) => <RemovedRow key={kept.id} subject={{ kind, id: kept.id }} name={kept.document.name} />);
  const removed = [
    ...removedOf('cook', state.cooks),
    ...removedOf('recipe', state.recipes),
    ...removedOf('pit', state.pits),
  ];
  const { besides } = tellingApart(words, [...cooks.coming, ...cooks.past]);
  const next = cooks.coming[0];
  return (
    <div {...files.dropZone}>
      <Strip
        name="Pitwright"
        home="/"
        places={[
          { href: '/', name: text('web.place.shelf') },
          { href: '/new', name: text('web.place.new-cook') },
        ]}
      />
      {isFirst ? <WritingChoice isFirst /> : null}
      <main id="page">
        <Answer>
          {next ? (
            rich('web.shelf.next', {
              name: next.document.name,
              day: date(
                next.document.table.at,
                next.document.zone,
                print.settings.clock === '12' ? 'us' : 'uk',
              ),
              hour: clock(next.document.table.at, { ...print.settings, zone: next.document.zone }),
            })
          ) : (
            <>
              {text('web.shelf.empty')} {text('web.shelf.empty.more')}
            </>
          )}
        </Answer>
        <LastDeed />
        {files.problems}
        <div className="shelf">
          <div>
            <Section title={text('web.shelf.coming')}>
              {cooks.coming.map((kept) => (
                <CookRow key={kept.id} kept={kept} besides={besides(kept)} />
              ))}
            </Section>
            <div className="keys shelf-new">
              <Key kind="first" onClick={() => go('/new')}>
                {text('web.shelf.new-cook')}
              </Key>
              <Key onClick={files.choose}>{text('web.shelf.open-file')}</Key>
              <span className="small quiet">{text('web.shelf.drop')}</span>
              {files.input}
            </div>
            {cooks.past.length > 0 ? (
              <Section title={text('web.shelf.past')}>
                {cooks.past.map((kept) => (
                  <CookRow key={kept.id} kept={kept} besides={besides(kept)} />
                ))}
              </Section>
            ) : null}
          </div>
          <div>
            <Section title={text('web.shelf.recipes')}>
              {standing(state.recipes).map((kept) => (
                <RecipeRow key={kept.id} kept={kept} />
              ))}
            </Section>
            {standing(state.recipes).length === 0 ? (
              <p className="small quiet shelf-note">{text('web.shelf.recipes.none')}</p>
            ) : null}
            <Section title={text('web.shelf.pits')}>
              {standing(state.pits).map((kept) => (
                <PitRow key={kept.id} kept={kept} />
              ))}
            </Section>
            {addsPit ? (
              <Suspense fallback={null}>
                <PitForm onDone={() => setAddsPit(false)} />
              </Suspense>
            ) : (
              <div className="keys shelf-new">
                <Key onClick={() => setAddsPit(true)}>{text('web.shelf.new-pit')}</Key>
              </div>
            )}
            {removed.length > 0 ? <Section title={text('web.shelf.removed')}>{removed}</Section> : null}
          </div>
        </div>
        {isFirst ? null : <WritingChoice isFirst={false} />}
      </main>
    </div>
  );
}

function Section(props: { title: string; children: ReactNode }) {
  return (
    <section>
      <h2>{props.title}</h2>
      <ul>{props.children}</ul>
    </section>
  );
}

interface CookRowProps {
  readonly kept: Kept<Cook>;
  /** What tells it from another of the same name, day and number of people. */
  readonly besides: string | undefined;
}

function CookRow(props: CookRowProps) {
  const { settings } = usePrinter();
  return (
    <ReaderProvider writing={settings} zone={props.kept.document.zone}>
      <CookLine {...props} />
    </ReaderProvider>
  );
}

function CookLine(props: CookRowProps) {
  const { text, print } = useWords();
  const keeper = useKeeper();
  const [, go] = useLocation();
  const cook = props.kept.document;
  const people = cook.guests.adults + cook.guests.children;
  const subject = { kind: 'cook' as const, id: props.kept.id };
  const isPitKept = useKept().pits.get(cook.pit.id)?.isRemoved === false;
  return (
    <ShelfRow
      subject={subject}
      document={cook}
      href={`/cook/${props.kept.id}`}
      what={[
        text('web.shelf.cook-line', {
          day: print.date(cook.table.at),
          hour: print.clock(cook.table.at),
          people,
        }),
        ...(props.besides === undefined ? [] : [props.besides]),
      ].join(', ')}
      letters={cook.pieces.map((piece) => piece.letter)}
      deeds={
        <>
          <Key onClick={() => go(`/side-by-side?a=${props.kept.id}`)}>{text('web.two.key')}</Key>
          <Key onClick={() => void giveFile({ kind: 'cook', cook })}>{text('web.shelf.to-file')}</Key>
          <Key
            onClick={() => {
              const recipe = recipeOf(cook, newId());
              void keeper.write(
                // Its first cook is the one that it was made of; one that has a recipe already stays with that.
                ...(cook.recipe
                  ? []
                  : [setEntry(subject, [{ path: ['recipe'], value: { id: recipe.id, version: 1 } }])]),
                createEntry({ kind: 'recipe', id: recipe.id }, recipe),
              );
            }}
          >
            {text('web.shelf.as-recipe')}
          </Key>
          {isPitKept ? null : (
            <Key
              onClick={() => {
                const id = newId();
                void keeper.write(
                  setEntry(subject, [{ path: ['pit', 'id'], value: id }]),
                  createEntry({ kind: 'pit', id }, { ...cook.pit, id }),
                );
              }}
            >
              {text('web.pit.keep-of')}
            </Key>
          )}
        </>
      }
    />
  );
}

function RecipeRow(props: { kept: Kept<Recipe> }) {
  const { text, print } = useWords();
  const [, go] = useLocation();
  const recipe = props.kept.document;
  const what = recipe.pieces.map((piece) => `${piece.count} ${print.cut(piece.cut, piece.count)}`).join(', ');
  return (
    <ShelfRow
      subject={{ kind: 'recipe', id: props.kept.id }}
      document={recipe}
      href={`/recipe/${props.kept.id}`}
      what={capital(what)}
      deeds={
        <>
          <Key onClick={() => go(`/new?recipe=${props.kept.id}`)}>{text('web.shelf.cook-it')}</Key>
          <Key onClick={() => void giveFile({ kind: 'recipe', recipe })}>{text('web.shelf.to-file')}</Key>
        </>
      }
    />
  );
}

function PitRow(props: { kept: Kept<Pit> }) {
  const { text, print } = useWords();
  const pit = props.kept.document;
  return (
    <ShelfRow
      subject={{ kind: 'pit', id: props.kept.id }}
      document={pit}
      href={`/pit/${props.kept.id}`}
      what={text('web.shelf.pit-line', { type: pitName(pit.type), heat: print.quantity(pit.temperature) })}
      deeds={<Key onClick={() => void giveFile({ kind: 'pit', pit })}>{text('web.shelf.to-file')}</Key>}
    />
  );
}
