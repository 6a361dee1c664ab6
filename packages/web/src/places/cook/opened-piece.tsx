import type { Cook, Piece, Stage } from '@pitwright/model';
import type { Closer, Foresight } from '../../foresee/messages.ts';
import { Ask } from '../../parts/ask.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { useSteady } from '../../parts/steady.ts';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { pieceName, rangeOf } from './band-data.ts';
import { BiteChances } from './bite-chances.tsx';
import { Compare } from './compare.tsx';
import { freeStart, setStages } from './edit.ts';
import { Gets } from './gets.tsx';
import { NarrowIt } from './narrow.tsx';
import { PieceNotices } from './notes.tsx';
import { useOrigins } from './origins.ts';
import { WhatItIs } from './piece-form.tsx';
import { StagesTable } from './stages-table.tsx';
import { WhichRack } from './which-rack.tsx';

/** The opened piece: what it goes through, how sure its bite is, and another set of stages beside it. */
export function OpenedPiece(props: {
  cook: Cook;
  kept: Cook;
  piece: Piece;
  foresight: Foresight;
  closer: Closer | undefined;
  isHeld: boolean;
  onKeep: (cook: Cook) => void;
}) {
  const { text, rich, print } = useWords();
  const { cook, piece, foresight, closer, onKeep } = props;
  const take = useSteady((stages: readonly Stage[]) => onKeep(setStages(cook, piece.id, stages)));
  const gets = foresight.eaters.find((one) => one.pieceId === piece.id);
  const origins = useOrigins(foresight.members);
  const planned = foresight.plan.pieces.find((one) => one.pieceId === piece.id);
  const forecast = foresight.forecast.pieces.find((one) => one.pieceId === piece.id);
  if (!planned || !forecast) return null;
  const ready = rangeOf(planned.ready);
  const sentence = !Number.isFinite(ready.p10)
    ? text('web.piece.never')
    : Number.isFinite(ready.p90)
      ? rich('web.piece.ready', { range: print.clockRange(planned.ready.p10!, planned.ready.p90!) })
      : rich('web.piece.ready-from', {
          from: print.aboutClock(planned.ready.p10!),
          never: print.timesIn(ready.neverShare, foresight.members),
        });
  return (
    <section className="opened">
      <div className="opened-head">
        <Letter letter={piece.letter} large />
        <h2>{pieceName(piece, print)}</h2>
        <p>
          <Ask origin={origins.ready}>{sentence}</Ask>{' '}
          <Ask origin={origins['on-time']}>
            {rich('web.piece.on-time', { chance: print.chance(planned.chanceOnTime, foresight.members) })}
          </Ask>
        </p>
      </div>
      <WhatItIs cook={cook} piece={piece} onKeep={onKeep} />
      <NarrowIt key={piece.id} cook={cook} piece={piece} sensitivity={closer?.sensitivity} onKeep={onKeep} />
      {closer?.zones ? (
        <div className="muscles">
          <h3>{text('web.zones.title')}</h3>
          {closer.zones.said.map((said) => (
            <p key={said.id}>
              {saidWords({ ...said, params: { ...said.params, onAt: planned.onAt } }, print)}
            </p>
          ))}
        </div>
      ) : null}
      <div className="opened-parts">
        <div>
          <h3>{text('web.piece.stages')}</h3>
          <StagesTable cook={cook} piece={piece} planned={planned} onKeep={onKeep} />
          {piece.onAt ? (
            <p>
              {text('web.piece.start-by-hand', { hour: print.clock(piece.onAt) })}{' '}
              <Key kind="plain" onClick={() => onKeep(freeStart(cook, piece.id))}>
                {text('web.piece.start-free')}
              </Key>
            </p>
          ) : null}
        </div>
        <div>
          <h3>{text('web.piece.bite')}</h3>
          <BiteChances chances={forecast.biteChances} asked={piece.bite} members={foresight.members} />
          {gets?.atTable ? (
            <>
              <h3>{text('web.piece.gets')}</h3>
              <Gets eater={gets.atTable} salt={gets.salt} members={foresight.members} />
            </>
          ) : null}
        </div>
      </div>
      <PieceNotices notices={foresight.notices} pieceId={piece.id} />
      <Compare
        key={piece.id}
        cook={props.kept}
        piece={piece}
        foresight={foresight}
        isHeld={props.isHeld}
        onTake={take}
      />
      <WhichRack cook={cook} piece={piece} onKeep={onKeep} />
    </section>
  );
}
