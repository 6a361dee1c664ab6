/**
 * Ten thousand random damages of the small example: whatever is left is either refused with a place and a sentence,
 * or is a model whose print reads as the same model. Nothing throws, and nothing is half understood.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { printCookFile } from './print.ts';
import { readCookFile } from './read.ts';

const SMALL = readFileSync(new URL('../../../../examples/two-racks.pitwright.yaml', import.meta.url), 'utf8');
const PIECES_OF_YAML = [
  ':',
  ' ',
  '\n',
  '-',
  '"',
  "'",
  '[',
  ']',
  '{',
  '}',
  '#',
  '&a',
  '*a',
  '!',
  '|',
  '>',
  ',',
  '\t',
  '\r',
  '?',
  '%',
  '@',
  '~',
  '---\n',
  '...\n',
  '<<: ',
  '\u0000',
  '\ufeff',
  '\ud800',
  '½',
  '±',
  '°',
  '1',
  '0',
  '.',
  '/',
  'e',
  'é',
  'null',
  'yes',
  '  ',
];

/** Linear congruential generator of Numerical Recipes: small, and the same everywhere. */
function chance(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

function damaged(text: string, below: (limit: number) => number): string {
  const at = below(text.length);
  const lines = text.split('\n');
  const line = below(lines.length);
  switch (below(9)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1);
    case 1:
      return text.slice(0, at) + PIECES_OF_YAML[below(PIECES_OF_YAML.length)] + text.slice(at);
    case 2:
      return text.slice(0, at) + String.fromCharCode(32 + below(95)) + text.slice(at + 1);
    case 3:
      return text.slice(0, at);
    case 4:
      return text.slice(0, at) + text.slice(at + below(40));
    case 5:
      return [...lines.slice(0, line), ...lines.slice(line + 1)].join('\n');
    case 6:
      return [...lines.slice(0, line), lines[line], ...lines.slice(line)].join('\n');
    case 7:
      return [...lines.slice(0, line), ` ${lines[line]}`, ...lines.slice(line + 1)].join('\n');
    default: {
      const other = below(lines.length);
      const swapped = [...lines];
      [swapped[line], swapped[other]] = [lines[other]!, lines[line]!];
      return swapped.join('\n');
    }
  }
}

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])('1,000 damages, seed %d', (seed) => {
  const below = chance(seed);
  let accepted = 0;
  for (let count = 0; count < 1000; count++) {
    let text = SMALL;
    for (let times = 1 + below(3); times > 0; times--) text = damaged(text, below);
    const read = readCookFile(text);
    if (!read.ok) {
      expect(read.problems.length, text).toBeGreaterThan(0);
      const lineCount = text.split('\n').length;
      for (const { line, column } of read.problems) {
        if (!(line >= 1 && line <= lineCount && column >= 1))
          expect.fail(`no such place ${line}:${column}\n${text}`);
      }
      continue;
    }
    accepted++;
    const print = printCookFile(read.document);
    const again = readCookFile(print);
    const isSame = again.ok && JSON.stringify(again.document) === JSON.stringify(read.document);
    if (!isSame || printCookFile(again.document) !== print) expect.fail(`half understood:\n${text}`);
  }
  // Both ways out are met, or the damages test nothing.
  expect(accepted).toBeGreaterThan(25);
  expect(accepted).toBeLessThan(750);
});
