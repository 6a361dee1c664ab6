import { PLATED_SD, THICKNESS_SD } from '@pitwright/engine/sauce';

/** 10 and 90 % of a normal stand so many standard deviations from its mean. */
const P90_SD = 1.2816;

/** How far the foreseen yield stress may be off, 8 times in 10, as a factor either way. */
export const stressSpread = (isPlated: boolean): number =>
  Math.exp(P90_SD * (isPlated ? PLATED_SD : THICKNESS_SD));

/** The same of a normal figure, from its standard deviation. */
export const p90Of = (sd: number): number => P90_SD * sd;
