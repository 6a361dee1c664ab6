import { type PlanReport, taskSaid } from '@pitwright/paper';
import { Link } from 'wouter';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';

const SHOWN = 3;

/** On a phone, where the strip of the hands has no room: the jobs that come next, and the way to all of them. */
export function NextJobs(props: { report: PlanReport; nowMs: number }) {
  const { text, print } = useWords();
  const { report, nowMs } = props;
  const byHand = report.plan.placed.filter((placed) => placed.handIds.length > 0);
  const ahead = byHand.filter((placed) => Date.parse(placed.endAt) > nowMs);
  let day = '';
  return (
    <section className="next-jobs">
      <h2>{text('web.next-jobs')}</h2>
      <ol>
        {(ahead.length > 0 ? ahead : byHand).slice(0, SHOWN).map((placed) => {
          const task = report.plan.tasks.find((one) => one.id === placed.taskId);
          const today = print.shortWeekday(placed.startAt);
          const isNewDay = today !== day;
          day = today;
          return (
            <li key={placed.taskId}>
              <b>
                {isNewDay ? <span className="small">{today} </span> : null}
                {print.clock(placed.startAt)}
              </b>
              <span>{task ? saidWords(taskSaid(task, report, print), print) : null}</span>
            </li>
          );
        })}
      </ol>
      <Link className="key" href={`/cook/${report.cook.id}/run-sheet`}>
        {text('web.next-jobs.all', { count: byHand.length })}
      </Link>
    </section>
  );
}
