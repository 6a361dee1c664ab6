export { type BandChartData, bandAxis, bandChart, type StripDrawing } from './bands/chart.ts';
export { type BandPiece, type BandStage, sure } from './bands/piece.ts';
export type { Drawing, FigureTable, Ink, Setting } from './drawing.ts';
export { isNarrow } from './drawing.ts';
export { type Hill, type HillsData, hillsChart } from './hills/chart.ts';
export type { DepthTimeField } from './inside/field.ts';
export { type DepthTimeMapOptions, depthTimeMap } from './inside/map.ts';
export { type LanesDrawing, lanesChart } from './lanes/chart.ts';
export type { HandLane, LaneJob, LanesData, LaneUse, RoomLane } from './lanes/data.ts';
export { type HeatLedger, heatLedger } from './ledger/ledger.ts';
export type { Mark } from './mark.ts';
export { type RangeRow, rangesChart } from './ranges/chart.ts';
export { type BalanceScale, balanceLine } from './sauce/balance.ts';
export {
  type SimmerChart,
  type SimmerDrawing,
  type SimmerMoment,
  type SimmerWords,
  simmerChart,
} from './sauce/simmer.ts';
export { hundredStrokes } from './strokes/strokes.ts';
export { toSvg } from './svg.ts';
export { widthOf } from './text.ts';
export { type Axis, type Stretch, timeAxis } from './time/axis.ts';
export { type Night, rail } from './time/rail.ts';
export { DRAWING_STYLE } from './tokens/style.ts';
export { themeVariables } from './tokens/themes.ts';
export type { Voice } from './voice.ts';
