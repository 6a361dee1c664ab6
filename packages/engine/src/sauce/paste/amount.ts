/** Numbers as people write them in recipes: `1 1/2`, `1½`, `2-3`, `half a`, `1,5`. */

export interface Amount {
  readonly low: number;
  /** The same as `low` unless a range was written. */
  readonly high: number;
  /** `1,500` may be fifteen hundred or one and a half: both readings. */
  readonly otherReading?: number;
  /** What is left of the text behind it. */
  readonly rest: string;
}

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Plain hyphens, blanks and fractions; `1½` becomes `1 1/2`. */
export const plainText = (text: string): string =>
  text
    .replace(/[\u00a0\u2000-\u200b\u202f\u3000\t]/g, ' ')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/⁄|∕/g, '/')
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]} `)
    .replace(/\s+/g, ' ')
    .trim();

const WORDS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
};
const WORD = new RegExp(`^(${Object.keys(WORDS).join('|')})\\b\\s*`, 'i');
const HALF = /^(?:(?:a|one)\s+)?(half|third|quarter)\b(?:\s+(?:of\s+)?an?\b)?\s*/i;
const PARTS: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };

interface Read {
  readonly value: number;
  readonly other?: number;
  readonly rest: string;
}

function readNumber(text: string): Read | undefined {
  // 1 1/2, 1-1/2, 1 and 1/2: whole and fraction.
  const mixed = /^(\d+)(?:\s+and\s+|\s+|-)(\d+)\s*\/\s*(\d+)(?![\d/.,])\s*/.exec(text);
  if (mixed && Number(mixed[3]) > 0 && Number(mixed[2]) < Number(mixed[3]))
    return {
      value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]),
      rest: text.slice(mixed[0].length),
    };
  const fraction = /^(\d+)\s*\/\s*(\d+)(?![\d/.,])\s*/.exec(text);
  if (fraction) {
    const [over, under] = [Number(fraction[1]), Number(fraction[2])];
    if (!(under > 0)) return undefined;
    // 11/2 may be 1 1/2 whose blank was lost.
    const lost =
      over > under && over >= 10
        ? Number(fraction[1]![0]) + Number(fraction[1]!.slice(1)) / under
        : undefined;
    return {
      value: over / under,
      ...(lost !== undefined && { other: lost }),
      rest: text.slice(fraction[0].length),
    };
  }
  const decimal = /^(\d+(?:[.,]\d+)?|[.,]\d+)(?![\d/]|[.,]\d)\s*/.exec(text);
  if (decimal) {
    const digits = decimal[1]!.replace(',', '.');
    const value = Number(digits);
    const isThousands = /^[1-9]\d{0,2}[.,]\d{3}$/.test(decimal[1]!);
    return {
      value,
      ...(isThousands && { other: Number(digits.replace('.', '')) }),
      rest: text.slice(decimal[0].length),
    };
  }
  const part = HALF.exec(text);
  if (part) return { value: PARTS[part[1]!.toLowerCase()]!, rest: text.slice(part[0].length) };
  const word = WORD.exec(text);
  if (word) return { value: WORDS[word[1]!.toLowerCase()]!, rest: text.slice(word[0].length) };
  return undefined;
}

/** The amount that the text begins with; undefined where it begins with none. Text must be plain. */
export function readAmount(text: string): Amount | undefined {
  const first = readNumber(text);
  if (first === undefined) return undefined;
  const to = /^(?:-|to\b|or\b)\s*/i.exec(first.rest);
  const second = to && !/^or/i.test(to[0]) ? readNumber(first.rest.slice(to[0].length)) : undefined;
  // `1-pound jar` is one number; a range climbs.
  if (second && second.value > first.value && second.other === undefined && first.other === undefined)
    return { low: first.value, high: second.value, rest: second.rest };
  return {
    low: first.value,
    high: first.value,
    ...(first.other !== undefined && { otherReading: first.other }),
    rest: first.rest,
  };
}
