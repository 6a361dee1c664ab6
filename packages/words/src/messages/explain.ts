import type { Quantity } from '@pitwright/model';
import { messages } from './message.ts';

const ZERO_CELSIUS_K = 273.15;

interface Heat {
  readonly watts: number;
  readonly dries: Quantity;
  readonly core: Quantity;
}

const percent = (share: Quantity): string => `${Math.round(share.si * 100)} %`;

/** Why a piece is where it is: what holds it back now, and when that ends. */
export const explainMessages = messages({
  'explain.warms': (p: Heat & { surface: Quantity }, print) =>
    `Of ${p.watts} W into it ${percent(p.dries)} dries the surface; the rest warms it from the outside in. Surface ${print.temperatureC(p.surface.si - ZERO_CELSIUS_K)}, middle ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}: the middle follows by and by.`,
  'explain.stall': (p: Heat & { until: Quantity }, print) =>
    `The stall: the meat gives up its juice and ${percent(p.dries)} of ${p.watts} W goes into drying that off, so the middle hangs at ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}. It ends by itself about ${print.elapsedS(p.until.si)}; foil ends it now.`,
  'explain.dries': (p: Heat & { rise: Quantity; until?: Quantity }, print) =>
    `${percent(p.dries)} of ${p.watts} W still goes into drying; the middle, ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}, rises ${print.differenceK(p.rise.si)} an hour${p.until ? `, to the end of this stage about ${print.elapsedS(p.until.si)}` : ''}.`,
  'explain.wrapped': (p: Heat & { rise: Quantity }, print) =>
    `In foil next to nothing dries: ${p.watts} W go into warming it, ${print.differenceK(p.rise.si)} an hour in the middle, now ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}. Only its thickness holds it back.`,
  'explain.held': (p: Heat, print) =>
    `Drying through the bark takes ${percent(p.dries)} of ${p.watts} W and the middle stays at ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}. That does not end by itself: a hotter pit or a wrap ends it.`,
  'explain.rests': (p: { core: Quantity; surface: Quantity }, print) =>
    `Off the heat: surface ${print.temperatureC(p.surface.si - ZERO_CELSIUS_K)}, middle ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)} and falling; it goes on softening while the middle is hot.`,
  'explain.evens-out': (p: { core: Quantity; surface: Quantity }, print) =>
    `Off the heat: the outside, ${print.temperatureC(p.surface.si - ZERO_CELSIUS_K)}, still warms the middle, now ${print.temperatureC(p.core.si - ZERO_CELSIUS_K)}.`,
});
