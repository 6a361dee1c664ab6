import type { Cook, PitType } from '@pitwright/model';
import { degrees, type Notice, notice, seconds } from '../notice.ts';
import { PIT_LEAST_C } from '../rules/limits.ts';
import { hundredthsF } from '../ruleTemperature.ts';

const CPSC = 'CPSC 99-051, carbon monoxide from charcoal';
const CLEARANCE = 'NFPA; USFA; fire code 308.1.4';
const ASH = 'USFA and fire-service advice';
const CLEARANCE_M = 10 * 0.3048;
const CHILDREN_M = 3 * 0.3048;
const ASH_S = 72 * 3600;

/** What burns in each pit: solid fuel leaves ash, gas does not, an element does neither. */
const BURNS: Readonly<Record<PitType, 'solid' | 'gas' | 'nothing'>> = {
  offset: 'solid',
  kettle: 'solid',
  drum: 'solid',
  bullet: 'solid',
  ceramic: 'solid',
  pellet: 'solid',
  cabinet: 'solid',
  gas: 'gas',
  electric: 'nothing',
  oven: 'nothing',
  // Not told: the caution that costs nothing stands.
  unknown: 'solid',
};

/** What stands beside the fire of a plan. */
export function fireNotices(cook: Cook): Notice[] {
  const burns = BURNS[cook.pit.type];
  const notices: Notice[] = [];
  const pitC = cook.pit.temperature.si - 273.15;
  if (hundredthsF(pitC) < hundredthsF(PIT_LEAST_C))
    notices.push(
      notice('safety.pit-low', 'caution', 'USDA FSIS, Smoking Meat and Poultry; Alabama Extension', {
        pit: degrees(pitC),
        least: degrees(PIT_LEAST_C),
      }),
    );
  if (burns === 'nothing') return notices;
  notices.push(
    notice('safety.carbon-monoxide', 'stop', CPSC),
    notice('safety.fire-attended', 'caution', CLEARANCE, {
      clearance: { kind: 'length', si: CLEARANCE_M },
      children: { kind: 'length', si: CHILDREN_M },
    }),
    notice('safety.burn-ban', 'caution', 'local fire authority'),
  );
  if (burns === 'solid')
    notices.push(
      notice('safety.wood', 'stop', 'firewood practice, no toxicology read'),
      notice('safety.ash', 'caution', ASH, { time: seconds(ASH_S) }),
      notice('safety.bristle', 'caution', 'CDC MMWR 61(26), 2012'),
    );
  return notices;
}
