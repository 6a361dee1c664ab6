/**
 * A mark: one SVG element as plain data. Attribute names are React's (`className`, `textAnchor`), so that a
 * screen maps marks with `createElement(mark.tag, mark.attributes, …)` and `svg.ts` writes the same as text.
 */
export type Tag =
  | 'g'
  | 'line'
  | 'rect'
  | 'path'
  | 'text'
  | 'tspan'
  | 'defs'
  | 'pattern'
  | 'clipPath'
  | 'title';

export interface Mark {
  readonly tag: Tag;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children?: readonly Mark[];
  readonly text?: string;
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Tenths of a pixel: finer is not seen, and keeps marks equal from run to run. */
export const px = (value: number): number => Math.round(value * 10) / 10 + 0;

const given = (attributes: Attributes): Record<string, string | number> =>
  Object.fromEntries(
    Object.entries(attributes).filter((entry): entry is [string, string | number] => entry[1] !== undefined),
  );

export const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  className: string,
  more: Attributes = {},
): Mark => ({
  tag: 'line',
  attributes: given({ x1: px(x1), y1: px(y1), x2: px(x2), y2: px(y2), className, ...more }),
});

export const rect = (
  x: number,
  y: number,
  width: number,
  height: number,
  className: string,
  more: Attributes = {},
): Mark => ({
  tag: 'rect',
  attributes: given({
    x: px(x),
    y: px(y),
    width: px(Math.max(0, width)),
    height: px(Math.max(0, height)),
    className,
    ...more,
  }),
});

export const path = (d: string, className: string, more: Attributes = {}): Mark => ({
  tag: 'path',
  attributes: given({ d, className, ...more }),
});

export const group = (children: readonly Mark[], more: Attributes = {}): Mark => ({
  tag: 'g',
  attributes: given(more),
  children,
});

/** Marks and all that is in them, outermost first. */
export const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => [one, ...flat(one.children ?? [])]);

export const mark = (tag: Tag, attributes: Attributes, children: readonly Mark[] = []): Mark => ({
  tag,
  attributes: given(attributes),
  children,
});

export type Point = readonly [x: number, y: number];

/** Straight strokes through the points. */
export const through = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');

/** The points as a closed shape. */
export const closed = (points: readonly Point[]): string => `${through(points)}Z`;
