/**
 * Which one measurement would narrow the range of a piece most.
 *
 * Each measurement not yet taken is given to the same members (common random numbers): the draw it informs keeps its
 * middle and loses its doubt down to that of the measurement. Everything else is drawn as before, so the difference of
 * two widths is far steadier than either width.
 */
import type { Cook, Said } from '@pitwright/model';
import {
  type Doubtful,
  type ResolvedPiece,
  type ResolvedPit,
  resolveCook,
  START_TOLD_SD_K,
} from '../day/resolve.ts';
import { GRATE_PROBE } from '../meat/pitKinds.ts';
import { RULER_SD_LN } from '../meat/size.ts';
import { rangeOf } from './ensemble/range.ts';
import { ensembleRunner, pieceColumns } from './ensemble/run.ts';
import type { CookForecast } from './types.ts';

export const MEASURES = ['grate-probe', 'ruler', 'scales', 'start-probe'] as const;
export type Measure = (typeof MEASURES)[number];

export interface Narrowing {
  readonly measure: Measure;
  /** 10 to 90 % of the ready time once it is known [s]; ∞ where the late end never comes. */
  readonly widthS: number;
}

export interface PieceSensitivity {
  readonly pieceId: string;
  /** 10 to 90 % of the ready time as things are told [s]. */
  readonly widthS: number;
  /** What could still be measured, the narrowest first. */
  readonly narrowings: readonly Narrowing[];
  /** The best of them, and the next where it is worth it too; that none is; missing where the late end never comes either way. */
  readonly said?: Said;
}

const SENSITIVITY_MEMBERS = 80;

/** Less than this share of the width is inside what so few members can tell. */
const WORTH_SAYING = 0.05;

interface Known {
  readonly piece: ResolvedPiece;
  readonly pit: ResolvedPit;
}

const surer = (doubtful: Doubtful, sd: number): Doubtful => ({
  mean: doubtful.mean,
  sd: Math.min(doubtful.sd, sd),
});

/** The piece and its pit once this is known; undefined where it is known already. */
function onceKnown(
  measure: Measure,
  { piece, pit }: Known,
  told: { readonly mass: boolean; readonly thickness: boolean },
): Known | undefined {
  switch (measure) {
    case 'grate-probe': {
      if (!piece.stages.some((stage) => stage.place === 'pit')) return undefined;
      if (pit.gasSdK <= GRATE_PROBE.sdK && piece.placeOffsetK.sd === 0) return undefined;
      return {
        piece: { ...piece, placeOffsetK: surer(piece.placeOffsetK, 0) },
        pit: { ...pit, gasSdK: Math.min(pit.gasSdK, GRATE_PROBE.sdK) },
      };
    }
    case 'ruler':
      return told.thickness
        ? undefined
        : {
            piece: { ...piece, size: { ...piece.size, sdLn: Math.min(piece.size.sdLn, RULER_SD_LN) } },
            pit,
          };
    case 'scales':
      return told.mass || told.thickness
        ? undefined
        : {
            piece: {
              ...piece,
              size: { ...piece.size, sdLn: Math.min(piece.size.sdLn, piece.cut.massOnlySdLn) },
            },
            pit,
          };
    case 'start-probe':
      return piece.startC.sd <= START_TOLD_SD_K
        ? undefined
        : { piece: { ...piece, startC: surer(piece.startC, START_TOLD_SD_K) }, pit };
  }
}

const seconds = (s: number) => ({ kind: 'time', si: s }) as const;

const isWorthIt = (nowS: number, { widthS: afterS }: Narrowing): boolean =>
  afterS < Infinity && !(nowS < Infinity && afterS > (1 - WORTH_SAYING) * nowS);

function saidOf(nowS: number, narrowings: readonly Narrowing[]): Said | undefined {
  const [best, next] = narrowings.filter((narrowing) => isWorthIt(nowS, narrowing));
  if (!best) return nowS < Infinity ? { id: 'narrow.none', source: 'forecast.md' } : undefined;
  const params = {
    measure: best.measure,
    after: seconds(best.widthS),
    ...(next && { next: next.measure, nextAfter: seconds(next.widthS) }),
  };
  return nowS < Infinity
    ? { id: 'narrow.most', params: { ...params, now: seconds(nowS) }, source: 'forecast.md' }
    : { id: 'narrow.brings-in', params, source: 'forecast.md' };
}

/**
 * For each piece of a forecast, the width of its ready time now and once each measurement were taken.
 *
 * @param forecast of this cook; its first members are taken as they are
 * @throws RangeError on a piece that the cook lacks
 */
export function sensitivityOf(
  cook: Cook,
  { pieces: foreseen, seed, members: all }: CookForecast,
  {
    members = Math.min(SENSITIVITY_MEMBERS, all),
    pieceIds,
  }: { readonly members?: number; readonly pieceIds?: readonly string[] } = {},
): PieceSensitivity[] {
  const { pit, pieces } = resolveCook(cook);
  const runner = ensembleRunner();
  const asked = foreseen.filter(({ pieceId }) => !pieceIds || pieceIds.includes(pieceId));
  return asked.map(({ pieceId, readyS }) => {
    const piece = pieces.find((one) => one.id === pieceId);
    const written = cook.pieces.find((one) => one.id === pieceId);
    if (!piece || !written) throw new RangeError(`the cook has no piece ${pieceId}`);
    const told = { mass: written.mass !== undefined, thickness: written.thickness !== undefined };
    const nowS = widthS(readyS.slice(0, members));
    const narrowings = MEASURES.flatMap((measure): Narrowing[] => {
      const known = onceKnown(measure, { piece, pit }, told);
      if (!known) return [];
      return [
        {
          measure,
          widthS: widthS(pieceColumns(known.piece, known.pit, seed, 0, members, runner).readyS),
        },
      ];
    }).sort((a, b) => (a.widthS < b.widthS ? -1 : a.widthS > b.widthS ? 1 : 0));
    const said = saidOf(nowS, narrowings);
    return { pieceId, widthS: nowS, narrowings, ...(said && { said }) };
  });
}

function widthS(readyS: Float64Array): number {
  const { p10, p90 } = rangeOf(readyS);
  return p90 < Infinity ? p90 - p10 : Infinity;
}
