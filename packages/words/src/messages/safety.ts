import type { Quantity } from '@pitwright/model';
import { listed } from '../figures/number.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const celsius = (q: Quantity): number => q.si - 273.15;
const at = (q: Quantity, print: Printer): string => print.temperatureC(celsius(q));
const during = (q: Quantity, print: Printer): string => print.exactDurationS(q.si);

/** Words of the two lists of allergens as a label has them. */
export const ALLERGEN_WORDS: Readonly<Record<string, string>> = {
  'tree-nut': 'tree nuts',
  nuts: 'tree nuts',
  crustacean: 'crustaceans',
  egg: 'eggs',
};
const allergens = (words: string): string =>
  listed(words.split('|').map((word) => ALLERGEN_WORDS[word] ?? word));
const keys = (words: string): string => listed(words.split('|'));

interface Chills {
  readonly around: string;
  readonly first: Quantity;
  readonly both: Quantity;
}
const CHILLER: Readonly<Record<string, string>> = { fridge: 'in the fridge', 'ice-bath': 'in ice water' };

/** Safety statements: what is so, then what to do. They inform and never clear. */
export const safetyMessages = messages({
  'safety.min-temp': (p: { temperature: Quantity }, print) =>
    `At least ${at(p.temperature, print)} in the coldest part; tenderness comes later.`,
  'safety.min-temp-rest': (p: { temperature: Quantity; time: Quantity }, print) =>
    `At least ${at(p.temperature, print)} in the coldest part and ${during(p.time, print)} of rest; tenderness comes later.`,
  'safety.min-temp-hold': (p: { temperature: Quantity; time: Quantity }, print) =>
    `At least ${at(p.temperature, print)} in the coldest part, kept there for ${during(p.time, print)}; tenderness comes later.`,
  'safety.poultry-time': (p: { temperature: Quantity; time: Quantity; minimum: Quantity }, print) =>
    `Plants count time as well: a bird of unknown fat is asked ${during(p.time, print)} once every part is at ${at(p.temperature, print)}. The home advice is still ${at(p.minimum, print)}.`,
  'safety.cold-spot': () =>
    'One probe can miss the cold spot: check two other places, away from bone, before serving.',
  'safety.non-intact': (p: { limit: Quantity }, print) =>
    `Cut into, injected or rolled, so germs may be inside: its centre counts, and it warms within ${during(p.limit, print)}.`,
  'safety.frozen-core': () => 'Still frozen inside: thaw it fully in the refrigerator before it goes on.',
  'safety.warm-start': (p: { start: Quantity; cold: Quantity }, print) =>
    `It starts at ${at(p.start, print)}: keep it at ${at(p.cold, print)} or below until it goes on.`,
  'safety.wrap-steam': (p: { temperature: Quantity }, print) =>
    `Juice in the wrap is above ${at(p.temperature, print)}: open the far side first, face away.`,
  'safety.coals-colour': () =>
    'Over the coals the outside browns long before the middle is done: go by the thermometer in the coldest part, never by colour. Tongs that turned it raw are washed before they touch it cooked.',
  'safety.flare-up': () =>
    'Fat on coals flares up: keep a place without coals free, move it there, shut the lid. No water; stay by it.',
  'safety.hold-warm': (p: { least: Quantity }, print) =>
    `Hold it at ${at(p.least, print)} or more in its coldest part, which is outside and at the thin end.`,
  'safety.hold-low': (p: { at: Quantity; least: Quantity }, print) =>
    `${at(p.at, print)} is below a hot hold of ${at(p.least, print)}: hold it hotter, or serve soon.`,
  'safety.chill-kept': (p: Chills, print) =>
    `Whole ${CHILLER[p.around] ?? p.around} its middle takes ${print.durationS(p.first.si)} from ${print.temperatureC(57.2)} to ${print.temperatureC(21.1)} and ${print.durationS(p.both.si)} to ${print.temperatureC(5)}: inside two hours and six.`,
  'safety.chill-slow': (p: Chills, print) =>
    `Whole ${CHILLER[p.around] ?? p.around} its middle takes ${print.durationS(p.first.si)} from ${print.temperatureC(57.2)} to ${print.temperatureC(21.1)} and ${print.durationS(p.both.si)} to ${print.temperatureC(5)}; two hours and six are the rule. Pull or slice it into flat pans first${p.around === 'fridge' ? ', or chill it in ice water' : ''}.`,

  'safety.allergens': (p: { allergens: string }) =>
    `Contains ${allergens(p.allergens)} by usual labels: read yours.`,
  'safety.allergens-named': (p: { allergens: string }) =>
    `A guest named ${allergens(p.allergens)}, and it is in here: leave it out or give that guest something else.`,
  'safety.allergens-unknown': (p: { ingredients: string }) =>
    `Allergens of ${keys(p.ingredients)} are unknown: read the label.`,
  'safety.honey': () => 'Honey is not for babies under one, cooked or not.',
  'safety.sauce-cold': (p: { cold: Quantity; within: Quantity }, print) =>
    `Into the refrigerator at ${at(p.cold, print)} or below within ${during(p.within, print)}: what is computed of it is an estimate, not a test.`,
  'safety.jar': () =>
    'A home calculation cannot make a jar fit for the cupboard: use a tested recipe for that, or freeze it.',
  'safety.brush': (p: { surface: Quantity }, print) =>
    `Set clean sauce aside first. Until the surface has been ${at(p.surface, print)} for some minutes the brush counts as raw: after that a new brush and the clean sauce.`,
  'safety.spritz-bottle': (p: { surface: Quantity; within: Quantity }, print) =>
    `The bottle counts as raw until the surface has been ${at(p.surface, print)} for some minutes: wipe its head, pour away what is left after ${during(p.within, print)}.`,
  'safety.marinade': () => 'What lay on raw meat is boiled or poured away, never a sauce as it is.',
  'safety.rub-hands': () => 'Portion the rub first: what a raw hand went into is thrown away.',

  'safety.pit-low': (p: { pit: Quantity; least: Quantity }, print) =>
    `${at(p.pit, print)} warms meat slowly: ${at(p.least, print)} or more until the centre is hot.`,
  'safety.carbon-monoxide': () =>
    'Charcoal, wood and gas make carbon monoxide: outdoors only, never in a garage, tent or van, doors open or not. Hot ash still makes it.',
  'safety.fire-attended': (p: { clearance: Quantity; children: Quantity }, print) =>
    `Never leave the fire alone: ${print.lengthM(p.clearance.si)} from walls, rails and branches, ${print.lengthM(p.children.si)} from children and animals, a lid against burning fat, no water on it.`,
  'safety.burn-ban': () =>
    'Look at the wind and ask about a fire ban first; the local rule goes before this plan.',
  'safety.wood': () =>
    'Only clean split firewood: never treated, painted or glued wood, pallets or anything mouldy.',
  'safety.ash': (p: { time: Quantity }, print) =>
    `Ash into a lidded metal can outdoors, soaked, kept for ${during(p.time, print)}.`,
  'safety.bristle': () => 'Look at the grate for loose wire bristles and wipe it before food goes on.',

  'safety.guests-at-risk': () =>
    'A guest is at risk: only the plain minimum temperature counts, no shorter way below it.',
  'safety.thermometer': (p: { error: Quantity; ice: Quantity }, print) =>
    `Check the thermometer in ice water: ${at(p.ice, print)}. One that was not checked may be ${print.differenceK(p.error.si)} off; take that off every reading.`,
  'safety.two-hours': (p: { limit: Quantity }, print) =>
    `Out of heat and cold for more than ${during(p.limit, print)} in all is thrown away, leftovers too.`,
  'safety.leftovers': (p: { cold: Quantity; keep: Quantity; reheat: Quantity }, print) =>
    `Leftovers sliced and shallow, at ${at(p.cold, print)} or below, ${during(p.keep, print)} at most, reheated to ${at(p.reheat, print)}.`,

  'safety.under-min': (p: { reading: Quantity; minimum: Quantity }, print) =>
    `Not done: ${at(p.reading, print)} against ${at(p.minimum, print)}. Keep cooking; resting does not make up for it.`,
  'safety.time-temp': (p: { reading: Quantity; minimum: Quantity; time: Quantity }, print) =>
    `${during(p.time, print)} at ${at(p.reading, print)} meets the plants’ table if the surface stayed moist. The home advice is still ${at(p.minimum, print)}.`,
  'safety.low-dry': (p: { reading: Quantity }, print) =>
    `At ${at(p.reading, print)} dry air can leave tougher germs on the surface: finish hotter or add moisture.`,
  'safety.come-up': (p: { time: Quantity; limit: Quantity }, print) =>
    `It has warmed for ${during(p.time, print)}, more than ${during(p.limit, print)}. Some germs leave a poison that heat cannot remove: throw it away.`,
  'safety.come-up-probe': (p: { time: Quantity; limit: Quantity }, print) =>
    `It has warmed for ${during(p.time, print)}, more than ${during(p.limit, print)}, with a probe pushed in raw: do not eat what lies along its track.`,
  'safety.come-up-outside-hot': (p: { time: Quantity; surface: Quantity }, print) =>
    `The middle took ${during(p.time, print)}; the outside was hot after ${during(p.surface, print)}, which is usual for an uncut piece.`,
  'safety.pit-dead': (p: { pit: Quantity; oven: Quantity }, print) =>
    `${at(p.pit, print)} for over an hour is too low a fire: finish it in an oven at ${at(p.oven, print)} now, or stop.`,
  'safety.out-too-long': (p: { limit: Quantity }, print) =>
    `Out of heat and cold for more than ${during(p.limit, print)}: throw it away.`,
  'safety.slow-cool': (p: { left: Quantity }, print) =>
    `It cools too slowly, ${during(p.left, print)} left: cut it, spread it, put it on ice.`,
  'safety.cooled-too-slowly': () => 'It missed its cooling time: throw it away.',
  'safety.spore-model': (p: { fold: number }, print) =>
    `A model alone says so: spore germs may have multiplied ${print.number(p.fold)}-fold.`,
  'safety.leftover-age': (p: { keep: Quantity }, print) =>
    `Too old or too warm for leftovers: they keep ${during(p.keep, print)} in the cold at most.`,
});
