/** The inside of one piece: what the depth–time map and the heat ledger of a screen are drawn from. */
import type { Cook, StageKind } from '@pitwright/model';
import { outerFaceM2, type ResolvedPiece, resolveCook } from '../day/resolve.ts';
import { FINE_SETTINGS, PieceRunner } from '../meat/run.ts';
import type { StagePlan } from '../meat/stagePlan.ts';
import { knownWord } from '../tender/bite.ts';
import { CookDraws, PieceDraws } from './ensemble/draws.ts';
import { memberOf } from './ensemble/member.ts';
import { lastCookingStage, softeningRate } from './ensemble/run.ts';
import { type CookForecast, type PieceColumns, TIMED_WORDS } from './types.ts';
import { onWholeClock, type Zone, zonePiece } from './zones.ts';

/** When each depth reaches the bite [s from meat-on]; ∞ = not within the run. */
export interface BiteLine {
  /** 0 at the surface, 1 in the middle. */
  readonly depthShares: readonly number[];
  readonly timesS: readonly number[];
}

export interface StageInside {
  readonly kind: StageKind;
  readonly endS: number;
  /** Heat that one item takes from coals that it sees [W], and whether it is turned; missing: it sees none. */
  readonly fire?: { readonly watts: number; readonly isTurned: boolean };
}

export interface PieceInside {
  readonly pieceId: string;
  /** The member shown: its finish is nearest the median. */
  readonly member: number;
  /** From meat-on, at most three minutes apart [s]. */
  readonly timesS: readonly number[];
  /** 0 at the surface, 1 in the middle. */
  readonly depthShares: readonly number[];
  /** [°C], one row per time, one value per depth. */
  readonly temperaturesC: readonly (readonly number[])[];
  /** Dried raw depth at each time [m]. */
  readonly frontM: readonly number[];
  readonly halfThicknessM: number;
  /** Its stages as this member has them; the end is ∞ where it lasts until the table asks or never comes [s]. */
  readonly stages: readonly StageInside[];
  /** Outer side of the face that is not shown, at each time [°C]; that of the shown one where they are alike. */
  readonly otherSurfaceC: readonly number[];
  /** Heat that reaches one item, and what of it evaporates water, at each time [W]. */
  readonly intoW: readonly number[];
  readonly driesW: readonly number[];
  /** Of the members nearest the 10, 50 and 90 % points; missing where `raw` is asked. */
  readonly bite?: { readonly p10: BiteLine; readonly p50: BiteLine; readonly p90: BiteLine };
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
const RECORD_EVERY_S = 180;
const FIRM_C = 60;
const STALL = { fromC: 55, toC: 85, slowKPerH: 4, leastS: 1800 } as const;

/**
 * The inside of the members nearest the median and nearest the 10 and 90 % points of a piece, on the fine grid.
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
  const order = Array.from(columns.readyS, (readyS, member) => ({ readyS, member })).sort((a, b) =>
    a.readyS === b.readyS ? a.member - b.member : a.readyS - b.readyS,
  );
  const at = (share: number): number => order[Math.round(share * (order.length - 1))]!.member;
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
  const middle = follow(at(0.5));
  const isAsked = middle.bite.depthShares.length > 0;
  const { bite, ...shown } = middle;
  const stall = stallOf(shown.timesS, shown.temperaturesC);
  return {
    pieceId,
    member: at(0.5),
    ...shown,
    ...(isAsked && { bite: { p10: follow(at(0.1)).bite, p50: bite, p90: follow(at(0.9)).bite } }),
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

type Followed = Omit<PieceInside, 'pieceId' | 'member' | 'bite' | 'stall'> & { readonly bite: BiteLine };

/** One member from meat-on to its end, noted as it goes. @param word index in TIMED_WORDS, −1 for raw */
function followed(
  runner: PieceRunner,
  piece: ResolvedPiece,
  drawn: ReturnType<typeof memberOf>,
  word: number,
): Followed {
  const { cells } = runner.solver;
  const faceM2 = outerFaceM2(piece);
  const timesS: number[] = [];
  const temperaturesC: number[][] = [];
  const frontM: number[] = [];
  const intoW: number[] = [];
  const driesW: number[] = [];
  const otherSurfaceC: number[] = [];
  const reachedS = new Array<number>(cells).fill(Infinity);
  const isUnderCrust = new Array<boolean>(cells).fill(false);
  let depths: readonly number[] = [];
  let notedS = -Infinity;
  const { endS } = runner.run(drawn.meat, drawn.stages, {
    stretch: drawn.stretch,
    wordDoses: drawn.wordDoses,
    onStep: (clockS, _stage, solver) => {
      if (depths.length === 0) depths = Array.from(solver.cellDepths(), (fromCentre) => 1 - fromCentre);
      const { state } = solver;
      for (let i = 0; i < cells; i++) {
        if (reachedS[i]! < Infinity || word < 0) continue;
        const isReached =
          word === 0
            ? state[solver.temperatureAt + i]! >= FIRM_C
            : state[solver.doseAt + i]! >= drawn.wordDoses[word - 1]!;
        if (!isReached) continue;
        reachedS[i] = clockS;
        isUnderCrust[i] = depths[i]! * drawn.meat.halfThicknessM > solver.driedDepthM;
      }
      if (clockS - notedS < RECORD_EVERY_S) return;
      notedS = clockS;
      timesS.push(clockS);
      // From the surface inwards.
      temperaturesC.push([
        solver.surfaceC,
        ...Array.from({ length: cells }, (_, i) => solver.cellC(cells - 1 - i)),
      ]);
      frontM.push(solver.driedDepthM);
      otherSurfaceC.push(solver.otherSurfaceC);
      intoW.push((solver.lastFromAirWm2 * faceM2) / drawn.stretch);
      driesW.push((solver.lastEvaporatingWm2 * faceM2) / drawn.stretch);
    },
  });
  const inward = [...depths.keys()].reverse();
  const soft = inward.filter((i) => isUnderCrust[i]);
  return {
    timesS,
    depthShares: [0, ...inward.map((i) => depths[i]!)],
    temperaturesC,
    frontM,
    halfThicknessM: drawn.meat.halfThicknessM,
    stages: drawn.stages.map(({ kind, trigger, fire }, i) => ({
      kind,
      endS: trigger.by === 'table' ? Infinity : endS[i]!,
      ...(fire && {
        fire: {
          // One of its two faces.
          watts: (fire.absorbedWm2 * 0.5 * faceM2) / drawn.stretch,
          isTurned: fire.turnEveryS < Infinity,
        },
      }),
    })),
    otherSurfaceC,
    intoW,
    driesW,
    bite: { depthShares: soft.map((i) => depths[i]!), timesS: soft.map((i) => reachedS[i]!) },
  };
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
