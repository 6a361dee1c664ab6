import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import { STEP_MS } from '../cook/edit.ts';
import { isByHand, type Job, jobsOf, msOf } from './jobs.ts';
import { jobName } from './lanes.ts';
import { letGo, moveJob, setAt } from './move.ts';
import type { Moving } from './use-moving.ts';

/** One job: how far it may move, keys to move it and keep it, and what the last change moved. */
export function JobPanel(props: {
  cook: Cook;
  job: Job;
  moving: Moving;
  onKeep: (cook: Cook) => void;
  isListed?: boolean;
}) {
  const { text, rich, print } = useWords();
  const { cook, job, moving, onKeep, isListed } = props;
  const { task, placed } = job;
  const name = jobName(job, cook, text);
  const atMs = moving.held?.id === task.id ? moving.held.atMs : msOf(placed.startAt);
  const at = new Date(atMs).toISOString();
  const pinnedAt = setAt(cook, task);
  const room = placed.canStart;
  const mayMove = room && room.from !== room.to;
  return (
    <div className="job-panel">
      {isListed ? null : (
        <h2>{text('web.run.job-at', { job: name, day: print.weekday(at), hour: print.clock(at) })}</h2>
      )}
      <p>
        {text('web.run.takes', {
          time: print.exactDurationS((msOf(placed.endAt) - msOf(placed.startAt)) / 1000),
        })}{' '}
        {!isByHand(job)
          ? text('web.run.alone')
          : pinnedAt
            ? msOf(pinnedAt) === msOf(placed.startAt) || moving.held?.id === task.id
              ? rich('web.run.pinned', { hour: print.clock(pinnedAt) })
              : rich('web.run.pin-given-up', { hour: print.clock(pinnedAt), at: print.clock(placed.startAt) })
            : mayMove
              ? rich('web.run.may-move', { from: print.clock(room.from), to: print.clock(room.to) })
              : text('web.run.held')}
      </p>
      <div className="keys">
        <Key
          kind="square"
          aria-label={text('web.run.earlier', { job: name })}
          onClick={() => moving.nudge(job, -STEP_MS)}
        >
          −
        </Key>
        <b className="job-hour" aria-live="polite">
          {print.clock(at)}
        </b>
        <Key
          kind="square"
          aria-label={text('web.run.later', { job: name })}
          onClick={() => moving.nudge(job, STEP_MS)}
        >
          +
        </Key>
        {pinnedAt ? (
          <Key onClick={() => onKeep(letGo(cook, task))}>{text('web.run.let-go')}</Key>
        ) : (
          <Key onClick={() => onKeep(moveJob(cook, task, msOf(placed.startAt)))}>{text('web.run.pin')}</Key>
        )}
      </div>
    </div>
  );
}

/** What the last change moved besides. */
export function Moved(props: { cook: Cook; plan: CookPlan }) {
  const { text, rich, print } = useWords();
  const { cook, plan } = props;
  const jobs = new Map(jobsOf(plan).map((job) => [job.task.id, job]));
  const moved = plan.moved.flatMap((one) => {
    const job = jobs.get(one.taskId);
    if (!job || !isByHand(job) || setAt(cook, job.task)) return [];
    return [{ ...one, name: jobName(job, cook, text) }];
  });
  if (moved.length === 0) return null;
  return (
    <div>
      <h3>{text('web.run.moved', { jobs: moved.length })}</h3>
      <ul className="moved">
        {moved.map(({ taskId, name, fromAt, toAt }) => (
          <li key={taskId}>
            {fromAt && toAt
              ? rich('web.run.moved-line', { job: name, from: print.clock(fromAt), to: print.clock(toAt) })
              : toAt
                ? rich('web.run.moved-new', { job: name, to: print.clock(toAt) })
                : text('web.run.moved-gone', { job: name, from: fromAt ? print.clock(fromAt) : '' })}
          </li>
        ))}
      </ul>
    </div>
  );
}
