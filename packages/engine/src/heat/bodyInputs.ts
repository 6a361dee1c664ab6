import { quantityInput, wordInput } from '../calc/describe.ts';
import { maybeNumber, numberOf, textOf, without } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcInputs, InputSpec } from '../calc/spec.ts';
import { type Body, conductionSeries } from './conduction.ts';
import { SERIES_SHAPES, type SeriesShape } from './eigenvalues.ts';

/** A body that heats or cools: its shape, sizes, surface and stuff. */
export const BODY: readonly InputSpec[] = [
  wordInput('shape', [...SERIES_SHAPES, 'brick', 'short-cylinder']),
  quantityInput('half-thickness', 'length', { optional: true, remark: 'the radius of round bodies' }),
  quantityInput('half-width', 'length', { optional: true, remark: 'brick' }),
  quantityInput('half-length', 'length', { optional: true, remark: 'brick and short-cylinder' }),
  quantityInput('coefficient', 'coefficient', { optional: true }),
  quantityInput('conductivity', 'conductivity', { range: [0.02, 500, 'W/mK'], optional: true }),
  quantityInput('diffusivity', 'diffusivity', { range: [0.01, 200, 'mm²/s'], optional: true }),
  quantityInput('biot', 'number', {
    optional: true,
    remark: 'slab, cylinder, sphere: for coefficient and conductivity',
  }),
];

/** A size or rate that must be there and above zero. @throws CalcProblem */
export function positiveOf(inputs: CalcInputs, name: string): number {
  const value = numberOf(inputs, name);
  return value > 0 ? value : refuse('calc.impossible', { input: name, reason: 'it must be above zero' });
}

const isSeries = (shape: string): shape is SeriesShape =>
  (SERIES_SHAPES as readonly string[]).includes(shape);

/** Biot number of a simple shape, given itself or by coefficient, size and conductivity. */
function biotOf(inputs: CalcInputs): number {
  const biot = maybeNumber(inputs, 'biot');
  if (biot === undefined)
    return (
      (numberOf(inputs, 'coefficient') * positiveOf(inputs, 'half-thickness')) /
      numberOf(inputs, 'conductivity')
    );
  without(inputs, ['coefficient'], 'the Biot number stands for it');
  return biot >= 0 ? biot : refuse('calc.impossible', { input: 'biot', reason: 'it is never negative' });
}

/**
 * The body meant. A simple shape whose size is not told has half-thickness 1, so that its time is a Fourier number.
 * @throws CalcProblem on a size that is missing or that the shape does not have
 */
export function bodyOf(inputs: CalcInputs): Body {
  const shape = textOf(inputs, 'shape');
  if (isSeries(shape)) {
    without(inputs, ['half-width', 'half-length'], `a ${shape} has no such size`);
    const lengthM = inputs['half-thickness'] === undefined ? 1 : positiveOf(inputs, 'half-thickness');
    return { axes: [{ series: conductionSeries(shape, biotOf(inputs)), lengthM }] };
  }
  without(inputs, ['biot'], 'give the sizes, the coefficient and the conductivity of this shape');
  if (shape === 'short-cylinder') without(inputs, ['half-width'], 'a short cylinder has no such size');
  const overConductivity = numberOf(inputs, 'coefficient') / numberOf(inputs, 'conductivity');
  const axis = (series: SeriesShape, name: string) => {
    const lengthM = positiveOf(inputs, name);
    return { series: conductionSeries(series, overConductivity * lengthM), lengthM };
  };
  return shape === 'brick'
    ? { axes: [axis('slab', 'half-thickness'), axis('slab', 'half-width'), axis('slab', 'half-length')] }
    : { axes: [axis('cylinder', 'half-thickness'), axis('slab', 'half-length')] };
}
