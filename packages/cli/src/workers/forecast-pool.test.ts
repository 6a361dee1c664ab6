// Law: a seed gives the same bits on this thread, on one worker and on two.
import { readFileSync } from 'node:fs';
import { type CookForecast, forecastCook } from '@pitwright/engine';
import { readCookFile } from '@pitwright/model';
import { afterAll, expect, test } from 'vitest';
import { ForecastPool } from './forecast-pool.ts';

const path = new URL('../../../../examples/two-racks.pitwright.yaml', import.meta.url);
const reading = readCookFile(readFileSync(path, 'utf8'));
if (!reading.ok || reading.document.kind !== 'cook') throw new Error('the example must be a cook');
const { cook } = reading.document;
const asked = { members: 60, seed: 7 };

const one = new ForecastPool(1);
const two = new ForecastPool(2);
afterAll(async () => {
  await Promise.all([one.close(), two.close()]);
});

const bits = (forecast: CookForecast): string =>
  JSON.stringify(
    forecast.pieces.map((piece) =>
      Object.values(piece.columns)
        .filter((column) => column instanceof Float64Array)
        .map((column) => Buffer.from(column.buffer, column.byteOffset, column.byteLength).toString('hex')),
    ),
  );

test('one worker, two workers and this thread agree to the last bit', async () => {
  const here = bits(forecastCook(cook, asked));
  expect(bits(await one.forecast(cook, asked))).toBe(here);
  expect(bits(await two.forecast(cook, asked))).toBe(here);
});

test('progress ends at one', async () => {
  const shares: number[] = [];
  await one.forecast(cook, { ...asked, onProgress: (share) => shares.push(share) });
  expect(shares.at(-1)).toBe(1);
  expect(shares).toEqual([...shares].sort());
});

test('a cook that cannot be forecast is refused, and the pool goes on', async () => {
  const broken = { ...cook, pieces: cook.pieces.map((piece) => ({ ...piece, cut: 'no-such-cut' })) };
  await expect(one.forecast(broken, asked)).rejects.toThrow('no-such-cut');
  expect((await one.forecast(cook, asked)).members).toBe(60);
});
