import type { CalcSpec } from '../calc/spec.ts';
import { coalsCalcs } from './calcs/coals.ts';
import { fuelCalcs } from './calcs/fuel.ts';
import { pitCalcs } from './calcs/pit.ts';
import { wallCalcs } from './calcs/walls.ts';
import { woodCalcs } from './calcs/wood.ts';

export const fireCalcs: readonly CalcSpec[] = [
  ...fuelCalcs,
  ...woodCalcs,
  ...wallCalcs,
  ...pitCalcs,
  ...coalsCalcs,
];
