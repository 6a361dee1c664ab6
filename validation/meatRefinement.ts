/**
 * Grid and step refinement of the piece model: against the exact series with evaporation off, and of the finish time of
 * the reference run. `npx tsx validation/meatRefinement.ts` prints the tables that docs/models/meat.md shows.
 */
import { pathToFileURL } from 'node:url';
import { conductivityWmK } from '../packages/engine/src/food/choiOkos.ts';
import { conductionSeries } from '../packages/engine/src/heat/conduction.ts';
import type { SeriesShape } from '../packages/engine/src/heat/eigenvalues.ts';
import { STAGE_SHARE } from '../packages/engine/src/meat/halfPiece.ts';
import { PIECE } from '../packages/engine/src/meat/onePiece.testing.ts';
import { BARE, type Surroundings } from '../packages/engine/src/meat/parameters.ts';
import { PieceSolver } from '../packages/engine/src/meat/solver.ts';
import { relativeSofteningRate } from '../packages/engine/src/tender/dose.ts';

const DIMENSIONALITY: Readonly<Record<SeriesShape, number>> = { slab: 1, cylinder: 2, sphere: 3 };
export const SHAPES = ['slab', 'cylinder', 'sphere'] as const satisfies readonly SeriesShape[];
export const BIOTS = [0.2, 1, 5] as const;

/** Start and air a hundredth of a kelvin apart, so that properties stand still. */
const START_C = 20;
const AIR_C = 20.01;
const FROM_FOURIER = 0.05;
const TO_FOURIER = 3;

/** Largest difference of the dimensionless temperature from the exact series, all cells and the surface, Fo 0.05 to 3. */
export function conductionError(
  shape: SeriesShape,
  biot: number,
  cells: number,
  fourierStep: number,
): number {
  const halfThicknessM = 0.04;
  const k = 0.95 * conductivityWmK({ ...PIECE.composition, carbohydrate: 0, fibre: 0 }, START_C);
  const { water, protein, fat, ash } = PIECE.composition;
  const capacity = PIECE.densityKgM3 * (2010 * protein + 1990 * (fat + ash) + 4186 * water);
  const diffusivity = k / capacity;
  const transmittance = (biot * k) / halfThicknessM;
  const solver = new PieceSolver(cells, relativeSofteningRate);
  solver.begin({
    ...PIECE,
    halfThicknessM,
    dimensionality: DIMENSIONALITY[shape],
    releaseRate80PerS: 0,
    filmStartKgM2: 0,
    startC: START_C,
  });
  const depths = solver.cellDepths();
  const exact = conductionSeries(shape, biot);
  const around = { gasC: AIR_C, wallC: AIR_C, humidityRatio: 0, convectionWm2K: 1, pressurePa: 101325 };
  const stepS = (fourierStep * halfThicknessM * halfThicknessM) / diffusivity;
  const steps = Math.round(TO_FOURIER / fourierStep);
  let worst = 0;
  for (let n = 1; n <= steps; n++) {
    solver.step(stepS, around, { kind: 'still', transmittanceWm2K: transmittance });
    if (n * fourierStep < FROM_FOURIER || n % 8 !== 0) continue;
    const miss = (temperatureC: number, position: number): number =>
      Math.abs((AIR_C - temperatureC) / (AIR_C - START_C) - exact.theta(n * fourierStep, position));
    for (let i = 0; i < cells; i++) worst = Math.max(worst, miss(solver.cellC(i), depths[i]!));
    worst = Math.max(worst, miss(solver.surfaceC, 1));
  }
  return worst;
}

function airAt(timeS: number): Surroundings {
  const gasC = 60 + 61 * Math.min(1, timeS / 900);
  return { gasC, wallC: gasC - 1, humidityRatio: 0.045, convectionWm2K: 7.5, pressurePa: 101325 };
}

/** Hours until the centre of the bare reference piece passes 71, 85 and 93 °C at 121 °C. */
export function finishHours(
  cells: number,
  longestStepS: number,
  stepShare = 1,
): readonly [number, number, number] {
  const levels = [71, 85, 93];
  const hours: number[] = [];
  const solver = new PieceSolver(cells, relativeSofteningRate);
  solver.begin(PIECE);
  for (let timeS = 0; hours.length < levels.length; ) {
    const stepS = Math.min(longestStepS, stepShare * (15 + 0.1 * timeS));
    const before = solver.coreC;
    solver.step(stepS, airAt(timeS + stepS), BARE, airAt(timeS + STAGE_SHARE * stepS));
    const level = levels[hours.length]!;
    if (solver.coreC >= level)
      hours.push((timeS + (stepS * (level - before)) / (solver.coreC - before)) / 3600);
    timeS += stepS;
  }
  return hours as unknown as readonly [number, number, number];
}

/** Cells and Fourier step of the three grids of the table, coarse to fine. */
export const GRIDS = [
  { cells: 12, fourierStep: 0.01 },
  { cells: 24, fourierStep: 0.0025 },
  { cells: 48, fourierStep: 0.000625 },
] as const;
export const FINISH_GRIDS = [
  { cells: 12, longestStepS: 380, stepShare: 1 },
  { cells: 24, longestStepS: 190, stepShare: 0.5 },
  { cells: 48, longestStepS: 95, stepShare: 0.25 },
] as const;

const percent = (x: number): string => `${(100 * x).toFixed(3)} %`;

export function refinementTables(): string {
  const conduction = [
    `| shape | Bi | ${GRIDS.map(({ cells, fourierStep }) => `${cells} cells, ΔFo ${fourierStep}`).join(' | ')} |`,
    '|---|---|---|---|---|',
    ...SHAPES.flatMap((shape) =>
      BIOTS.map(
        (biot) =>
          `| ${shape} | ${biot} | ${GRIDS.map(({ cells, fourierStep }) => percent(conductionError(shape, biot, cells, fourierStep))).join(' | ')} |`,
      ),
    ),
  ];
  const finish = [
    '| cells, longest step | to 71 °C h | to 85 °C h | to 93 °C h |',
    '|---|---|---|---|',
    ...FINISH_GRIDS.map(({ cells, longestStepS, stepShare }) => {
      const hours = finishHours(cells, longestStepS, stepShare).map((h) => h.toFixed(3));
      return `| ${cells}, ${longestStepS} s | ${hours.join(' | ')} |`;
    }),
  ];
  return [...conduction, '', ...finish].join('\n');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(refinementTables());
