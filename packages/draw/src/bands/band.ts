import { isWaiting, type Range } from '@pitwright/model';
import { closed, group, line, type Mark, mark, type Point, path, rect } from '../mark.ts';
import type { Axis } from '../time/axis.ts';
import { rangeBar } from '../time/lines.ts';
import { stillIn } from './chance.ts';
import { hatchFill } from './hatches.ts';
import type { BandPiece } from './piece.ts';

/** Points along the outline of a band. */
const SAMPLES = 72;
/** Below this chance the taper has become the rule of a waiting piece. */
const GONE = 0.01;

interface Place {
  readonly y: number;
  readonly height: number;
}

const thinOf = (height: number): number => Math.max(5, height * 0.26);

/** Outline of what is still cooking: its height is the chance that the piece is still in it. */
function outline(axis: Axis, { y, height }: Place, onS: number, ready: Range, readyAtS?: number): Point[] {
  const middle = y + height / 2;
  const thin = thinOf(height);
  const fromS = Math.max(axis.fromS, onS);
  const untilS = readyAtS ?? axis.toS;
  const top: Point[] = [];
  for (let i = 0; i <= SAMPLES; i++) {
    const x = axis.x(fromS) + ((axis.x(untilS) - axis.x(fromS)) * i) / SAMPLES;
    const chance = readyAtS === undefined ? stillIn(axis.at(x), ready, axis.toS) : 1;
    const isGone = chance < GONE;
    top.push([x, middle - (isGone ? thin : thin + (height - thin) * chance) / 2]);
    if (isGone) break;
  }
  return [...top, ...top.map(([x, py]): Point => [x, 2 * middle - py]).reverse()];
}

/** A stage's fill: from its slanted left edge on to the right, to be clipped by the outline. */
function stageFill(axis: Axis, { y, height }: Place, start: Range, isFirst: boolean, fill: string): Mark[] {
  const lean = (atS: number): number => axis.x(Math.max(axis.fromS, Math.min(axis.toS, atS)));
  if (!Number.isFinite(start.p10)) return [];
  const left: [Point, Point] = [
    [lean(start.p10), y],
    [lean(start.p90), y + height],
  ];
  const shape = closed([...left, [axis.x1, y + height], [axis.x1, y]]);
  const body = path(shape, 'stage', { fill });
  if (isFirst) return [body];
  const edge = line(left[0][0], left[0][1], left[1][0], left[1][1], 'stageEdge');
  return [path(shape, 'laneBack'), body, edge];
}

/** Thin rules where the piece waits: rest by dashes, hold by lines, to the table. */
function waiting(axis: Axis, { y, height }: Place, piece: BandPiece, untilS: number, id: string): Mark[] {
  const stages = piece.stages.filter((stage) => isWaiting(stage.kind));
  const thin = thinOf(height);
  const middle = y + height / 2;
  return stages.flatMap((stage, i) => {
    const startS = i === 0 ? (piece.readyAtS ?? piece.ready.p10) : stage.start.p50;
    const endS = stages[i + 1]?.start.p50 ?? untilS;
    if (!(startS < endS) || !Number.isFinite(startS)) return [];
    const left = axis.x(Math.max(axis.fromS, startS));
    const width = axis.x(Math.min(endS, axis.toS)) - left;
    if (!(width > 0)) return [];
    return [
      rect(left, middle - thin / 2, width, thin, 'stage', { fill: hatchFill(id, piece.letter, stage.kind) }),
      rect(left, middle - thin / 2, width, thin, 'stageOutline'),
    ];
  });
}

/** Runs off the edge of the page: dashes where a share never gets there. */
function openEnd(axis: Axis, { y, height }: Place, neverShare: number): Mark[] {
  const thin = thinOf(height);
  const half = (thin + (height - thin) * neverShare) / 2;
  const middle = y + height / 2;
  return [
    line(axis.x1, middle - half, axis.x1 + 8, middle - half, 'open'),
    line(axis.x1, middle + half, axis.x1 + 8, middle + half, 'open'),
  ];
}

/**
 * The band of one piece: its height is the chance that it is still in that stage; it tapers where the bite is
 * expected and thins to a rule while it waits. Stage changes to come are slanted edges, the steeper the surer.
 */
export function band(
  axis: Axis,
  place: Place,
  piece: BandPiece,
  { id, tableS }: { id: string; tableS: number },
): Mark[] {
  const { y, height } = place;
  const clip = `${id}-${piece.letter}-clip`;
  const shape = closed(outline(axis, place, piece.onS, piece.ready, piece.readyAtS));
  const cooking = piece.stages.filter((stage) => !isWaiting(stage.kind));
  const fills = cooking.flatMap((stage, i) =>
    stageFill(axis, place, stage.start, i === 0, hatchFill(id, piece.letter, stage.kind)),
  );
  const marks: Mark[] = [
    ...waiting(axis, place, piece, Math.min(tableS, axis.toS), id),
    mark('clipPath', { id: clip }, [path(shape, '')]),
    path(shape, 'laneBack'),
    group(fills, { clipPath: `url(#${clip})` }),
    path(shape, 'laneEdge'),
  ];
  if (piece.was) marks.push(path(closed(outline(axis, place, piece.was.onS, piece.was.ready)), 'was'));
  if (piece.readyAtS !== undefined) {
    marks.push(rect(axis.x(piece.readyAtS) - 4, y + height / 2 - 4, 8, 8, 'meas'));
  } else {
    const { p50 } = piece.ready;
    if (p50 >= axis.fromS && p50 <= axis.toS)
      marks.push(line(axis.x(p50), y + 1, axis.x(p50), y + height - 1, 'median'));
    marks.push(...rangeBar(axis, piece.ready, y + height + 4));
    if (piece.ready.neverShare > 0) marks.push(...openEnd(axis, place, piece.ready.neverShare));
  }
  for (const atS of piece.measuredAtS ?? [])
    if (atS >= axis.fromS && atS <= axis.toS)
      marks.push(rect(axis.x(atS) - 3.5, y + height / 2 - 3.5, 7, 7, 'meas'));
  return marks;
}
