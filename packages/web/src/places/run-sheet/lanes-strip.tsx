import { isNarrow, lanesChart } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { type KeyboardEvent, type PointerEvent, useId, useMemo, useRef } from 'react';
import { Drawn } from '../../parts/drawn.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords } from '../../words.tsx';
import { STEP_MS } from '../cook/edit.ts';
import { type Job, jobsOf, msOf } from './jobs.ts';
import { jobName, lanesData, spanOf } from './lanes.ts';
import type { Moving } from './use-moving.ts';

/** A target at least this wide, however short the job [px]. */
const LEAST_TARGET = 24;

/** The lanes, and over each job something to take hold of. */
export function LanesStrip(props: {
  cook: Cook;
  plan: CookPlan;
  openId: string | undefined;
  onOpen: (id: string) => void;
  moving: Moving;
}) {
  const { text, print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const [ref, width] = useWidth<HTMLDivElement>();
  const grabbed = useRef<{ id: string; offsetMs: number }>(undefined);
  const { cook, plan, openId, onOpen, moving } = props;
  const { held } = moving;
  const drawing = useMemo(
    () =>
      width > 0
        ? lanesChart(
            lanesData({ cook, plan, openId, held, nowS: Date.now() / 1000, text, print }),
            { width, id },
            voice,
          )
        : undefined,
    [cook, plan, openId, held, text, print, width, id, voice],
  );
  const jobs = useMemo(() => new Map(jobsOf(plan).map((job) => [job.task.id, job])), [plan]);
  const span = spanOf(plan);

  const msUnder = (event: PointerEvent): number => {
    const { axis } = drawing!;
    const left = event.currentTarget.closest('.drawing')!.getBoundingClientRect().left;
    return axis.at(Math.max(axis.x0, Math.min(axis.x1, event.clientX - left))) * 1000;
  };
  const onKeyDown = (job: Job) => (event: KeyboardEvent) => {
    const other = { ArrowUp: 'previousElementSibling', ArrowDown: 'nextElementSibling' } as const;
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      const next = event.currentTarget[other[event.key]];
      if (next instanceof HTMLElement && next.classList.contains('job-grip')) next.focus();
      return;
    }
    const steps = { ArrowLeft: -1, ArrowRight: 1, PageDown: -6, PageUp: 6 }[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    moving.nudge(job, steps * STEP_MS);
  };
  const onPointerDown = (job: Job) => (event: PointerEvent<HTMLElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    onOpen(job.task.id);
    grabbed.current = { id: job.task.id, offsetMs: msUnder(event) - msOf(job.placed.startAt) };
  };
  const onPointerMove = (job: Job) => (event: PointerEvent<HTMLElement>) => {
    if (grabbed.current?.id !== job.task.id) return;
    moving.drag(job, msUnder(event) - grabbed.current.offsetMs);
  };
  const onPointerUp = (job: Job) => () => {
    if (grabbed.current?.id !== job.task.id) return;
    grabbed.current = undefined;
    moving.drop(job);
  };

  return (
    <div className="lanes" ref={ref}>
      {drawing ? (
        <Drawn drawing={drawing}>
          {isNarrow(width)
            ? null
            : drawing.boxes.map((box) => {
                const job = jobs.get(box.id);
                if (!job) return null;
                const name = jobName(job, cook, text);
                const atMs = held?.id === box.id ? held.atMs : msOf(job.placed.startAt);
                const wide = Math.max(LEAST_TARGET, box.width);
                return (
                  <div
                    key={box.id}
                    className="job-grip"
                    role="slider"
                    tabIndex={0}
                    aria-label={text('web.run.drag', { job: name })}
                    aria-valuemin={Math.round(span.fromS / 60)}
                    aria-valuemax={Math.round(span.toS / 60)}
                    aria-valuenow={Math.round(atMs / 60_000)}
                    aria-valuetext={`${print.weekday(new Date(atMs).toISOString())} ${print.clock(new Date(atMs).toISOString())}`}
                    style={{
                      left: box.x + box.width / 2 - wide / 2,
                      top: box.y - 5,
                      width: wide,
                      height: LEAST_TARGET,
                    }}
                    onFocus={() => onOpen(box.id)}
                    onKeyDown={onKeyDown(job)}
                    onPointerDown={onPointerDown(job)}
                    onPointerMove={onPointerMove(job)}
                    onPointerUp={onPointerUp(job)}
                    onPointerCancel={onPointerUp(job)}
                  />
                );
              })}
        </Drawn>
      ) : null}
    </div>
  );
}
