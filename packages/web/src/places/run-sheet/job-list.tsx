import type { Cook } from '@pitwright/model';
import { type PlanReport, signOf, taskSaid } from '@pitwright/paper';
import { capital } from '@pitwright/words';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { JobPanel } from './job-panel.tsx';
import { isByHand, type Job, jobsOf, msOf, numbersOf } from './jobs.ts';
import { setAt } from './move.ts';
import type { Moving } from './use-moving.ts';

/** Every job in its order: clock time, time since the first meat went on, deed, sign. A line opens where it stands. */
export function JobList(props: {
  cook: Cook;
  report: PlanReport;
  openId: string | undefined;
  onOpen: (id: string | undefined) => void;
  moving: Moving;
  onKeep: (cook: Cook) => void;
}) {
  const { text, print } = useWords();
  const numbers = numbersOf(props.report.plan);
  const days: { key: string; name: string; jobs: Job[] }[] = [];
  for (const job of jobsOf(props.report.plan)) {
    const key = print.dayKey(job.placed.startAt);
    const day = days.at(-1);
    if (day?.key === key) day.jobs.push(job);
    else days.push({ key, name: print.date(job.placed.startAt), jobs: [job] });
  }
  return (
    <section
      className={print.settings.clock === '12' ? 'job-list twelve' : 'job-list'}
      aria-label={text('web.run.list')}
    >
      {days.map((day) => (
        <div key={day.key}>
          <h2>{day.name}</h2>
          <ol>
            {day.jobs.map((job) => (
              <Line key={job.task.id} {...props} job={job} number={numbers.get(job.task.id)!} />
            ))}
          </ol>
        </div>
      ))}
    </section>
  );
}

function Line(props: Parameters<typeof JobList>[0] & { job: Job; number: number }) {
  const { text, print } = useWords();
  const { cook, report, job, openId, onOpen, moving, onKeep } = props;
  const { task, placed } = job;
  const isOpen = openId === task.id;
  const several = cook.hands.length > 1;
  const hands = cook.hands.filter((hand) => placed.handIds.includes(hand.id)).map((hand) => hand.name);
  const since =
    placed.elapsedS >= 0
      ? text('web.in', { time: print.exactDurationS(placed.elapsedS) })
      : text('web.before', { time: print.durationS(-placed.elapsedS) });
  const sign = signOf(task);
  const classes = [placed.inNight && 'night', isOpen && 'open', !isByHand(job) && 'by-itself'];
  return (
    <li className={classes.filter(Boolean).join(' ')}>
      <button type="button" aria-expanded={isOpen} onClick={() => onOpen(isOpen ? undefined : task.id)}>
        <span className="job-when">
          <b className={setAt(cook, task) ? 'pinned' : undefined}>{print.clock(placed.startAt)}</b>
          <span className="small quiet" aria-hidden="true">
            {props.number}
          </span>
        </span>
        <span className="deed">
          {saidWords(taskSaid(task, report, print), print)}
          {sign ? <span className="sign">{capital(saidWords(sign, print))}</span> : null}
        </span>
        <span className="small quiet times">
          {print.exactDurationS((msOf(placed.endAt) - msOf(placed.startAt)) / 1000)}
          <span>{since}</span>
          {several && hands.length > 0 ? <span>{hands.join(', ')}</span> : null}
        </span>
      </button>
      {isOpen ? <JobPanel cook={cook} job={job} moving={moving} onKeep={onKeep} isListed /> : null}
    </li>
  );
}
