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
export type { CookForecast, PieceForecast, StageForecast } from './forecast/types.ts';
