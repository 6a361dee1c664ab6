/**
 * The records of the run sheet. Instants are UTC (ISO 8601, final Z); durations and lags are seconds; nothing here
 * is infinite or NaN, so that a plan survives JSON: what never happens is left out and told by `neverShare`.
 */
import type { Bite, Instant, PitPlace, Range, Said, StageKind } from '@pitwright/model';

const TASK_KINDS = [
  'buy',
  'thaw',
  'make-sauce',
  'simmer-sauce',
  'cool-sauce',
  'jar-sauce',
  'warm-sauce',
  'mix-rub',
  'mix-spritz',
  'mix-brine',
  'brine',
  'skin-and-trim',
  'cut-in-two',
  'rub',
  'out-of-fridge',
  'light-fire',
  'coal-bed',
  'light-oven',
  'meat-on',
  'look',
  'spritz',
  'wrap',
  'unwrap',
  'glaze',
  'test-bite',
  'to-oven',
  'to-coals',
  'take-off',
  'rest',
  'hold',
  'chill',
  'slice',
  'serve',
  'clean',
  'chill-leftovers',
  'ash-out',
] as const;
export type TaskKind = (typeof TASK_KINDS)[number];

/** Where the work is done: jobs `at: 'pit'` that follow each other make one walk, and one prompt. */
export type Workplace = 'kitchen' | 'pit' | 'table' | 'shop';

const EQUIPMENT_KINDS = ['burner', 'oven', 'fridge-shelf', 'grate', 'pan', 'probe', 'box'] as const;
export type EquipmentKind = (typeof EQUIPMENT_KINDS)[number];

export interface EquipmentNeed {
  readonly kind: EquipmentKind;
  /** Pieces of it; for the grate: m². */
  readonly amount: number;
}

/** This task starts at least `minLagS` and at most `maxLagS` after the end of task `id`; a missing maximum is none. */
export interface TaskLag {
  readonly id: string;
  readonly minLagS: number;
  readonly maxLagS?: number;
}

/** A piece of work; the id (piece or formula + stage + kind) is the same in every plan of the cook. */
export interface Task {
  readonly id: string;
  readonly kind: TaskKind;
  readonly at: Workplace;
  readonly pieceIds: readonly string[];
  readonly formulaId?: string;
  /** Which of several alike: third spritz, second coat; counts from 1. */
  readonly round?: number;
  readonly durationS: Range;
  /** Hands it keeps busy: 0 for what happens by itself (cooling, thawing, resting). */
  readonly hands: number;
  /** Needed from its start to its end. */
  readonly equipment: readonly EquipmentNeed[];
  readonly after: readonly TaskLag[];
  /** Not before and not after, for its start. */
  readonly earliestAt?: Instant;
  readonly latestAt?: Instant;
  /** What tells that it is time, before the clock does. */
  readonly sign?: Said;
  /** Set by hand: the plan does not move it. */
  readonly pinned?: Instant;
  /** Logged as done: start as it happened. */
  readonly doneAt?: Instant;
}

/** A piece of equipment kept busy from the end of one task to the start of another (a tray on its shelf). */
export interface Occupancy {
  readonly id: string;
  readonly need: EquipmentNeed;
  readonly pieceId?: string;
  readonly formulaId?: string;
  readonly fromTaskId: string;
  readonly toTaskId: string;
}

export interface PlacedTask {
  readonly taskId: string;
  /** Missing for what happens by itself; several for a job of two. */
  readonly handIds: readonly string[];
  readonly startAt: Instant;
  readonly endAt: Instant;
  /** From the first meat on to the start; negative before it. */
  readonly elapsedS: number;
  /** How far it may move alone: from – to of its start, all else staying. */
  readonly canStart?: { readonly from: Instant; readonly to: Instant };
  /** Walk number at the pit, from 1; missing for work elsewhere. */
  readonly walk?: number;
  readonly inNight: boolean;
}

/** Instants of the 10, 50 and 90 % members; missing where that share never arrives. */
export interface InstantRange {
  readonly p10?: Instant;
  readonly p50?: Instant;
  readonly p90?: Instant;
  readonly neverShare: number;
}

export interface PlannedStage {
  readonly kind: StageKind;
  /** Single planned clock times, on five minutes: median of the members. */
  readonly startAt: Instant;
  readonly endAt?: Instant;
  readonly elapsedStartS: number;
  readonly start: InstantRange;
  readonly end: InstantRange;
  readonly coreC: Range;
  readonly surfaceC: Range;
  /** What ends it, by sign. */
  readonly sign?: Said;
}

export interface PlannedPiece {
  readonly pieceId: string;
  readonly letter: string;
  readonly count: number;
  readonly bite: Bite;
  readonly place?: PitPlace;
  /** Chosen, or set by hand (`onAtPinned`). */
  readonly onAt: Instant;
  readonly onAtPinned: boolean;
  readonly elapsedOnS: number;
  /** Latest start that still keeps the chance asked, all other pieces staying. */
  readonly latestOnAt?: Instant;
  /** Bite reached, ready to rest. */
  readonly ready: InstantRange;
  /** Ready to rest until the table, over the members [s]. */
  readonly waitS: Range;
  readonly restLeastS: number;
  readonly holdLongestS: number;
  /** Chance that this piece alone is on time. */
  readonly chanceOnTime: number;
  /** Shares of the members that miss, by what misses first; they add to 1 − chanceOnTime. */
  readonly misses: {
    readonly late: number;
    readonly heldTooLong: number;
    readonly tooSoft: number;
    readonly never: number;
  };
  readonly stages: readonly PlannedStage[];
}

export interface EquipmentUse {
  readonly kind: EquipmentKind;
  readonly amount: number;
  readonly capacity: number;
  readonly fromAt: Instant;
  readonly toAt: Instant;
  readonly taskId?: string;
  readonly occupancyId?: string;
}

/** One walk to the pit: one prompt. */
export interface Walk {
  readonly number: number;
  readonly startAt: Instant;
  readonly endAt: Instant;
  readonly taskIds: readonly string[];
  readonly handIds: readonly string[];
}

/** Hours for which a lit wood or charcoal fire keeps somebody within reach. */
export interface FireWatch {
  readonly fromAt: Instant;
  readonly toAt: Instant;
  /** Longest time out of reach that the rule allows [s]. */
  readonly reachS: number;
  /** Time of it that lies in somebody's sleeping hours: what the night costs [s]. */
  readonly asleepS: number;
}

const DEMAND_KINDS = [
  'chance',
  'table',
  'hand-busy',
  'hand-away',
  'hand-asleep',
  'capacity',
  'lag',
  'earliest',
  'latest',
  'pinned',
  'fire-watch',
] as const;
export type DemandKind = (typeof DEMAND_KINDS)[number];

/** Something asked of the plan that could be given up. */
export interface Demand {
  readonly id: string;
  readonly kind: DemandKind;
  readonly taskIds: readonly string[];
  readonly said: Said;
}

/** Demands that cannot all be kept; leaving out any one of them, the rest can. */
export interface Conflict {
  readonly demands: readonly Demand[];
  /** For each: what giving it up buys, and how far it must give. */
  readonly wayOut: readonly { readonly demandId: string; readonly buys: Said }[];
  /** The one advised. */
  readonly giveUpId: string;
}

/** Another way to cook it, with its price against the plan. */
export interface Alternative {
  readonly id: string;
  readonly said: Said;
  readonly buys: readonly Said[];
  readonly costs: readonly Said[];
  readonly chanceAllOnTime?: number;
  readonly nightWorkS?: number;
  readonly walks?: number;
  readonly firstOnAt?: Instant;
  /** The one we would take. */
  readonly isAdvised: boolean;
}

/** Against the plan before: what moved. */
export interface MovedTask {
  readonly taskId: string;
  readonly fromAt?: Instant;
  readonly toAt?: Instant;
}

export interface CookPlan {
  readonly cookId: string;
  readonly zone: string;
  readonly table: { readonly at: Instant; readonly until: Instant };
  /** Zero of all elapsed times. */
  readonly firstOnAt: Instant;
  readonly lightAt?: Instant;
  readonly seed: number;
  readonly members: number;
  readonly chanceAsked: number;
  /** Share of the members with every piece on time; print rounded to 5 % below 1,000 members. */
  readonly chanceAllOnTime: number;
  readonly tightest?: { readonly pieceId: string; readonly chance: number };
  readonly pieces: readonly PlannedPiece[];
  readonly tasks: readonly Task[];
  /** By start, then in the order of the work. */
  readonly placed: readonly PlacedTask[];
  readonly occupancies: readonly Occupancy[];
  readonly equipmentUse: readonly EquipmentUse[];
  readonly walks: readonly Walk[];
  /** Walks from the first rack on to the table. */
  readonly promptsInLastHours: number;
  readonly fireWatch?: FireWatch;
  /** Work and fire watch in sleeping hours [s]. */
  readonly nightWorkS: number;
  /** Time of hands at work, all together [s]. */
  readonly handWorkS: number;
  readonly notices: readonly Said[];
  /** What does not fit, one minimal conflict after another; the plan keeps everything but what each `giveUpId` names. */
  readonly conflicts: readonly Conflict[];
  /** What would reach the chance asked, where the plan does not. */
  readonly wouldReach: readonly Alternative[];
  readonly alternatives: readonly Alternative[];
  readonly moved: readonly MovedTask[];
  /** How it was placed: `greedy` has no proven gap. */
  readonly solved: { readonly by: 'solver' | 'greedy'; readonly gap?: number };
}

/** Answer of the linear solver: values by variable name, or why there is none. */
export type LpSolution =
  | {
      readonly status: 'optimal' | 'feasible';
      readonly objective: number;
      /** Proven relative distance to the best bound; missing where the node count stopped it. */
      readonly gap?: number;
      readonly values: Readonly<Record<string, number>>;
    }
  | { readonly status: 'infeasible' | 'stopped' };

/** Solves a mixed-integer program written in the LP format; stops by gap and node count, never by time. */
export type SolveLp = (
  lpText: string,
  limits: { readonly gap: number; readonly nodes: number },
) => LpSolution;
