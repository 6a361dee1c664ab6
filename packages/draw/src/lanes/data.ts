import type { Axis } from '../time/axis.ts';
import type { Night } from '../time/rail.ts';

/** A job of a pair of hands. Times are seconds since 1970 UTC; words are printed already. */
export interface LaneJob {
  readonly id: string;
  readonly fromS: number;
  readonly toS: number;
  readonly words: string;
  /** Its place in the list of jobs: stands for the words where there is no room for them. */
  readonly number: number;
  /** How far its start may move alone. */
  readonly canFromS?: number;
  readonly canToS?: number;
  /** Where it stood before the last change. */
  readonly wasS?: number;
  readonly isPinned?: boolean;
  readonly isOpen?: boolean;
}

export interface HandLane {
  readonly name: string;
  readonly remark: string;
  readonly jobs: readonly LaneJob[];
  readonly asleep: readonly { readonly fromS: number; readonly toS: number }[];
}

/** Something that takes room: `amount` of the lane's capacity from one instant to another. */
export interface LaneUse {
  readonly id: string;
  readonly fromS: number;
  readonly toS: number;
  readonly amount: number;
  /** Takes the colour of its piece. */
  readonly letter?: string;
  readonly words: string;
}

export interface RoomLane {
  readonly name: string;
  readonly remark: string;
  /** Cold takes the colour of water, heat that of the fire; the pit takes the colours of its pieces. */
  readonly look: 'pit' | 'heat' | 'cold';
  readonly capacity: number;
  readonly uses: readonly LaneUse[];
  /** While the fire burns. */
  readonly lit?: { readonly fromS: number; readonly toS: number };
}

export interface LanesData {
  readonly hands: readonly HandLane[];
  readonly rooms: readonly RoomLane[];
  readonly tableS: number;
  readonly untilS: number;
  readonly fromS: number;
  readonly nowS?: number;
  readonly nights: readonly Night[];
  readonly quiet: readonly { readonly fromS: number; readonly toS: number; readonly scale?: number }[];
  readonly asleepWords: string;
  readonly fullWords: string;
}

/** Where the box of a job lies [px]. */
export interface JobBox {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface LanePlace {
  /** Right edge of the drawing: words may stand past the end of the axis. */
  readonly edge: number;
  readonly axis: Axis;
  /** The serving hour: words of what comes before it do not reach over it. */
  readonly tableS: number;
  readonly y: number;
  readonly isNarrow: boolean;
}
