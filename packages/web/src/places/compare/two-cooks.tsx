import type { Cook, Kept } from '@pitwright/model';
import { printer } from '@pitwright/words';
import { useMemo } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { useForesight } from '../../foresee/use-foresight.ts';
import { Answer } from '../../parts/answer.tsx';
import { Pick } from '../../parts/field.tsx';
import { Strip } from '../../parts/strip.tsx';
import { useKept } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';
import { tellingApart } from '../apart.ts';
import { comesOtherwise, type Difference, type Side, toldOtherwise } from './differences.ts';
import { TwoStrips } from './two-strips.tsx';
import './two-cooks.css';

/** Two cooks' plans: both sentences, both days aligned at the table, and what differs. */
export default function TwoCooks() {
  const words = useWords();
  const { text } = words;
  const state = useKept();
  const [search] = useSearchParams();
  const [, go] = useLocation();
  const cooks = [...state.cooks.values()].filter((kept) => !kept.isRemoved);
  const { nameOf } = tellingApart(words, cooks);
  const a = cooks.find((cook) => cook.id === search.get('a')) ?? cooks[0];
  const b = cooks.find((cook) => cook.id === search.get('b')) ?? likest(cooks, a);
  const choose = (ofA: string, ofB: string) => go(`/side-by-side?a=${ofA}&b=${ofB}`, { replace: true });
  return (
    <>
      <Strip
        name="Pitwright"
        home="/"
        places={[
          { href: '/', name: text('web.place.shelf') },
          { href: '/side-by-side', name: text('web.two.place') },
        ]}
      />
      <main id="page">
        {a && b ? (
          <SideBySide a={a} b={b} cooks={cooks} nameOf={nameOf} onChoose={choose} key={`${a.id} ${b.id}`} />
        ) : (
          <Answer>{text('web.two.one-only')}</Answer>
        )}
      </main>
    </>
  );
}

/** The cook that is most like another: of the same recipe, or with most of its meat in common. */
function likest(cooks: readonly Kept<Cook>[], one: Kept<Cook> | undefined): Kept<Cook> | undefined {
  const cook = one?.document;
  const likeness = ({ document: other }: Kept<Cook>): number =>
    (cook?.recipe && other.recipe?.id === cook.recipe.id ? 100 : 0) +
    other.pieces.filter((piece) => cook?.pieces.some((own) => own.cut === piece.cut)).length -
    Math.abs(other.pieces.length - (cook?.pieces.length ?? 0)) / 2;
  return cooks
    .filter((other) => other !== one)
    .reduce<Kept<Cook> | undefined>(
      (best, next) => (best && likeness(best) >= likeness(next) ? best : next),
      undefined,
    );
}

function useSide(cook: Cook, name: string): Side {
  const { settings } = useWords().print;
  const { foresight } = useForesight(cook, false);
  const { zone } = cook;
  const print = useMemo(() => printer({ ...settings, zone }), [settings, zone]);
  return { cook, name, foresight, print };
}

function SideBySide(props: {
  a: Kept<Cook>;
  b: Kept<Cook>;
  cooks: readonly Kept<Cook>[];
  nameOf: (cook: Kept<Cook>) => string;
  onChoose: (a: string, b: string) => void;
}) {
  const { text } = useWords();
  const { nameOf } = props;
  const a = useSide(props.a.document, nameOf(props.a));
  const b = useSide(props.b.document, nameOf(props.b));
  const options = (without: Kept<Cook>) =>
    props.cooks.filter((cook) => cook !== without).map((cook) => ({ value: cook.id, text: nameOf(cook) }));
  return (
    <>
      <Answer live>
        <Sentence a={a} b={b} />
      </Answer>
      <div className="two-cooks">
        <div className="two-choice">
          <Pick
            label={text('web.two.first')}
            value={props.a.id}
            options={options(props.b)}
            onPick={(id) => props.onChoose(id, props.b.id)}
          />
          <Pick
            label={text('web.two.second')}
            value={props.b.id}
            options={options(props.a)}
            onPick={(id) => props.onChoose(props.a.id, id)}
          />
        </div>
        <TwoStrips a={a} b={b} />
        <Differences
          title={text('web.two.told')}
          same={text('web.two.same-told')}
          a={a}
          b={b}
          rows={toldOtherwise(a, b, text)}
        />
        {a.foresight && b.foresight ? (
          <Differences
            title={text('web.two.comes')}
            same={text('web.two.same-comes')}
            a={a}
            b={b}
            rows={comesOtherwise(a, b, text)}
          />
        ) : null}
      </div>
    </>
  );
}

/** Which of the two is the surer; nothing is said before both are known. */
function Sentence({ a, b }: { a: Side; b: Side }) {
  const { text, rich } = useWords();
  if (!a.foresight || !b.foresight) return text('web.two.looking');
  const chance = (side: Side) =>
    side.print.chance(side.foresight!.plan.chanceAllOnTime, side.foresight!.members);
  if (chance(a) === chance(b)) return rich('web.two.even', { a: a.name, b: b.name, chance: chance(a) });
  const [more, less] = a.foresight.plan.chanceAllOnTime > b.foresight.plan.chanceAllOnTime ? [a, b] : [b, a];
  return rich('web.two.answer', {
    more: more.name,
    less: less.name,
    moreChance: chance(more),
    lessChance: chance(less),
  });
}

function Differences(props: { title: string; same: string; a: Side; b: Side; rows: readonly Difference[] }) {
  const { text } = useWords();
  return (
    <section>
      <h2>{props.title}</h2>
      {props.rows.length === 0 ? (
        <p className="quiet">{props.same}</p>
      ) : (
        <table className="two-differences">
          <thead>
            <tr>
              <th scope="col">{text('web.two.what')}</th>
              <th scope="col">{props.a.name}</th>
              <th scope="col">{props.b.name}</th>
            </tr>
          </thead>
          <tbody>
            {props.rows.map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td>{row.a}</td>
                <td>{row.b}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
