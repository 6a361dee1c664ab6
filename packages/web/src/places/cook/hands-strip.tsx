import { type Axis, widthOf } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { useWords } from '../../words.tsx';
import { secondsOf } from './band-data.ts';

const ROW = 17;
const MOST_ROWS = 8;
const TOP = 8;
const LEAST_WIDTH = 4;
/** Words stand off their bar, and what is beside them, by this much [px]. */
const OFF = 4;
const GAP = 6;

interface Bar {
  readonly key: string;
  readonly x: number;
  readonly width: number;
  readonly words: string;
}

interface Placed extends Bar {
  readonly side: 'right' | 'left' | 'none';
  readonly row: number;
}

/** Puts each job in the first row where neither its bar nor its words touch another's; those left over are strokes below. */
function inRows(bars: readonly Bar[], right: number): Placed[] {
  const rows: { from: number; to: number }[][] = Array.from({ length: MOST_ROWS }, () => []);
  const placed = bars.map((bar): Placed | Bar => {
    const wide = widthOf(bar.words) + OFF;
    const end = bar.x + bar.width;
    const sides = [
      { side: 'right' as const, from: bar.x, to: end + wide },
      { side: 'left' as const, from: bar.x - wide, to: end },
    ].filter(({ to }) => to <= right);
    for (const [row, taken] of rows.entries())
      for (const { side, from, to } of sides)
        if (taken.every((one) => one.to + GAP <= from || to + GAP <= one.from)) {
          taken.push({ from, to });
          return { ...bar, side, row };
        }
    return bar;
  });
  const bareRow = rows.findLastIndex((taken) => taken.length > 0) + 1;
  return placed.map((bar) => ('side' in bar ? bar : { ...bar, side: 'none', row: bareRow }));
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
  const count = plan.placed.filter((one) => one.handIds.length > 0).length;
  const placed = inRows(jobs, axis.x1);
  const rows = placed.reduce((most, job) => Math.max(most, job.row + 1), 1);
  const height = TOP + rows * ROW + 8;
  return (
    <div className="drawing hands" style={{ width, height }}>
      <svg
        role="img"
        aria-label={text('web.hands.sentence', { count })}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
      >
        <line x1={0} x2={width} y1={0.8} y2={0.8} className="rule1" />
        <text x={0} y={TOP + 14} fontSize={16} className="ink strong">
          {text('web.hands')}
        </text>
        <text x={0} y={TOP + 33} fontSize={13.5} className="ink2">
          {text('web.hands.count', { count })}
        </text>
        {placed.map((job) => {
          const y = TOP + job.row * ROW;
          return (
            <g key={job.key}>
              <line x1={job.x} x2={job.x} y1={y} y2={y + 13} className="tick" />
              {job.side === 'none' ? null : (
                <rect x={job.x} y={y + 3.5} width={job.width} height={6} className="job" />
              )}
              {job.side === 'none' ? null : (
                <text
                  x={job.side === 'left' ? job.x - OFF : job.x + job.width + OFF}
                  y={y + 11}
                  fontSize={13.5}
                  textAnchor={job.side === 'left' ? 'end' : 'start'}
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
