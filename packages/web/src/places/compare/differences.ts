import type { CookPlan } from '@pitwright/engine';
import type { Cook, Piece } from '@pitwright/model';
import { biteName, capital, type Printer, stageName } from '@pitwright/words';
import type { Foresight } from '../../foresee/messages.ts';
import type { Words } from '../../words.tsx';
import { pieceName, rangeOf, secondsOf } from '../cook/band-data.ts';

/** One of the two, printed on its own wall clock. */
export interface Side {
  readonly cook: Cook;
  /** Its name, with what tells it from others of that name. */
  readonly name: string;
  readonly foresight: Foresight | undefined;
  readonly print: Printer;
}

export interface Difference {
  readonly name: string;
  readonly a: string;
  readonly b: string;
}

type Text = Words['text'];
type Figures = ReadonlyMap<string, string>;

/** What stands in both or in one of them, and is not the same. */
function differing(a: Figures, b: Figures, text: Text): Difference[] {
  const none = text('web.two.none');
  return [...new Set([...a.keys(), ...b.keys()])].flatMap((name) => {
    const [ofA, ofB] = [a.get(name) ?? none, b.get(name) ?? none];
    return ofA === ofB ? [] : [{ name, a: ofA, b: ofB }];
  });
}

const stagesOf = (piece: Piece, print: Printer): string =>
  piece.stages
    .map(({ kind, until, direct }) => {
      const name = stageName(kind, direct !== undefined);
      return until.by === 'clock' ? `${name} ${print.quantity(until.after)}` : name;
    })
    .join(', ');

/** Letters that stand in both: of a piece that only one has, its meat alone is told. */
const sharedLetters = (a: Side, b: Side): ReadonlySet<string> =>
  new Set(
    a.cook.pieces
      .map(({ letter }) => letter)
      .filter((one) => b.cook.pieces.some(({ letter }) => letter === one)),
  );

function told({ cook, print }: Side, shared: ReadonlySet<string>, text: Text): Figures {
  const figures = new Map<string, string>([
    [text('web.two.table'), `${print.clock(cook.table.at)}–${print.clock(cook.table.until)}`],
    [text('web.two.people'), String(cook.guests.adults + cook.guests.children)],
    [text('web.two.pit'), `${cook.pit.name}, ${print.quantity(cook.pit.temperature)}`],
    [text('web.two.weather'), cook.weather?.words ?? text('web.kept.untold')],
    [text('web.two.formulas'), cook.formulas.map(({ name }) => name).join(', ') || text('web.two.none')],
  ]);
  for (const piece of cook.pieces) {
    const { letter } = piece;
    const mass = piece.mass ? `\u00a0×\u00a0${print.quantity(piece.mass)}` : '';
    figures.set(text('web.two.meat', { letter }), `${pieceName(piece, print)}, ${piece.count}${mass}`);
    if (!shared.has(letter)) continue;
    figures.set(text('web.two.bite', { letter }), biteName(piece.bite));
    figures.set(text('web.two.stages', { letter }), stagesOf(piece, print));
  }
  return figures;
}

/** So long before the table, or after it. */
function beforeTable(plan: CookPlan, atS: number, print: Printer, text: Text): string {
  const beforeS = secondsOf(plan.table.at) - atS;
  const time = print.durationS(Math.abs(beforeS));
  return beforeS >= 0 ? time : text('web.two.late', { time });
}

function comes({ foresight, print }: Side, shared: ReadonlySet<string>, text: Text): Figures {
  const figures = new Map<string, string>();
  if (!foresight) return figures;
  const { plan, forecast, members } = foresight;
  figures.set(text('web.two.chance'), print.chance(plan.chanceAllOnTime, members));
  for (const piece of plan.pieces) {
    const { letter } = piece;
    if (!shared.has(letter)) continue;
    const ready = rangeOf(piece.ready);
    const isSure = Number.isFinite(ready.p10) && Number.isFinite(ready.p90);
    figures.set(text('web.two.on', { letter }), beforeTable(plan, secondsOf(piece.onAt), print, text));
    figures.set(
      text('web.two.ready', { letter }),
      isSure
        ? text('web.two.ready.value', {
            early: beforeTable(plan, ready.p10, print, text),
            late: beforeTable(plan, ready.p90, print, text),
          })
        : text('web.two.never'),
    );
    figures.set(text('web.two.chance-of', { letter }), print.chance(piece.chanceOnTime, members));
    const chances = forecast.pieces.find(({ pieceId }) => pieceId === piece.pieceId)?.biteChances ?? {};
    const [word, share] = Object.entries(chances).reduce(
      (best, one) => (one[1] > best[1] ? one : best),
      ['', 0],
    );
    if (word)
      figures.set(
        text('web.two.word', { letter }),
        text('web.two.word.value', {
          word: biteName(word as Parameters<typeof biteName>[0]),
          chance: print.chance(share, members),
        }),
      );
  }
  const jobs = plan.placed.filter((placed) => placed.handIds.length > 0);
  figures.set(text('web.two.jobs'), String(jobs.length));
  figures.set(text('web.two.work'), print.durationS(plan.handWorkS));
  figures.set(text('web.two.night'), capital(print.durationS(plan.nightWorkS)));
  return figures;
}

export const toldOtherwise = (a: Side, b: Side, text: Text): Difference[] =>
  differing(told(a, sharedLetters(a, b), text), told(b, sharedLetters(a, b), text), text);

export const comesOtherwise = (a: Side, b: Side, text: Text): Difference[] =>
  differing(comes(a, sharedLetters(a, b), text), comes(b, sharedLetters(a, b), text), text);
