/**
 * 20,000 damaged recipes: no crash, and nothing guessed silently. A line that raises no doubt must consist of words
 * that stand in the undamaged corpus, apart from its remark, and its figures must hang together.
 */
import { isSettled, type PastedLine, pasteRecipe } from '@pitwright/engine/sauce';
import { expect, test } from 'vitest';
import { corpus } from './corpus.ts';
import { Damager } from './damage.ts';

const RECIPES = 20_000;
const wordsIn = (text: string): string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/\p{L}{3,}/gu) ?? [];
const known = new Set(corpus.flatMap((recipe) => recipe.lines.flatMap((line) => wordsIn(line.text))));
/** Singulars, plurals and other spellings that the corpus happens not to hold. */
for (const word of [...known]) {
  known.add(`${word}s`);
  if (word.endsWith('s')) known.add(word.slice(0, -1));
}
for (const word of ['tbs', 'tbsp', 'oz', 'tsps', 'pint', 'pts', 'can', 'tin', 'one', 'two', 'the', 'tamari'])
  known.add(word);

/** What makes a settled line a silent guess; undefined where it is honest. */
function guess(line: PastedLine): string | undefined {
  if (!isSettled(line) || line.doubts.length > 0) return undefined;
  if (!(Number.isFinite(line.massG) && line.massG! > 0)) return 'mass';
  if (!(line.lowG! <= line.massG! && line.massG! <= line.highG!)) return 'span';
  if (!/\d|[½⅓⅔¼¾⅛]|\b(?:a|an|one|two|three|four|five|six|half|quarter|third)\b/i.test(line.text))
    return 'no number';
  const note = new Set(wordsIn(line.note ?? ''));
  return wordsIn(line.text).find((word) => !known.has(word) && !note.has(word));
}

test('no damaged recipe crashes the reader, and none is guessed at in silence', () => {
  const damager = new Damager(11);
  const guesses: string[] = [];
  let settled = 0;
  let asked = 0;
  for (let i = 0; i < RECIPES; i++) {
    const recipe = corpus[damager.below(corpus.length)]!;
    const from = damager.below(recipe.lines.length);
    let text = recipe.lines
      .slice(from, from + 3)
      .map((line) => line.text)
      .join('\n');
    for (let n = damager.below(4); n >= 0; n--) text = damager.damage(text);
    for (const line of pasteRecipe(text, { system: recipe.system }).lines) {
      const found = guess(line);
      if (found !== undefined) guesses.push(`${line.text} → ${line.ingredient} ${line.massG} (${found})`);
      if (isSettled(line)) settled++;
      else asked++;
    }
  }
  expect(guesses.slice(0, 20)).toEqual([]);
  // Most lines survive three damages or ask; neither side is empty, so the check above had something to see.
  expect(settled).toBeGreaterThan(RECIPES / 4);
  expect(asked).toBeGreaterThan(RECIPES / 4);
});
