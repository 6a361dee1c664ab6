import {
  type Cook,
  createEntry,
  type Kind,
  type Limits,
  PIECE_LIMITS,
  PIT_LIMITS,
  PIT_TYPES,
  type Piece,
  type PitType,
  printCookQuantity,
  quantity,
} from '@pitwright/model';
import { newId } from '@pitwright/store';
import { biteName, capital, listed, pitName } from '@pitwright/words';
import { useRef, useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { useForesight } from '../../foresee/use-foresight.ts';
import { Answer } from '../../parts/answer.tsx';
import { Choice } from '../../parts/choice.tsx';
import { DayPick } from '../../parts/day-pick.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { type Figure, readFigure } from '../../parts/read-figure.ts';
import { Stepper } from '../../parts/stepper.tsx';
import { Strip } from '../../parts/strip.tsx';
import { saidWords } from '../../said.ts';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { deviceZone, useWords } from '../../words.tsx';
import { useRemarks } from '../remarks.ts';
import {
  type Answers,
  answersFrom,
  cookOf,
  firstAnswers,
  type MeatAnswer,
  meatAnswer,
  tableAt,
} from './answers.ts';
import { CutPick } from './cut-pick.tsx';
import { sensible } from './sensible.ts';
import { SKIES, type Sky, WINDS, type Wind } from './skies.ts';
import './new-cook.css';

const MOST_PIECES = 8;
/** Every quarter of an hour from six in the morning to half past eleven at night. */
const HOURS = Array.from({ length: 71 }, (_, index) => {
  const minutes = 6 * 60 + index * 15;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
});

/** What often lies beside what is told already: the first of these that is not told. */
const BESIDE = ['chicken-leg', 'loin-back-ribs', 'pork-shoulder', 'brisket-whole'] as const;
const nextCut = (meats: readonly MeatAnswer[]) =>
  BESIDE.find((cut) => meats.every((meat) => meat.cut !== cut)) ?? BESIDE[0];

/** `18:00` or `6:00 pm`. */
function wallHour(value: string, style: '12' | '24'): string {
  if (style === '24') return value;
  const [hour = 0, minute = 0] = value.split(':').map(Number);
  return `${((hour + 11) % 12) + 1}:${String(minute).padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}`;
}

/** Twelve questions at most, each answered already; one key and the plan stands. */
export default function NewCook() {
  const { text, rich, print } = useWords();
  const remarks = useRemarks();
  const keeper = useKeeper();
  const state = useKept();
  const [, go] = useLocation();
  const [search] = useSearchParams();
  const { units } = print.settings;
  const zone = deviceZone();
  const recipe = state.recipes.get(search.get('recipe') ?? '')?.document;
  const [answers, setAnswers] = useState<Answers>(() => {
    const kept = state.pits.get(search.get('pit') ?? '');
    const first = {
      ...firstAnswers(units, zone, newId()),
      ...(kept && !kept.isRemoved
        ? { pit: { kept: kept.document }, heat: print.quantity(kept.document.temperature) }
        : {}),
    };
    if (!recipe) return first;
    const massText = (piece: Piece) =>
      piece.mass ? print.quantity(piece.mass) : meatAnswer(piece.cut, units, '').mass;
    return answersFrom(recipe, first, massText);
  });
  const change = (part: Partial<Answers>) => setAnswers((now) => ({ ...now, ...part }));
  const changeMeat = (key: string, part: Partial<MeatAnswer>) =>
    setAnswers((now) => ({
      ...now,
      meats: now.meats.map((meat) => (meat.key === key ? { ...meat, ...part } : meat)),
    }));
  const pits = [...state.pits.values()].filter((kept) => !kept.isRemoved);

  const masses = answers.meats.map((meat) => readFigure(meat.mass, 'mass', PIECE_LIMITS.mass, units));
  const heat = readFigure(answers.heat, 'temperature', PIT_LIMITS.temperature, units);
  /** What is wrong with a figure as it stands. @param unread said where it is none */
  const problemOf = <K extends Kind>(figure: Figure<K>, kind: K, limits: Limits, unread: string) => {
    if (figure.ok) return undefined;
    if (figure.why === 'unread') return unread;
    return text('web.figure.outside', {
      low: print.quantity(quantity(kind, limits.min, limits.unit)),
      high: print.quantity(quantity(kind, limits.max, limits.unit)),
    });
  };
  const hour = readHour(answers, zone);
  const isWhole = heat.ok && hour !== undefined && masses.every((mass) => mass.ok);
  const what = listed(
    answers.meats.map((meat) => `${print.count(meat.count)} ${print.cut(meat.cut, meat.count)}`),
  );
  const people = answers.adults + answers.children;
  const defaultName = hour ? text('web.new.name-of', { what: capital(what) }) : '';
  const firstProblem = useRef<HTMLDivElement>(null);

  const cookAs = (id: string): Cook | undefined => {
    if (!isWhole || !heat.ok) return undefined;
    const type = typeof answers.pit === 'string' ? answers.pit : answers.pit.kept.type;
    return cookOf(answers, {
      id,
      zone,
      name: answers.name.trim() || defaultName,
      pitName: capital(pitName(type)),
      weatherWords: text('web.new.weather-words', {
        sky: text(`web.sky.${answers.sky}`),
        wind: text(`web.wind.${answers.wind}`),
      }),
      masses: masses.flatMap((mass) => (mass.ok ? [mass.quantity] : [])),
      heat: heat.quantity,
      ...(recipe ? { recipe } : {}),
    });
  };
  // The name changes nothing that is foreseen: typing it asks for no new look.
  const { name: _name, ...matter } = answers;
  const preview = useStable(cookAs('preview'), JSON.stringify(matter));
  const { foresight } = useForesight(preview, true);
  const notUsed = (word: string) =>
    foresight?.forecast.notUsed
      .filter((said) => said.id.includes(word))
      .map((said) => saidWords(said, print))
      .join(' ');
  const firstOn = foresight?.plan.firstOnAt;

  const make = async () => {
    if (!isWhole || !heat.ok) {
      firstProblem.current?.querySelector<HTMLElement>('[aria-invalid=true]')?.focus();
      return;
    }
    const id = newId();
    const cook = cookAs(id);
    if (!cook) return;
    if (await keeper.write(createEntry({ kind: 'cook', id }, cook))) go(`/cook/${id}`);
  };

  return (
    <>
      <Strip
        name={text('web.place.new-cook')}
        home="/new"
        places={[
          { href: '/', name: text('web.place.shelf') },
          { href: '/new', name: text('web.place.new-cook') },
        ]}
      />
      <main id="page" ref={firstProblem}>
        <Answer>
          {hour
            ? rich('web.new.answer', {
                what: capital(what),
                people,
                day: print.weekday(hour),
                hour: print.clock(hour),
              })
            : text('web.new.no-hour')}
        </Answer>
        <form
          className="questions"
          onSubmit={(event) => {
            event.preventDefault();
            make();
          }}
        >
          <h2>{text('web.new.meat')}</h2>
          {answers.meats.map((meat, index) => {
            const mass = masses[index]!;
            return (
              <div className="question meat" key={meat.key}>
                <Letter letter={String.fromCharCode(65 + index)} large />
                <CutPick
                  label={text('web.new.cut')}
                  value={meat.cut}
                  onPick={(cut) => changeMeat(meat.key, meatAnswer(cut, units, meat.key))}
                />
                <div className="field">
                  <span>{text('web.new.how-many')}</span>
                  <Stepper
                    what={print.cut(meat.cut, 2)}
                    value={meat.count}
                    min={1}
                    max={40}
                    onStep={(count) => changeMeat(meat.key, { count })}
                  />
                </div>
                <Field
                  label={text('web.new.mass')}
                  value={meat.mass}
                  problem={problemOf(
                    mass,
                    'mass',
                    PIECE_LIMITS.mass,
                    text('web.new.mass.problem', { written: meat.mass }),
                  )}
                  remark={mass.ok ? remarks.ofMass(meat.cut, mass.quantity) : undefined}
                  onChange={(event) => changeMeat(meat.key, { mass: event.target.value })}
                  onBlur={() => {
                    if (mass.ok) changeMeat(meat.key, { mass: printCookQuantity(mass.quantity) });
                  }}
                />
                <Pick
                  label={text('web.new.bite')}
                  value={meat.bite}
                  onPick={(bite) => changeMeat(meat.key, { bite: bite as MeatAnswer['bite'] })}
                  options={sensible(meat.cut).bites.map((bite) => ({ value: bite, text: biteName(bite) }))}
                />
                {answers.meats.length > 1 ? (
                  <Key
                    kind="plain"
                    aria-label={`${text('web.new.leave-out')}: ${print.cut(meat.cut)}`}
                    onClick={() => change({ meats: answers.meats.filter((other) => other.key !== meat.key) })}
                  >
                    {text('web.new.leave-out')}
                  </Key>
                ) : null}
              </div>
            );
          })}
          {answers.meats.length < MOST_PIECES ? (
            <div className="keys">
              <Key
                onClick={() =>
                  change({
                    meats: [...answers.meats, meatAnswer(nextCut(answers.meats), units, newId())],
                  })
                }
              >
                {text('web.new.another')}
              </Key>
            </div>
          ) : null}

          <h2>{text('web.new.table')}</h2>
          <div className="question row">
            <div className="field">
              <span>{text('web.new.adults')}</span>
              <Stepper
                what={text('web.new.adults')}
                value={answers.adults}
                min={1}
                max={400}
                onStep={(adults) => change({ adults })}
              />
            </div>
            <div className="field">
              <span>{text('web.new.children')}</span>
              <Stepper
                what={text('web.new.children')}
                value={answers.children}
                min={0}
                max={400}
                onStep={(children) => change({ children })}
              />
            </div>
            <DayPick
              label={text('web.new.day')}
              value={answers.day}
              problem={hour ? undefined : text('web.new.no-hour')}
              onPick={(day) => change({ day })}
            />
            <Pick
              label={text('web.new.hour')}
              value={answers.hour}
              onPick={(value) => change({ hour: value })}
              options={HOURS.map((value) => ({ value, text: wallHour(value, print.settings.clock) }))}
            />
          </div>

          <div className="question-pair">
            <section>
              <h2>{text('web.new.pit')}</h2>
              <div className="question row">
                <Pick
                  label={text('web.ask.pit')}
                  value={typeof answers.pit === 'string' ? answers.pit : `kept:${answers.pit.kept.id}`}
                  onPick={(value) => {
                    const kept = pits.find((pit) => `kept:${pit.id}` === value)?.document;
                    if (kept) change({ pit: { kept }, heat: print.quantity(kept.temperature) });
                    else change({ pit: value as PitType });
                  }}
                  options={[
                    ...pits.map((pit) => ({ value: `kept:${pit.id}`, text: pit.document.name })),
                    ...PIT_TYPES.map((type) => ({ value: type, text: capital(pitName(type)) })),
                  ]}
                />
                <Field
                  label={text('web.ask.heat')}
                  value={answers.heat}
                  problem={problemOf(
                    heat,
                    'temperature',
                    PIT_LIMITS.temperature,
                    text('web.ask.heat.problem'),
                  )}
                  remark={heat.ok ? remarks.ofHeat(heat.quantity) : undefined}
                  onChange={(event) => change({ heat: event.target.value })}
                  onBlur={() => {
                    if (heat.ok) change({ heat: printCookQuantity(heat.quantity) });
                  }}
                />
              </div>

              <NotUsed words={[notUsed('fuel'), notUsed('steel')].filter(Boolean).join(' ')} />
            </section>
            <section>
              <h2>{text('web.new.weather')}</h2>
              <div className="question row">
                <Choice
                  legend={text('web.new.sky')}
                  value={answers.sky}
                  onChoose={(sky) => change({ sky })}
                  options={(Object.keys(SKIES) as Sky[]).map((sky) => ({
                    value: sky,
                    text: text(`web.sky.${sky}`),
                    note: print.temperatureC(SKIES[sky].airC),
                  }))}
                />
                <Choice
                  legend={text('web.new.wind')}
                  value={answers.wind}
                  onChoose={(wind) => change({ wind })}
                  options={(Object.keys(WINDS) as Wind[]).map((wind) => ({
                    value: wind,
                    text: text(`web.wind.${wind}`),
                  }))}
                />
              </div>

              <NotUsed words={notUsed('weather')} />
            </section>
          </div>

          <h2>{text('web.new.name')}</h2>
          <div className="question">
            <Field
              label={text('web.new.name.label')}
              value={answers.name}
              placeholder={defaultName}
              onChange={(event) => change({ name: event.target.value })}
            />
          </div>
          <div className="make">
            <span className="small" aria-live="polite">
              {isWhole && foresight && firstOn
                ? rich('web.new.so-far', {
                    chance: print.chance(foresight.plan.chanceAllOnTime, foresight.members),
                    hour: print.clock(firstOn),
                    day: print.weekday(firstOn),
                  })
                : null}{' '}
              <span className="quiet">{text('web.new.all-can-change')}</span>
            </span>
            <Key kind="first" type="submit" atPit>
              {text('web.new.make')}
            </Key>
          </div>
        </form>
      </main>
    </>
  );

  function readHour(given: Answers, inZone: string): string | undefined {
    try {
      return tableAt(given, inZone);
    } catch {
      return undefined;
    }
  }
}

/** The same object as long as what it is made from reads the same. */
function useStable<T>(value: T, key: string): T {
  const held = useRef({ key, value });
  if (held.current.key !== key) held.current = { key, value };
  return held.current.value;
}

/** Beside an answer that is asked and not used yet. */
function NotUsed(props: { words: string | undefined }) {
  const { text } = useWords();
  if (!props.words) return null;
  return (
    <p className="small not-used">
      <b>{text('web.new.not-used')}</b> {props.words}
    </p>
  );
}
