import type { Bite, Quantity, RulesProfile, StageKind } from '@pitwright/model';
import { capital, count } from '../figures/number.ts';
import { biteName, rulesName, stageName } from '../names/words.ts';
import { messages } from './message.ts';

const JAR_M3 = 250e-6;

/** Thickness as a cook sees it. */
const THICKNESS: Readonly<Record<string, string>> = {
  runs: 'runs like water',
  pours: 'pours like cream',
  coats: 'coats a spoon',
  'holds-a-line': 'holds a line drawn through it',
  spreads: 'spreads and does not run',
  stands: 'stands',
};

/** What `plan` says of a cook beyond what the rooms themselves say. Times are UTC instants, shares 0 to 1. */
export const planMessages = messages({
  'plan.title': (p: { name: string; at: string; until: string }, print) =>
    `${p.name}. ${print.date(p.at)}, table ${print.clockRange(p.at, p.until)}`,
  'plan.guests': (p: { adults: number; children: number }) => {
    const adults = `${p.adults} ${p.adults === 1 ? 'adult' : 'adults'}`;
    return p.children === 0
      ? `For ${adults}.`
      : `For ${adults} and ${p.children} ${p.children === 1 ? 'child' : 'children'}.`;
  },
  'plan.demo': () => 'A demo: everything in it is invented.',

  'plan.chance': (
    p: { share: number; members: number; pieces: number; letter: string; until: string },
    print,
  ) => {
    const who =
      p.pieces === 1 ? `${p.letter} is` : p.pieces === 2 ? 'both are' : `all ${count(p.pieces)} are`;
    return `${capital(print.chance(p.share, p.members))} that ${who} ready by ${print.clock(p.until)}.`;
  },
  'plan.chance-short': (p: { share: number; asked: number; members: number }, print) =>
    `You asked for ${print.chance(p.asked, p.members)}; nothing on this pit gets there as the file stands.`,
  'plan.chance-short-ways': (p: { asked: number; members: number }, print) =>
    `You asked for ${print.chance(p.asked, p.members)}; what would reach it stands under "What would help".`,
  'plan.chance-short-nearer': (p: { asked: number; members: number }, print) =>
    `You asked for ${print.chance(p.asked, p.members)}; what comes nearer stands under "What would help".`,
  'plan.tightest': (p: { letter: string; name: string; share: number; members: number }, print) =>
    `Tightest is ${p.letter} (${p.name}): ${print.chance(p.share, p.members)} alone.`,
  'plan.first-job': (p: { at: string; job: string }, print) =>
    `First job ${print.weekday(p.at)} ${print.clock(p.at)}: ${p.job}`,
  'plan.first-meat': (p: { letter: string; name: string; at: string }, print) =>
    `First meat on ${print.weekday(p.at)} ${print.clock(p.at)}: ${p.letter} (${p.name}).`,
  'plan.watch': (p: { from: string; to: string; reach: number; asleep: number }, print) => {
    const from = `${print.weekday(p.from)} ${print.clock(p.from)}`;
    const isOneDay = print.dayKey(p.from) === print.dayKey(p.to);
    const to = isOneDay ? print.clock(p.to) : `${print.weekday(p.to)} ${print.clock(p.to)}`;
    const nights =
      p.asleep > 0
        ? ` That costs ${print.durationS(p.asleep)} of sleep.`
        : ' None of that falls into sleeping hours.';
    return `The fire burns ${from} to ${to}; somebody looks at it every ${print.durationS(p.reach)} at the latest.${nights}`;
  },
  'plan.rules': (p: { rules: string }) =>
    `Rules: ${rulesName(p.rules as RulesProfile)} (rules: ${p.rules}). To change: rules: home-us, cater-us or uk in the file.`,
  'plan.rules-untold': (p: { rules: string }) =>
    `Rules: ${rulesName(p.rules as RulesProfile)}, because the file names none. To choose: rules: home-us, cater-us or uk in the file.`,
  'plan.informs': () =>
    'Pitwright informs and certifies nothing. The label, the local code and the licensed professional come first.',
  'plan.ranges': (p: { members: number; seed: number }, print) =>
    `Ranges hold 8 times in 10, over ${print.number(p.members)} tries of this cook (seed ${p.seed}). A single clock time is what to aim at.`,
  'plan.not-used': () => 'Asked and not used yet:',

  'plan.section.fit': () => 'What does not fit',
  'plan.section.reach': () => 'What would help',
  'plan.section.pieces': () => 'The pieces',
  'plan.section.together': () => 'Brought together',
  'plan.section.buy': () => 'To buy',
  'plan.section.night': () => 'Other ways, and what they cost',
  'plan.section.formulas': () => 'Sauce, rub, spritz',
  'plan.section.cautions': () => 'Cautions for the whole cook',

  'plan.section.ledger': () => 'Where its heat comes from and where it goes, of one item',
  'plan.section.inside': () => 'Its inside',
  'plan.why.in-all': () => 'to the table',
  'plan.section.why': (p: { letter: string; name: string }) => `Why: ${p.letter}, ${p.name}`,
  'plan.why.member': () =>
    'Told of one try, which is near the middle in its finish and in its stages, put on at the planned hour.',
  'plan.piece.bone-in': () => 'bone in',
  'plan.piece.place': (p: { place: string }) =>
    p.place === 'hot' ? 'hot end' : p.place === 'cool' ? 'cool end' : 'middle of the grate',
  'plan.piece.on': () => 'on',
  'plan.piece.latest': (p: { at: string }, print) => `can go on until ${print.clock(p.at)}`,
  'plan.piece.bite': (p: { bite: string; from: string; to: string; middle: string }, print) =>
    `${biteName(p.bite as Bite)} ${print.clockRange(p.from, p.to)}, half of the tries by ${print.aboutClock(p.middle)}`,
  'plan.piece.bite-open': (p: { bite: string; from: string; middle: string }, print) =>
    `${biteName(p.bite as Bite)} from ${print.aboutClock(p.from)}, half of the tries by ${print.aboutClock(p.middle)}; the late end is open`,
  'plan.piece.bite-late': (p: { bite: string; from: string }, print) =>
    `${biteName(p.bite as Bite)} from ${print.aboutClock(p.from)} at the soonest; fewer than half of the tries get there`,
  'plan.piece.bite-never': (p: { bite: string }) => `no try gets to ${biteName(p.bite as Bite)}`,
  'plan.piece.wait': (p: { low: number; high: number }, print) =>
    `then waits ${print.durationRangeS(p.low, p.high)} for the table`,
  'plan.piece.alone': (p: { share: number; members: number }, print) =>
    `${print.chance(p.share, p.members)} on time alone`,
  'plan.piece.miss-late': (p: { share: number; members: number }, print) =>
    `late ${print.timesIn(p.share, p.members)}`,
  'plan.piece.miss-held-too-long': (p: { share: number; members: number }, print) =>
    `held too long ${print.timesIn(p.share, p.members)}`,
  'plan.piece.miss-too-soft': (p: { share: number; members: number }, print) =>
    `too soft ${print.timesIn(p.share, p.members)}`,
  'plan.piece.miss-never': (p: { share: number; members: number }, print) =>
    `never there ${print.timesIn(p.share, p.members)}`,
  'plan.piece.never-bare': () =>
    'Wrapping it would end that: wrapped, it no longer gives its heat to drying.',
  'plan.piece.never-wrapped': () => 'A hotter pit, or an oven for the finish, would end that.',
  'plan.stage': (p: { kind: string; place?: string }) =>
    p.place === 'coals'
      ? stageName(p.kind as StageKind, true)
      : p.place && p.place !== 'pit'
        ? `${stageName(p.kind as StageKind)}, ${p.place}`
        : stageName(p.kind as StageKind),
  'plan.stage.head-clock': () => 'clock',
  'plan.stage.head-in': () => 'in',
  'plan.stage.head-stage': () => 'stage',
  'plan.stage.head-until': () => 'until',
  'plan.stage.head-middle': () => 'middle',
  'plan.stage.head-surface': () => 'surface',
  'plan.stage.until-table': () => 'the table asks for it',
  'plan.stage.until-time': (p: { after: Quantity }, print) => `it has had ${print.quantity(p.after)}`,
  'plan.stage.at-its-end': () => 'Middle and surface are at the end of each stage.',

  'plan.together.staggered': (p: { starts: string }) =>
    `Staggered so that they meet at the table: ${p.starts}.`,
  'plan.together.start': (p: { letter: string; at: string }, print) =>
    `${p.letter} on ${print.shortWeekday(p.at)} ${print.clock(p.at)}`,
  'plan.together.prompts': (p: { walks: number; prompts: number }) =>
    `${p.walks} walks to the pit in all, ${p.prompts} of them after the first rack is on.`,
  'plan.together.work': (p: { work: number; jobs: number }, print) =>
    `${p.jobs} jobs, ${print.durationS(p.work)} of work.`,
  'plan.alternative.advised': () => 'we would',
  'plan.alternative.told-above': () => 'More ways stand under "What would help".',
  'plan.alternative.buys': (p: { what: string }) => `buys: ${p.what}`,
  'plan.alternative.costs': (p: { what: string }) => `costs: ${p.what}`,
  'plan.alternative.chance': (p: { share: number; members: number }, print) =>
    `${print.chance(p.share, p.members)} on time`,
  'plan.alternative.first-on': (p: { at: string }, print) =>
    `first meat on ${print.shortWeekday(p.at)} ${print.clock(p.at)}`,
  'plan.alternative.walks': (p: { walks: number }) => `${p.walks} walks`,
  'plan.alternative.night': (p: { night: number }, print) =>
    p.night > 0 ? `${print.durationS(p.night)} awake in the night` : 'the whole night asleep',

  'plan.fit.cannot-all': (p: { count: number }) =>
    p.count === 1 ? 'This cannot be kept:' : 'These cannot all be kept; leave out any one and the rest can:',
  'plan.fit.way-out': (p: { demand: string; buys: string }) => `without "${p.demand}": ${p.buys}`,
  'plan.fit.advised': () => 'we would give this one up',

  'plan.buy.portions': (
    p: {
      gives: number;
      givesLow: number;
      givesHigh: number;
      eats: number;
      eatsLow: number;
      eatsHigh: number;
      people: number;
      short: number;
    },
    print,
  ) =>
    `Cooked and off the bone it gives about ${print.massKg(p.gives)} (${print.massRangeKg(p.givesLow, p.givesHigh)}); ${p.people} ${p.people === 1 ? 'person eats' : 'people eat'} about ${print.massKg(p.eats)} (${print.massRangeKg(p.eatsLow, p.eatsHigh)}). Somebody goes short at ${p.short < 0.01 ? 'fewer than 1' : Math.round(p.short * 100)} of 100 such tables.`,
  'plan.buy.left-over': (
    p: { low: number; high: number; middle: number; coldBy: string; eatBy: string },
    print,
  ) =>
    `About ${print.massKg(p.middle)} is left over (${p.low > 0 ? print.massRangeKg(p.low, p.high) : `up to ${print.massKg(p.high)}`}): in the cold by ${print.clock(p.coldBy)}, eaten by ${print.date(p.eatBy)} or frozen.`,
  'plan.buy.unknown': (p: { letters: string }) =>
    `Not counted, for nobody knows what they yield: ${p.letters}.`,

  'plan.formula.for': (p: { pieces: string }) => `for ${p.pieces}`,
  'plan.formula.for-all': () => 'for all pieces',
  'plan.formula.total': () => 'in all',
  'plan.formula.in-the-pan': () => 'in the pan',
  'plan.formula.stir-in': () => 'then, off the heat',
  'plan.formula.after-simmer': () => 'after the simmer',
  'plan.formula.simmer': (
    p: { low: number; high: number; left: Quantity; volume: Quantity; jars: number },
    print,
  ) =>
    `Simmer ${print.durationRangeS(p.low, p.high)} from a cold pan, until the pan holds ${print.quantity(p.left)}: ${print.quantity(p.volume)}, ${p.jars === 1 ? 'one jar' : `${count(p.jars)} jars`} of ${print.volumeM3(JAR_M3)}.`,
  'plan.formula.looks': (p: { pot: string; fridge: string }) =>
    `Stop when it ${THICKNESS[p.pot] ?? p.pot} in the pot; from the fridge it ${THICKNESS[p.fridge] ?? p.fridge}.`,
  'plan.formula.looks-doubt': (p: { thin: string; thick: string }) =>
    `It may turn out so that it ${THICKNESS[p.thin] ?? p.thin} or so that it ${THICKNESS[p.thick] ?? p.thick}: put a spoonful on a cold plate before you stop.`,

  'plan.day.head-clock': () => 'clock',
  'plan.day.head-to-table': () => 'to table',
  'plan.day.head-in': () => 'in',
  'plan.day.head-job': () => 'job',
  'plan.day.head-takes': () => 'takes',
  'plan.day.when': (p: { sign: string }) => `when ${p.sign}`,
  'plan.day.watch': (p: { from: string; to: string; reach: number }, print) =>
    `The fire, ${print.shortWeekday(p.from)} ${print.clock(p.from)} to ${print.shortWeekday(p.to)} ${print.clock(p.to)}: a look every ${print.durationS(p.reach)} at the latest, fuel when it wants it.`,
  'plan.day.table': (p: { at: string; until: string }, print) =>
    `The table, ${print.clockRange(p.at, p.until)}`,
  'plan.day.after-table': (p: { after: number }, print) => `${print.durationS(p.after)} after`,
  'plan.day.note': () =>
    'Signs come before the clock. "to table" counts down to the serving hour, "in" counts from the first meat on.',

  'plan.progress': (p: { done: number; of: number }) =>
    `${p.done} of ${p.of} tries of this cook are worked out.`,
  'plan.written': (p: { path: string }) =>
    `Wrote ${p.path}: two pages, the fridge and the pit. Print them in black and white.`,
  'plan.written-calendar': (p: { path: string }) =>
    `Wrote ${p.path}: the jobs as calendar events, with alarms for what cannot wait.`,
  'plan.no-file': (p: { path: string }) =>
    `${p.path} cannot be read. Name a cook file: npx pitwright plan FILE`,
  'plan.not-a-cook': (p: { path: string; kind: string }) =>
    `${p.path} holds a ${p.kind}, and a plan needs a cook: people, an hour, a pit.`,
  'plan.no-such-piece': (p: { asked: string; letters: string }) =>
    `No piece is called ${p.asked}. The letters are ${p.letters}.`,
  'plan.unknown-option': (p: { option: string }) =>
    `plan does not know ${p.option}. It takes FILE, --json, --units us|metric, --sheet OUT.html, --ics OUT.ics, --why PIECE, --members N, --seed N.`,
  'plan.problem-at': (p: { path: string; line: number; column: number; problem: string }) =>
    `${p.path}:${p.line}:${p.column} ${p.problem}`,
});
