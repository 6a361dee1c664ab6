/** Small kitchens drawn at random, some of which cannot be planned. */
import fc from 'fast-check';
import type { StepKitchen } from '../step-formulation.ts';

const LENGTH = 30;

const span = fc
  .tuple(fc.integer({ min: 0, max: LENGTH - 2 }), fc.integer({ min: 1, max: 8 }))
  .map(([from, lasts]) => ({ from, to: Math.min(LENGTH, from + lasts) }));

const job = fc.record({
  duration: fc.integer({ min: 1, max: 6 }),
  earliest: fc.integer({ min: 0, max: 20 }),
  room: fc.integer({ min: 0, max: 16 }),
  handsNeeded: fc.constantFrom(1 as const, 1 as const, 1 as const, 0 as const),
  burner: fc.boolean(),
  shelf: fc.boolean(),
  wish: fc.option(fc.integer({ min: 0, max: LENGTH })),
  earlyWeight: fc.integer({ min: 0, max: 3 }),
  lateWeight: fc.integer({ min: 0, max: 3 }),
});

export const randomKitchen: fc.Arbitrary<StepKitchen> = fc
  .record({
    jobs: fc.array(job, { minLength: 2, maxLength: 6 }),
    lags: fc.array(
      fc.record({
        a: fc.nat(5),
        b: fc.nat(5),
        min: fc.integer({ min: 0, max: 4 }),
        more: fc.option(fc.integer({ min: 0, max: 6 })),
      }),
      { maxLength: 4 },
    ),
    stays: fc.array(fc.record({ a: fc.nat(5), b: fc.nat(5) }), { maxLength: 2 }),
    hands: fc.array(fc.array(span, { maxLength: 2 }), { minLength: 1, maxLength: 2 }),
    burners: fc.integer({ min: 1, max: 2 }),
    shelves: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ jobs, lags, stays, hands, burners, shelves }) => {
    const id = (k: number): string => `j${k % jobs.length}`;
    const inOrder = (a: number, b: number): [number, number] => {
      const [x, y] = [a % jobs.length, b % jobs.length];
      return x < y ? [x, y] : [y, x];
    };
    const pairs = lags
      .map((lag) => ({ ...lag, pair: inOrder(lag.a, lag.b) }))
      .filter((lag) => lag.pair[0] !== lag.pair[1]);
    const keptStays = stays.map((stay) => inOrder(stay.a, stay.b)).filter(([a, b]) => a !== b);
    return {
      length: LENGTH,
      jobs: jobs.map((one, k) => ({
        id: id(k),
        duration: one.duration,
        earliest: Math.min(one.earliest, LENGTH - one.duration),
        latest: Math.min(one.earliest + one.room, LENGTH - one.duration),
        handsNeeded: one.handsNeeded,
        needs: [
          ...(one.burner ? [{ kind: 'burner' as const, amount: 1 }] : []),
          ...(one.shelf ? [{ kind: 'fridge-shelf' as const, amount: 1 }] : []),
        ],
        ...(one.wish !== null && { wish: one.wish }),
        earlyWeight: one.earlyWeight,
        lateWeight: one.lateWeight,
      })),
      lags: [
        ...pairs.map(({ pair, min, more }) => ({
          from: id(pair[0]),
          to: id(pair[1]),
          min,
          ...(more !== null && { max: min + more }),
        })),
        // A stay ends after it begins.
        ...keptStays.map(([a, b]) => ({ from: id(a), to: id(b), min: 0 })),
      ],
      stays: keptStays.map(([a, b], k) => ({
        id: `stay${k}`,
        from: id(a),
        to: id(b),
        need: { kind: 'fridge-shelf' as const, amount: 1 },
      })),
      hands: hands.map((away, k) => ({ id: `hand${k}`, away })),
      capacity: { burner: burners, 'fridge-shelf': shelves },
    };
  });
