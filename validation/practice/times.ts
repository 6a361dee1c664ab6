/**
 * Times on the pit that cooks expect, meat on to done and before any rest, at a steady grate, from the fridge, at sea
 * level, for the cuts of the examples. Evidence kind: common practice, no source.
 */
export interface PracticeRow {
  readonly cut: string;
  /** Sizes that it is told for [kg]. */
  readonly kg: readonly [number, number];
  /** Hours by grate temperature [°C], from – to. */
  readonly hours: Readonly<Record<number, readonly [number, number]>>;
  /** What foil from set colour takes off [h], from – to; paper takes off something between nothing and that. */
  readonly foilH: readonly [number, number];
}

export const PRACTICE: readonly PracticeRow[] = [
  {
    cut: 'loin-back-ribs',
    kg: [0.9, 1.3],
    hours: { 107: [4.5, 6], 121: [3.5, 5], 135: [3, 4] },
    foilH: [0.5, 1],
  },
  {
    cut: 'st-louis-ribs',
    kg: [1, 1.5],
    hours: { 107: [5.5, 7], 121: [4.5, 6], 135: [3.75, 5] },
    foilH: [0.75, 1.25],
  },
  {
    cut: 'pork-shoulder',
    kg: [3.2, 4.1],
    hours: { 107: [12, 16], 121: [10, 13], 135: [8, 10.5] },
    foilH: [2, 4],
  },
];
