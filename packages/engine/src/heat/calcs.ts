import type { CalcSpec } from '../calc/spec.ts';
import { conductionCalcs } from './conductionCalcs.ts';
import { surfaceCalcs } from './surfaceCalcs.ts';

export const heatCalcs: readonly CalcSpec[] = [...surfaceCalcs, ...conductionCalcs];
