/** Fractions as a measuring spoon or a ruler has them. */
const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** Denominators that may be written, those of spoons and rulers first. */
const DENOMINATORS = [2, 3, 4, 8, 16, 5, 6, 10, 12, 32] as const;
const RULER_DENOMINATORS = DENOMINATORS.slice(0, 5);

/** More digits than this no kitchen measures; fewer than a double holds, so that a printed number reads back equal. */
const MOST_DIGITS = 9;

const NUMBER = String.raw`[+\-−]?(?:(?:\d+\s)?\s*\d+\s?[/⁄]\s?\d+|\d*\s?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d+(?:[.,]\d+)?|[.,]\d+)`;

/** Source of a regular expression that matches one number as a cook writes it. */
export const COOK_NUMBER = NUMBER;

/** Ids of what can be wrong with a number. */
export type NumberFault =
  | 'quantity.not-a-number'
  | 'quantity.thousands'
  | 'quantity.fraction'
  | 'quantity.digits';

/**
 * A number as a cook writes it: `2.5`, `2,5`, `2½`, `2 1/2`, `1/3`; a string names what is wrong with it.
 * A comma before exactly three digits could part thousands, so it is refused (`0,125` cannot be and is taken).
 */
export function cookNumber(text: string): number | NumberFault {
  const negative = /^[-−]/.test(text);
  const body = text.replace(/^[+\-−]/, '').trim();
  const sign = negative ? -1 : 1;
  const vulgar = /^(?:\d+\s?)?\D$/u.test(body) ? VULGAR[body.slice(-1)] : undefined;
  if (vulgar) return sign * (Number(body.slice(0, -1).trim() || '0') + vulgar[0] / vulgar[1]);
  const fraction = /^(?:(\d+)\s+)?(\d+)\s?[/⁄]\s?(\d+)$/.exec(body);
  if (fraction) {
    const [whole, over, under] = [Number(fraction[1] ?? '0'), Number(fraction[2]), Number(fraction[3])];
    const isKnown = (DENOMINATORS as readonly number[]).includes(under);
    if (!isKnown || over === 0 || (fraction[1] !== undefined && over >= under)) return 'quantity.fraction';
    return sign * (Math.floor(over / under) + whole + (over % under) / under);
  }
  if (/^[1-9]\d{0,2},\d{3}$/.test(body)) return 'quantity.thousands';
  if (!/^(?:\d+(?:[.,]\d+)?|[.,]\d+)$/.test(body)) return 'quantity.not-a-number';
  const digits = body.replace(/[.,]/, '').replace(/^0+/, '');
  if (digits.length > MOST_DIGITS) return 'quantity.digits';
  return sign * Number(body.replace(',', '.'));
}

/** At most nine significant digits, never an exponent. */
function decimal(value: number, digits: number): string {
  const rounded = Number(value.toPrecision(digits));
  const text = String(rounded);
  return text.includes('e') ? rounded.toFixed(20).replace(/\.?0+$/, '') : text;
}

function fraction(
  value: number,
  denominators: readonly number[],
): { text: string; value: number } | undefined {
  const size = Math.abs(value);
  const sign = value < 0 ? -1 : 1;
  for (const under of denominators) {
    const parts = Math.round(size * under);
    const [whole, over] = [Math.floor(parts / under), parts % under];
    if (over === 0 || Math.abs(parts / under - size) > 1e-9 * size) continue;
    const text = `${sign < 0 ? '-' : ''}${whole > 0 ? `${whole} ` : ''}${over}/${under}`;
    return { text, value: sign * (whole + over / under) };
  }
  return undefined;
}

/**
 * The shortest way of writing a value that reads back as the same quantity: a decimal, or a fraction where a decimal
 * would not come back. Otherwise (a value nobody wrote by hand) nine significant digits.
 *
 * @param isSame  whether a candidate reads back as the quantity meant
 * @param ruler   fractions first, as spoons and rulers are marked
 */
export function writtenNumber(
  value: number,
  isSame: (candidate: number) => boolean,
  { ruler }: { ruler: boolean },
): string {
  if (ruler && !isSame(Math.round(value))) {
    const marked = fraction(value, RULER_DENOMINATORS);
    if (marked && isSame(marked.value)) return marked.text;
  }
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    const text = decimal(value, digits);
    if (isSame(Number(text))) return text;
  }
  const exact = fraction(value, DENOMINATORS);
  return exact && isSame(exact.value) ? exact.text : decimal(value, MOST_DIGITS);
}
