import type { Alternative, CookPlan, Notice as StandingNotice } from '@pitwright/engine';
import type { Cook, NoticeLevel, Said } from '@pitwright/model';
import type { Foresight } from '../../foresee/messages.ts';
import { useIsNarrow } from '../../parts/narrow.ts';
import { Notice, StandingLine } from '../../parts/notice.tsx';
import { StandingLines } from '../../parts/standing-lines.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { TakeWay } from '../take-way.tsx';

const ORDER: Readonly<Record<NoticeLevel, number>> = { stop: 0, caution: 1, information: 2 };
const levelOf = (said: Said): NoticeLevel => said.level ?? 'information';
const byLevel = (a: Said, b: Said): number => ORDER[levelOf(a)] - ORDER[levelOf(b)];

/** What is said about one piece beside what it goes through. */
export function PieceNotices(props: { notices: readonly StandingNotice[]; pieceId: string }) {
  const { print } = useWords();
  const own = props.notices.filter((notice) => notice.concerns.pieceId === props.pieceId).sort(byLevel);
  return (
    <ul className="standing">
      {own.map((notice) => (
        <StandingLine
          key={`${notice.id}${notice.concerns.stage ?? ''}`}
          level={notice.level}
          source={notice.source}
        >
          {saidWords(notice, print)}
        </StandingLine>
      ))}
    </ul>
  );
}

/**
 * Ways that would help and ways through the night, each once: what reads the same is the same way to a reader,
 * whichever list it came from. The advised one stands first.
 */
function otherWays(plan: CookPlan, words: (said: Said) => string): Alternative[] {
  const byWords = new Map<string, Alternative>();
  for (const way of [...plan.alternatives, ...plan.wouldReach]) {
    const key = words(way.said);
    const seen = byWords.get(key);
    byWords.set(key, seen ? { ...seen, isAdvised: seen.isAdvised || way.isAdvised } : way);
  }
  return [...byWords.values()].sort((a, b) => Number(b.isAdvised) - Number(a.isAdvised));
}

/** What must be said about the plan: what does not fit, what would, cautions, and answers not used yet. */
export function Notes(props: { cook: Cook; foresight: Foresight; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const { plan, forecast, notices } = props.foresight;
  const words = (said: Said) => saidWords(said, print);
  const ways = otherWays(plan, words);
  const ofCook = notices.filter((notice) => notice.concerns.pieceId === undefined).sort(byLevel);
  return (
    <section className="notes">
      {plan.conflicts.length > 0 ? (
        <div>
          <h2>{text('web.cook.clash')}</h2>
          <ul className="clashes">
            {plan.conflicts.map((conflict) => (
              <li key={conflict.giveUpId}>
                <span>{conflict.demands.map((demand) => words(demand.said)).join('; ')}.</span>
                <b>
                  {conflict.wayOut
                    .filter((way) => way.demandId === conflict.giveUpId)
                    .map((way) => words(way.buys))}
                </b>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {ways.length > 0 ? (
        <div>
          <h2>{text('web.cook.other-ways')}</h2>
          <ul className="ways">
            {ways.map((way) => (
              <li key={way.id}>
                <b>{words(way.said)}</b>
                {way.isAdvised ? <span className="we-would">{text('web.cook.we-would')}</span> : null}
                <br />
                {text('web.cook.buys', { what: way.buys.map(words).join('; ') })}{' '}
                {way.costs.length > 0
                  ? text('web.cook.costs', { what: way.costs.map(words).join('; ') })
                  : null}
                <br />
                <TakeWay cook={props.cook} way={way} onKeep={props.onKeep} />
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {forecast.notUsed.length > 0 ? (
        <Notice level="information" about={text('web.cook.not-used')}>
          {forecast.notUsed.map(words).join(' ')}
        </Notice>
      ) : null}
      {plan.notices.map((said) => (
        <Notice key={`${said.id}${JSON.stringify(said.params)}`} level={levelOf(said)}>
          {words(said)}
        </Notice>
      ))}
      <Standing notices={ofCook} />
    </section>
  );
}

/** Cautions that stand beside every plan. What stops somebody is always open; on a phone the rest is folded. */
function Standing(props: { notices: readonly StandingNotice[] }) {
  const { text } = useWords();
  const isNarrow = useIsNarrow();
  const lines = (notices: readonly StandingNotice[]) => (
    <ul className="standing">
      <StandingLines notices={notices} />
    </ul>
  );
  const stops = props.notices.filter((notice) => notice.level === 'stop');
  const others = props.notices.filter((notice) => notice.level !== 'stop');
  return (
    <div>
      <h2>{text('web.cook.standing')}</h2>
      {isNarrow && others.length > 0 ? (
        <>
          {lines(stops)}
          <details className="fold">
            <summary>{text('web.cook.standing.more', { count: others.length })}</summary>
            {lines(others)}
          </details>
        </>
      ) : (
        lines(props.notices)
      )}
    </div>
  );
}
