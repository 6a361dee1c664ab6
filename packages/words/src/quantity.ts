import { fromSi, type Quantity, siSymbol, UNITS } from '@pitwright/model';
import { decimal } from './figures/number.ts';

const COMPOUND = /^([^0-9]+?) ([^0-9]+)$/;

const isUnit = (kind: Quantity['kind'], symbol: string): boolean =>
  (UNITS[kind] as readonly { symbol: string }[]).some((unit) => unit.symbol === symbol);

/** Up to six significant figures, enough that what was typed comes back as typed. */
const figures = (value: number): string => {
  const places = value === 0 ? 0 : Math.max(0, 5 - Math.floor(Math.log10(Math.abs(value))));
  return decimal(Number(value.toPrecision(6)), Math.min(places, 12));
};

/** A quantity in the unit it was written in (`2 lb 10 oz` keeps both parts), else in SI. */
export function writtenQuantity(q: Quantity): string {
  const unit = q.writtenIn ?? siSymbol(q.kind);
  const parts = isUnit(q.kind, unit) ? null : COMPOUND.exec(unit);
  if (parts && isUnit(q.kind, parts[1]!) && isUnit(q.kind, parts[2]!)) {
    const [large, small] = [parts[1]!, parts[2]!];
    const perLarge = fromSi(q.kind, 1, small) / fromSi(q.kind, 1, large);
    const total = Number(fromSi(q.kind, q.si, small).toPrecision(9));
    const whole = Math.floor(total / perLarge + 1e-9);
    return `${decimal(whole)} ${large} ${figures(total - whole * perLarge)} ${small}`;
  }
  const value = figures(fromSi(q.kind, q.si, unit));
  return unit === '1' ? value : `${value} ${unit}`;
}
