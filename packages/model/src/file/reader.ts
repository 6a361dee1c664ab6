import { isScalar, type LineCounter, type Node } from 'yaml';
import type { Said } from '../said.ts';
import type { FileProblem } from './problem.ts';

/** Collects every problem of one file with its place. */
export class Reader {
  readonly problems: FileProblem[] = [];
  /** Zone of the cook, known before its times are read; undefined where the file gives none that exists. */
  readonly zone: string | undefined;
  readonly #lines: LineCounter;
  #key: string | undefined;

  constructor(lines: LineCounter, zone: string | undefined) {
    this.#lines = lines;
    this.zone = zone;
  }

  report(at: Node | number, id: string, params: Said['params'] = {}): undefined {
    const offset = typeof at === 'number' ? at : (at.range?.[0] ?? 0);
    const { line, col } = this.#lines.linePos(offset);
    const key: Said['params'] = this.#key === undefined ? {} : { key: this.#key };
    this.problems.push({
      id,
      params: { ...key, ...params },
      line: Math.max(line, 1),
      column: Math.max(col, 1),
    });
    return undefined;
  }

  lineOf(offset: number): number {
    return Math.max(this.#lines.linePos(offset).line, 1);
  }

  /** Reads the value of a key; problems in between name the key. */
  within<T>(key: string, read: () => T): T {
    const outer = this.#key;
    this.#key = key;
    const value = read();
    this.#key = outer;
    return value;
  }

  /** Takes over a problem that a reader of plain text has found. */
  take(at: Node, said: Said): undefined {
    return this.report(at, said.id, said.params);
  }
}

/** What a scalar says, as it was written: `1` and `yes` are texts too. Undefined: not a scalar, or empty. */
export function scalarText(node: Node | null | undefined): string | undefined {
  if (!isScalar(node)) return undefined;
  if (typeof node.value === 'string') return node.value;
  const source = node.source ?? '';
  return source === '' || node.value === null ? undefined : source;
}
