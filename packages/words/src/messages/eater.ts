import { barkName, colourName, saltName, saltPartName } from '../names/eaten.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

interface Face {
  readonly bark: string;
  readonly barkShare: number;
  readonly barkLowM: number;
  readonly barkHighM: number;
  readonly colourLow: string;
  readonly colourHigh: string;
  readonly members: number;
}

interface Gets extends Face {
  readonly juiciness: string;
  readonly juicinessShare: number;
  readonly yieldLow: number;
  readonly yieldHigh: number;
}

const percent = (share: number): string => `${Math.round(100 * share)}`;

function thickness(lowM: number, highM: number, print: Printer): string {
  const [perM, decimals, unit] = print.settings.units === 'us' ? [1 / 0.0254, 2, 'in'] : [1e3, 1, 'mm'];
  const low = print.number(lowM * perM, decimals);
  const high = print.number(highM * perM, decimals);
  return low === high ? `${low} ${unit}` : `${low}–${high} ${unit}`;
}

/** `bark, crusty (8 times in 10; 2–3 mm); mahogany to black-brown` */
function faceText(p: Face, print: Printer): string {
  const colour =
    p.colourLow === p.colourHigh
      ? colourName(p.colourLow)
      : `${colourName(p.colourLow)} to ${colourName(p.colourHigh)}`;
  return `bark, ${barkName(p.bark)} (${print.timesIn(p.barkShare, p.members)}; ${thickness(p.barkLowM, p.barkHighM, print)}); ${colour}`;
}

/** What the eater gets, and what is to be known of a piece before it goes on. */
export const eaterMessages = messages({
  'forecast.stall': (p: { lowC: number; highC: number; soonS: number; lateS?: number }, print) =>
    `Expect a stall: the middle hangs somewhere in ${print.temperatureRangeC(p.lowC, p.highC)} and takes ${p.lateS === undefined ? `${print.durationS(p.soonS)} or more` : print.durationRangeS(p.soonS, p.lateS)} from ${print.temperatureC(65)} to ${print.temperatureC(75)}. A wrap or a hotter pit shortens it; waiting ends it too.`,
  'forecast.never-bare': (p: { share: number; members: number }, print) =>
    `${print.chance(p.share, p.members)} of the tries never get there: drying through the bark takes all the heat. A wrap in foil or a hotter pit would end that.`,
  'forecast.never-wrapped': (p: { share: number; members: number }, print) =>
    `${print.chance(p.share, p.members)} of the tries never get there, wrap and all. A hotter pit, or an oven for the finish, would end that.`,
  'eater.gets': (p: Gets & Record<string, string | number>, print) =>
    `At the table: ${faceText(p, print)}; ${p.juiciness} (${print.timesIn(p.juicinessShare, p.members)}); ${percent(p.yieldLow)}–${percent(p.yieldHigh)} % of its raw weight left.`,
  'eater.over-coals': (p: Face & { side: string }, print) =>
    `Its ${p.side} side, over the coals, is darker: ${faceText(p, print)}.`,
  'eater.salt': (
    p: { word: string; share: number; low: number; high: number; most: string; members: number },
    print,
  ) =>
    `Salt: ${saltName(p.word)} (${print.timesIn(p.share, p.members)}; ${print.number(p.low)}–${print.number(p.high)} g in a kilo served), most of it from the ${saltPartName(p.most)}.`,
});
