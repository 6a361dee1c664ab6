import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { flat, line, type Mark } from '../mark.ts';
import { BODY, text, wrapped } from '../text.ts';
import { type Axis, foldedAxis } from '../time/axis.ts';
import { frame, RAIL } from '../time/frame.ts';
import type { Voice } from '../voice.ts';
import type { JobBox, LanesData } from './data.ts';
import { handLane } from './hands.ts';
import { roomLane } from './rooms.ts';

/** The lanes of the run sheet; what can be taken hold of stands at `boxes`. */
export interface LanesDrawing extends Drawing {
  readonly axis: Axis;
  readonly boxes: readonly JobBox[];
}

const LEFT = 104;
const RIGHT = { wide: 66, narrow: 24 };
const TAIL_S = { wide: 4500, narrow: 2400 };
const FOLD = { wide: 1 / 3, narrow: 1 / 5 };

interface Lane {
  readonly name: string;
  readonly remark: string;
  readonly y: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

function lanesOf(data: LanesData, axis: Axis, width: number, narrow: boolean) {
  const lanes: Lane[] = [];
  const boxes: JobBox[] = [];
  let y = RAIL.foot;
  for (const hand of data.hands) {
    const drawn = handLane(
      hand,
      { axis, y, isNarrow: narrow, tableS: data.tableS, edge: width },
      data.asleepWords,
    );
    lanes.push({ ...hand, y, height: drawn.height, marks: drawn.marks });
    boxes.push(...drawn.boxes);
    y += drawn.height;
  }
  for (const room of data.rooms) {
    const drawn = roomLane(
      room,
      { axis, y, isNarrow: narrow, tableS: data.tableS, edge: width },
      data.fullWords,
    );
    const height = narrow ? drawn.height : Math.max(drawn.height, 52);
    lanes.push({ ...room, y, height, marks: drawn.marks });
    y += height;
  }
  return { lanes, boxes, foot: y };
}

function laneName(
  { name, remark, y }: Lane,
  i: number,
  { beforeX, width, narrow }: { beforeX: number; width: number; narrow: boolean },
): Mark[] {
  const rule = i > 0 ? [line(0, y, width, y, 'rule0')] : [];
  if (narrow)
    return [
      ...rule,
      text(beforeX, y + 20, name, { size: BODY, anchor: 'end', className: 'ink strong halo' }),
    ];
  return [
    ...rule,
    text(0, y + 20, name, { size: BODY, className: 'ink strong' }),
    ...wrapped(remark, LEFT - 16).map((words, k) => text(0, y + 38 + k * 16, words, { className: 'ink2' })),
  ];
}

/** All the work of the days on the axis that ends at the table: hands, then what holds room. */
export function lanesChart(data: LanesData, setting: Setting, voice: Voice): LanesDrawing {
  const { width } = setting;
  const narrow = isNarrow(width);
  const axis = foldedAxis(
    narrow ? 0 : LEFT,
    width - (narrow ? RIGHT.narrow : RIGHT.wide),
    data.fromS,
    data.untilS + (narrow ? TAIL_S.narrow : TAIL_S.wide),
    data.quiet,
    narrow ? FOLD.narrow : FOLD.wide,
  );
  const { lanes, boxes, foot } = lanesOf(data, axis, width, narrow);
  const { behind, before } = frame(axis, voice, {
    ...data,
    tableWords: narrow
      ? voice.clock(data.tableS)
      : voice.say({ id: 'draw.table', params: { time: voice.clock(data.tableS) } }),
    width,
    height: foot - RAIL.foot,
    isShort: narrow,
    words: lanes.flatMap((lane) => flat(lane.marks)).filter((mark) => mark.tag === 'text'),
  });
  const jobs = data.hands.flatMap((hand) => hand.jobs.map((job) => ({ hand, job })));
  return {
    width,
    height: foot,
    axis,
    boxes,
    marks: [
      ...behind,
      ...lanes.flatMap((lane, i) => [
        ...lane.marks,
        ...laneName(lane, i, { beforeX: axis.x(data.tableS) - 8, width, narrow }),
      ]),
      line(axis.x0, foot, axis.x1, foot, 'rule1'),
      ...before,
    ],
    sentence: voice.say({
      id: 'draw.lanes',
      params: { jobs: jobs.length, hands: data.hands.length, table: voice.clock(data.tableS) },
    }),
    table: {
      head: ['when', 'job', 'hands', 'may-move'].map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: jobs
        .sort((a, b) => a.job.fromS - b.job.fromS)
        .map(({ hand, job }) => [
          `${voice.day(job.fromS)} ${voice.clockRange(job.fromS, job.toS)}`,
          job.words,
          hand.name,
          job.canFromS !== undefined && job.canToS !== undefined && job.canToS > job.canFromS
            ? voice.clockRange(job.canFromS, job.canToS)
            : '',
        ]),
    },
  };
}
