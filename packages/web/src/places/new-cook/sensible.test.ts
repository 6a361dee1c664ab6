// What a new cook proposes for each cut of the catalogue. Common practice, no source.
import { forecastCook } from '@pitwright/engine';
import { quantity } from '@pitwright/model';
import { expect, test } from 'vitest';
import { cookOf, firstAnswers, meatAnswer } from './answers.ts';
import { SENSIBLE_CUTS } from './sensible.ts';

/** Opening a wrap that was closed a moment ago is work for nothing. */
const LEAST_WRAPPED_S = 20 * 60;

test.each(SENSIBLE_CUTS)(
  '$cut: each stage gets somewhere, and a wrap stays closed long enough to be worth it',
  (known) => {
    const answers = {
      ...firstAnswers('metric', 'Europe/Lisbon', 'k'),
      meats: [meatAnswer(known.cut, 'metric', 'k')],
    };
    const cook = cookOf(answers, {
      id: 'first',
      zone: 'Europe/Lisbon',
      name: 'First',
      pitName: 'Kettle',
      weatherWords: 'mild',
      masses: [quantity('mass', known.massKg, 'kg')],
      heat: quantity('temperature', 120, '°C'),
    });
    const piece = forecastCook(cook, { members: 24, seed: 3 }).pieces[0]!;
    expect(piece.ready.neverShare).toBe(0);
    for (const [k, stage] of cook.pieces[0]!.stages.entries()) {
      if (stage.kind !== 'foil' && stage.kind !== 'paper') continue;
      const before = piece.stages[k - 1]!.endS!.p50;
      expect(piece.stages[k]!.endS!.p50 - before).toBeGreaterThan(LEAST_WRAPPED_S);
    }
  },
);
