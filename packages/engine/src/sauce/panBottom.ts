/** Whether the bottom of the pan would catch at the end of the simmer. */
import type { Said } from '@pitwright/model';
import { latentHeatJKg } from '../air/water.ts';
import type { Batch } from './batch.ts';
import { batchRheology } from './rheology.ts';
import { BOTTOM_STOP_C, gentlePowerW, panBottomExcessK } from './scorch.ts';
import type { SimmerCurve } from './simmer.ts';
import type { Stove } from './stove.ts';

/** How often most people stir a thickening sauce [s]. */
const STIR_S = 30;

/** A caution or a stop where the last minutes are too hot for a stir every 30 s, with the power that would do. */
export function bottomNotice(curve: SimmerCurve, stove: Stove, finished: Batch): readonly Said[] {
  const last = curve.points.at(-1)!;
  const netW = stove.netW ?? last.rateKgS * latentHeatJKg(last.sauceC);
  const yieldStressPa = batchRheology(finished, last.sauceC).yieldStressPa;
  const diameterM = stove.pan.diameterM;
  const gentleW = gentlePowerW({ boilingC: last.sauceC, diameterM, stirIntervalS: STIR_S, yieldStressPa });
  if (netW <= gentleW) return [];
  const bottomC = last.sauceC + panBottomExcessK({ netPowerW: netW, diameterM, stirIntervalS: STIR_S });
  return [
    {
      id: bottomC > BOTTOM_STOP_C ? 'sauce.bottom-burns' : 'sauce.bottom-catches',
      level: 'caution',
      params: {
        gentle: { kind: 'power', si: gentleW },
        share: gentleW / netW,
        stir: { kind: 'time', si: STIR_S },
      },
    },
  ];
}
