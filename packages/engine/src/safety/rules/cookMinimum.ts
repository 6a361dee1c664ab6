import type { RulesProfile } from '@pitwright/model';
import { celsiusOf } from '../ruleTemperature.ts';

export const PRODUCTS = ['whole-cut', 'ground', 'tenderised', 'poultry', 'stuffed', 'leftovers'] as const;
export type Product = (typeof PRODUCTS)[number];

export interface CookMinimum {
  /** In the coldest part [°C]. */
  readonly temperatureC: number;
  /** How long it is kept there; for whole cuts at home a rest. */
  readonly timeS: number;
  readonly source: string;
}

const HOME = 'USDA FSIS consumer temperatures';
const CODE = 'FDA Food Code 3-401.11, edition 2017';
const REHEAT = 'FDA Food Code 3-403.11';
const UK = 'UK Food Standards Agency, 70 °C for 2 minutes or equivalent';

const f = (fahrenheit: number, timeS: number, source: string): CookMinimum => ({
  temperatureC: celsiusOf(fahrenheit),
  timeS,
  source,
});

const UK_MINIMUM: CookMinimum = { temperatureC: 70, timeS: 120, source: UK };

const MINIMA: Readonly<Record<'home-us' | 'cater-us', Readonly<Record<Product, CookMinimum>>>> = {
  'home-us': {
    'whole-cut': f(145, 180, HOME),
    ground: f(160, 0, HOME),
    tenderised: f(145, 180, 'USDA FSIS, mechanically tenderised beef'),
    poultry: f(165, 0, HOME),
    stuffed: f(165, 0, HOME),
    leftovers: f(165, 0, HOME),
  },
  'cater-us': {
    'whole-cut': f(145, 15, CODE),
    ground: f(155, 17, CODE),
    tenderised: f(155, 17, CODE),
    poultry: f(165, 15, CODE),
    stuffed: f(165, 15, CODE),
    leftovers: f(165, 15, REHEAT),
  },
};

/** What the coldest part must reach, and how long it stays there. */
export const cookMinimum = (profile: RulesProfile, product: Product): CookMinimum =>
  profile === 'uk' ? UK_MINIMUM : MINIMA[profile][product];
