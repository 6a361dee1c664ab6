/**
 * Whole birds beside the roasting times of the US government: `npx tsx validation/roastedBirds.ts` prints the table of
 * docs/models/meat.md. Conventional oven, unstuffed, from the fridge.
 *
 * @source USDA FSIS and FoodSafety.gov, roasting charts: turkey at 325 °F, chicken at 350 °F. The hours are those of the
 *   charts that asked 180 °F in the thigh of a whole bird and 170 °F in a breast; when the advice became 165 °F the hours
 *   stayed. So both ends are printed, and the older one is what the hours were found with.
 */
import { coverOf, resolvePiece, resolvePit } from '../packages/engine/src/day/resolve.ts';
import { quantile } from '../packages/engine/src/forecast/ensemble/range.ts';
import { pieceFigures } from '../packages/engine/src/forecast/piece/ensemble.ts';
import { findCut } from '../packages/engine/src/meat/cuts.ts';

const POUND_KG = 0.45359237;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
/** What is asked today, and what was asked when the hours were printed first [°F]. */
const ASKED_F = 165;
const FOUND_WITH_F = { 'turkey-whole': 180, 'turkey-breast': 170, 'chicken-whole': 180 } as const;
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

type Row = (typeof CHART)[number];

/** Hours to a middle of `doneF`, over the members, shortest first. */
function hoursTo([id, fromLb, toLb, ovenF]: Row, doneF: number): Float64Array {
  const pit = resolvePit({ ...OVEN, temperatureC: celsius(ovenF) });
  const piece = resolvePiece({
    id: 'bird',
    items: 1,
    cut: findCut(id)!,
    massKg: 0.5 * (fromLb + toLb) * POUND_KG,
    startC: 4,
    placeOffsetK: { mean: 0, sd: 0 },
    bite: 'firm',
    stages: [
      {
        kind: 'bare',
        place: 'pit',
        cover: coverOf('bare', false),
        gasC: pit.gasC,
        trigger: { by: 'core', temperatureC: celsius(doneF) },
        pouredKg: 0,
        isGlazed: false,
      },
    ],
  });
  const { elapsedS } = pieceFigures(piece, pit, undefined);
  return elapsedS.map((s) => s / 3600).sort();
}

for (const row of CHART) {
  const [id, fromLb, toLb, ovenF, fromH, toH] = row;
  const cells = [FOUND_WITH_F[id], ASKED_F].map((doneF) => {
    const hours = hoursTo(row, doneF);
    const at = (share: number): string => quantile(hours, share).toFixed(1);
    const ratio = quantile(hours, 0.5) / Math.sqrt(fromH * toH);
    return `${Math.round(celsius(doneF))} | ${at(0.5)} [${at(0.1)}–${at(0.9)}] | ${ratio.toFixed(2)}`;
  });
  console.log(
    `| ${id}, ${fromLb}–${toLb} lb | ${Math.round(celsius(ovenF))} | ${fromH}–${toH} | ${cells.join(' | ')} |`,
  );
}
