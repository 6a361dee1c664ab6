/**
 * How fast the middle climbs after the pit was raised: `npx tsx validation/raises.ts` prints the table of
 * docs/models/meat.md. Every measured cook with a raise of 10 K or more and a reading near it; each try is brought to
 * the told reading at the lower pit, then to the last told one at the raised pit.
 */
import { CookDraws, PieceDraws } from '../packages/engine/src/forecast/ensemble/draws.ts';
import { memberOf } from '../packages/engine/src/forecast/ensemble/member.ts';
import { quantile } from '../packages/engine/src/forecast/ensemble/range.ts';
import { softeningRate } from '../packages/engine/src/forecast/ensemble/run.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../packages/engine/src/meat/run.ts';
import type { StagePlan } from '../packages/engine/src/meat/stagePlan.ts';
import { type MeasuredCook, measuredCooks } from './measured/cooks.ts';
import { waysOf } from './measured/resolved.ts';

const MEMBERS = 200;
const SEED = 20270912;
const LEAST_RAISE_K = 10;
/** A reading tells where the middle was at the raise from so long before it to so long after it [h]. */
const NEAR_H = [1.5, 0.3] as const;
const runner = new PieceRunner(ENSEMBLE_SETTINGS, softeningRate);

interface Raise {
  readonly fromC: number;
  readonly toC: number;
  readonly begin: MeasuredCook['cores'][number];
  readonly end: MeasuredCook['cores'][number];
}

function raiseOf({ reading, cores }: MeasuredCook): Raise | undefined {
  const { pit, isRead } = reading;
  const k = pit.findLastIndex(([h, c], i) => i > 0 && h > 2 && c - pit[i - 1]![1] >= LEAST_RAISE_K);
  if (k < 0 || isRead) return undefined;
  const atH = pit[k]![0];
  const begin = cores.findLast(({ hours }) => hours <= atH + NEAR_H[1]);
  const end = cores.at(-1)!;
  if (!begin || begin.hours < atH - NEAR_H[0] || !(end.hours > atH + NEAR_H[1])) return undefined;
  return { fromC: pit[k - 1]![1], toC: pit[k]![1], begin, end };
}

/** Climb after the raise in every try that gets to it [K/h]. */
function climbs(cook: MeasuredCook, { fromC, toC, begin, end }: Raise): Float64Array {
  const ways = waysOf(cook, end.hours, end.coreC + 4);
  const cookDraws = new CookDraws(SEED);
  const pieceDraws = new PieceDraws(SEED, cook.id, 1);
  const rates: number[] = [];
  for (let m = 0; m < MEMBERS; m++) {
    const { piece, pit } = ways[m % ways.length]!;
    const member = memberOf(piece, pit, cookDraws.of(m), pieceDraws, m, 0);
    const first = member.stages[0]!;
    const { curve, ...air } = first.air;
    const offK = (curve ? curve.temperaturesC[0]! : air.gasC) - cook.reading.pit[0]![1];
    const stage = (pitC: number, temperatureC: number): StagePlan => ({
      ...first,
      air: { ...air, gasC: pitC + offK },
      trigger: { by: 'core', temperatureC },
    });
    const { endS } = runner.run(member.meat, [stage(fromC, begin.coreC), stage(toC, end.coreC)], {
      stretch: member.stretch,
      wordDoses: [Infinity, Infinity, Infinity, Infinity],
    });
    if (endS[1]! < Infinity) rates.push((3600 * (end.coreC - begin.coreC)) / (endS[1]! - endS[0]!));
  }
  return Float64Array.from(rates).sort();
}

for (const cook of measuredCooks()) {
  const raise = raiseOf(cook);
  if (!raise) continue;
  const { begin, end } = raise;
  const told = (end.coreC - begin.coreC) / (end.hours - begin.hours);
  const rates = climbs(cook, raise);
  const [p10, p50, p90] = [0.1, 0.5, 0.9].map((share) => quantile(rates, share)) as [number, number, number];
  const { cut, pitType } = cook.reading;
  console.log(
    `| ${cook.id} ${cut}${cook.wrap ? ', wrapped' : ''} | ${pitType} | ${raise.fromC} → ${raise.toC} | ${begin.coreC} → ${end.coreC} | ${told.toFixed(1)} | ${p50.toFixed(1)} [${p10.toFixed(1)}–${p90.toFixed(1)}] | ${(p50 / told).toFixed(2)} |`,
  );
}
