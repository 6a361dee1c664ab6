/**
 * A whole brisket is two muscles, a thin lean flat and a thick fat point; a bird is lean breast and dark thigh. Each is
 * foreseen as a piece of its own through the same stages, with the same chances drawn, so that they can be compared try
 * by try.
 *
 * The muscles do not exchange heat where they meet; docs/models/meat.md, "Zones".
 */
import type { Bite, Cook, CutId, Range, Said } from '@pitwright/model';
import { type ResolvedPiece, type ResolvedPit, resolveCook } from '../day/resolve.ts';
import { findCut } from '../meat/cuts.ts';
import type { PieceRunner } from '../meat/run.ts';
import { pieceSize } from '../meat/size.ts';
import type { StagePlan } from '../meat/stagePlan.ts';
import { rawDensityKgM3 } from '../meat/tables.ts';
import { knownWord } from '../tender/bite.ts';
import { CookDraws, PieceDraws } from './ensemble/draws.ts';
import { memberOf } from './ensemble/member.ts';
import { rangeOf } from './ensemble/range.ts';
import { ensembleRunner, lastCookingStage, pieceColumns } from './ensemble/run.ts';
import { type CookForecast, type PieceColumns, TIMED_WORDS } from './types.ts';

const ZONES = ['flat', 'point', 'breast', 'thigh'] as const;
export type Zone = (typeof ZONES)[number];

export interface ZoneForecast {
  readonly zone: Zone;
  readonly massKg: number;
  /** When its stages on the heat end with the probe, the eye and the hand on this muscle [s]. */
  readonly offHeatS: Range;
  /** That, and the bite asked reached in this muscle [s]. */
  readonly readyS: Range;
  /** At its middle when the whole piece comes off as planned [°C]. */
  readonly coreC: Range;
  /** Chance that it has come to the bite asked, or softer, when the whole piece comes off. */
  readonly biteChance: number;
}

export interface PieceZones {
  readonly pieceId: string;
  /** The one that is ready last and holds the whole; missing where neither comes before the other by much. */
  readonly decides?: Zone;
  readonly zones: readonly ZoneForecast[];
  readonly said: readonly Said[];
}

const ZONE_MEMBERS = 80;
/** Nearer to each other than this they are ready together [s]. */
const TOGETHER_S = 900;

interface ZoneLaw {
  readonly zone: Zone;
  /** Of the raw whole [1]. */
  readonly massShare: number;
  /** Whose composition it has. */
  readonly cutId: CutId;
  /**
   * `own`: thickness and shape of its cut at its mass; a number: those of the whole, whose thickest place it is or lies
   * beside, times this.
   */
  readonly size: 'own' | number;
}

/**
 * The point lies on the flat and has no free edge there: it keeps the size and shape of the whole.
 * @source mass shares: common practice, no source; thigh to breast 18–25 to 20–28 mm of half thickness, from memory
 */
const BRISKET: readonly [ZoneLaw, ZoneLaw] = [
  { zone: 'flat', massShare: 0.55, cutId: 'brisket-flat', size: 'own' },
  { zone: 'point', massShare: 0.45, cutId: 'brisket-point', size: 1 },
];
const THIGH_TO_BREAST = 0.9;
const BIRD: readonly [ZoneLaw, ZoneLaw] = [
  { zone: 'breast', massShare: 0.35, cutId: 'chicken-breast', size: 1 },
  { zone: 'thigh', massShare: 0.33, cutId: 'chicken-thigh', size: THIGH_TO_BREAST },
];
const LAWS: Readonly<Partial<Record<string, readonly [ZoneLaw, ZoneLaw]>>> = {
  'brisket-whole': BRISKET,
  'chicken-whole': BIRD,
  'chicken-half': BIRD,
  'turkey-whole': BIRD,
  'turkey-half': BIRD,
};

/** Zones of a cut, outer or leaner first; none for a piece of one muscle. */
export const zonesOfCut = (cutId: CutId): readonly Zone[] => (LAWS[cutId] ?? []).map(({ zone }) => zone);

/** One zone of a piece as a piece of its own. @throws RangeError on a zone that the cut has not */
export function zonePiece(whole: ResolvedPiece, zone: Zone): ResolvedPiece {
  const law = LAWS[whole.cut.id]?.find((one) => one.zone === zone);
  const own = law && findCut(law.cutId);
  if (!law || !own) throw new RangeError(`${whole.cut.id} has no ${zone}`);
  const massKg = whole.size.massKg * law.massShare;
  if (law.size === 'own')
    return {
      ...whole,
      cut: own,
      size: pieceSize(own, massKg, undefined),
      densityKgM3: rawDensityKgM3(own.composition),
      boneShare: 0,
    };
  const { dimensionality, evaporatingShare, juiceToSurfaceShare } = whole.cut;
  return {
    ...whole,
    cut: { ...own, dimensionality, evaporatingShare, juiceToSurfaceShare },
    size: { ...whole.size, massKg, halfThicknessM: law.size * whole.size.halfThicknessM },
    densityKgM3: rawDensityKgM3(own.composition),
    boneShare: 0,
  };
}

/** The stages with the whole piece's own clock of this member; undefined where one never ends. */
export function onWholeClock(stages: readonly StagePlan[], wholeEndS: Float64Array): StagePlan[] | undefined {
  let beganS = 0;
  const clocked: StagePlan[] = [];
  for (const [s, stage] of stages.entries()) {
    const endS = wholeEndS[s]!;
    if (!(endS < Infinity)) return undefined;
    clocked.push({ ...stage, trigger: { by: 'clock', afterS: endS - beganS } });
    beganS = endS;
  }
  return clocked;
}

function zoneForecast(
  zone: Zone,
  piece: ResolvedPiece,
  pit: ResolvedPit,
  whole: PieceColumns,
  seed: number,
  members: number,
  runner: PieceRunner,
): ZoneForecast {
  const cookDraws = new CookDraws(seed);
  const pieceDraws = new PieceDraws(seed, piece.id, piece.items);
  const last = Math.max(0, lastCookingStage(piece));
  const asked = TIMED_WORDS.indexOf(knownWord(piece.cut.tissue, piece.bite) as (typeof TIMED_WORDS)[number]);
  const coreC: number[] = [];
  let reached = 0;
  let rows = 0;
  for (let m = 0; m < members; m++) {
    const cook = cookDraws.of(m);
    for (let item = 0; item < piece.items; item++) {
      const member = memberOf(piece, pit, cook, pieceDraws, m, item);
      const row = (m * piece.items + item) * whole.stages;
      rows++;
      const stages = onWholeClock(
        member.stages.slice(0, last + 1),
        whole.stageEndS.subarray(row, row + last + 1),
      );
      if (!stages) continue;
      const outcome = runner.run(member.meat, stages, {
        stretch: member.stretch,
        wordDoses: member.wordDoses,
      });
      coreC.push(outcome.coreC[last]!);
      if (asked < 0 || outcome.wordS[asked]! <= outcome.endS[last]!) reached++;
    }
  }
  const own = pieceColumns(piece, pit, seed, 0, members, runner);
  return {
    zone,
    massKg: piece.size.massKg,
    offHeatS: rangeOf(own.stageEndS.filter((_, i) => i % own.stages === last)),
    readyS: rangeOf(own.readyS),
    coreC:
      coreC.length > 0
        ? { ...rangeOf(Float64Array.from(coreC)), neverShare: 1 - coreC.length / rows }
        : { p10: Infinity, p50: Infinity, p90: Infinity, neverShare: 1 },
    biteChance: reached / rows,
  };
}

type Two = readonly [ZoneForecast, ZoneForecast];

function decidingOf([first, second]: Two): Zone | undefined {
  const late = (zone: ZoneForecast): number => zone.readyS.p50;
  if (late(first) === late(second) || Math.abs(late(first) - late(second)) < TOGETHER_S) return undefined;
  return late(first) > late(second) ? first.zone : second.zone;
}

function saidOf(
  zones: Two,
  decides: Zone | undefined,
  bite: Bite,
  isProbed: boolean,
  members: number,
): Said[] {
  const [first, second] = zones;
  const names = { first: first.zone, second: second.zone };
  const said: Said[] = [
    {
      id: decides === undefined ? 'zones.together' : 'zones.decides',
      params: {
        ...names,
        ...(decides && { decides }),
        firstReady: first.readyS,
        secondReady: second.readyS,
      },
      source: 'meat.md',
    },
  ];
  if (first.coreC.p50 < Infinity && second.coreC.p50 < Infinity)
    said.push({
      id: 'zones.off-heat',
      params: {
        ...names,
        bite,
        members,
        firstCore: first.coreC,
        secondCore: second.coreC,
        firstChance: first.biteChance,
        secondChance: second.biteChance,
      },
      source: 'meat.md',
    });
  if (isProbed)
    said.push({
      id: 'zones.probe',
      params: { ...names, firstOff: first.offHeatS, secondOff: second.offHeatS },
      source: 'meat.md',
    });
  return said;
}

/** The zones of every piece of a forecast that has them: whole briskets, and birds whole or in halves. */
export function zonesOf(
  cook: Cook,
  { pieces: foreseen, seed, members: all }: CookForecast,
  {
    members = Math.min(ZONE_MEMBERS, all),
    pieceIds,
  }: { readonly members?: number; readonly pieceIds?: readonly string[] } = {},
): PieceZones[] {
  const { pit, pieces } = resolveCook(cook);
  const runner = ensembleRunner();
  return pieces.flatMap((piece) => {
    const whole = foreseen.find((one) => one.pieceId === piece.id);
    const laws = LAWS[piece.cut.id];
    if (!laws || !whole || (pieceIds && !pieceIds.includes(piece.id))) return [];
    const foresee = ({ zone }: ZoneLaw): ZoneForecast =>
      zoneForecast(zone, zonePiece(piece, zone), pit, whole.columns, seed, members, runner);
    const zones: Two = [foresee(laws[0]), foresee(laws[1])];
    const decides = decidingOf(zones);
    const isProbed = piece.stages.some(({ trigger }) => trigger.by === 'core');
    const bite = knownWord(piece.cut.tissue, piece.bite);
    return [
      {
        pieceId: piece.id,
        ...(decides && { decides }),
        zones,
        said: saidOf(zones, decides, bite, isProbed, members),
      },
    ];
  });
}
