/** One member of a piece, followed from meat-on: temperatures, drying fronts, bite and heat, side by side. */
import type { StageKind } from '@pitwright/model';
import { outerFaceM2, type ResolvedPiece } from '../day/resolve.ts';
import type { PieceRunner } from '../meat/run.ts';
import type { PieceSolver } from '../meat/solver.ts';
import type { memberOf } from './ensemble/member.ts';
import { type HeatColumns, HeatRecorder } from './heatColumns.ts';

const RECORD_EVERY_S = 180;
const FIRM_C = 60;

/** When each depth under the crust reaches the bite [s from meat-on]; ∞ = not within the run. */
export interface BiteLine {
  /** 0 at the surface of its side, 1 in the middle. */
  readonly depthShares: readonly number[];
  readonly timesS: readonly number[];
}

export interface StageInside {
  readonly kind: StageKind;
  readonly endS: number;
  /** Heat that one item takes from coals that it sees [W], and whether it is turned; missing: it sees none. */
  readonly fire?: { readonly watts: number; readonly isTurned: boolean };
}

/** One member of a piece, as `PieceInside` tells it. */
export interface Followed {
  readonly timesS: readonly number[];
  readonly depthShares: readonly number[];
  readonly halfThicknessM: number;
  readonly stages: readonly StageInside[];
  readonly heat: HeatColumns;
  readonly open: FollowedSide;
  readonly other?: FollowedSide;
}

/** What is read of one half. */
interface Side {
  readonly surfaceC: (solver: PieceSolver) => number;
  readonly cellC: (solver: PieceSolver, cell: number) => number;
  readonly doseH: (solver: PieceSolver, cell: number) => number;
  readonly driedM: (solver: PieceSolver) => number;
}
const OPEN: Side = {
  surfaceC: (solver) => solver.surfaceC,
  cellC: (solver, cell) => solver.cellC(cell),
  doseH: (solver, cell) => solver.cellDoseH(cell),
  driedM: (solver) => solver.driedDepthM,
};
const OTHER: Side = {
  surfaceC: (solver) => solver.otherSurfaceC,
  cellC: (solver, cell) => solver.otherCellC(cell),
  doseH: (solver, cell) => solver.otherCellDoseH(cell),
  driedM: (solver) => solver.otherDriedDepthM,
};

/** One half as it is followed. */
class FollowedSide {
  readonly temperaturesC: number[][] = [];
  readonly frontM: number[] = [];
  readonly #side: Side;
  readonly #depthsM: readonly number[];
  readonly #depthShares: readonly number[];
  readonly #reachedS: number[];
  readonly #isUnderCrust: boolean[];

  /** @param depthShares of its cells, from the middle outwards */
  constructor(side: Side, depthShares: readonly number[], halfThicknessM: number) {
    this.#side = side;
    this.#depthShares = depthShares;
    this.#depthsM = depthShares.map((share) => share * halfThicknessM);
    this.#reachedS = depthShares.map(() => Infinity);
    this.#isUnderCrust = depthShares.map(() => false);
  }

  /** Which cells reach the bite in this step. @param dose that it asks for [h], undefined: firm, by temperature */
  watch(solver: PieceSolver, clockS: number, dose: number | undefined): void {
    const side = this.#side;
    for (let i = 0; i < solver.cells; i++) {
      if (this.#reachedS[i]! < Infinity) continue;
      const isReached = dose === undefined ? side.cellC(solver, i) >= FIRM_C : side.doseH(solver, i) >= dose;
      if (!isReached) continue;
      this.#reachedS[i] = clockS;
      this.#isUnderCrust[i] = this.#depthsM[i]! > side.driedM(solver);
    }
  }

  /** From the surface inwards. */
  note(solver: PieceSolver): void {
    const { cells } = solver;
    this.temperaturesC.push([
      this.#side.surfaceC(solver),
      ...Array.from({ length: cells }, (_, i) => this.#side.cellC(solver, cells - 1 - i)),
    ]);
    this.frontM.push(this.#side.driedM(solver));
  }

  get bite(): BiteLine {
    const soft = [...this.#depthShares.keys()].reverse().filter((i) => this.#isUnderCrust[i]);
    return {
      depthShares: soft.map((i) => this.#depthShares[i]!),
      timesS: soft.map((i) => this.#reachedS[i]!),
    };
  }
}

/** One member from meat-on to its end, noted as it goes. @param word index in TIMED_WORDS, −1 for raw */
export function followed(
  runner: PieceRunner,
  piece: ResolvedPiece,
  drawn: ReturnType<typeof memberOf>,
  word: number,
): Followed {
  const { meat, stretch } = drawn;
  const wattsPerFlow = outerFaceM2(piece) / stretch;
  const timesS: number[] = [];
  const heat = new HeatRecorder();
  let depths: readonly number[] = [];
  let sides: readonly FollowedSide[] = [];
  let notedS = -Infinity;
  let beforeS = 0;
  const { endS } = runner.run(meat, drawn.stages, {
    stretch,
    wordDoses: drawn.wordDoses,
    onStep: (clockS, _stage, solver) => {
      if (sides.length === 0) {
        depths = Array.from(solver.cellDepths(), (fromCentre) => 1 - fromCentre);
        sides = (meat.otherFace ? [OPEN, OTHER] : [OPEN]).map(
          (side) => new FollowedSide(side, depths, meat.halfThicknessM),
        );
      }
      if (word >= 0)
        for (const side of sides)
          side.watch(solver, clockS, word === 0 ? undefined : drawn.wordDoses[word - 1]!);
      heat.gather(solver.lastHeat(), clockS - beforeS);
      beforeS = clockS;
      if (clockS - notedS < RECORD_EVERY_S) return;
      notedS = clockS;
      timesS.push(clockS);
      for (const side of sides) side.note(solver);
      heat.note(wattsPerFlow);
    },
  });
  const [open, other] = sides;
  return {
    timesS,
    depthShares: [0, ...[...depths].reverse()],
    halfThicknessM: meat.halfThicknessM,
    stages: drawn.stages.map(({ kind, trigger, fire }, i) => ({
      kind,
      endS: trigger.by === 'table' ? Infinity : endS[i]!,
      // One of its two faces.
      ...(fire && {
        fire: { watts: fire.absorbedWm2 * 0.5 * wattsPerFlow, isTurned: fire.turnEveryS < Infinity },
      }),
    })),
    heat: heat.columns,
    open: open!,
    ...(other && { other }),
  };
}
