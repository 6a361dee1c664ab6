import { type Zone, zonesOfCut } from '@pitwright/engine';
import type { Cook, Subject } from '@pitwright/model';
import { useEffect, useState } from 'react';
import { useClose, useForesight } from '../../foresee/use-foresight.ts';
import { useSteady } from '../../parts/steady.ts';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords } from '../../words.tsx';
import { ofCook, useCookWriter } from '../of-cook.tsx';
import { pieceName } from './band-data.ts';
import { Bands } from './bands-strip.tsx';
import { Below } from './below.tsx';
import { CookAnswer } from './cook-answer.tsx';
import { CookStrip } from './cook-strip.tsx';
import { StagesTable } from './stages-table.tsx';
import './cook.css';

export default ofCook(CookSheet);

/** One cook at a glance: will it all be ready, and what is it doing inside. */
function CookSheet(props: { cook: Cook }) {
  const { cook } = props;
  const writer = useCookWriter(cook);
  const { subject } = writer;
  /** The cook as the hand holds it, not written down yet. */
  const [draft, setDraft] = useState<Cook>();
  const [isInHand, setInHand] = useState(false);
  const [openedId, setOpenedId] = useState<string>();
  const [isCloseUp, setCloseUp] = useState(false);
  const [zone, setZone] = useState<Zone>();
  const shown = draft ?? cook;
  const { foresight, isFull, fault, askAhead } = useForesight(shown, draft !== undefined);
  // The piece that goes on first has the longest way and the most to tell; chosen once, so that it never jumps.
  if (openedId === undefined && foresight)
    setOpenedId(foresight.plan.pieces.reduce((a, b) => (b.onAt < a.onAt ? b : a)).pieceId);
  const [before, setBefore] = useState<typeof foresight>();

  // The workers set out before the page draws what the hand did.
  const hold = useSteady((next: Cook | undefined) => {
    if (next) askAhead(next);
    if (next && !draft) setBefore(foresight);
    setInHand(next !== undefined);
    setDraft(next);
  });
  const keep = useSteady((next: Cook) => {
    askAhead(next);
    if (!draft) setBefore(foresight);
    setInHand(false);
    // It stays where the hand left it until it is written down, unless the hand has moved on meanwhile.
    setDraft(next);
    void writer.keep(next).then(() => setDraft((now) => (now === next ? undefined : now)));
  });
  // The old outline stays long enough to be seen, then goes.
  useEffect(() => {
    if (draft || !before || !isFull) return;
    const timer = setTimeout(() => setBefore(undefined), OUTLINE_MS);
    return () => clearTimeout(timer);
  }, [draft, before, isFull]);

  const opened = shown.pieces.find((piece) => piece.id === openedId);
  const shownZone = zone && opened && zonesOfCut(opened.cut).includes(zone) ? zone : undefined;
  const { inside, closer, isAgain } = useClose(cook, openedId, shownZone);
  return (
    <>
      <CookStrip cook={cook} />
      <main id="page" className="cook">
        <CookAnswer cook={shown} foresight={foresight} isFull={isFull} fault={fault} />
        {foresight ? (
          <>
            <Bands
              cook={shown}
              kept={cook}
              foresight={foresight}
              before={before}
              openedId={openedId}
              isCloseUp={isCloseUp}
              inside={inside}
              isAgain={isAgain}
              zone={shownZone}
              onZone={setZone}
              onOpen={setOpenedId}
              onHold={hold}
              onKeep={keep}
            />
            <Below
              cook={shown}
              kept={cook}
              subject={subject}
              openedId={openedId}
              foresight={foresight}
              closer={closer}
              isInHand={isInHand}
              isUnwritten={draft !== undefined}
              isCloseUp={isCloseUp}
              onCloseUp={(on) => {
                setCloseUp(on);
                // Its key stands under what it changes: on a phone that may have been scrolled away.
                document.querySelector('.bands')?.scrollIntoView({ block: 'nearest' });
              }}
              onKeep={keep}
            />
          </>
        ) : (
          <Unforeseen cook={shown} isAtFault={fault !== undefined} subject={subject} onKeep={keep} />
        )}
      </main>
    </>
  );
}

/** Nothing to draw yet, or nothing that can be foreseen: then the stages can be mended and the last change taken back. */
function Unforeseen(props: {
  cook: Cook;
  isAtFault: boolean;
  subject: Subject;
  onKeep: (cook: Cook) => void;
}) {
  const { print } = useWords();
  if (!props.isAtFault) return <div className="waiting-room" />;
  return (
    <div className="opened">
      <div className="keys">
        <UndoKeys subject={props.subject} />
      </div>
      {props.cook.pieces.map((piece) => (
        <div key={piece.id} className="unforeseen">
          <h2>
            {piece.letter} {pieceName(piece, print)}
          </h2>
          <StagesTable cook={props.cook} piece={piece} planned={undefined} onKeep={props.onKeep} />
        </div>
      ))}
    </div>
  );
}

const OUTLINE_MS = 2000;
