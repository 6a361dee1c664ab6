import { celsiusOf } from '../ruleTemperature.ts';

const TEN_POUNDS_KG = 10 * 0.45359237;

export const OVENS = ['still-dry', 'convection', 'high-humidity'] as const;
export type Oven = (typeof OVENS)[number];

/**
 * Oven temperature of the whole-roast rule [°C]: a minimum for dry ovens, lower from ten pounds on; a maximum for
 * high humidity at any mass. @source FDA Food Code 3-401.11(B)(2), oven column
 */
export function roastOvenC(
  oven: Oven,
  massKg: number,
): { readonly minimumC?: number; readonly maximumC?: number } {
  if (oven === 'high-humidity') return { maximumC: celsiusOf(250) };
  if (massKg >= TEN_POUNDS_KG * (1 - 1e-9)) return { minimumC: celsiusOf(250) };
  return { minimumC: celsiusOf(oven === 'still-dry' ? 350 : 325) };
}
