import { type BalanceScale, balanceLine } from '@pitwright/draw';
import { findIngredient, type SauceOutcome, STRESS_WEBER, TASTES, WEBER } from '@pitwright/engine/sauce';
import type { Formula } from '@pitwright/model';
import { capital, spokenIngredient } from '@pitwright/words';
import { Choice } from '../../parts/choice.tsx';
import { Drawn } from '../../parts/drawn.tsx';
import { Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { useWidth } from '../../parts/width.ts';
import { saidWords } from '../../said.ts';
import { useWords, type Words } from '../../words.tsx';
import { AimPart } from './aim-part.tsx';
import { p90Of, stressSpread } from './doubt.ts';
import { setLine, takeOver, weighed } from './edit.ts';
import type { Seen, Swap, Wish } from './messages.ts';
import { isLiquid, othersFor, swappable } from './swaps.ts';

/** A round end of a scale that leaves the value in its lower two thirds. */
function roundEnd(value: number): number {
  const wanted = 1.5 * value;
  const size = 10 ** Math.floor(Math.log10(Math.max(wanted, 1e-3)));
  return [1, 2, 4, 5, 10].map((step) => step * size).find((end) => end >= wanted) ?? 10 * size;
}
/** A scale is never finer than this: a trace is shown as a trace. */
const LEAST = { sweet: 5, salt: 0.5, heat: 25, solids: 10, hot: 2, cold: 5 } as const;
const ticksTo = (end: number): number[] => [0, 1, 2, 3, 4].map((i) => (i * end) / 4);
const decimalsOf = (end: number): number => (end >= 40 ? 0 : end >= 4 ? 1 : 2);

function scalesOf(
  now: SauceOutcome,
  other: SauceOutcome | undefined,
  isPlated: boolean,
  { text, print }: Words,
): BalanceScale[] {
  const upTo = (
    id: 'sweet' | 'salt' | 'heat' | 'solids' | 'hot' | 'cold',
    of: (outcome: SauceOutcome) => number,
    step: number | undefined,
    doubt: (value: number) => readonly [number, number],
    unit: 'sweet' | 'salt' | 'heat' | 'solids' | 'hot' = id === 'cold' ? 'hot' : id,
  ): BalanceScale => {
    const value = of(now);
    const end = roundEnd(Math.max(value, other ? of(other) : 0, LEAST[id]));
    return {
      name: text(`bench.scale.${id}`),
      shortName: id === 'hot' || id === 'cold' ? text(`bench.scale.${id}-short`) : text(`bench.scale.${id}`),
      unit: text(`bench.unit.${unit}`),
      from: 0,
      to: end,
      ticks: ticksTo(end),
      value,
      doubt: doubt(value),
      ...(step !== undefined && { wanted: [value * (1 - step), value * (1 + step)] as const }),
      ...(other && { other: of(other) }),
      print: (figure) => print.number(figure, decimalsOf(end)),
    };
  };
  const within = (share: number) => (value: number) => [value * (1 - share), value * (1 + share)] as const;
  const off = stressSpread(isPlated);
  const spread = (value: number) => [value / off, value * off] as const;
  const { ph, phSd } = now.after;
  return [
    upTo('sweet', (o) => o.after.sweetness, WEBER.sweet, within(0.05)),
    {
      name: text('bench.scale.sour'),
      shortName: text('bench.scale.sour'),
      unit: text('bench.unit.sour'),
      from: 5,
      to: 2.6,
      ticks: [5, 4.4, 3.8, 3.2, 2.6],
      ...(ph !== undefined && { value: ph, doubt: [ph - p90Of(phSd), ph + p90Of(phSd)] as const }),
      ...(other?.after.ph !== undefined && { other: other.after.ph }),
      print: (figure) => print.number(figure, 1),
    },
    upTo('salt', (o) => o.after.saltPercent, WEBER.salt, within(0.05)),
    upTo('heat', (o) => o.after.scoville, WEBER.heat, within(0.35)),
    upTo('solids', (o) => o.after.brix, undefined, within(0.04)),
    upTo('hot', (o) => o.looks.pot.yieldStressPa, STRESS_WEBER, spread),
    upTo('cold', (o) => o.looks.fridge.yieldStressPa, STRESS_WEBER, spread),
  ];
}

/** The formula as one line across the scales; another liquid, sugar or acid dashed, and what brings it back. */
export function Balance(props: {
  isPlated: boolean;
  formula: Formula;
  seen: Seen;
  outcome: SauceOutcome;
  swap: Swap | undefined;
  onSwap: (swap: Swap | undefined) => void;
  onKeep: (formula: Formula) => void;
  /** Kept as another way to make it, under this name. */
  onVariant: (name: string, made: Formula) => void;
  wish: Wish | undefined;
  onWish: (wish: Wish | undefined) => void;
}) {
  const words = useWords();
  const { text } = words;
  const { seen, outcome } = props;
  const [box, width] = useWidth<HTMLDivElement>();
  const { swapped, aimed, asWritten } = seen;
  const changed = swapped ?? aimed;
  const after = changed?.outcome?.ok ? changed.outcome : undefined;
  const other = changed ? after : asWritten?.outcome;
  const beside = !other ? '' : swapped ? 'swap' : aimed ? 'aim' : 'as-written';
  const scales = scalesOf(outcome, other, props.isPlated, words);
  const sentence = text('bench.balance.sentence', {
    scales: scales
      .filter((scale) => scale.value !== undefined)
      .map((scale) =>
        text('bench.balance.on', { name: scale.name, value: scale.print(scale.value!), unit: scale.unit }),
      )
      .join(', '),
    wanted: outcome.after.ph === undefined ? ` ${text('bench.ph-unknown')}` : '',
  });
  return (
    <section className="balance">
      <SwapPart {...props} />
      <AimPart {...props} />
      <div ref={box}>
        {width > 0 ? (
          <Drawn
            drawing={balanceLine(
              scales,
              {
                sentence,
                head: [
                  text('bench.head.scale'),
                  text('bench.head.value', { beside }),
                  text('bench.head.doubt'),
                  text('bench.head.wanted'),
                  text('bench.head.other', { beside }),
                ],
              },
              { width, id: 'balance' },
            )}
          />
        ) : null}
      </div>
      <p className="small quiet">{text('bench.balance.caption', { beside })}</p>
      {outcome.after.ph === undefined ? <p className="small">{text('bench.ph-unknown')}</p> : null}
    </section>
  );
}

const OTHER = 'other';
const AS_WRITTEN = 'as-written';

function SwapPart(props: {
  formula: Formula;
  seen: Seen;
  outcome: SauceOutcome;
  swap: Swap | undefined;
  onSwap: (swap: Swap | undefined) => void;
  onKeep: (formula: Formula) => void;
  /** Kept as another way to make it, under this name. */
  onVariant: (name: string, made: Formula) => void;
}) {
  const { text, rich, print } = useWords();
  const { formula, seen, outcome, swap, onSwap, onKeep } = props;
  const lines = swappable(formula);
  const liquid = formula.lines.findIndex((line) => isLiquid(findIngredient(line.ingredient)));
  const index = swap?.index ?? (liquid === -1 ? (lines[0]?.index ?? 0) : liquid);
  const line = formula.lines[index];
  const own = line && findIngredient(line.ingredient);
  if (!line || !own) return null;
  const others = othersFor(own);
  const quick = others.slice(0, 2);
  const chosen = swap && swap.index === index ? swap.ingredient : undefined;
  const isQuick = chosen === undefined || quick.some((one) => one.id === chosen);
  const swapped = chosen === undefined ? undefined : seen.swapped;
  const after = swapped?.outcome.ok ? swapped.outcome : undefined;
  const back = swapped?.rebalanced;
  const minutes =
    after?.simmerS && outcome.simmerS ? Math.round((after.simmerS.p50 - outcome.simmerS.p50) / 60) : 0;
  const moved = back?.ok
    ? TASTES.filter((taste) => Math.abs(back.stepsBefore[taste]) >= 1).map((taste) =>
        text('bench.taste-change', { taste, steps: back.stepsBefore[taste] }),
      )
    : [];
  const choose = (value: string) =>
    onSwap(value === AS_WRITTEN ? undefined : { index, ingredient: value === OTHER ? others[2]!.id : value });
  const otherName = chosen ? (findIngredient(chosen)?.name ?? chosen) : '';
  return (
    <div className="swap">
      <div className="swap-choose">
        <Pick
          label={text('bench.swap')}
          value={String(index)}
          onPick={(value) => {
            const at = Number(value);
            const thing = findIngredient(formula.lines[at]!.ingredient)!;
            onSwap({ index: at, ingredient: othersFor(thing)[0]!.id });
          }}
          options={lines.map((one) => ({ value: String(one.index), text: one.name }))}
        />
        <Choice
          legend={text('bench.swap.for', { name: own.name })}
          hideLegend
          value={isQuick ? (chosen ?? AS_WRITTEN) : OTHER}
          onChoose={choose}
          options={[
            { value: AS_WRITTEN, text: text('bench.swap.as-written') },
            ...quick.map((one) => ({ value: one.id, text: capital(spokenIngredient(one.name)) })),
            ...(others.length > 2 ? [{ value: OTHER, text: text('bench.swap.another') }] : []),
          ]}
        />
        {isQuick ? null : (
          <Pick
            label={text('bench.swap.other')}
            value={chosen ?? ''}
            onPick={choose}
            options={others.slice(2).map((one) => ({ value: one.id, text: one.name }))}
          />
        )}
      </div>
      {swapped && chosen ? (
        <div className="swap-said" aria-live="polite">
          <p>
            {rich('bench.swap.dashed', { name: spokenIngredient(otherName) })}{' '}
            {back?.ok
              ? text('bench.swap.moves', {
                  changes: moved.length > 0 ? text('bench.listed', { items: moved.join('|') }) : '',
                  minutes,
                })
              : null}
          </p>
          {swapped.outcome.ok ? null : (
            <p>{swapped.outcome.problems.map((problem) => saidWords(problem, print)).join(' ')}</p>
          )}
          {back ? (
            <>
              <p>
                {back.ok && back.said[0]?.id !== 'sauce.rebalance-nothing'
                  ? `${text('bench.swap.back')} `
                  : null}
                {(back.ok ? back.said : back.problems).map((said) => saidWords(said, print)).join(' ')}
              </p>
              <div className="keys">
                {back.ok ? (
                  <Key
                    kind="first"
                    onClick={() => onKeep(takeOver(formula, { index, ingredient: chosen }, back))}
                  >
                    {text('bench.swap.take')}
                  </Key>
                ) : null}
                {back.ok ? (
                  <Key
                    onClick={() =>
                      props.onVariant(
                        text('bench.variant.with', { name: spokenIngredient(otherName) }),
                        takeOver(formula, { index, ingredient: chosen }, back),
                      )
                    }
                  >
                    {text('bench.swap.as-variant')}
                  </Key>
                ) : null}
                <Key
                  onClick={() =>
                    onKeep(
                      setLine(formula, index, {
                        ingredient: chosen,
                        amount:
                          line.amount.kind === 'volume'
                            ? line.amount
                            : weighed(
                                (line.amount.si * 1000 * (findIngredient(chosen)?.densityGPerMl ?? 1)) /
                                  own.densityGPerMl,
                              ),
                      }),
                    )
                  }
                >
                  {text('bench.swap.take-bare')}
                </Key>
              </div>
            </>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
