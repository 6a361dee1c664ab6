import { COALS, type Coals, FIRE_SHIELDS, type FireShield } from '@pitwright/model';
import { quantityInput, wordInput } from '../../calc/describe.ts';
import { maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { BED_C, coalsFluxWm2, wallRiseK } from '../coals.ts';

export const coalsCalcs: readonly CalcSpec[] = [
  {
    name: 'coals-flux',
    room: 'fire',
    summary: 'what coals shine on the side of a piece that sees them, over what its walls would',
    inputs: [
      quantityInput('distance', 'length', { range: [3, 150, 'cm'] }),
      quantityInput('across', 'length', { range: [5, 200, 'cm'], byDefault: [30, 'cm'] }),
      quantityInput('piece-diameter', 'length', { range: [1, 100, 'cm'], byDefault: [20, 'cm'] }),
      wordInput('coals', COALS, { byDefault: 'grey' }),
      quantityInput('bed-temperature', 'temperature', { range: [200, 1200, '°C'], optional: true }),
      wordInput('between', ['nothing', ...FIRE_SHIELDS], { byDefault: 'nothing' }),
      quantityInput('pit-temperature', 'temperature', { range: [0, 350, '°C'], byDefault: [121, '°C'] }),
    ],
    outputs: [
      { name: 'heat-flux', unit: 'W/m²', kind: 'heat-flux' },
      { name: 'wall-rise', unit: 'K', kind: 'difference' },
    ],
    source: 'discs on one axis, Howell C-41; bed of coals as told in fire.md',
    page: 'fire.md',
    evaluate(inputs) {
      const pitC = numberOf(inputs, 'pit-temperature');
      const between = textOf(inputs, 'between');
      const bedC = maybeNumber(inputs, 'bed-temperature') ?? BED_C[textOf(inputs, 'coals') as Coals].mean;
      if (!(bedC > pitC))
        return refuse('calc.impossible', {
          input: 'bed-temperature',
          reason: 'coals no hotter than the pit shine on nothing, take a hotter bed',
        });
      const flux = coalsFluxWm2(
        {
          pieceRadiusM: numberOf(inputs, 'piece-diameter') / 2,
          bedRadiusM: numberOf(inputs, 'across') / 2,
          distanceM: numberOf(inputs, 'distance'),
          bedC,
          ...(between !== 'nothing' && { between: between as FireShield }),
        },
        pitC,
        pitC,
      );
      return { 'heat-flux': flux, 'wall-rise': wallRiseK(flux, pitC) };
    },
  },
];
