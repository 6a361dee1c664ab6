import { capital, count } from '../figures/number.ts';
import { messages } from './message.ts';
import { ALLERGEN_WORDS } from './safety.ts';

/** Shares of suppers, counted out of a hundred; never none and never all. */
const inHundred = (share: number): string => {
  const counted = Math.round(share * 100);
  return counted < 1 ? 'under 1 in 100' : counted > 99 ? 'over 99 in 100' : `${counted} in 100`;
};

const SECTIONS: Readonly<Record<string, string>> = {
  butcher: 'Butcher',
  greengrocer: 'Greengrocer',
  shelves: 'Grocer',
  spices: 'Spices and salt',
  fire: 'Yard',
};

const FIRE: Readonly<Record<string, string>> = {
  wood: 'Splits, dry, under 20 % of moisture',
  charcoal: 'Lump charcoal',
  foil: 'Foil, wide',
  paper: 'Brown paper without coating',
};

/** The place of those who eat: how many, whether it is enough, what to buy. `**…**` is set heavy. */
export const guestsPlaceMessages = messages({
  'web.place.guests': () => 'Guests',
  'web.guests.short': (p: { share: number }) => capital(inHundred(p.share)),
  'web.guests.answer': (p: { what: string; verb: string; mass: string; plates: number }) =>
    `that somebody goes short. ${capital(p.what)} ${p.verb} **${p.mass}** on ${p.plates} ${p.plates === 1 ? 'plate' : 'plates'}.`,
  'web.guests.what': (p: { count: number; name: string }) => `${count(p.count)} ${p.name}`,
  'web.guests.nobody': () => 'Nobody eats yet. Say who comes.',
  'web.guests.uncounted': (p: { letters: string }) =>
    `${p.letters} is not counted: what it gives off the bone is not known.`,
  'web.guests.short.meaning': () =>
    'Of a hundred suppers like this one, in so many the table wants more meat than there is.',
  'web.guests.short.source': () =>
    'Catering tables: 140 to 225 g of cooked boneless meat an adult, children half; published yields off the bone. docs/models/guests.md.',
  'web.guests.short.doubt': () =>
    'Whether your guests eat like that nobody measured: appetite, other dishes and the carver count for more than the last figure.',

  'web.guests.who': () => 'Who eats',
  'web.guests.adults': () => 'Adults',
  'web.guests.children': () => 'Children',
  'web.guests.dishes': () => 'Other dishes',
  'web.guests.appetite': () => 'Appetite',
  'web.guests.appetite.small': () => 'small',
  'web.guests.appetite.ordinary': () => 'ordinary',
  'web.guests.appetite.big': () => 'big',
  'web.guests.three-cancel': () => 'Three cancel',
  'web.guests.five-more': () => 'Five more come',
  'web.guests.when': () => 'When',
  'web.guests.hour': () => 'On the table',
  'web.guests.until': () => 'Served until',

  'web.guests.risk': () => 'Somebody at risk eats with us',
  'web.guests.risk.who': () => 'Pregnant, under five, old, or with weak defences.',
  'web.guests.allergens': () => 'What guests cannot eat',
  'web.guests.allergens.private': () =>
    'Private: it stays on your devices, and a copy you give away leaves it out unless you tick it.',
  'web.guests.allergens.head': () => 'allergen',
  'web.guests.allergens.in': () => 'is in',
  'web.guests.allergens.named': () => 'a guest named it',
  'web.guests.allergens.nothing': () => 'nothing we know of',
  'web.guests.allergens.line': (p: { allergen: string }) =>
    capital(ALLERGEN_WORDS[p.allergen] ?? p.allergen.replaceAll('-', ' ')),
  'web.guests.allergens.tick': (p: { allergen: string }) => `A guest cannot eat ${p.allergen}`,
  'web.guests.allergens.other': () => 'Another one',
  'web.guests.allergens.add': () => 'Add',

  'web.guests.enough': () => 'Enough?',
  'web.guests.gives': (p: { mass: string }) => `the pit gives ${p.mass}`,
  'web.guests.gives.range': (p: { range: string }) => `${p.range}, off the bone`,
  'web.guests.eats': (p: { mass: string; people: number }) =>
    `${p.people} ${p.people === 1 ? 'person eats' : 'people eat'} ${p.mass}`,
  'web.guests.eats.range': (p: { range: string }) => p.range,
  'web.guests.run-short': (p: { share: number }) => {
    const counted = Math.round(p.share * 100);
    if (counted < 1) return 'fewer than 1 runs short';
    return counted === 1 ? '1 runs short' : `${counted} run short`;
  },
  'web.guests.more-or-fewer': () => 'More of which, or fewer',
  'web.guests.items': (p: { count: number; name: string }) => `${p.count} ${p.name}`,
  'web.guests.items.short': (p: { share: number }) => `${inHundred(p.share)} short`,
  'web.guests.items.left': (p: { mass: string }) => `${p.mass} left over`,
  'web.guests.items.none-left': () => 'nothing left over',
  'web.guests.plate': () => 'On the plate',
  'web.guests.plate.dish': () => 'piece',
  'web.guests.plate.each': () => 'an adult',
  'web.guests.plate.bought': () => 'bought',
  'web.guests.plate.eaten': () => 'off the bone',
  'web.guests.plate.camera': () => 'Carved last, for the camera.',

  'web.guests.shop': () => 'The shop has only …',
  'web.guests.shop.for': () => 'In place of',
  'web.guests.shop.cut': () => 'It has',
  'web.guests.shop.mass': () => 'One weighs',
  'web.guests.shop.most': () => 'How many it has',
  'web.guests.shop.enough': () => 'enough',
  'web.guests.shop.take': () => 'Take these',

  'web.guests.buy': () => 'Buy',
  'web.guests.buy.waits': () => 'Wood and charcoal stand here once the plan knows how long the fire burns.',
  'web.guests.buy.section': (p: { section: string }) => SECTIONS[p.section] ?? p.section,
  'web.guests.buy.fire': (p: { what: string }) => FIRE[p.what] ?? p.what,
  'web.guests.buy.larder': () => 'The larder has',
  'web.guests.buy.or': (p: { others: string }) => `or ${p.others}`,
  'web.guests.buy.packs': (p: { packs: number; pack: string }) =>
    `${p.packs} ${p.packs === 1 ? 'pack' : 'packs'} of ${p.pack}`,
  'web.guests.buy.have': (p: { mass: string }) => `${p.mass} at home`,
  'web.guests.buy.burnt': (p: { mass: string; time: string }) =>
    `most likely ${p.mass}, for ${p.time} of fire`,
  'web.guests.buy.up-to': (p: { mass: string }) => `up to ${p.mass}`,
  'web.guests.buy.total': (p: { cost: string; each: string; share: number }) =>
    p.share >= 1
      ? `**${p.cost}** in all, ${p.each} a head.`
      : `**${p.cost}** so far, ${p.each} a head: ${Math.round(p.share * 100)} % of the lines have a price.`,
  'web.guests.buy.no-price': () => 'No prices told yet.',
  'web.guests.buy.thaw': (p: { pieces: string }) =>
    `What is bought frozen goes into the fridge by ${p.pieces}.`,
  'web.guests.buy.thaw-piece': (p: { letters: string; day: string; hour: string }) =>
    `${p.day} ${p.hour} (${p.letters})`,
  'web.guests.market': () => 'At home, packs, prices',
  'web.guests.market.home': () => 'at home',
  'web.guests.market.pack': () => 'a pack',
  'web.guests.market.price': (p: { unit: string }) => `price a ${p.unit}`,
  'web.guests.market.home-of': (p: { what: string }) => `${p.what}: at home`,
  'web.guests.market.pack-of': (p: { what: string }) => `${p.what}: a pack`,
  'web.guests.market.price-of': (p: { what: string }) => `${p.what}: price`,

  'web.guests.after': () => 'What is left over',
  'web.guests.after.by': (p: { hour: string }) =>
    `By **${p.hour}** it is sliced, flat and in the cold; what stands out longer is thrown away.`,
  'web.guests.after.mass': (p: { range: string }) => `About ${p.range} off the bone.`,
  'web.guests.cautions': () => 'At the table',
});
