import type { Cook, Piece, PitType, Range } from '@pitwright/model';
import { itemMassKg } from './portions.ts';

export interface Fuel {
  readonly woodKg: Range;
  readonly charcoalKg: Range;
  readonly foilM: number;
  readonly paperM: number;
}

/**
 * Fuel an hour at 110–135 °C in mild air, and to light it [kg]: low, middle, high.
 * @source common practice, no source: a backyard offset 1–2 kg/h of wood; a kettle 2.3–2.7 kg of briquettes laid in a
 *   row for 7–9 h, upright charcoal pits a fifth more; the fire room's own balance replaces this rule where it has run
 */
const RATES: Readonly<
  Record<PitType, { wood?: readonly number[]; charcoal?: readonly number[]; light: number }>
> = {
  offset: { wood: [1, 1.4, 2], light: 1.5 },
  kettle: { charcoal: [0.2, 0.3, 0.45], light: 0.6 },
  drum: { charcoal: [0.25, 0.36, 0.55], light: 0.8 },
  bullet: { charcoal: [0.25, 0.36, 0.55], light: 0.8 },
  ceramic: { charcoal: [0.12, 0.2, 0.3], light: 0.5 },
  cabinet: { charcoal: [0.4, 0.6, 0.9], light: 1 },
  pellet: { wood: [0.4, 0.6, 1], light: 0.2 },
  gas: { light: 0 },
  electric: { light: 0 },
  oven: { light: 0 },
  unknown: { wood: [1, 1.4, 2], light: 1.5 },
};

/** Foil or paper round one item [m]: a rack or a leg doubled, a large piece in two lengths crossed. @source common practice, no source */
const WRAP_M = { ordinary: 1.2, large: 2.4 } as const;
const LARGE_FROM_KG = 2.5;

const wrapM = (piece: Piece): number =>
  (itemMassKg(piece) ?? 0) >= LARGE_FROM_KG ? WRAP_M.large : WRAP_M.ordinary;

const NONE: Range = { p10: 0, p50: 0, p90: 0, neverShare: 0 };

/** Wood, charcoal and wrapping by rule. @param litS from lighting to the last piece off [s] */
export function fuelOf(cook: Pick<Cook, 'pit' | 'pieces'>, litS: number): Fuel {
  const hours = litS / 3600;
  const { wood, charcoal, light } = RATES[cook.pit.type];
  const range = (rate: readonly number[] | undefined): Range =>
    rate
      ? {
          p10: light + rate[0]! * hours,
          p50: light + rate[1]! * hours,
          p90: light + rate[2]! * hours,
          neverShare: 0,
        }
      : NONE;
  const wraps = (kind: 'foil' | 'paper'): number =>
    cook.pieces.reduce(
      (sum, piece) =>
        sum + piece.count * piece.stages.filter((stage) => stage.kind === kind).length * wrapM(piece),
      0,
    );
  return { woodKg: range(wood), charcoalKg: range(charcoal), foilM: wraps('foil'), paperM: wraps('paper') };
}
