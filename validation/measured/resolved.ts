import {
  type ResolvedPiece,
  type ResolvedPit,
  type ResolvedStage,
  resolvePiece,
  resolvePit,
} from '../../packages/engine/src/day/resolve.ts';
import { stagesIn } from '../../packages/engine/src/forecast/piece/stages.ts';
import { findCut } from '../../packages/engine/src/meat/cuts.ts';
import { FOIL_LOOSE, PAN } from '../../packages/engine/src/meat/parameters.ts';
import type { MeasuredCook } from './cooks.ts';

type WrapKind = 'foil' | 'paper';
/** A wrap whose kind is not told. @source foil 60 %, paper 40 %; common practice, no source */
const WRAP_GUESSES: readonly WrapKind[] = ['foil', 'paper', 'foil', 'paper', 'foil'];

export interface ResolvedCook {
  readonly piece: ResolvedPiece;
  readonly pit: ResolvedPit;
}

/**
 * The cook as the engine steps it, once for every way it may have been wrapped; members take turns.
 *
 * @param lastH followed at least so long, then until the centre has passed `highestC`
 */
export function waysOf(cook: MeasuredCook, lastH: number, highestC: number): readonly ResolvedCook[] {
  const kinds = cook.wrap?.kind === 'unknown' ? WRAP_GUESSES : [cook.wrap?.kind as WrapKind | undefined];
  return kinds.map((kind) => resolved(cook, stagesText(cook, kind, lastH, highestC)));
}

function resolved(cook: MeasuredCook, text: string): ResolvedCook {
  const { reading } = cook;
  const [, firstC] = reading.pit[0]!;
  const pit = resolvePit({
    type: reading.pitType,
    temperatureC: firstC,
    gauge: reading.gauge,
    hasWaterPan: cook.hasWaterPan,
    altitudeM: reading.altitudeM ?? 0,
  });
  const curve = reading.isRead
    ? {
        timesS: reading.pit.map(([h]) => 3600 * h),
        temperaturesC: reading.pit.map(([, c]) => c),
      }
    : undefined;
  const stages = stagesIn(text, pit, curve).map(
    (stage): ResolvedStage =>
      stage.kind === 'foil' && cook.wrap?.how
        ? { ...stage, cover: cook.wrap.how === 'loose' ? FOIL_LOOSE : PAN }
        : stage,
  );
  const piece = resolvePiece({
    id: cook.id,
    items: 1,
    cut: findCut(reading.cut)!,
    ...(cook.massKg !== undefined && { massKg: cook.massKg }),
    ...(reading.hasBone !== undefined && { hasBone: reading.hasBone }),
    ...(cook.startC !== undefined && { startC: cook.startC }),
    placeOffsetK: { mean: 0, sd: 0 },
    bite: 'tender',
    stages,
  });
  return { piece, pit };
}

/** Stages cut at every told change of wrap or of a set pit; the last goes on until `highestC` is passed. */
function stagesText(cook: MeasuredCook, wrap: WrapKind | undefined, lastH: number, highestC: number): string {
  const { reading } = cook;
  if (reading.raised)
    return `bare until ${reading.raised.coreC} °C | bare ${reading.raised.afterH} h | bare until ${highestC} °C pit ${reading.raised.pitC} °C`;
  const changes = reading.isRead ? [] : reading.pit.slice(1);
  const wrapH = cook.wrap && (cook.wrap.hours ?? Infinity);
  const openH = cook.wrap?.openedH ?? Infinity;
  const byCore = cook.wrap && cook.wrap.hours === undefined;
  const cuts = [wrapH, openH, lastH, ...changes.map(([h]) => h)]
    .filter((h): h is number => h !== undefined && h < Infinity && h <= lastH)
    .sort((a, b) => a - b);
  const parts: string[] = byCore ? [`bare until ${cook.wrap!.coreC} °C`] : [];
  let fromH = 0;
  const kindAt = (h: number): string =>
    wrap && (byCore || (wrapH !== undefined && h >= wrapH)) && h < openH ? wrap : 'bare';
  const pitAt = (h: number): string => {
    const change = changes.findLast(([at]) => at <= h);
    return change ? ` pit ${change[1]} °C` : '';
  };
  for (const h of cuts) {
    if (h > fromH) parts.push(`${kindAt(fromH)} ${h - fromH} h${pitAt(fromH)}`);
    fromH = h;
  }
  const kind = kindAt(lastH);
  return [...parts, `${kind} until ${highestC} °C${pitAt(lastH)}`].join(' | ');
}
