import type { CookPlan, PlacedTask, TaskKind } from '../schedule/types.ts';
import type { CalendarEvent } from './calendar.ts';

/** What is worth a ring, and how long before [min]: time to get up, to walk out, to light. */
const ALARM_MINUTES: Readonly<Partial<Record<TaskKind, number>>> = {
  'light-fire': 10,
  'meat-on': 10,
  wrap: 5,
  unwrap: 5,
  glaze: 5,
  'to-oven': 5,
  'to-coals': 5,
  'take-off': 5,
  slice: 5,
  chill: 0,
  'chill-leftovers': 0,
  'jar-sauce': 0,
};

/**
 * The plan as calendar events: each walk to the pit is one, each other job with hands is one.
 * @param said  a job in words
 */
export function calendarEvents(plan: CookPlan, said: (taskId: string) => string): CalendarEvent[] {
  const kinds = new Map(plan.tasks.map((task) => [task.id, task.kind]));
  const alarmOf = (taskIds: readonly string[]): number | undefined => {
    const minutes = taskIds.flatMap((id) => ALARM_MINUTES[kinds.get(id)!] ?? []);
    return minutes.length ? Math.max(...minutes) : undefined;
  };
  const event = (
    uid: string,
    taskIds: readonly string[],
    span: Pick<PlacedTask, 'startAt' | 'endAt'>,
  ): CalendarEvent => {
    const [first = '', ...rest] = taskIds.map(said);
    const alarmMinutes = alarmOf(taskIds);
    return {
      uid: `${uid}@${plan.cookId}.pitwright`,
      startAt: span.startAt,
      endAt: span.endAt,
      summary: first,
      ...(rest.length && { description: [first, ...rest].join('\n') }),
      ...(alarmMinutes !== undefined && { alarmMinutes }),
    };
  };
  return [
    ...plan.walks.map((walk) => event(walk.taskIds[0]!, walk.taskIds, walk)),
    ...plan.placed
      .filter((task) => task.walk === undefined && task.handIds.length > 0)
      .map((task) => event(task.taskId, [task.taskId], task)),
  ].sort((a, b) => (a.startAt < b.startAt ? -1 : a.startAt > b.startAt ? 1 : 0));
}
