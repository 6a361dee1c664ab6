/** The `stages` of calc piece: `bare until 74 °C | foil 2 h pit 121 °C | hold 3 h at 65 °C`. */
import { isWaiting, STAGE_KINDS, type StageKind } from '@pitwright/model';
import { itemsIn, quantityIn } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import { coverOf, type ResolvedPit, type ResolvedStage, restingPlace } from '../../day/resolve.ts';
import type { AirPlan } from '../../meat/stagePlan.ts';

const STAGE = /^(?<kind>\S+)\s+(?:until\s+(?<until>.+?)|(?<time>.+?))(?:\s+(?<where>at|pit)\s+(?<air>.+))?$/u;
const INPUT = 'stages';
/** Air round a piece at rest or in a warmer, and of a pit [°C]. */
const REST_RANGE_C = [-40, 150] as const;
const PIT_RANGE_C = [60, 250] as const;
const CORE_RANGE_C = [0, 110] as const;
const LONGEST_S = 48 * 3600;

function temperatureIn(text: string, [lowC, highC]: readonly [number, number]): number {
  const temperatureC = quantityIn(INPUT, text, 'temperature');
  if (!(temperatureC >= lowC && temperatureC <= highC))
    refuse('calc.out-of-range', { input: INPUT, text, limits: `${lowC}..${highC} °C` });
  return temperatureC;
}

/** Stages as written. @throws CalcProblem naming what cannot be read */
export function stagesIn(
  text: string,
  pit: ResolvedPit,
  curve: AirPlan['curve'] | undefined,
): readonly ResolvedStage[] {
  let pitGasC = pit.gasC;
  let told = curve;
  return itemsIn(INPUT, text).map((item) => {
    const parts = STAGE.exec(item)?.groups;
    if (!parts)
      return refuse('calc.impossible', {
        input: INPUT,
        reason: `“${item}” should be a stage and how long, such as bare 2 h or foil until 93 °C`,
      });
    const kind = parts.kind as StageKind;
    if (!STAGE_KINDS.includes(kind))
      refuse('calc.no-such-word', { input: INPUT, text: parts.kind!, words: STAGE_KINDS.join('|') });
    const isResting = isWaiting(kind);
    if (parts.where && isResting !== (parts.where === 'at'))
      refuse('calc.impossible', {
        input: INPUT,
        reason: isResting
          ? `“${item}” is not in the pit, write the air round it as at 65 °C`
          : `“${item}” is in the pit, write its air as pit 121 °C`,
      });
    const shared = { kind, pouredKg: 0, isGlazed: kind === 'glazed', trigger: triggerIn(parts) };
    if (isResting)
      return {
        ...shared,
        place: 'room',
        ...restingPlace(kind, parts.air === undefined ? undefined : temperatureIn(parts.air, REST_RANGE_C)),
      };
    if (parts.air !== undefined) {
      pitGasC = temperatureIn(parts.air, PIT_RANGE_C) + pit.biasK;
      told = undefined;
    }
    return {
      ...shared,
      place: 'pit',
      cover: coverOf(kind, false),
      gasC: pitGasC,
      ...(told && { curve: told }),
    };
  });
}

function triggerIn(parts: Record<string, string | undefined>): ResolvedStage['trigger'] {
  if (parts.until !== undefined)
    return { by: 'core', temperatureC: temperatureIn(parts.until, CORE_RANGE_C) };
  const afterS = quantityIn(INPUT, parts.time!, 'time');
  if (!(afterS <= LONGEST_S))
    refuse('calc.out-of-range', { input: INPUT, text: parts.time!, limits: '0..48 h' });
  return { by: 'clock', afterS };
}
