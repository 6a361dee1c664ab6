import { capital, count } from '../figures/number.ts';
import { messages } from './message.ts';

/** The place where the work of the days lies. `**…**` is set heavy. */
export const runSheetMessages = messages({
  'web.place.run-sheet': () => 'Run sheet',
  'web.run.answer': (p: { jobs: number; work: string }) => `**${p.jobs} jobs, ${p.work} of work**,`,
  'web.run.no-waking': () => 'and nobody is woken.',
  'web.run.waking': (p: { hour: string }) => `one waking at **${p.hour}**.`,
  'web.run.wakings': (p: { wakings: number; hour: string }) =>
    `${count(p.wakings)} wakings, the first at **${p.hour}**.`,
  'web.run.watch': (p: { reach: string; asleep: string }) =>
    `The fire wants somebody within reach every ${p.reach}: **${p.asleep}** of that lies in the night.`,
  'web.run.chance': (p: { chance: string }) => `**${p.chance}** that it is all on time.`,
  'web.run.first-look': () => 'Looking ahead.',

  'web.run.pit': () => 'Pit',
  'web.run.pit.remark': () => 'share of the grate',
  'web.run.full': () => 'full',
  'web.run.burner': () => 'Burner',
  'web.run.burner.remark': (p: { capacity: number }) =>
    p.capacity === 1 ? 'one ring' : `${count(p.capacity)} rings`,
  'web.run.oven': () => 'Oven',
  'web.run.oven.remark': (p: { capacity: number }) =>
    p.capacity === 1 ? '' : `${count(p.capacity)} of them`,
  'web.run.fridge': () => 'Fridge',
  'web.run.fridge.remark': (p: { capacity: number }) =>
    p.capacity === 1 ? 'one shelf' : `${count(p.capacity)} shelves`,
  'web.run.asleep': () => 'asleep',
  'web.run.hand.remark': (p: { work: string }) => p.work,
  'web.run.trays': (p: { letter: string; count: number }) =>
    p.count === 1 ? `${p.letter} on its tray` : `${p.letter} on their trays`,

  'web.run.job-at': (p: { job: string; day: string; hour: string }) => `${p.job} ${p.day} ${p.hour}`,
  'web.run.takes': (p: { time: string }) => `Takes ${p.time}.`,
  'web.run.may-move': (p: { from: string; to: string }) =>
    `It may start between **${p.from}** and **${p.to}** with all else staying.`,
  'web.run.held': () =>
    'What comes before it and after it holds it where it is. Move it, and others move with it.',
  'web.run.alone': () => 'It happens by itself.',
  'web.run.pinned': (p: { hour: string }) => `You set it to **${p.hour}**; the plan does not move it.`,
  'web.run.pin-given-up': (p: { hour: string; at: string }) =>
    `You set it to **${p.hour}**. That does not fit: it stands at **${p.at}**. What clashes stands below.`,
  'web.run.earlier': (p: { job: string }) => `${p.job}: 5 minutes earlier`,
  'web.run.later': (p: { job: string }) => `${p.job}: 5 minutes later`,
  'web.run.pin': () => 'Keep it here',
  'web.run.let-go': () => 'Let the plan place it',
  'web.run.choose': () => 'Choose a job to see when it may move and what gives.',
  'web.run.moved': (p: { jobs: number }) =>
    p.jobs === 1 ? 'One job moved with it' : capital(`${count(p.jobs)} jobs moved with it`),
  'web.run.moved-line': (p: { job: string; from: string; to: string }) =>
    `${p.job}: ${p.from} to **${p.to}**`,
  'web.run.moved-new': (p: { job: string; to: string }) => `${p.job}: new, at **${p.to}**`,
  'web.run.moved-gone': (p: { job: string; from: string }) => `${p.job}: gone, stood at ${p.from}`,
  'web.run.drag': (p: { job: string }) => `${p.job}, start`,

  'web.run.clash': () => 'What does not fit, and what each would buy',
  'web.run.clash.all': (p: { demands: string; count: number }) =>
    `${p.count === 1 ? 'This cannot' : 'These cannot all'} be kept: ${p.demands}.`,
  'web.run.give-up': (p: { demand: string; buys: string }) => `Give up ${p.demand}: ${p.buys}`,
  'web.run.we-would': () => 'we would',
  'web.run.ways': () => 'What would give',
  'web.run.ways.none': () => 'Nothing else is worth its price.',
  'web.run.buys': (p: { buys: string }) => `buys ${p.buys}`,
  'web.run.costs': (p: { costs: string }) => `costs ${p.costs}`,
  'web.run.free': () => 'Free hours',
  'web.run.free.none': () => 'None of an hour or more.',
  'web.run.free.line': (p: { day: string; range: string }) => `${p.day} ${p.range}`,
  'web.run.list': () => 'Every job in its order',
  'web.run.print': () => 'Print for the fridge and the pit',
  'web.run.calendar': () => 'Into the calendar',
});
