import { isWaiting, type StageKind } from '@pitwright/model';
import type { Cover } from './parameters.ts';
import type { Opening } from './pitKinds.ts';

/** The air round a piece during one stage. */
export interface AirPlan {
  /** Pit air warms up and changes slowly; anything else is there at once. */
  readonly isPit: boolean;
  /** Steady temperature at the meat [°C]. */
  readonly gasC: number;
  /** Takes the place of `gasC`: straight between points, its last value lasts; times from meat on [s]. */
  readonly curve?: { readonly timesS: readonly number[]; readonly temperaturesC: readonly number[] };
  /** Time constant of warm-up and of changes [s]; 0 at once. */
  readonly lagS: number;
  /** How much colder the mean radiant temperature is than the air [K]. */
  readonly wallDropK: number;
  readonly humidityRatio: number;
  readonly convectionWm2K: number;
  readonly pressurePa: number;
  /** Creeps by so much in an hour of the clock, counted from meat on [K/h]; missing: steady. */
  readonly driftKPerH?: number;
  /** What opening it costs; missing: nothing. */
  readonly opening?: Opening;
}

/** What ends a stage, resolved to one number. */
export type StageTrigger =
  /** seconds after its begin */
  | { readonly by: 'clock'; readonly afterS: number }
  /** thermal centre, up to it (cooling stages: down to it) */
  | { readonly by: 'core'; readonly temperatureC: number }
  | { readonly by: 'surface'; readonly temperatureC: number }
  /** thickness of the dried layer */
  | { readonly by: 'bark'; readonly thicknessM: number }
  /** water and fat lost, of the raw mass without bone */
  | { readonly by: 'loss'; readonly lossShare: number }
  /** dose at the thermal centre, equivalent hours at 95 °C */
  | { readonly by: 'dose'; readonly doseH: number }
  /** lasts as long as it is asked to */
  | { readonly by: 'table' };

/** Coals before one face of a piece. */
export interface FaceFire {
  /** The open face sees them as the stage begins; else the other one. */
  readonly isOnOpenFace: boolean;
  /** How much warmer they make the walls that it sees [K]. */
  readonly riseK: number;
  /** Heat that the face takes from them [W/m²]. */
  readonly absorbedWm2: number;
  /** Turned over, the pit opened, so often [s]; ∞ never. */
  readonly turnEveryS: number;
}

/** One stage of one member, all resolved. */
export interface StagePlan {
  readonly kind: StageKind;
  readonly cover: Cover;
  readonly air: AirPlan;
  readonly trigger: StageTrigger;
  /** Liquid poured into the wrap [kg/m²]. */
  readonly pouredKgM2?: number;
  /** Sprayed on again and again, the pit opened each time. */
  readonly spritz?: { readonly kgM2: number; readonly everyS: number };
  /** One face sees coals; missing: none does. */
  readonly fire?: FaceFire;
  /** Glaze brushed on at the begin [kg/m²]. */
  readonly glaze?: { readonly waterKgM2: number; readonly solidsKgM2: number };
}

/** Cooling meat pulled from the heat begins here; the bite reached before it counts as ready. */
export const isCooking = (kind: StageKind): boolean => !isWaiting(kind);
