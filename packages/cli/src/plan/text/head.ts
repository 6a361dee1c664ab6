import type { Said } from '@pitwright/model';
import { answer, type PlanReport } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { paragraph } from './layout.ts';

/** Title, the answer, the rules and how to change them, what is not used yet. */
export function headText(report: PlanReport, print: Printer): string[] {
  const { cook, plan, forecast } = report;
  const tell = (said: Said): string => say(said, print);
  const guests = tell({
    id: 'plan.guests',
    params: { adults: cook.guests.adults, children: cook.guests.children },
  });
  const lines = [
    ...paragraph(
      tell({ id: 'plan.title', params: { name: cook.name, at: plan.table.at, until: plan.table.until } }),
    ),
    cook.isDemo ? `${guests} ${tell({ id: 'plan.demo' })}` : guests,
    '',
    ...paragraph(answer(report, print).map(tell).join(' ')),
  ];
  if (plan.fireWatch)
    lines.push(
      ...paragraph(
        tell({
          id: 'plan.watch',
          params: {
            from: plan.fireWatch.fromAt,
            to: plan.fireWatch.toAt,
            reach: plan.fireWatch.reachS,
            asleep: plan.fireWatch.asleepS,
          },
        }),
      ),
    );
  for (const said of plan.notices) lines.push(...paragraph(tell(said)));
  lines.push(
    '',
    ...paragraph(
      tell({ id: cook.rulesTold ? 'plan.rules' : 'plan.rules-untold', params: { rules: cook.rules } }),
    ),
    ...paragraph(tell({ id: 'plan.ranges', params: { members: plan.members, seed: plan.seed } })),
  );
  if (forecast.notUsed.length > 0)
    lines.push(...paragraph([tell({ id: 'plan.not-used' }), ...forecast.notUsed.map(tell)].join(' ')));
  lines.push(...paragraph(tell({ id: 'plan.informs' })));
  return lines;
}
