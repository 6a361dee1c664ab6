// Which rack is this? Chances from the signs of the IMPS item texts. Evidence: published (item texts: bones of 422 at
// least 8, of 416 at least 11, squared without sternum 416A, skirt and flap 416), common practice (sizes), law.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CURVES, EDGES, RACKS, type Rack, type RackSigns, whichRack } from './rackSigns.ts';

const chanceOf = (signs: RackSigns, cut: Rack): number =>
  whichRack(signs).chances.find((one) => one.cut === cut)!.chance;

// USDA IMPS items 422, 416, 416A and 124 as they describe the rack.
test.each<[string, RackSigns, Rack]>([
  [
    '422: curved, 13 bones, loin meat on the round edge',
    { bones: 13, curve: 'curved', edge: 'rounded' },
    'loin-back-ribs',
  ],
  ['416: flat, 12 bones, flap and skirt', { bones: 12, curve: 'flat', edge: 'flap' }, 'spareribs'],
  ['416A: flat, 12 bones, squared', { bones: 12, curve: 'flat', edge: 'squared' }, 'st-louis-ribs'],
  [
    '124: seven long bones',
    { bones: 7, boneLengthM: 0.18, curve: 'curved', edge: 'squared' },
    'beef-back-ribs',
  ],
])('an item as its text describes it is known: %s', (_, signs, cut) => {
  const { likely, chances } = whichRack(signs);
  expect(likely).toBe(cut);
  expect(chances[0]!.chance).toBeGreaterThan(0.85);
});

test('two signs against the label outweigh it', () => {
  expect(whichRack({ label: 'loin-back-ribs', curve: 'flat', edge: 'flap' }).likely).toBe('spareribs');
});

test('one sign alone leaves doubt, and the look that settles most is named', () => {
  const answer = whichRack({ curve: 'flat' });
  expect(answer.chances[0]!.chance).toBeLessThan(0.7);
  expect(answer.lookNext).toEqual({ id: 'cuts.look-next', params: { look: 'edge' } });
  expect(whichRack({ bones: 12, curve: 'flat', edge: 'squared', massKg: 1.2 }).lookNext).toBeUndefined();
});

test('a rack of eight bones or fewer is no spare rack', () => {
  expect(chanceOf({ bones: 8 }, 'spareribs') + chanceOf({ bones: 8 }, 'st-louis-ribs')).toBeLessThan(0.06);
});

test('scales part whole from squared spare ribs', () => {
  const seen = { bones: 12, curve: 'flat' } as const;
  expect(chanceOf({ ...seen, massKg: 2.1 }, 'spareribs')).toBeGreaterThan(0.9);
  expect(chanceOf({ ...seen, massKg: 1.2 }, 'st-louis-ribs')).toBeGreaterThan(0.85);
});

const anySigns: fc.Arbitrary<RackSigns> = fc.record(
  {
    bones: fc.integer({ min: 3, max: 16 }),
    boneLengthM: fc.double({ min: 0.03, max: 0.5, noNaN: true }),
    curve: fc.constantFrom(...CURVES),
    edge: fc.constantFrom(...EDGES),
    massKg: fc.double({ min: 0.2, max: 6, noNaN: true }),
    lengthM: fc.double({ min: 0.1, max: 1, noNaN: true }),
    label: fc.constantFrom(...RACKS),
  },
  { requiredKeys: [] },
);

test('chances sum to one, are never nought nor sure, and each sign told has its reason', () => {
  fc.assert(
    fc.property(anySigns, (signs) => {
      const { chances, reasons, likely } = whichRack(signs);
      expect(chances.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
      for (const { chance } of chances) {
        expect(chance).toBeGreaterThan(0);
        expect(chance).toBeLessThan(1);
      }
      expect(likely).toBe(chances[0]!.cut);
      expect(reasons.length).toBe(Object.keys(signs).length);
    }),
  );
});

test('a label never lowers the chance of its own cut', () => {
  fc.assert(
    fc.property(anySigns, fc.constantFrom(...RACKS), ({ label: _, ...signs }, label) => {
      expect(chanceOf({ ...signs, label }, label)).toBeGreaterThan(chanceOf(signs, label));
    }),
  );
});

test.each([{ bones: 2 }, { bones: 9.5 }, { bones: Number.NaN }, { massKg: 0 }, { boneLengthM: Number.NaN }])(
  'no rack has %j',
  (signs) => {
    expect(() => whichRack(signs)).toThrow(RangeError);
  },
);
