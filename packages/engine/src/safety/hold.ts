import { type HoldTable, holdTable } from './rules/holdTables.ts';
import { hundredthsF, printedHundredthsF, reachesLimit } from './ruleTemperature.ts';

/** [°C] of the first printed temperature of a table. */
export function firstPrintedC({ lines, unit }: HoldTable): number {
  const first = lines[0]![0];
  return unit === '°C' ? first : (first - 32) / 1.8;
}

/**
 * Printed hold time once every part is at this temperature [s]; undefined below the first printed temperature.
 * A rule never shortens between its lines: the next lower printed temperature counts.
 */
export function holdTimeS(rule: string, temperatureC: number): number | undefined {
  const { lines, unit } = holdTable(rule);
  const at = hundredthsF(temperatureC);
  let time: number | undefined;
  for (const [printed, timeS] of lines) if (at >= printedHundredthsF(printed, unit)) time = timeS;
  return time;
}

/** Whether the coldest part, its thermometer's error taken off, was held as long as the rule asks. */
export function holdIsMet(rule: string, temperatureC: number, timeS: number, probeErrorK: number): boolean {
  const asked = holdTimeS(rule, temperatureC - probeErrorK);
  return asked !== undefined && reachesLimit(timeS, asked);
}
