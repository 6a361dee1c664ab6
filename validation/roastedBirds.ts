/**
 * Whole birds beside the roasting times of the US government: `npx tsx validation/roastedBirds.ts` prints the table of
 * docs/models/meat.md. Conventional oven, unstuffed, from the fridge, to 74 °C.
 *
 * @source USDA FSIS and FoodSafety.gov, roasting charts: turkey at 325 °F, chicken at 350 °F
 */
import { coverOf, resolvePiece, resolvePit } from '../packages/engine/src/day/resolve.ts';
import { quantile } from '../packages/engine/src/forecast/ensemble/range.ts';
import { pieceFigures } from '../packages/engine/src/forecast/piece/ensemble.ts';
import { findCut } from '../packages/engine/src/meat/cuts.ts';

const POUND_KG = 0.45359237;
const DONE_C = (165 - 32) / 1.8;
/** Cut, pounds from and to, oven [°F], hours from and to. */
const CHART = [
  ['turkey-whole', 8, 12, 325, 2.75, 3],
  ['turkey-whole', 12, 14, 325, 3, 3.75],
  ['turkey-whole', 14, 18, 325, 3.75, 4.25],
  ['turkey-whole', 18, 20, 325, 4.25, 4.5],
  ['turkey-whole', 20, 24, 325, 4.5, 5],
  ['turkey-breast', 4, 6, 325, 1.5, 2.25],
  ['turkey-breast', 6, 8, 325, 2.25, 3.25],
  ['chicken-whole', 3, 4, 350, 1.25, 1.5],
  ['chicken-whole', 5, 7, 350, 2, 2.25],
] as const;
/** An oven without a fan: still air, and the dry air of a kitchen passing through. */
const OVEN = {
  type: 'unknown',
  gauge: 'grate',
  hasWaterPan: false,
  altitudeM: 0,
  humidityRatio: 0.025,
} as const;

for (const [id, fromLb, toLb, ovenF, fromH, toH] of CHART) {
  const pit = resolvePit({ ...OVEN, temperatureC: (ovenF - 32) / 1.8 });
  const cut = findCut(id)!;
  const massKg = 0.5 * (fromLb + toLb) * POUND_KG;
  const piece = resolvePiece({
    id: 'bird',
    items: 1,
    cut,
    massKg,
    startC: 4,
    placeOffsetK: { mean: 0, sd: 0 },
    bite: 'firm',
    stages: [
      {
        kind: 'bare',
        place: 'pit',
        cover: coverOf('bare', false),
        gasC: pit.gasC,
        trigger: { by: 'core', temperatureC: DONE_C },
        pouredKg: 0,
        isGlazed: false,
      },
    ],
  });
  const { elapsedS } = pieceFigures(piece, pit, undefined);
  const hours = elapsedS.map((s) => s / 3600).sort();
  const at = (share: number): string => quantile(hours, share).toFixed(1);
  const miss = quantile(hours, 0.5) / Math.sqrt(fromH * toH);
  console.log(
    `| ${id} ${fromLb}–${toLb} lb | ${Math.round((ovenF - 32) / 1.8)} | ${fromH}–${toH} | ${at(0.5)} [${at(0.1)}–${at(0.9)}] | ${miss.toFixed(2)} |`,
  );
}
