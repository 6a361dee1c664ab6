import { withGuests } from '@pitwright/engine';
import type { Cook, Guests } from '@pitwright/model';
import { Choice } from '../../parts/choice.tsx';
import { Key } from '../../parts/key.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import type { Next } from '../../use-writer.ts';
import { useWords } from '../../words.tsx';
import { moveTable, STEP_MS } from '../cook/edit.ts';
import { Tally } from './tally.tsx';

const MOST_GUESTS = 500;
const MOST_DISHES = 12;
const APPETITES = ['small', 'ordinary', 'big'] as const;

/** Adults, children, appetite, other dishes; and the two messages that come on the last day. */
export function WhoEats(props: { cook: Cook; onKeep: (next: Next<Cook>) => unknown }) {
  const { text } = useWords();
  const { cook, onKeep } = props;
  const { guests } = cook;
  const set = (part: Partial<Guests>) => onKeep({ ...cook, guests: { ...guests, ...part } });
  const counts = [
    { key: 'adults', what: text('web.guests.adults'), value: guests.adults, most: MOST_GUESTS },
    { key: 'children', what: text('web.guests.children'), value: guests.children, most: MOST_GUESTS },
    {
      key: 'otherDishes',
      what: text('web.guests.dishes'),
      value: guests.otherDishes ?? 1,
      most: MOST_DISHES,
    },
  ] as const;
  return (
    <section>
      <h2>{text('web.guests.who')}</h2>
      <ul className="who">
        {counts.map(({ key, what, value, most }) => (
          <li key={key}>
            <span>{what}</span>
            {key === 'otherDishes' ? <span /> : <Tally count={value} />}
            <Stepper what={what} value={value} min={0} max={most} onStep={(next) => set({ [key]: next })} />
          </li>
        ))}
      </ul>
      <Choice
        legend={text('web.guests.appetite')}
        value={guests.appetite ?? 'ordinary'}
        onChoose={(appetite) => set({ appetite })}
        options={APPETITES.map((value) => ({ value, text: text(`web.guests.appetite.${value}`) }))}
      />
      <div className="keys">
        <Key
          disabled={guests.adults + guests.children < 3}
          onClick={() =>
            onKeep((now) =>
              withGuests(now, {
                adults: -Math.min(3, now.guests.adults),
                children: -Math.max(0, 3 - now.guests.adults),
              }),
            )
          }
        >
          {text('web.guests.three-cancel')}
        </Key>
        <Key onClick={() => onKeep((now) => withGuests(now, { adults: 5 }))}>
          {text('web.guests.five-more')}
        </Key>
      </div>
    </section>
  );
}

const QUARTER_MS = 3 * STEP_MS;
const LONGEST_WINDOW_MS = 6 * 3_600_000;

/** The serving hour and how long it is served. */
export function When(props: { cook: Cook; onKeep: (cook: Cook) => unknown }) {
  const { text, print } = useWords();
  const { cook, onKeep } = props;
  const at = Date.parse(cook.table.at);
  const until = Date.parse(cook.table.until);
  const clock = (ms: number) => print.clock(new Date(ms).toISOString());
  const day = 86_400_000;
  return (
    <section>
      <h2>
        {text('web.guests.when')} <span className="quiet small">{print.date(cook.table.at)}</span>
      </h2>
      <ul className="who">
        <li>
          <span>{text('web.guests.hour')}</span>
          <span />
          <Stepper
            what={text('web.guests.hour')}
            value={at}
            min={at - day}
            max={at + day}
            step={QUARTER_MS}
            show={clock}
            onStep={(next) => onKeep(moveTable(cook, next))}
          />
        </li>
        <li>
          <span>{text('web.guests.until')}</span>
          <span />
          <Stepper
            what={text('web.guests.until')}
            value={until}
            min={at}
            max={at + LONGEST_WINDOW_MS}
            step={QUARTER_MS}
            show={clock}
            onStep={(next) =>
              onKeep({
                ...cook,
                table: { ...cook.table, until: new Date(next).toISOString().replace('.000Z', 'Z') },
              })
            }
          />
        </li>
      </ul>
    </section>
  );
}
