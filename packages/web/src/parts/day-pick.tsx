import { date, readDay } from '@pitwright/words';
import { useEffect, useId, useState } from 'react';
import { Temporal } from 'temporal-polyfill';
import { deviceZone, useWords } from '../words.tsx';
import { Key } from './key.tsx';

/** A day, written as the person writes it, moved by − and +. @param value `2027-09-12` */
export function DayPick(props: {
  label: string;
  value: string;
  problem?: string | undefined;
  onPick: (day: string) => void;
}) {
  const { text, print } = useWords();
  const id = useId();
  const { value, onPick } = props;
  const order = print.settings.clock === '12' ? 'us' : 'uk';
  const written = date(`${value}T12:00:00Z`, 'UTC', order, { year: true });
  const [draft, setDraft] = useState(written);
  useEffect(() => setDraft(written), [written]);
  const read = readDay(draft, { order, today: Temporal.Now.plainDateISO(deviceZone()).toString() });
  const problem = read === undefined ? text('web.day.problem', { example: written }) : props.problem;
  const keep = () => {
    if (draft === written || read === undefined) return;
    setDraft(date(`${read}T12:00:00Z`, 'UTC', order, { year: true }));
    onPick(read);
  };
  const move = (days: number) => onPick(Temporal.PlainDate.from(value).add({ days }).toString());
  return (
    <div className={problem ? 'field day-pick bad' : 'field day-pick'}>
      <label htmlFor={id}>{props.label}</label>
      <span className="day-line">
        <Key kind="square" aria-label={text('web.day.earlier')} onClick={() => move(-1)}>
          −
        </Key>
        <input
          id={id}
          autoComplete="off"
          value={draft}
          aria-invalid={problem ? true : undefined}
          aria-describedby={problem ? `${id}-problem` : undefined}
          onFocus={(event) => event.target.select()}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            keep();
          }}
        />
        <Key kind="square" aria-label={text('web.day.later')} onClick={() => move(1)}>
          +
        </Key>
      </span>
      {problem ? (
        <span className="field-error" id={`${id}-problem`}>
          {problem}
        </span>
      ) : null}
    </div>
  );
}
