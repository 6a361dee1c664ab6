import type { PlacedTask, Task } from '@pitwright/engine';
import { type PlanReport, taskSaid } from '@pitwright/paper';
import { capital } from '@pitwright/words';
import { Fold } from '../../parts/fold.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';

/** The two days as one ordered list, each line with its hour and the time since the first meat went on. */
export function TwoDays(props: { report: PlanReport }) {
  const { text, print } = useWords();
  const { report } = props;
  const { cook, plan } = report;
  const tasks = new Map(plan.tasks.map((task): [string, Task] => [task.id, task]));
  const days: { key: string; name: string; lines: PlacedTask[] }[] = [];
  for (const placed of plan.placed) {
    const key = print.dayKey(placed.startAt);
    const day = days.at(-1);
    if (day?.key === key) day.lines.push(placed);
    else days.push({ key, name: print.date(placed.startAt), lines: [placed] });
  }
  const hands = new Map(cook.hands.map((hand) => [hand.id, hand.name]));
  const several = cook.hands.length > 1;
  return (
    <section className="two-days" aria-label={text('web.two-days')}>
      {days.map((day) => (
        <Fold key={day.key} heading={day.name} count={text('web.hands.count', { count: day.lines.length })}>
          <ol>
            {day.lines.map((placed) => {
              const task = tasks.get(placed.taskId);
              if (!task) return null;
              const since =
                placed.elapsedS >= 0
                  ? text('web.in', { time: print.exactDurationS(placed.elapsedS) })
                  : text('web.before', { time: print.durationS(-placed.elapsedS) });
              return (
                <li key={placed.taskId} className={placed.inNight ? 'night' : undefined}>
                  <b>{print.clock(placed.startAt)}</b>
                  <span className="small quiet">{since}</span>
                  <span>
                    {saidWords(taskSaid(task, report, print), print)}
                    {task.sign ? <span className="sign">{capital(saidWords(task.sign, print))}</span> : null}
                    {several ? (
                      <span className="quiet">
                        {' '}
                        {placed.handIds.map((id) => hands.get(id) ?? id).join(', ')}
                      </span>
                    ) : null}
                  </span>
                </li>
              );
            })}
          </ol>
        </Fold>
      ))}
    </section>
  );
}
