import { airCalcs } from '../air/calcs.ts';
import { fireCalcs } from '../fire/calcs.ts';
import { foodCalcs } from '../food/calcs.ts';
import { meatCalcs } from '../forecast/calcs.ts';
import { guestCalcs } from '../guests/calcs.ts';
import { heatCalcs } from '../heat/calcs.ts';
import { safetyCalcs } from '../safety/calcs.ts';
import { sauceCalcs } from '../sauce/calcs.ts';
import { tenderCalcs } from '../tender/calcs.ts';
import { convertCalc } from './convert.ts';
import type { CalcSpec } from './spec.ts';

/** Every figure that can be asked for, room by room: a room's list is one line here. */
// biome-ignore format: a room a line
const ROOMS: readonly (readonly CalcSpec[])[] = [
  [convertCalc],
  airCalcs,
  foodCalcs,
  heatCalcs,
  meatCalcs,
  tenderCalcs,
  fireCalcs,
  sauceCalcs,
  safetyCalcs,
  guestCalcs,
];

export const calcs: readonly CalcSpec[] = ROOMS.flat();
