/**
 * Forecasts made up for the scenarios: no physics, only members whose medians and spreads lie where common practice
 * puts them, with a share that all pieces of a cook have in common. Demo data, never evidence.
 */
import type { CookForecast, PieceForecast, StageForecast } from '@pitwright/engine';
import type { Cook, Piece, Range } from '@pitwright/model';

export interface MadeUp {
  /** Median from meat-on to ready [h]. */
  readonly medianH: number;
  /** Standard deviation of the logarithm. */
  readonly spread: number;
  /** Ready until one word past [h]. */
  readonly pastAfterH?: number;
  readonly neverShare?: number;
}

/** Deterministic uniform numbers in (0, 1): the minimal standard generator of Park and Miller (1988). */
function uniforms(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Sum of twelve uniforms less six: near enough to a normal draw. */
const normal = (next: () => number): number => {
  let sum = -6;
  for (let k = 0; k < 12; k++) sum += next();
  return sum;
};

const DEFAULTS: Readonly<Record<string, MadeUp>> = {
  'loin-back-ribs': { medianH: 4.1, spread: 0.08, pastAfterH: 1.1 },
  'st-louis-ribs': { medianH: 4.8, spread: 0.08, pastAfterH: 1.1 },
  spareribs: { medianH: 5.2, spread: 0.08, pastAfterH: 1.1 },
  'pork-shoulder': { medianH: 11.5, spread: 0.1, pastAfterH: 4 },
  'brisket-whole': { medianH: 12.5, spread: 0.1, pastAfterH: 3 },
  'beef-short-ribs': { medianH: 8, spread: 0.1, pastAfterH: 2 },
  'chicken-leg': { medianH: 1.15, spread: 0.1, pastAfterH: 0.8 },
};

export function syntheticForecast(
  cook: Cook,
  told: Readonly<Record<string, MadeUp>> = {},
  members = 200,
  seed = 7,
): CookForecast {
  const next = uniforms(seed);
  const common = Array.from({ length: members }, () => normal(next));
  const pieces = cook.pieces.map((piece) => {
    const madeUp = told[piece.id] ?? told[piece.cut] ?? DEFAULTS[piece.cut] ?? { medianH: 3, spread: 0.1 };
    const readyS = new Float64Array(members);
    const pastBiteS = new Float64Array(members);
    for (let m = 0; m < members; m++) {
      const draw = 0.6 * common[m]! + 0.8 * normal(next);
      const ready = 3600 * madeUp.medianH * Math.exp(madeUp.spread * draw);
      readyS[m] = next() < (madeUp.neverShare ?? 0) ? Infinity : ready;
      pastBiteS[m] = readyS[m]! + 3600 * (madeUp.pastAfterH ?? 1);
    }
    return pieceForecast(piece, readyS, pastBiteS);
  });
  return { seed, members, pieces, notUsed: [] };
}

function pieceForecast(piece: Piece, readyS: Float64Array, pastBiteS: Float64Array): PieceForecast {
  const ready = range(readyS);
  const heat = piece.stages.filter((stage) => stage.kind !== 'rest' && stage.kind !== 'hold');
  const clocked = heat.reduce(
    (sum, stage) => sum + (stage.until.by === 'clock' ? stage.until.after.si : 0),
    0,
  );
  const open = heat.filter((stage) => stage.until.by !== 'clock').length;
  let at: Range = { p10: 0, p50: 0, p90: 0, neverShare: 0 };
  const stages = piece.stages.map((stage): StageForecast => {
    const startS = at;
    const isHeat = stage.kind !== 'rest' && stage.kind !== 'hold';
    const lasts = (p: number): number =>
      stage.until.by === 'clock' ? stage.until.after.si : isHeat ? Math.max(600, (p - clocked) / open) : 3600;
    at = {
      p10: at.p10 + lasts(ready.p10),
      p50: at.p50 + lasts(ready.p50),
      p90: at.p90 + lasts(ready.p90),
      neverShare: 0,
    };
    const coreC = { p10: 70, p50: 75, p90: 80, neverShare: 0 };
    return { kind: stage.kind, startS, endS: at, coreC, surfaceC: coreC };
  });
  return {
    pieceId: piece.id,
    members: readyS.length,
    readyS,
    pastBiteS,
    ready,
    stages,
    biteChances: { [piece.bite]: 1 },
    lossKg: { p10: 0.2, p50: 0.25, p90: 0.3, neverShare: 0 },
    columns: columnsOf(piece, readyS, pastBiteS),
    notices: [],
  };
}

/** Columns that nothing here reads, of the right lengths. */
function columnsOf(piece: Piece, readyS: Float64Array, pastBiteS: Float64Array): PieceForecast['columns'] {
  const members = readyS.length;
  const perStage = (): Float64Array => new Float64Array(members * piece.count * piece.stages.length);
  return {
    pieceId: piece.id,
    members,
    items: piece.count,
    stages: piece.stages.length,
    readyS,
    pastBiteS,
    wordS: new Float64Array(members * piece.count * 5),
    stageEndS: perStage(),
    stageCoreC: perStage(),
    stageSurfaceC: perStage(),
    stageLossKg: perStage(),
    stageBarkM: perStage(),
    afterHeat: new Float64Array(members * piece.count * 24),
    stallC: new Float64Array(members * piece.count),
    from65To75S: new Float64Array(members * piece.count),
  };
}

function range(values: Float64Array): Range {
  const sorted = Float64Array.from(values).sort();
  const at = (q: number): number => sorted[Math.round(q * (sorted.length - 1))]!;
  const never = sorted.filter((value) => !(value < Infinity)).length;
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9), neverShare: never / sorted.length };
}
