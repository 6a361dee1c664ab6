import { type HillsData, hillsChart, hundredStrokes } from '@pitwright/draw';
import { type Portions, portionsOf } from '@pitwright/engine';
import { type Cook, fromSi, type Piece, toSi } from '@pitwright/model';
import type { Printer } from '@pitwright/words';
import { useId, useMemo, useState } from 'react';
import { Drawn } from '../../parts/drawn.tsx';
import { Pick } from '../../parts/field.tsx';
import { Letter } from '../../parts/letter.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords, type Words } from '../../words.tsx';
import { pieceName } from '../cook/band-data.ts';
import { about, aboutRange } from './about.ts';

/** Marks of the axis, in the reader's own unit. */
const STEPS = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100];
const MOST_TICKS = 7;
/** The hills run out beyond their ranges. */
const BEYOND = 1.9;

function hillsOf(portions: Portions, people: number, text: Words['text'], print: Printer): HillsData {
  const { edible, wanted } = portions;
  const unit = print.settings.units === 'us' ? 'lb' : 'kg';
  const ends = [edible, wanted].flatMap(({ p10, p50, p90 }) => [
    p50 - BEYOND * (p50 - p10),
    p50 + BEYOND * (p90 - p50),
  ]);
  const low = fromSi('mass', Math.max(0, Math.min(...ends)), unit);
  const high = fromSi('mass', Math.max(...ends), unit);
  const step = STEPS.find((one) => (high - low) / one <= MOST_TICKS) ?? STEPS.at(-1)!;
  const first = Math.floor(low / step);
  const last = Math.max(first + 1, Math.ceil(high / step));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => {
    const figure = (first + i) * step;
    const words = print.number(figure, 2);
    return { at: toSi('mass', figure, unit), words: first + i === last ? `${words} ${unit}` : words };
  });
  return {
    above: {
      range: edible,
      words: text('web.guests.gives', { mass: about(edible.p50, print) }),
      rangeWords: text('web.guests.gives.range', { range: aboutRange(edible, print) }),
    },
    below: {
      range: wanted,
      words: text('web.guests.eats', { mass: about(wanted.p50, print), people }),
      rangeWords: text('web.guests.eats.range', { range: aboutRange(wanted, print) }),
    },
    ticks,
    from: ticks[0]!.at,
    to: ticks.at(-1)!.at,
  };
}

/** What there is against what is wanted, and of a hundred suppers those that run short. */
export function Enough(props: { cook: Cook; portions: Portions; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const [ref, width] = useWidth<HTMLDivElement>();
  const { cook, portions, onKeep } = props;
  const people = cook.guests.adults + cook.guests.children;
  const hills = useMemo(
    () => (width > 0 ? hillsChart(hillsOf(portions, people, text, print), { width, id }, voice) : undefined),
    [portions, people, text, print, width, id, voice],
  );
  const strokes = useMemo(
    () =>
      width > 0
        ? hundredStrokes(
            portions.shortChance,
            text('web.guests.run-short', { share: portions.shortChance }),
            { width, id: `${id}s` },
            voice,
          )
        : undefined,
    [portions, text, width, id, voice],
  );
  return (
    <section>
      <h2>{text('web.guests.enough')}</h2>
      <div ref={ref} className="enough">
        {hills ? <Drawn drawing={hills} /> : null}
        {strokes ? <Drawn drawing={strokes} /> : null}
      </div>
      <MoreOrFewer cook={cook} onKeep={onKeep} />
    </section>
  );
}

const withCount = (cook: Cook, pieceId: string, count: number): Cook => ({
  ...cook,
  pieces: cook.pieces.map((piece) => (piece.id === pieceId ? { ...piece, count } : piece)),
});

/** The same table with one fewer and one more of a piece, side by side; a press takes it. */
function MoreOrFewer(props: { cook: Cook; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const { cook, onKeep } = props;
  const usual = cook.pieces.find((piece) => piece.count > 1) ?? cook.pieces[0];
  const [chosenId, setChosenId] = useState(usual?.id);
  const chosen: Piece | undefined = cook.pieces.find((piece) => piece.id === chosenId) ?? usual;
  if (!chosen) return null;
  const counts = [chosen.count - 1, chosen.count, chosen.count + 1].filter((count) => count > 0);
  return (
    <>
      {cook.pieces.length > 1 ? (
        <Pick
          label={text('web.guests.more-or-fewer')}
          value={chosen.id}
          onPick={setChosenId}
          options={cook.pieces.map((piece) => ({
            value: piece.id,
            text: `${piece.letter} ${pieceName(piece, print)}`,
          }))}
        />
      ) : null}
      <div className="side-by-side">
        {counts.map((count) => {
          const with_ = portionsOf(withCount(cook, chosen.id, count));
          const isNow = count === chosen.count;
          return (
            <button
              key={count}
              type="button"
              aria-pressed={isNow}
              className={isNow ? 'now' : undefined}
              onClick={() => onKeep(withCount(cook, chosen.id, count))}
            >
              <b>{text('web.guests.items', { count, name: print.cut(chosen.cut, count) })}</b>
              <span>{text('web.guests.items.short', { share: with_.shortChance })}</span>
              <span>
                {with_.leftOver.p50 > 0
                  ? text('web.guests.items.left', { mass: about(with_.leftOver.p50, print) })
                  : text('web.guests.items.none-left')}
              </span>
            </button>
          );
        })}
      </div>
    </>
  );
}

/** What each piece puts on the plate. */
export function OnThePlate(props: { cook: Cook; portions: Portions }) {
  const { text, print } = useWords();
  const { cook, portions } = props;
  return (
    <section>
      <h2>{text('web.guests.plate')}</h2>
      <table className="plate">
        <thead>
          <tr>
            <th>{text('web.guests.plate.dish')}</th>
            <th className="r">{text('web.guests.plate.each')}</th>
            <th className="r">{text('web.guests.plate.bought')}</th>
            <th className="r">{text('web.guests.plate.eaten')}</th>
          </tr>
        </thead>
        <tbody>
          {portions.pieces.map((portion) => {
            const piece = cook.pieces.find((one) => one.id === portion.pieceId);
            if (!piece) return null;
            return (
              <tr key={piece.id}>
                <td>
                  <span className="plate-piece">
                    <Letter letter={piece.letter} />
                    <span>
                      {pieceName(piece, print)}
                      {piece.forCamera ? (
                        <span className="small quiet">{text('web.guests.plate.camera')}</span>
                      ) : null}
                    </span>
                  </span>
                </td>
                <td className="r figure">{about(portion.perGuestKg, print)}</td>
                <td className="r">{print.massKg(portion.boughtKg)}</td>
                <td className="r">{aboutRange(portion.edible, print)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
