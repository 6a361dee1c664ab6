import { type Axis, type DepthTimeField, depthTimeMap, heatLedger } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook, Piece } from '@pitwright/model';
import { biteName, stageName } from '@pitwright/words';
import { useId } from 'react';
import { useInside } from '../../foresee/use-foresight.ts';
import { Drawn } from '../../parts/drawn.tsx';
import { useVoice } from '../../parts/voice.ts';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { pieceName, rangeOf, secondsOf } from './band-data.ts';

const instantOf = (seconds: number): string => new Date(seconds * 1000).toISOString();
/** Left of the map stand its depths. */
const LABELS_PX = 120;
/** The words stand beside the map where lines of a readable length fit before it begins. */
const LEAST_PX = 300;

/** The why of a piece: what happens inside it, under its band and on the same axis. */
export function InsidePiece(props: {
  /** As it is written down: the inside waits until the hand lets go. */
  kept: Cook;
  piece: Piece;
  plan: CookPlan;
  axis: Axis;
  width: number;
}) {
  const { text, print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const { kept, piece, plan, axis, width } = props;
  const inside = useInside(kept, piece.id);
  const planned = plan.pieces.find((one) => one.pieceId === piece.id);
  const title = text('web.inside', { name: pieceName(piece, print) });
  if (!inside || !planned)
    return (
      <section className="inside" style={{ minHeight: 340 }}>
        <h2>{title}</h2>
        <p className="quiet">{text('web.inside.waiting')}</p>
      </section>
    );
  const onS = secondsOf(planned.onAt);
  const absolute = (times: readonly number[]) => times.map((time) => onS + time);
  const { field, ledger, why } = inside;
  const roomPx = axis.x(onS) - LABELS_PX;
  const isBeside = roomPx >= LEAST_PX;
  const ready = rangeOf(planned.ready);
  const isReached = Number.isFinite(ready.p10) && Number.isFinite(ready.p90);
  const drawn: DepthTimeField = {
    ...field,
    letter: piece.letter,
    timesS: absolute(field.timesS),
    ...(field.bite
      ? {
          bite: {
            ...field.bite,
            p10S: absolute(field.bite.p10S),
            p50S: absolute(field.bite.p50S),
            p90S: absolute(field.bite.p90S),
            words: isReached
              ? `${biteName(piece.bite)} ${voice.clockRange(ready.p10, ready.p90)}`
              : biteName(piece.bite),
          },
        }
      : {}),
    ...(field.stall
      ? { stall: { ...field.stall, fromS: onS + field.stall.fromS, toS: onS + field.stall.toS } }
      : {}),
    changes: planned.stages.slice(1).flatMap((stage) =>
      stage.startAt
        ? [
            {
              atS: secondsOf(stage.startAt),
              words: `${stageName(stage.kind)} ${print.aboutClock(stage.startAt)}`,
            },
          ]
        : [],
    ),
  };
  return (
    <section className="inside">
      <h2>
        {piece.letter} {title}
      </h2>
      <div className={isBeside ? 'inside-drawn beside' : 'inside-drawn'}>
        <ol className="why" style={isBeside ? { width: roomPx } : undefined}>
          {why
            .filter(({ atS }) => onS + atS < secondsOf(kept.table.at))
            .map(({ atS, said }) => (
              <li key={atS}>
                <b>{print.aboutClock(instantOf(onS + atS))}</b> {saidWords(said, print)}
              </li>
            ))}
        </ol>
        <div>
          <Drawn
            drawing={depthTimeMap(drawn, { width, id }, voice, {
              axis,
              untilS: secondsOf(kept.table.at),
              // Before the cook all of it is ahead, and nothing is told apart by saying so.
              ...(Date.now() / 1000 > onS ? { nowS: Date.now() / 1000 } : {}),
            })}
          />
        </div>
      </div>
      {ledger ? (
        <Drawn
          drawing={heatLedger(
            { ...ledger, letter: piece.letter, timesS: absolute(ledger.timesS) },
            { width, id: `${id}l` },
            voice,
            { axis },
          )}
        />
      ) : null}
    </section>
  );
}
