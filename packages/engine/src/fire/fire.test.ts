/** The fire: what burns is conserved, walls close their balance, what cannot be is refused. Figures are in validation/. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../calc/answer.ts';
import { CalcProblem } from '../calc/spec.ts';
import { pitHumidityRatio, steadyFuelKgS } from './balance.ts';
import { dryBasisOf, elementsOf, stoichiometricAir, wetBasisOf } from './combustion.ts';
import { SPECIES, WOOD_GRAVITY } from './data/species.ts';
import { outerCoefficientWm2K, outerWall } from './outerWall.ts';
import { gravityAt, splitBurn } from './split.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('fuel', () => {
  it('moisture bases undo each other', () => {
    fc.assert(
      fc.property(between(0, 2), (x) => {
        expect(Math.abs(dryBasisOf(wetBasisOf(x)) - x)).toBeLessThan(1e-12);
      }),
    );
  });

  it('reads formulas, refuses what is none', () => {
    expect(elementsOf('C6H10O5')!.carbon).toBeCloseTo(0.4445, 3);
    expect(elementsOf('CH3OH')).toEqual(elementsOf('CH4O'));
    for (const text of ['', 'O2', 'CaO', 'C-1H4', 'methane', 'C(H)4'])
      expect(elementsOf(text)).toBeUndefined();
  });

  it('needs less air the wetter it is', () => {
    const wood = { carbon: 0.495, hydrogen: 0.06, oxygen: 0.435 };
    fc.assert(
      fc.property(between(0, 0.6), between(0.001, 0.05), (wet, more) => {
        expect(stoichiometricAir(wood, wet + more)).toBeLessThan(stoichiometricAir(wood, wet));
      }),
    );
  });

  it('is lighter by volume swollen than at 12 %', () => {
    for (const species of SPECIES) {
      const wood = WOOD_GRAVITY[species];
      expect(gravityAt(wood, 0.12)).toBeCloseTo(wood.at12, 12);
      expect(gravityAt(wood, 0.3)).toBeCloseTo(wood.basic, 12);
      expect(wood.basic).toBeLessThan(wood.at12);
    }
  });
});

describe('a split', () => {
  const anySplit = fc.record({
    heatJ: between(1e6, 3e7),
    volatileShare: between(0, 1),
    lagS: between(0, 1200),
    burnS: between(600, 9000),
    charConstantS: between(600, 7200),
  });

  it('gives its heat in the end and never more', () => {
    fc.assert(
      fc.property(anySplit, between(0, 20_000), (split, timeS) => {
        expect(splitBurn(split, timeS).releasedJ).toBeLessThanOrEqual(split.heatJ * (1 + 1e-12));
        expect(splitBurn(split, 48 * 3600).releasedJ / split.heatJ).toBeGreaterThan(0.998);
      }),
    );
  });

  it('releases the integral of its power', () => {
    fc.assert(
      fc.property(anySplit, (split) => {
        const endS = split.lagS + split.burnS;
        const n = 20_000;
        let sum = 0;
        for (let i = 0; i < n; i++) sum += (splitBurn(split, ((i + 0.5) * endS) / n).powerW * endS) / n;
        expect(Math.abs(sum - splitBurn(split, endS).releasedJ)).toBeLessThan(1e-3 * split.heatJ);
      }),
      { numRuns: 25 },
    );
  });
});

describe('walls', () => {
  const anyWall = fc.record({
    insideC: between(60, 300),
    airC: between(-20, 40),
    windMs: between(0, 20),
    diameterM: between(0.2, 2),
    innerWm2K: between(3, 60),
    resistanceM2KW: between(0, 2),
    emissivity: between(0.05, 1),
  });

  it('pass inside what they shed outside', () => {
    fc.assert(
      fc.property(anyWall, (wall) => {
        const { skinC, outerWm2K, transmittanceWm2K } = outerWall(wall);
        expect(skinC).toBeGreaterThan(wall.airC);
        expect(skinC).toBeLessThan(wall.insideC);
        const through = transmittanceWm2K * (wall.insideC - wall.airC);
        expect(Math.abs(outerWm2K * (skinC - wall.airC) - through)).toBeLessThan(1e-4 * through);
      }),
    );
  });

  it('shed more in more wind', () => {
    fc.assert(
      fc.property(anyWall, between(0.1, 5), between(30, 100), (wall, more, skinC) => {
        const skin = Math.max(skinC, wall.airC + 1);
        expect(outerCoefficientWm2K({ ...wall, windMs: wall.windMs + more }, skin)).toBeGreaterThan(
          outerCoefficientWm2K(wall, skin),
        );
      }),
    );
  });

  it('are at rest where inside and air agree', () => {
    const wall = {
      insideC: 30,
      airC: 30,
      windMs: 2,
      diameterM: 0.5,
      innerWm2K: 10,
      resistanceM2KW: 0,
      emissivity: 0.9,
    };
    expect(outerWall(wall).skinC).toBe(30);
  });
});

describe('balances', () => {
  it('of water: what goes in leaves with the gas', () => {
    fc.assert(
      fc.property(
        between(0.1, 5),
        between(1.5, 20),
        between(0, 1),
        (fuelKgH, excessAirRatio, evaporationKgH) => {
          const water = {
            fuelKgS: fuelKgH / 3600,
            airRatio: 4.9,
            excessAirRatio,
            waterRatio: 0.614,
            efficiency: 0.85,
            ambientHumidityRatio: 0.0073,
            evaporationKgS: evaporationKgH / 3600,
          };
          const W = pitHumidityRatio(water)!;
          const airKgH = excessAirRatio * 4.9 * fuelKgH;
          const dryKgH = airKgH + fuelKgH * (1 - 0.614);
          expect(W * dryKgH).toBeCloseTo(airKgH * 0.0073 + 0.85 * fuelKgH * 0.614 + evaporationKgH, 9);
        },
      ),
    );
  });

  it('of heat: more air takes more fuel, until no fuel holds it', () => {
    const pit = {
      wallW: 1265,
      fireboxW: 2815,
      rainW: 0,
      sunW: 0,
      evaporationKgS: 0,
      netJKg: 15e6,
      efficiency: 0.85,
      airRatio: 4.9,
      exhaustRiseK: 111,
    };
    const at = (excessAirRatio: number) => steadyFuelKgS({ ...pit, excessAirRatio });
    expect(at(12)!).toBeGreaterThan(at(8)!);
    expect(at(30)).toBeUndefined();
  });
});

describe('refusals', () => {
  it.each([
    ['moisture-basis', ''],
    ['moisture-basis', 'wet-basis=20 %; dry-basis=25 %'],
    ['wood-net-heating-value', 'dry-value=18.5 MJ/kg'],
    ['stoichiometric-air', 'formula=C3H8; carbon=0.8'],
    ['stoichiometric-air', 'carbon=0.6; hydrogen=0.3; oxygen=0.3'],
    ['stoichiometric-air', 'carbon=0.1; oxygen=0.9'],
    ['stoichiometric-air', 'formula=water'],
    ['combustion-water', 'carbon=0.5'],
    ['wood-density', 'species=apple; specific-gravity=0.6; dry-basis=20 %'],
    ['wood-density', 'basic-gravity=0.6; dry-basis=20 %'],
    ['wood-density', 'dry-basis=20 %'],
    ['fuel-properties', 'fuel=coal'],
    ['wall-time-constant', 'heat-capacity=57 kJ/K; inner-conductance=0 W/K; outer-conductance=0 W/K'],
    ['start-up-heat', 'parts=117 kg'],
    ['thermocouple-tolerance', 'type=T; class=1; temperature=400 °C'],
    ['thermocouple-tolerance', 'type=k; class=1; temperature=100 °C'],
    ['spritz-drying-time', 'mass=30 g; area=0 m²; evaporation-flux=1 kg/m²h'],
    [
      'pit-humidity',
      'fuel-rate=0 kg/h; stoichiometric-air=5; excess-air-ratio=8; water-formed=0.6; efficiency=0.85; ambient-humidity-ratio=0.007',
    ],
  ])('%s refuses %s', (calc, inputs) => expect(() => answer(calc, inputs)).toThrow(CalcProblem));

  it('gives the gross value of propane alone', () => {
    expect(answer('fuel-properties', 'fuel=propane', 'gross-value').value).toBeCloseTo(50.38, 9);
    expect(() => answer('fuel-properties', 'fuel=wood', 'gross-value')).toThrow(CalcProblem);
  });
});
