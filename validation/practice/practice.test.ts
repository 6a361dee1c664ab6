// Common practice, no source: the plans of the examples beside the times cooks expect; misses stand in
// docs/models/forecast-vs-practice.md with their size. A miss of more than a quarter of the range's middle fails.
import { readFileSync } from 'node:fs';
import { forecastCook } from '@pitwright/engine';
import { readCookFile } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { comparePractice } from './compare.ts';

const MEMBERS = 60;
const page = readFileSync(new URL('../../docs/models/forecast-vs-practice.md', import.meta.url), 'utf8');

describe.each(['regatta-dinner', 'two-racks'])('%s', (name) => {
  const text = readFileSync(new URL(`../../examples/${name}.pitwright.yaml`, import.meta.url), 'utf8');
  const reading = readCookFile(text);
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(`${name} is no cook`);
  const { cook } = reading.document;
  const compared = comparePractice(cook, forecastCook(cook, { members: MEMBERS, seed: 1 }));

  test('its median times lie in the cooks’ range or miss it by less than a quarter', () => {
    expect(compared.length).toBeGreaterThan(0);
    for (const one of compared)
      expect(Math.abs(one.missH), one.letter).toBeLessThan((one.fromH + one.toH) / 8);
  });

  test('each piece stands on the page', () => {
    for (const one of compared) expect(page).toContain(`| ${cook.name} | ${one.letter} | ${one.cut} |`);
  });
});
