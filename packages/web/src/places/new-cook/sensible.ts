import { type Bite, type CutId, type Quantity, quantity, type Stage } from '@pitwright/model';

/**
 * What a new cook starts from, cut by cut, so that every question has an answer already there.
 * Masses, stages and their lengths: common practice, no source. They are a beginning to be changed, not advice.
 */
export interface SensibleCut {
  readonly cut: CutId;
  readonly family: 'pork' | 'beef' | 'lamb' | 'poultry';
  readonly massKg: number;
  readonly massLb: number;
  readonly count: number;
  readonly bite: Bite;
  /** Bites that make sense to ask of it. */
  readonly bites: readonly Bite[];
  readonly stages: (bite: Bite) => readonly Stage[];
}

const minutes = (value: number): Quantity<'time'> => quantity('time', value, 'min');
const celsius = (value: number): Quantity<'temperature'> => quantity('temperature', value, '°C');

const untilClock = (kind: Stage['kind'], after: number): Stage => ({
  kind,
  until: { by: 'clock', after: minutes(after) },
});
const untilCore = (kind: Stage['kind'], core: number): Stage => ({
  kind,
  until: { by: 'core', temperature: celsius(core) },
});
const untilBite = (kind: Stage['kind'], bite: Bite): Stage => ({ kind, until: { by: 'bite', bite } });
/** Warm and covered until the table asks: what makes the start forgiving. */
const WARM: Stage = { kind: 'hold', until: { by: 'table' }, in: 'oven', at: celsius(66) };

const rack =
  (glazedMin: number): SensibleCut['stages'] =>
  (bite) => [
    { kind: 'bare', until: { by: 'bark' } },
    untilBite('foil', bite),
    untilClock('glazed', glazedMin),
    WARM,
  ];
const wrappedAt =
  (kind: 'foil' | 'paper', core: number): SensibleCut['stages'] =>
  (bite) => [untilCore('bare', core), untilBite(kind, bite), WARM];
const bareUntilCore =
  (core: number): SensibleCut['stages'] =>
  () => [untilCore('bare', core), WARM];
/** Skin wants a hotter pit than the rest of the day. */
const bird =
  (core: number): SensibleCut['stages'] =>
  () => [{ ...untilCore('bare', core), pit: celsius(150) }, WARM];

const RACK_BITES: readonly Bite[] = ['clean-bite', 'tender', 'falls-off'];
const LARGE_BITES: readonly Bite[] = ['tender', 'falls-off', 'pulls-apart'];
const SLICED: readonly Bite[] = ['firm', 'clean-bite', 'tender'];

export const SENSIBLE_CUTS: readonly SensibleCut[] = [
  {
    cut: 'loin-back-ribs',
    family: 'pork',
    massKg: 1.1,
    massLb: 2.5,
    count: 2,
    bite: 'clean-bite',
    bites: RACK_BITES,
    stages: rack(15),
  },
  {
    cut: 'st-louis-ribs',
    family: 'pork',
    massKg: 1.3,
    massLb: 2.75,
    count: 2,
    bite: 'clean-bite',
    bites: RACK_BITES,
    stages: rack(15),
  },
  {
    cut: 'spareribs',
    family: 'pork',
    massKg: 2,
    massLb: 4.5,
    count: 2,
    bite: 'clean-bite',
    bites: RACK_BITES,
    stages: rack(15),
  },
  {
    cut: 'pork-shoulder',
    family: 'pork',
    massKg: 3.6,
    massLb: 8,
    count: 1,
    bite: 'pulls-apart',
    bites: LARGE_BITES,
    stages: wrappedAt('paper', 71),
  },
  {
    cut: 'fresh-ham',
    family: 'pork',
    massKg: 8,
    massLb: 18,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bareUntilCore(70),
  },
  {
    cut: 'brisket-whole',
    family: 'beef',
    massKg: 6,
    massLb: 13,
    count: 1,
    bite: 'tender',
    bites: ['clean-bite', 'tender', 'falls-off'],
    stages: wrappedAt('paper', 74),
  },
  {
    cut: 'brisket-flat',
    family: 'beef',
    massKg: 2.7,
    massLb: 6,
    count: 1,
    bite: 'tender',
    bites: ['clean-bite', 'tender', 'falls-off'],
    stages: wrappedAt('paper', 74),
  },
  {
    cut: 'brisket-point',
    family: 'beef',
    massKg: 2,
    massLb: 4.5,
    count: 1,
    bite: 'tender',
    bites: LARGE_BITES,
    stages: wrappedAt('paper', 74),
  },
  {
    cut: 'beef-short-ribs',
    family: 'beef',
    massKg: 2.3,
    massLb: 5,
    count: 1,
    bite: 'tender',
    bites: LARGE_BITES,
    stages: (bite) => [untilBite('bare', bite), WARM],
  },
  {
    cut: 'beef-back-ribs',
    family: 'beef',
    massKg: 1.8,
    massLb: 4,
    count: 1,
    bite: 'tender',
    bites: RACK_BITES,
    stages: (bite) => [untilBite('bare', bite), WARM],
  },
  {
    cut: 'chuck-roast',
    family: 'beef',
    massKg: 1.8,
    massLb: 4,
    count: 1,
    bite: 'pulls-apart',
    bites: LARGE_BITES,
    stages: wrappedAt('foil', 72),
  },
  {
    cut: 'rib-roast',
    family: 'beef',
    massKg: 3,
    massLb: 6.5,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bareUntilCore(62),
  },
  {
    cut: 'lamb-shoulder',
    family: 'lamb',
    massKg: 2.2,
    massLb: 5,
    count: 1,
    bite: 'pulls-apart',
    bites: LARGE_BITES,
    stages: wrappedAt('foil', 72),
  },
  {
    cut: 'lamb-leg',
    family: 'lamb',
    massKg: 2.5,
    massLb: 5.5,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bareUntilCore(63),
  },
  {
    cut: 'chicken-leg',
    family: 'poultry',
    massKg: 0.32,
    massLb: 0.7,
    count: 4,
    bite: 'firm',
    bites: SLICED,
    stages: bird(78),
  },
  {
    cut: 'chicken-whole',
    family: 'poultry',
    massKg: 2,
    massLb: 4.5,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
  {
    cut: 'chicken-half',
    family: 'poultry',
    massKg: 0.95,
    massLb: 2,
    count: 2,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
  {
    cut: 'chicken-breast',
    family: 'poultry',
    massKg: 0.3,
    massLb: 0.65,
    count: 4,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
  {
    cut: 'turkey-whole',
    family: 'poultry',
    massKg: 6,
    massLb: 13,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
  {
    cut: 'turkey-half',
    family: 'poultry',
    massKg: 3,
    massLb: 6.5,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
  {
    cut: 'turkey-breast',
    family: 'poultry',
    massKg: 2.5,
    massLb: 5.5,
    count: 1,
    bite: 'firm',
    bites: SLICED,
    stages: bird(74),
  },
];

export const sensible = (cut: CutId): SensibleCut =>
  SENSIBLE_CUTS.find((known) => known.cut === cut) ?? SENSIBLE_CUTS[0]!;

/** Air, humidity and wind of a weather told in words. Rough middles of what people mean; from memory. */
export const SKIES = {
  cold: { airC: 4, relativeHumidity: 0.7 },
  cool: { airC: 12, relativeHumidity: 0.65 },
  mild: { airC: 18, relativeHumidity: 0.6 },
  warm: { airC: 25, relativeHumidity: 0.5 },
  hot: { airC: 32, relativeHumidity: 0.35 },
} as const;
export type Sky = keyof typeof SKIES;

export const WINDS = { still: 1, breezy: 4, windy: 8 } as const;
export type Wind = keyof typeof WINDS;
