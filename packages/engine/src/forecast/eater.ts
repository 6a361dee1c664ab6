/** What the eater gets, read from the members' columns: off the heat, or at any later moment. */
import type { Cook, Range, Said } from '@pitwright/model';
import { type ResolvedPiece, resolveCook } from '../day/resolve.ts';
import { colourIndex, rubFactor } from '../meat/colour.ts';
import {
  BARK_WORDS,
  barkWord,
  COLOUR_WORDS,
  colourWord,
  JUICINESS_WORDS,
  juicinessWord,
} from '../meat/eaten.ts';
import { AFTER_HEAT_S, EATEN } from '../meat/outcome.ts';
import { SOFTENING } from '../tender/bite.ts';
import { softenedShare } from '../tender/dose.ts';
import { rangeOf } from './ensemble/range.ts';
import { lastCookingStage } from './ensemble/run.ts';
import type { EaterForecast, FaceForecast, PieceColumns } from './types.ts';

const MOMENTS = AFTER_HEAT_S.length;

/**
 * What the eater gets at one moment, the last stage going on; before the last stage on the heat ends, as at its end, and
 * more than 8 h after it as after 8 h.
 *
 * @param elapsedS from the piece's own meat-on, or one for each member [s]
 * @returns undefined for a piece without a stage on the heat
 * @throws RangeError on columns of a piece that the cook lacks
 */
export function eaterAt(
  cook: Cook,
  columns: PieceColumns,
  elapsedS: number | Float64Array,
): EaterForecast | undefined {
  const piece = resolveCook(cook).pieces.find((one) => one.id === columns.pieceId);
  if (!piece) throw new RangeError(`the cook has no piece ${columns.pieceId}`);
  const stage = lastCookingStage(piece);
  return readEater(piece, columns, (row) => {
    const atS = typeof elapsedS === 'number' ? elapsedS : elapsedS[Math.floor(row / columns.items)]!;
    return atS - columns.stageEndS[row * columns.stages + stage]!;
  });
}

/** As the last stage on the heat ends. */
export const eaterOffHeat = (piece: ResolvedPiece, columns: PieceColumns): EaterForecast | undefined =>
  readEater(piece, columns, () => 0);

function readEater(
  piece: ResolvedPiece,
  columns: PieceColumns,
  waitS: (row: number) => number,
): EaterForecast | undefined {
  if (lastCookingStage(piece) < 0) return undefined;
  const rows = columns.members * columns.items;
  const figure = (place: number): Float64Array =>
    Float64Array.from({ length: rows }, (_, row) => figureAfter(columns, row, waitS(row), place));
  const { massKg } = piece.size;
  const sugar = rubFactor(piece.rubSugarShare);
  const waterLeft = figure(EATEN.waterLeft);
  const { k95PerH } = SOFTENING[piece.cut.tissue];
  const softened = figure(EATEN.doseH).map((h) => softenedShare(k95PerH, h));
  const lossKg = figure(EATEN.lossShare);
  const face = (barkPlace: number, browningPlace: number): FaceForecast => {
    const barkM = figure(barkPlace);
    const colour = figure(browningPlace).map((h) => (Number.isNaN(h) ? h : colourIndex(sugar * h)));
    return {
      bark: chancesOf(BARK_WORDS, barkM, (m) => barkWord(piece.cut, m)),
      barkM: thereRange(barkM),
      colour: chancesOf(COLOUR_WORDS, colour, colourWord),
      colourIndex: thereRange(colour),
    };
  };
  const over = piece.stages.find(({ fire }) => fire && (!fire.isOnOpenFace || fire.turnEveryS < Infinity));
  return {
    ...face(EATEN.barkM, EATEN.browningH),
    ...(over?.fire && {
      overCoals: { side: over.fire.otherSide, ...face(EATEN.otherBarkM, EATEN.otherBrowningH) },
    }),
    juiciness: chancesOf(JUICINESS_WORDS, waterLeft, (share, at) =>
      juicinessWord(piece.cut, share, softened[at]!),
    ),
    waterLeft: thereRange(waterLeft),
    lossKg: thereRange(lossKg),
    yieldShare: thereRange(lossKg.map((kg) => 1 - kg / massKg)),
  };
}

/** Straight between the moments noted. */
function figureAfter(columns: PieceColumns, row: number, waitS: number, place: number): number {
  const at = (moment: number): number => columns.afterHeat[(row * MOMENTS + moment) * EATEN.width + place]!;
  if (!(waitS > 0)) return at(0);
  for (let moment = 1; moment < MOMENTS; moment++) {
    const fromS = AFTER_HEAT_S[moment - 1]!;
    const toS = AFTER_HEAT_S[moment]!;
    if (waitS < toS) {
      const share = (waitS - fromS) / (toS - fromS);
      return at(moment - 1) + share * (at(moment) - at(moment - 1));
    }
  }
  return at(MOMENTS - 1);
}

/** Over the items that get there; none where none does. */
function chancesOf<W extends string>(
  words: readonly W[],
  values: Float64Array,
  wordOf: (value: number, at: number) => W,
): Partial<Record<W, number>> {
  const counts = new Map<W, number>();
  let there = 0;
  for (const [at, value] of values.entries()) {
    if (Number.isNaN(value)) continue;
    there++;
    const word = wordOf(value, at);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return Object.fromEntries(
    words.flatMap((word) => {
      const count = counts.get(word);
      return count === undefined ? [] : [[word, count / there]];
    }),
  ) as Partial<Record<W, number>>;
}

/** Items that never leave the heat have no figure; their share is told. */
function thereRange(values: Float64Array): Range {
  const there = values.filter((value) => !Number.isNaN(value));
  if (there.length === 0) return { p10: Infinity, p50: Infinity, p90: Infinity, neverShare: 1 };
  return { ...rangeOf(there), neverShare: 1 - there.length / values.length };
}

const likeliest = (chances: Readonly<Partial<Record<string, number>>>): { word: string; share: number } => {
  let best = { word: '', share: 0 };
  for (const [word, share] of Object.entries(chances))
    if (share !== undefined && share > best.share) best = { word, share };
  return best;
};

/** It in one statement: the likeliest words with their chances, the figures as ranges. */
export function eaterSaid(eater: EaterForecast, members: number): Said | undefined {
  if (!(eater.barkM.p50 < Infinity)) return undefined;
  const juiciness = likeliest(eater.juiciness);
  return {
    id: 'eater.gets',
    params: {
      ...faceParams(eater),
      juiciness: juiciness.word,
      juicinessShare: juiciness.share,
      yieldLow: eater.yieldShare.p10,
      yieldHigh: eater.yieldShare.p90,
      members,
    },
    source: 'meat.md',
  };
}

/** Grades of colour apart that anybody sees. @source judgement: one word of the scale */
const SEEN_GRADES = 1;

/** The face over the coals, where it comes out darker than the one told: in one statement. */
export function overCoalsSaid(eater: EaterForecast, members: number): Said | undefined {
  const { overCoals } = eater;
  if (!overCoals || !(overCoals.colourIndex.p50 >= eater.colourIndex.p50 + SEEN_GRADES)) return undefined;
  return {
    id: 'eater.over-coals',
    params: { side: overCoals.side, ...faceParams(overCoals), members },
    source: 'fire.md',
  };
}

function faceParams({ bark, barkM, colourIndex: index }: FaceForecast) {
  const { word, share } = likeliest(bark);
  return {
    bark: word,
    barkShare: share,
    barkLowM: barkM.p10,
    barkHighM: barkM.p90,
    colourLow: colourWord(index.p10),
    colourHigh: colourWord(index.p90),
  };
}
