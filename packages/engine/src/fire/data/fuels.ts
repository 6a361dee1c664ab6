/** A fuel as fired. */
export interface Fuel {
  /** Net heating value [J/kg]. */
  readonly netJKg: number;
  /** Gross heating value [J/kg], where one is published for the fuel as fired. */
  readonly grossJKg?: number;
  /** Water leaving, per kg fuel. */
  readonly waterRatio: number;
  /** Air for complete combustion, per kg fuel. */
  readonly airRatio: number;
  readonly source: string;
}

const MJ = 1e6;

export const FUELS = {
  /** At 20 % moisture, dry basis. */
  wood: {
    netJKg: 15.0 * MJ,
    waterRatio: 0.614,
    airRatio: 4.9,
    source: 'figures of the European wood-fuels handbook',
  },
  pellets: { netJKg: 17.0 * MJ, waterRatio: 0.57, airRatio: 5.5, source: 'top grade: 4600 kWh/t and more' },
  'lump-charcoal': { netJKg: 28 * MJ, waterRatio: 0.32, airRatio: 9.6, source: 'charcoal overview; ±10 %' },
  briquettes: { netJKg: 22.5 * MJ, waterRatio: 0.33, airRatio: 7.6, source: 'EN 1860-2; ±13 %' },
  propane: {
    netJKg: 46.4 * MJ,
    grossJKg: 50.38 * MJ,
    waterRatio: 1.634,
    airRatio: 15.68,
    source: 'complete combustion of C3H8',
  },
} as const satisfies Readonly<Record<string, Fuel>>;
export type FuelId = keyof typeof FUELS;
export const FUEL_IDS = Object.keys(FUELS) as FuelId[];
