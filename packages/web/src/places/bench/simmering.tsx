import { simmerChart } from '@pitwright/draw';
import { type SauceOutcome, THICKNESS_WORDS } from '@pitwright/engine/sauce';
import { type Formula, readCookQuantity } from '@pitwright/model';
import { type FormEvent, type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import { Drawn } from '../../parts/drawn.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { usePause } from '../../parts/pause.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords } from '../../words.tsx';
import { setWaterOff } from './edit.ts';
import type { Along, Seen } from './messages.ts';

const MINUTE_S = 60;

type Moment = Along['moments'][number];

/** The run at one time, between its neighbours. */
function momentAt(moments: readonly Moment[], timeS: number): Moment {
  const after = moments.findIndex((moment) => moment.timeS >= timeS);
  if (after <= 0) return after === 0 ? moments[0]! : moments.at(-1)!;
  const [a, b] = [moments[after - 1]!, moments[after]!];
  const share = (timeS - a.timeS) / (b.timeS - a.timeS);
  const mix = (of: (moment: Moment) => number): number => of(a) + share * (of(b) - of(a));
  return {
    timeS,
    massG: mix((m) => m.massG),
    waterOffG: mix((m) => m.waterOffG),
    level: mix((m) => m.level),
    lowLevel: mix((m) => m.lowLevel),
    highLevel: mix((m) => m.highLevel),
  };
}

const momentBy = (moments: readonly Moment[], of: (moment: Moment) => number, wanted: number): Moment => {
  let [low, high] = [0, moments.at(-1)!.timeS];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (of(momentAt(moments, middle)) < wanted) low = middle;
    else high = middle;
  }
  return momentAt(moments, high);
};

/** The simmer as a curve, with the grip that sets where it is stopped, and what to look for. */
export function Simmering(props: {
  formula: Formula;
  seen: Seen;
  outcome: SauceOutcome;
  /** False while the curve is of other lines than the formula's. */
  isHoldable: boolean;
  onKeep: (formula: Formula) => void;
}) {
  const { text, rich, print } = useWords();
  const { formula, seen, outcome, isHoldable, onKeep } = props;
  const { along } = seen;
  const beside = (seen.swapped ?? seen.aimed ?? seen.asWritten)?.along;
  const [box, width] = useWidth<HTMLDivElement>();
  const [heldS, setHeldS] = useState<number>();
  const pause = usePause();
  const hold = useRef<number>(undefined);
  // The answer to what was held is here: the hand lets go.
  useEffect(() => {
    if (outcome) setHeldS(undefined);
  }, [outcome]);
  if (!along) return null;
  const { moments, fast, slow } = along;
  const target = momentBy(moments, (moment) => moment.waterOffG, outcome.waterOffG);
  const shown = heldS === undefined ? target : momentAt(moments, heldS);
  const wordOf = (moment: Moment) => THICKNESS_WORDS[Math.min(5, Math.floor(moment.level))]!;
  const range =
    heldS === undefined && outcome.simmerS
      ? outcome.simmerS
      : { p50: shown.timeS, p10: shown.timeS * fast, p90: shown.timeS * slow };
  const endS = moments.at(-1)!.timeS * fast;
  const leastS = moments.find((moment) => moment.waterOffG > 1)?.timeS ?? 0;
  const within = (timeS: number) => Math.max(leastS, Math.min(endS, timeS));

  const keepAt = (timeS: number) => onKeep(setWaterOff(formula, momentAt(moments, timeS).waterOffG));
  const nudge = (byS: number) => {
    if (!isHoldable) return;
    const to = within(Math.round((shown.timeS + byS) / MINUTE_S) * MINUTE_S);
    setHeldS(to);
    pause.before(() => keepAt(to));
  };
  const drawing =
    width > 0
      ? simmerChart(
          {
            moments,
            fast,
            slow,
            target: shown,
            ...(beside && { other: beside.moments }),
          },
          {
            sentence: text('bench.simmer.sentence', { ...range, mass: shown.massG, look: wordOf(shown) }),
            looks: THICKNESS_WORDS.map((look) => text('bench.look', { look })),
            massHead: text('bench.simmer.mass-head'),
            lookHead: text('bench.simmer.look-head'),
            minutes: (timeS) => print.number(timeS / MINUTE_S),
            minutesUnit: text('bench.simmer.unit'),
            mass: (massG) => print.number(massG),
            target: text('bench.simmer.target', { minutes: Math.round(range.p50 / MINUTE_S) }),
            targetMass: text('bench.simmer.target-mass', { mass: shown.massG }),
            head: [
              text('bench.simmer.head-time'),
              text('bench.simmer.head-mass'),
              text('bench.simmer.head-look'),
            ],
          },
          { width, id: 'simmer' },
        )
      : undefined;

  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -5, PageUp: 5 }[
      event.key
    ];
    if (step === undefined) return;
    event.preventDefault();
    nudge(step * MINUTE_S);
  };
  const timeOf = (event: PointerEvent) =>
    within(
      drawing!.timeAt(event.clientX - event.currentTarget.closest('.drawing')!.getBoundingClientRect().left),
    );
  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    if (!isHoldable || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    hold.current = timeOf(event);
    setHeldS(hold.current);
  };
  const onPointerUp = () => {
    if (hold.current !== undefined) keepAt(hold.current);
    hold.current = undefined;
  };
  const { pot, fridge, brushed } = outcome.looks;
  const looksLike = (look: { thickness: number }) => THICKNESS_WORDS[look.thickness]!;
  return (
    <section className="simmering">
      <h2>
        {text('bench.simmer.title', { pan: formula.simmer?.panDiameter ?? { kind: 'length', si: 0.24 } })}
      </h2>
      <div ref={box}>
        {drawing ? (
          <Drawn drawing={drawing}>
            <div
              className={heldS === undefined ? 'grip simmer-grip' : 'grip simmer-grip held'}
              role="slider"
              tabIndex={0}
              aria-label={text('bench.simmer.grip')}
              aria-valuemin={Math.round(leastS / MINUTE_S)}
              aria-valuemax={Math.round(endS / MINUTE_S)}
              aria-valuenow={Math.round(shown.timeS / MINUTE_S)}
              aria-valuetext={text('bench.simmer.grip-at', {
                ...range,
                mass: shown.massG,
                look: wordOf(shown),
              })}
              style={{ left: drawing.x(shown.timeS), top: drawing.y(shown.level) }}
              onKeyDown={onKeyDown}
              onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
              onPointerMove={onPointerMove}
              onPointerUp={onPointerUp}
              onPointerCancel={onPointerUp}
            />
          </Drawn>
        ) : null}
      </div>
      <div className="simmer-keys">
        <Key kind="square" aria-label={text('bench.simmer.sooner')} onClick={() => nudge(-MINUTE_S)}>
          −
        </Key>
        <p>{rich('bench.simmer.held', { ...range, mass: shown.massG, look: wordOf(shown) })}</p>
        <Key kind="square" aria-label={text('bench.simmer.later')} onClick={() => nudge(MINUTE_S)}>
          +
        </Key>
        <ToLook
          now={wordOf(target)}
          moments={moments}
          onLook={(level) => keepAt(momentBy(moments, (moment) => moment.level, level).timeS)}
        />
        <ToMass
          key={outcome.finishedMassG}
          leastG={moments.at(-1)!.massG}
          mostG={moments[0]!.massG}
          nowG={outcome.finishedMassG - outcome.lateMassG}
          onMass={(massG) => keepAt(momentBy(moments, (moment) => -moment.massG, -massG).timeS)}
        />
      </div>
      <ul className="looks">
        <li>{rich('bench.looks.pot', { look: looksLike(pot), film: '' })}</li>
        <li>
          {rich('bench.looks.fridge', {
            look: looksLike(fridge),
            thin: looksLike(outcome.looksThinner.fridge),
            thick: looksLike(outcome.looksThicker.fridge),
          })}{' '}
          {fridge.plateM ? text('bench.looks.plate', { diameter: fridge.plateM }) : null}{' '}
          {outcome.loosenG
            ? text('bench.looks.loosen', {
                mass: outcome.loosenG,
                look: THICKNESS_WORDS[fridge.thickness - 1]!,
              })
            : null}
        </li>
        <li>{rich('bench.looks.brushed', { look: looksLike(brushed) })}</li>
      </ul>
    </section>
  );
}

/** Well inside a look, not on its edge. */
const INSIDE = 0.25;

/** Stops by what it looks like; only looks that this pot comes to are offered. */
function ToLook(props: { now: string; moments: readonly Moment[]; onLook: (level: number) => void }) {
  const { text } = useWords();
  const { now, moments, onLook } = props;
  const most = moments.at(-1)!.level;
  const least = moments[0]!.level;
  const looks = THICKNESS_WORDS.filter(
    (look, i) => look === now || (i + INSIDE <= most && i + INSIDE > least),
  );
  if (looks.length < 2) return null;
  return (
    <Pick
      label={text('bench.simmer.to-look')}
      value={now}
      onPick={(look) => onLook((THICKNESS_WORDS as readonly string[]).indexOf(look) + INSIDE)}
      options={looks.map((look) => ({ value: look, text: text('bench.look', { look }) }))}
    />
  );
}

function ToMass(props: { leastG: number; mostG: number; nowG: number; onMass: (massG: number) => void }) {
  const { text, print } = useWords();
  const { leastG, mostG, nowG, onMass } = props;
  const [written, setWritten] = useState(() => print.massKg(nowG / 1000));
  const [problem, setProblem] = useState<string>();
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const read = readCookQuantity(written, 'mass');
    const massG = read.ok ? read.quantity.si * 1000 : Number.NaN;
    if (massG >= leastG && massG <= mostG) {
      setProblem(undefined);
      onMass(massG);
    } else setProblem(text('bench.simmer.to-mass.problem', { most: mostG, least: Math.ceil(leastG) }));
  };
  return (
    <form className="line-form" onSubmit={keep}>
      <Field
        label={text('bench.simmer.to-mass')}
        value={written}
        problem={problem}
        onChange={(event) => setWritten(event.target.value)}
      />
      <Key type="submit">{text('web.keep')}</Key>
    </form>
  );
}
