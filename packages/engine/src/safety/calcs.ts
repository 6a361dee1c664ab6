import type { CalcSpec } from '../calc/spec.ts';
import { chillingCalcs } from './calcs/chilling.ts';
import { growthCalcs } from './calcs/growth.ts';
import { keepingCalcs } from './calcs/keeping.ts';
import { lethalityCalcs } from './calcs/lethality.ts';

export const safetyCalcs: readonly CalcSpec[] = [
  ...lethalityCalcs,
  ...growthCalcs,
  ...chillingCalcs,
  ...keepingCalcs,
];
