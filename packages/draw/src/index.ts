export { stillIn } from './bands/chance.ts';
export {
  type BandChartData,
  badge,
  bandAxis,
  bandChart,
  readyWords,
  type StripDrawing,
} from './bands/chart.ts';
export { colourClass } from './bands/hatches.ts';
export { type BandPiece, type BandStage, sure } from './bands/piece.ts';
export type { Drawing, FigureTable, Ink, Setting } from './drawing.ts';
export { isNarrow, NARROW } from './drawing.ts';
export { type Hill, type HillsData, hillsChart } from './hills/chart.ts';
export { type DepthTimeField, temperatureAt } from './inside/field.ts';
export { type DepthTimeMapOptions, depthTimeMap } from './inside/map.ts';
export { type LanesDrawing, lanesChart } from './lanes/chart.ts';
export type { HandLane, JobBox, LaneJob, LanesData, LaneUse, RoomLane } from './lanes/data.ts';
export { type HeatLedger, heatLedger } from './ledger/ledger.ts';
export type { Mark, Tag } from './mark.ts';
export { noticeBlock } from './notices/notice.ts';
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
export { markToSvg, tableToHtml, toSvg } from './svg.ts';
export { BODY, PIT, SMALLEST, widthOf } from './text.ts';
export { type Axis, foldedAxis, type Stretch, timeAxis } from './time/axis.ts';
export { nowLine, rangeBar, tableLine } from './time/lines.ts';
export { dayNames, foldMarks, grid, type Night, nightShade, rail } from './time/rail.ts';
export { HEAT, heatFill, heatStep, WATER } from './tokens/heat.ts';
export { DRAWING_STYLE } from './tokens/style.ts';
export { THEMES, type ThemeName, themeVariables } from './tokens/themes.ts';
export type { Voice } from './voice.ts';
