/** A linear row: Σ coefficient × variable, compared with a number. */
export interface Row {
  readonly terms: readonly (readonly [number, string])[];
  readonly relation: '<=' | '>=' | '=';
  readonly value: number;
}

/** A mixed-integer program as it is built: variables by name with bounds, rows, one objective to be least. */
export class Program {
  readonly #rows: Row[] = [];
  readonly #bounds = new Map<string, readonly [number, number]>();
  readonly #binaries: string[] = [];
  readonly #generals: string[] = [];

  integer(name: string, low: number, high: number): string {
    this.#generals.push(name);
    this.#bounds.set(name, [low, high]);
    return name;
  }

  atLeastZero(name: string): string {
    this.#bounds.set(name, [0, Infinity]);
    return name;
  }

  binary(name: string): string {
    this.#binaries.push(name);
    return name;
  }

  row(terms: Row['terms'], relation: Row['relation'], value: number): void {
    this.#rows.push({ terms, relation, value });
  }

  get size(): { readonly columns: number; readonly rows: number } {
    return { columns: this.#bounds.size + this.#binaries.length, rows: this.#rows.length };
  }

  /** The program in the LP format, with extra rows that hold for this solve alone. */
  text(objective: Row['terms'], extra: readonly Row[] = []): string {
    const lines = ['Minimize', ` obj: ${objective.length ? sumText(objective) : '0 one'}`, 'Subject To'];
    [...this.#rows, ...extra].forEach((row, k) => {
      lines.push(` r${k}: ${sumText(row.terms)} ${row.relation} ${row.value}`);
    });
    lines.push('Bounds', ' 1 <= one <= 1');
    for (const [name, [low, high]] of this.#bounds)
      lines.push(high < Infinity ? ` ${low} <= ${name} <= ${high}` : ` ${name} >= ${low}`);
    if (this.#binaries.length) lines.push('Binaries', ...wrapped(this.#binaries));
    if (this.#generals.length) lines.push('Generals', ...wrapped(this.#generals));
    lines.push('End');
    return lines.join('\n');
  }
}

/** Readers of the format may stop at 255 characters a line. */
const TERMS_PER_LINE = 8;

const sumText = (terms: Row['terms']): string =>
  terms
    .map(([coefficient, name], k) => {
      const sign = coefficient < 0 ? '-' : k === 0 ? '' : '+';
      const breaks = k > 0 && k % TERMS_PER_LINE === 0 ? '\n  ' : '';
      return `${breaks}${sign} ${Math.abs(coefficient)} ${name}`;
    })
    .join(' ');

const wrapped = (names: readonly string[]): string[] => {
  const lines: string[] = [];
  for (let k = 0; k < names.length; k += 12) lines.push(` ${names.slice(k, k + 12).join(' ')}`);
  return lines;
};
