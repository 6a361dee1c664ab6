import type { BuyLine, Market } from '@pitwright/engine';
import { fromSi, readCookQuantity, toSi } from '@pitwright/model';
import { useDraft } from '../../parts/draft.ts';
import { useWords } from '../../words.tsx';
import { lineName } from './buy-lines.ts';

type Table = Readonly<Record<string, number>>;

const withKey = (table: Table | undefined, what: string, value: number | undefined): Table => {
  const { [what]: _, ...others } = table ?? {};
  return value === undefined ? others : { ...others, [what]: value };
};

/** What a household has of each, how it is packed and what it costs: told once, kept for every cook. */
export function MarketTable(props: {
  lines: readonly BuyLine[];
  market: Required<Market>;
  onChange: (market: Required<Market>) => void;
}) {
  const { text, print } = useWords();
  const { lines, market, onChange } = props;
  const unit = print.settings.units === 'us' ? 'lb' : 'kg';
  const perKg = toSi('mass', 1, unit);
  const priced = lines.filter((line) => line.needKg !== undefined && line.section !== 'fire');
  const set = (part: Partial<Market>) => onChange({ ...market, ...part });
  return (
    <details className="market">
      <summary>{text('web.guests.market')}</summary>
      {priced.map((line) => {
        const { what } = line;
        const name = lineName(line, text, print);
        const price = market.pricePerKg[what];
        return (
          <fieldset key={what}>
            <legend>{name}</legend>
            <Mass
              label={text('web.guests.market.home')}
              name={text('web.guests.market.home-of', { what: name })}
              kg={market.larderKg[what]}
              onTell={(kg) => set({ larderKg: withKey(market.larderKg, what, kg) })}
            />
            <Mass
              label={text('web.guests.market.pack')}
              name={text('web.guests.market.pack-of', { what: name })}
              kg={market.packKg[what]}
              onTell={(kg) => set({ packKg: withKey(market.packKg, what, kg) })}
            />
            <Written
              label={text('web.guests.market.price', { unit })}
              name={text('web.guests.market.price-of', { what: name })}
              written={price === undefined ? '' : print.number(price * perKg, 2)}
              read={(words) => {
                const figure = Number(words.replace(',', '.'));
                return Number.isFinite(figure) && figure > 0 ? figure / perKg : undefined;
              }}
              onTell={(value) => set({ pricePerKg: withKey(market.pricePerKg, what, value) })}
            />
          </fieldset>
        );
      })}
    </details>
  );
}

function Mass(props: {
  label: string;
  name: string;
  kg: number | undefined;
  onTell: (kg: number | undefined) => void;
}) {
  const { print } = useWords();
  const { kg } = props;
  return (
    <Written
      label={props.label}
      name={props.name}
      written={kg === undefined ? '' : `${print.number(fromSi('mass', kg, 'g'), 1)} g`}
      read={(words) => {
        const reading = readCookQuantity(words, 'mass');
        return reading.ok && reading.quantity.si > 0 ? reading.quantity.si : undefined;
      }}
      onTell={props.onTell}
    />
  );
}

/** A line to write on that is kept when it reads, and cleared when it is emptied. */
function Written(props: {
  label: string;
  name: string;
  written: string;
  read: (words: string) => number | undefined;
  onTell: (value: number | undefined) => void;
}) {
  const { label, name, written, read, onTell } = props;
  const { draft, line, onEnter } = useDraft(written, () => keep());
  const value = read(draft);
  const isBad = draft.trim() !== '' && value === undefined;
  const keep = () => {
    if (!isBad) onTell(value);
  };
  return (
    <label className={isBad ? 'field bad' : 'field'}>
      {label}
      <input
        aria-label={name}
        autoComplete="off"
        {...line}
        aria-invalid={isBad ? true : undefined}
        onKeyDown={onEnter}
      />
    </label>
  );
}
