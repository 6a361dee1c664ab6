import { type Portions, portionsOf } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { listed, type Printer } from '@pitwright/words';
import { useMemo } from 'react';
import { useForesight } from '../../foresee/use-foresight.ts';
import { Answer } from '../../parts/answer.tsx';
import { Ask } from '../../parts/ask.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords, type Words } from '../../words.tsx';
import { CookStrip } from '../cook/cook-strip.tsx';
import { ofCook, useCookWriter } from '../of-cook.tsx';
import { about } from './about.ts';
import { After } from './after.tsx';
import { AtRisk } from './at-risk.tsx';
import { Buying } from './buying.tsx';
import { Enough, OnThePlate } from './enough.tsx';
import { ShopHas } from './shop-has.tsx';
import { When, WhoEats } from './who-eats.tsx';
import './guests.css';

export default ofCook(GuestsSheet);

/** Will it be enough: who eats, what there is against what is wanted, and what to buy. */
function GuestsSheet(props: { cook: Cook }) {
  const { cook } = props;
  const { subject, keep } = useCookWriter(cook);
  const portions = useMemo(() => portionsOf(cook), [cook]);
  // Only how long the fire burns is asked of the forecast: a preview tells it.
  const { foresight } = useForesight(cook, true);
  return (
    <>
      <CookStrip cook={cook} />
      <main id="page" className="guests">
        <GuestsAnswer cook={cook} portions={portions} />
        <div className="guest-parts">
          <div className="who-eats">
            <WhoEats cook={cook} onKeep={keep} />
            <When cook={cook} onKeep={keep} />
            <div className="keys">
              <UndoKeys subject={subject} />
            </div>
            <AtRisk cook={cook} onKeep={keep} />
          </div>
          <div className="is-enough">
            <Enough cook={cook} portions={portions} onKeep={keep} />
            <OnThePlate cook={cook} portions={portions} />
            <ShopHas cook={cook} onKeep={keep} />
            <After cook={cook} portions={portions} />
          </div>
          <div className="to-buy">
            <Buying cook={cook} plan={foresight?.plan} />
          </div>
        </div>
      </main>
    </>
  );
}

/** `five racks, one shoulder and eight legs`: pieces of one cut together. */
function whatThereIs(cook: Cook, text: Words['text'], print: Printer): string {
  const counts = new Map<string, number>();
  for (const piece of cook.pieces) counts.set(piece.cut, (counts.get(piece.cut) ?? 0) + piece.count);
  return listed(
    [...counts].map(([cut, count]) => text('web.guests.what', { count, name: print.cut(cut, count) })),
  );
}

function GuestsAnswer(props: { cook: Cook; portions: Portions }) {
  const { text, rich, print } = useWords();
  const { cook, portions } = props;
  const people = cook.guests.adults + cook.guests.children;
  const uncounted = cook.pieces.filter((piece) => portions.unknownPieceIds.includes(piece.id));
  if (people === 0) return <Answer>{text('web.guests.nobody')}</Answer>;
  const items = cook.pieces.reduce((sum, piece) => sum + piece.count, 0);
  return (
    <Answer live aside={print.date(cook.table.at)}>
      <Ask
        origin={{
          meaning: text('web.guests.short.meaning'),
          source: text('web.guests.short.source'),
          doubt: text('web.guests.short.doubt'),
        }}
      >
        <b>{text('web.guests.short', { share: portions.shortChance })}</b>
      </Ask>{' '}
      {rich('web.guests.answer', {
        what: whatThereIs(cook, text, print),
        verb: items === 1 ? 'puts' : 'put',
        mass: about(portions.edible.p50, print),
        plates: people,
      })}{' '}
      {uncounted.length > 0
        ? text('web.guests.uncounted', { letters: listed(uncounted.map((piece) => piece.letter)) })
        : null}
    </Answer>
  );
}
