import {
  batchMassG,
  COATINGS,
  type Coating,
  dryBrine,
  equilibriumBrine,
  SALT_PER_SODIUM,
  type SauceOutcome,
  saltG,
} from '@pitwright/engine/sauce';
import { type Formula, readCookQuantity } from '@pitwright/model';
import { useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { setLine, weighed } from './edit.ts';
import type { Seen } from './messages.ts';
import { saltOnMeat } from './salt-on-meat.ts';

const HOUR_S = 3600;

/** A rub, brine or spritz on the pieces it is for: how much of it, how much salt, how deep. */
export function OnMeatPart(props: {
  formula: Formula;
  seen: Seen;
  outcome: SauceOutcome;
  coating: Coating;
  onCoating: (coating: Coating) => void;
  onKeep: (formula: Formula) => void;
}) {
  const { text } = useWords();
  const { formula, seen, outcome } = props;
  return (
    <section className="on-meat">
      <h2>{text('bench.meat')}</h2>
      <p className="quiet">
        {text('bench.meat.lot', {
          meat: { kind: 'mass', si: seen.onMeat.meatKg },
          edible: { kind: 'mass', si: seen.onMeat.edibleKg },
        })}
      </p>
      {formula.kind === 'rub' ? <RubPart {...props} /> : null}
      {formula.kind === 'brine' ? <BrinePart key={outcome.rawMassG} {...props} /> : null}
    </section>
  );
}

function RubPart(props: {
  seen: Seen;
  outcome: SauceOutcome;
  coating: Coating;
  onCoating: (coating: Coating) => void;
}) {
  const { seen, outcome, coating } = props;
  const { text, rich, print } = useWords();
  const [rest, setRest] = useState('12 h');
  const [thick, setThick] = useState(() => print.lengthM(seen.onMeat.thicknessM));
  const salt = saltOnMeat(seen, outcome, coating);
  const time = readCookQuantity(rest, 'time');
  const thickness = readCookQuantity(thick, 'length');
  const deep =
    time.ok && thickness.ok && time.quantity.si > 0 && thickness.quantity.si > 0
      ? dryBrine(thickness.quantity.si, time.quantity.si)
      : undefined;
  return (
    <>
      <Choice
        legend={text('bench.meat.coating')}
        value={coating}
        onChoose={props.onCoating}
        options={(Object.keys(COATINGS) as Coating[]).map((value) => ({
          value,
          text: text('bench.coating', { coating: value }),
        }))}
      />
      <p>
        {text('bench.meat.needed', {
          low: salt.lowG,
          middle: salt.rubG,
          high: salt.highG,
          made: batchMassG(outcome.finished),
        })}{' '}
        {text('bench.meat.salt-share', { share: salt.share })}
      </p>
      <p>
        <b>{salt.said.map((said) => saidWords(said, print)).join(' ')}</b>
      </p>
      <div className="line-form">
        <Field
          label={text('bench.meat.rest')}
          value={rest}
          problem={time.ok ? undefined : saidWords(time.problem, print)}
          onChange={(event) => setRest(event.target.value)}
        />
        <Field
          label={text('bench.meat.thick')}
          value={thick}
          problem={thickness.ok ? undefined : saidWords(thickness.problem, print)}
          onChange={(event) => setThick(event.target.value)}
        />
      </div>
      {deep ? (
        <p aria-live="polite">
          {deep.said.map((said) => saidWords(said, print)).join(' ')}{' '}
          {rich('bench.meat.even', { days: Math.ceil(deep.evenS / (24 * HOUR_S)) })}
        </p>
      ) : null}
    </>
  );
}

const STRENGTHS = ['0.01', '0.015', '0.02'] as const;

function BrinePart(props: {
  formula: Formula;
  seen: Seen;
  outcome: SauceOutcome;
  onKeep: (formula: Formula) => void;
}) {
  const { text, rich, print } = useWords();
  const { formula, seen, outcome } = props;
  // The water of its own lines, where there is any.
  const [water, setWater] = useState(() =>
    outcome.raw.waterG > 0
      ? print.volumeM3(outcome.raw.waterG / 1e6)
      : print.settings.units === 'us'
        ? '4 qt'
        : '4 L',
  );
  const [strength, setStrength] = useState<(typeof STRENGTHS)[number]>('0.015');
  const read = readCookQuantity(water, 'volume');
  const { meatKg, thicknessM } = seen.onMeat;
  const brine =
    read.ok && read.quantity.si > 0 && meatKg > 0
      ? equilibriumBrine(meatKg, read.quantity.si * 1000, Number(strength), thicknessM)
      : undefined;
  const salted = brine && withSalt(formula, outcome, brine.saltG);
  return (
    <>
      <Field
        label={text('bench.brine.water')}
        value={water}
        problem={read.ok ? undefined : saidWords(read.problem, print)}
        onChange={(event) => setWater(event.target.value)}
      />
      <Choice
        legend={text('bench.brine.strength')}
        value={strength}
        onChoose={setStrength}
        options={STRENGTHS.map((value) => ({
          value,
          text: print.quantity({ kind: 'fraction', si: Number(value) }),
        }))}
      />
      {brine && read.ok ? (
        <p aria-live="polite">
          {rich('bench.answer.brine', {
            salt: brine.saltG,
            water: read.quantity,
            hours: Math.round(brine.nineTenthsS / HOUR_S),
          })}{' '}
          {rich('bench.brine.steps', {
            half: Math.round(brine.halfS / HOUR_S),
          })}{' '}
          {brine.said.map((said) => saidWords(said, print)).join(' ')}
        </p>
      ) : null}
      {brine && salted ? (
        <Key onClick={() => props.onKeep(salted)}>{text('bench.brine.put', { mass: brine.saltG })}</Key>
      ) : null}
    </>
  );
}

/** Nearly all salt [mg of sodium in 100 g]. */
const SALT_SODIUM_MG = 30_000;

/** The brine with so much salt in all, by its own line of salt; undefined where it has none, or has that much. */
function withSalt(formula: Formula, outcome: SauceOutcome, wantedG: number): Formula | undefined {
  const index = outcome.lines.findIndex((line) => line.ingredient.per100g.sodiumMg > SALT_SODIUM_MG);
  const line = outcome.lines[index];
  if (!line) return undefined;
  const perGram = (SALT_PER_SODIUM * line.ingredient.per100g.sodiumMg) / 1e5;
  const massG = line.massG + (wantedG - saltG(outcome.raw)) / perGram;
  if (!(massG > 0) || Math.abs(massG - line.massG) < 0.02 * line.massG) return undefined;
  return setLine(formula, index, { amount: weighed(massG) });
}
