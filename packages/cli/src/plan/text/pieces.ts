import type { PlannedPiece, PlannedStage } from '@pitwright/engine';
import { isWaiting, type Piece, type Range, type Said } from '@pitwright/model';
import { ownNotices, type PlanReport, pieceMass, pieceName, pieceOf, sharedNotices } from '@pitwright/paper';
import { listed, type Printer, say } from '@pitwright/words';
import { closerOf, closerSaid } from '../closer.ts';
import { eaterText } from '../eater.ts';
import { type Column, heading, paragraph, row } from './layout.ts';
import { noticeText } from './notices.ts';

const STAGES: readonly Column[] = [
  { width: 12 },
  { width: 9 },
  { width: 11 },
  { width: 28 },
  { width: 10 },
  { width: 11 },
];

const degrees = (range: Range, print: Printer): string =>
  Number.isFinite(range.p10) && Number.isFinite(range.p90)
    ? print.temperatureRangeC(range.p10, range.p90)
    : '';

/** `A  Rack for the camera: loin back rack, 1.15 kg, 26 mm, middle of the grate` */
function title(piece: Piece, print: Printer): string {
  const tell = (said: Said): string => say(said, print);
  const cut = print.cut(piece.cut, piece.count);
  const details = [
    piece.name ? cut : undefined,
    pieceMass(piece, print),
    piece.thickness && print.quantity(piece.thickness),
    piece.bone ? tell({ id: 'plan.piece.bone-in' }) : undefined,
    piece.place ? tell({ id: 'plan.piece.place', params: { place: piece.place } }) : undefined,
  ].filter(Boolean);
  return `${piece.letter}  ${pieceName(piece, print)}: ${details.join(', ')}`;
}

/** What ends a stage: by sign; of a rest or hold, by its time or the table. */
function untilWords(stage: PlannedStage, told: Piece['stages'][number] | undefined, print: Printer): string {
  if (!isWaiting(stage.kind)) return stage.sign ? say(stage.sign, print) : '';
  return told?.until.by === 'clock'
    ? say({ id: 'plan.stage.until-time', params: { after: told.until.after } }, print)
    : say({ id: 'plan.stage.until-table' }, print);
}

const placeOf = (told: Piece['stages'][number] | undefined): { readonly place?: string } =>
  told?.direct ? { place: 'coals' } : told?.in ? { place: told.in } : {};

function stageRow(
  stage: PlannedStage,
  told: Piece['stages'][number] | undefined,
  onAt: string,
  print: Printer,
) {
  const inS = (Date.parse(stage.startAt) - Date.parse(onAt)) / 1000;
  return [
    `${print.shortWeekday(stage.startAt)} ${print.clock(stage.startAt)}`,
    inS > 0 ? print.elapsedS(inS) : say({ id: 'plan.piece.on' }, print),
    say({ id: 'plan.stage', params: { kind: stage.kind, ...placeOf(told) } }, print),
    untilWords(stage, told, print),
    degrees(stage.coreC, print),
    degrees(stage.surfaceC, print),
  ];
}

/** When the bite comes, as a range with its middle. */
function biteSaid(planned: PlannedPiece): Said {
  const { p10, p50, p90 } = planned.ready;
  const bite = planned.bite;
  if (p10 && p50 && p90) return { id: 'plan.piece.bite', params: { bite, from: p10, to: p90, middle: p50 } };
  if (p10 && p50) return { id: 'plan.piece.bite-open', params: { bite, from: p10, middle: p50 } };
  if (p10) return { id: 'plan.piece.bite-late', params: { bite, from: p10 } };
  return { id: 'plan.piece.bite-never', params: { bite } };
}

const MISSES = [
  ['late', 'plan.piece.miss-late'],
  ['heldTooLong', 'plan.piece.miss-held-too-long'],
  ['tooSoft', 'plan.piece.miss-too-soft'],
  ['never', 'plan.piece.miss-never'],
] as const;
/** Rarer misses are not counted by so few members. */
const WORTH_SAYING = 0.025;

/** How sure the piece alone is, by what misses first; a share that never gets there with what would end it. */
function chanceSaid(planned: PlannedPiece, piece: Piece, members: number): Said[] {
  const said: Said[] = [{ id: 'plan.piece.alone', params: { share: planned.chanceOnTime, members } }];
  for (const [key, id] of MISSES)
    if (planned.misses[key] >= WORTH_SAYING)
      said.push({ id, params: { share: planned.misses[key], members } });
  if (planned.misses.never >= WORTH_SAYING) {
    const isWrapped = piece.stages.some((stage) => stage.kind === 'foil' || stage.kind === 'paper');
    said.push({ id: isWrapped ? 'plan.piece.never-wrapped' : 'plan.piece.never-bare' });
  }
  return said;
}

function pieceText(
  planned: PlannedPiece,
  report: PlanReport,
  further: readonly Said[],
  print: Printer,
): string[] {
  const piece = pieceOf(report.cook, planned.pieceId);
  const tell = (said: Said): string => say(said, print);
  const wait =
    planned.waitS.p90 > 0
      ? [tell({ id: 'plan.piece.wait', params: { low: planned.waitS.p10, high: planned.waitS.p90 } })]
      : [];
  const [alone, ...rest] = chanceSaid(planned, piece, report.plan.members).map(tell);
  const misses = rest.filter((words) => !words.endsWith('.'));
  const ends = rest.filter((words) => words.endsWith('.'));
  const latest =
    planned.latestOnAt && planned.latestOnAt !== planned.onAt
      ? [tell({ id: 'plan.piece.latest', params: { at: planned.latestOnAt } })]
      : [];
  const foreseen = report.forecast.pieces.find((one) => one.pieceId === piece.id);
  const eater = foreseen && eaterText(report, foreseen, print);
  const stages = planned.stages.map((stage, i) => stageRow(stage, piece.stages[i], planned.onAt, print));
  return [
    '',
    ...paragraph(title(piece, print), 0, 3),
    ...stages.flatMap((cells) => row(cells, STAGES, 3)),
    ...paragraph(`${[tell(biteSaid(planned)), ...wait].join(', ')}.`, 3),
    ...paragraph([`${[alone, ...misses, ...latest].join('; ')}.`, ...ends].join(' '), 3),
    ...(eater ? paragraph(eater, 3) : []),
    ...further.flatMap((said) => paragraph(tell(said), 3)),
    ...(piece.note ? paragraph(piece.note, 3) : []),
    ...ownNotices(report.notices, piece.id).flatMap((said) => noticeText(said, print, 3)),
  ];
}

/** Every piece: when it goes on, its stages by sign and by clock, the bite as a range, how sure. */
export function piecesText(report: PlanReport, print: Printer): string[] {
  const tell = (id: string): string => say({ id }, print);
  const head = ['clock', 'in', 'stage', 'until', 'middle', 'surface'].map((name) =>
    tell(`plan.stage.head-${name}`),
  );
  const closer = closerOf(report);
  return [
    ...heading(tell('plan.section.pieces')),
    ...row(head, STAGES, 3),
    ...report.plan.pieces.flatMap((planned) =>
      pieceText(planned, report, closerSaid(closer.get(planned.pieceId)!, planned.onAt), print),
    ),
    '',
    ...paragraph(tell('plan.stage.at-its-end')),
    ...sharedNotices(report.notices).flatMap(({ notice, pieceIds }) =>
      noticeText(notice, print, 0, listed(pieceIds.map((id) => pieceOf(report.cook, id).letter))),
    ),
  ];
}
