export { CATALOGUE } from './catalogue.ts';
export { chartVoice } from './chart-voice.ts';
export { chance } from './figures/chance.ts';
export { clock, clockRange, date, dayKey, shortWeekday, weekday } from './figures/clock.ts';
export { length } from './figures/length.ts';
export { mass } from './figures/mass.ts';
export { capital, count, decimal, fraction, listed, lowered } from './figures/number.ts';
export { type DayReading, readDay } from './figures/read-day.ts';
export { difference, temperature } from './figures/temperature.ts';
export { volume } from './figures/volume.ts';
export { benchMessages } from './messages/bench.ts';
export { benchWaysMessages } from './messages/bench-ways.ts';
export {
  type Message,
  type MessageParam,
  type MessageParams,
  type Messages,
  messages,
} from './messages/message.ts';
export { webMessages } from './messages/web.ts';
export { barkName, colourName, saltName } from './names/eaten.ts';
export { spokenIngredient } from './names/ingredients.ts';
export { biteName, levelName, pitName, stageName } from './names/words.ts';
export { type Printer, printer } from './printer.ts';
export { writtenQuantity } from './quantity.ts';
export { isSayable, say } from './say.ts';
export { METRIC, type PrintSettings, US } from './settings.ts';
export { keepingUnits, unbroken } from './unbroken.ts';
