import type { StripDrawing } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { stageName } from '@pitwright/words';
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { Key } from '../../parts/key.tsx';
import { usePause } from '../../parts/pause.ts';
import { useWords } from '../../words.tsx';
import { moveStageEnd, moveStart, moveTable, STEP_MS, toStep } from './edit.ts';

interface GripsProps {
  readonly cook: Cook;
  readonly plan: CookPlan;
  readonly drawing: StripDrawing;
  /** Of the chart [px]. */
  readonly width: number;
  readonly openedId: string | undefined;
  readonly isCloseUp: boolean;
  /** The cook as the hand has it; undefined: the hand let go without a change. */
  readonly onHold: (draft: Cook | undefined) => void;
  readonly onKeep: (cook: Cook) => void;
}

/** Something on the chart that can be moved along time. */
interface Grip {
  readonly key: string;
  readonly atMs: number;
  readonly y: number;
  readonly name: string;
  readonly leastMs: number;
  readonly mostMs: number;
  /** Of a stage: when its piece goes on; the time from there is what is kept. */
  readonly onMs?: number;
  readonly move: (atMs: number) => Cook;
}

const DAY_MS = 86_400_000;

function gripsOf(props: GripsProps, texts: Texts): Grip[] {
  const { cook, plan, drawing, openedId } = props;
  const tableMs = Date.parse(cook.table.at);
  const table: Grip = {
    key: 'table',
    atMs: tableMs,
    y: drawing.plot.y - 14,
    name: texts.table,
    leastMs: tableMs - DAY_MS,
    mostMs: tableMs + DAY_MS,
    move: (atMs) => moveTable(cook, atMs),
  };
  const index = cook.pieces.findIndex((piece) => piece.id === openedId);
  const piece = cook.pieces[index];
  const lane = drawing.lanes[index];
  const planned = plan.pieces.find((one) => one.pieceId === openedId);
  if (!piece || !lane || !planned) return [table];
  const y = lane.y + lane.height / 2;
  const onMs = Date.parse(planned.onAt);
  const grips: Grip[] = [
    table,
    {
      key: `${piece.id}-on`,
      atMs: onMs,
      y,
      name: texts.start(piece.letter),
      leastMs: tableMs - 2 * DAY_MS,
      mostMs: tableMs,
      move: (atMs) => moveStart(cook, piece.id, atMs),
    },
  ];
  for (const [at, stage] of piece.stages.entries()) {
    const end = planned.stages[at]?.endAt;
    const begin = planned.stages[at]?.startAt;
    const next = piece.stages[at + 1];
    // What ends by the bite or the table is foreseen, not set.
    if (!end || !begin || !next || stage.until.by === 'bite' || stage.until.by === 'table') continue;
    grips.push({
      key: `${piece.id}-${at}`,
      atMs: Date.parse(end),
      y,
      name: texts.edge(piece.letter, stageName(next.kind)),
      leastMs: Date.parse(begin) + STEP_MS,
      mostMs: tableMs,
      onMs,
      move: (atMs) => moveStageEnd(cook, plan, piece.id, at, atMs),
    });
  }
  return grips;
}

/** Grips nearer to each other than a finger tells apart are left out: close up they have room, and the table has all. */
function apart(grips: readonly Grip[], { axis }: StripDrawing): Grip[] {
  const kept: Grip[] = [];
  for (const grip of grips) {
    const x = axis.x(grip.atMs / 1000);
    const isCrowded = kept.some(
      (other) => other.y === grip.y && Math.abs(axis.x(other.atMs / 1000) - x) < APART_PX,
    );
    if (!isCrowded) kept.push(grip);
  }
  return kept;
}

const APART_PX = 27;

interface Texts {
  readonly table: string;
  readonly start: (letter: string) => string;
  readonly edge: (letter: string, stage: string) => string;
}

/** The grips of the opened piece and of the table: by hand, by arrow keys, by − and + keys. */
export function Grips(props: GripsProps) {
  const { text, print } = useWords();
  const { drawing, onHold, onKeep, isCloseUp, width } = props;
  const [heldKey, setHeldKey] = useState<string>();
  const [chosenKey, setChosenKey] = useState<string>();
  /** Where the hand has it now: the grip stays with the hand while the answer is on its way. */
  const [heldMs, setHeldMs] = useState<number>();
  /** The grip as it was when the hand took it: answers on their way move the plan, not what the hand began from. */
  const taken = useRef<Grip>(undefined);
  const pause = usePause();
  const isNarrow = width < NARROW_PX;
  const grips = gripsOf(props, {
    table: text('web.grip.table'),
    start: (letter) => text('web.grip.start', { letter }),
    edge: (letter, stage) => text('web.grip.edge', { letter, stage }),
  });
  const isOnAxis = (atMs: number) => atMs / 1000 >= drawing.axis.fromS && atMs / 1000 <= drawing.axis.toS;
  // A small screen shows grips only where there is room for a thumb: on the piece seen close up.
  const shown =
    isNarrow && !isCloseUp
      ? []
      : apart(
          grips.filter((grip) => isOnAxis(grip.atMs)),
          drawing,
        );
  const chosen =
    shown.find((grip) => grip.key === chosenKey) ?? shown.find((grip) => grip.key !== 'table') ?? shown[0];
  const chosenMs = heldKey === chosen?.key && heldMs !== undefined ? heldMs : (chosen?.atMs ?? 0);
  const onMs = taken.current?.key === chosen?.key ? taken.current?.onMs : chosen?.onMs;
  const hour = (ms: number) => print.clock(new Date(ms).toISOString());

  const within = (grip: Grip, ms: number) => Math.max(grip.leastMs, Math.min(grip.mostMs, toStep(ms)));

  /** Moves by keys: held at once, written down after a pause. */
  const nudge = (grip: Grip, byMs: number) => {
    setChosenKey(grip.key);
    const from = heldKey === grip.key && heldMs !== undefined ? heldMs : grip.atMs;
    const to = within(grip, from + byMs);
    const next = grip.move(to);
    setHeldKey(grip.key);
    setHeldMs(to);
    onHold(next);
    pause.before(() => {
      setHeldKey(undefined);
      setHeldMs(undefined);
      onKeep(next);
    });
  };

  const onKeyDown = (grip: Grip) => (event: KeyboardEvent) => {
    const step = { ArrowLeft: -1, ArrowRight: 1, PageDown: -6, PageUp: 6 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    nudge(grip, step * STEP_MS);
  };

  const msAt = (event: PointerEvent) => {
    const box = event.currentTarget.closest('.drawing')!.getBoundingClientRect();
    return (
      drawing.axis.at(Math.max(drawing.axis.x0, Math.min(drawing.axis.x1, event.clientX - box.left))) * 1000
    );
  };
  const onPointerDown = (grip: Grip) => (event: PointerEvent<HTMLElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    setChosenKey(grip.key);
    taken.current = grip;
    setHeldKey(grip.key);
    setHeldMs(grip.atMs);
  };
  const onPointerMove = (grip: Grip) => (event: PointerEvent<HTMLElement>) => {
    if (heldKey !== grip.key || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const to = within(grip, msAt(event));
    if (to === heldMs) return;
    setHeldMs(to);
    onHold((taken.current ?? grip).move(to));
  };
  const onPointerUp = (grip: Grip) => () => {
    if (heldKey !== grip.key || pause.isWaiting()) return;
    const from = taken.current ?? grip;
    taken.current = undefined;
    const to = heldMs ?? from.atMs;
    setHeldKey(undefined);
    setHeldMs(undefined);
    if (to === from.atMs) onHold(undefined);
    else onKeep(from.move(to));
  };

  return (
    <>
      {shown.map((grip) => {
        const atMs = heldKey === grip.key && heldMs !== undefined ? heldMs : grip.atMs;
        return (
          <div
            key={grip.key}
            className={grip.key === heldKey ? 'grip held' : 'grip'}
            role="slider"
            tabIndex={0}
            aria-label={grip.name}
            aria-valuemin={grip.leastMs / 60_000}
            aria-valuemax={grip.mostMs / 60_000}
            aria-valuenow={atMs / 60_000}
            aria-valuetext={hour(atMs)}
            style={{ left: drawing.axis.x(atMs / 1000), top: grip.y }}
            onKeyDown={onKeyDown(grip)}
            onFocus={() => setChosenKey(grip.key)}
            onPointerDown={onPointerDown(grip)}
            onPointerMove={onPointerMove(grip)}
            onPointerUp={onPointerUp(grip)}
            onPointerCancel={onPointerUp(grip)}
          >
            {grip.key === heldKey ? <span className="grip-hour">{hour(atMs)}</span> : null}
          </div>
        );
      })}
      {chosen && isNarrow ? (
        <div className="grip-keys">
          <Key
            kind="square"
            aria-label={text('web.grip.earlier', { what: chosen.name })}
            onClick={() => nudge(chosen, -STEP_MS)}
          >
            −
          </Key>
          <span>
            {chosen.name}
            <br />
            <b>{hour(chosenMs)}</b>
            {onMs === undefined ? null : `, ${print.elapsedS((chosenMs - onMs) / 1000)}`}
          </span>
          <Key
            kind="square"
            aria-label={text('web.grip.later', { what: chosen.name })}
            onClick={() => nudge(chosen, STEP_MS)}
          >
            +
          </Key>
        </div>
      ) : null}
    </>
  );
}

/** As in packages/draw: under this width names stand above their bands. */
const NARROW_PX = 640;
