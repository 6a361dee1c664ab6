/** Why a piece is where it is: what holds it back now, and when that ends. Read from the member shown. */
import type { Instant, Quantity, Said, StageKind } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';
import { isCooking } from '../meat/stagePlan.ts';
import { entryAt, heatInW } from './heatColumns.ts';
import type { PieceInside } from './inside.ts';

/** Heat and temperatures of the shown member at one moment. */
interface Moment {
  readonly watts: number;
  /** Of it [W]. */
  readonly driesW: number;
  readonly driesShare: number;
  /** Of convection and radiation together, where they are parted. */
  readonly airShare?: number;
  readonly coreC: number;
  readonly surfaceC: number;
  /** The hotter of both faces. */
  readonly hotSideC: number;
  readonly riseKPerH: number;
}

/** Slower than this above 80 °C the middle is held by evaporation through the bark, with no end of its own. */
const HELD_RISE_KPERH = 1;
const HELD_FROM_C = 78;
/** Below it most heat still goes into warming the outer part. */
const COLD_TO_C = 55;
/** Foil that lets less of the heat than this into vapour is tight. */
const TIGHT_SHARE = 0.25;
/** Coals that give less than this of the heat are not what decides. */
const COALS_TOLD_SHARE = 0.2;
/** What is at hand to end a stall, by what the piece lies in. */
const ENDED_BY: Readonly<Partial<Record<StageKind, string>>> = { foil: 'tight-foil', paper: 'foil-over' };

function momentAt(inside: PieceInside, elapsedS: number): Moment {
  const { timesS, temperaturesC, heat } = inside;
  const i = entryAt(timesS, elapsedS);
  const from = Math.max(0, i - 3);
  const to = Math.min(timesS.length - 1, from + 6);
  const coreC = (row: number): number => temperaturesC[row]!.at(-1)!;
  const watts = heatInW(heat, i);
  const driesW = heat.evaporation[i]!;
  const partedW = heat.convection[i]! + heat.radiation[i]!;
  return {
    watts,
    driesW,
    driesShare: watts > 0 ? clamp(driesW / watts) : 0,
    ...(partedW > 0 && { airShare: clamp(heat.convection[i]! / partedW) }),
    coreC: coreC(i),
    surfaceC: temperaturesC[i]![0]!,
    hotSideC: Math.max(temperaturesC[i]![0]!, (inside.otherSide ?? inside).temperaturesC[i]![0]!),
    riseKPerH: to > from ? (3600 * (coreC(to) - coreC(from))) / (timesS[to]! - timesS[from]!) : 0,
  };
}

const clamp = (x: number): number => Math.min(1, Math.max(0, x));
const celsius = (c: number) => ({ kind: 'temperature', si: c + 273.15 }) as const;
const seconds = (s: number) => ({ kind: 'time', si: s }) as const;
const share = (x: number) => ({ kind: 'fraction', si: x }) as const;
const perHour = (k: number) => ({ kind: 'difference', si: k }) as const;

/**
 * What holds the piece back at a moment and when that ends, in one statement.
 *
 * @param elapsedS from the piece's meat-on
 * @param onAt its meat-on, so that an end is told by the hour; missing: as a time since meat-on
 */
export function explainPiece(inside: PieceInside, elapsedS: number, onAt?: Instant): Said {
  const source = 'meat.md';
  const whenAt = (s: number): Instant | Quantity =>
    onAt === undefined
      ? seconds(s)
      : Temporal.Instant.from(onAt)
          .add({ seconds: Math.round(s) })
          .toString();
  const now = momentAt(inside, elapsedS);
  const stageAt = inside.stages.findIndex(({ endS }) => elapsedS < endS);
  const stage = inside.stages[stageAt < 0 ? inside.stages.length - 1 : stageAt]!;
  if (!isCooking(stage.kind))
    return {
      id: now.surfaceC < now.coreC ? 'explain.rests' : 'explain.evens-out',
      params: { core: celsius(now.coreC), surface: celsius(now.surfaceC), watts: Math.round(now.watts) },
      source,
    };
  const heat = {
    watts: Math.round(now.watts),
    driesW: Math.round(now.driesW),
    dries: share(now.driesShare),
    ...(now.airShare !== undefined && { byAir: share(now.airShare) }),
    core: celsius(now.coreC),
  };
  const stageEndS = stage.endS;
  const following = inside.stages[inside.stages.indexOf(stage) + 1];
  const next = following?.fire && !stage.fire ? 'coals' : following?.kind;
  const change = {
    ...(stageEndS < Infinity && { until: whenAt(stageEndS) }),
    ...(stageEndS < Infinity && next && { next }),
  };
  const { fire } = stage;
  if (fire && stage.kind !== 'foil' && fire.watts >= COALS_TOLD_SHARE * now.watts)
    return {
      id: 'explain.coals',
      params: {
        coals: Math.round(fire.watts),
        turned: fire.isTurned ? 1 : 0,
        side: celsius(now.hotSideC),
        ...heat,
        rise: perHour(now.riseKPerH),
        ...change,
      },
      source: 'fire.md',
    };
  const { stall } = inside;
  if (now.coreC < COLD_TO_C) {
    const isStallNext = stall !== undefined && elapsedS < stall.fromS && !(stageEndS < stall.fromS);
    return {
      id: 'explain.warms',
      params: {
        ...heat,
        surface: celsius(now.surfaceC),
        ...(isStallNext ? { until: whenAt(stall.fromS), next: 'stall' } : change),
      },
      source,
    };
  }
  if (stage.kind === 'foil' && now.driesShare < TIGHT_SHARE)
    return { id: 'explain.wrapped', params: { ...heat, rise: perHour(now.riseKPerH), ...change }, source };
  const ends = ENDED_BY[stage.kind] ?? 'foil';
  if (stall && elapsedS >= stall.fromS && elapsedS < stall.toS)
    return { id: 'explain.stall', params: { ...heat, ends, until: whenAt(stall.toS) }, source };
  if (now.coreC >= HELD_FROM_C && now.riseKPerH < HELD_RISE_KPERH && now.driesShare > 0.5)
    return { id: 'explain.held', params: { ...heat, ends, ...change }, source };
  return { id: 'explain.dries', params: { ...heat, rise: perHour(now.riseKPerH), ...change }, source };
}

/** After so long the lid is shut and the pit itself again [s]. */
const SETTLED_S = 1800;

/**
 * Moments worth a word before the table: soon after meat-on, the middle of each stage and of the stall [s from meat-on].
 *
 * @param tableS the serving hour, from the piece's meat-on
 */
export function tellingMoments(inside: PieceInside, tableS: number): number[] {
  const lastS = Math.min(tableS, inside.timesS[inside.timesS.length - 1]!);
  const { stall } = inside;
  const stallS = stall && stall.fromS < lastS ? (stall.fromS + Math.min(stall.toS, lastS)) / 2 : Infinity;
  let startS = 0;
  const middles = inside.stages.map(({ endS }) => {
    const fromS = startS;
    const toS = Math.min(endS, lastS);
    startS = toS;
    // The stall is told once, in its own middle.
    const middleS = (fromS + toS) / 2;
    const isTold = stall && middleS >= stall.fromS && middleS < stall.toS && stallS >= fromS && stallS <= toS;
    return isTold ? stallS : middleS;
  });
  const moments = [
    Math.min(SETTLED_S, middles[0] ?? SETTLED_S),
    ...middles,
    ...(stallS < Infinity ? [stallS] : []),
  ];
  return [...new Set(moments)].sort((a, b) => a - b);
}
