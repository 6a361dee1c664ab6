import type { Bite, Quantity, Range } from '@pitwright/model';
import { capital } from '../figures/number.ts';
import { biteName } from '../names/words.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

/** Chances from counted likelihoods are told to a hundredth. */
const FINE = 1000;

interface Weighed {
  readonly cut: string;
  readonly other: string;
  /** How many times likelier on the likely cut than on the next. */
  readonly factor: number;
}

const a = (cut: string, print: Printer): string => `a ${print.cut(cut)}`;
const times = (factor: number): string => (factor >= 10 ? `${Math.round(factor)}` : factor.toFixed(1));

/** What a sign says of the likely cut beside the next. */
function weighs({ cut, other, factor }: Weighed, print: Printer): string {
  if (factor > 1.3) return `${times(factor)} times as common on ${a(cut, print)} as on ${a(other, print)}`;
  if (factor < 1 / 1.3) return `${times(1 / factor)} times as common on ${a(other, print)}: speaks against`;
  return `about as common on ${a(cut, print)} as on ${a(other, print)}`;
}

const CURVE: Readonly<Record<string, string>> = {
  curved: 'Strongly curved bones',
  slight: 'Slightly curved bones',
  flat: 'Flat bones',
};
const EDGE: Readonly<Record<string, string>> = {
  rounded: 'A rounded edge with loin meat on it',
  squared: 'An edge cut square',
  flap: 'A flap and skirt left on',
};
const LOOK: Readonly<Record<string, string>> = {
  bones: 'count the bones',
  curve: 'look along the rack: do the bones curve, or lie flat?',
  edge: 'look at the long edge: round with loin meat, cut square, or a flap with its skirt?',
};

/** `3 h 10–4 h 20`; a tenth of the tries or more that never end leave it open. */
const span = (ready: Range, print: Printer): string =>
  ready.p90 < Infinity
    ? print.durationRangeS(ready.p10, ready.p90)
    : ready.p10 < Infinity
      ? `${print.durationS(ready.p10)} or more, and not always at all`
      : 'a time that does not come';

/** Which rack this is, and what the other label would change. Shares 0 to 1. */
export const cutsMessages = messages({
  'cuts.rack.likely': (p: { cut: string; chance: number }, print) =>
    `Most likely ${a(p.cut, print)}: ${print.chance(p.chance, FINE)}.`,
  'cuts.rack.unsure': (p: { cut: string; chance: number; other: string; otherChance: number }, print) =>
    `It may be ${a(p.cut, print)}, ${print.chance(p.chance, FINE)}, or ${a(p.other, print)}, ${print.chance(p.otherChance, FINE)}.`,
  'cuts.rack.chance': (p: { cut: string; chance: number }, print) =>
    `${print.cut(p.cut)} ${print.chance(p.chance, FINE)}`,
  'cuts.sign.bones': (p: Weighed & { bones: number }, print) => `${p.bones} bones: ${weighs(p, print)}.`,
  'cuts.sign.bone-length': (p: Weighed & { length: Quantity }, print) =>
    `Longest bone ${print.quantity(p.length)}: ${weighs(p, print)}.`,
  'cuts.sign.curve': (p: Weighed & { curve: string }, print) =>
    `${CURVE[p.curve] ?? p.curve}: ${weighs(p, print)}.`,
  'cuts.sign.edge': (p: Weighed & { edge: string }, print) =>
    `${EDGE[p.edge] ?? p.edge}: ${weighs(p, print)}.`,
  'cuts.sign.mass': (p: Weighed & { mass: Quantity }, print) =>
    `${print.quantity(p.mass)}: ${weighs(p, print)}.`,
  'cuts.sign.length': (p: Weighed & { length: Quantity }, print) =>
    `${print.quantity(p.length)} along the bones: ${weighs(p, print)}.`,
  'cuts.sign.label': (p: Weighed & { label: string }, print) =>
    `The label says ${print.cut(p.label)}: ${weighs(p, print)}.`,
  'cuts.look-next': (p: { look: string }) => `To be surer, ${LOOK[p.look] ?? p.look}.`.replace('?.', '?'),
  'cuts.other.time': (
    p: {
      cut: string;
      other: string;
      bite: string;
      thickness: Quantity;
      otherThickness: Quantity;
      ready: Range;
      otherReady: Range;
    },
    print,
  ) =>
    `${capital(a(p.other, print))} cooks as if ${print.lengthM(p.otherThickness.si)} thick, ${a(p.cut, print)} as if ${print.lengthM(p.thickness.si)}: ${biteName(p.bite as Bite)} and its stages done in ${span(p.otherReady, print)}, not ${span(p.ready, print)}.`,
  'cuts.other.bite': (
    p: { cut: string; other: string; bite: string; chance: number; otherChance: number; members: number },
    print,
  ) =>
    `On these stages ${a(p.other, print)} has come to ${biteName(p.bite as Bite)} or softer ${print.timesIn(p.otherChance, p.members)}; ${a(p.cut, print)} ${print.timesIn(p.chance, p.members)}.`,
  'cuts.plain-cook': (p: { pit: Quantity }, print) =>
    `On a pit at ${print.quantity(p.pit)}, two hours bare, one in foil, half an hour glazed:`,
  'cuts.app.open': (p: { cut: string }, print) => `Is it ${a(p.cut, print)}? Look at the rack`,
  'cuts.app.ask-bones': () => 'Bones',
  'cuts.app.ask-curve': () => 'The bones along the rack',
  'cuts.app.ask-edge': () => 'The long edge away from the backbone',
  'cuts.app.untold': () => 'not looked at',
  'cuts.app.curve': (p: { curve: string }) =>
    ({ curved: 'strongly curved', slight: 'slightly curved', flat: 'flat' })[p.curve] ?? p.curve,
  'cuts.app.edge': (p: { edge: string }) =>
    ({ rounded: 'round, loin meat on it', squared: 'cut square', flap: 'flap and skirt left on' })[p.edge] ??
    p.edge,
  'cuts.app.take': (p: { cut: string }, print) => `Take it as ${a(p.cut, print)}`,
  'cuts.not-this': (p: { option: string; written: string; words: string }) =>
    `--${p.option} takes ${p.words}; ${p.written} it cannot be.`,
  'cuts.no-such-piece': (p: { path: string; written: string; letters: string }) =>
    `${p.path} has no piece ${p.written}. Its pieces: ${p.letters}.`,
});
