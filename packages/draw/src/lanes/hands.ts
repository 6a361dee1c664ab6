import { line, type Mark, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { HandLane, JobBox, LaneJob, LanePlace } from './data.ts';

const ROW = { wide: 24, narrow: 24 };
const BOX = 14;
const TOP = { wide: 7, narrow: 28 };
const LEAST_BOX = 5;
const GAP = 8;
/** Words beside a box stand off by this much [px]. */
const OFF = 4;

interface PlacedJob {
  readonly job: LaneJob;
  readonly box: JobBox;
  readonly isLeft: boolean;
  readonly hasWords: boolean;
}

/** Puts each job into the first row in which neither its box nor its words touch another's. */
function inRows(jobs: readonly LaneJob[], { axis, y, isNarrow }: LanePlace): PlacedJob[] {
  const ends: number[] = [];
  const row = isNarrow ? ROW.narrow : ROW.wide;
  const top = y + (isNarrow ? TOP.narrow : TOP.wide);
  return jobs.map((job) => {
    const x = axis.x(Math.max(job.fromS, axis.fromS));
    const width = Math.max(LEAST_BOX, axis.x(Math.min(job.toS, axis.toS)) - x);
    const wide = isNarrow ? 0 : widthOf(job.words) + OFF;
    const isLeft = x + width + wide > axis.x1;
    const from = isLeft ? x - wide : x;
    const to = isLeft ? x + width : x + width + wide;
    let at = ends.findIndex((end) => end + (isNarrow ? 1 : GAP) <= from);
    if (at < 0) at = ends.length;
    ends[at] = to;
    return {
      job,
      isLeft,
      hasWords: !isNarrow,
      box: { id: job.id, x, y: top + at * row, width, height: BOX },
    };
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

function jobMarks(placed: PlacedJob, place: LanePlace): Mark[] {
  const { job, box, isLeft, hasWords } = placed;
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
    ...(hasWords
      ? [
          text(isLeft ? box.x - OFF : box.x + box.width + OFF, box.y + 11.5, job.words, {
            anchor: isLeft ? 'end' : 'start',
            className: job.isOpen ? 'ink strong' : 'ink',
          }),
        ]
      : []),
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
      ...(isRoom ? [text((a + b) / 2, bedY - 5, asleepWords, { anchor: 'middle', className: 'ink2' })] : []),
    ];
  });
  return {
    marks: [...bed, ...placed.flatMap((one) => jobMarks(one, place))],
    boxes: placed.map(({ box }) => box),
    height: (asleep.length > 0 ? bedY : foot) + 10 - y,
  };
}
