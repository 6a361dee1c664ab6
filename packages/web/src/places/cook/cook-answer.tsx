import type { Cook } from '@pitwright/model';
import { capital } from '@pitwright/words';
import type { ForesightFault } from '../../foresee/asked-worker.ts';
import { HowFar } from '../../foresee/how-far.tsx';
import type { Foresight } from '../../foresee/messages.ts';
import { Answer } from '../../parts/answer.tsx';
import { Ask } from '../../parts/ask.tsx';
import { useWords } from '../../words.tsx';
import { pieceName } from './band-data.ts';

/** Number, meaning, next deed. */
export function CookAnswer(props: {
  cook: Cook;
  foresight: Foresight | undefined;
  isFull: boolean;
  fault: ForesightFault | undefined;
}) {
  const { text, rich, print } = useWords();
  const { cook, foresight, isFull, fault } = props;
  const aside = print.date(cook.table.at);
  if (fault) return <Answer aside={aside}>{text('web.cook.no-forecast')}</Answer>;
  if (!foresight) return <Answer aside={aside}>{text('web.cook.first-look')}</Answer>;
  const { plan, members } = foresight;
  const tightest = cook.pieces.find((piece) => piece.id === plan.tightest?.pieceId);
  const first = plan.pieces.reduce((a, b) => (a.onAt <= b.onAt ? a : b));
  const firstPiece = cook.pieces.find((piece) => piece.id === first.pieceId);
  const count = cook.pieces.length;
  const isOtherDay = print.dayKey(first.onAt) !== print.dayKey(cook.table.at);
  return (
    <Answer
      live
      aside={
        <>
          {aside}
          <span className="how-far">
            <HowFar foresight={foresight} isFull={isFull} />
          </span>
        </>
      }
    >
      <Ask
        origin={{
          meaning: text('web.cook.chance.meaning', {
            hour: print.clock(cook.table.at),
            until: print.clock(cook.table.until),
          }),
          source: text('web.cook.chance.source'),
          doubt: text('web.cook.chance.doubt', { members }),
        }}
      >
        <b>{capital(print.chance(plan.chanceAllOnTime, members))}</b>
      </Ask>{' '}
      {rich('web.cook.answer', {
        count,
        all: print.count(count),
        hour: print.clock(cook.table.at),
      })}{' '}
      {count > 1 && tightest
        ? text('web.cook.tightest', { letter: tightest.letter, name: pieceName(tightest, print) })
        : null}{' '}
      {rich('web.cook.first-on', {
        letter: firstPiece?.letter ?? '',
        hour: print.clock(first.onAt),
        day: isOtherDay ? print.weekday(first.onAt) : '',
      })}
    </Answer>
  );
}
