// What the eater gets: words as chances, orders that hold. Evidence: law; the usual rack: common practice, no source.
import { type Cook, type DirectHeat, quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { findCut } from '../meat/cuts.ts';
import { BARK_WORDS, COLOUR_WORDS, JUICINESS_WORDS, juicinessWord } from '../meat/eaten.ts';
import { forecastCook } from './cookForecast.ts';
import { eaterAt, eaterSaid, overCoalsSaid } from './eater.ts';
import { exampleCook } from './exampleCook.testing.ts';

const clock = (minutes: number) => ({ by: 'clock', after: quantity('time', minutes, 'min') }) as const;
const rack = (foilMin: number, bareMin = 120): Cook =>
  exampleCook('loin-back-ribs', [
    { kind: 'bare', until: clock(bareMin) },
    { kind: 'foil', until: clock(foilMin) },
    { kind: 'glazed', until: clock(30) },
    { kind: 'rest', until: { by: 'table' } },
  ]);
const foreseen = (cook: Cook) => forecastCook(cook, { members: 60, seed: 11 }).pieces[0]!;

/** Mean place of the word on its scale. */
const grade = <W extends string>(
  words: readonly W[],
  chances: Readonly<Partial<Record<W, number>>>,
): number => words.reduce((sum, word, i) => sum + i * (chances[word] ?? 0), 0);
const total = (chances: Readonly<Partial<Record<string, number>>>): number =>
  Object.values(chances).reduce<number>((sum, share) => sum + (share ?? 0), 0);

describe('what the eater gets', () => {
  const short = foreseen(rack(60));
  const long = foreseen(rack(90));

  test('the chances of each scale sum to one', () => {
    for (const chances of [short.eater!.bark, short.eater!.colour, short.eater!.juiciness])
      expect(total(chances)).toBeCloseTo(1, 9);
  });

  test('90 min in foil against 60: softer, drier, less left', () => {
    const bite = ['raw', 'firm', 'clean-bite', 'tender', 'falls-off', 'pulls-apart'] as const;
    expect(grade(bite, long.biteChances)).toBeGreaterThan(grade(bite, short.biteChances));
    expect(grade(JUICINESS_WORDS, long.eater!.juiciness)).toBeLessThan(
      grade(JUICINESS_WORDS, short.eater!.juiciness),
    );
    expect(long.eater!.waterLeft.p50).toBeLessThan(short.eater!.waterLeft.p50);
    expect(long.eater!.yieldShare.p50).toBeLessThan(short.eater!.yieldShare.p50);
  });

  test('longer bare: a firmer bark and a darker colour', () => {
    const bare = foreseen(rack(60, 180)).eater!;
    expect(grade(BARK_WORDS, bare.bark)).toBeGreaterThan(grade(BARK_WORDS, short.eater!.bark));
    expect(grade(COLOUR_WORDS, bare.colour)).toBeGreaterThan(grade(COLOUR_WORDS, short.eater!.colour));
  });

  test('sugar in the rub browns faster', () => {
    const line = (ingredient: string) => ({ ingredient, amount: quantity('mass', 100, 'g') });
    const rub = (lines: readonly string[]): Cook => ({
      ...rack(60),
      formulas: [{ id: 'r', name: 'Rub', kind: 'rub', lines: lines.map(line) }],
    });
    const plain = foreseen(rub(['salt_sea_fine'])).eater!;
    const sweet = foreseen(rub(['salt_sea_fine', 'sugar_white'])).eater!;
    expect(sweet.colourIndex.p50).toBeGreaterThan(plain.colourIndex.p50);
    expect(plain.colourIndex.p50).toBe(short.eater!.colourIndex.p50);
  });

  test('loin back ribs, two hours bare, one in foil, half an hour glazed: bark set, red-brown or darker, hardly ever dry', () => {
    const { bark, colour, juiciness, yieldShare } = short.eater!;
    expect((bark['wipes-off'] ?? 0) + (bark.smears ?? 0)).toBeLessThan(0.1);
    expect((colour['pink-grey'] ?? 0) + (colour.tan ?? 0)).toBeLessThan(0.1);
    expect(juiciness.dry ?? 0).toBeLessThan(0.25);
    // With a third of bone: 68–78 % of the raw mass, cooks say.
    expect(yieldShare.p50).toBeGreaterThan(0.68);
    expect(yieldShare.p50).toBeLessThan(0.8);
  });

  // Common practice, no source: racks are wrapped after 2–3 h, sooner on a hot pit.
  test.each(['loin-back-ribs', 'st-louis-ribs'] as const)(
    '%s told “until: bark” are ready to wrap about then',
    (cut) => {
      const piece = foreseen(
        exampleCook(cut, [
          { kind: 'bare', until: { by: 'bark' } },
          { kind: 'foil', until: { by: 'bite', bite: 'tender' } },
        ]),
      );
      const { p50 } = piece.stages[0]!.endS!;
      expect(p50).toBeGreaterThan(1.75 * 3600);
      expect(p50).toBeLessThan(3 * 3600);
      expect(piece.eater!.bark.smears ?? 0).toBe(0);
    },
  );

  test('a brisket flat is called moist when tender although next to no free water is left; a loin without its water is dry', () => {
    const until = { by: 'bite', bite: 'tender' } as const;
    const flat = foreseen(exampleCook('brisket-flat', [{ kind: 'bare', until }])).eater!;
    expect(flat.waterLeft.p50).toBeLessThan(0.1);
    expect(flat.juiciness.dry ?? 0).toBeLessThan(0.25);
    expect(juicinessWord(findCut('pork-loin-center')!, 0, 0.8)).toBe('dry');
  });

  test('waiting never gives juice back, and begins where the heat ends', () => {
    const cook = rack(60);
    const atEnd = eaterAt(
      cook,
      short.columns,
      short.columns.readyS.map(() => 0),
    )!;
    expect(atEnd).toEqual(short.eater);
    let before = atEnd.waterLeft.p50;
    for (const hours of [0.25, 1, 3, 6, 12]) {
      const later = eaterAt(cook, short.columns, 3.5 * 3600 + hours * 3600)!;
      expect(later.waterLeft.p50).toBeLessThanOrEqual(before + 1e-12);
      before = later.waterLeft.p50;
    }
  });

  test('the side over the coals: darker by more than the open one, the nearer the more; said where it is seen', () => {
    const over = (distanceCm: number, side: 'bone' | 'meat', more: Partial<DirectHeat> = {}) => {
      const direct = { side, distance: quantity('length', distanceCm, 'cm'), ...more };
      return foreseen(exampleCook('loin-back-ribs', [{ kind: 'bare', until: clock(90), direct }])).eater!;
    };
    const near = over(30, 'bone');
    const far = over(60, 'bone');
    expect(near.overCoals!.side).toBe('bone');
    expect(total(near.overCoals!.bark)).toBeCloseTo(1, 9);
    expect(near.overCoals!.colourIndex.p50).toBeGreaterThan(near.colourIndex.p50 + 1);
    expect(near.overCoals!.barkM.p50).toBeGreaterThan(near.barkM.p50);
    expect(near.overCoals!.colourIndex.p50).toBeGreaterThan(far.overCoals!.colourIndex.p50);
    expect(overCoalsSaid(near, 60)!.params).toMatchObject({ side: 'bone', colourHigh: 'black-brown' });
    // The open face down is the one that is told; turned, the other one has its share as well.
    expect(over(30, 'meat').overCoals).toBeUndefined();
    expect(over(30, 'meat').colourIndex.p50).toBeGreaterThan(near.colourIndex.p50 + 1);
    const turned = over(30, 'meat', { turn: quantity('time', 10, 'min') });
    expect(turned.overCoals!.side).toBe('bone');
    expect(overCoalsSaid(turned, 60)).toBeUndefined();
    expect(short.eater!.overCoals).toBeUndefined();
  });

  test('it is said with its likeliest words', () => {
    const said = eaterSaid(short.eater!, short.members)!;
    expect(said.params).toMatchObject({ members: 60 });
    expect(BARK_WORDS).toContain(said.params!.bark);
    expect(JUICINESS_WORDS).toContain(said.params!.juiciness);
  });

  test('a piece that never leaves the heat has no figures, and that is told', () => {
    const never: Stage[] = [
      { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 99.5, '°C') } },
    ];
    const base = exampleCook('pork-shoulder', never);
    const cold = { ...base, pit: { ...base.pit, temperature: quantity('temperature', 80, '°C') } };
    const piece = forecastCook(cold, { members: 4, seed: 2 }).pieces[0]!;
    expect(piece.eater!.barkM.neverShare).toBe(1);
    expect(eaterSaid(piece.eater!, 4)).toBeUndefined();
  });
});
