import { messages } from './message.ts';

/** Answers that the cook gives and the forecast does not use yet. */
export const dayMessages = messages({
  'day.weather-not-used': () =>
    'The weather: the pit is taken as held at its temperature, whatever the wind and the air.',
  'day.spritz-not-used': (p: { letter: string }) =>
    `The spritz for ${p.letter}: tell one of its stages how much and how often, and it is foreseen with it.`,
  'day.membrane-not-used': (p: { letter: string }) =>
    `The membrane of ${p.letter}: its cut has none that matters.`,
  'day.fat-cap-not-used': (p: { letter: string }) =>
    `The fat cap of ${p.letter}: it is foreseen on a brisket alone.`,
  'day.steel-not-used': () => "The steel's thickness.",
  'day.fuel-not-used': () => 'The fuel: what it burns and how much of it.',
});
