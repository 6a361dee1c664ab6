// Conformity: single runs of the piece model against an independent coding of the same equations (24 cells, first-order
// steps of at most 60 s), stepped alike. Agreement asked: 1 % in the time to a temperature, 0.3 K between. And our
// second-order steps against first-order steps refined 30 times: same equations, other steps. It says nothing about nature.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { STAGE_SHARE } from '../../packages/engine/src/meat/halfPiece.ts';
import { PIECE } from '../../packages/engine/src/meat/onePiece.testing.ts';
import {
  BARE,
  type Cover,
  FOIL,
  type MeatParameters,
  type Surroundings,
} from '../../packages/engine/src/meat/parameters.ts';
import { PieceSolver } from '../../packages/engine/src/meat/solver.ts';
import { relativeSofteningRate } from '../../packages/engine/src/tender/dose.ts';

interface Point {
  readonly hours: number;
  readonly coreC: number;
  readonly surfaceC: number;
  readonly lostShare: number;
  readonly doseH: number;
}

const reference = new Map<string, Point[]>();
for (const line of readFileSync(new URL('meat_reference.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)) {
  const [name, hours, coreC, surfaceC, evaporated, dripped, doseH] = line.split(',');
  const points = reference.get(name!) ?? [];
  points.push({
    hours: Number(hours),
    coreC: Number(coreC),
    surfaceC: Number(surfaceC),
    lostShare: Number(evaporated) + Number(dripped),
    doseH: Number(doseH),
  });
  reference.set(name!, points);
}

interface Case {
  readonly gasC: number;
  readonly foilFromC?: number;
  readonly piece?: Partial<MeatParameters>;
  readonly humidityRatio?: number;
  readonly convectionWm2K?: number;
}
const CASES: Readonly<Record<string, Case>> = {
  'bare-121': { gasC: 121 },
  'foil-121': { gasC: 121, foilFromC: 74 },
  'bare-107': { gasC: 107 },
  'rib-135': {
    gasC: 135,
    piece: { halfThicknessM: 0.0147, dimensionality: 1.03, evaporatingShare: 0.7 },
  },
  'humid-107': { gasC: 107, humidityRatio: 0.1, convectionWm2K: 6 },
};

function trajectory(
  given: Case,
  hours: readonly number[],
  stages: 1 | 2,
  longestStepS: number,
  wrapLateS: number,
): { points: Point[]; solver: PieceSolver } {
  const solver = new PieceSolver(24, relativeSofteningRate);
  solver.stages = stages;
  solver.begin({ ...PIECE, ...given.piece });
  const airAt = (atS: number): Surroundings => {
    const gasC = 60 + (given.gasC - 60) * Math.min(1, atS / 900);
    return {
      gasC,
      wallC: gasC - 1,
      humidityRatio: given.humidityRatio ?? 0.045,
      convectionWm2K: given.convectionWm2K ?? 7.5,
      pressurePa: 101325,
    };
  };
  let timeS = 0;
  let stageBeganS = 0;
  let cover: Cover = BARE;
  const points: Point[] = [];
  for (const hour of hours) {
    while (timeS < hour * 3600) {
      const isNearWrap = cover === BARE && given.foilFromC && solver.coreC > given.foilFromC - 0.3;
      const mostS = isNearWrap ? Math.min(longestStepS, wrapLateS) : longestStepS;
      const stepS = Math.min(mostS, 15 + 0.06 * (timeS - stageBeganS), hour * 3600 - timeS);
      solver.step(stepS, airAt(timeS + stepS), cover, airAt(timeS + STAGE_SHARE * stepS));
      timeS += stepS;
      if (given.foilFromC && cover === BARE && solver.coreC >= given.foilFromC) {
        cover = FOIL;
        stageBeganS = timeS;
      }
    }
    points.push({
      hours: hour,
      coreC: solver.coreC,
      surfaceC: solver.surfaceC,
      lostShare: (solver.evaporatedKgM2 + solver.drippedKgM2) / solver.rawMassKgM2,
      doseH: solver.coreDoseH,
    });
  }
  return { points, solver };
}

/** Hours at which the centre passes a level, straight between half hours. */
function hoursTo(points: readonly Point[], levelC: number): number {
  const at = points.findIndex((point) => point.coreC >= levelC);
  const low = points[at - 1]!;
  const high = points[at]!;
  return low.hours + ((high.hours - low.hours) * (levelC - low.coreC)) / (high.coreC - low.coreC);
}

describe.each(Object.entries(CASES))('conformity, case %s', (name, given) => {
  const expected = reference.get(name)!;
  const { points, solver } = trajectory(
    given,
    expected.map((point) => point.hours),
    1,
    60,
    60,
  );

  test('centre within 0.3 K at every half hour', () => {
    points.forEach((point, i) => {
      expect(Math.abs(point.coreC - expected[i]!.coreC), `at ${point.hours} h`).toBeLessThan(0.3);
    });
  });

  test('surface within 0.3 K at every half hour', () => {
    points.forEach((point, i) => {
      expect(Math.abs(point.surfaceC - expected[i]!.surfaceC), `at ${point.hours} h`).toBeLessThan(0.3);
    });
  });

  test.each([54, 65, 71, 75, 85, 93])('time to %d °C within 1 %%', (levelC) => {
    expect(Math.abs(hoursTo(points, levelC) / hoursTo(expected, levelC) - 1)).toBeLessThan(0.01);
  });

  test('water lost within 0.2 points of the raw mass, dose within 1 % + 0.005 h', () => {
    points.forEach((point, i) => {
      expect(Math.abs(point.lostShare - expected[i]!.lostShare), `at ${point.hours} h`).toBeLessThan(0.002);
      expect(Math.abs(point.doseH - expected[i]!.doseH)).toBeLessThan(0.01 * point.doseH + 0.005);
    });
  });

  test('water and energy close to 1e-6', () => {
    expect(Math.abs(solver.waterClosure())).toBeLessThan(1e-6);
    expect(Math.abs(solver.energyClosure())).toBeLessThan(1e-6);
  });

  test('second-order steps to 60 s beside first-order steps to 2 s: centre within 0.03 K, water within 0.05 points', () => {
    const hours = expected.map((point) => point.hours);
    const refined = trajectory(given, hours, 1, 2, 2).points;
    trajectory(given, hours, 2, 60, 2).points.forEach((point, i) => {
      expect(Math.abs(point.coreC - refined[i]!.coreC), `at ${point.hours} h`).toBeLessThan(0.03);
      expect(Math.abs(point.lostShare - refined[i]!.lostShare)).toBeLessThan(5e-4);
    });
  });
});
