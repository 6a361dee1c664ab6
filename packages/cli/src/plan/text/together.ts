import type { Alternative, Conflict } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';
import { listed, type Printer, say } from '@pitwright/words';
import { heading, paragraph } from './layout.ts';

/** One other way: what it is, what it buys and what it costs. */
function alternativeText(one: Alternative, members: number, print: Printer): string[] {
  const tell = (said: Said): string => say(said, print);
  const figures = [
    one.chanceAllOnTime === undefined
      ? undefined
      : tell({ id: 'plan.alternative.chance', params: { share: one.chanceAllOnTime, members } }),
    one.firstOnAt && tell({ id: 'plan.alternative.first-on', params: { at: one.firstOnAt } }),
    one.nightWorkS === undefined
      ? undefined
      : tell({ id: 'plan.alternative.night', params: { night: one.nightWorkS } }),
    one.walks === undefined
      ? undefined
      : tell({ id: 'plan.alternative.walks', params: { walks: one.walks } }),
  ].filter((words): words is string => Boolean(words));
  const advised = one.isAdvised ? ` [${tell({ id: 'plan.alternative.advised' })}]` : '';
  const listOf = (id: string, all: readonly Said[]): string[] =>
    all.length === 0 ? [] : paragraph(tell({ id, params: { what: all.map(tell).join('; ') } }), 6, 9);
  return [
    ...paragraph(`· ${tell(one.said)}${advised}`, 2, 4),
    ...(figures.length > 0 ? paragraph(`${figures.join('; ')}.`, 4) : []),
    ...listOf('plan.alternative.buys', one.buys),
    ...listOf('plan.alternative.costs', one.costs),
  ];
}

function conflictText(conflict: Conflict, print: Printer): string[] {
  const tell = (said: Said): string => say(said, print);
  return [
    ...paragraph(tell({ id: 'plan.fit.cannot-all', params: { count: conflict.demands.length } })),
    ...conflict.demands.flatMap((demand) => paragraph(`· ${tell(demand.said)}`, 2, 4)),
    ...conflict.wayOut.flatMap(({ demandId, buys }) => {
      const demand = conflict.demands.find((one) => one.id === demandId);
      const advised = demandId === conflict.giveUpId ? ` [${tell({ id: 'plan.fit.advised' })}]` : '';
      return paragraph(
        tell({
          id: 'plan.fit.way-out',
          params: { demand: demand ? tell(demand.said) : demandId, buys: tell(buys) },
        }) + advised,
        2,
        4,
      );
    }),
  ];
}

/** What does not fit, and what would; only where something does not. */
export function fitText({ plan }: PlanReport, print: Printer): string[] {
  const tell = (id: string): string => say({ id }, print);
  return [
    ...(plan.conflicts.length > 0
      ? [
          ...heading(tell('plan.section.fit')),
          ...plan.conflicts.flatMap((conflict) => conflictText(conflict, print)),
        ]
      : []),
    ...(plan.wouldReach.length > 0
      ? [
          ...heading(tell('plan.section.reach')),
          ...plan.wouldReach.flatMap((one) => alternativeText(one, plan.members, print)),
        ]
      : []),
  ];
}

/** How unlike pieces meet at the table, and the other ways with their prices. */
export function togetherText({ plan }: PlanReport, print: Printer): string[] {
  const tell = (said: Said): string => say(said, print);
  const inOrder = [...plan.pieces].sort((a, b) => Date.parse(a.onAt) - Date.parse(b.onAt));
  const starts = listed(
    inOrder.map((piece) =>
      tell({ id: 'plan.together.start', params: { letter: piece.letter, at: piece.onAt } }),
    ),
  );
  // Each way is told once: what helps stands under its own heading.
  const others = plan.alternatives.filter(({ id }) => !plan.wouldReach.some((way) => way.id === id));
  const jobs = plan.placed.filter((placed) => placed.handIds.length > 0).length;
  const staggered =
    plan.pieces.length > 1 ? [tell({ id: 'plan.together.staggered', params: { starts } })] : [];
  return [
    ...heading(tell({ id: 'plan.section.together' })),
    ...paragraph(
      [
        ...staggered,
        tell({ id: 'plan.together.work', params: { work: plan.handWorkS, jobs } }),
        tell({
          id: 'plan.together.prompts',
          params: { walks: plan.walks.length, prompts: plan.promptsInLastHours },
        }),
      ].join(' '),
    ),
    ...(others.length > 0
      ? [
          ...heading(tell({ id: 'plan.section.night' })),
          ...others.flatMap((one) => alternativeText(one, plan.members, print)),
          ...(others.length < plan.alternatives.length
            ? paragraph(tell({ id: 'plan.alternative.told-above' }), 2)
            : []),
        ]
      : []),
  ];
}
