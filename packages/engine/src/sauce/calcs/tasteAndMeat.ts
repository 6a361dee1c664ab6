import { quantityInput, wordInput } from '../../calc/describe.ts';
import { exactlyOne, maybeCurve, maybeNumber, numberOf, textOf, without } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { SCOVILLE_PER_PPM } from '../data/pungency.ts';
import { RELATIVE_SWEETNESS } from '../data/sweetness.ts';
import { glazeSetTimeS } from '../glazeSet.ts';
import { brineEquilibrium, saltDiffusivity, saltUptake, saltUptakeTimeS } from '../meatSalt.ts';
import { bottomFilmM, panBottomExcessK, scorchDoseS, scorchVerdict } from '../scorch.ts';
import { page, room } from './room.ts';

type Sugar = keyof typeof RELATIVE_SWEETNESS;

export const tasteAndMeatCalcs: readonly CalcSpec[] = [
  {
    name: 'pungency',
    room,
    summary: 'SHU from capsaicin (16 per mg/kg), or of a spice of known strength in a batch',
    inputs: [
      quantityInput('capsaicin', 'fraction', { range: [0, 1, '1'], optional: true }),
      quantityInput('spice-mass', 'mass', { optional: true }),
      quantityInput('spice-strength', 'pungency', { range: [0, 16_000_000, 'SHU'], optional: true }),
      quantityInput('batch-mass', 'mass', { optional: true }),
    ],
    outputs: [{ name: 'strength', unit: 'SHU', kind: 'pungency' }],
    source: 'mass balance; 16 SHU per mg/kg',
    page,
    evaluate(inputs) {
      const spice = ['spice-mass', 'spice-strength', 'batch-mass'];
      if (exactlyOne(inputs, ['capsaicin', 'spice-mass']) === 'capsaicin') {
        without(inputs, spice, 'capsaicin is given');
        return { strength: SCOVILLE_PER_PPM * 1e6 * numberOf(inputs, 'capsaicin') };
      }
      const spiceKg = numberOf(inputs, 'spice-mass');
      const batchKg = numberOf(inputs, 'batch-mass');
      if (!(batchKg > 0 && spiceKg <= batchKg))
        refuse('sauce.spice-over-batch', { input: 'spice-mass', mass: { kind: 'mass', si: batchKg } });
      return { strength: (spiceKg * numberOf(inputs, 'spice-strength')) / batchKg };
    },
  },
  {
    name: 'relative-sweetness',
    room,
    summary: 'published table, by mass, sucrose 1; fructose crystalline',
    inputs: [wordInput('sugar', Object.keys(RELATIVE_SWEETNESS))],
    outputs: [{ name: 'factor', unit: '1', kind: 'number' }],
    source: 'encyclopedia of food terms; Public Health Nutrition 26(5), 2022',
    page,
    evaluate: (inputs) => ({ factor: RELATIVE_SWEETNESS[textOf(inputs, 'sugar') as Sugar] }),
  },
  {
    name: 'scorch-dose',
    room,
    summary: 'minutes at 130 °C equivalent of the dry surface; over 60 warn, over 180 stop',
    inputs: [
      { type: 'curve', name: 'curve', optional: true },
      quantityInput('temperature', 'temperature', { range: [0, 300, '°C'], optional: true }),
      quantityInput('time', 'time', { optional: true }),
    ],
    outputs: [
      { name: 'dose', unit: 'min', kind: 'time' },
      { name: 'verdict', unit: 'word', kind: 'word' },
    ],
    source: 'Arrhenius with 120 kJ/mol, judgement',
    page,
    evaluate(inputs) {
      const given = exactlyOne(inputs, ['curve', 'temperature']);
      const curve = maybeCurve(inputs, 'curve');
      if (given === 'curve') without(inputs, ['time'], 'the curve has its own times');
      const flat = (): [number[], number[]] => {
        const t = numberOf(inputs, 'temperature');
        return [
          [0, numberOf(inputs, 'time')],
          [t, t],
        ];
      };
      const [timesS, temperaturesC] = curve ? [curve.timesS, curve.temperaturesC] : flat();
      const doseS = scorchDoseS(timesS, temperaturesC);
      return { dose: doseS, verdict: scorchVerdict(doseS) };
    },
  },
  {
    name: 'glaze-set-time',
    room,
    summary: 'ρ h (1 − s1/s2)/flux',
    inputs: [
      quantityInput('film', 'length', { range: [0.05, 5, 'mm'] }),
      quantityInput('density', 'density', { range: [1000, 1500, 'kg/m³'], byDefault: [1200, 'kg/m³'] }),
      quantityInput('solids', 'fraction', { range: [0.05, 0.95, '1'] }),
      quantityInput('set-solids', 'fraction', { range: [0.3, 1, '1'], byDefault: [0.78, '1'] }),
      quantityInput('evaporation-flux', 'mass-flux', { range: [0.01, 20, 'kg/m²h'] }),
    ],
    outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
    source: 'mass balance of a drying film',
    page,
    evaluate(inputs) {
      const solids = numberOf(inputs, 'solids');
      const setSolids = numberOf(inputs, 'set-solids');
      if (solids > setSolids) refuse('sauce.glaze-already-set', { input: 'solids' });
      return {
        time: glazeSetTimeS({
          filmM: numberOf(inputs, 'film'),
          densityKgM3: numberOf(inputs, 'density'),
          solids,
          setSolids,
          evaporationFlux: numberOf(inputs, 'evaporation-flux'),
        }),
      };
    },
  },
  {
    name: 'pan-bottom-excess',
    room,
    summary: 'wall over bulk between stirs: q δ/k, δ = 1.13 √(αt)',
    inputs: [
      quantityInput('power', 'power', { range: [0, 20, 'kW'] }),
      quantityInput('efficiency', 'fraction', { range: [0.01, 1, '1'], byDefault: [1, '1'] }),
      quantityInput('diameter', 'length', { range: [5, 100, 'cm'] }),
      quantityInput('stir-interval', 'time', { range: [1, 1800, 's'] }),
      quantityInput('conductivity', 'conductivity', { range: [0.1, 1, 'W/mK'], byDefault: [0.5, 'W/mK'] }),
      quantityInput('diffusivity', 'diffusivity', {
        range: [0.05, 0.5, 'mm²/s'],
        byDefault: [0.14, 'mm²/s'],
      }),
    ],
    outputs: [
      { name: 'excess', unit: 'K', kind: 'difference' },
      { name: 'film', unit: 'mm', kind: 'length' },
    ],
    source: 'conduction into a stagnant film',
    page,
    evaluate(inputs) {
      const stirIntervalS = numberOf(inputs, 'stir-interval');
      const diffusivity = numberOf(inputs, 'diffusivity');
      return {
        excess: panBottomExcessK({
          netPowerW: numberOf(inputs, 'power') * numberOf(inputs, 'efficiency'),
          diameterM: numberOf(inputs, 'diameter'),
          stirIntervalS,
          conductivity: numberOf(inputs, 'conductivity'),
          diffusivity,
        }),
        film: bottomFilmM(stirIntervalS, diffusivity),
      };
    },
  },
  {
    name: 'salt-diffusivity',
    room,
    summary: 'sodium chloride in pork, 22 kJ/mol from 5 °C',
    inputs: [quantityInput('temperature', 'temperature', { range: [-2, 80, '°C'] })],
    outputs: [{ name: 'diffusivity', unit: 'm²/s', kind: 'diffusivity' }],
    source: 'Springer chapter on moisture and NaCl transport during meat salting, abstract',
    page,
    evaluate: (inputs) => ({ diffusivity: saltDiffusivity(numberOf(inputs, 'temperature')) }),
  },
  {
    name: 'salt-uptake',
    room,
    summary: 'share of equilibrium taken up by a slab salted on one or both faces, or the time to a share',
    inputs: [
      quantityInput('thickness', 'length', { range: [1, 300, 'mm'] }),
      wordInput('faces', ['both', 'one'], { byDefault: 'both' }),
      quantityInput('diffusivity', 'diffusivity', {
        range: [1e-12, 1e-8, 'm²/s'],
        byDefault: [1.9e-10, 'm²/s'],
      }),
      quantityInput('time', 'time', { optional: true }),
      quantityInput('fraction', 'fraction', { range: [0, 0.999, '1'], optional: true }),
    ],
    outputs: [
      { name: 'fraction', unit: '1', kind: 'number' },
      { name: 'time', unit: 'h', kind: 'time' },
    ],
    source: 'Crank, The Mathematics of Diffusion, plane sheet',
    page,
    evaluate(inputs) {
      exactlyOne(inputs, ['time', 'fraction']);
      const thicknessM = numberOf(inputs, 'thickness');
      const faces = textOf(inputs, 'faces') as 'both' | 'one';
      const diffusivity = numberOf(inputs, 'diffusivity');
      const timeS = maybeNumber(inputs, 'time');
      if (timeS !== undefined)
        return { fraction: saltUptake(thicknessM, faces, diffusivity, timeS), time: timeS };
      const fraction = numberOf(inputs, 'fraction');
      return { fraction, time: saltUptakeTimeS(thicknessM, faces, diffusivity, fraction) };
    },
  },
  {
    name: 'equilibrium-brine',
    room,
    summary: 'salt once meat and brine agree, over all mass or over the water phase',
    inputs: [
      quantityInput('meat', 'mass', { range: [0.01, 200, 'kg'] }),
      quantityInput('water-fraction', 'fraction', { range: [0.2, 0.9, '1'], byDefault: [0.72, '1'] }),
      quantityInput('water', 'mass', { range: [0, 400, 'kg'] }),
      quantityInput('salt', 'mass', { range: [0, 50, 'kg'] }),
      wordInput('basis', ['all', 'water-phase'], { byDefault: 'water-phase' }),
    ],
    outputs: [{ name: 'salt', unit: 'g/100 g', kind: 'fraction' }],
    source: 'mass balance',
    page,
    evaluate: (inputs) => ({
      salt: brineEquilibrium(
        {
          meatKg: numberOf(inputs, 'meat'),
          waterFraction: numberOf(inputs, 'water-fraction'),
          waterKg: numberOf(inputs, 'water'),
          saltKg: numberOf(inputs, 'salt'),
        },
        textOf(inputs, 'basis') as 'all' | 'water-phase',
      ),
    }),
  },
];
