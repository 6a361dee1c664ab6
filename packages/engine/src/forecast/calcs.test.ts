// What is told of a piece moves its figures as it does in a cook. Evidence: law.
import { describe, expect, test } from 'vitest';
import { answer } from '../calc/answer.ts';
import { CalcProblem } from '../calc/spec.ts';

const figure = (inputs: string, output: string): number => Number(answer('piece', inputs, output).value);
const RACK = 'cut=loin-back-ribs; mass=1.1 kg; pit-temperature=121 °C; stages=bare 3 h';
const FLAT = 'cut=brisket-flat; mass=2.5 kg; pit-temperature=121 °C; stages=bare until 85 °C';

describe('the piece of the calc', () => {
  test('a membrane left on warms a rack sooner, for less of it dries', () => {
    expect(figure(`${RACK}; membrane=yes`, 'core-temperature')).toBeGreaterThan(
      figure(`${RACK}; membrane=no`, 'core-temperature'),
    );
  });

  test('a thick cap of fat delays a flat', () => {
    expect(figure(`${FLAT}; fat-cap=12 mm`, 'elapsed')).toBeGreaterThan(
      figure(`${FLAT}; fat-cap=6 mm`, 'elapsed'),
    );
  });

  test('added solution is water that is lost again', () => {
    expect(figure(`${FLAT}; solution-added=12 %`, 'mass-loss')).toBeGreaterThan(figure(FLAT, 'mass-loss'));
  });

  test('a face that the cut has not is refused by name', () => {
    for (const [inputs, input] of [
      [`${FLAT}; membrane=yes`, 'membrane'],
      [`${RACK}; fat-cap=6 mm`, 'fat-cap'],
    ] as const) {
      expect(() => answer('piece', inputs, 'elapsed')).toThrow(CalcProblem);
      try {
        answer('piece', inputs, 'elapsed');
      } catch (problem) {
        expect((problem as CalcProblem).said).toMatchObject({ id: 'calc.not-here', params: { input } });
      }
    }
  });
});
