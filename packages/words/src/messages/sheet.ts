import { messages } from './message.ts';

const CELSIUS_200F = 93.3;
const CELSIUS_130F = 54.4;
const CELSIUS_300F = 148.9;

/** Words of the two printed sheets. */
export const sheetMessages = messages({
  'sheet.fridge': (p: { name: string }) => `Fridge sheet: ${p.name}`,
  'sheet.pit': (p: { name: string }) => `Pit sheet: ${p.name}`,
  'sheet.table': (p: { at: string; until: string; people: number }, print) =>
    `${print.date(p.at)}, table ${print.clockRange(p.at, p.until)}, ${p.people} people`,
  'sheet.number': (p: { number: number }) => `sheet ${p.number} of 2`,
  'sheet.head-plan': () => 'plan',
  'sheet.head-when': () => 'do it when',
  'sheet.head-what': () => 'what',
  'sheet.head-done': () => 'done at',
  'sheet.head-grate': (p: { unit: string }) => `grate ${p.unit}`,
  'sheet.head-middle': (p: { unit: string }) => `middle ${p.unit}`,
  'sheet.slice': (p: { list: string }) => `Cut ${p.list}.`,
  'sheet.buy': (p: { what: string }) => `Buy: ${p.what}.`,
  'sheet.weigh': () => 'To weigh',
  'sheet.jobs': () => 'Kitchen, shop and table',
  'sheet.out-of-fridge': (p: { list: string }) => `Out of the fridge: ${p.list}.`,
  'sheet.fire-out': () => 'If the fire has gone out',
  // USDA FSIS, Smoking Meat and Poultry: pit between 225 and 300 °F; the figures of the stop are the project's own.
  'sheet.fire-out-deed': (_: object, print) =>
    `write down the time and the middle of every piece. Light it at once, lid shut. An hour under ${print.temperatureC(CELSIUS_200F)} at the grate with a middle under ${print.temperatureC(CELSIUS_130F)}: finish in an oven at ${print.temperatureC(CELSIUS_300F)} now, or stop.`,
  'sheet.ready': () => 'Ready, by bite',
  'sheet.ready-piece': (p: { letter: string; from: string; to: string }, print) =>
    `${p.letter} ${print.clockRange(p.from, p.to)}`,
  'sheet.ready-open': (p: { letter: string; from: string }, print) =>
    `${p.letter} from ${print.aboutClock(p.from)}`,
  'sheet.ready-never': (p: { letter: string }) => `${p.letter} never, as told`,
  'sheet.eight-in-ten': () => 'Eight times in ten.',
  'sheet.signs-first': () => 'The sign comes before the clock.',
});
