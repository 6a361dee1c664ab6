import { brushNotices, costOf, type SauceOutcome, SERVING_G } from '@pitwright/engine/sauce';
import { type Cook, type Formula, printCookQuantity, readCookQuantity, type Said } from '@pitwright/model';
import { type FormEvent, type ReactNode, useId, useState } from 'react';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { StandingLine } from '../../parts/notice.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import type { Corrections, PackPrice, Seen } from './messages.ts';
import { PanPart } from './pan-part.tsx';
import { printCard } from './printed-cards.tsx';

interface BelowProps {
  readonly cook: Cook;
  readonly formula: Formula;
  readonly seen: Seen;
  readonly outcome: SauceOutcome;
  readonly corrections: Corrections;
  readonly prices: Readonly<Record<string, PackPrice>>;
  readonly onCorrect: (corrections: Corrections) => void;
  readonly onKeep: (formula: Formula) => void;
  readonly onScale: (factor: number) => void;
}

const MODEL_PAGE = 'docs/models/sauce.md';

/** What follows from a formula beside its taste: enough, keeping, what is in it, what it costs. */
export function Consequences(props: BelowProps) {
  const { text } = useWords();
  const { formula, outcome } = props;
  const isSauce = formula.kind === 'sauce';
  return (
    <div className="bench-more">
      {isSauce ? <EnoughPart {...props} /> : null}
      {outcome.simmerS ? <Measured {...props} /> : null}
      {formula.simmer ? (
        <Part title={text('bench.pan')}>
          <PanPart formula={formula} onKeep={props.onKeep} />
        </Part>
      ) : null}
      {isSauce && !formula.simmer ? (
        <Part title={text('bench.pan')}>
          <Key onClick={() => props.onKeep({ ...formula, simmer: {} })}>{text('bench.simmer-it')}</Key>
        </Part>
      ) : null}
      {isSauce ? <Keeps {...props} /> : null}
      <SaltPart seen={props.seen} />
      <Contains seen={props.seen} outcome={outcome} />
      {isSauce ? <Serving {...props} /> : null}
      <Part title={text('bench.print')}>
        <div className="keys">
          {isSauce ? <Key onClick={() => printCard('label')}>{text('bench.print.label')}</Key> : null}
          <Key onClick={() => printCard('card')}>{text('bench.print.card')}</Key>
        </div>
      </Part>
    </div>
  );
}

function Part(props: { title: string; children: ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{props.title}</h2>
      {props.children}
    </section>
  );
}

/** The pan's tare, one weighing half-way, a puddle on a plate. */
function Measured(props: BelowProps) {
  const { text, rich, print } = useWords();
  const { formula, seen, corrections, onCorrect, onKeep } = props;
  const { weighed, plate } = corrections;
  const [tare, setTare] = useState(formula.simmer?.panMass ? printCookQuantity(formula.simmer.panMass) : '');
  const [mass, setMass] = useState(weighed ? printCookQuantity(weighed.mass) : '');
  const [after, setAfter] = useState(weighed ? printCookQuantity(weighed.after) : '');
  const [puddle, setPuddle] = useState(plate ? printCookQuantity(plate.diameter) : '');
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const wrong: Record<string, string> = {};
    const read = <K extends 'mass' | 'time' | 'length'>(key: string, written: string, kind: K) => {
      if (written.trim() === '') return undefined;
      const reading = readCookQuantity(written, kind);
      if (reading.ok) return reading.quantity;
      wrong[key] = saidWords(reading.problem, print);
      return undefined;
    };
    const panMass = read('tare', tare, 'mass');
    const massRead = read('mass', mass, 'mass');
    const afterRead = read('after', after, 'time');
    const diameter = read('plate', puddle, 'length');
    if (Object.keys(wrong).length === 0 && (massRead === undefined) !== (afterRead === undefined))
      wrong[massRead ? 'after' : 'mass'] = text('bench.measure.both');
    setProblems(wrong);
    if (Object.keys(wrong).length > 0) return;
    if (panMass && panMass.si !== formula.simmer?.panMass?.si)
      onKeep({ ...formula, simmer: { ...formula.simmer, panMass } });
    onCorrect({
      ...(massRead && afterRead && { weighed: { mass: massRead, after: afterRead } }),
      ...(diameter && { plate: { diameter } }),
    });
  };
  const field = (key: string, label: string, value: string, set: (value: string) => void) => (
    <Field
      label={label}
      value={value}
      problem={problems[key]}
      onChange={(event) => set(event.target.value)}
    />
  );
  return (
    <Part title={text('bench.measure')}>
      <form className="measured" onSubmit={keep}>
        {field('tare', text('bench.measure.tare'), tare, setTare)}
        {field('mass', text('bench.measure.weighed'), mass, setMass)}
        {field('after', text('bench.measure.after'), after, setAfter)}
        {field('plate', text('bench.measure.plate'), puddle, setPuddle)}
        <div className="keys">
          <Key kind="first" type="submit">
            {text('bench.measure.keep')}
          </Key>
          {weighed || plate ? (
            <Key
              onClick={() => {
                setMass('');
                setAfter('');
                setPuddle('');
                onCorrect({});
              }}
            >
              {text('bench.measure.forget')}
            </Key>
          ) : null}
        </div>
      </form>
      <div aria-live="polite">
        {seen.leftS ? <p>{rich('bench.measure.left', seen.leftS)}</p> : null}
        {seen.corrected.map((said) => (
          <p key={said.id}>{saidWords(said, print)}</p>
        ))}
      </div>
    </Part>
  );
}

function EnoughPart({ cook, seen, outcome, onScale }: BelowProps) {
  const { text, rich } = useWords();
  const { enough } = seen;
  if (!enough) return null;
  const people = cook.guests.adults + cook.guests.children;
  const factor = Math.ceil(enough.factor * 20) / 20;
  return (
    <Part title={text('bench.enough')}>
      <p>
        {enough.isEnough
          ? rich('bench.enough.yes', { made: enough.madeG, left: enough.leftG })
          : rich('bench.enough.no', { made: enough.madeG, short: -enough.leftG, factor })}
      </p>
      <ul className="ruled">
        <li>{text('bench.enough.glaze', { mass: enough.glazeG })}</li>
        <li>{text('bench.enough.table', { mass: enough.tableG, people })}</li>
        <li>
          {text('bench.enough.jars', {
            jars: outcome.jars.full,
            size: { kind: 'volume', si: outcome.jars.size.volumeMl / 1e6 },
          })}
        </li>
      </ul>
      {enough.isEnough ? null : (
        <Key onClick={() => onScale(factor)}>{text('bench.enough.scale', { factor })}</Key>
      )}
    </Part>
  );
}

function Keeps({ seen, outcome }: BelowProps) {
  const { text, rich, print } = useWords();
  const { keeping } = outcome;
  return (
    <Part title={text('bench.keeps')}>
      <p>{rich('bench.keeps.use-by', { low: keeping.daysLow, high: keeping.daysHigh })}</p>
      <ul>
        {[...outcome.notices, ...keeping.said, ...brushNotices(), ...seen.notices.filter(isNotOfEating)].map(
          (said) => (
            <StandingLine
              key={said.id}
              level={said.level ?? 'information'}
              source={said.source ?? MODEL_PAGE}
            >
              {saidWords(said, print)}
            </StandingLine>
          ),
        )}
        {seen.cooled.map(({ vessel, around, answer }) => (
          <StandingLine
            key={`${vessel} ${around}`}
            level={answer.passes ? 'information' : 'caution'}
            source={answer.said[0]?.source ?? MODEL_PAGE}
          >
            {text('bench.cooled', {
              vessel,
              around,
              passes: answer.passes ? 1 : 0,
              ...(Number.isFinite(answer.firstStageS) && { firstS: answer.firstStageS }),
            })}
          </StandingLine>
        ))}
      </ul>
    </Part>
  );
}

function SaltPart({ seen }: { seen: Seen }) {
  const { text, rich, print } = useWords();
  const { salt } = seen;
  if (!salt) return null;
  return (
    <Part title={text('bench.salt')}>
      <p>{rich('bench.salt.sum', { perKg: salt.perKgEdible, perServing: salt.perServingG })}</p>
      <ul className="ruled">
        {salt.parts.map(({ name, eatenG }) => (
          <li key={name}>{text('bench.salt.part', { from: name, mass: eatenG })}</li>
        ))}
      </ul>
      {salt.said.map((said) => (
        <p key={said.id}>{saidWords(said, print)}</p>
      ))}
      <p className="small quiet">{text('bench.salt.unknown')}</p>
    </Part>
  );
}

/** What is in it stands with what is in it; the rest with how it is kept. */
const OF_EATING = /^safety\.(allergens|honey)/;
const isNotOfEating = ({ id }: Said): boolean => !OF_EATING.test(id);

function Contains({ seen, outcome }: { seen: Seen; outcome: SauceOutcome }) {
  const { text, print } = useWords();
  const { allergens, unknowns } = outcome;
  const said = seen.notices.filter((notice) => OF_EATING.test(notice.id));
  return (
    <Part title={text('bench.contains')}>
      {said.some((notice) => notice.id === 'safety.allergens') ? null : <p>{text('bench.contains.none')}</p>}
      <ul>
        {said.map((notice) => (
          <StandingLine key={notice.id} level={notice.level ?? 'information'} source={notice.source ?? ''}>
            {saidWords(notice, print)}
          </StandingLine>
        ))}
      </ul>
      {allergens.unknown.length > 0 ? (
        <p>{text('bench.contains.unknown', { names: allergens.unknown.map((one) => one.name).join('|') })}</p>
      ) : null}
      {unknowns.map((one) => (
        <p key={`${one.ingredientId} ${one.aspect}`} className="small quiet">
          {text('bench.unknown', { name: one.name, aspect: one.aspect, share: one.share })}
        </p>
      ))}
    </Part>
  );
}

function Serving({ seen, outcome, prices }: BelowProps) {
  const { text } = useWords();
  const { nutrition } = seen;
  if (!nutrition) return null;
  const { cost, unpriced } = costOf(
    outcome.lines,
    Object.fromEntries(
      Object.entries(prices).map(([id, { pack, price }]) => [id, { packG: pack.si * 1000, price }]),
    ),
  );
  const nameOf = (id: string) =>
    outcome.lines.find((line) => line.ingredient.id === id)?.ingredient.name ?? id;
  return (
    <Part title={text('bench.serving', { mass: SERVING_G })}>
      <p>
        {text('bench.serving.energy', { kcal: nutrition.energyKcal })};{' '}
        {text('bench.serving.parts', {
          fat: nutrition.fatG,
          carbohydrate: nutrition.carbohydrateG,
          sugars: nutrition.sugarsG,
          protein: nutrition.proteinG,
          salt: nutrition.saltG,
        })}
        {nutrition.alcoholG > 0.05
          ? `, ${text('bench.serving.alcohol', { alcohol: nutrition.alcoholG })}`
          : ''}
        .
      </p>
      {cost > 0 ? (
        <>
          <p>{text('bench.cost', { cost, perServing: (cost * SERVING_G) / outcome.finishedMassG })}</p>
          {unpriced.length > 0 ? (
            <p className="small quiet">
              {text('bench.cost.without', { names: unpriced.map(nameOf).join('|') })}
            </p>
          ) : null}
        </>
      ) : (
        <p className="small quiet">{text('bench.cost.none')}</p>
      )}
    </Part>
  );
}
