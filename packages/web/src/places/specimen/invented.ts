import {
  type BandChartData,
  type BandPiece,
  type DepthTimeField,
  type HeatLedger,
  sure,
} from '@pitwright/draw';
import type { Range } from '@pitwright/model';

/** Invented figures for the specimen alone: shapes to look at, evidence of nothing. */
const HOUR_S = 3600;
const TABLE_S = Date.UTC(2027, 8, 12, 12, 30) / 1000;
const before = (hours: number): number => TABLE_S - hours * HOUR_S;
const range = (p10: number, p50: number, p90: number, neverShare = 0): Range => ({
  p10: before(p10),
  p50: before(p50),
  p90: Number.isFinite(p90) ? before(p90) : Infinity,
  neverShare,
});

const shoulder: BandPiece = {
  letter: 'A',
  name: 'Shoulder',
  remark: '3.6 kg',
  bite: 'pulls apart',
  onS: before(15.5),
  stages: [
    { kind: 'bare', start: sure(before(15.5)) },
    { kind: 'paper', start: range(8, 7.3, 6.6) },
    { kind: 'hold', start: range(3.2, 2.6, 1.9) },
  ],
  ready: range(3.3, 2.7, 2),
};
const rack: BandPiece = {
  letter: 'B',
  name: 'Back racks',
  remark: '1.1 kg',
  bite: 'clean bite',
  onS: before(5),
  stages: [
    { kind: 'bare', start: sure(before(5)) },
    { kind: 'foil', start: range(2.9, 2.6, 2.3) },
    { kind: 'glazed', start: range(1.7, 1.5, 1.2) },
    { kind: 'rest', start: range(1.1, 0.8, 0.5) },
  ],
  ready: range(1.1, 0.8, 0.5),
  was: { onS: before(5), ready: range(0.8, 0.5, 0.1) },
};
const legs: BandPiece = {
  letter: 'E',
  name: 'Leg quarters',
  remark: '8',
  bite: 'tender',
  onS: before(2.2),
  stages: [
    { kind: 'bare', start: sure(before(2.2)) },
    { kind: 'rest', start: range(0.9, 0.5, Infinity) },
  ],
  ready: range(0.9, 0.5, Infinity, 0.12),
};

export const BANDS: BandChartData = {
  pieces: [shoulder, rack, legs],
  tableS: TABLE_S,
  untilS: TABLE_S + 1800,
  nowS: before(4.2),
  nights: [{ sunsetS: before(17.6), darkFromS: before(17.1), darkToS: before(6.9), sunriseS: before(6.4) }],
  quiet: [{ fromS: before(14), toS: before(8.5) }],
};

const steps = Array.from({ length: 100 }, (_, i) => i / 99);

export const INSIDE: DepthTimeField = {
  letter: 'A',
  timesS: steps.map((t) => shoulder.onS + t * 15 * HOUR_S),
  depthShares: steps.filter((_, i) => i % 9 === 0),
  temperaturesC: steps.map((t) =>
    steps
      .filter((_, i) => i % 9 === 0)
      .map((depth) => 4 + 92 * (1 - Math.exp(-Math.max(0, t - 0.03 * depth) / (0.12 + 0.3 * depth)))),
  ),
  thicknessM: 0.056,
  bottom: 'middle',
  frontM: steps.map((t) => 0.004 * Math.min(1, t * 2.4)),
  bite: {
    depthShares: [0.1, 0.4, 0.7, 1],
    p10S: [before(5), before(4.4), before(3.7), before(3.3)],
    p50S: [before(4.3), before(3.6), before(3), before(2.7)],
    p90S: [before(3.5), before(2.9), before(2.3), before(2)],
    words: ['pulls apart', '10:10–11:30'],
  },
  stall: { fromS: before(11), toS: before(8.5), lowC: 69, highC: 73 },
};

const driesAt = (t: number): number => (t < 0.55 ? 36 * (1 - Math.exp(-t * 30)) : 4);

export const LEDGER: HeatLedger = {
  letter: 'A',
  timesS: INSIDE.timesS,
  heat: {
    convection: steps.map((t) => 22 + 90 * Math.exp(-t * 6)),
    radiation: steps.map((t) => 18 + 70 * Math.exp(-t * 6)),
    still: steps.map(() => 0),
    evaporation: steps.map((t) => driesAt(t)),
    warming: steps.map((t) => 38 + 160 * Math.exp(-t * 6) - driesAt(t)),
    juice: steps.map(() => 2),
  },
};
