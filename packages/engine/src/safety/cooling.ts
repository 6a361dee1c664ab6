import type { Curve } from '../calc/spec.ts';
import { hundredthsF, withinLimit } from './ruleTemperature.ts';

/** One leg of a cooling rule: from passing one temperature [°F] to reaching another, within a time. */
interface Leg {
  /** Missing: from the start of the curve. */
  readonly fromF?: number;
  readonly toF: number;
  readonly limitS: number;
}

export interface CoolingRule {
  readonly legs: readonly Leg[];
  /** Chilling begins within this after cooking [s]. */
  readonly chillStartS?: number;
  readonly source: string;
}

const hours = (h: number): number => h * 3600;

export const COOLING_RULES = {
  'food-code': {
    legs: [
      { fromF: 135, toF: 70, limitS: hours(2) },
      { fromF: 135, toF: 41, limitS: hours(6) },
    ],
    source: 'FDA Food Code 3-501.14(A)',
  },
  'food-code-ambient': { legs: [{ toF: 41, limitS: hours(4) }], source: 'FDA Food Code 3-501.14(B)' },
  'fsis-option-1': {
    legs: [
      { fromF: 130, toF: 80, limitS: hours(1.5) },
      { fromF: 80, toF: 40, limitS: hours(5) },
    ],
    source: 'USDA FSIS Appendix B, option 1',
  },
  'fsis-option-2': {
    legs: [
      { fromF: 120, toF: 80, limitS: hours(1) },
      { fromF: 120, toF: 55, limitS: hours(6) },
    ],
    chillStartS: hours(1.5),
    source: 'USDA FSIS Appendix B, option 2',
  },
  'fsis-cured': {
    legs: [
      { fromF: 130, toF: 80, limitS: hours(5) },
      { fromF: 80, toF: 45, limitS: hours(10) },
    ],
    source: 'USDA FSIS Appendix B, cured',
  },
} as const satisfies Readonly<Record<string, CoolingRule>>;
export type CoolingRuleId = keyof typeof COOLING_RULES;

/**
 * First time at or after `fromS` when the curve is at or below a printed temperature [s]; undefined where it never is.
 * A point that is the temperature to a hundredth of a degree is that temperature.
 */
function timeAtOrBelow(curve: Curve, fahrenheit: number, fromS: number): number | undefined {
  const wanted = Math.round(fahrenheit * 100);
  const { timesS, temperaturesC } = curve;
  for (let i = 0; i < timesS.length; i++) {
    const here = hundredthsF(temperaturesC[i]!);
    if (timesS[i]! >= fromS && here <= wanted) {
      if (i === 0 || here === wanted) return timesS[i];
      const before = hundredthsF(temperaturesC[i - 1]!);
      const share = (before - wanted) / (before - here);
      const crossed = before <= wanted ? fromS : timesS[i - 1]! + share * (timesS[i]! - timesS[i - 1]!);
      return Math.max(fromS, crossed);
    }
  }
  return undefined;
}

export interface CoolingVerdict {
  readonly verdict: 'pass' | 'fail' | 'undecided';
  /** Least time left over among the legs [s]; negative where a limit is passed. */
  readonly slackS: number;
}

/**
 * Whether a curve kept a cooling rule. Limits are allowed; a curve that ends before a leg is over and before its limit
 * is undecided.
 * @param chillStartS from the end of cooking to the start of chilling
 */
export function coolingVerdict(rule: CoolingRule, curve: Curve, chillStartS: number): CoolingVerdict {
  const endS = curve.timesS[curve.timesS.length - 1]!;
  let verdict: CoolingVerdict['verdict'] = 'pass';
  let slackS = Number.POSITIVE_INFINITY;
  const note = (isOver: boolean, takenS: number, limitS: number) => {
    slackS = Math.min(slackS, limitS - takenS);
    if (isOver ? !withinLimit(takenS, limitS) : takenS >= limitS) verdict = 'fail';
    else if (!isOver && verdict === 'pass') verdict = 'undecided';
  };
  if (rule.chillStartS !== undefined) note(true, chillStartS, rule.chillStartS);
  for (const leg of rule.legs) {
    const fromS = leg.fromF === undefined ? 0 : timeAtOrBelow(curve, leg.fromF, 0);
    if (fromS === undefined) {
      note(false, 0, leg.limitS);
      continue;
    }
    const toS = timeAtOrBelow(curve, leg.toF, fromS);
    if (toS === undefined) note(false, endS - fromS, leg.limitS);
    else note(true, toS - fromS, leg.limitS);
  }
  return { verdict, slackS };
}
