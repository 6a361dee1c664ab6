/** `which-rack` from the words typed to the sentences printed. */
import { expect, test } from 'vitest';
import { runWhichRack, type WhichRackOptions } from '../src/which-rack/command.ts';
import { examplePath } from './plan/examples.ts';

async function run(options: WhichRackOptions, path?: string) {
  let out = '';
  let err = '';
  const status = await runWhichRack(path, options, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { status, out, err };
}

test('three signs name the rack, give reasons, and say what the next likely would change', async () => {
  const { status, out } = await run({ bones: '12', curve: 'flat', edge: 'squared' });
  expect(status).toBe(0);
  expect(out).toMatch(/^Most likely a St\. Louis rack: 9\d %\./);
  expect(out).toMatch(
    /An edge cut square: \d+ times as common on a St\. Louis rack as on a whole spare rack\./,
  );
  expect(out).toMatch(/A whole spare rack cooks as if \d+ mm thick/);
  expect(out).not.toMatch(/undefined|NaN|Infinity|\[object/);
});

test('the label is the file’s cut, and the stages are the file’s', async () => {
  const { status, out } = await run({ curve: 'flat', edge: 'flap' }, examplePath('two-racks'));
  expect(status).toBe(0);
  expect(out).toContain('The label says loin back rack');
  expect(out).not.toContain('On a pit at');
});

test.each<[WhichRackOptions, RegExp]>([
  [{ bones: '22' }, /--bones takes 3 to 16/],
  [{ edge: 'round' }, /--edge takes rounded, squared, flap/],
  [{ mass: '40 kg' }, /--mass takes 0\.2 to 6 kg/],
])('a sign that no rack has is refused: %j', async (options, words) => {
  const { status, out, err } = await run(options);
  expect(status).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(words);
});

test('a piece that is no rack of the file is refused with the pieces it has', async () => {
  const { status, err } = await run({ piece: 'Q' }, examplePath('two-racks'));
  expect(status).toBe(2);
  expect(err).toMatch(/has no piece Q\. Its pieces: A\./);
});
