/**
 * Recipes as written, against what each line must become. See corpus.txt for how its figures were found.
 * Kind of evidence: exact (arithmetic of measures and densities) and our own reading of ordinary words.
 */
import { isSettled, type PastedLine, pasteRecipe } from '@pitwright/engine/sauce';
import { describe, expect, test } from 'vitest';
import { corpus } from './corpus.ts';

const said = (line: PastedLine): string[] =>
  line.doubts.map((doubt) => `${doubt.asks ? '?' : '.'}${doubt.said.id.replace('sauce.paste-', '')}`);

test('there are at least 60 recipes in US, UK and metric wording', () => {
  expect(corpus.length).toBeGreaterThanOrEqual(60);
  for (const system of ['us', 'uk', 'metric']) expect(corpus.some((r) => r.system === system)).toBe(true);
});

describe.each(corpus.map((recipe) => [`${recipe.name} (${recipe.system})`, recipe] as const))(
  '%s',
  (_, recipe) => {
    const pasted = pasteRecipe(recipe.lines.map((line) => line.text).join('\n'), { system: recipe.system });
    test.each(recipe.lines.map((line, i) => [line.text, i + 1, line.expected] as const))(
      '%s',
      (_text, number, expected) => {
        const line = pasted.lines.find((l) => l.number === number);
        if (expected === undefined) {
          expect(line).toBeUndefined();
          return;
        }
        expect(line?.ingredient ?? 'unknown').toBe(expected.id);
        if (expected.doubts.includes('?any'))
          expect(said(line!).some((doubt) => doubt.startsWith('?'))).toBe(true);
        else expect(said(line!).sort()).toEqual([...expected.doubts].sort());
        if (expected.massG !== undefined) {
          expect(line!.massG).toBeDefined();
          expect(Math.abs(line!.massG! - expected.massG)).toBeLessThanOrEqual(
            1e-4 * Math.max(1, expected.massG),
          );
        } else expect(isSettled(line!)).toBe(false);
      },
    );
  },
);
