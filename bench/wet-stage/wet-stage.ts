/**
 * The wet stage of one piece, before the drying front moves, by our solver, by SUNDIALS CVODE in C and by SciPy's BDF:
 * seconds for one run at equal error. The reference solution is CVODE at a relative tolerance of 10⁻¹¹.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unitGrid } from '../../packages/engine/src/meat/grid.ts';
import { BARE, type MeatParameters, SET_S } from '../../packages/engine/src/meat/parameters.ts';
import { PieceSolver } from '../../packages/engine/src/meat/solver.ts';

const CELLS = 12;
const SAMPLES = 24;
const END_S = 6 * 3600;
const TOLERANCES = [3e-2, 1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 1e-7];
const AROUND = { gasC: 121, wallC: 120, humidityRatio: 0.045, convectionWm2K: 7.5, pressurePa: 101_325 };

/** The reference piece with a film that never runs dry and juice that only drips. */
const PIECE: MeatParameters = {
  ...SET_S,
  composition: { water: 0.62, protein: 0.185, fat: 0.185, ash: 0.01 },
  densityKgM3: 1035,
  halfThicknessM: 0.038,
  dimensionality: 1.06,
  evaporatingShare: 0.92,
  juiceToSurfaceShare: 0,
  filmStartKgM2: 50,
  filmCapKgM2: 100,
  startC: 6,
};

interface Run {
  readonly name: string;
  readonly seconds: number;
  readonly errorK: number;
}

function ownRun(longestStepS: number): Float64Array {
  const solver = new PieceSolver(CELLS, () => 0);
  solver.begin(PIECE);
  const cores = new Float64Array(SAMPLES);
  let clockS = 0;
  for (let sample = 0; sample < SAMPLES; sample++) {
    const untilS = (END_S * (sample + 1)) / SAMPLES;
    while (clockS < untilS - 1e-9) {
      const stepS = Math.min(longestStepS, 15 + 0.06 * clockS, untilS - clockS);
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
    const runs = (name: string, from: Outcome[]): Run[] =>
      from.map((run) => ({
        name: `${name}, tolerance ${run.tolerance}`,
        seconds: run.seconds,
        errorK: worst(run.cores, reference),
      }));
    const compiled = runs('CVODE in C', solve(program, [], 200, TOLERANCES));
    const python = new URL('./wet_stage.py', import.meta.url).pathname;
    const scripted = hasSciPy() ? runs('SciPy BDF', solve('/usr/bin/python3', [python], 1, TOLERANCES)) : [];
    if (scripted.length === 0) print('  SciPy is not installed (Debian: python3-scipy): left out.');
    for (const longestStepS of [180, 60, 15]) {
      const cores = ownRun(longestStepS);
      for (let i = 0; i < 200; i++) ownRun(longestStepS);
      const repeats = 400;
      const began = performance.now();
      for (let i = 0; i < repeats; i++) ownRun(longestStepS);
      const seconds = (performance.now() - began) / 1000 / repeats;
      const errorK = worst(cores, reference);
      const line = (run: Run | undefined, name: string) =>
        run
          ? `${run.name} ${(run.seconds * 1e3).toFixed(3)} ms (${run.errorK.toExponential(1)} K, ours takes ${(seconds / run.seconds).toFixed(2)} of it)`
          : `${name}: no tolerance tried is as close`;
      print(
        `  steps of at most ${longestStepS} s: ${(seconds * 1e3).toFixed(3)} ms, error ${errorK.toExponential(1)} K`,
      );
      print(`    at that error: ${line(atError(compiled, errorK), 'CVODE in C')}`);
      if (scripted.length > 0) print(`    at that error: ${line(atError(scripted, errorK), 'SciPy BDF')}`);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}
