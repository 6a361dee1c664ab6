/**
 * A whole brisket is two muscles: a thin lean flat and a thick fat point. Each is foreseen as a piece of its own through
 * the same stages, with the same chances drawn, so that they can be compared try by try.
 *
 * The muscles do not exchange heat where they overlap; docs/models/meat.md, "Flat and point".
 */
import type { Bite, Cook, Range, Said } from '@pitwright/model';
import { type ResolvedPiece, type ResolvedPit, resolveCook } from '../day/resolve.ts';
import { type Cut, findCut } from '../meat/cuts.ts';
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

export const ZONES = ['flat', 'point'] as const;
export type Zone = (typeof ZONES)[number];

export interface ZoneForecast {
  readonly zone: Zone;
  readonly massKg: number;
  /** When its stages on the heat end with the probe, the eye and the hand on this muscle [s]. */
  readonly offHeatS: Range;
  /** At its middle when the whole piece comes off as planned [°C]. */
  readonly coreC: Range;
  /** Chance that it has come to the bite asked, or softer, when the whole piece comes off. */
  readonly biteChance: number;
}

export interface PieceZones {
  readonly pieceId: string;
  readonly zones: readonly ZoneForecast[];
  readonly said: readonly Said[];
}

const ZONE_MEMBERS = 80;

/** Share of the trimmed whole. @source common practice, no source */
const MASS_SHARE: Readonly<Record<Zone, number>> = { flat: 0.55, point: 0.45 };

/**
 * The flat by its own thickness law. The point lies on the flat and has no free edge there: it keeps the size and shape
 * of the whole, whose thickest place it is, with its own composition.
 */
function zonePiece(whole: ResolvedPiece, zone: Zone): ResolvedPiece {
  const own = findCut(`brisket-${zone}`)!;
  const massKg = whole.size.massKg * MASS_SHARE[zone];
  const isFlat = zone === 'flat';
  const cut: Cut = isFlat ? own : { ...own, dimensionality: whole.cut.dimensionality };
  const size = isFlat ? pieceSize(own, massKg, undefined) : { ...whole.size, massKg };
  return { ...whole, cut, size, densityKgM3: rawDensityKgM3(cut.composition), boneShare: 0 };
}

/** The stages with the whole piece's own clock of this member; undefined where one never ends. */
function onWholeClock(stages: readonly StagePlan[], wholeEndS: Float64Array): StagePlan[] | undefined {
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
    coreC:
      coreC.length > 0
        ? { ...rangeOf(Float64Array.from(coreC)), neverShare: 1 - coreC.length / rows }
        : { p10: Infinity, p50: Infinity, p90: Infinity, neverShare: 1 },
    biteChance: reached / rows,
  };
}

function saidOf(zones: readonly ZoneForecast[], bite: Bite, isProbed: boolean, members: number): Said[] {
  const [flat, point] = zones as [ZoneForecast, ZoneForecast];
  const said: Said[] = [];
  if (flat.coreC.p50 < Infinity && point.coreC.p50 < Infinity)
    said.push({
      id: 'zones.off-heat',
      params: {
        bite,
        members,
        flatCore: flat.coreC,
        pointCore: point.coreC,
        flatChance: flat.biteChance,
        pointChance: point.biteChance,
      },
      source: 'meat.md',
    });
  if (isProbed)
    said.push({
      id: 'zones.probe',
      params: { flatOff: flat.offHeatS, pointOff: point.offHeatS },
      source: 'meat.md',
    });
  return said;
}

/** Flat and point of every whole brisket of a forecast; no other cut has zones. */
export function zonesOf(
  cook: Cook,
  { pieces: foreseen, seed, members: all }: CookForecast,
  members = Math.min(ZONE_MEMBERS, all),
): PieceZones[] {
  const { pit, pieces } = resolveCook(cook);
  const runner = ensembleRunner();
  return pieces.flatMap((piece) => {
    const whole = foreseen.find((one) => one.pieceId === piece.id);
    if (piece.cut.id !== 'brisket-whole' || !whole) return [];
    const zones = ZONES.map((zone) =>
      zoneForecast(zone, zonePiece(piece, zone), pit, whole.columns, seed, members, runner),
    );
    const isProbed = piece.stages.some(({ trigger }) => trigger.by === 'core');
    return [
      {
        pieceId: piece.id,
        zones,
        said: saidOf(zones, knownWord(piece.cut.tissue, piece.bite), isProbed, members),
      },
    ];
  });
}
