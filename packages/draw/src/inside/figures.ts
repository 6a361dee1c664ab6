import { type Mark, path } from '../mark.ts';
import { type Anchor, boxOf, SMALLEST, text, widthOf } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import { heatFill, heatStep, LIGHT_WORDS_FROM_STEP } from '../tokens/heat.ts';
import type { Voice } from '../voice.ts';
import { type DepthTimeField, firstPassing, temperatureAt } from './field.ts';
import type { Ink, MapBox } from './raster.ts';

export type Box = ReturnType<typeof boxOf>;

export const touches = (a: Box, b: Box, gap = 3): boolean =>
  a.x0 < b.x1 + gap && b.x0 < a.x1 + gap && a.y0 < b.y1 + gap && b.y0 < a.y1 + gap;

/** Depths at which a figure may stand on its line, tried in this order. */
const DEPTHS = [0.5, 0.62, 0.4, 0.72, 0.3, 0.82, 0.9, 0.2];

/** Words on the map are dark on straw and light on rust. */
export const onHeat = (celsius: number): string =>
  heatStep(celsius) >= LIGHT_WORDS_FROM_STEP ? 'onHeat' : 'onLight';

/**
 * Thin lines with their figure on them. A figure gives way to other marks along its line; where lines crowd, every
 * second or third is left without, so that what is written stands in one row and in order.
 */
export function isolines(
  ground: Ground,
  trace: (celsius: number) => string,
  voice: Voice,
  taken: Box[],
): Mark[] {
  const { field, axis, box } = ground;
  const lines: Mark[] = [];
  const figures: Mark[] = [];
  const written: Box[] = [];
  for (const { celsius, figure } of voice.isolines) {
    const d = trace(celsius);
    if (!d) continue;
    lines.push(path(d, onHeat(celsius) === 'onHeat' ? 'iso isoLight' : 'iso isoDark'));
    for (const depth of DEPTHS) {
      const atS = firstPassing(field, celsius, depth);
      if (atS === undefined || atS > axis.toS) continue;
      const words = text(axis.x(atS), box.y + depth * box.height + 4.5, figure, {
        anchor: 'middle',
        className: onHeat(celsius),
      });
      const room = boxOf(words);
      const isInside =
        room.x0 > box.x0 + 2 && room.x1 < box.x1 - 2 && room.y0 > box.y && room.y1 < box.y + box.height;
      if (!isInside || taken.some((other) => touches(other, room))) continue;
      if (!written.some((other) => touches(other, room))) {
        written.push(room);
        figures.push(words);
      }
      break;
    }
  }
  return [...lines, ...figures];
}

/** What words on the map stand on. */
export interface Ground {
  readonly field: DepthTimeField;
  readonly axis: Axis;
  readonly box: MapBox;
  readonly ink: Ink;
}

/** Words on the map, in a rim of the heat under them: no line runs through a letter. */
export function wordsOn(
  { field, axis, box, ink }: Ground,
  x: number,
  y: number,
  words: string,
  anchor: Anchor,
): Mark {
  const middle = x + { start: 0.5, middle: 0, end: -0.5 }[anchor] * widthOf(words);
  const celsius = temperatureAt(field, axis.at(middle), (y - SMALLEST / 3 - box.y) / box.height);
  const stroke = heatFill(heatStep(celsius), ink);
  return text(x, y, words, { anchor, className: `${onHeat(celsius)} onMap`, stroke });
}
