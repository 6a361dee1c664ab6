import { calendarEvents, calendarText } from '@pitwright/engine';
import { type PlanReport, taskSaid } from '@pitwright/paper';
import type { Printer } from '@pitwright/words';
import { saidWords } from '../../said.ts';

/** Hands the jobs over as an iCalendar file. */
export function saveCalendar(report: PlanReport, print: Printer): void {
  const { cook, plan } = report;
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  const events = calendarEvents(plan, (id) => saidWords(taskSaid(tasks.get(id)!, report, print), print));
  const words = calendarText(events, { name: cook.name, madeAt: new Date().toISOString() });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([words], { type: 'text/calendar' }));
  link.download = `${cook.id}.ics`;
  link.click();
  URL.revokeObjectURL(link.href);
}
