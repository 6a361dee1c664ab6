import type { Quantity } from '@pitwright/model';
import { count } from '../figures/number.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

/** Jobs as a short noun phrase, for what clashes and what moves. */
const JOBS: Readonly<Record<string, string>> = {
  buy: 'the shopping',
  thaw: 'thawing',
  'make-sauce': 'making the sauce',
  'simmer-sauce': 'the simmer',
  'cool-sauce': 'cooling the sauce',
  'jar-sauce': 'the sauce in its jars',
  'warm-sauce': 'warming the sauce',
  'mix-rub': 'mixing the rub',
  'mix-spritz': 'mixing the spritz',
  'mix-brine': 'mixing the brine',
  brine: 'into the brine',
  'skin-and-trim': 'skinning and trimming',
  'cut-in-two': 'cutting in two',
  rub: 'rubbing',
  'out-of-fridge': 'out of the fridge',
  'light-fire': 'lighting the fire',
  'coal-bed': 'the coal bed',
  'light-oven': 'the oven on',
  'meat-on': 'on the pit',
  look: 'a look',
  spritz: 'a spritz',
  wrap: 'wrapping',
  unwrap: 'opening',
  glaze: 'the glaze',
  'test-bite': 'the test',
  'to-oven': 'into the oven',
  'to-coals': 'to the coals or away',
  'take-off': 'off the pit',
  rest: 'the rest',
  hold: 'the box',
  chill: 'into the cold',
  slice: 'cutting',
  serve: 'serving',
  clean: 'cleaning',
  'chill-leftovers': 'chilling the leftovers',
  'ash-out': 'the ash',
};

const EQUIPMENT: Readonly<Record<string, readonly [one: string, more: string]>> = {
  burner: ['burner', 'burners'],
  oven: ['oven', 'ovens'],
  'fridge-shelf': ['fridge shelf', 'fridge shelves'],
  grate: ['m² of grate', 'm² of grate'],
  pan: ['pan', 'pans'],
  probe: ['probe', 'probes'],
  box: ['box', 'boxes'],
};

/** `no oven`, `1 more oven`, `0.25 more fridge shelves`. */
function equipmentText(
  { kind, amount }: { kind: string; amount: number },
  print: Printer,
  more = '',
): string {
  const [one, several] = EQUIPMENT[kind] ?? [kind, kind];
  if (amount === 0) return `no${more} ${one}`;
  return `${print.number(amount, 2)}${more} ${amount === 1 ? one : several}`;
}

/** A job by its kind and the letters of its pieces: `wrapping B`. */
type Job = { job: string; pieces?: string };
const jobText = ({ job, pieces }: Job): string => `${JOBS[job] ?? job}${pieces ? ` ${pieces}` : ''}`;

const minutesText = (minutes: number, print: { exactDurationS: (s: number) => string }): string =>
  print.exactDurationS(minutes * 60);

/** What the run sheet says: signs, demands that clash and the ways out of them, other ways to cook it. */
export const scheduleMessages = messages({
  'schedule.spritz-unattended': (
    p: { letter: string; every: Quantity; count: number; from: string; to: string },
    print,
  ) =>
    p.count === 1
      ? `The spritz of ${p.letter} at ${print.aboutClock(p.from)} needs somebody at the pit, and nobody is: the jobs leave it out, though ${p.letter} is foreseen with it.`
      : `The spritz of ${p.letter} every ${print.quantity(p.every)} needs somebody at the pit each time, and from ${print.aboutClock(p.from)} to ${print.aboutClock(p.to)} nobody is: the jobs leave out ${p.count} of them, though ${p.letter} is foreseen with all.`,
  'sign.sauce-cold': () => 'it is cold to the hand',
  'sign.membrane-off': () => 'the skin is off the bone side',
  'sign.rub-even': () => 'no bare meat shows',
  'sign.pit-steady': () => 'the smoke is thin and the pit steady',
  'sign.coal-bed': () => 'the coals are grey at the edges',
  'sign.crust-dry': () => 'the crust is dry to the finger',
  'sign.colour': () => 'you pass: colour, wet or tacky, edges',
  'sign.bark-finger': () => 'the rub holds to a finger',
  'sign.bark-nail': () => 'the bark is set: a nail does not lift it',
  'sign.coat-tacky': () => 'the first coat is tacky',
  'sign.core': (p: { temperature: Quantity }, print) => `the middle reads ${print.quantity(p.temperature)}`,
  'sign.surface': (p: { temperature: Quantity }, print) =>
    `the surface reads ${print.quantity(p.temperature)}`,
  'sign.loss': (p: { share: Quantity }, print) => `it has lost ${print.quantity(p.share)} of its raw weight`,
  'sign.clock': (p: { after: Quantity }, print) => `it has had ${print.quantity(p.after)}`,
  'sign.clock-then-glaze': (p: { after: Quantity }, print) =>
    `it has had ${print.quantity(p.after)} and the meat has drawn back from the bone`,
  'sign.table': () => 'the table asks for it',
  'sign.bite-raw': () => 'it is warm',
  'sign.bite-firm': () => 'it is firm and done',
  'sign.bite-clean-bite': () => 'it bends and its surface stays whole',
  'sign.bite-tender': () => 'it bends and its surface cracks',
  'sign.bite-falls-off': () => 'it folds and tears',
  'sign.bite-pulls-apart': () => 'a probe slides in like into soft butter',
  'sign.probe-raw': () => 'it is warm',
  'sign.probe-firm': () => 'it is firm and done',
  'sign.probe-clean-bite': () => 'a pick goes in with some push',
  'sign.probe-tender': () => 'a pick slides in with a slight tug, in three places',
  'sign.probe-falls-off': () => 'a probe slides in like into soft butter',
  'sign.probe-pulls-apart': () => 'a probe slides in like into soft butter',
  'sign.ash-cold': () => 'it is cold all through',

  'demand.chance': (p: Job & { which: string }) => `the hour for ${jobText(p)} that the chance asks`,
  'demand.order': (p: { piece: string; after: string }) => `${p.piece} goes on only when ${p.after} are off`,
  'demand.asked-chance': (p: { share: number; members: number }, print) =>
    `${print.chance(p.share, p.members)} that all are on time`,
  'demand.hold': (p: { pieces: string; longest: number }, print) =>
    `${p.pieces} wait ${print.exactDurationS(p.longest)} at most`,
  'demand.table': (p: Job) => `${jobText(p)} within the serving window`,
  'demand.hand-busy': (p: { count: number }) =>
    p.count === 1 ? 'one pair of hands' : `${count(p.count)} pairs of hands`,
  'demand.hand-away': (p: { hand: string }) => `${p.hand} is away`,
  'demand.hand-asleep': (p: { hand: string }) => `${p.hand} sleeps`,
  'demand.capacity': (p: { kind: string; amount: number }, print) => equipmentText(p, print),
  'demand.lag': (
    p: Job & { which: string; afterJob: string; afterPieces?: string; minutes: number },
    print,
  ) =>
    `${jobText(p)} at ${p.which} ${minutesText(p.minutes, print)} after ${jobText({ job: p.afterJob, ...(p.afterPieces && { pieces: p.afterPieces }) })}`,
  'demand.earliest': (p: Job) => `${jobText(p)} not too early`,
  'demand.latest': (p: Job) => `${jobText(p)} not too late`,
  'demand.pinned': (p: Job) => `${jobText(p)} where you pinned it`,
  'demand.fire-watch': () => 'somebody within reach of the fire',

  'way-out.chance': (p: Job & { which: string; amount: number }, print) =>
    `${jobText(p)} ${minutesText(p.amount, print)} ${p.which === 'earliest' ? 'sooner' : 'later'}, at the price of the chance`,
  'way-out.order': (p: { from: number; to: number; members: number }, print) =>
    `${print.chance(p.to, p.members)} on time instead of ${print.chance(p.from, p.members)}`,
  'way-out.asked-chance': (p: { from: number; members: number }, print) =>
    `the order stays, with ${print.chance(p.from, p.members)} on time`,
  'way-out.hold': () => 'a warm box keeps them until the table',
  'way-out.table': (p: Job & { which: string; amount: number }, print) =>
    `${jobText(p)} ${minutesText(p.amount, print)} ${p.which === 'earliest' ? 'sooner' : 'later'}`,
  'way-out.hand-busy': (p: { amount: number }) =>
    p.amount === 1 ? 'a second pair of hands does it' : `${count(p.amount)} more pairs of hands do it`,
  'way-out.hand-away': (p: { hand: string; amount: number }, print) =>
    `${p.hand} back ${minutesText(p.amount, print)} sooner`,
  'way-out.hand-asleep': (p: { hand: string }) => `${p.hand} gets up for it`,
  'way-out.capacity': (p: { kind: string; amount: number }, print) =>
    `${equipmentText(p, print, ' more')}, or another place for it`,
  'way-out.lag': (p: Job & { which: string; amount: number }, print) =>
    `${minutesText(p.amount, print)} ${p.which === 'least' ? 'less' : 'more'} between them`,
  'way-out.earliest': (p: Job & { amount: number }, print) =>
    `${jobText(p)} ${minutesText(p.amount, print)} sooner`,
  'way-out.latest': (p: Job & { amount: number }, print) =>
    `${jobText(p)} ${minutesText(p.amount, print)} later`,
  'way-out.unproven': () => 'the rest then fits; we could not prove which demands clash',
  'way-out.pinned': (p: Job & { amount: number }, print) =>
    `${jobText(p)} let go by ${minutesText(p.amount, print)}`,
  'way-out.fire-watch': () => 'the fire is left alone',

  'alternative.tend': () => 'Tend the fire through the night, as the plan stands',
  'alternative.oven': (p: { letter: string }) =>
    `Wrap ${p.letter} when its bark is set and finish it in the oven`,
  'alternative.cut-in-two': (p: { letter: string }) => `Cut ${p.letter} in two before it goes on`,
  'alternative.hot-and-foil': (p: { letter: string }, print) =>
    `Start ${p.letter} early in the morning, ${print.differenceK(25 / 1.8)} hotter, in foil once its bark is set`,
  'alternative.box': (p: { letters: string }) => `Keep ${p.letters} in a warm box, in towels`,
  'alternative.until-bite': (p: { letters: string }) =>
    `Take ${p.letters} off by the bite and not by the clock`,
  'alternative.warmer': (p: { letters: string }, print) =>
    `Keep ${p.letters} in the oven at ${print.temperatureC(65)} in place of the box`,
  'alternative.together': (p: { count: number }) =>
    p.count === 2
      ? 'Both of these together'
      : 'Off by the bite, the racks in a box, the large piece in a warm oven, all at once',
  'alternative.hotter': (_: unknown, print) => `Run the pit ${print.differenceK(25 / 1.8)} hotter`,

  'price.as-asked': () => 'bark and smoke as the file asks',
  'price.sleep-won': (p: { seconds: number }, print) => `${print.durationS(p.seconds)} more sleep`,
  'price.sleep-lost': (p: { seconds: number }, print) => `${print.durationS(p.seconds)} of sleep`,
  'price.chance-won': (p: { from: number; to: number }, print) =>
    `${print.chance(p.to, 40)} on time in place of ${print.chance(p.from, 40)}`,
  'price.chance-lost': (p: { from: number; to: number }, print) =>
    `${print.chance(p.to, 40)} on time in place of ${print.chance(p.from, 40)}`,
  'price.softer-bark': () => 'a softer bark',
  'price.soft-crust': () => 'the crust softens in the box',
  'price.oven-taken': () => 'the oven is taken',
  'price.more-loss': () => 'more cut face: a little drier, more bark',
  'price.hot-pit': () => 'edges darken sooner; watch the sugar',
  'price.more-tests': () => 'a test every quarter of an hour at the end',

  'guests.allergens-unknown': (p: { formula: string }) =>
    `${p.formula} holds something whose allergens we do not know. Read its label.`,
  'guests.allergen-not-found': (p: { allergen: string }) =>
    `A guest named ${p.allergen}. Nothing in the formulas lists it; the labels decide.`,
  'guests.at-risk': () =>
    'Somebody at risk eats with you: nothing undercooked, nothing held warm below the rule, no leftovers of the day before.',
});
