import type { Cook } from '@pitwright/model';
import { outLimitS } from './keeping.ts';
import { degrees, type Notice, notice, seconds } from './notice.ts';
import { cookMinimum } from './rules/cookMinimum.ts';
import { LEFTOVERS_C, LEFTOVERS_S } from './rules/limits.ts';
import { fireNotices } from './standing/fire.ts';
import { formulaNotices } from './standing/formulas.ts';
import { pieceNotices } from './standing/pieces.ts';

/** Error of a household thermometer [K], from memory. */
const THERMOMETER_K = 2 / 1.8;

/** What stands at the table and after it. */
function tableNotices(cook: Cook): Notice[] {
  const airC = cook.weather?.air && cook.weather.air.si - 273.15;
  return [
    ...(cook.guests.atRisk
      ? [
          notice(
            'safety.guests-at-risk',
            'caution',
            'FDA Food Code 3-401.11(D); the switch is an interpretation',
          ),
        ]
      : []),
    notice('safety.thermometer', 'caution', 'common practice, no source', {
      error: { kind: 'difference', si: THERMOMETER_K },
      ice: degrees(0),
    }),
    notice('safety.two-hours', 'stop', 'USDA FSIS, Basics for Handling Food Safely', {
      limit: seconds(outLimitS(airC)),
    }),
    notice('safety.leftovers', 'information', 'Illinois Extension; foodsafety.gov', {
      cold: degrees(LEFTOVERS_C),
      keep: seconds(LEFTOVERS_S),
      reheat: degrees(cookMinimum(cook.rules, 'leftovers').temperatureC),
    }),
  ];
}

/**
 * The cautions that stand beside any plan of this cook: least temperatures by the chosen rules, a bird's time at
 * temperature, the thermometer, raw and cooked kept apart, sauces cold, fire and its gas, allergens by name.
 * In the order pieces, formulas, fire, table. They inform; nothing here clears a deviation.
 */
export const standingNotices = (cook: Cook): readonly Notice[] => [
  ...pieceNotices(cook),
  ...formulaNotices(cook),
  ...fireNotices(cook),
  ...tableNotices(cook),
];
