import { findCut, standingNotices } from '@pitwright/engine';
import {
  afterWeighing,
  aimAt,
  contentsG,
  cooling,
  enough,
  evaporate,
  FRIDGE_C,
  factorFromPlate,
  findIngredient,
  type Ingredient,
  JARS,
  lineEffects,
  lookAt,
  nutrition,
  type OutcomeOptions,
  POT_C,
  panOf,
  type RebalanceLine,
  rebalance,
  type SauceOutcome,
  SERVING_G,
  slabSurfaceM2,
  stepsApart,
  swapLine,
  TASTES,
  tastesOf,
  wantedFrom,
  waterForMass,
} from '@pitwright/engine/sauce';
import {
  type Cook,
  chosenVariant,
  type Formula,
  lostChanges,
  madeCook,
  madeFormula,
  type Piece,
  quantity,
  type Said,
} from '@pitwright/model';
import { stressSpread } from './doubt.ts';
import { takeOver } from './edit.ts';
import type {
  Aimed,
  Along,
  AsWritten,
  CooledIn,
  Corrections,
  OnMeat,
  Seen,
  Swap,
  Swapped,
  Wish,
} from './messages.ts';
import { outcomeOf } from './remembered.ts';
import { saltSum } from './salt-sum.ts';

const MOMENTS = 28;
/** The curve goes on past its target: by half as much water again, as far as there is water for it. */
const PAST = 1.6;
const MOST_OFF = 0.85;
const COATS = 2;

/** What may be added to bring a taste back: sugar, vinegar, salt, heat, body. */
const MAY_ADD = ['sugar_brown_packed', 'vinegar_cider_5', 'salt_table', 'cayenne', 'tomato_paste'];

const kitchenOf = (cook: Cook): OutcomeOptions => ({
  ...(cook.labels && { labels: cook.labels }),
  ...(cook.place?.altitude && { altitudeM: cook.place.altitude.si }),
});

/** The middle run, past its target, by looks. */
function alongOf(formula: Formula, outcome: SauceOutcome, options: OutcomeOptions): Along | undefined {
  const { simmerS, curve, raw, waterOffG } = outcome;
  if (!formula.simmer || !simmerS || !curve || !(waterOffG > 0)) return undefined;
  const farG = Math.max(waterOffG, Math.min(PAST * waterOffG, MOST_OFF * raw.waterG));
  const far = outcomeOf(
    { ...formula, simmer: { ...formula.simmer, evaporated: quantity('mass', farG, 'g') } },
    options,
  );
  const points = far.ok && far.curve ? far.curve.points : curve.points;
  const step = Math.max(1, Math.floor(points.length / MOMENTS));
  const chosen = points.filter((_, i) => i % step === 0 || i === points.length - 1);
  const factor = options.thicknessFactor ?? 1;
  const spread = stressSpread(options.thicknessFactor !== undefined);
  const moments = chosen.map(({ timeS, massG, waterOffG: offG }) => {
    const batch = evaporate(raw, offG);
    return {
      timeS,
      massG,
      waterOffG: offG,
      level: lookAt(batch, POT_C, factor).level,
      lowLevel: lookAt(batch, POT_C, factor / spread).level,
      highLevel: lookAt(batch, POT_C, factor * spread).level,
    };
  });
  return { moments, fast: simmerS.p10 / simmerS.p50, slow: simmerS.p90 / simmerS.p50 };
}

const LEAST_THICK_M = 0.01;

/** The pieces a formula is for, as one lot of meat. */
export function onMeat(cook: Cook, formula: Formula): OnMeat {
  const pieces = cook.pieces.filter((piece) => !formula.for || formula.for.includes(piece.id));
  let lot = { meatKg: 0, edibleKg: 0, surfaceM2: 0, thicknessM: LEAST_THICK_M };
  for (const piece of pieces) {
    const { massKg, boneShare, thicknessM } = sizeOf(piece);
    lot = {
      meatKg: lot.meatKg + massKg * piece.count,
      edibleKg: lot.edibleKg + massKg * (1 - boneShare) * piece.count,
      surfaceM2: lot.surfaceM2 + slabSurfaceM2(massKg, thicknessM) * piece.count,
      thicknessM: Math.max(lot.thicknessM, thicknessM),
    };
  }
  return { ...lot, boneShare: lot.meatKg > 0 ? 1 - lot.edibleKg / lot.meatKg : 0 };
}

function sizeOf(piece: Piece): { massKg: number; boneShare: number; thicknessM: number } {
  const cut = findCut(piece.cut);
  const massKg = piece.mass?.si ?? cut?.massKg ?? 1;
  const thicknessM = piece.thickness?.si ?? (cut ? 2 * cut.halfThicknessM : 0.05);
  return { massKg, boneShare: (piece.bone ?? cut?.hasBone) ? (cut?.boneShare ?? 0) : 0, thicknessM };
}

/** Jars and the pan itself, in the fridge and in ice with stirring. */
function cooledIn(outcome: SauceOutcome, formula: Formula): CooledIn[] {
  const diameterM = formula.simmer?.panDiameter?.si ?? 0.24;
  const depthM = outcome.finishedVolumeMl / 1e6 / ((Math.PI * diameterM * diameterM) / 4);
  const startC = 90;
  return [
    {
      vessel: 'half-pint',
      around: 'fridge',
      answer: cooling({ vessel: JARS['half-pint'], around: 'fridge', startC, jars: outcome.jars.full }),
    },
    { vessel: 'pint', around: 'fridge', answer: cooling({ vessel: JARS.pint, around: 'fridge', startC }) },
    {
      vessel: 'pan',
      around: 'fridge',
      answer: cooling({ vessel: panOf(diameterM, depthM), around: 'fridge', startC }),
    },
    {
      vessel: 'pan',
      around: 'stirred-ice-bath',
      answer: cooling({
        vessel: panOf(diameterM, depthM),
        around: 'stirred-ice-bath',
        startC,
        isStirred: true,
      }),
    },
  ];
}

/** What another thing in a line's place does, and the least change that brings the taste back. */
function swappedBy(
  formula: Formula,
  outcome: SauceOutcome,
  swap: Swap,
  options: OutcomeOptions,
): Swapped | undefined {
  const other = findIngredient(swap.ingredient);
  const line = formula.lines[swap.index];
  if (!other || !line) return undefined;
  const before: RebalanceLine[] = outcome.lines.map((one) => ({ ...one, locked: one.line.locked ?? false }));
  const lines = swapLine(before, swap.index, other);
  const mayAdd = MAY_ADD.map((id) => findIngredient(id)).filter((i): i is Ingredient => i !== undefined);
  const { wanted, finishedG } = wantedFrom(before, outcome.waterOffG);
  const rebalanced = rebalance({ wanted, finishedG, lines, mayAdd });
  const next: Formula = {
    ...formula,
    lines: formula.lines.with(swap.index, {
      ...line,
      ingredient: other.id,
      amount: quantity('mass', lines[swap.index]!.massG, 'g'),
    }),
  };
  const untouched = outcomeOf(next, options);
  if (!untouched.ok || !formula.simmer) return { outcome: untouched, rebalanced };
  const offG = waterForMass(untouched.raw, outcome.finishedMassG - untouched.lateMassG);
  if (offG === undefined) return { outcome: untouched, rebalanced };
  const boiled: Formula = { ...next, simmer: { ...formula.simmer, evaporated: quantity('mass', offG, 'g') } };
  const after = outcomeOf(boiled, options);
  const along = after.ok ? alongOf(boiled, after, options) : undefined;
  return { outcome: after, rebalanced, ...(along && { along }) };
}

/** What gets the sauce where it is wanted, and what it becomes then. */
function aimedAt(formula: Formula, outcome: SauceOutcome, wish: Wish, options: OutcomeOptions): Aimed {
  const mayAdd = wish.mayAdd ? MAY_ADD.flatMap((id) => findIngredient(id) ?? []) : [];
  const rebalanced = aimAt(
    {
      lines: outcome.lines.map((one) => ({ ...one, locked: one.line.locked ?? false })),
      waterOffG: outcome.waterOffG,
      mayAdd,
      ...(options.thicknessFactor !== undefined && { thicknessFactor: options.thicknessFactor }),
    },
    wish.aim,
  );
  if (!rebalanced.ok) return { rebalanced };
  const next = takeOver(formula, undefined, rebalanced);
  const after = outcomeOf(next, options);
  const along = after.ok ? alongOf(next, after, options) : undefined;
  return { rebalanced, outcome: after, ...(along && { along }) };
}

/** The formula as written, where a variant of it is made. */
function asWrittenBeside(
  written: Formula,
  made: SauceOutcome,
  options: OutcomeOptions,
): AsWritten | undefined {
  if (!chosenVariant(written)) return undefined;
  const { variant: _, ...rest } = written;
  const formula = madeFormula(rest);
  const outcome = outcomeOf(formula, options);
  if (!outcome.ok) return undefined;
  const [from, to] = [tastesOf(outcome.finished), tastesOf(made.finished)];
  const steps = Object.fromEntries(
    TASTES.map((taste) => [taste, stepsApart(taste, from[taste], to[taste])]),
  ) as AsWritten['steps'];
  const along = alongOf(formula, outcome, options);
  return { outcome, steps, ...(along && { along }) };
}

/** Everything the bench shows of one formula, as it is made. */
export function consequences(
  cook: Cook,
  written: Formula,
  corrections: Corrections,
  swap: Swap | undefined,
  wish?: Wish,
): Seen {
  // The variant is put on once; what has lost its lines is told of the formula as written.
  const formula = lostChanges(written).length > 0 ? written : madeFormula(written);
  const meat = onMeat(cook, formula);
  const { options, said, leftS } = corrected(formula, kitchenOf(cook), corrections);
  const outcome = outcomeOf(formula, options);
  const notices = standingNotices(cook).filter((notice) => notice.concerns?.formulaId === formula.id);
  const base = { formulaId: formula.id, outcome, onMeat: meat, corrected: said, notices };
  if (!outcome.ok) return { ...base, effects: [], cooled: [] };
  const along = alongOf(formula, outcome, options);
  const asWritten = asWrittenBeside(written, outcome, options);
  const swapped = swap ? swappedBy(formula, outcome, swap, options) : undefined;
  const isSauce = formula.kind === 'sauce';
  const salt = saltSum(madeCook(cook), kitchenOf(cook), onMeat);
  return {
    ...base,
    ...(salt && { salt }),
    effects: isSauce ? lineEffects(outcome.lines, outcome.finishedMassG) : [],
    cooled: isSauce ? cooledIn(outcome, formula) : [],
    nutrition: nutrition(outcome.finished, SERVING_G),
    ...(isSauce && {
      enough: enough(outcome, {
        glazed: [{ surfaceM2: meat.surfaceM2, coats: COATS }],
        guests: cook.guests.adults + cook.guests.children,
      }),
    }),
    ...(along && { along }),
    ...(swapped && { swapped }),
    ...(asWritten && { asWritten }),
    ...(wish && isSauce && { aimed: aimedAt(formula, outcome, wish, options) }),
    ...(leftS && { leftS }),
  };
}

/** The kitchen with what was measured in it; a measurement that cannot be is said, and left out. */
function corrected(
  formula: Formula,
  kitchen: OutcomeOptions,
  { plate, weighed }: Corrections,
): { options: OutcomeOptions; said: readonly Said[]; leftS?: Seen['leftS'] } {
  const said: Said[] = [];
  let options = kitchen;
  const foreseen = plate && outcomeOf(formula, kitchen);
  if (plate && foreseen?.ok) {
    const read = factorFromPlate(foreseen.finished, { diameterM: plate.diameter.si, temperatureC: FRIDGE_C });
    if (read.ok) {
      options = { ...options, thicknessFactor: read.factor };
      said.push(...read.doubts);
    } else said.push(...read.problems);
  }
  if (!weighed) return { options, said };
  const tareG = formula.simmer?.panMass ? formula.simmer.panMass.si * 1000 : undefined;
  const contents = tareG === undefined ? undefined : contentsG(weighed.mass.si * 1000, tareG);
  if (!contents) return { options, said: [...said, { id: 'bench.no-tare' }] };
  if (!contents.ok) return { options, said: [...said, ...contents.problems] };
  const after = afterWeighing(formula, options, weighed.after.si, contents.massG);
  if (!after.ok) return { options, said: [...said, ...after.problems] };
  return { options: { ...options, rateFactor: after.rateFactor }, said, leftS: after.leftS };
}
