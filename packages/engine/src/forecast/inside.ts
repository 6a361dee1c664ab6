/** The inside of one piece: what the depth–time map and the heat ledger of a screen are drawn from. */
import type { Cook } from '@pitwright/model';
import { type ResolvedPiece, resolveCook } from '../day/resolve.ts';
import { type OtherSide, otherSideOf } from '../meat/faces.ts';
import { FINE_SETTINGS, PieceRunner } from '../meat/run.ts';
import type { StagePlan } from '../meat/stagePlan.ts';
import { knownWord } from '../tender/bite.ts';
import { CookDraws, PieceDraws } from './ensemble/draws.ts';
import { memberOf } from './ensemble/member.ts';
import { lastCookingStage, softeningRate } from './ensemble/run.ts';
import { type BiteLine, type Followed, followed, type StageInside } from './followed.ts';
import type { HeatColumns } from './heatColumns.ts';
import { type CookForecast, type PieceColumns, TIMED_WORDS } from './types.ts';
import { typicalMember } from './typicalMember.ts';
import { onWholeClock, type Zone, zonePiece } from './zones.ts';

/** Bite of the members nearest the 10, 50 and 90 % points. */
export interface BiteLines {
  readonly p10: BiteLine;
  readonly p50: BiteLine;
  readonly p90: BiteLine;
}

/** Of the half behind the face that is not open; depths, times and thickness as those of the open one. */
export interface OtherSideInside {
  readonly side: OtherSide;
  /** The face opposite it is skin, not open meat. */
  readonly isUnderSkin: boolean;
  /** From that surface to the middle [°C]. */
  readonly temperaturesC: readonly (readonly number[])[];
  readonly frontM: readonly number[];
  readonly bite?: BiteLines;
}

export interface PieceInside {
  readonly pieceId: string;
  /** The member shown: it finishes about the median, and its stages end near theirs. */
  readonly member: number;
  /** From meat-on, at most three minutes apart [s]. */
  readonly timesS: readonly number[];
  /** 0 at the open surface, 1 in the middle. */
  readonly depthShares: readonly number[];
  /** [°C], one row per time, one value per depth. */
  readonly temperaturesC: readonly (readonly number[])[];
  /** Dried raw depth at each time [m]. */
  readonly frontM: readonly number[];
  readonly halfThicknessM: number;
  /** Its stages as this member has them; the end is ∞ where it lasts until the table asks or never comes [s]. */
  readonly stages: readonly StageInside[];
  /** Of one item, both faces together. */
  readonly heat: HeatColumns;
  /** Missing where `raw` is asked. */
  readonly bite?: BiteLines;
  /** Missing where both faces are alike. */
  readonly otherSide?: OtherSideInside;
  /** The middle rises by less than 4 K an hour, between 55 and 85 °C, for half an hour or more. */
  readonly stall?: {
    readonly fromS: number;
    readonly toS: number;
    readonly lowC: number;
    readonly highC: number;
  };
}

/** Followed this long after the last stage has ended [s]. */
const TAIL_S = 12 * 3600;
const STALL = { fromC: 55, toC: 85, slowKPerH: 4, leastS: 1800 } as const;

/**
 * The inside of a typical member and of those nearest the 10 and 90 % points of a piece, on the fine grid.
 *
 * The chosen member finishes within the fine grid's difference of its time in `forecast` (0.5 %, docs/models/meat.md).
 *
 * @param forecast of this cook, with the seed it was made with
 * @param zone one muscle of it, in the same members and with the clock of the whole; missing: the whole
 * @throws RangeError on a piece that the forecast lacks, or a zone that the piece has not
 */
export function pieceInside(cook: Cook, forecast: CookForecast, pieceId: string, zone?: Zone): PieceInside {
  const { pit, pieces } = resolveCook(cook);
  const piece = pieces.find((one) => one.id === pieceId);
  const columns = forecast.pieces.find((one) => one.pieceId === pieceId)?.columns;
  if (!piece || !columns) throw new RangeError(`the forecast has no piece ${pieceId}`);
  const byFinish = Array.from(columns.readyS, (readyS, member) => ({ readyS, member }))
    .sort((a, b) => (a.readyS === b.readyS ? a.member - b.member : a.readyS - b.readyS))
    .map(({ member }) => member);
  const at = (share: number): number => byFinish[Math.round(share * (byFinish.length - 1))]!;
  const typical = typicalMember(columns, byFinish, (member) => slowestItem(piece, columns, member));
  const runner = new PieceRunner({ ...FINE_SETTINGS, tailS: TAIL_S }, softeningRate);
  runner.solver.doseEverywhere = true;
  const body = zone === undefined ? piece : zonePiece(piece, zone);
  const follow = (member: number): Followed => {
    const item = slowestItem(piece, columns, member);
    const drawn = memberOf(
      body,
      pit,
      new CookDraws(forecast.seed).of(member),
      new PieceDraws(forecast.seed, piece.id, piece.items),
      member,
      item,
    );
    const word = TIMED_WORDS.indexOf(knownWord(body.cut.tissue, body.bite) as (typeof TIMED_WORDS)[number]);
    const row = (member * columns.items + item) * columns.stages;
    const wholeEndS = columns.stageEndS.subarray(row, row + columns.stages);
    const stages = zone === undefined ? drawn.stages : wholeClock(drawn.stages, wholeEndS);
    return followed(runner, body, { ...drawn, stages }, word);
  };
  const middle = follow(typical);
  const isAsked = middle.open.bite.depthShares.length > 0;
  const early = isAsked ? follow(at(0.1)) : undefined;
  const late = isAsked ? follow(at(0.9)) : undefined;
  const linesOf = (face: 'open' | 'other') => {
    const [p10, p50, p90] = [early, middle, late].map((one) => one?.[face]?.bite);
    return p10 && p50 && p90 && { bite: { p10, p50, p90 } };
  };
  const { open, other, ...shared } = middle;
  const shown = { ...shared, temperaturesC: open.temperaturesC, frontM: open.frontM };
  const stall = stallOf(shown.timesS, shown.temperaturesC);
  return {
    pieceId,
    member: typical,
    ...shown,
    ...linesOf('open'),
    ...(other && {
      otherSide: {
        side: otherSideOf(body.cut),
        isUnderSkin: body.cut.isPoultry,
        temperaturesC: other.temperaturesC,
        frontM: other.frontM,
        ...linesOf('other'),
      },
    }),
    ...(stall && { stall }),
  };
}

/** The stages as the whole piece has them in this member; what lasts until the table, or never ends, stays as told. */
function wholeClock(stages: readonly StagePlan[], wholeEndS: Float64Array): readonly StagePlan[] {
  const isOpen = (stage: StagePlan, s: number): boolean =>
    stage.trigger.by === 'table' || !(wholeEndS[s]! < Infinity);
  const open = stages.findIndex(isOpen);
  const ended = open < 0 ? stages.length : open;
  return [...onWholeClock(stages.slice(0, ended), wholeEndS)!, ...stages.slice(ended)];
}

function slowestItem(piece: ResolvedPiece, columns: PieceColumns, member: number): number {
  const stage = Math.max(0, lastCookingStage(piece));
  let slowest = 0;
  let latest = -1;
  for (let item = 0; item < columns.items; item++) {
    const endS = columns.stageEndS[(member * columns.items + item) * columns.stages + stage]!;
    if (endS > latest) {
      slowest = item;
      latest = endS;
    }
  }
  return slowest;
}

/** The longest stretch in which the middle hardly rises. */
function stallOf(
  timesS: readonly number[],
  temperaturesC: readonly (readonly number[])[],
): PieceInside['stall'] {
  const coreC = temperaturesC.map((row) => row.at(-1)!);
  let longest: { from: number; to: number } | undefined;
  let from: number | undefined;
  for (let i = 1; i < timesS.length; i++) {
    const riseKPerH = ((coreC[i]! - coreC[i - 1]!) / (timesS[i]! - timesS[i - 1]!)) * 3600;
    const isSlow =
      riseKPerH >= 0 && riseKPerH < STALL.slowKPerH && coreC[i]! >= STALL.fromC && coreC[i]! <= STALL.toC;
    if (isSlow) from ??= i - 1;
    else from = undefined;
    if (
      from !== undefined &&
      (!longest || timesS[i]! - timesS[from]! > timesS[longest.to]! - timesS[longest.from]!)
    )
      longest = { from, to: i };
  }
  if (!longest || timesS[longest.to]! - timesS[longest.from]! < STALL.leastS) return undefined;
  return {
    fromS: timesS[longest.from]!,
    toS: timesS[longest.to]!,
    lowC: coreC[longest.from]!,
    highC: coreC[longest.to]!,
  };
}
