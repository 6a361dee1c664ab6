import { type Axis, bandChart, type StripDrawing } from '@pitwright/draw';
import type { Zone } from '@pitwright/engine';
import type { Cook, Piece } from '@pitwright/model';
import { memo, useDeferredValue, useId, useMemo } from 'react';
import type { Foresight, Inside } from '../../foresee/messages.ts';
import { Drawn } from '../../parts/drawn.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords } from '../../words.tsx';
import { bandsOf, pieceName, planFollowing } from './band-data.ts';
import { Grips } from './grips.tsx';
import { HandsStrip } from './hands-strip.tsx';
import { InsidePiece, type InsideProps } from './inside-piece.tsx';

interface BandsProps {
  readonly cook: Cook;
  /** As it is written down, without what the hand holds. */
  readonly kept: Cook;
  readonly foresight: Foresight;
  readonly before: Foresight | undefined;
  readonly openedId: string | undefined;
  readonly isCloseUp: boolean;
  readonly inside: Inside | undefined;
  /** A new look inside is under way. */
  readonly isAgain: boolean;
  readonly zone: Zone | undefined;
  readonly onZone: (zone: Zone | undefined) => void;
  readonly onOpen: (pieceId: string) => void;
  readonly onHold: (draft: Cook | undefined) => void;
  readonly onKeep: (cook: Cook) => void;
}

/** All pieces against time, what can be moved on them, and the work of the hands under them on the same axis. */
export function Bands(props: BandsProps) {
  const { print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const [ref, width] = useWidth<HTMLDivElement>();
  const { cook, foresight, before, openedId, isCloseUp } = props;
  const plan = useMemo(() => planFollowing(foresight.plan, foresight.cook, cook), [foresight, cook]);
  const drawing: StripDrawing | undefined = useMemo(() => {
    if (width <= 0) return undefined;
    const data = bandsOf({
      cook,
      plan,
      before: before?.plan,
      print,
      nowS: Date.now() / 1000,
      closeUpOn: isCloseUp ? openedId : undefined,
    });
    return bandChart(data, { width, id }, voice);
  }, [cook, plan, before, print, width, id, voice, isCloseUp, openedId]);
  const opened = props.kept.pieces.find((piece) => piece.id === openedId);
  return (
    <div className="bands" ref={ref}>
      {drawing ? (
        <>
          <Drawn drawing={drawing}>
            {cook.pieces.map((piece, index) => {
              const lane = drawing.lanes[index];
              if (!lane) return null;
              const isOpen = piece.id === openedId;
              return (
                <button
                  key={piece.id}
                  type="button"
                  className={isOpen ? 'lane-key open' : 'lane-key'}
                  style={{
                    top: lane.y - 6,
                    height: lane.height + 18,
                    width: Math.max(130, drawing.axis.x0 - 4),
                  }}
                  aria-pressed={isOpen}
                  aria-label={`${piece.letter}, ${pieceName(piece, print)}`}
                  onClick={() => props.onOpen(piece.id)}
                />
              );
            })}
            <Grips {...props} plan={plan} drawing={drawing} width={width} />
          </Drawn>
          <UnderBands
            kept={props.kept}
            piece={opened}
            plan={plan}
            inside={props.inside}
            isAgain={props.isAgain}
            zone={props.zone}
            onZone={props.onZone}
            axis={drawing.axis}
            width={width}
          />
        </>
      ) : null}
    </div>
  );
}

interface UnderProps extends Omit<InsideProps, 'piece'> {
  readonly piece: Piece | undefined;
}

/** The inside of the opened piece and the work of the hands: they follow the bands once these are drawn. */
function UnderBands(props: UnderProps) {
  return <DrawnUnder {...useDeferredValue(props)} />;
}

const DrawnUnder = memo(function DrawnUnder(props: UnderProps) {
  const { piece } = props;
  return (
    <>
      {piece ? <InsidePiece {...props} piece={piece} /> : null}
      <HandsStrip cook={props.kept} plan={props.plan} axis={props.axis} width={props.width} />
    </>
  );
}, isSameUnder);

/** An axis that is laid out anew is mostly the one that was there. */
function isSameUnder(was: UnderProps, is: UnderProps): boolean {
  const names = Object.keys(is) as (keyof UnderProps)[];
  return names.every((name) => was[name] === is[name] || (name === 'axis' && isSameAxis(was.axis, is.axis)));
}

const isSameAxis = (was: Axis, is: Axis): boolean =>
  was.x0 === is.x0 && was.x1 === is.x1 && JSON.stringify(was.stretches) === JSON.stringify(is.stretches);
