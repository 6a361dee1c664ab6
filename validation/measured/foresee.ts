import { answer, isCalcProblem } from '@pitwright/engine';
import type { MeasuredCook } from './cooks.ts';
import type { Foreseen } from './score.ts';

/** Longest run the engine follows: what is not reached by then counts as never. */
const LONGEST_H = 48;

/** The cook as the contract of calc `piece` writes it, with nothing told that the log does not tell. */
function inputsOf(cook: MeasuredCook, lastH: number): Map<string, string> {
  const { reading } = cook;
  const curve = reading.pit.flatMap(([fromH, pitC], i) => {
    const next = reading.pit[i + 1];
    // A pit is raised within minutes, not at once.
    return next ? [`${fromH} h ${pitC} °C`, `${next[0] - 0.05} h ${pitC} °C`] : [`${fromH} h ${pitC} °C`];
  });
  const inputs = new Map([
    ['cut', reading.cut],
    ['mass', `${cook.massKg} kg`],
    ['pit-type', reading.pitType],
    ['gauge', reading.gauge],
    ['water-pan', cook.hasWaterPan ? 'yes' : 'no'],
    ['stages', stagesOf(cook, lastH)],
  ]);
  if (reading.pit.length === 1) inputs.set('pit-temperature', `${reading.pit[0]![1]} °C`);
  else inputs.set('pit-curve', curve.join(' | '));
  if (cook.startC !== undefined) inputs.set('start', `${cook.startC} °C`);
  if (reading.altitudeM !== undefined) inputs.set('altitude', `${reading.altitudeM} m`);
  return inputs;
}

function stagesOf(cook: MeasuredCook, lastH: number): string {
  const { wrap } = cook;
  if (!wrap) return `bare ${lastH} h`;
  if (wrap.hours !== undefined)
    return wrap.hours >= lastH
      ? `bare ${lastH} h`
      : `bare ${wrap.hours} h | ${wrap.kind} ${lastH - wrap.hours} h`;
  return `bare until ${wrap.coreC} °C | ${wrap.kind} ${lastH} h`;
}

const ask = (inputs: Map<string, string>, output: string): number => {
  try {
    return answer('piece', inputs, output).value as number;
  } catch (error) {
    // A quantile among members that never get there: infinitely late.
    if (isCalcProblem(error)) return Number.POSITIVE_INFINITY;
    throw error;
  }
};

function reachHours(cook: MeasuredCook, reachC: number, output: string): number {
  const inputs = inputsOf(cook, LONGEST_H - 1);
  inputs.set('reach', `${reachC} °C`);
  return ask(inputs, output);
}

/** A told reading is sure to so much: probes in one piece differ by 2–10 °C, and clocks are read to the nearest half hour. */
const READING_SD_K = 4;
const READING_SD_LN_TIME = 0.05;
const TENTH = 1.2816;

/**
 * Hours until a told reading of `reachC`, from what was known before the cook: the time of the thermal centre, with
 * the reading's own error added to the band in quadrature (of ln t).
 */
export function foreseeHours(cook: MeasuredCook, reachC: number): Foreseen {
  const middle = reachHours(cook, reachC, 'reach-time');
  if (!Number.isFinite(middle))
    return { low: reachHours(cook, reachC, 'reach-time-low'), middle, high: middle };
  const sooner = reachHours(cook, reachC - READING_SD_K, 'reach-time');
  const later = Math.min(reachHours(cook, reachC + READING_SD_K, 'reach-time'), LONGEST_H);
  const reading = TENTH * Math.hypot(Math.log(later / sooner) / 2, READING_SD_LN_TIME);
  const widen = (x: number) => Math.hypot(Math.log(x / middle), reading);
  return {
    low: middle / Math.exp(widen(reachHours(cook, reachC, 'reach-time-low'))),
    middle,
    high: middle * Math.exp(widen(reachHours(cook, reachC, 'reach-time-high'))),
  };
}

/** Core temperature at a time [°C], from what was known before the cook. */
export function foreseeCoreC(cook: MeasuredCook, hours: number): Foreseen {
  const inputs = inputsOf(cook, hours);
  return {
    low: ask(inputs, 'core-temperature-low'),
    middle: ask(inputs, 'core-temperature'),
    high: ask(inputs, 'core-temperature-high'),
  };
}
