// The ledger of heat: every way in and every end is told, and they sum to what the piece holds. Evidence: law; the share
// of radiation by hand from the surface balance.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { relativeSofteningRate } from '../tender/dose.ts';
import { ANY_STAGE, anyPiece } from './anyPiece.testing.ts';
import { HEAT_ENDS, HEAT_WAYS } from './heatFlows.ts';
import { PIECE } from './onePiece.testing.ts';
import { BARE, type Cover, type Face, FOIL, PAPER } from './parameters.ts';
import { PieceSolver } from './solver.ts';

const stage = fc.record({ ...ANY_STAGE, coalsK: fc.constantFrom(0, 0, 150) });
const otherFace = fc.option(
  fc.record<Face>({
    evaporatingShare: fc.double({ min: 0, max: 1, noNaN: true }),
    layerM2KW: fc.constantFrom(0, 0.03),
    layerJM2K: fc.constantFrom(0, 15e3),
    convectionShare: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
  }),
  { nil: undefined },
);

const sum = <K extends string>(flows: Record<K, number>, names: readonly K[]): number =>
  names.reduce((total, name) => total + flows[name], 0);

describe('what arrives is what is spent', () => {
  test('in every step of every random sequence of stages, and in all it is what the piece holds', () => {
    fc.assert(
      fc.property(
        anyPiece,
        otherFace,
        fc.array(stage, { minLength: 1, maxLength: 6 }),
        (given, face, stages) => {
          const solver = new PieceSolver(12, relativeSofteningRate);
          solver.begin({ ...PIECE, ...given, ...(face && { otherFace: face }) });
          let before: Cover | undefined;
          let heldJM2 = 0;
          let turnedJM2 = 0;
          let missWm2 = 0;
          let misplacedWm2 = 0;
          for (const one of stages) {
            if (before?.kind === 'foil' && one.cover.kind === 'open') solver.openWrap();
            before = one.cover;
            solver.faceFire(0, one.coalsK);
            if (one.spritzKgM2) solver.spritz(one.spritzKgM2);
            if (one.pouredKgM2) solver.pour(one.pouredKgM2);
            for (let leftS = one.minutes * 60; leftS > 0; leftS -= 120) {
              const stepS = Math.min(120, leftS);
              solver.step(stepS, { ...one, wallC: one.gasC - 3, pressurePa: 101325 }, one.cover);
              const heat = solver.lastHeat();
              const arrivesWm2 = sum(heat, HEAT_WAYS);
              missWm2 = Math.max(missWm2, Math.abs(arrivesWm2 - sum(heat, HEAT_ENDS)));
              const { convectionWm2, radiationWm2, stillWm2 } = heat;
              const notHere =
                one.cover.kind === 'still' ? Math.abs(convectionWm2) + Math.abs(radiationWm2) : stillWm2;
              misplacedWm2 = Math.max(misplacedWm2, Math.abs(notHere));
              heldJM2 += heat.warmingWm2 * stepS;
              turnedJM2 += Math.abs(arrivesWm2) * stepS;
            }
          }
          // The Newton on the surface stops short of rounding by less than 10⁻⁶ W/m².
          expect(missWm2).toBeLessThan(1e-6);
          expect(misplacedWm2).toBe(0);
          expect(Math.abs(solver.heldHeatJM2 - heldJM2) / turnedJM2).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 80, seed: 20270912 },
    );
  });
});

describe('convection and radiation of a bare wet surface in a pit at 121 °C', () => {
  /** Settled under a film that does not dry; gas and walls at 121 °C, h_c 8 W/m²K. */
  const settled = (under: Cover, coalsK = 0) => {
    const solver = new PieceSolver(12, relativeSofteningRate);
    solver.begin({
      ...PIECE,
      halfThicknessM: 0.005,
      dimensionality: 1,
      evaporatingShare: 1,
      filmStartKgM2: 50,
      filmCapKgM2: 100,
      juiceToSurfaceShare: 0,
    });
    solver.faceFire(coalsK, coalsK);
    const around = { gasC: 121, wallC: 121, humidityRatio: 0.05, convectionWm2K: 8, pressurePa: 101325 };
    for (let i = 0; i < 240; i++) solver.step(120, around, under);
    return { heat: solver.lastHeat(), surfaceC: solver.surfaceC };
  };

  test('by hand: surface 54.6 °C, 8 × 66.4 = 531 W/m² by air, 0.9 σ (394.15⁴ − 327.75⁴) = 643 W/m² by radiation', () => {
    const { heat, surfaceC } = settled({ ...BARE, waterActivity: 1 } as Cover);
    expect(Math.abs(surfaceC - 54.6)).toBeLessThan(0.1);
    expect(Math.abs(heat.convectionWm2 - 531)).toBeLessThan(1);
    // The model takes 4 ε σ T³ at the mean temperature: 0.9 % less than the fourth powers here.
    expect(heat.radiationWm2 / 643).toBeGreaterThan(0.98);
    expect(heat.radiationWm2 / 643).toBeLessThan(1);
    // Nothing warms any more; what the meat still loses with its juice is in both, with opposite signs.
    expect(Math.abs(heat.warmingWm2 + heat.juiceWm2)).toBeLessThan(0.01);
  });

  test('in paper both pass its outer side, which lies between surface and air', () => {
    const { heat, surfaceC } = settled(PAPER);
    const arrives = heat.convectionWm2 + heat.radiationWm2;
    const outerC = surfaceC + 0.03 * arrives;
    expect(outerC).toBeLessThan(121);
    expect(Math.abs(heat.convectionWm2 - 8 * (121 - outerC))).toBeLessThan(1e-6);
    // hr from the surface of the meat: 4 · 0.9 · 0.8 σ T³ at the mean of surface and wall.
    const meanK = 0.5 * (surfaceC + 121) + 273.15;
    const radiantWm2K = 4 * 0.9 * 0.8 * 5.670374419e-8 * meanK * meanK * meanK;
    expect(Math.abs(heat.radiationWm2 - radiantWm2K * (121 - outerC))).toBeLessThan(1e-3);
  });

  test('in foil the bright foil takes little radiation: 0.8 of 8.8', () => {
    const { heat } = settled(FOIL);
    expect(heat.radiationWm2 / (heat.convectionWm2 + heat.radiationWm2)).toBeCloseTo(0.8 / 8.8, 10);
  });

  test('coals that make the walls 100 K hotter come in as radiation, bare and by 0.8 W/m²K of foil', () => {
    for (const under of [BARE, FOIL]) {
      const cool = settled(under);
      const fired = settled(under, 100);
      expect(fired.heat.radiationWm2).toBeGreaterThan(cool.heat.radiationWm2);
      expect(fired.heat.convectionWm2).toBeLessThan(cool.heat.convectionWm2);
    }
    // The foil's outer side, from its convection, sees walls of 221 °C.
    const { heat } = settled(FOIL, 100);
    const outerC = 121 - heat.convectionWm2 / 8;
    expect(Math.abs(heat.radiationWm2 - 0.8 * (221 - outerC))).toBeLessThan(1e-6);
  });
});
