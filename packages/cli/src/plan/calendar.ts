import { calendarEvents, calendarText } from '@pitwright/engine';
import type { Instant } from '@pitwright/model';
import { type PlanReport, taskSaid } from '@pitwright/paper';
import { capital, type Printer, say } from '@pitwright/words';

/** The plan as an iCalendar file: each walk and each job an event, with alarms. @param madeAt when it was made, UTC */
export function planCalendar(report: PlanReport, print: Printer, madeAt: Instant): string {
  const { plan, cook } = report;
  const said = (taskId: string): string => {
    const task = plan.tasks.find((one) => one.id === taskId);
    return task ? capital(say(taskSaid(task, report, print), print)) : taskId;
  };
  return calendarText(calendarEvents(plan, said), { name: cook.name, madeAt });
}
