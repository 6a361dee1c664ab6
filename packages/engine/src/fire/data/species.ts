/** Specific gravity of a wood: oven-dry mass over green volume, and over volume at 12 % moisture. */
export interface WoodGravity {
  readonly basic: number;
  readonly at12: number;
}

/** @source USDA Forest Service, FIA reference species table (Miles & Smith 2009, NRS-38); ±10 % within a species */
export const WOOD_GRAVITY = {
  'shagbark-hickory': { basic: 0.64, at12: 0.72 },
  'mockernut-hickory': { basic: 0.64, at12: 0.72 },
  'pignut-hickory': { basic: 0.66, at12: 0.75 },
  pecan: { basic: 0.6, at12: 0.66 },
  'white-oak': { basic: 0.6, at12: 0.68 },
  'northern-red-oak': { basic: 0.56, at12: 0.63 },
  'post-oak': { basic: 0.6, at12: 0.67 },
  'live-oak': { basic: 0.8, at12: 0.88 },
  'sugar-maple': { basic: 0.56, at12: 0.63 },
  'red-maple': { basic: 0.49, at12: 0.54 },
  'black-cherry': { basic: 0.47, at12: 0.5 },
  apple: { basic: 0.61, at12: 0.67 },
  'american-beech': { basic: 0.56, at12: 0.64 },
  mesquite: { basic: 0.78, at12: 0.82 },
  'white-ash': { basic: 0.55, at12: 0.6 },
  'red-alder': { basic: 0.37, at12: 0.41 },
} as const satisfies Readonly<Record<string, WoodGravity>>;
export type Species = keyof typeof WOOD_GRAVITY;
export const SPECIES = Object.keys(WOOD_GRAVITY) as Species[];
