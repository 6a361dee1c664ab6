import { type CutId, isWaiting, type Piece, type Stage } from '@pitwright/model';
import { HOUR_S, MINUTE_S } from './clock.ts';

/** How long a piece must and may wait between the pit and the table. */
export interface RestRule {
  readonly restLeastS: number;
  /** From ready to the table, rest counted. */
  readonly holdLongestS: number;
}

type Family = 'rack' | 'large' | 'bird' | 'roast';

const FAMILY: Readonly<Record<string, Family>> = {
  'loin-back-ribs': 'rack',
  spareribs: 'rack',
  'st-louis-ribs': 'rack',
  'beef-back-ribs': 'rack',
  'beef-short-ribs': 'large',
  'brisket-whole': 'large',
  'brisket-flat': 'large',
  'brisket-point': 'large',
  'pork-shoulder': 'large',
  'chuck-roast': 'large',
  'lamb-shoulder': 'large',
  'fresh-ham': 'roast',
  'lamb-leg': 'roast',
  'rib-roast': 'roast',
  'chicken-whole': 'bird',
  'chicken-half': 'bird',
  'chicken-breast': 'bird',
  'chicken-leg': 'bird',
  'turkey-whole': 'roast',
  'turkey-breast': 'bird',
  'turkey-half': 'bird',
  'spareribs-breast-off': 'rack',
  'rib-tips': 'rack',
  'country-style-ribs': 'rack',
  'lamb-rack': 'rack',
  'lamb-breast': 'rack',
  'pork-picnic': 'large',
  'pork-shoulder-whole': 'large',
  'pork-belly': 'large',
  'chuck-short-ribs': 'large',
  'beef-clod': 'large',
  'chuck-roll': 'large',
  'chicken-wing': 'bird',
  'chicken-thigh': 'bird',
  'chicken-drumstick': 'bird',
};

/** Cuts that the catalogue has and this table has not are treated as roasts. */
export const familyOf = (cut: CutId): Family => FAMILY[cut] ?? 'roast';

/**
 * Least rest and longest wait, by family and by where it waits.
 * @source common practice, no source: rack 10–20 min rest, tented in foil to an hour, boxed to an hour, in a full
 *   box to two and a half, wrapped in a warmer at 65 °C to three (the bite moves by its dose all the same); shoulder
 *   and brisket rest 1 h, then box to 4 h, warmer at 60–66 °C to 8 h; birds 5–10 min, then the skin softens; roasts
 *   20–40 min.
 */
const RULES: Readonly<Record<Family, { least: number; tray: number; box: number; warmer: number }>> = {
  rack: { least: 10 * MINUTE_S, tray: 60 * MINUTE_S, box: 60 * MINUTE_S, warmer: 3 * HOUR_S },
  large: { least: HOUR_S, tray: 1.5 * HOUR_S, box: 5 * HOUR_S, warmer: 9 * HOUR_S },
  bird: { least: 5 * MINUTE_S, tray: 30 * MINUTE_S, box: 45 * MINUTE_S, warmer: 1 * HOUR_S },
  roast: { least: 20 * MINUTE_S, tray: HOUR_S, box: 2 * HOUR_S, warmer: 3 * HOUR_S },
};

const isWait = (stage: Stage): boolean => isWaiting(stage.kind);
/** Cooked, chilled and eaten cold or warmed another day. @source USDA FSIS: leftovers three to four days in the fridge */
const CHILLED_LONGEST_S = 72 * HOUR_S;

/** Stages before the first rest or hold: what happens on the pit and in the oven. */
export const heatStages = (piece: Piece): readonly Stage[] => {
  const firstWait = piece.stages.findIndex(isWait);
  return firstWait < 0 ? piece.stages : piece.stages.slice(0, firstWait);
};

/** Racks that fill a box; a shoulder or brisket warms it like as many. @source common practice, no source */
const FULL_BOX_RACKS = 4;
const RACK_IN_FULL_BOX_S = 2.5 * HOUR_S;

const inBox = (piece: Piece): boolean => piece.stages.some((stage) => isWait(stage) && stage.in === 'box');

const fillsBox = (pieces: readonly Piece[]): boolean =>
  pieces
    .filter(inBox)
    .reduce((sum, piece) => sum + (familyOf(piece.cut) === 'rack' ? piece.count : FULL_BOX_RACKS), 0) >=
  FULL_BOX_RACKS;

/** Kept warm it waits for long, whether the file calls that a rest or a hold. @param untold where no place is told */
function keptIn(stage: Stage, rule: { box: number; warmer: number }, untold: number): number {
  if (stage.in === 'warmer' || stage.in === 'oven' || stage.at) return rule.warmer;
  return stage.in === 'box' ? rule.box : untold;
}

/**
 * Rest and hold of one piece: what the file says, else common practice for its cut.
 * @param among  all pieces of the cook: together they fill a box or leave it half empty
 */
export function restRuleOf(piece: Piece, among: readonly Piece[]): RestRule {
  const family = familyOf(piece.cut);
  const usual = RULES[family];
  const rule = family === 'rack' && fillsBox(among) ? { ...usual, box: RACK_IN_FULL_BOX_S } : usual;
  const waits = piece.stages.filter(isWait);
  const told = waits.find((stage) => stage.kind === 'rest' && stage.until.by === 'clock');
  const restLeastS = told && told.until.by === 'clock' ? told.until.after.si : rule.least;
  if (waits.some((stage) => stage.kind === 'chill')) return { restLeastS, holdLongestS: CHILLED_LONGEST_S };
  const hold = waits.find((stage) => stage.kind === 'hold');
  if (!hold) {
    const longest = waits[0] ? keptIn(waits[0], rule, rule.tray) : rule.tray;
    return { restLeastS, holdLongestS: Math.max(longest, restLeastS + 20 * MINUTE_S) };
  }
  const holdLongestS =
    hold.until.by === 'clock' ? restLeastS + hold.until.after.si : keptIn(hold, rule, rule.box);
  return { restLeastS, holdLongestS: Math.max(holdLongestS, restLeastS) };
}
