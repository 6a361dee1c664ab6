import { type ContourMultiPolygon, contours } from 'd3-contour';
import { type Mark, path, px } from '../mark.ts';
import type { Axis } from '../time/axis.ts';
import { HEAT_STEP_C, heatFill, heatStep } from '../tokens/heat.ts';
import { type DepthTimeField, temperatureAt } from './field.ts';

/** Side of a cell of the raster that the steps are traced on [px]. */
const CELL_PX = 4;

export interface MapBox {
  readonly x0: number;
  readonly x1: number;
  readonly y: number;
  readonly height: number;
}

/** In colours, or in greys of the same order. */
export type Ink = 'colour' | 'black';

/** The region at or above `threshold` as one path within the box. */
type Tracer = (threshold: number) => string;

/** Traces where the field passes a temperature, on a raster even in pixels. */
export function tracer(field: DepthTimeField, axis: Axis, box: MapBox): Tracer {
  const across = Math.max(2, Math.ceil((box.x1 - box.x0) / CELL_PX));
  const down = Math.max(2, Math.ceil(box.height / CELL_PX));
  const values = new Array<number>(across * down);
  for (let j = 0; j < down; j++)
    for (let i = 0; i < across; i++) {
      const atS = axis.at(box.x0 + ((i + 0.5) / across) * (box.x1 - box.x0));
      values[j * across + i] = temperatureAt(field, atS, (j + 0.5) / down);
    }
  const trace = contours().size([across, down]).smooth(true);
  const toX = (i: number): number => px(box.x0 + (i / across) * (box.x1 - box.x0));
  const toY = (j: number): number => px(box.y + (j / down) * box.height);
  return (threshold) => written(trace.contour(values, threshold), toX, toY);
}

function written(
  region: ContourMultiPolygon,
  toX: (i: number) => number,
  toY: (j: number) => number,
): string {
  return region.coordinates
    .flatMap((polygon) =>
      polygon.map((ring) => {
        let last = '';
        const steps = ring.flatMap(([i, j], at) => {
          const step = `${toX(i!)} ${toY(j!)}`;
          if (step === last) return [];
          last = step;
          return [`${at === 0 ? 'M' : 'L'}${step}`];
        });
        return `${steps.join('')}Z`;
      }),
    )
    .join('');
}

/** Temperature as colour in steps of 5 °C, each region laid over the one below it. */
export function heatSteps(field: DepthTimeField, box: MapBox, trace: Tracer, ink: Ink): Mark[] {
  const all = field.temperaturesC.flatMap((row) => Array.from(row));
  const low = heatStep(Math.min(...all.filter(Number.isFinite)));
  const high = heatStep(Math.max(...all.filter(Number.isFinite)));
  const whole = `M${px(box.x0)} ${px(box.y)}H${px(box.x1)}V${px(box.y + box.height)}H${px(box.x0)}Z`;
  const marks = [path(whole, 'heat', { fill: heatFill(low, ink) })];
  for (let step = low + 1; step <= high; step++) {
    const d = trace(step * HEAT_STEP_C);
    if (d) marks.push(path(d, 'heat', { fill: heatFill(step, ink) }));
  }
  return marks;
}
