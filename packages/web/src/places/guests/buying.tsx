import {
  type BuyingList,
  type BuyLine,
  buyingList,
  type CookPlan,
  joinedLines,
  type Market,
} from '@pitwright/engine';
import { findIngredient } from '@pitwright/engine/sauce';
import { type Cook, quantity } from '@pitwright/model';
import { listed, type Printer } from '@pitwright/words';
import { useMemo } from 'react';
import { useWords, type Words } from '../../words.tsx';
import { useSetting } from '../use-setting.ts';
import { isAtHome, lineName } from './buy-lines.ts';
import { MarketTable } from './market.tsx';

interface Ticked {
  readonly bought: Readonly<Record<string, boolean>>;
}
const NOTHING_TICKED: Ticked = { bought: {} };
const NO_MARKET: Required<Market> = { larderKg: {}, packKg: {}, pricePerKg: {} };

/** One list by shop section, less what is at home; what is bought is ticked. */
export function Buying(props: { cook: Cook; plan: CookPlan | undefined }) {
  const { text, print } = useWords();
  const { cook, plan } = props;
  const [market, setMarket] = useSetting<Required<Market>>('market', NO_MARKET);
  const [ticked, setTicked] = useSetting<Ticked>(`bought.${cook.id}`, NOTHING_TICKED);
  const watch = plan?.fireWatch;
  const litS = watch ? (Date.parse(watch.toAt) - Date.parse(watch.fromAt)) / 1000 : 0;
  const list = useMemo(
    () => buyingList(cook, litS, Date.parse(plan?.firstOnAt ?? cook.table.at) / 1000, market),
    [cook, plan, litS, market],
  );
  const lines = joinedLines(list.lines).filter((line) => plan || line.section !== 'fire');
  const toBuy = lines.filter((line) => !isAtHome(line));
  const atHome = lines.filter(isAtHome);
  const sections = [...new Set(toBuy.map((line) => line.section))];
  return (
    <section className="buying">
      <h2>{text('web.guests.buy')}</h2>
      {sections.map((section) => {
        const own = toBuy.filter((line) => line.section === section);
        const cost = own.reduce((total, line) => total + (line.cost ?? 0), 0);
        return (
          <div key={section}>
            <h3>
              {text('web.guests.buy.section', { section })}
              {cost > 0 ? <b>{print.number(cost, 2)}</b> : null}
            </h3>
            <ul>
              {own.map((line) => (
                <li key={line.what}>
                  <label className="tick-line">
                    <input
                      type="checkbox"
                      checked={ticked.bought[line.what] ?? false}
                      onChange={(event) =>
                        setTicked({ bought: { ...ticked.bought, [line.what]: event.target.checked } })
                      }
                    />
                    <Line line={line} market={market} litS={litS} />
                  </label>
                </li>
              ))}
            </ul>
          </div>
        );
      })}
      {plan ? null : <p className="small quiet">{text('web.guests.buy.waits')}</p>}
      {atHome.length > 0 ? (
        <div>
          <h3>{text('web.guests.buy.larder')}</h3>
          <ul>
            {atHome.map((line) => (
              <li key={line.what} className="tick-line at-home">
                <span aria-hidden="true" className="has">
                  ✕
                </span>
                <Line line={line} market={market} litS={litS} />
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <p>
        <Total list={list} print={print} />
      </p>
      <Thaw cook={cook} list={list} />
      <MarketTable lines={lines} market={market} onChange={setMarket} />
    </section>
  );
}

/** The name, what else would do, and how much. */
function Line(props: { line: BuyLine; market: Market; litS: number }) {
  const { text, print } = useWords();
  const { line, market } = props;
  const name = lineName(line, text, print);
  const pack = market.packKg?.[line.what];
  // By what they hold, not by taste: of use for sugars, vinegars and pastes, not for spices and greens.
  const others =
    line.section === 'shelves' ? line.substitutes.map((id) => findIngredient(id)?.name ?? id) : [];
  const notes = [
    ...(line.section === 'fire' && line.needKg !== undefined
      ? [
          text('web.guests.buy.burnt', {
            mass: fuelMass(line.needKg, print),
            time: print.durationS(props.litS),
          }),
        ]
      : []),
    ...(line.packs !== undefined && pack !== undefined && line.packs > 0
      ? [text('web.guests.buy.packs', { packs: line.packs, pack: print.massKg(pack) })]
      : []),
    ...(line.haveKg > 0 && !isAtHome(line)
      ? [text('web.guests.buy.have', { mass: print.massKg(line.haveKg) })]
      : []),
    ...(others.length > 0 && !isAtHome(line)
      ? [text('web.guests.buy.or', { others: listed(others, 'or') })]
      : []),
  ];
  return (
    <>
      <span>
        {line.items !== undefined ? `${line.items} × ` : ''}
        {name}
        {notes.map((note) => (
          <span key={note} className="small quiet">
            {note}
          </span>
        ))}
      </span>
      <span className="amount">
        <b>{amountOf(line, text, print)}</b>
        {line.needM3 !== undefined && BY_VOLUME.has(line.section) ? (
          <span className="small quiet">{print.volumeM3(spoonable(line.needM3))}</span>
        ) : null}
      </span>
    </>
  );
}

/** Sections whose goods a spoon or a jug can measure. */
const BY_VOLUME: ReadonlySet<string> = new Set(['shelves', 'spices']);
const FIVE_ML = 5e-6;
/** A volume by density is no finer than a spoon: fives of a millilitre from twenty on, whole ones below. */
const spoonable = (m3: number): number => {
  const step = m3 >= 4 * FIVE_ML ? FIVE_ML : FIVE_ML / 5;
  return Math.max(step, Math.round(m3 / step) * step);
};

/** Wood is bought by the armful: no finer than a pound or a kilo from ten of them on. */
function fuelMass(kg: number, print: Printer): string {
  const unitKg = print.settings.units === 'us' ? POUND_KG : 1;
  return print.massKg(kg < 10 * unitKg ? kg : unitKg * Math.round(kg / unitKg));
}
const POUND_KG = quantity('mass', 1, 'lb').si;

function amountOf(line: BuyLine, text: Words['text'], print: Printer): string {
  if (line.needM !== undefined) return print.lengthM(line.needM);
  if (line.needKg === undefined) return '';
  if (line.section === 'fire')
    return text('web.guests.buy.up-to', { mass: fuelMass(line.buyKg ?? line.needKg, print) });
  return print.massKg(isAtHome(line) ? line.needKg : (line.buyKg ?? line.needKg));
}

function Total(props: { list: BuyingList; print: Printer }) {
  const { text, rich, print } = useWords();
  const { cost, costPerGuest, pricedShare } = props.list;
  if (cost === undefined || costPerGuest === undefined) return text('web.guests.buy.no-price');
  return rich('web.guests.buy.total', {
    cost: print.number(cost, 2),
    each: print.number(costPerGuest, 2),
    share: pricedShare,
  });
}

/** When what is bought frozen goes into the fridge: pieces with the same hour in one line. */
function Thaw(props: { cook: Cook; list: BuyingList }) {
  const { text, print } = useWords();
  const { cook, list } = props;
  const byHour = new Map<string, string[]>();
  for (const { pieceId, intoFridgeAt } of list.thaw) {
    const letter = cook.pieces.find((piece) => piece.id === pieceId)?.letter ?? '';
    const key = `${print.shortWeekday(intoFridgeAt)}|${print.aboutClock(intoFridgeAt)}`;
    byHour.set(key, [...(byHour.get(key) ?? []), letter]);
  }
  if (byHour.size === 0) return null;
  const pieces = [...byHour].map(([key, letters]) => {
    const [day = '', hour = ''] = key.split('|');
    return text('web.guests.buy.thaw-piece', { letters: listed(letters), day, hour });
  });
  return <p className="small quiet">{text('web.guests.buy.thaw', { pieces: listed(pieces) })}</p>;
}
