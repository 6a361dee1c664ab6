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
export type { CookForecast, PieceForecast, StageForecast } from './forecast/types.ts';
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
