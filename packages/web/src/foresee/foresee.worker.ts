import {
  acrossFaces,
  assembleForecast,
  type CookForecast,
  ensembleRunner,
  explainPiece,
  forecastMembers,
  type PieceColumns,
  PieceTrails,
  PREVIEW_MEMBERS,
  pieceInside,
  sensitivityOf,
  tellingMoments,
  zonesOf,
} from '@pitwright/engine';
import type { Cook, Piece } from '@pitwright/model';
import { formulaReports, previewReport } from '@pitwright/paper';
import { answerAsks } from './asked-worker.ts';
import type { Ask, Closer, Inside, SteppingAnswer } from './messages.ts';

/** One seed for all forecasts of the app: only what was changed is seen to change. */
const SEED = 1;
/** Pieces as they were a while ago are kept, so that undo is at once. */
const MOST_KEPT = 40;

interface KeptPiece {
  readonly parts: {
    readonly membersFrom: number;
    readonly membersTo: number;
    readonly columns: PieceColumns;
  }[];
}

const kept = new Map<string, KeptPiece>();

const runner = ensembleRunner();
/** Of the pieces last stepped, so that a moved edge sets out from near it. */
const trails = new Map<string, PieceTrails>();
const MOST_TRAILED = 2;

function trailsOf(pieceId: string): PieceTrails {
  const own = trails.get(pieceId) ?? new PieceTrails();
  trails.delete(pieceId);
  trails.set(pieceId, own);
  if (trails.size > MOST_TRAILED) trails.delete(trails.keys().next().value!);
  return own;
}

/** What the members of a piece depend on: not its start, its name, its letter, nor the hour of the table. */
function keyOf(cook: Cook, piece: Piece): string {
  const { onAt: _on, name: _name, note: _note, letter: _letter, after: _after, ...matter } = piece;
  return JSON.stringify([matter, cook.pit, cook.weather, cook.place, cook.kitchen.ovenTemperature]);
}

function keptPiece(key: string): KeptPiece {
  const held = kept.get(key) ?? { parts: [] };
  // Last used stands last.
  kept.delete(key);
  kept.set(key, held);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return held;
}

/** The forecast of the first `members`; only pieces that changed, and members not run yet, are stepped. */
function forecast(cook: Cook, members: number): CookForecast {
  const parts = cook.pieces.flatMap((piece) => {
    const held = keptPiece(keyOf(cook, piece));
    const ran = held.parts.at(-1)?.membersTo ?? 0;
    if (ran < members) {
      const job = {
        jobId: piece.id,
        seed: SEED,
        membersFrom: ran,
        membersTo: members,
        cook,
        pieceIds: [piece.id],
      };
      const [columns] = forecastMembers(job, runner, trailsOf).columns;
      if (columns) held.parts.push({ membersFrom: ran, membersTo: members, columns });
    }
    return held.parts
      .filter((part) => part.membersTo <= members)
      .map(({ membersFrom, membersTo, columns }) => ({
        jobId: piece.id,
        membersFrom,
        membersTo,
        columns: [{ ...columns, pieceId: piece.id }],
      }));
  });
  return assembleForecast(cook, SEED, parts);
}

const onlyPiece = (cook: Cook, pieceId: string): Cook => ({
  ...cook,
  pieces: cook.pieces.filter((piece) => piece.id === pieceId),
});

/** As many members as the page shows, fewer where many items are alike: the look stays short. */
const MOST_MEMBERS = 200;
const LEAST_MEMBERS = 80;
const ITEMS_STEPPED = 400;

/** What would narrow the range of a piece, and how its muscles differ. */
function closer(cook: Cook, pieceId: string): Closer {
  const only = onlyPiece(cook, pieceId);
  const items = only.pieces[0]?.count ?? 1;
  const members = Math.min(MOST_MEMBERS, Math.max(LEAST_MEMBERS, Math.floor(ITEMS_STEPPED / items)));
  const foreseen = forecast(only, members);
  const [sensitivity] = sensitivityOf(only, foreseen, { members });
  if (!sensitivity) throw new RangeError(`the cook has no piece ${pieceId}`);
  const [zones] = zonesOf(only, foreseen);
  return { pieceId, sensitivity, ...(zones && { zones }) };
}

/** What happens in the members nearest the 10, 50 and 90 % points of a preview. */
function inside({ cook, pieceId, zone }: Extract<Ask, { kind: 'inside' }>): Inside {
  const seen = pieceInside(cook, forecast(onlyPiece(cook, pieceId), PREVIEW_MEMBERS), pieceId, zone);
  return {
    pieceId,
    ...(zone && { zone }),
    field: { timesS: seen.timesS, ...acrossFaces(seen), ...(seen.stall ? { stall: seen.stall } : {}) },
    changes: seen.stages.slice(1).flatMap(({ kind, fire }, i) => {
      const atS = seen.stages[i]!.endS;
      return atS < Infinity ? [{ kind, isOverCoals: fire !== undefined, atS }] : [];
    }),
    why: tellingMoments(seen, Infinity).map((atS) => ({ atS, said: explainPiece(seen, atS) })),
    ledger: { timesS: seen.timesS, heat: seen.heat },
  };
}

let lastFormulas: { key: string; reports: ReturnType<typeof formulaReports> } | undefined;

/** A moved stage changes no sauce: its simmer is not reckoned again at every step of a hand. */
function formulasOf(cook: Cook): ReturnType<typeof formulaReports> {
  const key = JSON.stringify([cook.formulas, cook.place?.altitude, cook.weather?.air]);
  if (lastFormulas?.key !== key) lastFormulas = { key, reports: formulaReports(cook) };
  return lastFormulas.reports;
}

answerAsks<Ask, SteppingAnswer>((ask) => {
  switch (ask.kind) {
    case 'foresee':
      return previewReport(ask.cook, forecast(ask.cook, ask.members), formulasOf(ask.cook));
    case 'inside':
      return inside(ask);
    case 'closer':
      return closer(ask.cook, ask.pieceId);
  }
});
