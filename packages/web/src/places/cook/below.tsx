import type { Cook, Subject } from '@pitwright/model';
import { memo, useDeferredValue } from 'react';
import type { Closer, Foresight } from '../../foresee/messages.ts';
import { Key } from '../../parts/key.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords } from '../../words.tsx';
import { NextJobs } from './next-jobs.tsx';
import { Notes } from './notes.tsx';
import { OpenedPiece } from './opened-piece.tsx';
import { Share } from './share.tsx';
import { TwoDays } from './two-days.tsx';

interface BelowProps {
  readonly cook: Cook;
  readonly kept: Cook;
  readonly subject: Subject;
  readonly openedId: string | undefined;
  readonly foresight: Foresight;
  readonly closer: Closer | undefined;
  /** The cook changes with every move of the hand. */
  readonly isInHand: boolean;
  /** The cook is not written down yet. */
  readonly isUnwritten: boolean;
  readonly isCloseUp: boolean;
  readonly onCloseUp: (isCloseUp: boolean) => void;
  readonly onKeep: (cook: Cook) => void;
}

/**
 * What stands under the bands. It follows them once they are drawn and gives way to the next move of the hand; what is
 * changed here itself shows at once.
 */
export function Below(props: BelowProps) {
  const later = useDeferredValue(props);
  return <Drawn {...(props.isInHand ? later : { ...props, foresight: later.foresight })} />;
}

const Drawn = memo(function Drawn(props: BelowProps) {
  const { text } = useWords();
  const { cook, kept, foresight, isCloseUp } = props;
  const opened = cook.pieces.find((piece) => piece.id === props.openedId);
  return (
    <>
      <NextJobs report={foresight} nowMs={Date.now()} />
      <div className="keys cook-keys">
        <Key aria-pressed={isCloseUp} onClick={() => props.onCloseUp(!isCloseUp)}>
          {text(isCloseUp ? 'web.cook.whole' : 'web.cook.close-up')}
        </Key>
        <UndoKeys subject={props.subject} />
        <Share cook={kept} />
        <a className="key" href={`/print.html?cook=${encodeURIComponent(kept.id)}`}>
          {text('web.cook.print')}
        </a>
      </div>
      {opened ? (
        <OpenedPiece
          cook={cook}
          kept={kept}
          piece={opened}
          foresight={foresight}
          closer={props.closer}
          isHeld={props.isUnwritten}
          onKeep={props.onKeep}
        />
      ) : null}
      <TwoDays report={foresight} />
      <Notes cook={cook} foresight={foresight} onKeep={props.onKeep} />
    </>
  );
});
