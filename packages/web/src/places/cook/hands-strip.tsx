import type { Axis } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { useWords } from '../../words.tsx';
import { secondsOf } from './band-data.ts';

const ROW = 17;
const MOST_ROWS = 7;
const TOP = 8;
/** Mean advance of a character at 13.5 px [px]. */
const ADVANCE = 6.9;
const LEAST_WIDTH = 4;

interface Placed {
  readonly key: string;
  readonly x: number;
  readonly width: number;
  readonly words: string;
  readonly isLeft: boolean;
  readonly row: number;
  readonly isShort: boolean;
}

/** Puts each job in the first row in which neither its bar nor its words touch another's. */
function inRows(
  jobs: readonly { key: string; x: number; width: number; words: string }[],
  right: number,
): Placed[] {
  const ends: number[] = [];
  return jobs.map((job) => {
    const wide = job.words.length * ADVANCE + 6;
    const isLeft = job.x + job.width + wide > right;
    const from = isLeft ? job.x - wide : job.x;
    const to = isLeft ? job.x + job.width : job.x + job.width + wide;
    let row = ends.findIndex((end) => end + 6 <= from);
    if (row < 0 && ends.length < MOST_ROWS) row = ends.length;
    if (row >= 0) {
      ends[row] = to;
      return { ...job, isLeft, row, isShort: false };
    }
    // No room for the words: the bar alone, in the emptiest row.
    const bare = ends.indexOf(Math.min(...ends));
    ends[bare] = Math.max(ends[bare]!, job.x + job.width);
    return { ...job, isLeft, row: bare, isShort: true };
  });
}

/** The work of the hands on the axis of the bands: each job a small bar where it stands, its words beside it. */
export function HandsStrip(props: { cook: Cook; plan: CookPlan; axis: Axis; width: number }) {
  const { text } = useWords();
  const { cook, plan, axis, width } = props;
  if (width < NARROW_PX) return null;
  const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
  const jobs = plan.placed
    .filter((placed) => placed.handIds.length > 0)
    .flatMap((placed) => {
      const task = tasks.get(placed.taskId);
      const from = secondsOf(placed.startAt);
      if (!task || from < axis.fromS || from > axis.toS) return [];
      const x = axis.x(from);
      const to = axis.x(Math.min(axis.toS, secondsOf(placed.endAt)));
      const letters = cook.pieces
        .filter((piece) => task.pieceIds.includes(piece.id))
        .map((piece) => piece.letter);
      return [
        {
          key: placed.taskId,
          x,
          width: Math.max(LEAST_WIDTH, to - x),
          words: text('web.job', { kind: task.kind, letters: letters.join(' ') }),
        },
      ];
    });
  const placed = inRows(jobs, axis.x1);
  const rows = placed.reduce((most, job) => Math.max(most, job.row + 1), 1);
  const height = TOP + rows * ROW + 8;
  return (
    <div className="drawing hands" style={{ width, height }}>
      <svg
        role="img"
        aria-label={text('web.hands.sentence', { count: jobs.length })}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
      >
        <line x1={0} x2={width} y1={0.8} y2={0.8} className="rule1" />
        <text x={0} y={TOP + 14} fontSize={16} className="ink strong">
          {text('web.hands')}
        </text>
        <text x={0} y={TOP + 33} fontSize={13.5} className="ink2">
          {text('web.hands.count', { count: jobs.length })}
        </text>
        {placed.map((job) => {
          const y = TOP + job.row * ROW;
          return (
            <g key={job.key}>
              <line x1={job.x} x2={job.x} y1={y} y2={y + 13} className="tick" />
              <rect x={job.x} y={y + 3.5} width={job.width} height={6} className="job" />
              {job.isShort ? null : (
                <text
                  x={job.isLeft ? job.x - 5 : job.x + job.width + 4}
                  y={y + 11}
                  fontSize={13.5}
                  textAnchor={job.isLeft ? 'end' : 'start'}
                  className="ink"
                >
                  {job.words}
                </text>
              )}
            </g>
          );
        })}
      </svg>
    </div>
  );
}

const NARROW_PX = 640;
