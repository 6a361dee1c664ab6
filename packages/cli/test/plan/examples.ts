import { readFileSync } from 'node:fs';
import { forecastCook } from '@pitwright/engine';
import { type Cook, readCookFile } from '@pitwright/model';
import { gatherReport, type PlanReport } from '@pitwright/paper';

export const EXAMPLES = ['regatta-dinner', 'two-racks'] as const;
export type Example = (typeof EXAMPLES)[number];

export const examplePath = (name: string): string =>
  new URL(`../../../../examples/${name}.pitwright.yaml`, import.meta.url).pathname;

export function exampleCook(name: string): Cook {
  const reading = readCookFile(readFileSync(examplePath(name), 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(`${name} is no cook`);
  return reading.document.cook;
}

const reports = new Map<string, PlanReport>();

/** The report of an example with few members, for speed; made once. */
export function exampleReport(name: Example, members = 24): PlanReport {
  const key = `${name} ${members}`;
  const made = reports.get(key);
  if (made) return made;
  const cook = exampleCook(name);
  const report = gatherReport(cook, forecastCook(cook, { members, seed: 1 }));
  reports.set(key, report);
  return report;
}
