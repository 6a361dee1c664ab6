import type { Bite, Cook, FireSide, Range, Said, StageKind } from '@pitwright/model';
import type { BarkWord, ColourWord, JuicinessWord } from '../meat/eaten.ts';

/**
 * Members `membersFrom` to `membersTo − 1` of one cook's forecast: what a worker is asked. Member i is the same whatever
 * the split; only ids, numbers and plain records, so that it can be posted.
 */
export interface ForecastJob {
  readonly jobId: string;
  readonly seed: number;
  readonly membersFrom: number;
  readonly membersTo: number;
  readonly cook: Cook;
  /** Pieces wanted; missing: all. Pieces do not change each other's members. */
  readonly pieceIds?: readonly string[];
}

/** Columns of one piece, typed arrays that can be transferred. Times are seconds from the piece's own meat-on; ∞ = never. */
export interface PieceColumns {
  readonly pieceId: string;
  readonly members: number;
  readonly items: number;
  readonly stages: number;
  /** All items ready; length members. */
  readonly readyS: Float64Array;
  /** First item past its bite; length members. */
  readonly pastBiteS: Float64Array;
  /** When each word of `TIMED_WORDS` begins; [(member·items + item)·5 + word]. */
  readonly wordS: Float64Array;
  /** End of each stage; [(member·items + item)·stages + stage]. */
  readonly stageEndS: Float64Array;
  readonly stageCoreC: Float64Array;
  readonly stageSurfaceC: Float64Array;
  /** Water and fat lost by the end of each stage, of one item [kg]; same shape. */
  readonly stageLossKg: Float64Array;
  /** Bark at the end of each stage [m]; same shape. */
  readonly stageBarkM: Float64Array;
  /**
   * What the eater would get 0, ½, 1, 2, 4 and 8 h after the last stage on the heat; NaN where it never ends. Five
   * figures each: water and fat lost of one item [kg], bark [m], browning without the rub [equivalent h at 110 °C],
   * water left in the middle [1], softening dose there [equivalent h at 95 °C].
   * [((member·items + item)·6 + moment)·5 + figure]
   */
  readonly afterHeat: Float64Array;
  /** Centre temperature where its rise is slowest; NaN where it never lay between 55 and 85 °C. [member·items + item] */
  readonly stallC: Float64Array;
  /** From 65 to 75 °C at the centre [s]; ∞ where it never gets there. [member·items + item] */
  readonly from65To75S: Float64Array;
}

export interface ForecastPart {
  readonly jobId: string;
  readonly membersFrom: number;
  readonly membersTo: number;
  readonly columns: readonly PieceColumns[];
}

/** Words that have a begin in `PieceColumns.wordS`, in its order. */
export const TIMED_WORDS = [
  'firm',
  'clean-bite',
  'tender',
  'falls-off',
  'pulls-apart',
] as const satisfies readonly Bite[];

/** What one piece will do, over the members of the ensemble. Times are seconds from the piece's own meat-on. */
export interface PieceForecast {
  readonly pieceId: string;
  readonly members: number;
  /** Bite and all stages before the rest reached by every item of the piece: ready to rest. One column per member; ∞ = never. */
  readonly readyS: Float64Array;
  /** First item more than one word past its bite, with its stages as told and the last one going on; ∞ = never. */
  readonly pastBiteS: Float64Array;
  readonly ready: Range;
  readonly stages: readonly StageForecast[];
  /** Chance of each bite word when the last stage before the rest ends, sums to 1; at another time: `biteChancesAt(columns, elapsedS)`. */
  readonly biteChances: Readonly<Partial<Record<Bite, number>>>;
  /** Of one item, by the end of the last stage before the rest. */
  readonly lossKg: Range;
  readonly stallCoreC?: Range;
  /** At the end of the last stage before the rest; at the table: `eaterAt`. Missing for a piece that has none. */
  readonly eater?: EaterForecast;
  /** Everything above is a reading of these. */
  readonly columns: PieceColumns;
  /** What a cook should know before: a stall to be expected, a share that never gets there and what would end it. */
  readonly notices: readonly Said[];
}

/** Crust of one face. */
export interface FaceForecast {
  readonly bark: Readonly<Partial<Record<BarkWord, number>>>;
  /** Thickness of the dried layer [m]. */
  readonly barkM: Range;
  readonly colour: Readonly<Partial<Record<ColourWord, number>>>;
  /** 1 raw pink-grey to 6 black-brown. */
  readonly colourIndex: Range;
}

/** What the eater gets, in words as chances (each sums to 1 over the items that get there) and the figures behind them. */
export interface EaterForecast extends FaceForecast {
  /** The face that is not the open one, where it lay over coals. */
  readonly overCoals?: FaceForecast & { readonly side: FireSide | 'other' };
  readonly juiciness: Readonly<Partial<Record<JuicinessWord, number>>>;
  /** Water at the centre between raw (1) and fully cooked (0). */
  readonly waterLeft: Range;
  /** Of one item, bone counted in the raw mass [kg]. */
  readonly lossKg: Range;
  /** What is left of the raw mass [1]. */
  readonly yieldShare: Range;
}

export interface StageForecast {
  readonly kind: StageKind;
  readonly startS: Range;
  /** Missing for a stage that lasts until the table asks. */
  readonly endS?: Range;
  /** At the end of the stage; of one that lasts until the table: at its start. */
  readonly coreC: Range;
  readonly surfaceC: Range;
}

export interface CookForecast {
  readonly seed: number;
  readonly members: number;
  readonly pieces: readonly PieceForecast[];
  /** Answers that were asked and are not used yet. */
  readonly notUsed: readonly Said[];
}
