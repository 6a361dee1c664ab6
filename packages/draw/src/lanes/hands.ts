import { line, type Mark, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { HandLane, JobBox, LaneJob, LanePlace } from './data.ts';

const ROW = { wide: 24, narrow: 18 };
const BOX = 14;
const TOP = { wide: 7, narrow: 28 };
const LEAST_BOX = 5;
/** With more rows than this the fullest hours have numbers in place of words. */
const MOST_ROWS = 14;
const GAP = 8;
/** Words beside a box stand off by this much [px]. */
const OFF = 4;

/** Which side of its box the words of a job stand on. */
type Side = 'right' | 'left';

interface PlacedJob {
  readonly job: LaneJob;
  readonly box: JobBox;
  readonly side: Side;
  readonly words: string;
}

interface Taken {
  readonly from: number;
  readonly to: number;
}

interface Way extends Taken {
  readonly side: Side;
  readonly words: string;
}

/** What a box and its words take of a row on each side where they may stand; words never reach over the table. */
function waysOf(job: LaneJob, words: string, x: number, width: number, place: LanePlace): Way[] {
  const { axis, edge, tableS } = place;
  const wide = widthOf(words) + OFF;
  const isBefore = job.toS <= tableS;
  const least = isBefore ? axis.x0 : axis.x(tableS) + GAP;
  const most = isBefore ? axis.x(tableS) - GAP : edge;
  const right = { side: 'right' as const, words, from: x, to: x + width + wide };
  const left = { side: 'left' as const, words, from: x - wide, to: x + width };
  return [right, left].filter(({ from, to, side }) => (side === 'left' ? from >= least : to <= most));
}

/** Puts each job into the first row in which neither its box nor its words touch another's. */
function inRows(jobs: readonly LaneJob[], place: LanePlace): PlacedJob[] {
  const { axis, y, isNarrow } = place;
  const rows: Taken[][] = [];
  const row = isNarrow ? ROW.narrow : ROW.wide;
  const top = y + (isNarrow ? TOP.narrow : TOP.wide);
  const gap = isNarrow ? GAP / 2 : GAP;
  const isFree = (taken: readonly Taken[], way: Taken) =>
    taken.every((one) => one.to + gap <= way.from || way.to + gap <= one.from);
  return jobs.map((job) => {
    const x = axis.x(Math.max(job.fromS, axis.fromS));
    const width = Math.max(LEAST_BOX, axis.x(Math.min(job.toS, axis.toS)) - x);
    const inFull = isNarrow ? [] : waysOf(job, job.words, x, width, place);
    const number = String(job.number);
    const numbered = waysOf(job, number, x, width, place);
    if (numbered.length === 0) {
      // Hemmed in between the table and an end of the axis: told all the same.
      numbered.push({ side: 'left', words: number, from: x - OFF - widthOf(number), to: x + width });
    }
    let ways = inFull.length > 0 ? inFull : numbered;
    const free = (taken: readonly Taken[]) => ways.some((way) => isFree(taken, way));
    let at = rows.findIndex(free);
    if (at < 0 && inFull.length > 0 && rows.length >= MOST_ROWS) {
      // Its words stand in the list of jobs: a number keeps the lane within one look.
      ways = numbered;
      // Below the others, whose words need the room beside it.
      at = rows.findLastIndex(free);
    }
    if (at < 0) at = rows.push([]) - 1;
    const way = ways.find((one) => isFree(rows[at]!, one))!;
    rows[at]!.push(way);
    const { side, words } = way;
    return { job, side, words, box: { id: job.id, x, y: top + at * row, width, height: BOX } };
  });
}

/** How far a job may move alone: from its earliest start to the end it would have at its latest. */
function room({ job, box }: PlacedJob, { axis }: LanePlace): Mark[] {
  if (job.canFromS === undefined || job.canToS === undefined || !(job.canToS > job.canFromS)) return [];
  const a = axis.x(Math.max(axis.fromS, job.canFromS));
  const b = axis.x(Math.min(axis.toS, job.canToS + (job.toS - job.fromS)));
  const y = box.y + BOX + 3.5;
  if (!job.isOpen) return [line(a, y, b, y, 'rule0')];
  return [
    line(a, y, b, y, 'range'),
    line(a, y - 3.5, a, y + 3.5, 'range1'),
    line(b, y - 3.5, b, y + 3.5, 'range1'),
  ];
}

function jobWords({ job, box, side, words }: PlacedJob): Mark {
  const isLeft = side === 'left';
  const x = isLeft ? box.x - OFF : box.x + box.width + OFF;
  const anchor = isLeft ? 'end' : 'start';
  const className = job.isOpen ? 'ink strong' : 'ink';
  return text(x, box.y + 11.5, words, { anchor, className });
}

function jobMarks(placed: PlacedJob, place: LanePlace): Mark[] {
  const { job, box } = placed;
  const was =
    job.wasS === undefined ? [] : [rect(place.axis.x(job.wasS), box.y, box.width, box.height, 'was')];
  const pin = job.isPinned
    ? [line(box.x + box.width / 2, box.y - 4, box.x + box.width / 2, box.y + box.height + 1, 'range')]
    : [];
  return [
    ...room(placed, place),
    ...was,
    rect(box.x, box.y, box.width, box.height, job.isOpen ? 'jobOpen' : 'jobBox'),
    ...pin,
    jobWords(placed),
  ];
}

/** The work of one pair of hands: boxes with their words, and the hours of sleep under them. */
export function handLane(
  lane: HandLane,
  place: LanePlace,
  asleepWords: string,
): { readonly marks: Mark[]; readonly boxes: readonly JobBox[]; readonly height: number } {
  const { axis, y, isNarrow } = place;
  const placed = inRows(lane.jobs, place);
  const foot = placed.reduce((most, { box }) => Math.max(most, box.y + box.height), y + 30);
  const asleep = lane.asleep.filter(({ fromS, toS }) => toS > axis.fromS && fromS < axis.toS);
  const bedY = foot + (isNarrow ? 8 : 20);
  const bed = asleep.flatMap(({ fromS, toS }) => {
    const a = axis.x(Math.max(axis.fromS, fromS));
    const b = axis.x(Math.min(axis.toS, toS));
    const isRoom = !isNarrow && widthOf(asleepWords) + 4 < b - a;
    return [
      line(a + 2, bedY, b - 2, bedY, 'range'),
      ...(isRoom ? [text((a + b) / 2, bedY - 5, asleepWords, { anchor: 'middle' })] : []),
    ];
  });
  return {
    marks: [...bed, ...placed.flatMap((one) => jobMarks(one, place))],
    boxes: placed.map(({ box }) => box),
    height: (asleep.length > 0 ? bedY : foot) + 10 - y,
  };
}
