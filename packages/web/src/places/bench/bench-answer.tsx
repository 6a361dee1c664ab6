import { batchMassG, brineOf, type Coating, saltG, THICKNESS_WORDS } from '@pitwright/engine/sauce';
import type { Formula } from '@pitwright/model';
import { Answer } from '../../parts/answer.tsx';
import { Ask } from '../../parts/ask.tsx';
import { Notice } from '../../parts/notice.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { lateWords } from './printed-cards.tsx';
import { saltOnMeat } from './salt-on-meat.ts';
import type { Bench } from './use-bench.ts';

/** Minutes and thickness in words; where it does not work out, what is wrong and what would be right. */
export function BenchAnswer(props: { formula: Formula | undefined; bench: Bench; coating: Coating }) {
  const { text, rich, print } = useWords();
  const { formula, bench } = props;
  if (!formula) return <Answer>{text('bench.answer.none')}</Answer>;
  if (formula.lines.length === 0)
    return <Answer live>{text('bench.answer.empty', { name: formula.name })}</Answer>;
  const { seen } = bench;
  if (bench.hasFailed) return <Answer live>{text('bench.answer.failed')}</Answer>;
  if (!seen) return <Answer live>{text('bench.answer.first-look')}</Answer>;
  const { outcome } = seen;
  if (!outcome.ok)
    return (
      <>
        <Answer live>{text('bench.answer.cannot')}</Answer>
        <div className="bench-problems">
          {outcome.problems.map((problem) => (
            <Notice
              key={`${problem.id} ${JSON.stringify(problem.params)}`}
              level={problem.level ?? 'caution'}
            >
              {saidWords(problem, print)}
            </Notice>
          ))}
        </div>
      </>
    );
  const fridge = THICKNESS_WORDS[outcome.looks.fridge.thickness];
  const massG = batchMassG(outcome.finished);
  if (formula.kind === 'rub') {
    const { perKg, rubG } = saltOnMeat(seen, outcome, props.coating);
    return <Answer live>{rich('bench.answer.rub', { perKg, rub: rubG })}</Answer>;
  }
  if (formula.kind === 'brine') {
    const { meatKg, thicknessM } = seen.onMeat;
    const brine = brineOf(outcome.finished, meatKg, thicknessM);
    return (
      <Answer live>
        {rich('bench.answer.brine-made', {
          salt: brine.saltG,
          water: { kind: 'volume', si: brine.waterKg / 1000 },
          ...(brine.evenAt !== undefined && { even: brine.evenAt }),
          hours: Math.round(brine.nineTenthsS / 3600),
        })}
      </Answer>
    );
  }
  if (formula.kind !== 'sauce')
    return (
      <Answer live>{rich('bench.answer.spritz', { mass: massG, salt: saltG(outcome.finished) })}</Answer>
    );
  if (!outcome.simmerS) return <Answer live>{rich('bench.answer.mixed', { mass: massG, fridge })}</Answer>;
  return (
    <Answer live>
      <Ask
        origin={{
          meaning: text('bench.minutes.meaning'),
          source: text('bench.minutes.source'),
          doubt: text('bench.minutes.doubt'),
        }}
      >
        {rich('bench.answer.minutes', outcome.simmerS)}
      </Ask>{' '}
      {rich('bench.answer.simmer', {
        late: lateWords(outcome),
        lid: formula.simmer?.lid ?? 'open',
        pot: THICKNESS_WORDS[outcome.looks.pot.thickness],
        fridge,
      })}
    </Answer>
  );
}
