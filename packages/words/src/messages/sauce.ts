import type { Quantity } from '@pitwright/model';
import { spokenIngredient } from '../names/ingredients.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

interface OfInput {
  readonly input: string;
}
interface Named {
  readonly name: string;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
/** A computed pH is good to ±0.2 and never shown finer than one decimal. */
const phText = (ph: number, print: Printer): string => print.number(ph, 1);

/** What the sauce room cannot compute when it is asked for a figure by name. */
const calcProblems = {
  'sauce.more-evaporated-than-water': (p: OfInput & { water: Quantity }, print: Printer) =>
    `${p.input}: the batch holds only ${print.quantity(p.water)} of water, drive off less than that`,
  'sauce.more-evaporated-than-mass': (p: OfInput & { mass: Quantity }, print: Printer) =>
    `${p.input}: there are only ${print.quantity(p.mass)} in the pot, drive off less than that`,
  'sauce.not-in-the-mix': (p: OfInput & { text: string }) =>
    `${p.input}: ${p.text} is no line of the mix, name one that is`,
  'sauce.concentration-unread': (p: OfInput & { text: string }) =>
    `${p.input}: ${p.text} is no concentration, write it as 0.1 mol/L or 0.5 g/100 mL`,
  'sauce.never-boils': (p: OfInput) =>
    `${p.input}: what reaches the pot does not make up for what its wall loses, so it never boils; give more power`,
  'sauce.surface-boils': (p: OfInput) =>
    `${p.input}: water boils there at this pressure, give a lower temperature or ask for boil-off-rate`,
  'sauce.spice-over-batch': (p: OfInput & { mass: Quantity }, print: Printer) =>
    `${p.input}: the spice is part of the batch of ${print.quantity(p.mass)}, give a smaller mass or a larger batch`,
  'sauce.glaze-already-set': (p: OfInput) =>
    `${p.input}: this is over the solids at which it counts as set, give less or raise set-solids`,
};

/** What is wrong with a formula, and what would be right. */
const formulaProblems = {
  'sauce.unknown-ingredient': (p: Named) =>
    `${p.name} is not in the catalogue. Pick another word, or add it from its label.`,
  'sauce.unknown-ingredient-near': (p: Named & { near: string }) =>
    `${p.name} is not in the catalogue. Did you mean ${p.near}? Else add it from its label.`,
  'sauce.negative-amount': (p: Named & { amount: Quantity }, print: Printer) =>
    `${p.name}: ${print.quantity(p.amount)} is less than nothing. Write how much goes in.`,
  'sauce.amount-not-a-number': (p: Named) =>
    `${p.name}: the amount is not a number. Write it as 120 g or 1/2 cup.`,
  'sauce.density-missing': (p: Named & { amount: Quantity }, print: Printer) =>
    `${p.name}: nobody knows what ${print.quantity(p.amount)} of it weighs. Weigh it once, or give its density.`,
  'sauce.no-lines': (p: Named) => `${p.name} has no lines yet. Add one ingredient with its amount.`,
  'sauce.no-mass': (p: Named) => `${p.name} weighs nothing. Give at least one line an amount.`,
  'sauce.all-late': (p: Named) =>
    `${p.name}: everything goes in after the simmer, so the pot is empty. Leave at least one line at the start.`,
  'sauce.variant-lost-line': (p: Named & { variant: string }) =>
    `“${p.variant}” changes a line of ${p.name} that is no longer there. Open the variant and keep it as you want it, or make it as written.`,
  'sauce.no-cures': () =>
    'Curing salt is not worked out here. A little too much poisons, a little too little does not protect, and it moves a hundred times slower than salt. Use a published cure table, weighed to 0.1 g, never by spoon.',
  'sauce.boils-dry': (p: { evaporated: Quantity; water: Quantity }, print: Printer) =>
    `${print.quantity(p.evaporated)} cannot boil off: there are only ${print.quantity(p.water)} of water in it. Boil off less, or start with more liquid.`,
  'sauce.pan-overflows': (p: { volume: Quantity; holds: Quantity }, print: Printer) =>
    `${print.quantity(p.volume)} do not fit this pan. It takes ${print.quantity(p.holds)} with room for foam: use a larger pan, or cook it in parts.`,
};

/** What was taken because nobody said, and what to mind at the stove. */
const atTheStove = {
  'sauce.pan-assumed': (p: { diameter: Quantity }, print: Printer) =>
    `No pan is named, so one of ${print.quantity(p.diameter)} across was taken.`,
  'sauce.flame-assumed': () =>
    'No power is named, so the flame is taken as turned down until it just simmers.',
  'sauce.no-room-for-foam': (p: { volume: Quantity }, print: Printer) =>
    `${print.quantity(p.volume)} fill this pan more than two thirds: it will foam over. Use a larger one, or watch it.`,
  'sauce.may-never-get-there': (p: { never: number }) =>
    `In ${percent(p.never)} of the cases this flame never gets it there. Take the lid off, a wider pan, or more power.`,
  'sauce.never-thickens': () =>
    'There is nothing in it that thickens by boiling down. Boil it for a taste, and use a little xanthan or starch for body.',
  'sauce.would-be-candy': () =>
    'To be that thick it would be over 70 % solids: candy. Stop earlier, and add a thickener.',
  'sauce.bottom-catches': (p: { gentle: Quantity; share: number; stir: Quantity }, print: Printer) =>
    `The bottom catches near the end. Turn it down to ${percent(p.share)} for the last ten minutes and stir every ${print.quantity(p.stir)}.`,
  'sauce.bottom-burns': (p: { gentle: Quantity; share: number; stir: Quantity }, print: Printer) =>
    `It burns on at this power once it is thick. Turn it down to ${percent(p.share)} before that and stir every ${print.quantity(p.stir)}.`,
};

/** How long it keeps: cold, whatever its pH. */
const keepingWords = {
  'sauce.keep-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}: sour enough to keep for weeks in a clean jar in the fridge.`,
  'sauce.keep-fairly-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}: sour enough to keep for a week or two in a clean jar in the fridge.`,
  'sauce.keep-not-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}, not sour enough to keep: treat it like any cooked dish, 3 to 4 days in the fridge.`,
  'sauce.keep-ph-unknown': () =>
    'Its acidity is not known: treat it like any cooked dish, 3 to 4 days in the fridge.',
  'sauce.keep-fresh-in-it': (p: Named) => `${p.name} is in it: 3 to 4 days in the fridge.`,
  'sauce.keep-cold': () =>
    'Keep it cold. This is an estimate, and no estimate makes a jar safe for the shelf: for that use a tested procedure.',
};

/** Words in a list parted by `|`. */
/** A mass as a scale shows it: grams, a decimal under ten. */
const grams = (q: Quantity): string => `${Number((q.si * 1000).toPrecision(q.si < 0.01 ? 2 : 3))} g`;
const SYSTEM_NAMES: Readonly<Record<string, string>> = {
  us: 'US (cup 237 mL, tablespoon 15 mL, pint 473 mL)',
  uk: 'UK (tablespoon 15 mL, cup 250 mL, pint 568 mL)',
  au: 'Australian (tablespoon 20 mL, cup 250 mL)',
  metric: 'metric (tablespoon 15 mL, cup 250 mL)',
};
const UNIT_NAMES: Readonly<Record<string, string>> = { tbsp: 'tablespoon', tsp: 'teaspoon', cup: 'cup' };

/** What a pasted line leaves open: a question, or how it was read. */
const pasted = {
  'sauce.paste-ounce': (p: Named & { weight: Quantity; volume: Quantity }) =>
    `Ounces of ${p.name}: weighed they are ${grams(p.weight)}, as fluid ounces ${grams(p.volume)}. Which?`,
  'sauce.paste-label-weight': (p: Named & { weight: Quantity; volume: Quantity }) =>
    `Cans and jars of this are labelled by weight, so ${grams(p.weight)}; as fluid ounces it would be ${grams(p.volume)}.`,
  'sauce.paste-label-volume': (p: Named & { weight: Quantity; volume: Quantity }) =>
    `Drinks are labelled by volume, so ${grams(p.volume)}; by weight it would be ${grams(p.weight)}.`,
  'sauce.paste-which': (p: Named) => `Which ${p.name}?`,
  'sauce.paste-which-salt': () => 'Which salt? By the spoon one kind weighs up to twice as much as another.',
  'sauce.paste-unknown': (p: Named) =>
    `${p.name}: not in the catalogue. Pick what is near, or add it from its label.`,
  'sauce.paste-did-you-mean': (p: Named & { text: string }) => `${p.text}: do you mean ${p.name}?`,
  'sauce.paste-near': (p: Named & { text: string }) => `${p.text} is taken as ${p.name}.`,
  'sauce.paste-taken-as': (p: Named & { words: string }) =>
    `“${p.words}” is not understood. Is it ${p.name}?`,
  'sauce.paste-no-amount': (p: Named) => `${p.name}: how much?`,
  'sauce.paste-to-taste': (p: Named) => `${p.name} to taste: weigh what you add, or leave it out.`,
  'sauce.paste-how-large': (p: Named & { vessel: string }) => `How much ${p.name} is in the ${p.vessel}?`,
  'sauce.paste-no-piece': (p: Named & { unit: string }) =>
    p.unit === '' ? `${p.name}: in what unit?` : `${p.name}: what does one ${p.unit} weigh?`,
  'sauce.paste-piece': (p: Named & { mass: Quantity; low: Quantity; high: Quantity }) =>
    p.low.si === p.high.si
      ? `One counts as ${grams(p.mass)}.`
      : `One counts as ${grams(p.mass)}; they run from ${grams(p.low)} to ${grams(p.high)}.`,
  'sauce.paste-habit': (p: Named & { unit: string; mass: Quantity }) =>
    `A ${p.unit} is a habit, not a measure: taken as ${grams(p.mass)}, half or twice as likely.`,
  'sauce.paste-fill': (p: { fill: number; mass: Quantity }) =>
    `${p.fill > 0 ? 'Heaped' : 'Scant'} counts as ${Math.abs(p.fill)} % ${p.fill > 0 ? 'more' : 'less'}: ${grams(p.mass)}.`,
  'sauce.paste-packed': (p: { packed: Quantity; loose: Quantity }) =>
    `Taken as packed, ${grams(p.packed)}; scooped loose it would be ${grams(p.loose)}.`,
  'sauce.paste-amounts-disagree': (p: { first: Quantity; second: Quantity }) =>
    `Two amounts that do not agree: ${grams(p.first)} and ${grams(p.second)}. Which?`,
  'sauce.paste-either': (p: { first: string; second: string }) =>
    `${p.first} or ${p.second}: which do you use?`,
  'sauce.paste-two-in-one': (p: { first: string; second: string }) =>
    `Two things in one line: ${p.first}, and ${p.second}. Write them on their own.`,
  'sauce.paste-thousands': (p: { first: number; second: number }) => `Is that ${p.first} or ${p.second}?`,
  'sauce.paste-nothing': () => 'The amount is nothing. How much?',
  'sauce.paste-letter': (p: { unit: string }) => `The letter is read as ${UNIT_NAMES[p.unit] ?? p.unit}.`,
  'sauce.paste-range': (p: { low: number; high: number }) => `The middle of ${p.low} to ${p.high} is taken.`,
  'sauce.paste-more': () => 'More of it may go in later; only the amount written is counted.',
  'sauce.paste-minus': () => 'There is a minus before the amount. Is it a dash, or less than nothing?',
  'sauce.paste-stray-number': (p: { number: string }) => `What does the ${p.number} stand for?`,
  'sauce.paste-cut': (p: { measure: string }) => `By volume it depends on the cut: counted as ${p.measure}.`,
  'sauce.paste-ground-herb': (p: Named) =>
    `${p.name} ground weighs half as much again a spoon as the leaf. Weigh it, or say which.`,
  'sauce.paste-cure': () =>
    'Curing salt is not worked out here: use a published cure table, weighed to 0.1 g, never by spoon.',
  'sauce.paste-very-much': (p: Named & { mass: Quantity }, print: Printer) =>
    `${print.quantity(p.mass)} of ${p.name}: is that right?`,
  'sauce.paste-system': (p: { system: string }) =>
    `Cups, spoons and pints are taken as ${SYSTEM_NAMES[p.system] ?? p.system}. Change it if the recipe is from elsewhere.`,
};

/** What a weighing or a puddle says, and when it can say nothing. */
const measured = {
  'sauce.tare-over-weight': (p: { weighed: Quantity; tare: Quantity }) =>
    `${grams(p.weighed)} with an empty pan of ${grams(p.tare)} leaves nothing. Weigh the full pan again, and the empty one dry.`,
  'sauce.nothing-simmers': () => 'Nothing simmers in this formula, so there is no time to mend.',
  'sauce.nothing-gone-yet': (p: { mass: Quantity }) =>
    `It weighed ${grams(p.mass)} at the start. Weigh it when some of it has boiled off, without the pan.`,
  'sauce.already-there': (p: { mass: Quantity }) => `It is there: ${grams(p.mass)} was wanted. Take it off.`,
  'sauce.weighing-too-fast': () =>
    'No flame takes off that much in that time. Check the tare of the pan and when it went on.',
  'sauce.plate-size': (p: { diameter: Quantity }, print: Printer) =>
    `A puddle of ${print.quantity(p.diameter)} is no tablespoon of sauce. Measure across it after a minute, on a flat cold plate.`,
  'sauce.plate-no-yield': () => 'It runs like water, so a puddle says nothing. Use the spoon.',
  'sauce.plate-strange': (p: { factor: number }, print: Printer) =>
    `That is ${print.number(p.factor, 1)} times as stiff as foreseen. Was it a level tablespoon, and cold?`,
};

const FIELD_NAMES: Readonly<Record<string, string>> = {
  fatG: 'fat',
  carbohydrateG: 'carbohydrate',
  proteinG: 'protein',
  sodiumMg: 'salt or sodium',
};

/** What a label must say. */
const labels = {
  'sauce.label-no-serving': (p: Named) =>
    `${p.name}: for how many grams are these figures? Copy the serving size.`,
  'sauce.label-negative': (p: Named) => `${p.name}: a figure on a label is never less than nothing.`,
  'sauce.label-too-little': (p: Named & { field: string }) =>
    `${p.name}: the label’s ${FIELD_NAMES[p.field] ?? p.field} is missing. Fat, carbohydrate, protein and salt are all needed: what they leave is water.`,
  'sauce.label-sugars-over': (p: Named) =>
    `${p.name}: there is more sugar than carbohydrate. One of the two is miscopied.`,
  'sauce.label-over-whole': (p: Named) =>
    `${p.name}: its parts weigh more than the serving. Check whether the figures are per serving or per 100 g.`,
};

const TASTE_MORE: Readonly<Record<string, string>> = {
  sweet: 'sweeter',
  sour: 'sourer',
  salt: 'saltier',
  heat: 'hotter',
  thick: 'thicker',
};
const TASTE_LESS: Readonly<Record<string, string>> = {
  sweet: 'less sweet',
  sour: 'less sour',
  salt: 'less salty',
  heat: 'milder',
  thick: 'thinner',
};
interface Shifted {
  readonly name: string;
  readonly change: Quantity;
  readonly to: Quantity;
}
const stepsText = (steps: number): string => (steps < 2 ? 'just noticeably' : steps < 4 ? 'clearly' : 'much');

/** The least change that brings a sauce back. */
const rebalanced = {
  'sauce.rebalance-more': (p: Shifted) =>
    `${grams(p.change)} more ${spokenIngredient(p.name)}, ${grams(p.to)} in all.`,
  'sauce.rebalance-less': (p: Shifted) =>
    `${grams(p.change)} less ${spokenIngredient(p.name)}, ${grams(p.to)} in all.`,
  'sauce.rebalance-add': (p: Shifted) => `Add ${grams(p.to)} of ${spokenIngredient(p.name)}.`,
  'sauce.rebalance-leave-out': (p: Shifted) => `Leave out the ${spokenIngredient(p.name)}.`,
  'sauce.rebalance-nothing': () => 'Nobody will tell the two apart. Change nothing.',
  'sauce.rebalance-still-more': (p: { taste: string; steps: number }) =>
    `It stays ${stepsText(p.steps)} ${TASTE_MORE[p.taste]}: unlock a line that brings less of it.`,
  'sauce.rebalance-still-less': (p: { taste: string; steps: number }) =>
    `It stays ${stepsText(p.steps)} ${TASTE_LESS[p.taste]}: unlock or add a line that brings more of it.`,
  'sauce.aim-too-thick-raw': () =>
    'It is thicker than that before it simmers. Put more of its liquid in first.',
  'sauce.aim-never-so-thick': () =>
    'Boiling alone does not get it so thick. Put tomato paste, fruit or a little starch in.',
  'sauce.rebalance-no-mass': (p: { raw: Quantity; wanted: Quantity }) =>
    `${grams(p.raw)} of this cannot become ${grams(p.wanted)}. Make a smaller batch, or add liquid.`,
  'sauce.rebalance-all-locked': () => 'Every line is locked. Unlock at least one.',
  'sauce.rebalance-no-answer': () =>
    'No change within these lines gets there. Unlock more of them, or allow sugar and vinegar.',
};

const perKg = (q: Quantity): string => `${Math.round(q.si * 10000) / 10} g`;
const SOURCE_NAMES: Readonly<Record<string, string>> = {
  enhanced: 'salt solution already in the meat',
  table: 'sauce at the table',
};

/** Salt on and in the meat. */
const salted = {
  'sauce.rub-salty': (p: { salt: Quantity }) =>
    `${perKg(p.salt)} of salt to a kilo of edible meat: salty. Use less of it, or a rub with less salt.`,
  'sauce.rub-mild': (p: { salt: Quantity }) =>
    `${perKg(p.salt)} of salt to a kilo of edible meat: mild. Salt the meat as well.`,
  'sauce.rub-usual': (p: { salt: Quantity }) =>
    `${perKg(p.salt)} of salt to a kilo of edible meat: as usual.`,
  'sauce.brine-outside': (p: { depth: Quantity }, print: Printer) =>
    `The salt gets ${print.quantity(p.depth)} deep in that time. It seasons the outside, not the middle, however much is put on.`,
  'sauce.brine-through': (p: { depth: Quantity }, print: Printer) =>
    `Salted nearly through, ${print.quantity(p.depth)} from each side.`,
  'sauce.brine-draws-water': () =>
    'So strong a brine draws water out of the meat. Use more water for the same salt.',
  'sauce.salt-adds-up': (p: { salt: Quantity; part: string }) =>
    `All together ${perKg(p.salt)} of salt to a kilo as served: salty. Most of it comes from the ${SOURCE_NAMES[p.part] ?? p.part}.`,
};

/** Cooling, and what touched raw meat. */
const cooled = {
  'sauce.cools-in-time': (p: { first: Quantity }, print: Printer) =>
    `The middle is down to ${print.temperatureC(21)} ${print.quantity(p.first)} after it was ${print.temperatureC(57)}: quick enough.`,
  'sauce.cools-too-slowly': (p: { first: Quantity }, print: Printer) =>
    `Too slow: ${print.quantity(p.first)} from ${print.temperatureC(57)} to ${print.temperatureC(21)} in the middle, where 2 hours is the limit. Smaller jars, or an ice bath and a spoon first.`,
  'sauce.never-cools': () => 'It never gets cold enough there. Use the fridge or an ice bath.',
  'sauce.clean-portion': () => 'Keep back a clean portion for the table before the first brush goes in.',
  'sauce.boil-the-brush-bowl': () =>
    'What is left in the brushing bowl has met raw meat: boil it, or throw it away. Never back into a jar.',
};

export const sauceMessages = messages({
  ...pasted,
  ...measured,
  ...labels,
  ...rebalanced,
  ...salted,
  ...cooled,
  ...calcProblems,
  ...formulaProblems,
  ...atTheStove,
  ...keepingWords,
});
