import {
  type Axis,
  type DepthTimeField,
  depthTimeMap,
  heatLedger,
  isNarrow,
  timeAxis,
} from '@pitwright/draw';
import { type CookPlan, type Zone, zonesOfCut } from '@pitwright/engine';
import type { Cook, CutId, Piece, Said } from '@pitwright/model';
import { biteName, stageName } from '@pitwright/words';
import { useId, useState } from 'react';
import type { Inside } from '../../foresee/messages.ts';
import { Choice } from '../../parts/choice.tsx';
import { Drawn } from '../../parts/drawn.tsx';
import { Key } from '../../parts/key.tsx';
import { useVoice } from '../../parts/voice.ts';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { pieceName, rangeOf, secondsOf } from './band-data.ts';

const instantOf = (seconds: number): string => new Date(seconds * 1000).toISOString();
/** Left of the map stand its depths. */
const LABELS_PX = 120;
/** The words stand beside the map where lines of a readable length fit before it begins. */
const LEAST_PX = 300;

export interface InsideProps {
  /** As it is written down: the inside waits until the hand lets go. */
  readonly kept: Cook;
  readonly piece: Piece;
  readonly plan: CookPlan;
  readonly inside: Inside | undefined;
  /** What is shown was seen before the last change; a new look is under way. */
  readonly isAgain: boolean;
  readonly zone: Zone | undefined;
  readonly onZone: (zone: Zone | undefined) => void;
  readonly axis: Axis;
  readonly width: number;
}

/** The why of a piece: what happens inside it, under its band and on the same axis. */
export function InsidePiece(props: InsideProps) {
  const { text, print } = useWords();
  const [isLedgerOpen, setLedgerOpen] = useState(false);
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const { kept, piece, plan, width, inside } = props;
  const planned = plan.pieces.find((one) => one.pieceId === piece.id);
  const head = (
    <div className="inside-head">
      <h2>
        {piece.letter} {text('web.inside', { name: pieceName(piece, print) })}
        {props.isAgain ? <span className="again small">{text('web.looking-again')}</span> : null}
      </h2>
      <ZoneChoice cut={piece.cut} zone={props.zone} onZone={props.onZone} />
    </div>
  );
  if (!inside || !planned)
    return (
      <section className="inside waiting">
        {head}
        <p className="quiet">{text('web.inside.waiting')}</p>
      </section>
    );
  const onS = secondsOf(planned.onAt);
  const tableS = secondsOf(kept.table.at);
  const axis = axisOf(props.axis, { onS, tableS, width });
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
            words:
              isReached && inside.zone === undefined
                ? [biteName(piece.bite), voice.clockRange(ready.p10, ready.p90)]
                : [biteName(piece.bite)],
          },
        }
      : {}),
    ...(field.stall
      ? { stall: { ...field.stall, fromS: onS + field.stall.fromS, toS: onS + field.stall.toS } }
      : {}),
    // Of the try that is shown, as its colours are; the bands tell the ranges.
    changes: inside.changes.map(({ kind, isOverCoals, atS }) => ({
      atS: onS + atS,
      words: `${stageName(kind, isOverCoals)} ${print.aboutClock(instantOf(onS + atS))}`,
    })),
  };
  return (
    <section className="inside">
      {head}
      <div className={isBeside ? 'inside-drawn beside' : 'inside-drawn'}>
        <ol className="why" style={isBeside ? { width: roomPx } : undefined}>
          {why
            .filter(({ atS }) => onS + atS < tableS)
            .map(({ atS, said }) => (
              <li key={atS}>
                <b>{print.aboutClock(instantOf(onS + atS))}</b> {saidWords(byTheHour(said, onS), print)}
              </li>
            ))}
        </ol>
        <div>
          <Drawn
            drawing={depthTimeMap(drawn, { width, id }, voice, {
              axis,
              untilS: tableS,
              hasHours: axis !== props.axis,
              // Before the cook all of it is ahead, and nothing is told apart by saying so.
              ...(Date.now() / 1000 > onS ? { nowS: Date.now() / 1000 } : {}),
            })}
          />
        </div>
      </div>
      {ledger ? (
        <>
          <Key kind="plain" aria-expanded={isLedgerOpen} onClick={() => setLedgerOpen((open) => !open)}>
            {text('web.inside.ledger')}
          </Key>
          {isLedgerOpen ? (
            <Drawn
              drawing={heatLedger(
                { ...ledger, letter: piece.letter, timesS: absolute(ledger.timesS) },
                { width, id: `${id}l` },
                voice,
                { axis },
              )}
            />
          ) : null}
        </>
      ) : null}
    </section>
  );
}

/** On a phone a piece that takes little of the days has an axis of its own: too narrow, nothing can be read in it. */
function axisOf(axis: Axis, at: { onS: number; tableS: number; width: number }): Axis {
  const { onS, tableS, width } = at;
  const isSqueezed = isNarrow(width) && axis.x(tableS) - axis.x(onS) < LEAST_SHARE * width;
  return isSqueezed && tableS > onS
    ? timeAxis(axis.x0, axis.x1, [{ fromS: onS, toS: tableS, scale: 1 }])
    : axis;
}
const LEAST_SHARE = 0.6;

/** An end that was told as a time since meat-on, by the hour of this plan. */
function byTheHour(said: Said, onS: number): Said {
  const until = said.params?.until;
  if (typeof until !== 'object' || !('kind' in until)) return said;
  return { ...said, params: { ...said.params, until: instantOf(onS + until.si) } };
}

/** Which muscle the map is of, where there is more than one. */
function ZoneChoice(props: { cut: CutId; zone: Zone | undefined; onZone: (zone: Zone | undefined) => void }) {
  const { text } = useWords();
  const zones = zonesOfCut(props.cut);
  if (zones.length === 0) return null;
  return (
    <Choice
      legend={text('web.zones.map')}
      hideLegend
      value={props.zone ?? 'whole'}
      onChoose={(chosen) => props.onZone(chosen === 'whole' ? undefined : chosen)}
      options={(['whole', ...zones] as const).map((value) => ({ value, text: text(`web.zone.${value}`) }))}
    />
  );
}
