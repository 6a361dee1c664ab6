/** The heat ledger of one item over its cook: what arrives by which way, and what it is spent on. */
import { HEAT_ENDS, HEAT_WAYS, type HeatFlows } from '../meat/heatFlows.ts';

/**
 * Mean heat since the entry before, one value per time of the map [W]; negative where the piece gives heat off.
 * convection + radiation + still = evaporation + warming + juice, to rounding.
 */
export interface HeatColumns {
  /** By the moving air. */
  readonly convection: readonly number[];
  /** From walls and coals; in foil, to the foil. */
  readonly radiation: readonly number[];
  /** Rest and hold: through still air, towels or a box, where the two are not parted. */
  readonly still: readonly number[];
  /** Latent heat of the water that turns to vapour. */
  readonly evaporation: readonly number[];
  /** What the meat holds more, above its start; negative where more leaves with juice than comes in. */
  readonly warming: readonly number[];
  /** Carried off again by juice that drips or dries on the surface: with `warming` what warmed the meat. */
  readonly juice: readonly number[];
}

export type HeatColumn = keyof HeatColumns;

/** The ways in, then the ends, in the order in which they are told. */
export const HEAT_IN = ['convection', 'radiation', 'still'] as const satisfies readonly HeatColumn[];
export const HEAT_OUT = ['evaporation', 'warming', 'juice'] as const satisfies readonly HeatColumn[];

const FLOW: Readonly<Record<HeatColumn, keyof HeatFlows>> = {
  convection: 'convectionWm2',
  radiation: 'radiationWm2',
  still: 'stillWm2',
  evaporation: 'evaporationWm2',
  warming: 'warmingWm2',
  juice: 'juiceWm2',
};
const COLUMNS = [...HEAT_IN, ...HEAT_OUT];

/** All that arrives at one entry [W]. */
export const heatInW = (heat: HeatColumns, entry: number): number =>
  HEAT_IN.reduce((sum, column) => sum + heat[column][entry]!, 0);

/** Entry in which a moment lies; the last one after the end. @param timesS at which the entries end */
export function entryAt(timesS: readonly number[], elapsedS: number): number {
  const entry = timesS.findIndex((endS) => endS >= elapsedS);
  return entry < 0 ? timesS.length - 1 : entry;
}

/** Every column at a moment [W]. @param inside its times and heat @param elapsedS from meat-on */
export function heatAtW(
  { timesS, heat }: { readonly timesS: readonly number[]; readonly heat: HeatColumns },
  elapsedS: number,
): Readonly<Record<HeatColumn, number>> {
  const entry = entryAt(timesS, elapsedS);
  return perColumn((column) => heat[column][entry]!);
}

/** Every column from meat-on to a moment [J]. */
export function heatTotalsJ(
  { timesS, heat }: { readonly timesS: readonly number[]; readonly heat: HeatColumns },
  untilS: number,
): Readonly<Record<HeatColumn, number>> {
  return perColumn((column) =>
    heat[column].reduce((sum, watts, i) => {
      const fromS = i > 0 ? timesS[i - 1]! : 0;
      return sum + watts * Math.max(0, Math.min(timesS[i]!, untilS) - fromS);
    }, 0),
  );
}

const perColumn = <T>(of: (column: HeatColumn) => T): Record<HeatColumn, T> => ({
  convection: of('convection'),
  radiation: of('radiation'),
  still: of('still'),
  evaporation: of('evaporation'),
  warming: of('warming'),
  juice: of('juice'),
});

/** Gathers the steps of a run into entries. */
export class HeatRecorder {
  readonly columns: Readonly<Record<HeatColumn, number[]>> = perColumn(() => []);
  readonly #sinceJM2: HeatFlows = {
    convectionWm2: 0,
    radiationWm2: 0,
    stillWm2: 0,
    evaporationWm2: 0,
    warmingWm2: 0,
    juiceWm2: 0,
  };
  #sinceS = 0;

  /** Takes on one step. @param stepS on the clock of the item */
  gather(heat: HeatFlows, stepS: number): void {
    this.#sinceS += stepS;
    for (const flow of [...HEAT_WAYS, ...HEAT_ENDS]) this.#sinceJM2[flow] += heat[flow] * stepS;
  }

  /** Ends an entry. @param perFlow what a mean flow of 1 W/m² is over the faces of the item, on its clock [m²] */
  note(perFlow: number): void {
    for (const column of COLUMNS) {
      const flow = FLOW[column];
      this.columns[column].push((this.#sinceJM2[flow] / this.#sinceS) * perFlow);
      this.#sinceJM2[flow] = 0;
    }
    this.#sinceS = 0;
  }
}
