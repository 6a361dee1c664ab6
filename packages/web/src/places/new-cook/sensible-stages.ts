import { type Bite, type CutId, type Quantity, quantity, type Stage } from '@pitwright/model';

/** Groups of the list of cuts, in its order. */
export const ANIMALS = ['pork', 'beef', 'lamb', 'poultry'] as const;
export type Animal = (typeof ANIMALS)[number];

/**
 * What a new cook starts from, cut by cut, so that every question has an answer already there.
 * Masses, stages and their lengths: common practice, no source. They are a beginning to be changed, not advice.
 */
export interface SensibleCut {
  readonly cut: CutId;
  readonly family: Animal;
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
export const untilBite = (kind: Stage['kind'], bite: Bite): Stage => ({ kind, until: { by: 'bite', bite } });
/** Warm and covered until the table asks: what makes the start forgiving. */
export const WARM: Stage = {
  kind: 'hold',
  until: { by: 'table' },
  in: 'oven',
  at: quantity('temperature', 150, '°F'),
};

export const rack =
  (glazedMin: number): SensibleCut['stages'] =>
  (bite) => [
    { kind: 'bare', until: { by: 'bark' } },
    untilBite('foil', bite),
    untilClock('glazed', glazedMin),
    WARM,
  ];
export const wrappedAt =
  (kind: 'foil' | 'paper', core: number): SensibleCut['stages'] =>
  (bite) => [untilCore('bare', core), untilBite(kind, bite), WARM];
export const bareUntilCore =
  (core: number): SensibleCut['stages'] =>
  () => [untilCore('bare', core), WARM];
/** Skin wants a hotter pit than the rest of the day. */
export const bird =
  (core: number): SensibleCut['stages'] =>
  () => [{ ...untilCore('bare', core), pit: celsius(150) }, WARM];

export const RACK_BITES: readonly Bite[] = ['clean-bite', 'tender', 'falls-off'];
export const LARGE_BITES: readonly Bite[] = ['tender', 'falls-off', 'pulls-apart'];
export const SLICED: readonly Bite[] = ['firm', 'clean-bite', 'tender'];
