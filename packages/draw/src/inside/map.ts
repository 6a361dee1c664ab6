import type { Drawing, Setting } from '../drawing.ts';
import { isNarrow } from '../drawing.ts';
import { line, type Mark, mark, path, px, rect } from '../mark.ts';
import { boxOf, text } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import { rail } from '../time/rail.ts';
import type { Voice } from '../voice.ts';
import { type DepthTimeField, seriesAt, temperatureAt } from './field.ts';
import { type Box, type Ground, isolines, touches, wordsOn } from './figures.ts';
import {
  biteLine,
  coldestPlane,
  dryingFront,
  measuredPoints,
  stageNames,
  stageRules,
  stallBracket,
} from './over.ts';
import { heatSteps, type MapBox, tracer } from './raster.ts';

const TOP = 22;
const FOOT = 8;
const RAIL_PX = 31;
const FULL_HOUR_S = 3600;

export interface DepthTimeMapOptions {
  /** The axis of the page: the map stands under its bands. */
  readonly axis: Axis;
  /** Where the map ends [s since 1970 UTC]; missing: the last time of the field or the end of the axis. */
  readonly untilS?: number;
  readonly nowS?: number;
  /** The axis is the map's own: its hours stand above it. */
  readonly hasHours?: boolean;
  /** Height of the drawing [px]; missing: 200, or 300 narrow. */
  readonly height?: number;
}

/** Fine upright lines: this part is still ahead. */
function ahead(id: string, box: MapBox, x: number): Mark[] {
  if (!(x < box.x1)) return [];
  const left = Math.max(box.x0, x);
  return [
    mark('defs', {}, [
      mark('pattern', { id: `${id}-ahead`, width: 4, height: 4, patternUnits: 'userSpaceOnUse' }, [
        mark('rect', { className: 'aheadLine', width: 1.1, height: 4 }),
      ]),
    ]),
    rect(left, box.y, box.x1 - left, box.height, 'ahead', { fill: `url(#${id}-ahead)` }),
  ];
}

/** What stands at the left of the map: the open face, the middle, and the other face where it is another. */
function depthNames(field: DepthTimeField, axis: Axis, box: MapBox, narrow: boolean, voice: Voice): Mark[] {
  const { top: face0 = 'open-side', bottom, thicknessM } = field;
  const isHalf = bottom === 'middle';
  const middle = voice.say({ id: 'draw.middle', params: { depth: voice.lengthM(thicknessM) } });
  const face = voice.say({ id: `draw.${bottom}`, params: { depth: voice.lengthM(thicknessM) } });
  const top = voice.say({ id: isHalf ? 'draw.surface' : `draw.head-${face0}` });
  const foot = isHalf ? middle : face;
  if (narrow) {
    const y = box.y + box.height + 18;
    const below = isHalf ? foot : voice.say({ id: 'draw.from-to', params: { top, bottom: face } });
    return [text(axis.x1, y, below, { anchor: 'end', className: 'ink2' })];
  }
  const x = box.x0 - 8;
  const ticks = [0, 0.5, 1].map((share) => {
    const y = box.y + share * box.height;
    return line(box.x0 - 6, y, box.x0, y, 'tick');
  });
  const between = isHalf
    ? voice.lengthM(thicknessM / 2)
    : voice.say({ id: 'draw.middle', params: { depth: voice.lengthM(thicknessM / 2) } });
  return [
    ...ticks,
    text(x, box.y + 6, top, { anchor: 'end', className: 'ink2' }),
    text(x, box.y + box.height / 2 + 5, between, { anchor: 'end', className: 'ink2' }),
    text(x, box.y + box.height, foot, { anchor: 'end', className: 'ink2' }),
  ];
}

const LINE_PX = 17;
/** Depths at which the bite's words may stand, tried in this order. */
const BITE_DEPTHS = [0.5, 0.34, 0.66, 0.22, 0.78];

/** The bite's words in two lines to the right of its line, or to the left, at the first depth where there is room. */
function biteWords(ground: Ground, taken: Box[]): Mark[] {
  const { field, axis, box } = ground;
  const { bite } = field;
  if (!bite?.words) return [];
  const late = bite.p90S.filter((atS) => Number.isFinite(atS));
  const early = bite.p10S.filter((atS) => Number.isFinite(atS));
  const sides = [
    [axis.x(Math.max(...late)) + 8, 'start'],
    [axis.x(Math.min(...early)) - 8, 'end'],
  ] as const;
  for (const [x, anchor] of sides) {
    if (!Number.isFinite(x)) continue;
    for (const depth of BITE_DEPTHS) {
      const y = box.y + box.height * depth;
      const words = bite.words.map((one, i) => wordsOn(ground, x, y + i * LINE_PX, one, anchor));
      const rooms = words.map(boxOf);
      const isFree = rooms.every(
        (room) =>
          room.x0 >= box.x0 + 2 && room.x1 <= box.x1 - 2 && !taken.some((other) => touches(other, room)),
      );
      if (!isFree) continue;
      taken.push(...rooms);
      return words;
    }
  }
  return [];
}

/**
 * The depth–time map of one piece: surface on top, time across on the axis of the page, temperature in steps of
 * 5 °C, thin lines with their figures, the drying front, the bite and the stall over it.
 */
export function depthTimeMap(
  field: DepthTimeField,
  setting: Setting,
  voice: Voice,
  { axis, untilS, nowS, hasHours = false, height: asked }: DepthTimeMapOptions,
): Drawing {
  const narrow = isNarrow(setting.width);
  const top = TOP + (hasHours ? RAIL_PX : 0);
  const height = (asked ?? (narrow ? 300 : 200)) + top - TOP;
  const foot = narrow ? 26 : FOOT;
  const ink = setting.ink ?? 'colour';
  const firstS = Math.max(axis.fromS, field.timesS[0]!);
  const lastS = Math.min(axis.toS, untilS ?? Infinity, field.timesS[field.timesS.length - 1]!);
  const box: MapBox = { x0: axis.x(firstS), x1: axis.x(lastS), y: top, height: height - top - foot };
  const ground: Ground = { field, axis, box, ink };
  const trace = tracer(field, axis, box);
  const taken: Box[] = [];
  const clip = `${setting.id}-map`;
  const over = [
    ...(nowS === undefined ? [] : ahead(setting.id, box, axis.x(nowS))),
    ...coldestPlane(field, axis, box),
    ...biteLine(field, axis, box),
    ...dryingFront(field, axis, box),
    ...stageRules(field, axis, box, taken),
    ...stallBracket(ground, voice, taken),
    ...biteWords(ground, taken),
  ];
  const lines = isolines(ground, trace, voice, taken);
  const marks: Mark[] = [
    ...(hasHours ? rail(axis, voice, 0, RAIL_PX, { short: narrow }) : []),
    mark('clipPath', { id: clip }, [rect(box.x0, box.y, box.x1 - box.x0, box.height, '')]),
    mark('g', { clipPath: `url(#${clip})`, className: 'heatmap' }, [
      ...heatSteps(field, box, trace, ink),
      ...lines,
      ...over,
      ...measuredPoints(field, axis, box),
    ]),
    path(`M${px(box.x0)} ${px(box.y)}H${px(box.x1)}V${px(box.y + box.height)}H${px(box.x0)}Z`, 'frame'),
    ...stageNames(field, axis, box),
    ...depthNames(field, axis, box, narrow, voice),
  ];
  return { width: setting.width, height, marks, ...inWords(field, voice, firstS, lastS) };
}

/** Temperatures by the hour, as a table; and the sentence of the image. */
function inWords(field: DepthTimeField, voice: Voice, firstS: number, lastS: number) {
  const { top = 'open-side', bottom, timesS, frontM, otherFrontM, letter } = field;
  const stepS = Math.max(FULL_HOUR_S, Math.ceil((lastS - firstS) / 24 / FULL_HOUR_S) * FULL_HOUR_S);
  const moments: number[] = [];
  for (let atS = firstS; atS < lastS; atS += stepS) moments.push(atS);
  moments.push(lastS);
  const isHalf = bottom === 'middle';
  const celsius = (atS: number, share: number): string =>
    voice.temperatureC(temperatureAt(field, atS, share));
  const dry = (front: readonly number[] | undefined, atS: number): string =>
    front ? voice.lengthM(seriesAt(timesS, front, atS)) : '';
  const columns = isHalf
    ? ['time', 'surface', 'half', bottom, 'dry']
    : ['time', top, 'middle', bottom, `dry-${top}`, `dry-${bottom}`];
  return {
    sentence: voice.say({
      id: isHalf ? 'draw.inside' : 'draw.inside-both',
      params: {
        letter,
        surface: celsius(lastS, 0),
        middle: celsius(lastS, isHalf ? 1 : 0.5),
        ...(!isHalf && {
          top: voice.say({ id: `draw.head-${top}` }),
          bottom: voice.say({ id: `draw.head-${bottom}` }),
          other: celsius(lastS, 1),
          dryTop: dry(frontM, lastS),
          dryBottom: dry(otherFrontM, lastS),
        }),
        time: voice.clock(lastS),
      },
    }),
    table: {
      head: columns.map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: moments.map((atS) => [
        voice.clock(atS),
        ...[0, 0.5, 1].map((share) => celsius(atS, share)),
        dry(frontM, atS),
        ...(isHalf ? [] : [dry(otherFrontM, atS)]),
      ]),
    },
  };
}
