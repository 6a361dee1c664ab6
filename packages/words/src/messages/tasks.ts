import type { Bite, PitPlace, Quantity } from '@pitwright/model';
import { capital, listed } from '../figures/number.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

/** `B and C`, `the racks`: what a job is done to, printed already. */
type OnPieces = { pieces: string };
type OnFormula = { formula: string };

const PLACES: Readonly<Record<PitPlace, string>> = {
  hot: 'hot end',
  middle: 'middle of the grate',
  cool: 'cool end',
};

/** Which side lies towards the coals; missing: the piece lies away from them. */
type OverCoals = { side?: string; turn?: Quantity };

const overCoals = ({ side, turn }: OverCoals, print: Printer, before = ', '): string =>
  side === undefined
    ? ''
    : `${before}over the coals, ${side} side to them${turn ? `, turned every ${print.quantity(turn)}` : ''}`;

/** A stage that wants the pit at another heat than the one before it. */
type PitTo = { pit?: Quantity };
const pitTo = ({ pit }: PitTo, print: Printer): string => (pit ? ` Pit to ${print.quantity(pit)}.` : '');

/** A slab of ribs, held up. */
const TESTS: Readonly<Record<Bite, string>> = {
  raw: 'a thermometer in the thickest place',
  firm: 'a thermometer in the thickest place',
  'clean-bite': 'lift at a third: it bends and the surface stays whole',
  tender: 'lift at a third: the surface cracks; a pick slides in with a tug',
  'falls-off': 'lift at a third: it folds and tears',
  'pulls-apart': 'a probe slides in like into soft butter, in three places',
};

/** Thick meat and short pieces. */
const PROBED: Readonly<Record<Bite, string>> = {
  ...TESTS,
  'clean-bite': 'a pick goes in with some push, in three places',
  tender: 'a pick slides in with a slight tug, in three places',
  'falls-off': TESTS['pulls-apart'],
};

/** Where it waits, after `off`: still wrapped, or covered. */
type OffTo = { into?: string; at?: Quantity; wrapped?: string };
const INTO: Readonly<Record<string, string>> = { oven: 'the oven', box: 'the box', warmer: 'the warmer' };

/** The same jobs as they stand on the sheet by the pit: letters, deed, nothing else. */
export const shortTaskMessages = messages({
  'task.short.light-fire': () => 'Light the fire.',
  'task.short.coal-bed': (p: { pit?: Quantity }, print) =>
    p.pit ? `Coals spread, settle at ${print.quantity(p.pit)}.` : 'Coals spread, pit settles.',
  'task.short.meat-on': (p: OnPieces & OverCoals & PitTo & { name?: string; place?: string }, print) =>
    `${p.pieces} on${p.place && p.place !== 'middle' ? `, ${PLACES[p.place as PitPlace]}` : ''}${overCoals(p, print)}.${pitTo(p, print)}`,
  'task.short.look': (p: OnPieces & PitTo, print) => `Look at ${p.pieces}.${pitTo(p, print)}`,
  'task.short.spritz': (p: OnPieces) => `Spritz ${p.pieces}.`,
  'task.short.wrap': (p: OnPieces & PitTo & { wrap?: string; liquid?: Quantity }, print) =>
    `${p.pieces} in ${p.wrap ?? 'foil'}${p.liquid ? `, ${print.quantity(p.liquid)}` : ''}.${pitTo(p, print)}`,
  'task.short.unwrap': (p: OnPieces & PitTo, print) => `Open ${p.pieces}.${pitTo(p, print)}`,
  'task.short.glaze': (p: OnPieces & PitTo & { round?: number; only?: string; opens?: string }, print) => {
    if (p.round && p.round > 1) return `${p.pieces} second coat.`;
    const coat = p.only ? 'one coat' : 'first coat';
    return `${p.opens ? `Open ${p.pieces}, ${coat}.` : `${p.pieces} ${coat}.`}${pitTo(p, print)}`;
  },
  'task.short.test-bite': (p: OnPieces) => `Test ${p.pieces}.`,
  'task.short.to-oven': (p: OnPieces) => `${p.pieces} to the oven.`,
  'task.short.to-coals': (p: OnPieces & OverCoals, print) =>
    `${p.pieces}${p.side ? overCoals(p, print, ' ') : ' away from the coals'}.`,
  'task.short.take-off': (p: OnPieces & OffTo) =>
    `${p.pieces} off${p.into ? `, ${p.wrapped ? 'wrapped, ' : ''}into ${INTO[p.into] ?? p.into}` : ''}.`,
  'task.short.ash-out': () => 'Cold ash into the metal can.',
});

/** Jobs as one hand says them to another. Ids are `task.` and the kind of the task. */
export const taskMessages = messages({
  'task.buy': (p: { formulas?: string; fuel?: string; foil?: string; paper?: string }) =>
    `Shop for ${listed([
      'meat',
      ...(p.formulas ? ['what the formulas lack'] : []),
      ...(p.fuel ? [p.fuel] : []),
      ...(p.foil ? ['foil'] : []),
      ...(p.paper ? ['paper'] : []),
    ])}.`,
  'task.thaw': (p: OnPieces) => `${p.pieces} from the freezer to the fridge, on a tray.`,
  'task.make-sauce': (p: OnFormula) => `Weigh ${p.formula} into the pan.`,
  'task.simmer-sauce': (p: OnFormula & { left?: Quantity; late?: string }, print) =>
    `Simmer ${p.formula}${p.left ? ` until ${print.quantity(p.left)} is left in the pan` : ''}. Stir now and then.${p.late ? ` Take it off, then stir in ${p.late}.` : ''}`,
  'task.cool-sauce': (p: OnFormula) => `Cool ${p.formula} in an ice bath, stirring.`,
  'task.jar-sauce': (p: OnFormula) => `${capital(p.formula)} into clean jars, into the fridge.`,
  'task.warm-sauce': (p: OnFormula) =>
    `Warm ${p.formula}. Pour what you brush with into its own cup; the rest stays clean for the table.`,
  'task.mix-rub': (p: OnFormula) => `Mix ${p.formula}.`,
  'task.mix-spritz': (p: OnFormula) => `Mix ${p.formula}, fill the bottle.`,
  'task.mix-brine': (p: OnFormula) => `Mix ${p.formula}, cold.`,
  'task.brine': (p: OnPieces & OnFormula) => `${p.pieces} into ${p.formula}, in the fridge.`,
  'task.skin-and-trim': (p: OnPieces) => `Skin and trim ${p.pieces}.`,
  'task.cut-in-two': (p: OnPieces) => `Cut ${p.pieces} in two, across its length.`,
  'task.rub': (p: OnPieces & { formula?: string; trim?: string }) =>
    `${p.trim ? `Trim and rub ${p.pieces}` : `Rub ${p.pieces}`}${p.formula ? ` with ${p.formula}` : ''}. Back on the tray, lowest shelf.`,
  'task.out-of-fridge': (p: OnPieces) => `${p.pieces} out of the fridge.`,
  'task.light-fire': () => 'Light the fire. Open air, and you stay by it.',
  'task.coal-bed': (p: { pit?: Quantity }, print) =>
    p.pit
      ? `Spread the coals, first fuel on. Let the pit settle at ${print.quantity(p.pit)}.`
      : 'Spread the coals, first fuel on. Let the pit settle.',
  'task.light-oven': (p: { oven?: Quantity }, print) =>
    p.oven ? `Oven on, ${print.quantity(p.oven)}.` : 'Oven on.',
  'task.meat-on': (p: OnPieces & OverCoals & PitTo & { name?: string; place?: string }, print) =>
    `${p.pieces} on${p.name ? `: ${p.name}` : ''}${p.place ? `, ${PLACES[p.place as PitPlace]}` : ''}${overCoals(p, print)}.${pitTo(p, print)}`,
  'task.look': (p: OnPieces & PitTo, print) =>
    `Look at ${p.pieces}: colour, surface, edges.${pitTo(p, print)}`,
  'task.spritz': (p: OnPieces) => `Spritz ${p.pieces} where the crust is dry. Look while you are there.`,
  'task.wrap': (p: OnPieces & PitTo & { wrap?: string; liquid?: Quantity }, print) =>
    `Wrap ${p.pieces}${p.wrap ? ` in ${p.wrap}` : ''}${p.liquid ? ` with ${print.quantity(p.liquid)} of liquid each` : ''}.${pitTo(p, print)}`,
  'task.unwrap': (p: OnPieces & PitTo, print) =>
    `Open ${p.pieces}, far side first: the steam scalds.${pitTo(p, print)}`,
  'task.glaze': (
    p: OnPieces & PitTo & { formula?: string; round?: number; only?: string; opens?: string },
    print,
  ) => {
    const first = p.only ? 'A thin coat' : 'A thin first coat';
    const coat = p.round && p.round > 1 ? 'A second thin coat' : first;
    const opens = p.opens ? `Open ${p.pieces}, far side first: the steam scalds. ` : '';
    const of = p.formula ? ` of ${p.formula}` : '';
    return `${opens}${coat}${of}${p.opens ? '' : ` on ${p.pieces}`}, clean brush.${pitTo(p, print)}`;
  },
  'task.test-bite': (p: OnPieces & { bite?: string; probed?: string }) =>
    `Test ${p.pieces}${p.bite ? `: ${(p.probed ? PROBED : TESTS)[p.bite as Bite]}` : ''}.`,
  'task.to-oven': (p: OnPieces) => `${p.pieces} into the oven.`,
  'task.to-coals': (p: OnPieces & OverCoals, print) =>
    p.side
      ? `${p.pieces}${overCoals(p, print, ' ')}. Stay by it: fat flares.`
      : `${p.pieces} away from the coals.`,
  'task.take-off': (p: OnPieces & OffTo, print) =>
    p.into
      ? `${p.pieces} off, ${p.wrapped ? 'still wrapped' : 'onto a clean tray, covered'}, into ${INTO[p.into] ?? p.into}${p.at ? ` at ${print.quantity(p.at)}` : ''}.`
      : `${p.pieces} off, onto a clean tray.`,
  'task.rest': (p: OnPieces) => `Let ${p.pieces} rest.`,
  'task.hold': (p: OnPieces) => `${p.pieces} into the box, lid shut.`,
  'task.chill': (p: OnPieces & { around?: string; pass?: string; first?: string; both?: string }, print) => {
    const where = p.around === 'ice-bath' ? 'into ice water, in a bag without air' : 'into the fridge, open';
    const by = (at: string): string => print.aboutClock(at);
    const limits =
      p.pass && p.first && p.both
        ? ` Its middle passes ${print.temperatureC(57.2)} about ${by(p.pass)}: at ${print.temperatureC(21.1)} by ${by(p.first)}, at ${print.temperatureC(5)} by ${by(p.both)}, or two hours and six from when the thermometer says so.`
        : '';
    return `${p.pieces} ${where}.${limits}`;
  },
  'task.slice': (p: OnPieces & { bite?: string }) =>
    p.bite === 'pulls-apart' ? `Pull ${p.pieces}; its juice goes back in.` : `Cut ${p.pieces}.`,
  'task.serve': () => 'To the table.',
  'task.clean': () => 'Boards, knives, tongs and brushes washed hot.',
  'task.chill-leftovers': () => 'Leftovers into flat pans and the fridge, open until cold.',
  'task.ash-out': () => 'Cold ash into a metal can with a tight lid, outdoors.',
});
