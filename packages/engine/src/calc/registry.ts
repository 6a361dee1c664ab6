import { airCalcs } from '../air/calcs.ts';
import { foodCalcs } from '../food/calcs.ts';
import { sauceCalcs } from '../sauce/calcs.ts';
import { convertCalc } from './convert.ts';
import type { CalcSpec } from './spec.ts';

/** Every figure that can be asked for, room by room. */
export const calcs: readonly CalcSpec[] = [convertCalc, ...airCalcs, ...foodCalcs, ...sauceCalcs];
