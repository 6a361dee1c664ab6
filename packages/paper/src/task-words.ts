import { chillDeadlinesS, isTrimmed, stageNames, type Task } from '@pitwright/engine';
import {
  type Cook,
  type Formula,
  isWaiting,
  type Piece,
  type PitType,
  type Said,
  type Stage,
} from '@pitwright/model';
import {
  isSayable,
  listed,
  lowered,
  type Printer,
  spokenIngredient,
  writtenQuantity,
} from '@pitwright/words';
import { type FormulaLineReport, type PlanReport, pieceOf } from './report.ts';

type Params = NonNullable<Said['params']>;

/** A piece by its letter, and the trade's name of its cut where the file gave it none. */
export const pieceName = (piece: Piece, print: Printer): string =>
  piece.name ?? print.cut(piece.cut, piece.count);

/** `2 × 1.1 kg`, `8 × 320 g`, `3.6 kg` */
export function pieceMass(piece: Piece, print: Printer): string | undefined {
  if (!piece.mass) return undefined;
  const mass = print.quantity(piece.mass);
  return piece.count > 1 ? `${piece.count} × ${mass}` : mass;
}

/** `the sauce` where the cook has one of its kind, else its name as it stands in a sentence. */
function formulaName(formula: Formula, cook: Cook): string {
  const isOnly = cook.formulas.filter((one) => one.kind === formula.kind).length === 1;
  return isOnly ? `the ${formula.kind}` : `the ${lowered(formula.name)}`;
}

/** The stage that a task of a piece belongs to: the second part of `piece/stage/kind`, as `stageNames` gives it. */
const stageOf = (task: Task, piece: Piece | undefined): Stage | undefined => {
  const name = task.id.split('/')[1] ?? '';
  return piece?.stages[stageNames(piece.stages).indexOf(name)];
};

const sauceOf = (cook: Cook, piece: Piece): Formula | undefined =>
  cook.formulas.find(
    (formula) =>
      formula.kind === 'sauce' &&
      (!formula.for || formula.for.includes(piece.id) || formula.for.includes(piece.letter)),
  );

/** What is left in the pan when a simmer has done its work, and what is stirred in then. */
const leftInPan = ({ formulas }: PlanReport, formulaId: string | undefined): Params => {
  const { takeOffKg, lines = [] } = formulas.find(({ formula }) => formula.id === formulaId) ?? {};
  const late = lines.filter((line) => line.isLate);
  return {
    ...(takeOffKg !== undefined && { left: { kind: 'mass', si: takeOffKg } }),
    ...(late.length > 0 && { late: listed(late.map(amountAndName)) }),
  };
};

/** `60 mL apple cider vinegar` */
const amountAndName = ({ amount, name }: FormulaLineReport): string =>
  `${writtenQuantity(amount)} ${spokenIngredient(name)}`;

function wrapParams(stage: Stage | undefined): Params {
  if (!stage) return {};
  const isWrap = stage.kind === 'foil' || stage.kind === 'paper';
  return { ...(isWrap && { wrap: stage.kind }), ...(stage.liquid && { liquid: stage.liquid }) };
}

/** Where it gets cold, and by when the rule of two stages wants it so, counted from the job as it is placed. */
function chillParams(task: Task, piece: Piece, { plan }: PlanReport): Params {
  const k = piece.stages.findIndex(({ kind }) => kind === 'chill');
  const stage = piece.stages[k]!;
  const around = stage.in === 'ice-bath' ? 'ice-bath' : 'fridge';
  const placed = plan.placed.find(({ taskId }) => taskId === task.id);
  const coreC = plan.pieces.find(({ pieceId }) => pieceId === piece.id)?.stages[k - 1]?.coreC.p10;
  if (!placed || coreC === undefined || !(coreC < Infinity)) return { around };
  const { passS, firstS, bothS } = chillDeadlinesS(piece, stage, coreC);
  const at = (s: number): string => new Date(Date.parse(placed.startAt) + 1000 * s).toISOString();
  return { around, pass: at(passS), first: at(firstS), both: at(bothS) };
}

const coalsParams = (stage: Stage | undefined): Params =>
  stage?.direct ? { side: stage.direct.side, ...(stage.direct.turn && { turn: stage.direct.turn }) } : {};

/** The heat that a stage asks of the pit where the one before it, or the pit as told, was another. */
function pitParams(task: Task, piece: Piece, { pit }: Cook): Params {
  const k = task.kind === 'meat-on' ? 0 : piece.stages.indexOf(stageOf(task, piece)!);
  const told = piece.stages[k]?.pit;
  const before = piece.stages.slice(0, Math.max(k, 0)).findLast((stage) => stage.pit)?.pit ?? pit.temperature;
  return told && told.si !== before.si ? { pit: told } : {};
}

/** Where a piece goes from the heat, where that is no tray in the kitchen. */
function offParams(piece: Piece): Params {
  const k = piece.stages.findIndex(({ kind }) => isWaiting(kind));
  const wait = piece.stages[k];
  if (!wait?.in || wait.in === 'tray' || wait.kind === 'chill') return {};
  const last = piece.stages[k - 1]?.kind;
  return {
    into: wait.in,
    ...(wait.at && wait.in !== 'box' && { at: wait.at }),
    ...((last === 'foil' || last === 'paper') && { wrapped: 'yes' }),
  };
}

/** The oven as told; where it only keeps warm, the warmth that it keeps. */
function ovenParams({ kitchen, pieces }: Cook): Params {
  const inOven = pieces.flatMap(({ stages }) => stages.filter((stage) => stage.in === 'oven'));
  const oven = inOven.every(({ kind }) => isWaiting(kind))
    ? inOven.find((stage) => stage.at)?.at
    : kitchen.ovenTemperature;
  return oven ? { oven } : {};
}

const fuelBought = (pit: PitType): string | undefined => {
  switch (pit) {
    case 'electric':
    case 'oven':
      return undefined;
    case 'gas':
      return 'gas';
    case 'pellet':
      return 'pellets';
    case 'offset':
    case 'unknown':
      return 'wood';
    default:
      return 'charcoal';
  }
};

/** What has to be bought at all; how much of each stands in the list. */
function buyParams({ cook }: PlanReport): Params {
  const wraps = new Set(cook.pieces.flatMap(({ stages }) => stages.map(({ kind }) => kind)));
  const fuel = fuelBought(cook.pit.type);
  return {
    ...(cook.formulas.length > 0 && { formulas: 'yes' }),
    ...(fuel && { fuel }),
    ...(wraps.has('foil') && { foil: 'yes' }),
    ...(wraps.has('paper') && { paper: 'yes' }),
  };
}

const isOnlyCoat = (task: Task, { plan }: PlanReport): boolean =>
  !plan.tasks.some(
    (one) => one !== task && one.kind === 'glaze' && one.pieceIds.some((id) => task.pieceIds.includes(id)),
  );

function ownParams(task: Task, report: PlanReport, print: Printer): Params {
  const { cook } = report;
  const piece = task.pieceIds.length === 1 ? pieceOf(cook, task.pieceIds[0]!) : undefined;
  switch (task.kind) {
    case 'buy':
      return buyParams(report);
    case 'meat-on':
      return piece
        ? {
            name: nameAndMass(piece, print),
            ...(piece.place && { place: piece.place }),
            ...coalsParams(piece.stages[0]),
            ...pitParams(task, piece, cook),
          }
        : {};
    case 'coal-bed':
      return { pit: cook.pit.temperature };
    case 'light-oven':
      return ovenParams(cook);
    case 'simmer-sauce':
      return leftInPan(report, task.formulaId);
    case 'wrap':
      return { ...wrapParams(stageOf(task, piece)), ...(piece && pitParams(task, piece, cook)) };
    case 'to-coals':
      return coalsParams(stageOf(task, piece));
    case 'chill':
      return piece ? chillParams(task, piece, report) : {};
    case 'glaze': {
      const sauce = piece && sauceOf(cook, piece);
      const before = piece?.stages[piece.stages.findIndex((stage) => stage.kind === 'glazed') - 1];
      const opens = (before?.kind === 'foil' || before?.kind === 'paper') && !(task.round && task.round > 1);
      return {
        ...(sauce && { formula: formulaName(sauce, cook) }),
        ...(task.round && { round: task.round }),
        ...(isOnlyCoat(task, report) && { only: 'yes' }),
        ...(opens && { opens: 'yes' }),
        ...(piece && !(task.round && task.round > 1) && pitParams(task, piece, cook)),
      };
    }
    case 'test-bite':
      return piece
        ? { bite: piece.bite, ...(task.sign?.id.startsWith('sign.probe-') && { probed: 'yes' }) }
        : {};
    case 'slice':
      return piece ? { bite: piece.bite } : {};
    case 'rub':
      return task.pieceIds.some((id) => isTrimmed(pieceOf(cook, id).cut)) ? { trim: 'yes' } : {};
    case 'take-off':
      return piece ? offParams(piece) : {};
    case 'look':
    case 'unwrap':
      return piece ? pitParams(task, piece, cook) : {};
    default:
      return {};
  }
}

const nameAndMass = (piece: Piece, print: Printer): string => {
  const mass = pieceMass(piece, print);
  return mass ? `${pieceName(piece, print)}, ${mass}` : pieceName(piece, print);
};

/** Letters of the pieces of a job, as one says them. */
export const lettersOf = (task: Task, { cook }: PlanReport): string =>
  listed(task.pieceIds.map((id) => pieceOf(cook, id).letter));

/** A job as a thing to be said. */
export function taskSaid(task: Task, report: PlanReport, print: Printer): Said {
  const { cook } = report;
  const formula = cook.formulas.find((one) => one.id === task.formulaId);
  return {
    id: `task.${task.kind}`,
    params: {
      pieces: lettersOf(task, report),
      ...(formula && { formula: formulaName(formula, cook) }),
      ...ownParams(task, report, print),
    },
  };
}

/** What tells that it is time for a job; a test is its own sign. */
export const signOf = (task: Task): Said | undefined => (task.kind === 'test-bite' ? undefined : task.sign);

/** The same for the sheet by the pit, where a short form exists. */
export function shortTaskSaid(task: Task, report: PlanReport, print: Printer): Said {
  const said = taskSaid(task, report, print);
  const short = `task.short.${task.kind}`;
  return isSayable(short) ? { ...said, id: short } : said;
}
