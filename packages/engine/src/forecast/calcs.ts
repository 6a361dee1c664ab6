import { PIT_TYPES, type PitType } from '@pitwright/model';
import { quantityInput, wordInput } from '../calc/describe.ts';
import { exactlyOne, maybeCurve, maybeNumber, maybeText, numberOf, textOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcAnswer, CalcInputs, CalcSpec } from '../calc/spec.ts';
import { resolvePiece, resolvePit } from '../day/resolve.ts';
import type { Cut } from '../meat/cut.ts';
import { cuts, findCut } from '../meat/cuts.ts';
import { hasFatCap, hasMembrane, type OtherFaceTold } from '../meat/faces.ts';
import { quantile } from './ensemble/range.ts';
import { medianBite, type PieceFigures, pieceFigures } from './piece/ensemble.ts';
import { stagesIn } from './piece/stages.ts';

const REACH = [30, 105, '°C'] as const;

/** Refuses a quantile that falls among members which never get there. */
function quantileOf(values: Float64Array, q: number, output: string, reason: string): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  const value = sorted.length > 0 ? quantile(sorted, q) : Infinity;
  return value < Infinity ? value : refuse('calc.impossible', { input: output, reason });
}

/** Quantile of what holds at the end, among the members that get there; refused where most do not. */
function atEnd(figures: PieceFigures, values: Float64Array, q: number, output: string): number {
  quantileOf(figures.elapsedS, 0.5, output, NEVER_ENDS);
  return quantileOf(values, q, output, NEVER_ENDS);
}

const NEVER_ENDS =
  'a stage does not end within 48 h, ask for a lower temperature at the centre, a hotter pit or a wrap';
const NEVER_REACHED =
  'the centre does not get there within these stages, ask for a lower temperature, a hotter pit or longer stages';
const NO_STALL = 'the centre never lies between 55 and 85 °C while it warms, let the stages go on';

type Reading = (figures: PieceFigures, output: string) => number | string;

const time =
  (pick: (figures: PieceFigures) => Float64Array, q: number, reason: string): Reading =>
  (figures, output) =>
    quantileOf(pick(figures), q, output, reason);

const READINGS: Readonly<
  Record<
    string,
    {
      readonly unit: string;
      readonly kind: 'time' | 'temperature' | 'fraction' | 'word';
      readonly read: Reading;
    }
  >
> = {
  elapsed: { unit: 'h', kind: 'time', read: time((f) => f.elapsedS, 0.5, NEVER_ENDS) },
  'reach-time': { unit: 'h', kind: 'time', read: time((f) => f.reachS, 0.5, NEVER_REACHED) },
  'reach-time-low': { unit: 'h', kind: 'time', read: time((f) => f.reachS, 0.1, NEVER_REACHED) },
  'reach-time-high': { unit: 'h', kind: 'time', read: time((f) => f.reachS, 0.9, NEVER_REACHED) },
  'elapsed-low': { unit: 'h', kind: 'time', read: time((f) => f.elapsedS, 0.1, NEVER_ENDS) },
  'elapsed-high': { unit: 'h', kind: 'time', read: time((f) => f.elapsedS, 0.9, NEVER_ENDS) },
  'core-temperature': { unit: '°C', kind: 'temperature', read: (f, o) => atEnd(f, f.coreC, 0.5, o) },
  'core-temperature-low': { unit: '°C', kind: 'temperature', read: (f, o) => atEnd(f, f.coreC, 0.1, o) },
  'core-temperature-high': { unit: '°C', kind: 'temperature', read: (f, o) => atEnd(f, f.coreC, 0.9, o) },
  'mass-loss': { unit: '%', kind: 'fraction', read: (f, o) => atEnd(f, f.lossShare, 0.5, o) },
  yield: { unit: '%', kind: 'fraction', read: (f, o) => 1 - atEnd(f, f.lossShare, 0.5, o) },
  bite: {
    unit: 'word',
    kind: 'word',
    read: (f, o) => {
      quantileOf(f.elapsedS, 0.5, o, NEVER_ENDS);
      return medianBite(f)!;
    },
  },
  'stall-temperature': {
    unit: '°C',
    kind: 'temperature',
    read: (f, o) => quantileOf(f.stallC, 0.5, o, NO_STALL),
  },
  'time-65-to-75': {
    unit: 'h',
    kind: 'time',
    read: time(
      (f) => f.from65To75S,
      0.5,
      'the centre does not pass 75 °C within these stages, let them go on',
    ),
  },
};

/** Asked again and again for other outputs of the same piece: the last few ensembles are kept. */
const KEPT = 24;
const kept = new Map<string, PieceFigures>();

function figuresOf(inputs: CalcInputs): PieceFigures {
  const key = JSON.stringify(Object.entries(inputs).sort(([a], [b]) => (a < b ? -1 : 1)));
  const known = kept.get(key);
  if (known) return known;
  const figures = evaluated(inputs);
  if (kept.size >= KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, figures);
  return figures;
}

/** What is told of the other face, of the cuts alone that have one. */
function otherFaceOf(inputs: CalcInputs, cut: Cut): OtherFaceTold {
  const membrane = maybeText(inputs, 'membrane');
  const fatCapM = maybeNumber(inputs, 'fat-cap');
  if (membrane !== undefined && !hasMembrane(cut))
    refuse('calc.not-here', { input: 'membrane', reason: 'only a rack of ribs has one on its bone side' });
  if (fatCapM !== undefined && !hasFatCap(cut))
    refuse('calc.not-here', { input: 'fat-cap', reason: 'only a brisket has its fat on one face' });
  return {
    ...(membrane !== undefined && { hasMembrane: membrane === 'yes' }),
    ...(fatCapM !== undefined && { fatCapM }),
  };
}

function evaluated(inputs: CalcInputs): PieceFigures {
  const cut = findCut(textOf(inputs, 'cut'))!;
  const massKg = maybeNumber(inputs, 'mass');
  const thicknessM = maybeNumber(inputs, 'thickness');
  if (massKg === undefined && thicknessM === undefined)
    refuse('calc.give-too', { input: 'mass', reason: 'or the thickness of the thickest part, or both' });
  const curve =
    exactlyOne(inputs, ['pit-temperature', 'pit-curve']) === 'pit-curve'
      ? maybeCurve(inputs, 'pit-curve')!
      : undefined;
  const humidityRatio = maybeNumber(inputs, 'humidity-ratio');
  const bone = maybeText(inputs, 'bone');
  const solutionShare = maybeNumber(inputs, 'solution-added');
  const pit = resolvePit({
    type: textOf(inputs, 'pit-type') as PitType,
    temperatureC: curve
      ? curve.temperaturesC[curve.temperaturesC.length - 1]!
      : numberOf(inputs, 'pit-temperature'),
    gauge: textOf(inputs, 'gauge') as 'grate' | 'lid' | 'set-point',
    hasWaterPan: textOf(inputs, 'water-pan') === 'yes',
    altitudeM: numberOf(inputs, 'altitude'),
    ...(humidityRatio !== undefined && { humidityRatio }),
  });
  const piece = resolvePiece({
    id: 'piece',
    items: 1,
    cut,
    ...(massKg !== undefined && { massKg }),
    ...(thicknessM !== undefined && { thicknessM }),
    ...(bone !== undefined && { hasBone: bone === 'yes' }),
    ...(solutionShare !== undefined && { solutionShare }),
    otherFace: otherFaceOf(inputs, cut),
    startC: numberOf(inputs, 'start'),
    placeOffsetK: { mean: 0, sd: 0 },
    bite: 'tender',
    stages: stagesIn(textOf(inputs, 'stages'), pit, curve),
  });
  return pieceFigures(piece, pit, maybeNumber(inputs, 'reach'));
}

const piece: CalcSpec = {
  name: 'piece',
  room: 'meat',
  summary:
    'the whole engine on one piece; stages such as bare until 74 °C | foil 2 h pit 121 °C | hold 3 h at 65 °C; give mass, thickness or both, and pit-temperature or pit-curve',
  inputs: [
    wordInput(
      'cut',
      cuts().map((cut) => cut.id),
    ),
    quantityInput('mass', 'mass', { range: [0.1, 20, 'kg'], optional: true }),
    quantityInput('thickness', 'length', { range: [5, 300, 'mm'], optional: true }),
    wordInput('bone', ['yes', 'no'], { optional: true }),
    quantityInput('solution-added', 'fraction', { range: [0, 30, '%'], optional: true }),
    wordInput('membrane', ['yes', 'no'], { optional: true }),
    quantityInput('fat-cap', 'length', { range: [0, 30, 'mm'], optional: true }),
    quantityInput('start', 'temperature', { range: [0, 25, '°C'], byDefault: [5, '°C'] }),
    wordInput('pit-type', PIT_TYPES, { byDefault: 'offset' }),
    quantityInput('pit-temperature', 'temperature', { range: [60, 250, '°C'], optional: true }),
    wordInput('gauge', ['grate', 'lid', 'set-point'], { byDefault: 'grate' }),
    { name: 'pit-curve', type: 'curve', optional: true },
    quantityInput('humidity-ratio', 'fraction', { range: [0, 0.5, '1'], optional: true }),
    wordInput('water-pan', ['yes', 'no'], { byDefault: 'no' }),
    quantityInput('altitude', 'length', { range: [-500, 4000, 'm'], byDefault: [0, 'm'] }),
    { name: 'stages', type: 'text' },
    quantityInput('reach', 'temperature', { range: REACH, optional: true }),
  ],
  outputs: Object.entries(READINGS).map(([name, { unit, kind }]) => ({ name, unit, kind })),
  source: 'heat and water in one piece; fitted parameters and their doubt',
  page: 'meat.md',
  evaluate(inputs, wanted = Object.keys(READINGS)) {
    const answer: Record<string, CalcAnswer[string]> = {};
    const wantsReach = wanted.some((output) => output.startsWith('reach-time'));
    if (wantsReach && inputs.reach === undefined && wanted.length === 1)
      refuse('calc.give-too', { input: 'reach', reason: 'the temperature whose time is wanted' });
    const figures = figuresOf(inputs);
    for (const output of wanted) {
      if (output.startsWith('reach-time') && inputs.reach === undefined) continue;
      answer[output] = READINGS[output]!.read(figures, output);
    }
    return answer;
  },
};

/** Figures of one piece that can be asked for by name. */
export const meatCalcs: readonly CalcSpec[] = [piece];
