export { type Answer, answer, findCalc, isCalcProblem } from './calc/answer.ts';
export { calcs } from './calc/registry.ts';
export {
  type CalcAnswer,
  type CalcInputs,
  CalcProblem,
  type CalcSpec,
  type Curve,
  type InputSpec,
  type MixLine,
  type OutputSpec,
} from './calc/spec.ts';
export { readWritten, type WrittenInputs } from './calc/written.ts';
export { type Foresee, withAlternatives } from './choices/alternatives.ts';
export { variantsOf } from './choices/variants.ts';
export { type AcrossFaces, acrossFaces } from './forecast/across.ts';
export {
  assembleForecast,
  forecastCook,
  forecastMembers,
  PLAN_MEMBERS,
  PREVIEW_MEMBERS,
} from './forecast/cookForecast.ts';
export { eaterAt, eaterSaid, overCoalsSaid } from './forecast/eater.ts';
export { ensembleRunner } from './forecast/ensemble/run.ts';
export { PieceTrails } from './forecast/ensemble/trails.ts';
export { explainPiece, tellingMoments } from './forecast/explain.ts';
export type { BiteLine } from './forecast/followed.ts';
export {
  HEAT_IN,
  HEAT_OUT,
  type HeatColumn,
  type HeatColumns,
  heatAtW,
  heatInW,
  heatTotalsJ,
} from './forecast/heatColumns.ts';
export {
  type BiteLines,
  type OtherSideInside,
  type PieceInside,
  pieceInside,
} from './forecast/inside.ts';
export { ifOtherCut } from './forecast/otherCut.ts';
export {
  SALT_WORDS,
  type SaltForecast,
  type SaltFrom,
  type SaltPart,
  type SaltWord,
  saltForecast,
  saltSaid,
} from './forecast/salt.ts';
export {
  MEASURES,
  type Measure,
  type Narrowing,
  type PieceSensitivity,
  sensitivityOf,
} from './forecast/sensitivity.ts';
export type {
  CookForecast,
  EaterForecast,
  FaceForecast,
  ForecastJob,
  ForecastPart,
  PieceColumns,
  PieceForecast,
  StageForecast,
} from './forecast/types.ts';
export { type PieceZones, type Zone, type ZoneForecast, zonesOf, zonesOfCut } from './forecast/zones.ts';
export { type AllergenLine, allergenTable } from './guests/at-risk.ts';
export {
  type BuyingList,
  type BuyLine,
  buyingList,
  joinedLines,
  type Market,
  type Section,
} from './guests/buying.ts';
export { type ShopHas, withGuests, withOtherCut } from './guests/changes.ts';
export { type Portions, portionsOf, tableServed } from './guests/portions.ts';
export { type EdibleYield, edibleYield } from './guests/yields.ts';
export type { Cut, Tissue } from './meat/cut.ts';
export { type CutFacts, type CutSource, cutFacts } from './meat/cutSources.ts';
export { cuts, findCut } from './meat/cuts.ts';
export {
  BARK_WORDS,
  type BarkWord,
  COLOUR_WORDS,
  type ColourWord,
  JUICINESS_WORDS,
  type JuicinessWord,
} from './meat/eaten.ts';
export { hasFatCap, type OtherSide } from './meat/faces.ts';
export { MODELLED_AIR_C, ordinaryMassKg } from './meat/ordinary.ts';
export {
  CURVES,
  EDGES,
  isRack,
  RACK_SURE,
  RACKS,
  type Rack,
  type RackAnswer,
  type RackCurve,
  type RackEdge,
  type RackSigns,
  rackSaid,
  whichRack,
} from './meat/rackSigns.ts';
export {
  comeUpNotices,
  coolingNotices,
  keptWarmNotices,
  leftoverNotices,
  pitNotices,
  servingNotices,
} from './safety/eventNotices.ts';
export type { Concern, Notice } from './safety/notice.ts';
export { chillDeadlinesS } from './safety/standing/pieces.ts';
export { standingNotices } from './safety/standingNotices.ts';
export { highsSolver, type LoadedHighs } from './schedule/highs.ts';
export { type PlanOptions, planCook } from './schedule/plan.ts';
export { type ReplanOptions, replanCook } from './schedule/replan.ts';
export { stageNames } from './schedule/tasks/draft.ts';
export { isTrimmed } from './schedule/tasks/durations.ts';
export type {
  Alternative,
  Conflict,
  CookPlan,
  Demand,
  DemandKind,
  EquipmentKind,
  EquipmentNeed,
  EquipmentUse,
  FireWatch,
  InstantRange,
  LpSolution,
  MovedTask,
  Occupancy,
  PlacedTask,
  PlannedPiece,
  PlannedStage,
  SolveLp,
  Task,
  TaskKind,
  TaskLag,
  Walk,
  Workplace,
} from './schedule/types.ts';
export { type CalendarEvent, type CalendarOptions, calendarText } from './writeup/calendar.ts';
export { calendarEvents } from './writeup/calendar-of-plan.ts';
