import { findCut } from './cuts.ts';

/** Shares of a cut's usual mass between which nearly all pieces lie; birds are sold in more sizes. @source common practice, no source */
const SHARES = { meat: [0.5, 1.7], poultry: [0.5, 2.2] } as const;

/** Between what one piece of a cut ordinarily weighs [kg]; undefined for a cut of one's own. A piece may be another all the same. */
export function ordinaryMassKg(cutId: string): { readonly min: number; readonly max: number } | undefined {
  const cut = findCut(cutId);
  if (!cut) return undefined;
  const [min, max] = SHARES[cut.isPoultry ? 'poultry' : 'meat'];
  return { min: cut.massKg * min, max: cut.massKg * max };
}

/** Air for which the course of the meat is made [°C]: docs/models/meat.md, range of validity. */
export const MODELLED_AIR_C = { min: 60, max: 200 } as const;
