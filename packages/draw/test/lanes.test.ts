/** The lanes of the run sheet: no job lies on another, nothing takes room that something else holds. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hillsChart, type LanesData, lanesChart, toSvg } from '../src/index.ts';
import { flat } from '../src/mark.ts';
import { boxOf } from '../src/text.ts';
import { plainVoice, TABLE_S } from './sample.ts';

const HOUR_S = 3600;
const setting = { width: 1200, id: 't' };

const empty: LanesData = {
  hands: [],
  rooms: [],
  tableS: TABLE_S,
  untilS: TABLE_S + 1800,
  fromS: TABLE_S - 20 * HOUR_S,
  nights: [],
  quiet: [],
  asleepWords: 'asleep',
  fullWords: 'full',
};

const jobs = fc.array(
  fc.record({ startMin: fc.integer({ min: -1180, max: 60 }), lastsMin: fc.integer({ min: 1, max: 120 }) }),
  { minLength: 1, maxLength: 40 },
);
const laneJobs = (drawn: readonly { startMin: number; lastsMin: number }[]) =>
  drawn
    .map(({ startMin, lastsMin }, i) => ({
      id: `job-${i}`,
      fromS: TABLE_S + startMin * 60,
      toS: TABLE_S + (startMin + lastsMin) * 60,
      words: `Wrap B ${i}`,
    }))
    .sort((a, b) => a.fromS - b.fromS)
    .map((job, i) => ({ ...job, number: i + 1 }));

const touches = (
  a: { x0: number; x1: number; y0: number; y1: number },
  b: { x0: number; x1: number; y0: number; y1: number },
): boolean => a.x0 < b.x1 - 0.2 && b.x0 < a.x1 - 0.2 && a.y0 < b.y1 && b.y0 < a.y1;

describe('hands', () => {
  test('each job has its words or its number; none of them and no box lie on those of another', () => {
    fc.assert(
      fc.property(jobs, fc.constantFrom(362, 724, 1200), (drawn, width) => {
        const drawing = lanesChart(
          { ...empty, hands: [{ name: 'You', remark: '', jobs: laneJobs(drawn), asleep: [] }] },
          { ...setting, width },
          plainVoice,
        );
        const top = Math.min(...drawing.boxes.map(({ y }) => y));
        const words = flat(drawing.marks)
          .filter((mark) => mark.tag === 'text' && /^(Wrap B )?\d+$/.test(mark.text ?? ''))
          .map(boxOf)
          .filter(({ y1 }) => y1 > top);
        expect(words.length).toBe(drawn.length);
        const boxes = drawing.boxes.map(({ x, y, width, height }) => ({
          x0: x,
          x1: x + width,
          y0: y,
          y1: y + height,
        }));
        const all = [...words, ...boxes];
        for (const [i, a] of all.entries())
          for (const b of all.slice(i + 1)) expect(touches(a, b)).toBe(false);
        expect(boxes.length).toBe(drawn.length);
      }),
      { numRuns: 60 },
    );
  });

  test('the words of what comes before the table do not reach over it', () => {
    const drawing = lanesChart(
      {
        ...empty,
        hands: [{ name: 'You', remark: '', asleep: [], jobs: laneJobs([{ startMin: -10, lastsMin: 6 }]) }],
      },
      setting,
      plainVoice,
    );
    const [words] = flat(drawing.marks).filter((mark) => mark.text?.startsWith('Wrap B'));
    expect(boxOf(words!).x1).toBeLessThan(drawing.axis.x(TABLE_S));
  });

  test('the room of an open job reaches from its earliest start to the end of its latest', () => {
    const job = {
      ...laneJobs([{ startMin: -120, lastsMin: 10 }])[0]!,
      canFromS: TABLE_S - 150 * 60,
      canToS: TABLE_S - 90 * 60,
      isOpen: true,
    };
    const drawing = lanesChart(
      { ...empty, hands: [{ name: 'You', remark: '', asleep: [], jobs: [job] }] },
      setting,
      plainVoice,
    );
    const bar = flat(drawing.marks).find((mark) => mark.attributes.className === 'range')!;
    expect(Number(bar.attributes.x1)).toBeCloseTo(drawing.axis.x(job.canFromS), 0);
    expect(Number(bar.attributes.x2)).toBeCloseTo(drawing.axis.x(job.canToS + 600), 0);
  });
});

describe('rooms', () => {
  test('what is there at the same time lies on one another, never in one place', () => {
    const use = fc.record({
      fromH: fc.integer({ min: -18, max: -2 }),
      hours: fc.integer({ min: 1, max: 10 }),
      amount: fc.constantFrom(0.25, 0.5, 1),
    });
    fc.assert(
      fc.property(fc.array(use, { minLength: 1, maxLength: 10 }), (drawn) => {
        const uses = drawn.map(({ fromH, hours, amount }, i) => ({
          id: String(i),
          fromS: TABLE_S + fromH * HOUR_S,
          toS: TABLE_S + Math.min(0, fromH + hours) * HOUR_S,
          amount,
          words: '',
        }));
        const drawing = lanesChart(
          { ...empty, rooms: [{ name: 'Fridge', remark: '', look: 'cold', capacity: 3, uses }] },
          setting,
          plainVoice,
        );
        const bars = flat(drawing.marks)
          .filter((mark) => mark.attributes.className === 'dries')
          .map(({ attributes }) => ({
            x0: Number(attributes.x),
            x1: Number(attributes.x) + Number(attributes.width),
            y0: Number(attributes.y),
            y1: Number(attributes.y) + Number(attributes.height),
          }));
        expect(bars.length).toBe(uses.length);
        for (const [i, a] of bars.entries())
          for (const b of bars.slice(i + 1)) expect(touches(a, b)).toBe(false);
      }),
      { numRuns: 60 },
    );
  });
});

test('a hill is highest at its middle: what there is stands up, what is wanted hangs down', () => {
  const range = (p50: number) => ({ p10: p50 - 0.5, p50, p90: p50 + 0.5, neverShare: 0 });
  const drawing = hillsChart(
    {
      above: { range: range(6), words: 'there', rangeWords: '5.5–6.5' },
      below: { range: range(4), words: 'wanted', rangeWords: '3.5–4.5' },
      ticks: [{ at: 3, words: '3' }],
      from: 2,
      to: 8,
    },
    { width: 600, id: 'h' },
    plainVoice,
  );
  const peaks = flat(drawing.marks)
    .filter((mark) => mark.attributes.className === 'hillEdge')
    .map((mark) =>
      [...String(mark.attributes.d).matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(
        ([, x, y]) => [Number(x), Number(y)] as const,
      ),
    );
  const x = (at: number) => 8 + ((at - 2) / 6) * 584;
  const top = peaks[0]!.reduce((a, b) => (b[1] < a[1] ? b : a));
  const foot = peaks[1]!.reduce((a, b) => (b[1] > a[1] ? b : a));
  expect(Math.abs(top[0] - x(6))).toBeLessThan(584 / 96);
  expect(Math.abs(foot[0] - x(4))).toBeLessThan(584 / 96);
  expect(toSvg(drawing)).toContain('role="img"');
});
