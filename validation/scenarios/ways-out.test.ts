/** What is offered where a cook does not fit: only what a person would take, and whole pieces of equipment. */
import { type Conflict, planCook } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { METRIC, printer, say } from '@pitwright/words';
import { describe, expect, test } from 'vitest';
import { exampleCook, scenarios } from './kitchens.ts';
import { syntheticForecast } from './synthetic-forecast.ts';

const conflictsOf = (cook: Cook): readonly Conflict[] =>
  planCook(cook, syntheticForecast(cook), {}).conflicts;
const withoutOven = (cook: Cook): Cook => ({ ...cook, kitchen: { ...cook.kitchen, ovens: 0 } });
const print = printer(METRIC);

/** Eight kitchens, and each of them in worse straits. */
const strained = scenarios().flatMap(({ name, cook }): (readonly [string, Cook])[] => [
  [name, cook],
  [`${name}, no oven`, withoutOven(cook)],
  [`${name}, no burner`, { ...cook, kitchen: { ...cook.kitchen, burners: 0 } }],
  [`${name}, half a shelf`, { ...cook, kitchen: { ...cook.kitchen, fridgeShelves: 0.5 } }],
]);

describe.each(strained)('%s', (_, cook) => {
  test('a clock is bent by three hours at most where there is another way', () => {
    for (const { wayOut } of conflictsOf(cook)) {
      expect(wayOut.length).toBeGreaterThan(0);
      const minutes = wayOut.flatMap(({ buys: { id, params } }) =>
        /way-out\.(?:table|chance|earliest|latest)/.test(id) ? [Number(params!.amount)] : [],
      );
      if (wayOut.length > 1) for (const amount of minutes) expect(amount).toBeLessThanOrEqual(180);
    }
  });
});

test('an oven that is not there is said alone: neither no rest nor cutting the day before would help', () => {
  const conflicts = conflictsOf(withoutOven(exampleCook('two-racks')));
  expect(
    conflicts.map(({ demands, wayOut }) => [
      demands.map(({ said }) => say(said, print)),
      wayOut.map(({ buys }) => say(buys, print)),
    ]),
  ).toEqual([[['no oven'], ['1 more oven, or another place for it']]]);
});
