/** The corpus of recipes, read from corpus.txt. */
import { readFileSync } from 'node:fs';
import type { MeasureSystem } from '@pitwright/engine/sauce';

export interface ExpectedLine {
  readonly text: string;
  /** Missing: no ingredient line. */
  readonly expected?: { readonly id: string; readonly massG?: number; readonly doubts: readonly string[] };
}
export interface CorpusRecipe {
  readonly name: string;
  readonly system: MeasureSystem;
  readonly lines: readonly ExpectedLine[];
}

function readCorpus(text: string): CorpusRecipe[] {
  const recipes: (CorpusRecipe & { lines: ExpectedLine[] })[] = [];
  for (const row of text.split('\n')) {
    if (row === '' || row.startsWith('#')) continue;
    const head = /^== (.+) \((us|uk|au|metric)\)$/.exec(row);
    if (head) {
      recipes.push({ name: head[1]!, system: head[2] as MeasureSystem, lines: [] });
      continue;
    }
    const [line, wanted] = row.split(' => ') as [string, string];
    const [main, doubts = ''] = wanted.split(';');
    const [id, mass] = main!.split(' ');
    recipes.at(-1)!.lines.push({
      text: line,
      ...(wanted !== '-' && {
        expected: {
          id: id!,
          ...(mass !== '-' && { massG: Number(mass) }),
          doubts: doubts.split(' ').filter((word) => word !== ''),
        },
      }),
    });
  }
  return recipes;
}

export const corpus: readonly CorpusRecipe[] = readCorpus(
  readFileSync(new URL('corpus.txt', import.meta.url), 'utf8'),
);
