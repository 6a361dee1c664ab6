import { type Zone, zonesOfCut } from '@pitwright/engine';
import type { Cook, Subject } from '@pitwright/model';
import { useEffect, useState } from 'react';
import { useClose, useForesight } from '../../foresee/use-foresight.ts';
import { Key } from '../../parts/key.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords } from '../../words.tsx';
import { ofCook, useCookWriter } from '../of-cook.tsx';
import { pieceName } from './band-data.ts';
import { Bands } from './bands-strip.tsx';
import { CookAnswer } from './cook-answer.tsx';
import { CookStrip } from './cook-strip.tsx';
import { NextJobs } from './next-jobs.tsx';
import { Notes } from './notes.tsx';
import { OpenedPiece } from './opened-piece.tsx';
import { Share } from './share.tsx';
import { StagesTable } from './stages-table.tsx';
import { TwoDays } from './two-days.tsx';
import './cook.css';

export default ofCook(CookSheet);

/** One cook at a glance: will it all be ready, and what is it doing inside. */
function CookSheet(props: { cook: Cook }) {
  const { text } = useWords();
  const { cook } = props;
  const writer = useCookWriter(cook);
  const { subject } = writer;
  /** The cook as the hand holds it, not written down yet. */
  const [draft, setDraft] = useState<Cook>();
  const [openedId, setOpenedId] = useState<string>();
  const [isCloseUp, setCloseUp] = useState(false);
  const [zone, setZone] = useState<Zone>();
  const shown = draft ?? cook;
  const { foresight, isFull, fault } = useForesight(shown, draft !== undefined);
  // The piece that goes on first has the longest way and the most to tell; chosen once, so that it never jumps.
  if (openedId === undefined && foresight)
    setOpenedId(foresight.plan.pieces.reduce((a, b) => (b.onAt < a.onAt ? b : a)).pieceId);
  const [before, setBefore] = useState<typeof foresight>();

  const hold = (next: Cook | undefined) => {
    if (next && !draft) setBefore(foresight);
    setDraft(next);
  };
  const keep = (next: Cook) => {
    if (!draft) setBefore(foresight);
    // It stays where the hand left it until it is written down, unless the hand has moved on meanwhile.
    setDraft(next);
    void writer.keep(next).then(() => setDraft((now) => (now === next ? undefined : now)));
  };
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
            <NextJobs report={foresight} nowMs={Date.now()} />
            <div className="keys cook-keys">
              <Key aria-pressed={isCloseUp} onClick={() => setCloseUp((close) => !close)}>
                {text(isCloseUp ? 'web.cook.whole' : 'web.cook.close-up')}
              </Key>
              <UndoKeys subject={subject} />
              <Share cook={cook} />
              <a className="key" href={`/print.html?cook=${encodeURIComponent(cook.id)}`}>
                {text('web.cook.print')}
              </a>
            </div>
            {opened ? (
              <OpenedPiece
                cook={shown}
                kept={cook}
                piece={opened}
                foresight={foresight}
                closer={closer}
                isHeld={draft !== undefined}
                onKeep={keep}
              />
            ) : null}
            <TwoDays report={foresight} />
            <Notes foresight={foresight} />
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
