/** Yields and portions against published figures; laws of the shortage; changes in one step. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exampleCook } from '../../../../validation/scenarios/kitchens.ts';
import { allIngredients } from '../food/data/ingredients.ts';
import { findIngredient } from '../sauce/formulaLines.ts';
import { allergenTable } from './at-risk.ts';
import { buyingList } from './buying.ts';
import { withGuests, withOtherCut } from './changes.ts';
import { fuelOf } from './fuel.ts';
import { demandOf, edibleOf, itemsNeeded, portionsOf, shortChance, tableServed } from './portions.ts';
import { edibleYield, YIELD_CUTS } from './yields.ts';

const shareOf = (cut: string) => edibleYield(cut)!.share;

describe('published yields lie within the range', () => {
  test.each([
    ['spareribs', 0.466, 'US Army Natick Laboratories, 3-lb racks'],
    ['spareribs', 0.39, 'USDA SR28, braised'],
    ['brisket-whole', 0.46, 'shop cooking 32 a night'],
    ['brisket-whole', 0.5, '14 lb to 7 lb'],
    ['brisket-whole', 0.36, 'trimmed, scraps discarded'],
    ['pork-shoulder', 0.43, '136 lb weighed'],
    ['pork-shoulder', 0.5, 'bone in'],
    ['beef-short-ribs', 0.496, 'USDA SR28'],
  ])('%s %d (%s)', (cut, share) => {
    expect(share).toBeGreaterThanOrEqual(shareOf(cut).p10);
    expect(share).toBeLessThanOrEqual(shareOf(cut).p90);
  });

  test('every range is in order and below the whole', () => {
    for (const cut of YIELD_CUTS) {
      const { p10, p50, p90 } = shareOf(cut);
      expect(0 < p10 && p10 < p50 && p50 < p90 && p90 < 1).toBe(true);
    }
  });
});

describe('portions', () => {
  test('an adult eats 140 to 225 g of cooked boneless meat (catering tables, 5–8 oz)', () => {
    const { meanKg } = demandOf({ adults: 100, children: 0, otherDishes: 2 });
    expect(meanKg / 100).toBeGreaterThan(0.14);
    expect(meanKg / 100).toBeLessThan(0.225);
  });

  test('ribs as the only meat: about half a spare rack each (5–6 bones; catering tables)', () => {
    const racks = itemsNeeded({ adults: 8, children: 0 }, { cut: 'spareribs', massKg: 1.6 }, [], 0.5)!;
    expect(racks / 8).toBeGreaterThanOrEqual(0.25);
    expect(racks / 8).toBeLessThanOrEqual(0.55);
  });

  test('more meat never runs short more often, more people never less often', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 40 }), (adults, count) => {
        const short = (n: number, k: number): number =>
          shortChance(
            edibleOf({ cut: 'loin-back-ribs', count: k, mass: { kind: 'mass', si: 1.1 } })!,
            demandOf({ adults: n, children: 0 }),
          );
        expect(short(adults, count + 1)).toBeLessThanOrEqual(short(adults, count) + 1e-12);
        expect(short(adults + 1, count)).toBeGreaterThanOrEqual(short(adults, count) - 1e-12);
      }),
    );
  });

  test('a table served runs short no oftener than asked, one longer runs short oftener', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        (count, asked) => {
          const piece = {
            ...exampleCook('regatta-dinner').pieces[0]!,
            cut: 'loin-back-ribs',
            count,
          } as const;
          const served = tableServed([piece], asked);
          const short = (adults: number): number =>
            shortChance(edibleOf(piece)!, demandOf({ adults, children: 0 }));
          if (served > 0) expect(short(served)).toBeLessThanOrEqual(asked);
          expect(short(served + 1)).toBeGreaterThan(asked);
        },
      ),
    );
    expect(tableServed([])).toBe(0);
  });

  test('a piece of unknown yield is named, not guessed', () => {
    const cook = exampleCook('regatta-dinner');
    const odd = { ...cook, pieces: [{ ...cook.pieces[0]!, id: 'x', cut: 'tongue' }] };
    expect(portionsOf(odd).unknownPieceIds).toEqual(['x']);
  });
});

describe('changes in one step', () => {
  const cook = exampleCook('regatta-dinner');

  test('three cancel: the same meat runs short less often', () => {
    const fewer = withGuests(cook, { adults: -3 });
    expect(fewer.guests.adults).toBe(cook.guests.adults - 3);
    expect(portionsOf(fewer).shortChance).toBeLessThan(portionsOf(cook).shortChance);
  });

  test('the shop has only heavy spare racks: at most one such table in a hundred runs short, and no more than it has', () => {
    const modest = { ...cook, guests: { ...cook.guests, appetite: 'ordinary' as const, otherDishes: 3 } };
    const swapped = withOtherCut(modest, 'b', { cut: 'spareribs', massKg: 2.1 });
    expect(portionsOf(swapped).shortChance).toBeLessThanOrEqual(0.01);
    expect(
      withOtherCut(modest, 'b', { cut: 'spareribs', massKg: 2.1, atMost: 1 }).pieces.find(
        (p) => p.id === 'b',
      )!.count,
    ).toBe(1);
  });
});

describe('buying', () => {
  const cook = exampleCook('regatta-dinner');
  const neededByS = Date.parse('2027-09-11T14:00:00Z') / 1000;

  test('adds up what the formulas need of one ingredient, in mass and volume', () => {
    const list = buyingList(cook, 16 * 3600, neededByS);
    const tea = list.lines.find((line) => line.what === 'tea_black')!;
    // 1.2 L in the glaze and 250 mL in the spritz.
    expect(tea.needM3).toBeCloseTo(1.45e-3, 9);
    const salt = list.lines.find((line) => line.what === 'salt_sea_fine')!;
    expect(salt.needKg).toBeCloseTo(0.076, 9);
  });

  test('buys whole packs, less the larder, at their price', () => {
    const list = buyingList(cook, 0, neededByS, {
      larderKg: { salt_sea_fine: 0.01 },
      packKg: { salt_sea_fine: 0.05 },
      pricePerKg: { salt_sea_fine: 2 },
    });
    const salt = list.lines.find((line) => line.what === 'salt_sea_fine')!;
    expect(salt).toMatchObject({ haveKg: 0.01, packs: 2 });
    expect(salt.cost).toBeCloseTo(0.2, 12);
    expect(list.costPerGuest).toBeCloseTo(0.2 / 18, 12);
  });

  test('what would do in its place brings no allergen, is no other measure of it, and is never a condiment', () => {
    const one = (ingredient: string) => ({
      ingredient,
      amount: { kind: 'mass' as const, si: 0.1 },
    });
    const rows = allIngredients();
    const all = { ...cook, formulas: [{ ...cook.formulas[0]!, lines: rows.map(({ id }) => one(id)) }] };
    const { lines } = buyingList(all, 0, neededByS);
    const others = (id: string) => lines.find((line) => line.what === id)!.substitutes;
    expect(others('hot_sauce_vinegar')).toEqual([]);
    expect(others('sugar_brown_packed')).not.toContain('sugar_brown_loose');
    expect(others('vinegar_cider_5')).toContain('vinegar_white_5');
    for (const { id, allergensUs } of rows)
      for (const other of others(id))
        expect(allergensUs).toEqual(expect.arrayContaining([...findIngredient(other)!.allergensUs]));
  });

  test('a frozen 3.6 kg shoulder goes into the fridge two days before (24 h for 4 lb, USDA)', () => {
    const thaw = buyingList(cook, 0, neededByS).thaw.find((line) => line.pieceId === 'd')!;
    const days = (neededByS - Date.parse(thaw.intoFridgeAt) / 1000) / 86400;
    expect(days).toBeCloseTo(3.6 / 0.45359237 / 4, 3);
  });

  test('a backyard offset takes 1 to 2 kg of wood an hour (common practice, no source)', () => {
    const { woodKg } = fuelOf(cook, 10 * 3600);
    expect(woodKg.p10).toBeGreaterThanOrEqual(10);
    expect(woodKg.p90).toBeLessThanOrEqual(22);
  });

  test('a kettle keeps 7 to 9 h on 2.3 to 2.7 kg of briquettes (common practice, no source)', () => {
    const kettle = { ...cook, pit: { ...cook.pit, type: 'kettle' as const } };
    const burnt = (hours: number) =>
      fuelOf(kettle, hours * 3600).charcoalKg.p50 - fuelOf(kettle, 0).charcoalKg.p50;
    expect(burnt(7)).toBeLessThanOrEqual(2.3);
    expect(burnt(9.1)).toBeGreaterThanOrEqual(2.7);
    expect(burnt(8)).toBeCloseTo(2.5, 0);
  });
});

test('an allergen that a guest named and nothing holds is not promised away', () => {
  const table = allergenTable(exampleCook('regatta-dinner'));
  expect(table.lines.find((line) => line.allergen === 'sesame')).toMatchObject({
    isNamed: true,
    formulaIds: [],
  });
  expect(table.said.map((said) => said.id)).toContain('guests.allergen-not-found');
});
