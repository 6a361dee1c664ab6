import type { CalcSpec } from '../calc/spec.ts';
import { mixtureCalcs } from './calcs/mixture.ts';
import { solutionCalcs } from './calcs/solutions.ts';
import { stoveCalcs } from './calcs/stove.ts';
import { tasteAndMeatCalcs } from './calcs/tasteAndMeat.ts';
import { thicknessCalcs } from './calcs/thickness.ts';

/** Every figure of this room that can be asked for by name. */
export const sauceCalcs: readonly CalcSpec[] = [
  ...mixtureCalcs,
  ...solutionCalcs,
  ...stoveCalcs,
  ...thicknessCalcs,
  ...tasteAndMeatCalcs,
];
