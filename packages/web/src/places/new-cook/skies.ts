/** Air, humidity and wind of a weather told in words. Rough middles of what people mean; from memory. */
export const SKIES = {
  cold: { airC: 4, relativeHumidity: 0.7 },
  cool: { airC: 12, relativeHumidity: 0.65 },
  mild: { airC: 18, relativeHumidity: 0.6 },
  warm: { airC: 25, relativeHumidity: 0.5 },
  hot: { airC: 32, relativeHumidity: 0.35 },
} as const;
export type Sky = keyof typeof SKIES;

export const WINDS = { still: 1, breezy: 4, windy: 8 } as const;
export type Wind = keyof typeof WINDS;
