import { closed, line, type Mark, type Point, path, px, rect, through } from '../mark.ts';
import { boxOf, text, widthOf } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import type { Voice } from '../voice.ts';
import type { DepthTimeField } from './field.ts';
import { type Box, type Ground, touches, wordsOn } from './figures.ts';
import type { MapBox } from './raster.ts';

const depthY = (box: MapBox, share: number): number => box.y + Math.max(0, Math.min(1, share)) * box.height;

/** Blue line with a paper rim: dry between it and the face it comes from. */
export function dryingFront(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  const { timesS, frontM, otherFrontM, thicknessM } = field;
  const along = (depthShare: (i: number) => number): Mark[] => {
    const points = timesS.flatMap((atS, i): Point[] =>
      atS >= axis.fromS && axis.x(atS) <= box.x1 ? [[axis.x(atS), depthY(box, depthShare(i))]] : [],
    );
    return points.length < 2 ? [] : [path(through(points), 'frontCase'), path(through(points), 'front')];
  };
  return [
    ...(frontM ? along((i) => frontM[i]! / thicknessM) : []),
    ...(otherFrontM ? along((i) => 1 - otherFrontM[i]! / thicknessM) : []),
  ];
}

/** Dotted rule along the coldest plane, where the faces are unlike. */
export function coldestPlane(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  if (!field.coldestShares) return [];
  const points = field.timesS.flatMap((atS, i): Point[] =>
    axis.x(atS) <= box.x1 ? [[axis.x(atS), depthY(box, field.coldestShares![i]!)]] : [],
  );
  return points.length < 2 ? [] : [path(through(points), 'coldest')];
}

/** Heavy line where each depth reaches the bite, in its pale 8 times in 10. */
export function biteLine(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  const { bite } = field;
  if (!bite) return [];
  const along = (times: readonly number[]): Point[] =>
    bite.depthShares.flatMap((share, i): Point[] => {
      const x = Number.isFinite(times[i]) ? axis.x(times[i]!) : Infinity;
      return x >= box.x0 && x <= box.x1 ? [[x, depthY(box, share)]] : [];
    });
  const band = bite.depthShares.flatMap((share, i): [Point, Point][] => {
    const x = axis.x(bite.p10S[i]!);
    if (!(x >= box.x0 && x <= box.x1)) return [];
    const late = bite.p90S[i]!;
    const y = depthY(box, share);
    return [
      [
        [x, y],
        [Math.min(box.x1, Number.isFinite(late) ? axis.x(late) : box.x1), y],
      ],
    ];
  });
  const median = along(bite.p50S);
  const marks: Mark[] = [];
  if (band.length > 1) {
    const early = band.map(([point]) => point);
    const late = band.map(([, point]) => point);
    marks.push(path(closed([...early, ...late.reverse()]), 'biteBand'));
  }
  if (median.length > 1) marks.push(path(through(median), 'biteCase'), path(through(median), 'bite'));
  return marks;
}

/** A bracket under the stall with its temperatures, beside the rules of the stages that cross it. */
export function stallBracket(ground: Ground, voice: Voice, taken: Box[]): Mark[] {
  const { field, axis, box } = ground;
  const { stall } = field;
  if (!stall || !(stall.toS > stall.fromS)) return [];
  const [a, b] = [axis.x(stall.fromS), Math.min(box.x1, axis.x(stall.toS))];
  if (b - a < 6) return [];
  // In the middle of the piece, clear of the figures half way in.
  const share = field.bottom === 'middle' ? 0.86 : 0.6;
  const y = depthY(box, share);
  const words = voice.say({
    id: 'draw.stall',
    params: { low: voice.degrees(stall.lowC), high: voice.temperatureC(stall.highC) },
  });
  const half = widthOf(words) / 2;
  const inside = (x: number) => Math.max(box.x0 + half + 4, Math.min(box.x1 - half - 4, x));
  const at = (middle: number) => wordsOn(ground, middle, y - 7, words, 'middle');
  // Over its bracket if it may be, else at either side of what stands there, never further off than its own end.
  const places = [
    (a + b) / 2,
    a + half,
    b - half,
    a - half + 8,
    b + half - 8,
    ...taken
      .flatMap(({ x0, x1 }) => [x0 - half - 5, x1 + half + 5])
      .filter((x) => x + half > a && x - half < b),
  ].map(inside);
  const clear = places.map(at).find((label) => !taken.some((other) => touches(other, boxOf(label))));
  const label = clear ?? at(places[0]!);
  taken.push(boxOf(label), { x0: a, x1: b, y0: y - 2, y1: y + 8 });
  return [path(`M${px(a)} ${px(y + 6)}v-6H${px(b)}v6`, 'bracket'), label];
}

/** Changes of stage that lie within the map. */
const changesIn = (field: DepthTimeField, axis: Axis, box: MapBox) =>
  (field.changes ?? []).flatMap(({ atS, words }) => {
    const x = axis.x(atS);
    return x > box.x0 && x < box.x1 ? [{ x, words }] : [];
  });

/** Upright dashes where a stage changes; the words of the map keep clear of them. */
export function stageRules(field: DepthTimeField, axis: Axis, box: MapBox, taken: Box[]): Mark[] {
  return changesIn(field, axis, box).map(({ x }) => {
    taken.push({ x0: x - 1, x1: x + 1, y0: box.y, y1: box.y + box.height });
    return line(x, box.y, x, box.y + box.height, 'stageLine');
  });
}

/** Names of the stages above the frame, where they do not touch. */
export function stageNames(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  const taken: Box[] = [];
  return changesIn(field, axis, box).flatMap(({ x, words }) => {
    const isNearEnd = x + 5 + widthOf(words) > box.x1;
    const label = text(isNearEnd ? x - 5 : x + 5, box.y - 6, words, { anchor: isNearEnd ? 'end' : 'start' });
    const room = boxOf(label);
    if (taken.some((other) => touches(other, room))) return [];
    taken.push(room);
    return [line(x, box.y - 16, x, box.y, 'tick'), label];
  });
}

/** Solid squares where something was measured. */
export const measuredPoints = (field: DepthTimeField, axis: Axis, box: MapBox): Mark[] =>
  (field.measured ?? []).flatMap(({ atS, depthShare }) =>
    atS >= axis.fromS && axis.x(atS) <= box.x1
      ? [rect(axis.x(atS) - 4, depthY(box, depthShare) - 4, 8, 8, 'meas')]
      : [],
  );
