// What is tried, read and carried where, by what the piece is. Evidence: common practice (a slab of ribs is bent, thick
// meat is probed, a bird is read by its thermometer).
import { forecastCook } from '@pitwright/engine';
import { readCookFile } from '@pitwright/model';
import { printer, say, US } from '@pitwright/words';
import { expect, test } from 'vitest';
import { gatherReport } from './gather.ts';
import { signOf, taskSaid } from './task-words.ts';

const TEXT = `kind: cook
version: 1
name: Three kinds
demo: yes
zone: Europe/Lisbon
table:
  at: 2027-06-19 18:30
guests:
  adults: 14
pit:
  name: Offset
  type: offset
  temperature: 250 °F
pieces:
  - letter: A
    cut: brisket-whole
    mass: 13 lb
    bite: tender
    stages:
      - stage: bare
        until: core 165 °F
      - stage: paper
        until: tender
      - stage: hold
        until: table
        in: oven
        at: 150 °F
  - letter: B
    cut: st-louis-ribs
    mass: 2.75 lb
    bite: tender
    stages:
      - stage: bare
        until: tender
  - letter: C
    cut: chicken-leg
    count: 4
    mass: 0.7 lb
    bite: firm
    stages:
      - stage: bare
        until: core 172 °F
        pit: 300 °F
`;

test('a slab bends, a brisket is probed, a bird is read; where each goes and how hot the pit is wanted is said', () => {
  const read = readCookFile(TEXT);
  if (!read.ok || read.document.kind !== 'cook') throw new Error('the file does not read as a cook');
  const { cook } = read.document;
  const report = gatherReport(cook, forecastCook(cook, { members: 40, seed: 1 }));
  const print = printer(US);
  const letters = new Map(report.cook.pieces.map(({ id, letter }) => [letter, id]));
  const job = (letter: string, kind: string) =>
    report.plan.tasks.find((task) => task.kind === kind && task.pieceIds.includes(letters.get(letter)!))!;
  const words = (letter: string, kind: string): string => {
    return say(taskSaid(job(letter, kind), report, print), US);
  };
  const sign = (letter: string): string => {
    return say(signOf(job(letter, 'take-off'))!, US);
  };
  expect(sign('A')).toBe('a pick slides in with a slight tug, in three places');
  expect(sign('B')).toBe('it bends and its surface cracks');
  expect(sign('C')).toBe('the middle reads 172 °F');
  expect(words('A', 'take-off')).toBe('A off, still wrapped, into the oven at 150 °F.');
  expect(say(taskSaid(report.plan.tasks.find(({ kind }) => kind === 'light-oven')!, report, print), US)).toBe(
    'Oven on, 150 °F.',
  );
  expect(words('A', 'rub')).toBe('Trim and rub A. Back on the tray, lowest shelf.');
  expect(words('C', 'meat-on')).toContain('Pit to 300 °F.');
  expect(words('A', 'meat-on')).not.toContain('Pit to');
});
