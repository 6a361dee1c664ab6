import { closed, line, type Mark, type Point, path, px, rect, through } from '../mark.ts';
import { boxOf, text, widthOf } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import type { Voice } from '../voice.ts';
import type { DepthTimeField } from './field.ts';
import { type Box, touches, wordsOver } from './figures.ts';
import type { MapBox } from './raster.ts';

const depthY = (box: MapBox, share: number): number => box.y + Math.max(0, Math.min(1, share)) * box.height;

/** Blue line with a paper rim: dry above it. */
export function dryingFront(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  if (!field.frontM) return [];
  const points = field.timesS.flatMap((atS, i): Point[] =>
    atS >= axis.fromS && axis.x(atS) <= box.x1
      ? [[axis.x(atS), depthY(box, field.frontM![i]! / field.thicknessM)]]
      : [],
  );
  if (points.length < 2) return [];
  return [path(through(points), 'frontCase'), path(through(points), 'front')];
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
  const early = along(bite.p10S);
  const late = bite.p90S.map(
    (atS, i): Point => [
      Math.min(box.x1, Number.isFinite(atS) ? axis.x(atS) : box.x1),
      depthY(box, bite.depthShares[i]!),
    ],
  );
  const median = along(bite.p50S);
  const marks: Mark[] = [];
  if (early.length > 1) {
    const lateInside = late.slice(late.length - early.length);
    marks.push(path(closed([...early, ...lateInside.reverse()]), 'biteBand'));
  }
  if (median.length > 1) marks.push(path(through(median), 'biteCase'), path(through(median), 'bite'));
  return marks;
}

/** A bracket under the stall with its temperatures. */
export function stallBracket(
  field: DepthTimeField,
  axis: Axis,
  box: MapBox,
  voice: Voice,
  taken: Box[],
): Mark[] {
  const { stall } = field;
  if (!stall || !(stall.toS > stall.fromS)) return [];
  const [a, b] = [axis.x(stall.fromS), Math.min(box.x1, axis.x(stall.toS))];
  if (b - a < 6) return [];
  const share = 0.86;
  const y = depthY(box, share);
  const words = voice.say({
    id: 'draw.stall',
    params: { low: voice.degrees(stall.lowC), high: voice.temperatureC(stall.highC) },
  });
  const half = widthOf(words) / 2;
  const middle = Math.max(box.x0 + half + 4, Math.min(box.x1 - half - 4, (a + b) / 2));
  const label = text(middle, y - 7, words, {
    anchor: 'middle',
    className: wordsOver(field, axis.at(middle), share - 0.05),
  });
  taken.push(boxOf(label), { x0: a, x1: b, y0: y - 2, y1: y + 8 });
  return [path(`M${px(a)} ${px(y + 6)}v-6H${px(b)}v6`, 'bracket'), label];
}

/** Upright dashes where a stage changes, its words above the frame where they do not touch. */
export function stageChanges(field: DepthTimeField, axis: Axis, box: MapBox): Mark[] {
  const taken: Box[] = [];
  return (field.changes ?? []).flatMap(({ atS, words }) => {
    const x = axis.x(atS);
    if (!(x > box.x0 && x < box.x1)) return [];
    const rule = line(x, box.y, x, box.y + box.height, 'stageLine');
    const isNearEnd = x + 5 + widthOf(words) > box.x1;
    const label = text(isNearEnd ? x - 5 : x + 5, box.y - 6, words, { anchor: isNearEnd ? 'end' : 'start' });
    const room = boxOf(label);
    if (taken.some((other) => touches(other, room))) return [rule];
    taken.push(room);
    return [rule, line(x, box.y - 16, x, box.y, 'tick'), label];
  });
}

/** Solid squares where something was measured. */
export const measuredPoints = (field: DepthTimeField, axis: Axis, box: MapBox): Mark[] =>
  (field.measured ?? []).flatMap(({ atS, depthShare }) =>
    atS >= axis.fromS && axis.x(atS) <= box.x1
      ? [rect(axis.x(atS) - 4, depthY(box, depthShare) - 4, 8, 8, 'meas')]
      : [],
  );
