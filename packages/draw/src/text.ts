import { type Attributes, type Mark, px } from './mark.ts';

/** The floor of type, on paper and on screen [px]. */
export const SMALLEST = 13.5;
export const BODY = 16;

/** Advances of the sans at its heaviest, in hundredths of the size: signs of about one width together. */
const ADVANCES: readonly (readonly [number, string])[] = [
  [30, " !',.:;ijl’·"],
  [40, 'IJfrst?()-/°'],
  [50, 'acegvxyz"'],
  [70, 'ABCKRTVXYZ%&…'],
  [80, 'DGHNOQUmw½¼¾'],
  [98, 'MW@'],
];
/** Figures, and all that is not told above. */
const USUAL = 55;
const ADVANCE_OF: ReadonlyMap<string, number> = new Map(
  ADVANCES.flatMap(([hundredths, signs]) => [...signs].map((sign) => [sign, hundredths] as const)),
);
/** A little wide, so that labels do not touch where another face stands in for the sans. */
const MARGIN = 1.05;

export type Anchor = 'start' | 'middle' | 'end';

/** Width that a text will take [px], estimated. */
export function widthOf(text: string, fontSize = SMALLEST): number {
  let hundredths = 0;
  for (const sign of text) hundredths += ADVANCE_OF.get(sign) ?? USUAL;
  return (hundredths / 100) * fontSize * MARGIN;
}

/**
 * A line of text.
 * @throws RangeError under 13.5 px: lay the drawing out again, never shrink its words
 */
export function text(
  x: number,
  y: number,
  words: string,
  {
    size = SMALLEST,
    anchor = 'start',
    className = 'ink',
    ...more
  }: { size?: number; anchor?: Anchor; className?: string } & Attributes = {},
): Mark {
  if (!(size >= SMALLEST)) throw new RangeError(`text must be at least ${SMALLEST} px, got ${size}`);
  const attributes: Record<string, string | number> = {
    x: px(x),
    y: px(y),
    fontSize: size,
    textAnchor: anchor,
    className,
  };
  for (const [name, value] of Object.entries(more)) if (value !== undefined) attributes[name] = value;
  return { tag: 'text', attributes, text: words };
}

/** The box that a text mark will cover [px], estimated. */
export function boxOf(mark: Mark): { x0: number; x1: number; y0: number; y1: number } {
  const size = Number(mark.attributes.fontSize);
  const width = widthOf(mark.text ?? '', size);
  const x = Number(mark.attributes.x);
  const y = Number(mark.attributes.y);
  const shift =
    mark.attributes.textAnchor === 'end' ? width : mark.attributes.textAnchor === 'middle' ? width / 2 : 0;
  return { x0: x - shift, x1: x - shift + width, y0: y - size * 0.75, y1: y + size * 0.2 };
}

/** Breaks words into lines no wider than `width` [px], estimated. */
export function wrapped(words: string, width: number, size = SMALLEST): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of words.split(' ')) {
    const longer = current ? `${current} ${word}` : word;
    if (current && widthOf(longer, size) > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  return current ? [...lines, current] : lines;
}
