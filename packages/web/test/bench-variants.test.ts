// Variants kept on the bench and labels copied down: what is kept, and what is asked. Evidence: conformity, laws.
import { type Cook, type Formula, type IngredientLabel, madeFormula, quantity } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  forToggled,
  scaled,
  setLate,
  setLine,
  setLines,
  setWaterOff,
  withoutLine,
} from '../src/places/bench/edit.ts';
import {
  draftOf,
  emptyDraft,
  type LabelDraft,
  readDraft,
  usesOf,
  withLabel,
  withoutLabel,
} from '../src/places/bench/label-form.ts';
import {
  addVariant,
  chooseVariant,
  keptAs,
  removeVariant,
  renameVariant,
  variantsOfLine,
} from '../src/places/bench/variants.ts';

const g = (massG: number) => quantity('mass', massG, 'g');
const GLAZE: Formula = {
  id: 'glaze',
  name: 'Glaze',
  kind: 'sauce',
  lines: [
    { ingredient: 'cola', amount: g(400) },
    { ingredient: 'honey', amount: g(120), locked: true },
    { ingredient: 'vinegar_cider_5', amount: g(100), note: 'The sharp one.' },
  ],
  simmer: { evaporated: g(300), lid: 'open' },
};

describe('a formula made another way', () => {
  const hotter = addVariant(GLAZE, 'hotter', GLAZE);

  test('a new way is chosen and changes nothing yet', () => {
    expect(hotter.variant).toBe('hotter');
    expect(hotter.lines).toBe(GLAZE.lines);
    expect(madeFormula(hotter).lines).toEqual(GLAZE.lines);
  });

  test('what is changed while it is chosen is its own; the formula stays as written', () => {
    const made = madeFormula(hotter);
    const next = keptAs(hotter, setLate(setLine(made, 0, { ingredient: 'water' }), 2, true));
    expect(next.lines).toBe(GLAZE.lines);
    expect(madeFormula(next).lines.map((line) => [line.ingredient, line.late ?? false])).toEqual([
      ['water', false],
      ['honey', false],
      ['vinegar_cider_5', true],
    ]);
    const less = keptAs(next, setWaterOff(madeFormula(next), 200));
    expect(madeFormula(less).simmer?.evaporated?.si).toBe(0.2);
    expect(madeFormula(chooseVariant(less, undefined)).simmer).toEqual(GLAZE.simmer);
    // Put back to what is written, nothing is different any more.
    expect(keptAs(less, setWaterOff(setLines(madeFormula(less), GLAZE.lines), 300)).variants).toEqual(
      hotter.variants,
    );
  });

  test('a lock lies on the line whichever way it is made, and pan and lid are the formula’s', () => {
    const made = madeFormula(hotter);
    const next = keptAs(hotter, {
      ...setLine(made, 1, { locked: false }),
      simmer: { ...made.simmer, lid: 'ajar' },
    });
    expect(next.lines[1]!.locked ?? false).toBe(false);
    expect(next.lines[2]).toEqual(GLAZE.lines[2]);
    expect(next.simmer).toEqual({ evaporated: g(300), lid: 'ajar' });
    expect(next.variants).toEqual(hotter.variants);
  });

  test('two ways of one name have ids of their own; renamed it keeps its id; the last taken out leaves no trace', () => {
    const both = addVariant(hotter, 'hotter', hotter);
    expect(both.variants!.map(({ id }) => id)).toEqual(['hotter', 'hotter-2']);
    expect(renameVariant(hotter, 'hotter', 'milder').variants![0]).toMatchObject({
      id: 'hotter',
      name: 'milder',
    });
    expect(removeVariant(hotter, 'hotter')).toEqual(GLAZE);
  });

  test('a line says which ways change it', () => {
    const without = keptAs(hotter, withoutLine(madeFormula(hotter), 0));
    expect(variantsOfLine(without, 'cola')).toEqual(['hotter']);
    expect(variantsOfLine(without, 'honey')).toEqual([]);
  });

  test('any edit of what is made comes back as it was made, added lines last', () => {
    const edits = fc.array(
      fc.record({
        index: fc.nat(2),
        what: fc.constantFrom('amount', 'swap', 'late', 'out', 'add'),
        massG: fc.integer({ min: 1, max: 500 }),
      }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(edits, (all) => {
        let written = hotter;
        for (const { index, what, massG } of all) {
          const made = madeFormula(written);
          const at = index % Math.max(1, made.lines.length);
          const next =
            made.lines.length === 0 || what === 'add'
              ? setLines(made, [...made.lines, { ingredient: 'cayenne', amount: g(massG) }])
              : what === 'amount'
                ? setLine(made, at, { amount: g(massG) })
                : what === 'swap'
                  ? setLine(made, at, { ingredient: 'molasses' })
                  : what === 'late'
                    ? setLate(made, at, massG > 250)
                    : withoutLine(made, at);
          written = keptAs(written, next);
          const bare = (formula: Formula) =>
            formula.lines.map((line) => `${line.ingredient} ${line.amount.si} ${line.late ?? false}`).sort();
          expect(bare(madeFormula(written))).toEqual(bare(next));
          expect(written.lines.map((line) => line.ingredient)).toEqual(
            GLAZE.lines.map((line) => line.ingredient),
          );
        }
      }),
    );
  });

  test('scaling takes the ways along', () => {
    const more = keptAs(hotter, setLine(madeFormula(hotter), 0, { amount: g(200) }));
    const twice = scaled(more, 2);
    expect(madeFormula(twice).lines[0]!.amount.si).toBeCloseTo(0.4, 9);
    expect(twice.lines[0]!.amount.si).toBeCloseTo(0.8, 9);
  });
});

const FULL: LabelDraft = {
  ...emptyDraft('eu'),
  name: 'Harbour relish',
  parts: { ...emptyDraft('eu').parts, fat: '0.2', carbohydrate: '9', sugars: '8', protein: '1', salt: '1.9' },
};

describe('a label copied down', () => {
  test('bare numbers are in the units of labels; what is left empty stays unknown', () => {
    const read = readDraft(FULL, []);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.label.ingredient).toBe('own_harbour_relish');
    expect(read.label.per).toEqual(g(100));
    expect(read.label.salt!.si).toBeCloseTo(0.0019, 12);
    expect(read.label.fibre).toBeUndefined();
    expect(read.unknown).toEqual([
      'fibreG',
      'energyKcal',
      'ph',
      'acids',
      'density',
      'sugar-split',
      'body',
      'allergens',
    ]);
    // 9 + 0.2 + 1 + 1.9 of 100.
    expect(read.waterG).toBeCloseTo(87.9, 9);
    expect(draftOf(read.label).parts.carbohydrate).toBe('9 g');
    expect(readDraft(draftOf(read.label), [read.label], read.label.ingredient)).toEqual(read);
  });

  test.each<[string, Partial<LabelDraft>, string, string]>([
    ['no name', { name: ' ' }, 'name', 'bench.own.no-name'],
    ['no serving', { per: '' }, 'per', 'sauce.label-no-serving'],
    ['a serving of water', { per: '2 tbsp' }, 'per', 'quantity.unit-of-other-kind'],
    ['nothing by spoon', { perVolume: '0 mL' }, 'perVolume', 'bench.own.volume-nothing'],
    ['energy in words', { kcal: 'plenty' }, 'kcal', 'bench.problem.write'],
    ['a pH of soap and more', { ph: '15' }, 'ph', 'bench.problem.write'],
    ['no fat', { parts: { ...FULL.parts, fat: '' } }, 'fat', 'sauce.label-too-little'],
    ['no salt', { parts: { ...FULL.parts, salt: '' } }, 'salt', 'sauce.label-too-little'],
    ['a minus', { parts: { ...FULL.parts, protein: '-1 g' } }, 'protein', 'quantity.negative'],
    [
      'more sugar than carbohydrate',
      { parts: { ...FULL.parts, sugars: '12' } },
      'sugars',
      'sauce.label-sugars-over',
    ],
    ['more than the whole', { per: '5 g' }, 'per', 'sauce.label-over-whole'],
    ['allergens without a name', { allergensRead: 'some' }, 'allergens', 'bench.own.which-allergens'],
  ])('%s is asked about at its own field', (_, part, field, id) => {
    const read = readDraft({ ...FULL, ...part }, []);
    expect(!read.ok && read.problems[field as 'name']?.id).toBe(id);
  });

  test('a second label of one name is refused, the same one mended', () => {
    const read = readDraft(FULL, []);
    if (!read.ok) throw new Error();
    const again = readDraft(FULL, [read.label]);
    expect(!again.ok && again.problems.name?.id).toBe('bench.own.name-twice');
    expect(readDraft(FULL, [read.label], read.label.ingredient).ok).toBe(true);
  });

  test('it is kept with the cook, and known to be used, by a variant too', () => {
    const label = { ingredient: 'own_x', name: 'X', law: 'eu', per: g(100) } satisfies IngredientLabel;
    const cook = { formulas: [GLAZE] } as unknown as Cook;
    const kept = withLabel(cook, label);
    expect(kept.labels).toEqual([label]);
    expect(withLabel(kept, { ...label, name: 'Y' }).labels).toHaveLength(1);
    expect(withoutLabel(kept, 'own_x')).toEqual(cook);
    expect(usesOf(kept, 'own_x')).toEqual([]);
    const used = addVariant(GLAZE, 'with X', setLine(GLAZE, 0, { ingredient: 'own_x' }));
    expect(usesOf({ ...kept, formulas: [chooseVariant(used, undefined)] }, 'own_x')).toEqual(['Glaze']);
  });
});

test('a formula is for all pieces, or for those that are pressed', () => {
  const cook = { pieces: [{ id: 'a' }, { id: 'b' }, { id: 'c' }] } as unknown as Cook;
  expect(forToggled(cook, GLAZE, 'b')).toEqual(['a', 'c']);
  expect(forToggled(cook, { ...GLAZE, for: ['a', 'c'] }, 'b')).toBeUndefined();
  expect(forToggled(cook, { ...GLAZE, for: ['c'] }, 'a')).toEqual(['a', 'c']);
});
