const MINUS = '−';

/** Decimal figures with at most `decimals` places, trailing zeros dropped, thousands parted by a comma. */
export function decimal(value: number, decimals = 0): string {
  if (!Number.isFinite(value)) throw new RangeError(`a figure must be finite to be printed, got ${value}`);
  const fixed = Math.abs(value).toFixed(decimals);
  const trimmed = decimals > 0 ? fixed.replace(/\.?0+$/, '') : fixed;
  const [whole, part] = trimmed.split('.') as [string, string?];
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
  const sign = value < 0 && Number(trimmed) !== 0 ? MINUS : '';
  return sign + (part ? `${grouped}.${part}` : grouped);
}

/** Nearest multiple of `step`. */
export const toStep = (value: number, step: number): number => Math.round(value / step) * step;

const VULGAR: Readonly<Record<string, string>> = { '1/4': '¼', '1/2': '½', '3/4': '¾' };

/**
 * A count of `1/denominator` parts as a cook writes it: `2 ½`, `3/8`, `1 1/3`.
 * Quarters and halves have their own signs; thirds and eighths are missing from many fonts and are spelled.
 */
export function fraction(value: number, denominator: 2 | 3 | 4 | 8): string {
  const parts = Math.round(value * denominator);
  const whole = Math.floor(parts / denominator);
  let over = parts - whole * denominator;
  let under: number = denominator;
  while (over > 0 && over % 2 === 0 && under % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return decimal(whole);
  const part = VULGAR[`${over}/${under}`] ?? `${over}/${under}`;
  return whole === 0 ? part : `${decimal(whole)} ${part}`;
}

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Small counts as words, as one says them aloud. */
export const count = (n: number): string => COUNTS[n] ?? decimal(n);

/** A list as one says it: `B, C and D`. */
export const listed = (items: readonly string[], last = 'and'): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`;

/** First letter upright, for the head of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** First letter small, for a name inside a sentence. */
export const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
