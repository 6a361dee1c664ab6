/** The pan, the burner and the room of a formula's simmer, with what was not told filled in and said. */
import type { Said, Simmer } from '@pitwright/model';
import { standardPressurePa } from '../air/atmosphere.ts';
import { humidityRatioFromVapour } from '../air/moistAir.ts';
import { saturationPressurePa } from '../air/saturation.ts';
import { COOKTOP_EFFICIENCY, type Lid } from './cooktop.ts';
import type { Kitchen, Pan } from './simmer.ts';

export interface KitchenAir {
  readonly altitudeM?: number;
  readonly airC?: number;
  /** 0 to 1 */
  readonly relHum?: number;
}

const ROOM_C = 22;
const ROOM_REL_HUM = 0.5;

export function kitchenOf(air: KitchenAir): Kitchen {
  const pressurePa = standardPressurePa(air.altitudeM ?? 0);
  const airC = air.airC ?? ROOM_C;
  const vapourPa = (air.relHum ?? ROOM_REL_HUM) * saturationPressurePa(airC);
  return { pressurePa, airC, airHumidityRatio: humidityRatioFromVapour(vapourPa, pressurePa) };
}

/** An ordinary saucepan for a litre or two. */
const PAN_DIAMETER_M = 0.24;
const PAN_HEIGHT_M = 0.12;
/** What a burner on high puts into a pot while it heats up [W]: 1.8 kW of gas. */
export const HEAT_UP_W = 670;

export interface Stove {
  readonly pan: Pan;
  readonly lid: Lid;
  /** Power into the food before its doubt [W]; missing: the flame is turned until it just simmers. */
  readonly netW?: number;
  /** What was taken because the formula does not say. */
  readonly assumed: readonly Said[];
}

export function stoveOf(simmer: Simmer): Stove {
  const assumed: Said[] = [];
  const panDiameter = simmer.panDiameter?.si ?? PAN_DIAMETER_M;
  if (simmer.panDiameter === undefined)
    assumed.push({ id: 'sauce.pan-assumed', params: { diameter: { kind: 'length', si: panDiameter } } });
  if (simmer.power === undefined) assumed.push({ id: 'sauce.flame-assumed' });
  const source = simmer.source ?? 'gas';
  return {
    pan: { diameterM: panDiameter, heightM: simmer.panHeight?.si ?? PAN_HEIGHT_M },
    lid: simmer.lid ?? 'open',
    ...(simmer.power !== undefined && { netW: simmer.power.si * COOKTOP_EFFICIENCY[source] }),
    assumed,
  };
}
