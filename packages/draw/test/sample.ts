/** Invented data for the drawings' tests: no evidence of anything. Times are seconds since 1970 UTC. */
import type {
  BalanceScale,
  BandChartData,
  BandPiece,
  DepthTimeField,
  SimmerChart,
  SimmerWords,
  Voice,
} from '../src/index.ts';
import { sure } from '../src/index.ts';

const HOUR_S = 3600;
/** Sunday 12 September 2027, 12:00 UTC. */
const NOON_S = Date.UTC(2027, 8, 12, 12) / 1000;
export const TABLE_S = NOON_S + 1.5 * HOUR_S;

const two = (n: number): string => String(n).padStart(2, '0');
const clock = (atS: number): string => {
  const at = new Date(atS * 1000);
  return `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`;
};

/** Speaks in ids and plain figures, so that marks do not change when a message does. */
export const plainVoice: Voice = {
  say: ({ id, params }) => [id, ...Object.values(params ?? {})].join(' '),
  clock,
  clockRange: (from, to) => (from === to ? clock(from) : `${clock(from)}–${clock(to)}`),
  hour: (atS) => `${two(new Date(atS * 1000).getUTCHours())}:00`,
  shortHour: (atS) => String(new Date(atS * 1000).getUTCHours()),
  day: (atS) => ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][new Date(atS * 1000).getUTCDay()]!,
  wallMinutes: (atS) => Math.round((atS % (24 * HOUR_S)) / 60),
  duration: (s) => `${Math.round(s / 60)} min`,
  degrees: (c) => String(Math.round(c)),
  temperatureC: (c) => `${Math.round(c)} °C`,
  isolines: [10, 20, 30, 40, 50, 60, 70, 80, 90].map((celsius) => ({ celsius, figure: String(celsius) })),
  lengthM: (m) => `${Math.round(m * 1000)} mm`,
  chance: (share) => `${Math.round(share * 100)} %`,
};

const range = (p10: number, p50: number, p90: number, neverShare = 0) => ({ p10, p50, p90, neverShare });
const h = (hours: number): number => TABLE_S + hours * HOUR_S;

export const shoulder: BandPiece = {
  letter: 'A',
  name: 'Pork shoulder',
  remark: '3.6 kg',
  bite: 'pulls apart',
  onS: h(-15.5),
  stages: [
    { kind: 'bare', start: sure(h(-15.5)) },
    { kind: 'paper', start: range(h(-8), h(-7.2), h(-6.4)) },
    { kind: 'hold', place: 'box', start: range(h(-3.2), h(-2.6), h(-1.9)) },
  ],
  ready: range(h(-3.3), h(-2.7), h(-2)),
};

const rack = (letter: string, name: string, onH: number, readyH: number): BandPiece => ({
  letter,
  name,
  remark: '1.2 kg',
  bite: 'clean bite',
  onS: h(onH),
  stages: [
    { kind: 'bare', start: sure(h(onH)) },
    { kind: 'foil', start: range(h(onH + 2.2), h(onH + 2.5), h(onH + 2.9)) },
    { kind: 'glazed', start: range(h(onH + 3.6), h(onH + 4), h(onH + 4.3)) },
    { kind: 'rest', start: range(h(readyH - 0.2), h(readyH), h(readyH + 0.3)) },
  ],
  ready: range(h(readyH - 0.2), h(readyH), h(readyH + 0.3)),
});

export const pieces: readonly BandPiece[] = [
  shoulder,
  rack('B', 'Loin back rack, thick', -5.9, -1),
  rack('C', 'Loin back rack', -5.6, -0.9),
  rack('D', 'Whole spare rack', -6.4, -1.1),
  {
    letter: 'E',
    name: 'Chicken leg quarters',
    remark: '8',
    bite: 'tender',
    onS: h(-2.4),
    stages: [
      { kind: 'bare', start: sure(h(-2.4)) },
      { kind: 'rest', start: range(h(-0.7), h(-0.4), Infinity) },
    ],
    ready: range(h(-0.7), h(-0.4), Infinity, 0.15),
  },
];

export const cook: BandChartData = {
  pieces,
  tableS: TABLE_S,
  untilS: TABLE_S + 1200,
  nights: [{ sunsetS: h(-17.7), darkFromS: h(-17.2), darkToS: h(-6.9), sunriseS: h(-6.4) }],
  quiet: [{ fromS: h(-14), toS: h(-8.5) }],
};

/** A field that warms from the surface inwards and stands still for a while in the middle. */
export const inside: DepthTimeField = (() => {
  const timesS = Array.from({ length: 91 }, (_, i) => shoulder.onS + (i / 90) * 15 * HOUR_S);
  const depthShares = Array.from({ length: 13 }, (_, i) => i / 12);
  const temperaturesC = timesS.map((_, i) =>
    depthShares.map((share) => {
      const t = i / 90;
      const lag = 0.14 + 0.3 * share;
      return 4 + 90 * (1 - Math.exp(-Math.max(0, t - 0.02 * share) / lag));
    }),
  );
  return {
    letter: 'A',
    timesS,
    depthShares,
    temperaturesC,
    thicknessM: 0.056,
    bottom: 'middle' as const,
    frontM: timesS.map((_, i) => 0.004 * Math.min(1, i / 40)),
    bite: {
      depthShares: [0.1, 0.4, 0.7, 1],
      p10S: [h(-5), h(-4.4), h(-3.7), h(-3.3)],
      p50S: [h(-4.3), h(-3.6), h(-3), h(-2.7)],
      p90S: [h(-3.5), h(-2.9), h(-2.3), h(-2)],
      words: ['pulls apart', '10:10–11:30'],
    },
    stall: { fromS: h(-11), toS: h(-8.5), lowC: 69, highC: 73 },
    changes: [{ atS: h(-7.2), words: 'paper 06:20' }],
    measured: [{ atS: h(-10), depthShare: 0.96 }],
  };
})();

/** Three scales of an invented sauce, one of them running down. */
export const balance: readonly BalanceScale[] = [
  {
    name: 'sweet',
    shortName: 'sweet',
    unit: '% sugar',
    from: 0,
    to: 60,
    ticks: [0, 30, 60],
    value: 31,
    other: 39,
  },
  {
    name: 'sour',
    shortName: 'sour',
    unit: 'pH',
    from: 5,
    to: 3,
    ticks: [5, 4, 3],
    value: 3.6,
    doubt: [3.4, 3.8],
  },
  {
    name: 'thick, hot',
    shortName: 'hot',
    unit: 'Pa',
    from: 0,
    to: 20,
    ticks: [0, 10, 20],
    value: 7,
    wanted: [5, 9],
  },
].map((scale) => ({
  ...scale,
  print: (value: number) => String(Math.round(value * 10) / 10),
})) as BalanceScale[];

/** An invented simmer: 1,500 g losing 12 g a minute. */
export const simmer: SimmerChart = {
  moments: Array.from({ length: 20 }, (_, i) => ({
    timeS: i * 150,
    massG: 1500 - i * 30,
    level: 1 + i * 0.12,
    lowLevel: 0.8 + i * 0.1,
    highLevel: 1.2 + i * 0.14,
  })),
  fast: 0.85,
  slow: 1.15,
  target: { timeS: 1500, massG: 1200, level: 2.2 },
};

export const simmerWords: SimmerWords = {
  sentence: '25 minutes, 1,200 g left.',
  looks: ['runs', 'pours', 'coats a spoon', 'holds a line', 'spreads', 'stands'],
  massHead: 'g left',
  lookHead: 'hot, it',
  minutes: (timeS) => String(Math.round(timeS / 60)),
  minutesUnit: 'min',
  mass: (massG) => String(massG),
  target: '25 min',
  targetMass: '1,200 g left',
  head: ['time', 'left', 'look'],
};
