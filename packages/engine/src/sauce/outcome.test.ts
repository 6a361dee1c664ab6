/** What a formula becomes: minutes, mass, looks, keeping, and what is said when it cannot be. */
import { type Formula, type FormulaLine, quantity, type Simmer } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { lookAt } from './look.ts';
import { nutrition } from './nutrition.ts';
import { sauceOutcome } from './outcome.ts';
import { waterToLoosenG } from './target.ts';

/** Lines written `ketchup 480 g | cola 375 mL`. */
function linesFrom(text: string): FormulaLine[] {
  return text.split('|').map((item) => {
    const [ingredient, value, unit] = item.trim().split(' ');
    const isVolume = ['mL', 'L', 'cup', 'tbsp', 'tsp'].includes(unit!);
    return {
      ingredient: ingredient!,
      amount: quantity(isVolume ? 'volume' : 'mass', Number(value), unit!),
    };
  });
}
const sauce = (text: string, simmer?: Simmer): Formula => ({
  id: 'f',
  name: 'Sauce',
  kind: 'sauce',
  lines: linesFrom(text),
  ...(simmer && { simmer }),
});

const KETCHUP_SAUCE =
  'ketchup 500 g | vinegar_cider_5 180 g | sugar_brown_packed 200 g | worcestershire_type 30 g | salt_table 4 g | paprika 6 g | cayenne 1 g | garlic_powder 4 g | cola 375 g';
const PAN_24: Simmer = { panDiameter: quantity('length', 24, 'cm'), panHeight: quantity('length', 14, 'cm') };

const outcomeOf = (formula: Formula, options = {}) => {
  const answer = sauceOutcome(formula, options);
  if (!answer.ok) throw new Error(answer.problems.map((p) => p.id).join());
  return answer;
};
const problemsOf = (formula: Formula) => {
  const answer = sauceOutcome(formula);
  return answer.ok ? [] : answer.problems.map((p) => p.id);
};

describe('the ordinary sauce', () => {
  // Common practice, no source: a ketchup–vinegar–sugar sauce of about 1.3 kg, thinned with a soft drink, held at a
  // simmer in a 24 cm saucepan coats a spoon after about 20–40 min and is visibly thicker from the fridge.
  const made = outcomeOf(sauce(KETCHUP_SAUCE, PAN_24));

  test('coats a spoon after about 20 to 40 minutes', () => {
    expect(made.rawMassG).toBeCloseTo(1300, 6);
    expect(made.looks.pot.thickness).toBe(2);
    expect(made.simmerS!.p50 / 60).toBeGreaterThan(20);
    expect(made.simmerS!.p50 / 60).toBeLessThan(40);
    expect(made.simmerS!.p10).toBeLessThan(made.simmerS!.p50);
    expect(made.simmerS!.p90).toBeGreaterThan(made.simmerS!.p50);
  });

  test('does not coat it before, and is thicker from the fridge', () => {
    const unboiled = outcomeOf(sauce(KETCHUP_SAUCE));
    expect(unboiled.looks.pot.thickness).toBeLessThan(2);
    expect(unboiled.simmerS).toBeUndefined();
    expect(made.looks.fridge.thickness).toBeGreaterThan(made.looks.pot.thickness);
    // The yield stress of the reference ketchup grows 4.6 times from 95 to 5 °C.
    expect(made.looks.fridge.yieldStressPa / made.looks.pot.yieldStressPa).toBeCloseTo(4.63, 1);
  });

  test('the same seed gives the same range, another seed nearly so', () => {
    expect(outcomeOf(sauce(KETCHUP_SAUCE, PAN_24)).simmerS).toEqual(made.simmerS);
    const other = outcomeOf(sauce(KETCHUP_SAUCE, PAN_24), { seed: 2 }).simmerS!;
    expect(Math.abs(other.p50 / made.simmerS!.p50 - 1)).toBeLessThan(0.1);
  });

  test('a spoon is 8 % in doubt, a scale a gram', () => {
    expect(outcomeOf(sauce('ketchup 2 cup')).rawMassSdG).toBeCloseTo(0.08 * 2 * 236.5882365 * 1.15, 6);
    expect(outcomeOf(sauce('ketchup 100 g')).rawMassSdG).toBeCloseTo(1, 9);
    expect(outcomeOf(sauce('ketchup 1000 g')).rawMassSdG).toBeCloseTo(5, 9);
  });

  test('the curve ends at the water that goes', () => {
    const last = made.curve!.points.at(-1)!;
    expect(last.waterOffG).toBeCloseTo(made.waterOffG, 6);
    expect(Math.abs(last.massG - made.finishedMassG)).toBeLessThan(0.5);
    expect(made.heatingS!).toBeLessThan(last.timeS);
  });

  test('nobody told the flame: it is said', () => {
    expect(made.notices.map((n) => n.id)).toContain('sauce.flame-assumed');
  });

  test('high up it boils cooler and a told power takes about as long', () => {
    const power = {
      ...PAN_24,
      evaporated: quantity('mass', 350, 'g'),
      power: quantity('power', 900, 'W'),
      source: 'induction',
    } as const;
    const sea = outcomeOf(sauce(KETCHUP_SAUCE, power));
    const high = outcomeOf(sauce(KETCHUP_SAUCE, power), { altitudeM: 2000 });
    expect(high.curve!.points.at(-1)!.sauceC).toBeLessThan(sea.curve!.points.at(-1)!.sauceC - 5);
    expect(Math.abs(high.simmerS!.p50 / sea.simmerS!.p50 - 1)).toBeLessThan(0.1);
  });
});

describe('limits', () => {
  test('with heat enough the boil is limited by energy and the lid only returns condensate', () => {
    const told = {
      ...PAN_24,
      evaporated: quantity('mass', 200, 'g'),
      power: quantity('power', 1500, 'W'),
      source: 'induction',
    } as const;
    const open = outcomeOf(sauce(KETCHUP_SAUCE, told));
    const wide = outcomeOf(sauce(KETCHUP_SAUCE, { ...told, panDiameter: quantity('length', 32, 'cm') }));
    const ajar = outcomeOf(sauce(KETCHUP_SAUCE, { ...told, lid: 'ajar' }));
    expect(open.curve!.points.at(-1)!.limitedBy).toBe('energy');
    expect(Math.abs(wide.simmerS!.p50 / open.simmerS!.p50 - 1)).toBeLessThan(0.1);
    expect(ajar.simmerS!.p50).toBeGreaterThan(1.3 * open.simmerS!.p50);
  });

  test('a flame too low smiles, and a wider pan is faster', () => {
    const low = {
      ...PAN_24,
      evaporated: quantity('mass', 200, 'g'),
      power: quantity('power', 450, 'W'),
      source: 'induction',
    } as const;
    const narrow = outcomeOf(sauce(KETCHUP_SAUCE, low));
    expect(narrow.curve!.points.at(-1)!.limitedBy).toBe('surface');
    const held = { ...PAN_24, evaporated: quantity('mass', 200, 'g') };
    const simmering = (diameterCm: number): number => {
      const pan = { ...held, panDiameter: quantity('length', diameterCm, 'cm') };
      const { curve } = outcomeOf(sauce(KETCHUP_SAUCE, pan));
      return curve!.totalS - curve!.heatingS;
    };
    // By the area of the open surface, squared diameters: 0.64.
    expect(simmering(30) / simmering(24)).toBeCloseTo(0.64, 1);
  });
});

describe('bad input is answered with what is wrong', () => {
  test.each([
    ['negative mass', 'ketchup -480 g', ['sauce.negative-amount']],
    ['unknown ingredient', 'unicorn 5 g', ['sauce.unknown-ingredient']],
    [
      'misnamed ingredient',
      'tomato_ketchup 5 g | cider_vinegar 5 g',
      ['sauce.unknown-ingredient-near', 'sauce.unknown-ingredient-near'],
    ],
    ['curing salt', 'cure_6_25 5 g', ['sauce.no-cures']],
    ['nothing at all', 'ketchup 0 g', ['sauce.no-mass']],
  ])('%s', (_, text, ids) => {
    expect(problemsOf(sauce(text))).toEqual(ids);
  });

  test('no lines', () => {
    expect(problemsOf({ id: 'f', name: 'f', kind: 'sauce', lines: [] })).toEqual(['sauce.no-lines']);
  });

  test('more boiled off than there is, and more than the pan holds', () => {
    const text = 'ketchup 100 g | water 50 g';
    expect(problemsOf(sauce(text, { evaporated: quantity('mass', 200, 'g') }))).toEqual(['sauce.boils-dry']);
    expect(problemsOf(sauce('ketchup 9 kg | water 2 kg', PAN_24))).toEqual(['sauce.pan-overflows']);
  });

  test('what cannot thicken says so', () => {
    const thin = outcomeOf(sauce('vinegar_cider_5 500 g | salt_table 10 g', PAN_24));
    expect(thin.notices.map((n) => n.id)).toContain('sauce.never-thickens');
  });

  test('a pan that would foam over is a caution', () => {
    const full = outcomeOf(sauce('ketchup 3 kg | water 1.6 kg', PAN_24));
    expect(full.notices.map((n) => n.id)).toContain('sauce.no-room-for-foam');
  });
});

describe('added late', () => {
  const lines =
    'ketchup 500 g | vinegar_cider_5 150 g | sugar_brown_packed 150 g | bourbon_45 40 g | garlic_raw 10 g';
  const told = { ...PAN_24, evaporated: quantity('mass', 100, 'g') };
  const early = outcomeOf(sauce(lines, told));
  const stirredIn = (formula: Formula, places: readonly number[]): Formula => ({
    ...formula,
    lines: formula.lines.map((line, i) => (places.includes(i) ? { ...line, late: true } : line)),
  });
  const late = outcomeOf(stirredIn(sauce(lines, told), [3, 4]));

  test('keeps its alcohol, weighs the same in the end but for what boils off with the water, and keeps shorter', () => {
    expect(late.finished.ethanolG).toBeCloseTo(40 * 0.378, 6);
    expect(early.finished.ethanolG).toBeLessThan(0.25 * late.finished.ethanolG);
    expect(late.finishedMassG - early.finishedMassG).toBeGreaterThan(10);
    expect(early.keeping.isPerishable).toBe(false);
    expect(late.keeping.said[0]!.id).toBe('sauce.keep-fresh-in-it');
  });

  test('a thickness wanted from the fridge counts what thins it afterwards', () => {
    const mixed = sauce(
      'tomato_paste 200 g | water 900 g | sugar_white 100 g | vinegar_cider_5 200 g',
      PAN_24,
    );
    const thinned = outcomeOf(stirredIn(mixed, [3]), { yieldWantedPa: 20 });
    expect(thinned.looks.fridge.yieldStressPa).toBeCloseTo(20, 3);
    // In the pot it is thicker than it will be: the vinegar is still to come.
    expect(thinned.looks.pot.level).toBeGreaterThan(outcomeOf(mixed, { yieldWantedPa: 20 }).looks.pot.level);
    expect(thinned.lateMassG).toBeCloseTo(200, 9);
    expect(thinned.finishedMassG).toBeCloseTo(thinned.rawMassG - thinned.waterOffG + 200, 6);
  });

  test('everything late leaves an empty pot, and without a simmer nothing is late', () => {
    const all = sauceOutcome(stirredIn(sauce('ketchup 100 g', told), [0]));
    expect(!all.ok && all.problems[0]!.id).toBe('sauce.all-late');
    const cold = outcomeOf(stirredIn(sauce('ketchup 100 g | honey 20 g'), [1]));
    expect(cold.lateMassG).toBe(0);
    expect(cold.rawMassG).toBeCloseTo(120, 9);
  });

  test('a simmer splits some of the sugar, and the mass stays', () => {
    const unboiled = outcomeOf(sauce(lines));
    expect(early.finished.sucroseG).toBeLessThan(0.97 * unboiled.finished.sucroseG);
    expect(early.finished.sucroseG).toBeGreaterThan(0.5 * unboiled.finished.sucroseG);
  });

  test('loosened with the water that is said, it looks one class thinner from the fridge; less would not do', () => {
    const g = early.loosenG!;
    const level = (waterG: number) =>
      lookAt({ ...early.finished, waterG: early.finished.waterG + waterG }, 5).level;
    expect(g).toBeGreaterThan(0);
    expect(level(g)).toBeCloseTo(early.looks.fridge.thickness - 0.25, 6);
    expect(level(0.9 * g)).toBeGreaterThan(level(g));
    // What runs already has nothing to be thinned to.
    expect(waterToLoosenG(outcomeOf(sauce('vinegar_cider_5 200 g')).finished, 5)).toBeUndefined();
  });

  test('a serving of 30 g of ketchup has the table’s energy and salt', () => {
    const { finished } = outcomeOf(sauce('ketchup 300 g'));
    const serving = nutrition(finished, 30);
    // USDA SR28, NDB 11935: 101 kcal, 27.4 g carbohydrate, 21.27 g sugars per 100 g.
    expect(serving.energyKcal).toBeCloseTo(30.3, 6);
    expect(serving.carbohydrateG).toBeCloseTo(0.3 * 27.4, 1);
    expect(serving.sugarsG).toBeCloseTo(0.3 * 21.27, 6);
  });
});

describe('keeping', () => {
  test('sour and simmered keeps weeks, never on the shelf', () => {
    const { keeping } = outcomeOf(sauce(KETCHUP_SAUCE, PAN_24));
    expect([keeping.daysLow, keeping.daysHigh]).toEqual([14, 28]);
    expect(keeping.said.map((s) => s.id)).toContain('sauce.keep-cold');
  });
  test.each([
    ['butter in it', 'ketchup 500 g | butter_salted 50 g', 'sauce.keep-fresh-in-it'],
    ['raw garlic after cooking', 'ketchup 500 g | garlic_raw 10 g', 'sauce.keep-fresh-in-it'],
    ['hardly sour', 'soy_sauce 200 g | honey 100 g | water 100 g', 'sauce.keep-not-sour'],
  ])('%s: four days', (_, text, id) => {
    const { keeping } = outcomeOf(sauce(text));
    expect(keeping.daysHigh).toBe(4);
    expect(keeping.said.map((s) => s.id)).toContain(id);
  });
});
