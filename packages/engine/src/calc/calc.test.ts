/** The calc contract: how values are written, what is refused, what is answered. */
import { UNITS } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from './answer.ts';
import { curveIn } from './curve.ts';
import { mixIn } from './mix.ts';
import { calcs } from './registry.ts';
import { CalcProblem } from './spec.ts';
import { readWritten } from './written.ts';

const saidBy = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof CalcProblem) return `${error.said.id} ${error.said.params?.input}`;
    throw error;
  }
  return 'answered';
};
const refusal = (calc: string, inputs: string, output?: string) => saidBy(() => answer(calc, inputs, output));

describe('inputs as written', () => {
  it('keeps order free, drops quotes, trims', () => {
    expect([...readWritten(` b = 2 ;a="x; y | z"; c='q' ; `)]).toEqual([
      ['b', '2'],
      ['a', 'x; y | z'],
      ['c', 'q'],
    ]);
    expect([...readWritten('')]).toEqual([]);
  });

  it.each([
    ['a=1; a=2', 'calc.twice a'],
    ['a=1; nothing', 'calc.no-equals nothing'],
    ['=1', 'calc.no-key =1'],
    ['a="1', 'calc.open-quote a'],
    ['a="1" 2', 'calc.after-quote a'],
  ])('refuses %s', (text, said) => expect(saidBy(() => readWritten(text))).toBe(said));
});

describe('what is refused', () => {
  it.each([
    ['wetbulb', 'dry-bulb=40 °C', undefined, 'calc.unknown-calc wetbulb'],
    ['latent-heat', 'temperature=40 °C', 'cold', 'calc.unknown-output cold'],
    ['latent-heat', 'temperature=40 °C; dry-bulb=20 °C', undefined, 'calc.unknown-key dry-bulb'],
    ['latent-heat', '', undefined, 'calc.missing temperature'],
    ['latent-heat', 'temperature=', undefined, 'calc.empty temperature'],
    ['latent-heat', 'temperature=40', undefined, 'calc.unit-missing temperature'],
    ['latent-heat', 'temperature=40 kg', undefined, 'calc.unit-of-other-kind temperature'],
    ['latent-heat', 'temperature=40 °X', undefined, 'calc.unit-unknown temperature'],
    ['latent-heat', 'temperature=warm', undefined, 'calc.not-a-number temperature'],
    ['latent-heat', 'temperature=1e400 °C', undefined, 'calc.not-finite temperature'],
    ['latent-heat', 'temperature=-300 °C', undefined, 'calc.below-absolute-zero temperature'],
    ['latent-heat', 'temperature=150.001 °C', undefined, 'calc.out-of-range temperature'],
    ['standard-pressure', 'altitude=-501 m', undefined, 'calc.out-of-range altitude'],
    ['choi-okos', 'water=1; temperature=20 °C; direction=Along', undefined, 'calc.no-such-word direction'],
    [
      'choi-okos',
      'water=0.5; temperature=20 °C',
      undefined,
      'calc.fractions-do-not-add water|protein|fat|carbohydrate|fibre|ash',
    ],
    ['ingredient', 'ingredient=moonbeams', undefined, 'calc.unknown-ingredient ingredient'],
    ['volume-to-mass', 'ingredient=ketchup; volume=-1 cup', undefined, 'calc.negative volume'],
    ['convert', 'quantity=1 kg; to=m', undefined, 'calc.unit-of-other-kind quantity'],
    ['convert', 'quantity=1 kg; to=furlong', undefined, 'calc.unit-unknown to'],
    ['convert', 'quantity=-300 °C; to=K', undefined, 'calc.below-absolute-zero quantity'],
  ])('%s %s', (calc, inputs, output, said) => expect(refusal(calc, inputs, output)).toBe(said));

  it.each([
    ['0 min 60 °C', 'calc.curve-of-one curve'],
    ['0 min 60 °C | 30 min 70 °C | 20 min 75 °C', 'calc.times-not-increasing curve'],
    ['0 min 60 °C | 0 min 70 °C', 'calc.times-not-increasing curve'],
    ['0 min 60 °C | | 3 min 70 °C', 'calc.empty-item curve'],
    ['0 60 °C | 3 min 70 °C', 'calc.not-a-pair curve'],
    ['0 min 60 | 3 min 70 °C', 'calc.not-a-pair curve'],
  ])('curve %s', (text, said) => expect(saidBy(() => curveIn('curve', text))).toBe(said));
});

describe('what is read', () => {
  it('takes limits in any unit, ends included', () => {
    expect(answer('saturation-pressure', 'temperature=392 °F').value).toBeCloseTo(1554.8, 0);
    expect(answer('saturation-pressure', 'temperature=-40F').unit).toBe('kPa');
    expect(answer('latent-heat', 'temperature=302F').unit).toBe('kJ/kg');
  });

  it('converts, keeping the asked spelling', () => {
    expect(answer('convert', 'quantity=250 °F; to=°C').value).toBeCloseTo(121.1111, 4);
    expect(answer('convert', 'quantity=20C; to=K').value).toBeCloseTo(293.15, 10);
    expect(answer('convert', 'quantity=1 cup; to=fl oz')).toEqual({
      output: 'value',
      value: 8,
      unit: 'fl oz',
    });
    expect(answer('convert', 'quantity=50 %; to=1').value).toBeCloseTo(0.5, 12);
  });

  it('undoes a conversion for every pair of units of a kind', () => {
    const pairs = Object.values(UNITS).flatMap((units) =>
      units.flatMap((a) => units.map((b) => [a.symbol, b.symbol] as const)),
    );
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: 500, max: 900, noNaN: true }), ([a, b], x) => {
        const there = answer('convert', `quantity=${x} ${a}; to=${b}`).value as number;
        const back = answer('convert', `quantity=${there} ${b}; to=${a}`).value as number;
        expect(Math.abs(back / x - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('runs a curve from its first point, with or without blanks', () => {
    expect(curveIn('curve', '1 h 54.4 °C | 90min65.6°C')).toEqual({
      timesS: [0, 1800],
      temperaturesC: [expect.closeTo(54.4, 9), expect.closeTo(65.6, 9)],
    });
  });

  it('adds what stands twice in a mix, turns volumes by density', () => {
    const cup = answer('volume-to-mass', 'ingredient=ketchup; volume=1 cup').value as number;
    expect(mixIn('mix', 'ketchup 100 g | ketchup 1 cup')).toEqual([
      { ingredient: 'ketchup', massG: expect.closeTo(100 + cup, 9) },
    ]);
    expect(mixIn('mix', 'ketchup 1 oz')[0]!.massG).toBeCloseTo(28.349523, 6);
  });

  it('divides fractions by their sum', () => {
    const bare = answer('choi-okos', 'water=0.7; fat=0.3; temperature=40 °C').value as number;
    const over = answer('choi-okos', 'water=0.707; fat=0.303; temperature=40 °C').value as number;
    expect(over).toBeCloseTo(bare, 12);
  });
});

it('names every calc once, each with inputs and outputs of its own', () => {
  const names = calcs.map((calc) => calc.name);
  expect(new Set(names).size).toBe(names.length);
  for (const calc of calcs) {
    expect(calc.outputs.length).toBeGreaterThan(0);
    for (const list of [calc.inputs, calc.outputs]) {
      const keys = list.map((item) => item.name);
      expect(new Set(keys).size).toBe(keys.length);
    }
  }
});
