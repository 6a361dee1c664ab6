/**
 * Heat, one sequential scale: one step per 5 °C from 0, the last for 100 °C and more. Equal steps of OKLab lightness
 * and hue (0.039 ± 0.002), lightness falling throughout, so that grey print and colour-blind eyes keep the order.
 */
export const HEAT = [
  '#e5f3f8',
  '#eaecd9',
  '#ece3bc',
  '#e9d5a4',
  '#e6c88b',
  '#e3ba74',
  '#dfaa65',
  '#da9b56',
  '#d58b47',
  '#ce7c3c',
  '#c56e35',
  '#bd5f2d',
  '#b35126',
  '#a64525',
  '#993924',
  '#8c2e22',
  '#7e2420',
  '#6e1e1f',
  '#5e181d',
  '#4f121b',
  '#410d18',
] as const;

export const HEAT_STEP_C = 5;

/** The step of a temperature: 0 below 5 °C, 20 from 100 °C. */
export const heatStep = (celsius: number): number =>
  Math.max(0, Math.min(HEAT.length - 1, Math.floor(celsius / HEAT_STEP_C)));

/** Greys of the same order, evenly from paper to near black. */
const grey = (step: number): string => {
  const value = Math.round(245 - (step / (HEAT.length - 1)) * 205)
    .toString(16)
    .padStart(2, '0');
  return `#${value}${value}${value}`;
};

export const heatFill = (step: number, ink: 'colour' | 'black'): string =>
  ink === 'black' ? grey(step) : HEAT[step]!;

/** From this step on light words stand on the fill, below it dark ones. */
export const LIGHT_WORDS_FROM_STEP = 11;
