/** Any piece under any cover, as the closures of water and energy are tried on it. */
import fc from 'fast-check';
import { BARE, type Cover, FOIL, FOIL_TORN, FOIL_WITH_LIQUID, GLAZED, PAPER } from './parameters.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What one stage is told; to be made a record of, with more where a test needs it. */
export const ANY_STAGE = {
  cover: fc.constantFrom<Cover>(
    BARE,
    GLAZED,
    PAPER,
    FOIL,
    FOIL_TORN,
    FOIL_WITH_LIQUID,
    { kind: 'still', transmittanceWm2K: 9 },
    { kind: 'still', transmittanceWm2K: 1.2 },
  ),
  minutes: fc.integer({ min: 1, max: 300 }),
  gasC: between(15, 200),
  humidityRatio: between(0, 0.3),
  convectionWm2K: between(3, 25),
  spritzKgM2: fc.constantFrom(0, 0, 0.1),
  pouredKgM2: fc.constantFrom(0, 0, 0.4),
};

export const anyPiece = fc.record({
  halfThicknessM: between(0.008, 0.07),
  dimensionality: between(1, 2),
  evaporatingShare: between(0, 1),
  juiceToSurfaceShare: between(0.1, 0.95),
  startC: between(1, 25),
});
