import { rangesChart } from '@pitwright/draw';
import type { PlannedPiece } from '@pitwright/engine';
import { type Cook, type Piece, quantity, type Stage } from '@pitwright/model';
import { stageName } from '@pitwright/words';
import { memo, useId, useMemo, useState } from 'react';
import type { Foresight } from '../../foresee/messages.ts';
import { useForesight } from '../../foresee/use-foresight.ts';
import { Drawn } from '../../parts/drawn.tsx';
import { Key } from '../../parts/key.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords } from '../../words.tsx';
import { rangeOf, secondsOf } from './band-data.ts';
import { BiteChances } from './bite-chances.tsx';
import { setStages } from './edit.ts';
import { Gets } from './gets.tsx';

const STEP_MIN = 15;
const MINUTE_S = 60;

/** A stage on the heat whose length can be set against another: told by the clock, or as long as is foreseen. */
interface Length {
  readonly index: number;
  readonly stage: Stage;
  readonly minutes: number;
  readonly isByClock: boolean;
}

function lengthsOf(piece: Piece, planned: PlannedPiece | undefined): Length[] {
  return piece.stages.flatMap((stage, index): Length[] => {
    if (stage.until.by === 'table') return [];
    if (stage.until.by === 'clock')
      return [{ index, stage, minutes: Math.round(stage.until.after.si / MINUTE_S), isByClock: true }];
    const { startAt, endAt } = planned?.stages[index] ?? {};
    if (!startAt || !endAt) return [];
    const foreseenMin = (Date.parse(endAt) - Date.parse(startAt)) / 60_000;
    const minutes = Math.max(STEP_MIN, Math.round(foreseenMin / STEP_MIN) * STEP_MIN);
    return [{ index, stage, minutes, isByClock: false }];
  });
}

interface CompareProps {
  readonly cook: Cook;
  readonly piece: Piece;
  readonly foresight: Foresight;
  /** Something is in the hand, or not written down yet: what stands here waits until it is. */
  readonly isHeld: boolean;
  /** Takes the other stages for the piece; the same function from first to last. */
  readonly onTake: (stages: readonly Stage[]) => void;
}

/** Two sets of stages side by side: the same members, the same weather, another length of one stage. */
export const Compare = memo(
  function Compare(props: CompareProps) {
    const { text } = useWords();
    const { piece } = props;
    const planned = props.foresight.plan.pieces.find((one) => one.pieceId === piece.id);
    const choices = lengthsOf(piece, planned);
    const wrapped =
      choices.find(({ stage }) => stage.kind === 'foil' || stage.kind === 'paper') ?? choices[0];
    const [isOpen, setOpen] = useState(false);
    if (!wrapped) return null;
    return (
      <div className="compare">
        <Key aria-expanded={isOpen} onClick={() => setOpen((open) => !open)}>
          {text('web.compare.open', { stage: stageName(wrapped.stage.kind) })}
        </Key>
        {isOpen ? <SideBySide {...props} at={wrapped} /> : null}
      </div>
    );
  },
  (_, is) => is.isHeld,
);

function SideBySide(props: CompareProps & { at: Length }) {
  const { text, print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const [ref, width] = useWidth<HTMLDivElement>();
  const { cook, piece, foresight, at } = props;
  const [minutes, setMinutes] = useState(Math.round(at.minutes / STEP_MIN) * STEP_MIN + 2 * STEP_MIN);
  // The start stays, so that what differs is the stage alone.
  const onAt = foresight.plan.pieces.find((one) => one.pieceId === piece.id)?.onAt;
  const other = useMemo(() => {
    const stage: Stage = { ...at.stage, until: { by: 'clock', after: quantity('time', minutes, 'min') } };
    const stages = piece.stages.with(at.index, stage);
    const changed = setStages(cook, piece.id, stages);
    return {
      ...changed,
      pieces: changed.pieces.map((one) => (one.id === piece.id && onAt ? { ...one, onAt } : one)),
    };
  }, [cook, piece, at, minutes, onAt]);
  const { foresight: seen } = useForesight(other, false);
  const sets = [
    { key: 'as-is', minutes: at.minutes, foresight, take: undefined },
    {
      key: 'other',
      minutes,
      foresight: seen,
      take: () => props.onTake(other.pieces.find((one) => one.id === piece.id)!.stages),
    },
  ];
  const nameOf = (m: number) =>
    text('web.compare.set', { time: print.exactDurationS(m * MINUTE_S), stage: stageName(at.stage.kind) });
  const nameOfSet = (set: { key: string; minutes: number }) =>
    set.key === 'as-is' && !at.isByClock ? text('web.compare.as-is') : nameOf(set.minutes);
  const rows = sets.flatMap((set) => {
    const planned = set.foresight?.plan.pieces.find((one) => one.pieceId === piece.id);
    return planned ? [{ name: nameOfSet(set), range: rangeOf(planned.ready) }] : [];
  });
  return (
    <div ref={ref}>
      <p className="keys">
        {text('web.compare.against')}
        <Stepper
          what={stageName(at.stage.kind)}
          value={minutes}
          min={STEP_MIN}
          max={600}
          step={STEP_MIN}
          show={(value) => print.exactDurationS(value * MINUTE_S)}
          onStep={setMinutes}
        />
      </p>
      {width > 0 && rows.length > 0 ? (
        <Drawn
          drawing={rangesChart(
            rows,
            { tableS: secondsOf(cook.table.at), untilS: secondsOf(cook.table.until) },
            { width, id },
            voice,
          )}
        />
      ) : null}
      <div className="sets">
        {sets.map((set) => {
          const planned = set.foresight?.plan.pieces.find((one) => one.pieceId === piece.id);
          const forecast = set.foresight?.forecast.pieces.find((one) => one.pieceId === piece.id);
          const gets = set.foresight?.eaters.find((one) => one.pieceId === piece.id);
          return (
            <div key={set.key} className="set">
              <h3>
                {nameOfSet(set)}
                {set.foresight && set.key === 'other' && seen?.cook !== other ? (
                  <span className="again small">{text('web.looking-again')}</span>
                ) : null}
              </h3>
              {planned && forecast && set.foresight ? (
                <>
                  <p>
                    <b>{print.chance(planned.chanceOnTime, set.foresight.members)}</b>{' '}
                    {text('web.compare.on-time')}
                  </p>
                  <BiteChances
                    chances={forecast.biteChances}
                    asked={piece.bite}
                    members={set.foresight.members}
                  />
                  {gets?.atTable ? <Gets eater={gets.atTable} members={set.foresight.members} /> : null}
                  {set.take ? (
                    <Key kind="first" onClick={set.take}>
                      {text('web.compare.take')}
                    </Key>
                  ) : null}
                </>
              ) : (
                <p className="quiet">{text('web.inside.waiting')}</p>
              )}
            </div>
          );
        })}
      </div>
      <p className="small quiet">{text('web.compare.same')}</p>
    </div>
  );
}
