import type { RulesProfile } from '@pitwright/model';
import { celsiusOf } from '../ruleTemperature.ts';

const HOUR_S = 3600;
const DAY_S = 86400;

/** Coldest point of what is kept hot [°C], by rules. @source USDA FSIS; Food Code 3-501.16; UK food hygiene regulations (memory) */
export const HOT_HOLD_C: Readonly<Record<RulesProfile, number>> = {
  'home-us': celsiusOf(140),
  'cater-us': celsiusOf(135),
  uk: 63,
};
/** A roast cooked by the roast table may be held here. @source Food Code 3-501.16 */
export const ROAST_TABLE_HOLD_C = celsiusOf(130);
/** At home, between this and the hot hold: serve or reheat soon. */
export const HOME_LOW_HOLD_C = celsiusOf(130);
/** Warmest point of what is kept cold [°C]. @source USDA FSIS; Food Code 3-501.16; UK legal limit (memory) */
export const COLD_HOLD_C: Readonly<Record<RulesProfile, number>> = {
  'home-us': celsiusOf(40),
  'cater-us': celsiusOf(41),
  uk: 8,
};
/** Out of heat and cold, added up. @source USDA FSIS, Basics for Handling Food Safely */
export const OUT_S = 2 * HOUR_S;
export const OUT_HOT_DAY_S = HOUR_S;
/** Above this air the shorter time counts. */
export const HOT_DAY_C = celsiusOf(90);
/** One period below 63 °C. @source UK food hygiene regulations, from memory */
export const UK_BELOW_HOT_HOLD_S = 2 * HOUR_S;
/** Cooked leftovers at or below 40 °F. @source Illinois Extension, foodsafety.gov: 3–4 days */
export const LEFTOVERS_S = 4 * DAY_S;
export const LEFTOVERS_C = celsiusOf(40);
/** @source Food Code 3-403.11; USDA */
export const REHEAT_C: Readonly<Record<RulesProfile, number>> = {
  'home-us': celsiusOf(165),
  'cater-us': celsiusOf(165),
  uk: 70,
};
export const REHEAT_FOR_HOLDING_S = 2 * HOUR_S;
/** Between 50 and 130 °F while warming. @source USDA FSIS, Revised Appendix A 2021 */
export const COME_UP_S = 6 * HOUR_S;
/** Pit temperatures for cooking meat through. @source USDA FSIS, Smoking Meat and Poultry; Alabama Extension */
export const PIT_LEAST_C = celsiusOf(225);
