import type { Cook, Piece, Stage } from '@pitwright/model';
import type { Curve } from '../../calc/spec.ts';
import { findCut } from '../../meat/cuts.ts';
import { chilling, wholePiece } from '../chilling.ts';
import { COOLING_RULES } from '../cooling.ts';
import { holdTimeS } from '../hold.ts';
import { degrees, type Notice, notice, seconds } from '../notice.ts';
import { cookMinimum, type Product } from '../rules/cookMinimum.ts';
import { holdTable } from '../rules/holdTables.ts';
import { COLD_HOLD_C, COME_UP_S, HOT_HOLD_C } from '../rules/limits.ts';
import { celsiusOf, hundredthsF } from '../ruleTemperature.ts';

const APPENDIX_A = 'USDA FSIS, Revised Appendix A (2021)';
const GRILLING = 'USDA FSIS, Grilling and Food Safety';
const POULTRY_TABLE = 'fsis-chicken-fat-12';
/** Where the poultry table is quoted: hot enough that minutes count, and what a pit bird passes on its way. */
const POULTRY_QUOTED_C = celsiusOf(150);
/** One probe may miss the cold spot of a piece heavier than this [kg]. */
const ONE_PROBE_KG = 3 * 0.45359237;
/** Below this a centre is frozen [°C]. */
const FROZEN_C = 0;
/** The pit liquid in a wrap is this hot when it is opened [°C]. */
const WRAP_C = celsiusOf(190);

const isPoultry = (piece: Piece): boolean => findCut(piece.cut)?.isPoultry ?? false;

function productOf(piece: Piece): Product {
  if (isPoultry(piece)) return 'poultry';
  return piece.nonIntact ? 'tenderised' : 'whole-cut';
}

/** Least temperature in the coldest part, by the chosen rules; a bird's time at lower ones, where it is asked. */
function minimumNotices(cook: Cook, piece: Piece): Notice[] {
  const product = productOf(piece);
  const { temperatureC, timeS, source } = cookMinimum(cook.rules, product);
  const concerns = { pieceId: piece.id };
  const params = { temperature: degrees(temperatureC), time: seconds(timeS) };
  const isRest = cook.rules === 'home-us' && timeS > 0;
  const said = isRest ? 'safety.min-temp-rest' : timeS > 0 ? 'safety.min-temp-hold' : 'safety.min-temp';
  const notices = [notice(said, 'information', source, params, concerns)];
  // Guests at risk get the plain minimum alone, without a way below it.
  if (product === 'poultry' && !cook.guests.atRisk)
    notices.push(
      notice(
        'safety.poultry-time',
        'information',
        holdTable(POULTRY_TABLE).source,
        {
          temperature: degrees(POULTRY_QUOTED_C),
          time: seconds(holdTimeS(POULTRY_TABLE, POULTRY_QUOTED_C)!),
          minimum: degrees(temperatureC),
        },
        concerns,
      ),
    );
  return notices;
}

function handlingNotices(cook: Cook, piece: Piece): Notice[] {
  const concerns = { pieceId: piece.id };
  const notices: Notice[] = [];
  const startC = piece.start && piece.start.si - 273.15;
  if (startC !== undefined && startC < FROZEN_C)
    notices.push(notice('safety.frozen-core', 'stop', 'USDA FSIS, Smoking Meat and Poultry', {}, concerns));
  else if (startC !== undefined && hundredthsF(startC) > hundredthsF(COLD_HOLD_C[cook.rules]))
    notices.push(
      notice(
        'safety.warm-start',
        'caution',
        'USDA FSIS, Basics for Handling Food Safely',
        { start: degrees(startC), cold: degrees(COLD_HOLD_C[cook.rules]) },
        concerns,
      ),
    );
  if (piece.nonIntact)
    notices.push(notice('safety.non-intact', 'caution', APPENDIX_A, { limit: seconds(COME_UP_S) }, concerns));
  const hasBone = piece.bone ?? findCut(piece.cut)?.hasBone ?? false;
  if (hasBone || (piece.mass && piece.mass.si > ONE_PROBE_KG))
    notices.push(notice('safety.cold-spot', 'caution', APPENDIX_A, {}, concerns));
  return notices;
}

function stageNotices(cook: Cook, piece: Piece): Notice[] {
  const notices: Notice[] = [];
  if (piece.stages.some((stage) => stage.kind === 'foil' || stage.kind === 'paper')) {
    const stage = piece.stages.find(({ kind }) => kind === 'foil' || kind === 'paper')!.kind;
    notices.push(
      notice(
        'safety.wrap-steam',
        'caution',
        'common practice, no source',
        { temperature: degrees(WRAP_C) },
        {
          pieceId: piece.id,
          stage,
        },
      ),
    );
  }
  const over = piece.stages.find(({ direct }) => direct && direct.between !== 'pan');
  if (over) {
    const concerns = { pieceId: piece.id, stage: over.kind };
    notices.push(
      notice('safety.coals-colour', 'caution', GRILLING, {}, concerns),
      notice('safety.flare-up', 'caution', GRILLING, {}, concerns),
    );
  }
  for (const stage of piece.stages) {
    if (stage.kind === 'chill') notices.push(chillNotice(piece, stage));
    if (stage.kind !== 'hold') continue;
    const concerns = { pieceId: piece.id, stage: stage.kind };
    const least = HOT_HOLD_C[cook.rules];
    const atC = stage.at && stage.at.si - 273.15;
    notices.push(
      atC !== undefined && hundredthsF(atC) < hundredthsF(least)
        ? notice(
            'safety.hold-low',
            'caution',
            'USDA FSIS; FDA Food Code 3-501.16',
            { at: degrees(atC), least: degrees(least) },
            concerns,
          )
        : notice(
            'safety.hold-warm',
            'information',
            'USDA FSIS; FDA Food Code 3-501.16',
            { least: degrees(least) },
            concerns,
          ),
    );
  }
  return notices;
}

/** Hotter than any middle that comes off a pit stands for one that is not told: the slow side [°C]. */
const HOT_MIDDLE_C = 96;
/** The curve begins above what the rule looks at first [°C]. */
const LEAST_START_C = 58;

/** The hottest that a told stage has its middle come to. */
function hottestToldC(piece: Piece): number {
  const told = piece.stages.flatMap(({ until }) =>
    until.by === 'core' ? [until.temperature.si - 273.15] : [],
  );
  return told.length > 0 ? Math.max(LEAST_START_C, ...told) : HOT_MIDDLE_C;
}

const chillerOf = (stage: Stage): 'ice-bath' | 'fridge' => (stage.in === 'ice-bath' ? 'ice-bath' : 'fridge');

function bodyOf(piece: Piece) {
  const cut = findCut(piece.cut);
  if (!cut) throw new RangeError(`cut must be in the catalogue, got ${piece.cut}`);
  return wholePiece(cut, piece.mass?.si, piece.thickness?.si);
}

/**
 * When the rule of two stages wants a chilled piece cold, from the moment it is put there [s]: the middle passes 57 °C,
 * and is at 21 °C two hours after that, at 5 °C six.
 *
 * @param coreC of its middle as it is put there
 */
export function chillDeadlinesS(
  piece: Piece,
  stage: Stage,
  coreC: number,
): { readonly passS: number; readonly firstS: number; readonly bothS: number } {
  const [first, both] = COOLING_RULES['food-code'].legs;
  const isBelow = !(coreC > LEAST_START_C);
  const passS = isBelow
    ? 0
    : timeTo57S(chilling(bodyOf(piece), chillerOf(stage), Math.min(100, coreC)).curve, first.fromF);
  return { passS, firstS: passS + first.limitS, bothS: passS + both.limitS };
}

const timeTo57S = ({ timesS, temperaturesC }: Curve, fahrenheit: number): number =>
  timesS[temperaturesC.findIndex((c) => hundredthsF(c) <= 100 * fahrenheit)]!;

/** Whether the whole piece, chilled so, keeps the rule of two stages; what would keep it. */
function chillNotice(piece: Piece, stage: Stage): Notice {
  const around = chillerOf(stage);
  const { verdict, firstStageS, bothStagesS } = chilling(
    bodyOf(piece),
    around,
    Math.min(100, hottestToldC(piece)),
  );
  const isKept = verdict === 'pass';
  return notice(
    isKept ? 'safety.chill-kept' : 'safety.chill-slow',
    isKept ? 'information' : 'caution',
    COOLING_RULES['food-code'].source,
    { around, first: seconds(firstStageS), both: seconds(bothStagesS) },
    { pieceId: piece.id, stage: stage.kind },
  );
}

/** What stands beside each piece of a plan. */
export const pieceNotices = (cook: Cook): Notice[] =>
  cook.pieces.flatMap((piece) => [
    ...minimumNotices(cook, piece),
    ...handlingNotices(cook, piece),
    ...stageNotices(cook, piece),
  ]);
