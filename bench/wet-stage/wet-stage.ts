/**
 * The wet stage of one piece, before the drying front moves, by our solver, by SUNDIALS CVODE in C and by SciPy's BDF:
 * seconds for one run at equal error, each at the steps or the tolerance that gets there quickest. The reference solution
 * is CVODE at a relative tolerance of 10⁻¹¹.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unitGrid } from '../../packages/engine/src/meat/grid.ts';
import { PIECE as REFERENCE } from '../../packages/engine/src/meat/onePiece.testing.ts';
import { BARE, type MeatParameters } from '../../packages/engine/src/meat/parameters.ts';
import { PieceSolver } from '../../packages/engine/src/meat/solver.ts';

const CELLS = 12;
const SAMPLES = 24;
const END_S = 6 * 3600;
const STEPS_S = [900, 600, 450, 300, 180, 120, 60, 30, 15];
/** At which the solvers are compared [K]. */
const ERRORS_K = [0.3, 0.1, 0.03, 0.01, 0.003, 0.001];
const ROUNDS = 5;
const TOLERANCES = [3e-2, 1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 1e-7];
const AROUND = { gasC: 121, wallC: 120, humidityRatio: 0.045, convectionWm2K: 7.5, pressurePa: 101_325 };

/** The reference piece with a film that never runs dry and juice that only drips. */
const PIECE: MeatParameters = {
  ...REFERENCE,
  juiceToSurfaceShare: 0,
  filmStartKgM2: 50,
  filmCapKgM2: 100,
};

interface Run {
  readonly name: string;
  readonly seconds: number;
  readonly errorK: number;
}

/** As stages of a cook are stepped: short at first, growing with the time, at most so long; samples are landed on. */
function ownRun(solver: PieceSolver, longestStepS: number): Float64Array {
  solver.begin(PIECE);
  const cores = new Float64Array(SAMPLES);
  const firstS = Math.min(60, longestStepS / 12);
  let clockS = 0;
  for (let sample = 0; sample < SAMPLES; sample++) {
    const untilS = (END_S * (sample + 1)) / SAMPLES;
    while (clockS < untilS - 1e-9) {
      const leftS = untilS - clockS;
      const stepS = leftS / Math.ceil(leftS / Math.min(longestStepS, firstS + 0.15 * clockS) - 1e-9);
      solver.step(stepS, AROUND, BARE);
      clockS += stepS;
    }
    cores[sample] = solver.coreC;
  }
  return cores;
}

function problemText(repeats: number, tolerances: readonly number[]): string {
  const unit = unitGrid(CELLS, PIECE.dimensionality);
  const { water, protein, fat, ash } = PIECE.composition;
  const length = PIECE.halfThicknessM;
  const cells = Array.from({ length: CELLS }, (_, i) => i);
  return [
    [CELLS, SAMPLES, repeats],
    [protein, fat, ash, 2010 + (1990 * (fat + ash)) / protein, PIECE.startC, water / protein],
    [PIECE.finalHoldingDryBasis, PIECE.releaseMidC, PIECE.releaseWidthK, PIECE.releaseRate80PerS],
    [AROUND.gasC, AROUND.wallC, AROUND.humidityRatio, AROUND.convectionWm2K, AROUND.pressurePa],
    [PIECE.emissivity, PIECE.evaporatingShare, BARE.kind === 'open' ? BARE.waterActivity : 1, END_S],
    cells.map((i) => (unit.radius[i + 1]! - unit.radius[i]!) * length),
    [...unit.face],
    cells.map((i) => unit.volume[i]! * length * PIECE.densityKgM3 * protein),
    tolerances,
  ]
    .map((row) => row.join(' '))
    .join('\n');
}

interface Outcome {
  /** or longest step */
  readonly tolerance: number;
  readonly seconds: number;
  readonly cores: number[];
}

const outcomes = (text: string): Outcome[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [tolerance, seconds, , , ...cores] = line.split(' ').map(Number);
      return { tolerance: tolerance!, seconds: seconds!, cores };
    });

const worst = (cores: ArrayLike<number>, reference: ArrayLike<number>): number =>
  Math.max(...Array.from(reference, (value, i) => Math.abs(cores[i]! - value)));

/** The quickest of these runs whose error is at most `errorK`. */
const atError = (runs: readonly Run[], errorK: number): Run | undefined =>
  runs.filter((run) => run.errorK <= errorK).sort((a, b) => a.seconds - b.seconds)[0];

function compile(folder: string): string | undefined {
  if (!existsSync('/usr/include/cvode/cvode.h')) return undefined;
  const program = join(folder, 'wet-stage');
  const source = new URL('./wet-stage.c', import.meta.url).pathname;
  const libraries = ['cvode', 'nvecserial', 'sunmatrixband', 'sunlinsolband'].map(
    (name) => `-lsundials_${name}`,
  );
  execFileSync('gcc', ['-O3', '-march=native', '-o', program, source, ...libraries, '-lm']);
  return program;
}

function hasSciPy(): boolean {
  try {
    execFileSync('/usr/bin/python3', ['-c', 'import scipy'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

const REPEATS = 60;
const ownSolver = new PieceSolver(CELLS, () => 0);

const ownOutcomes = (): Outcome[] =>
  STEPS_S.map((longestStepS) => {
    const cores = ownRun(ownSolver, longestStepS);
    const began = performance.now();
    for (let i = 0; i < REPEATS; i++) ownRun(ownSolver, longestStepS);
    const seconds = (performance.now() - began) / 1000 / REPEATS;
    return { tolerance: longestStepS, seconds, cores: [...cores] };
  });

/** One run for each tolerance or step, its time the middle of the rounds. */
function middleOf(rounds: readonly Outcome[][], name: string, reference: readonly number[]): Run[] {
  return rounds[0]!.map(({ tolerance, cores }, i) => {
    const seconds = rounds.map((round) => round[i]!.seconds).sort((a, b) => a - b);
    return {
      name: `${name} ${tolerance}`,
      seconds: seconds[seconds.length >> 1]!,
      errorK: worst(cores, reference),
    };
  });
}

const lineOf = (run: Run): string =>
  `${run.name} ${(run.seconds * 1e3).toFixed(3)} ms (${run.errorK.toExponential(1)} K)`;

/** Prints the comparison; says what to install where a named reference is missing. */
export function benchWetStage(print: (line: string) => void): void {
  print(`The wet stage, ${CELLS} cells, ${END_S / 3600} h, error = largest of ${SAMPLES} core temperatures:`);
  const folder = mkdtempSync(join(tmpdir(), 'wet-stage-'));
  try {
    const program = compile(folder);
    if (!program) {
      print('  SUNDIALS is not installed (Debian: libsundials-dev): comparison left out.');
      return;
    }
    const solve = (command: string, args: string[], repeats: number, tolerances: readonly number[]) =>
      outcomes(execFileSync(command, args, { input: problemText(repeats, tolerances), encoding: 'utf8' }));
    const reference = solve(program, [], 1, [1e-11])[0]!.cores;
    const python = new URL('./wet_stage.py', import.meta.url).pathname;
    const rounds = Array.from({ length: ROUNDS }, () => ({
      compiled: solve(program, [], 60, TOLERANCES),
      own: ownOutcomes(),
    }));
    const compiled = middleOf(
      rounds.map((round) => round.compiled),
      'CVODE in C, tolerance',
      reference,
    );
    const own = middleOf(
      rounds.map((round) => round.own),
      'ours, steps to s',
      reference,
    );
    const scripted = hasSciPy()
      ? middleOf([solve('/usr/bin/python3', [python], 1, TOLERANCES)], 'SciPy BDF, tolerance', reference)
      : [];
    if (scripted.length === 0) print('  SciPy is not installed (Debian: python3-scipy): left out.');
    for (const errorK of ERRORS_K) {
      const ours = atError(own, errorK);
      print(`  error of at most ${errorK} K: ${ours ? lineOf(ours) : 'none of our steps is as close'}`);
      for (const others of [compiled, scripted]) {
        const other = atError(others, errorK);
        if (other && ours)
          print(`    ${lineOf(other)}: ours takes ${(ours.seconds / other.seconds).toFixed(2)} of it`);
      }
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}
