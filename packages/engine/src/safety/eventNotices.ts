import type { RulesProfile } from '@pitwright/model';
import type { Curve } from '../calc/spec.ts';
import { pow } from '../numeric/elementary.ts';
import { type ComeUp, comeUpVerdict } from './comeUp.ts';
import { COOLING_RULES, type CoolingRuleId, coolingVerdict } from './cooling.ts';
import { growthLog10, growthModel, type Matrix } from './growth.ts';
import { holdIsMet } from './hold.ts';
import { hotHoldVerdict, leftoversVerdict, outLimitS, outVerdict } from './keeping.ts';
import { type Concern, degrees, type Notice, notice, seconds } from './notice.ts';
import { cookMinimum, type Product } from './rules/cookMinimum.ts';
import { holdTable } from './rules/holdTables.ts';
import { COME_UP_S, HOT_HOLD_C, LEFTOVERS_S } from './rules/limits.ts';
import { celsiusOf, hundredthsF } from './ruleTemperature.ts';

/** What is said when something has happened: at the table, at the pit, in the cold. Each answers none where all is well. */

const HANDLING = 'USDA FSIS, Basics for Handling Food Safely';
const COME_UP = 'USDA FSIS, Revised Appendix A (2021)';

export interface Serving {
  readonly rules: RulesProfile;
  readonly product: Product;
  /** Coldest reading [°C], and the error of the thermometer [K] that is taken off it. */
  readonly coldestC: number;
  readonly errorK: number;
  /** How long every part has been at least so hot [s], where it is known. */
  readonly heldS?: number;
  /** Guests for whom only the plain minimum counts. */
  readonly guestsAtRisk: boolean;
}

/** Whole cuts and birds have a printed table; what is ground, tenderised or stuffed has not, at home. */
const tableOf = (product: Product): string | undefined => {
  if (product === 'poultry') return 'fsis-chicken-fat-12';
  return product === 'whole-cut' ? 'fsis-meat-6.5' : undefined;
};

/** At the table: a coldest part below the rule stops, unless at home the printed table was met instead. */
export function servingNotices(serving: Serving, concerns: Concern = {}): Notice[] {
  const minimum = cookMinimum(serving.rules, serving.product);
  const trueC = serving.coldestC - serving.errorK;
  if (hundredthsF(trueC) >= hundredthsF(minimum.temperatureC)) return [];
  const params = { reading: degrees(trueC), minimum: degrees(minimum.temperatureC) };
  const table = tableOf(serving.product);
  const isMet =
    serving.rules === 'home-us' &&
    !serving.guestsAtRisk &&
    table !== undefined &&
    serving.heldS !== undefined &&
    holdIsMet(table, serving.coldestC, serving.heldS, serving.errorK);
  if (!isMet) return [notice('safety.under-min', 'stop', minimum.source, params, concerns)];
  return [
    notice(
      'safety.time-temp',
      'information',
      holdTable(table).source,
      { ...params, time: seconds(serving.heldS!) },
      concerns,
    ),
    notice('safety.low-dry', 'caution', COME_UP, { reading: degrees(trueC) }, concerns),
  ];
}

/** Warming past six hours: what heat cannot undo. */
export function comeUpNotices(given: ComeUp, concerns: Concern = {}): Notice[] {
  const params = { time: seconds(given.centreS), limit: seconds(COME_UP_S) };
  switch (comeUpVerdict(given)) {
    case 'pass':
      return [];
    case 'information':
      return [
        notice(
          'safety.come-up-outside-hot',
          'information',
          COME_UP,
          { ...params, surface: seconds(given.surfaceS!) },
          concerns,
        ),
      ];
    case 'caution':
      return [notice('safety.come-up-probe', 'caution', COME_UP, params, concerns)];
    case 'fail':
      return [notice('safety.come-up', 'stop', COME_UP, params, concerns)];
  }
}

const DEAD_PIT_C = celsiusOf(200);
const DEAD_PIT_S = 3600;
const WARM_CORE_C = celsiusOf(130);
const RESCUE_OVEN_C = celsiusOf(300);

/** A fire too low for too long over meat that is not hot inside. The thresholds are an interpretation. */
export function pitNotices(pitC: number, lowForS: number, coreC: number, concerns: Concern = {}): Notice[] {
  const isDead = pitC < DEAD_PIT_C && lowForS > DEAD_PIT_S && coreC < WARM_CORE_C;
  if (!isDead) return [];
  return [
    notice(
      'safety.pit-dead',
      'stop',
      'USDA FSIS, Smoking Meat and Poultry; thresholds: interpretation',
      { pit: degrees(pitC), oven: degrees(RESCUE_OVEN_C) },
      concerns,
    ),
  ];
}

/** Out of heat and cold, or held too cool. `coldestC` is left out where the food is simply out. */
export function keptWarmNotices(
  rules: RulesProfile,
  timeS: number,
  { coldestC, airC }: { readonly coldestC?: number; readonly airC?: number },
  concerns: Concern = {},
): Notice[] {
  const over = () =>
    notice('safety.out-too-long', 'stop', HANDLING, { limit: seconds(outLimitS(airC)) }, concerns);
  if (coldestC === undefined) return outVerdict(timeS, airC) === 'discard' ? [over()] : [];
  const verdict = hotHoldVerdict({
    profile: rules,
    coldestC,
    byRoastTable: false,
    timeS,
    ...(airC !== undefined && { airC }),
  });
  if (verdict === 'discard') return [over()];
  if (verdict === 'pass') return [];
  const least = HOT_HOLD_C[rules];
  return [
    notice(
      'safety.hold-low',
      verdict === 'fail' ? 'stop' : 'caution',
      'USDA FSIS; FDA Food Code 3-501.16',
      { at: degrees(coldestC), least: degrees(least) },
      concerns,
    ),
  ];
}

/** Less than this left of a cooling limit is said [s]. */
const SOON_S = 1800;
/** Modelled growth worth a word [log10]. */
const GROWTH_SAID = 0.5;

/** Cooling that misses its rule or is about to, and what a model thinks of it. The rule goes first. */
export function coolingNotices(
  rule: CoolingRuleId,
  curve: Curve,
  { chillStartS = 0, matrix }: { readonly chillStartS?: number; readonly matrix?: Matrix },
  concerns: Concern = {},
): Notice[] {
  const { source } = COOLING_RULES[rule];
  const { verdict, slackS } = coolingVerdict(COOLING_RULES[rule], curve, chillStartS);
  const notices: Notice[] = [];
  if (verdict === 'fail') notices.push(notice('safety.cooled-too-slowly', 'stop', source, {}, concerns));
  else if (verdict === 'undecided' && slackS < SOON_S)
    notices.push(
      notice('safety.slow-cool', 'caution', source, { left: seconds(Math.max(0, slackS)) }, concerns),
    );
  if (matrix) {
    const grown = growthLog10(growthModel('clostridium-perfringens', matrix), curve);
    if (grown >= GROWTH_SAID)
      notices.push(
        notice(
          'safety.spore-model',
          'caution',
          'Baranyi & Roberts 1994; GroPIN 1157–1162',
          { fold: pow(10, grown) },
          concerns,
        ),
      );
  }
  return notices;
}

/** Leftovers past their keeping time or kept too warm. */
export function leftoverNotices(
  temperatureC: number | undefined,
  timeS: number,
  concerns: Concern = {},
): Notice[] {
  if (leftoversVerdict(temperatureC, timeS) !== 'discard') return [];
  return [
    notice(
      'safety.leftover-age',
      'stop',
      'Illinois Extension; foodsafety.gov',
      { keep: seconds(LEFTOVERS_S) },
      concerns,
    ),
  ];
}
