import type { Rack } from '@pitwright/engine';
import { type Cook, quantity } from '@pitwright/model';

const hours = (value: number) => ({ by: 'clock', after: quantity('time', value, 'h') }) as const;

/** Told of the pit, for the sentence above what follows from it. */
export const PLAIN_PIT = quantity('temperature', 121, '°C');

/**
 * One rack on a steady pit, where no cook file is named: two hours bare, one in foil, half an hour glazed.
 * @source common practice, no source
 */
export function plainCook(cut: Rack, massKg: number | undefined): Cook {
  return {
    id: 'plain',
    name: 'One rack',
    isDemo: true,
    rules: 'home-us',
    rulesTold: false,
    zone: 'UTC',
    table: { at: '2027-06-19T18:00:00Z', until: '2027-06-19T18:30:00Z' },
    chanceAsked: 0.9,
    guests: { adults: 2, children: 0 },
    hands: [{ id: 'you', name: 'You' }],
    kitchen: { burners: 1, ovens: 1 },
    pit: { id: 'pit', name: 'Pit', type: 'unknown', temperature: PLAIN_PIT, gauge: 'grate' },
    pieces: [
      {
        id: 'a',
        letter: 'A',
        cut,
        count: 1,
        ...(massKg !== undefined && { mass: { kind: 'mass' as const, si: massKg } }),
        bite: 'clean-bite',
        stages: [
          { kind: 'bare', until: hours(2) },
          { kind: 'foil', until: hours(1) },
          { kind: 'glazed', until: hours(0.5) },
        ],
      },
    ],
    formulas: [],
  };
}
