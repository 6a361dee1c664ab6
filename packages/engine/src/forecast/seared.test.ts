// A stage that an event ends within the blink of a step hands on no slope to the next. Evidence: exact (no part of a
// piece gets colder than it went on, or hotter than the coals it sees).
import { readCookFile } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';

const SEARED = `kind: cook
version: 1
name: Seared, then in paper
demo: yes
zone: Europe/Lisbon
table:
  at: 2027-06-19 18:00
guests:
  adults: 14
pit:
  name: Offset
  type: offset
  temperature: 121 °C
pieces:
  - letter: A
    cut: brisket-whole
    mass: 5.9 kg
    thickness: 76 mm
    fat-cap: 6 mm
    solution: 8 %
    bite: tender
    stages:
      - stage: bare
        until: bark
        pit: 135 °C
        direct:
          side: meat
          distance: 20 cm
        spritz:
          amount: 15 mL
          every: 45 min
      - stage: paper
        until: tender
      - stage: hold
        until: table
        in: oven
        at: 66 °C
`;

/** Ribs close above the coals, then glazed by a stage that is over as it begins. */
const GLAZED_AFTER = SEARED.slice(0, SEARED.indexOf('  - letter')).concat(`  - letter: A
    cut: beef-short-ribs
    mass: 2.3 kg
    bite: tender
    stages:
      - stage: bare
        until: core 70 °C
        direct:
          side: meat
          distance: 15 cm
      - stage: glazed
        until: core 70 °C
      - stage: paper
        for: 45 min
`);

test.each([
  ['bark set over the coals, then paper', SEARED],
  ['seared, then glazed for no time at all', GLAZED_AFTER],
])('%s: every member stays between the fridge and the coals', (_, text) => {
  const read = readCookFile(text);
  if (!read.ok || read.document.kind !== 'cook') throw new Error(JSON.stringify(read));
  const { columns } = forecastCook(read.document.cook, { members: 200, seed: 1 }).pieces[0]!;
  for (let i = 0; i < columns.stageEndS.length; i++) {
    if (!(columns.stageEndS[i]! < Infinity)) continue;
    expect(columns.stageCoreC[i]).toBeGreaterThan(-2);
    expect(columns.stageCoreC[i]).toBeLessThan(101);
    expect(columns.stageSurfaceC[i]).toBeGreaterThan(-2);
    expect(columns.stageSurfaceC[i]).toBeLessThan(600);
  }
});
