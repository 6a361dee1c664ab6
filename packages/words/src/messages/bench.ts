import type { Quantity } from '@pitwright/model';
import { capital, listed } from '../figures/number.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

/** What a sauce of each look does. */
const LOOKS: Readonly<Record<string, string>> = {
  runs: 'runs',
  pours: 'pours',
  coats: 'coats a spoon',
  'holds-a-line': 'holds a line',
  spreads: 'spreads',
  stands: 'stands',
};
const look = (word: string): string => LOOKS[word] ?? word;

const ALLERGENS: Readonly<Record<string, string>> = {
  'tree-nut': 'tree nuts',
  nuts: 'tree nuts',
  crustacean: 'crustaceans',
  egg: 'eggs',
};

const TASTES: Readonly<Record<string, readonly [less: string, more: string]>> = {
  sweet: ['less sweet', 'sweeter'],
  sour: ['less sour', 'sourer'],
  salt: ['less salty', 'saltier'],
  heat: ['milder', 'hotter'],
  thick: ['thinner', 'thicker'],
};

const VESSELS: Readonly<Record<string, string>> = {
  'half-pint': 'small jars (about 250 mL)',
  pint: 'jars of about half a litre',
  pan: 'the pan as it is',
};
const SURROUNDS: Readonly<Record<string, string>> = {
  fridge: 'in the fridge',
  'stirred-ice-bath': 'in ice water, stirring',
};

const KINDS: Readonly<Record<string, string>> = {
  sauce: 'sauce',
  rub: 'rub',
  brine: 'brine',
  spritz: 'spritz',
};
const SYSTEMS: Readonly<Record<string, string>> = { us: 'US', uk: 'UK', au: 'Australian', metric: 'metric' };
const grams = (massG: number, print: Printer): string =>
  massG < 10 ? `${print.number(massG, 1)} g` : `${print.number(massG)} g`;
const share = (value: number): string => `${Math.round(value * 100)} %`;

interface Minutes {
  readonly p50: number;
  readonly p10: number;
  readonly p90: number;
}
/** Minutes as they stand on a timer: a simmer is watched, so they are not rounded to fives. */
const onTimer = ({ p50, p10, p90 }: Minutes): string => {
  const [middle, low, high] = [p50, p10, p90].map((s) => Math.round(s / 60));
  return `**${middle} minutes** (${low}–${high})`;
};

/** Hours, and days where nobody counts hours any more. */
const longTime = (hours: number): string =>
  hours < 72 ? `**${hours} h**` : `**${Math.round(hours / 24)} days**`;

const sentence = {
  'bench.answer.minutes': (p: Minutes) => onTimer(p),
  'bench.answer.simmer': (p: { lid: string; pot: string; fridge: string; late: string }) =>
    `on the burner${p.lid === 'open' ? ', lid off' : ''}${p.late === '' ? '' : `, then stir in ${p.late}`}. ${capital(look(p.pot))} hot, **${look(p.fridge)}** cold.`,
  'bench.answer.mixed': (p: { mass: number; fridge: string }, print: Printer) =>
    `**${grams(p.mass, print)}**, mixed and not cooked. From the fridge it **${look(p.fridge)}**.`,
  'bench.answer.rub': (p: { perKg: number; rub: number }, print: Printer) =>
    `**${print.number(p.perKg, 1)} g of salt** to a kilo of edible meat, from ${grams(p.rub, print)} of this on all of it.`,
  'bench.answer.brine': (p: { salt: number; water: Quantity; hours: number }, print: Printer) =>
    `**${grams(p.salt, print)} of salt** in ${print.quantity(p.water)} of water, nine tenths there after ${longTime(p.hours)}.`,
  'bench.answer.brine-made': (
    p: { salt: number; water: Quantity; even?: number; hours: number },
    print: Printer,
  ) =>
    `**${grams(p.salt, print)} of salt** in ${print.quantity(p.water)} of water. ${
      p.even === undefined
        ? 'No meat is told for it.'
        : `The meat comes to **${print.number(100 * p.even, 1)} %**, nine tenths of the way after ${longTime(p.hours)}.`
    }`,
  'bench.answer.spritz': (p: { mass: number; salt: number }, print: Printer) =>
    `**${grams(p.mass, print)}** of it, with ${p.salt < 0.05 ? 'no salt' : `${grams(p.salt, print)} of salt`} in it.`,
  'bench.answer.cannot': () => 'This formula does not work out yet.',
  'bench.answer.empty': (p: { name: string }) => `${p.name} is empty. Write a line, or paste a recipe.`,
  'bench.answer.none': () => 'No formula yet. Paste a recipe as it is written.',
  'bench.answer.first-look': () => 'Weighing it up.',
  'bench.answer.failed': () => 'This could not be worked out. What you wrote is kept.',
  'bench.minutes.meaning': () =>
    'Time from a cold pot on the burner until it is boiled down as far as asked.',
  'bench.minutes.source': () => 'Heat into the pot against what evaporates: docs/models/sauce.md, Simmer.',
  'bench.minutes.doubt': () =>
    'The range holds 8 times in 10. One weighing half-way takes most of the doubt out of it.',
};

const formula = {
  'bench.place': () => 'Bench',
  'bench.formulas': () => 'Formula',
  'bench.for': (p: { letters: string; people: number }) => `for ${p.letters}, ${p.people} at table`,
  'bench.for.pieces': () => 'For which pieces',
  'bench.for.piece': (p: { letter: string; name: string }) => `${p.letter}, ${p.name}`,
  'bench.what': () => 'what',
  'bench.written': () => 'as written',
  'bench.grams': () => 'g',
  'bench.about': (p: { measure: string }) => `about ${p.measure}`,
  'bench.raw': (p: { kind: string }) => (p.kind === 'sauce' ? 'in the pan' : 'in all'),
  'bench.finished': () => 'after the simmer',
  'bench.volume-jars': (p: { volume: Quantity; jars: number }, print: Printer) =>
    `${print.quantity(p.volume)}, ${p.jars} ${p.jars === 1 ? 'jar' : 'jars'}`,
  'bench.locked': () => 'locked',
  'bench.lock': () => 'Lock it',
  'bench.unlock': () => 'Unlock it',
  'bench.remove': () => 'Take it out',
  'bench.amount': (p: { name: string }) => `${p.name}: how much`,
  'bench.close-line': () => 'Close',
  'bench.hardly-matters': () => 'hardly matters',
  'bench.matters.not': () =>
    'Half of it or half as much again: few people tell. Weigh it roughly, or use what you have.',
  'bench.matters.aroma': () => 'Its smell is not worked out here. Keep to it.',
  'bench.matters.half': (p: { changes: string }) => `With half of it the sauce is ${p.changes}.`,
  'bench.taste-change': (p: { taste: string; steps: number }) =>
    `${Math.abs(p.steps) < 2 ? 'just noticeably ' : Math.abs(p.steps) < 4 ? 'clearly ' : 'much '}${TASTES[p.taste]?.[p.steps > 0 ? 1 : 0] ?? p.taste}`,
  'bench.listed': (p: { items: string }) => listed(p.items.split('|')),
  'bench.paste': () => 'Paste a recipe, or add lines',
  'bench.take-out': () => 'Take this formula out',
  'bench.name': () => 'Name of a new formula',
  'bench.kind': () => 'It is a',
  'bench.kind-name': (p: { kind: string }) => KINDS[p.kind] ?? p.kind,
  'bench.pasted-name': () => 'Pasted recipe',
  'bench.pack': (p: { name: string }) => `${p.name}: a pack weighs`,
  'bench.price': (p: { name: string }) => `${p.name}: a pack costs`,
  'bench.price.problem': () => 'Write the price as a number, like 2.40.',
};

const pasting = {
  'bench.paste.title': () => 'A recipe as it is written',
  'bench.paste.hint': () =>
    'One thing a line, in cups, spoons, ounces or grams. Nothing is guessed silently: what is open is asked.',
  'bench.paste.read': () => 'Read it',
  'bench.paste.leave': () => 'Leave it',
  'bench.paste.system': () => 'Cups, spoons and pints are',
  'bench.paste.system-name': (p: { system: string }) => SYSTEMS[p.system] ?? p.system,
  'bench.paste.nothing': () =>
    'No line with an ingredient is in there. Write one thing a line, like 120 g honey.',
  'bench.paste.count': (p: { lines: number; open: number }) =>
    p.open === 0
      ? `${p.lines} ${p.lines === 1 ? 'line' : 'lines'}, nothing left to ask.`
      : `${p.lines} ${p.lines === 1 ? 'line' : 'lines'}, **${p.open} ${p.open === 1 ? 'question' : 'questions'}** first.`,
  'bench.paste.is': (p: { name: string; mass: number }, print: Printer) =>
    `${p.name}, **${grams(p.mass, print)}**`,
  'bench.paste.by-weight': (p: { mass: number }, print: Printer) => `By weight, ${grams(p.mass, print)}`,
  'bench.paste.by-volume': (p: { mass: number }, print: Printer) => `Fluid ounces, ${grams(p.mass, print)}`,
  'bench.paste.this': (p: { name: string; mass: number }, print: Printer) =>
    `${p.name}, ${grams(p.mass, print)}`,
  'bench.paste.grams': (p: { mass: number }, print: Printer) => grams(p.mass, print),
  'bench.paste.what': (p: { line: number }) => `Line ${p.line}: what is it`,
  'bench.paste.pick': () => 'pick one',
  'bench.paste.how-much': (p: { line: number }) => `Line ${p.line}: how much`,
  'bench.paste.find': (p: { line: number }) => `Line ${p.line}: find it by another word`,
  'bench.paste.use': () => 'Use this',
  'bench.paste.left-out': () => 'left out',
  'bench.paste.leave-out': () => 'Leave it out',
  'bench.paste.put-in': () => 'Put it in again',
  'bench.paste.of-line': (p: { line: string }) => `: ${p.line}`,
  'bench.paste.aside': (p: { note: string }) => `Into the note, computed with nowhere: ${p.note}`,
  'bench.note': () => 'Note: how it is made',
  'bench.paste.as-new': () => 'Take it as a new formula',
  'bench.paste.into': (p: { name: string }) => `Add it to ${p.name}`,
};

/** What the solid and the dashed line of the balance are, by what stands beside the formula. */
const NOW_BESIDE: Readonly<Record<string, string>> = {
  swap: 'before the swap',
  aim: 'as it is',
  'as-written': 'as it is made',
};
const OTHER_BESIDE: Readonly<Record<string, string>> = {
  swap: 'after it',
  aim: 'as you want it',
  'as-written': 'as written',
};

const balance = {
  'bench.balance.sentence': (p: { scales: string; wanted: string }) =>
    `On the scales: ${p.scales}.${p.wanted}`,
  'bench.balance.on': (p: { name: string; value: string; unit: string }) => `${p.name} ${p.value} ${p.unit}`,
  'bench.balance.caption': (p: { beside: string }) =>
    `Solid: ${NOW_BESIDE[p.beside] ?? 'as written'}. Grey: our doubt. Dotted box: nobody tells the difference.${
      p.beside === '' ? '' : ` Dashed: ${OTHER_BESIDE[p.beside]}.`
    }`,
  'bench.scale.sweet': () => 'sweet',
  'bench.scale.sour': () => 'sour',
  'bench.scale.salt': () => 'salt',
  'bench.scale.heat': () => 'heat',
  'bench.scale.solids': () => 'solids',
  'bench.scale.hot': () => 'thick, hot',
  'bench.scale.cold': () => 'thick, cold',
  'bench.scale.hot-short': () => 'hot',
  'bench.scale.cold-short': () => 'cold',
  'bench.unit.sweet': () => '% sugar',
  'bench.unit.sour': () => 'pH',
  'bench.unit.salt': () => '%',
  'bench.unit.heat': () => 'SHU',
  'bench.unit.solids': () => '°Brix',
  'bench.unit.hot': () => 'Pa',
  'bench.head.scale': () => 'scale',
  'bench.head.value': (p: { beside: string }) => NOW_BESIDE[p.beside] ?? 'as written',
  'bench.head.doubt': () => 'doubt',
  'bench.head.wanted': () => 'same to the tongue',
  'bench.head.other': (p: { beside: string }) => OTHER_BESIDE[p.beside] ?? 'beside it',
  'bench.ph-unknown': () => 'pH unknown: too much of it has no known pH.',
  'bench.swap': () => 'Swap',
  'bench.swap.for': (p: { name: string }) => `${p.name} for`,
  'bench.swap.as-written': () => 'as it is',
  'bench.swap.another': () => 'another',
  'bench.swap.other': () => 'Something else',
  'bench.swap.dashed': (p: { name: string }) => `Dashed: with **${p.name}**.`,
  'bench.swap.moves': (p: { changes: string; minutes: number }) =>
    `${p.changes === '' ? 'Nobody will tell by the tongue' : `It gets ${p.changes}`}${
      p.minutes === 0
        ? '.'
        : `, and is ready ${Math.abs(p.minutes)} min ${p.minutes < 0 ? 'sooner' : 'later'}.`
    }`,
  'bench.swap.back': () => 'To bring it back:',
  'bench.swap.take': () => 'Take the swap over',
  'bench.swap.take-bare': () => 'Swap it and change nothing else',
};

const simmering = {
  'bench.simmer.title': (p: { pan: Quantity }, print: Printer) =>
    `Simmer, pan ${print.quantity(p.pan)} across`,
  'bench.simmer.sentence': (p: Minutes & { mass: number; look: string }, print: Printer) =>
    `${Math.round(p.p50 / 60)} minutes on the burner, from ${Math.round(p.p10 / 60)} to ${Math.round(p.p90 / 60)}; ${grams(p.mass, print)} left; it ${look(p.look)} hot.`,
  'bench.simmer.mass-head': () => 'g left',
  'bench.simmer.look-head': () => 'hot, it',
  'bench.simmer.target': (p: { minutes: number }) => `${p.minutes} min`,
  'bench.simmer.target-mass': (p: { mass: number }, print: Printer) => `${print.number(p.mass)} g left`,
  'bench.simmer.unit': () => 'min',
  'bench.simmer.head-time': () => 'on the burner',
  'bench.simmer.head-mass': () => 'left',
  'bench.simmer.head-look': () => 'hot, it',
  'bench.simmer.grip': () => 'Where it is stopped',
  'bench.simmer.grip-at': (p: Minutes & { mass: number; look: string }, print: Printer) =>
    `${Math.round(p.p50 / 60)} minutes, from ${Math.round(p.p10 / 60)} to ${Math.round(p.p90 / 60)}; ${grams(p.mass, print)} left; ${look(p.look)}`,
  'bench.simmer.sooner': () => 'Stop a minute sooner',
  'bench.simmer.later': () => 'Stop a minute later',
  'bench.simmer.to-mass': () => 'Or stop at this much left',
  'bench.simmer.to-look': () => 'Or stop when, hot, it',
  'bench.simmer.to-mass.problem': (p: { most: number; least: number }, print: Printer) =>
    `Write a mass between ${grams(p.least, print)} and ${grams(p.most, print)}.`,
  'bench.simmer.held': (p: Minutes & { mass: number; look: string }, print: Printer) =>
    `${onTimer(p)}, ${grams(p.mass, print)} left, ${look(p.look)} hot`,
  'bench.look': (p: { look: string }) => look(p.look),
  'bench.looks.title': () => 'What to look for',
  'bench.looks.pot': (p: { look: string; film: string }) => `**In the pot** it ${look(p.look)}.${p.film}`,
  'bench.looks.fridge': (p: { look: string; thin: string; thick: string }) =>
    `**From the fridge** it ${[look(p.look), ...new Set([p.thin, p.thick].filter((one) => one !== p.look).map(look))].join(', or it may turn out so that it ')}.`,
  'bench.looks.loosen': (p: { mass: number; look: string }, print: Printer) =>
    `Too thick? Stir in ${grams(p.mass, print)} of water, and it ${look(p.look)}.`,
  'bench.looks.brushed': (p: { look: string }, print: Printer) =>
    `**Brushed on** at ${print.temperatureC(60)} it ${look(p.look)}.`,
  'bench.looks.plate': (p: { diameter: number }, print: Printer) =>
    `A tablespoon on a cold plate spreads to ${print.lengthM(p.diameter)}.`,
};

const stove = {
  'bench.measure': () => 'Three quick measurements',
  'bench.measure.tare': () => 'The empty pan weighs',
  'bench.measure.weighed': () => 'Half-way, pan and sauce weigh',
  'bench.measure.after': () => 'that long after it went on',
  'bench.measure.plate': () => 'A tablespoon on a cold plate spreads to',
  'bench.measure.keep': () => 'Mend the forecast',
  'bench.measure.forget': () => 'Forget them',
  'bench.measure.left': (p: Minutes) =>
    `**${Math.round(p.p50 / 60)} minutes more** from the weighing (${Math.round(p.p10 / 60)}–${Math.round(p.p90 / 60)}).`,
  'bench.measure.both': () => 'A weighing needs both: what it weighs, and how long it has been on.',
  'bench.no-tare': () => 'A weighing needs the weight of the empty pan. Weigh it once.',
};

const LIDS: Readonly<Record<string, string>> = { open: 'off', ajar: 'ajar', tight: 'on' };
const SOURCES: Readonly<Record<string, string>> = {
  gas: 'gas',
  electric: 'electric',
  induction: 'induction',
};

const panAndBurner = {
  'bench.pan': () => 'Pan and burner',
  'bench.pan.across': () => 'Pan, across',
  'bench.pan.high': () => 'Pan, height',
  'bench.pan.power': () => 'Power of the burner',
  'bench.pan.power.hint': () => 'held at a simmer',
  'bench.pan.source': () => 'Burner',
  'bench.pan.source-name': (p: { source: string }) => SOURCES[p.source] ?? p.source,
  'bench.pan.lid': () => 'Lid',
  'bench.pan.lid-name': (p: { lid: string }) => LIDS[p.lid] ?? p.lid,
  'bench.pan.keep': () => 'Use this pan',
  'bench.simmer-it': () => 'Simmer it',
  'bench.scale-by': () => 'Scale all of it by this',
};

const after = {
  'bench.enough': () => 'Enough?',
  'bench.enough.yes': (p: { made: number; left: number }, print: Printer) =>
    `**Yes.** ${grams(p.made, print)} made, ${grams(p.left, print)} left over.`,
  'bench.enough.no': (p: { made: number; short: number; factor: number }, print: Printer) =>
    `**No, ${grams(p.short, print)} short** of what is wanted, with ${grams(p.made, print)} made. ${print.number(p.factor, 2)} times as much is enough.`,
  'bench.enough.glaze': (p: { mass: number }, print: Printer) =>
    `${grams(p.mass, print)} on the meat, two coats`,
  'bench.enough.table': (p: { mass: number; people: number }, print: Printer) =>
    `${grams(p.mass, print)} at the table for ${p.people}`,
  'bench.enough.jars': (p: { jars: number; size: Quantity }, print: Printer) =>
    `${p.jars} full ${p.jars === 1 ? 'jar' : 'jars'} of ${print.quantity(p.size)} if none is used`,
  'bench.enough.scale': (p: { factor: number }, print: Printer) =>
    `Make ${print.number(p.factor, 2)} times as much`,
  'bench.keeps': () => 'Keeping and cooling',
  'bench.keeps.use-by': (p: { low: number; high: number }) =>
    `Use within **${p.low} days** of making it${p.high > p.low ? `: the label says so. At its best it keeps ${p.high}.` : '.'}`,
  'bench.cooled': (p: { vessel: string; around: string; passes: number; firstS?: number }, print: Printer) =>
    `${capital(VESSELS[p.vessel] ?? p.vessel)} ${SURROUNDS[p.around] ?? p.around}: ${
      p.firstS === undefined ? 'never' : print.exactDurationS(p.firstS)
    } from ${print.temperatureC(57)} to ${print.temperatureC(21)}, ${
      p.passes ? 'quick enough' : 'too slow: 2 hours, and 6 down to the fridge'
    }.`,
  'bench.contains': () => 'What is in it',
  'bench.contains.some': (p: { allergens: string }) =>
    `Contains ${listed(p.allergens.split('|').map((word) => ALLERGENS[word] ?? word))}, by usual labels. Read yours.`,
  'bench.contains.none': () => 'No named allergen by usual labels. Read yours.',
  'bench.contains.unknown': (p: { names: string }) =>
    `Not known before the label is read: ${listed(p.names.split('|'))}.`,
  'bench.unknown': (p: { name: string; aspect: string; share: number }) =>
    `${p.name}: ${
      {
        ph: 'its pH',
        sugars: 'its sugars',
        'sugar-split': 'how its sugar splits',
        water: 'its water',
        allergens: 'its allergens',
        body: 'how thick it is',
      }[p.aspect] ?? p.aspect
    } is not known (${share(p.share)} of the whole).`,
  'bench.serving': (p: { mass: number }, print: Printer) => `A serving of ${grams(p.mass, print)}`,
  'bench.serving.energy': (p: { kcal: number }, print: Printer) =>
    `${print.number(p.kcal)} kcal (${print.number(p.kcal * 4.184)} kJ)`,
  'bench.serving.parts': (
    p: { fat: number; carbohydrate: number; sugars: number; protein: number; salt: number },
    print: Printer,
  ) =>
    `fat ${print.number(p.fat, 1)} g, carbohydrate ${print.number(p.carbohydrate, 1)} g, of it sugars ${print.number(p.sugars, 1)} g, protein ${print.number(p.protein, 1)} g, salt ${print.number(p.salt, 2)} g`,
  'bench.serving.alcohol': (p: { alcohol: number }, print: Printer) =>
    `alcohol ${print.number(p.alcohol, 1)} g`,
  'bench.cost': (p: { cost: number; perServing: number }, print: Printer) =>
    `It costs ${print.number(p.cost, 2)}, ${print.number(p.perServing, 2)} a serving.`,
  'bench.cost.without': (p: { names: string }) => `Without ${listed(p.names.split('|'))}: no price told.`,
  'bench.cost.none': () => 'No price told yet: open a line and write what a pack costs.',
  'bench.print': () => 'On paper',
  'bench.print.label': () => 'Print the jar label',
  'bench.print.card': () => 'Print the recipe card',
  'bench.label.made': () => 'Made',
  'bench.label.use': (p: { days: number }) => `Use within ${p.days} days. Keep cold.`,
  'bench.label.net': (p: { mass: number }, print: Printer) => `${grams(p.mass, print)}`,
  'bench.label.ingredients': (p: { names: string }) => `Ingredients: ${p.names}.`,
  'bench.label.demo': () => 'Demo',
  'bench.card.steps': (p: { late: string }) =>
    p.late === ''
      ? 'Weigh everything into the pan. Simmer, stirring, until it looks as said. Fill clean jars, cool them quickly, keep them cold.'
      : `Weigh everything else into the pan. Simmer, stirring, until it looks as said. Take it off, then stir in ${p.late}. Fill clean jars, cool them quickly, keep them cold.`,
};

const SALT_FROM: Readonly<Record<string, string>> = {
  rub: 'from the rub, a light coat',
  spritz: 'from the spritz, half of it running off',
  glaze: 'from two coats of glaze',
  table: 'from sauce at the table',
};

const onMeat = {
  'bench.salt': () => 'Salt, all together',
  'bench.salt.sum': (p: { perKg: number; perServing: number }, print: Printer) =>
    `**${print.number(p.perKg, 1)} g** to a kilo as served, ${print.number(p.perServing, 1)} g a person.`,
  'bench.salt.part': (p: { from: string; mass: number }, print: Printer) =>
    `${grams(p.mass, print)} ${SALT_FROM[p.from] ?? p.from}`,
  'bench.salt.unknown': () =>
    'What was in the meat already, and what is salted beside these formulas, is not counted.',
  'bench.meat': () => 'On the meat',
  'bench.meat.coating': () => 'Coating',
  'bench.coating': (p: { coating: string }) => p.coating,
  'bench.meat.needed': (p: { low: number; middle: number; high: number; made: number }, print: Printer) =>
    `${grams(p.middle, print)} (${print.number(p.low)}–${print.number(p.high)}) for all of it; ${grams(p.made, print)} made.`,
  'bench.meat.lot': (p: { meat: Quantity; edible: Quantity }, print: Printer) =>
    `${print.quantity(p.meat)} of raw meat, ${print.quantity(p.edible)} without bone.`,
  'bench.meat.salt-share': (p: { share: number }) => `${share(p.share)} of it is salt.`,
  'bench.meat.rest': () => 'Salted that long before',
  'bench.meat.thick': () => 'Thickest place',
  'bench.meat.even': (p: { days: number }) =>
    p.days < 2
      ? 'Even through and through within a day or two.'
      : `Even through and through only after ${p.days} days.`,
  'bench.brine.put': (p: { mass: number }, print: Printer) => `Put ${grams(p.mass, print)} of salt in`,
  'bench.brine.water': () => 'Water',
  'bench.brine.strength': () => 'Salt in the end, in meat and brine alike',
  'bench.brine.steps': (p: { half: number }) =>
    `Half of it is in after ${longTime(p.half)}; it never goes over.`,
  'bench.problem.write': (p: { example: string }) => `Write it like ${p.example}.`,
};

/** The bench: formulas by weight and what they become. `**…**` is set heavy. */
export const benchMessages = messages({
  ...sentence,
  ...formula,
  ...pasting,
  ...balance,
  ...simmering,
  ...stove,
  ...panAndBurner,
  ...after,
  ...onMeat,
});
