/** Whatever lies inside the ranges is answered with a finite figure or refused in words: no guard of a room is tripped. */
import { siSymbol, takesBareNumber } from '@pitwright/model';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answer } from './answer.ts';
import { calcs } from './registry.ts';
import { CalcProblem, type InputSpec } from './spec.ts';

/** Texts that an input with its own small language may hold. */
const TEXTS: Readonly<Record<string, readonly string[]>> = {
  quantity: ['250 °F', '1 cup', '3 kg'],
  to: ['K', 'mL', 'lb'],
  ingredient: ['ketchup', 'honey', 'nothing_known'],
  replace: ['ketchup'],
  with: ['tomato_puree'],
  formula: ['C3H8', 'CH1.4O0.6', 'H2O'],
  parts: ['117 kg 65 K | 85 kg 170 K', '3 kg'],
  'd-values': ['55 °C 21 min | 60 °C 3 min', '55 °C 21 min'],
  concentration: ['1 g/100 mL', '0.1 mol/L'],
  'pre-exponential': ['7.98e43 1/min'],
  cutoff: ['none', '130 °F'],
  cap: ['none', '165 °F'],
};

/** A thousand steps of the range, ends included: nothing as small as only a fuzzer writes. */
const within = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map((step) => min + ((max - min) * step) / 1000);

function written(input: InputSpec): fc.Arbitrary<string> {
  switch (input.type) {
    case 'quantity': {
      const { min = 0, max = min + 1000 } = input;
      const unit =
        input.kind === 'temperature' ? '°C' : takesBareNumber(input.kind) ? '' : siSymbol(input.kind);
      return within(min, max).map((value) => `${value} ${unit}`);
    }
    case 'word':
      return fc.constantFrom(...input.words);
    case 'text':
      return fc.constantFrom(...(TEXTS[input.name] ?? ['x']));
    case 'curve':
      return fc
        .array(fc.tuple(within(1, 400), within(-20, 150)), { minLength: 2, maxLength: 5 })
        .map((points) => {
          let minutes = 0;
          return points
            .map(([step, celsius]) => {
              minutes += step;
              return `${minutes} min ${celsius} °C`;
            })
            .join(' | ');
        });
    case 'mix':
      return within(0, 500).map(
        (grams) => `ketchup ${grams} g | vinegar_cider_5 100 g | sugar_brown_packed 2 oz`,
      );
  }
}

/** One piece takes a whole ensemble; its own tests sweep it. */
const swept = calcs.filter((calc) => calc.name !== 'piece');

it.each(swept.map((calc) => [calc.name, calc] as const))('%s', (_, calc) => {
  const optional = (input: InputSpec) =>
    input.optional ? fc.option(written(input), { nil: undefined }) : written(input);
  const rows = fc.tuple(
    fc.tuple(...calc.inputs.map(optional)),
    fc.constantFrom(...calc.outputs.map((output) => output.name)),
  );
  fc.assert(
    fc.property(rows, ([values, output]) => {
      const inputs = new Map(
        calc.inputs.flatMap((input, i): [string, string][] =>
          values[i] === undefined ? [] : [[input.name, values[i]!]],
        ),
      );
      try {
        const { value } = answer(calc.name, inputs, output);
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        else expect(value.length).toBeGreaterThan(0);
      } catch (error) {
        if (!(error instanceof CalcProblem)) throw error;
        expect(error.said.id).not.toMatch(/outside-validity|not-finite-answer/);
        expect(error.said.params?.input).toBeTruthy();
      }
    }),
    { numRuns: 60 },
  );
});
