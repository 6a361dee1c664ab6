/** Writes docs/models/forecast-vs-practice.md anew: `npx tsx validation/practice/write.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { forecastCook, PLAN_MEMBERS } from '@pitwright/engine';
import { readCookFile } from '@pitwright/model';
import { comparePractice, practicePage } from './compare.ts';

const EXAMPLES = ['regatta-dinner', 'two-racks'];

const compared = EXAMPLES.flatMap((name) => {
  const path = new URL(`../../examples/${name}.pitwright.yaml`, import.meta.url);
  const reading = readCookFile(readFileSync(path, 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(`${name} is no cook`);
  const { cook } = reading.document;
  return comparePractice(cook, forecastCook(cook, { members: PLAN_MEMBERS, seed: 1 }));
});
writeFileSync(
  new URL('../../docs/models/forecast-vs-practice.md', import.meta.url),
  practicePage(compared, PLAN_MEMBERS),
);
