import type { Alternative, CookPlan } from '@pitwright/engine';
import type { Cook, Said } from '@pitwright/model';
import { capital, listed } from '@pitwright/words';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { sleepOf } from '../cook/fold.ts';
import { TakeWay } from '../take-way.tsx';
import { freeHours } from './jobs.ts';
import { spanOf } from './lanes.ts';

/** What does not fit together: the demands that clash, and what giving up each of them would buy. */
export function Clashes(props: { plan: CookPlan }) {
  const { text, print } = useWords();
  const words = (said: Said) => saidWords(said, print);
  if (props.plan.conflicts.length === 0) return null;
  return (
    <section className="run-clashes">
      <h2>{text('web.run.clash')}</h2>
      {props.plan.conflicts.map((conflict) => (
        <div key={`${conflict.giveUpId}${conflict.demands.map((demand) => demand.id).join()}`}>
          <p>
            {text('web.run.clash.all', {
              demands: listed(conflict.demands.map((one) => words(one.said))),
              count: conflict.demands.length,
            })}
          </p>
          <ul>
            {conflict.wayOut.map((way) => {
              const demand = conflict.demands.find((one) => one.id === way.demandId);
              if (!demand) return null;
              return (
                <li key={way.demandId}>
                  {text('web.run.give-up', { demand: words(demand.said), buys: words(way.buys) })}
                  {way.demandId === conflict.giveUpId ? (
                    <b className="we-would">{text('web.run.we-would')}</b>
                  ) : null}
                </li>
              );
            })}
          </ul>
        </div>
      ))}
    </section>
  );
}

/** A way that helps the night and the chance is offered for both, and stands here once. */
function eachOnce(ways: readonly Alternative[]): readonly Alternative[] {
  const byWords = new Map<string, Alternative>();
  for (const way of ways) {
    const key = JSON.stringify(way.said);
    const known = byWords.get(key);
    if (!known || way.isAdvised) byWords.set(key, way);
  }
  return [...byWords.values()];
}

/** Other ways to cook it, each with what it buys and what it costs. */
export function Ways(props: { cook: Cook; plan: CookPlan; onKeep: (cook: Cook) => unknown }) {
  const { text, print } = useWords();
  const ways = eachOnce([...props.plan.wouldReach, ...props.plan.alternatives]);
  const all = (said: readonly Said[]) => listed(said.map((one) => saidWords(one, print)));
  return (
    <div>
      <h2>{text('web.run.ways')}</h2>
      {ways.length === 0 ? <p>{text('web.run.ways.none')}</p> : null}
      <ul className="run-ways">
        {ways.map((way) => (
          <li key={way.id}>
            <b>{saidWords(way.said, print)}</b>
            {way.isAdvised ? <b className="we-would">{text('web.run.we-would')}</b> : null}
            {way.buys.length > 0 ? (
              <span>{capital(text('web.run.buys', { buys: all(way.buys) }))}</span>
            ) : null}
            {way.costs.length > 0 ? (
              <span>{capital(text('web.run.costs', { costs: all(way.costs) }))}</span>
            ) : null}
            <TakeWay cook={props.cook} way={way} onKeep={props.onKeep} />
          </li>
        ))}
      </ul>
    </div>
  );
}

export function FreeHours(props: { cook: Cook; plan: CookPlan }) {
  const { text, print } = useWords();
  const { cook, plan } = props;
  const { fromS, toS } = spanOf(plan);
  const free = freeHours(cook, plan, sleepOf(cook.hands[0], cook.zone, fromS, toS));
  return (
    <div>
      <h2>{text('web.run.free')}</h2>
      {free.length === 0 ? <p>{text('web.run.free.none')}</p> : null}
      <ul>
        {free.map(({ fromAt, toAt }) => (
          <li key={fromAt}>
            {text('web.run.free.line', {
              day: print.shortWeekday(fromAt),
              range: print.clockRange(fromAt, toAt),
            })}
          </li>
        ))}
      </ul>
    </div>
  );
}
