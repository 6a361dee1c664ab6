/** Pieces are named by letter in the file and by id in memory. */
import { isMap, isScalar, isSeq, type Node } from 'yaml';
import type { Formula, Piece } from '../nouns.ts';
import type { Reader } from './reader.ts';

interface WithPieces {
  readonly pieces: readonly Piece[];
  readonly formulas: readonly Formula[];
}

/** Turns letters into ids. */
export function toIds<T extends WithPieces>(owner: T): T {
  const idOf = new Map(owner.pieces.map((piece) => [piece.letter, piece.id]));
  return withReferences(owner, (letter) => idOf.get(letter) ?? letter);
}

/** Turns ids into letters. @throws RangeError where a piece that is named does not exist */
export function toLetters<T extends WithPieces>(owner: T): T {
  const letterOf = new Map(owner.pieces.map((piece) => [piece.id, piece.letter]));
  return withReferences(owner, (id) => {
    const letter = letterOf.get(id);
    if (letter === undefined) throw new RangeError(`no piece has the id ${id}`);
    return letter;
  });
}

function withReferences<T extends WithPieces>(owner: T, translate: (reference: string) => string): T {
  return {
    ...owner,
    pieces: owner.pieces.map((piece) =>
      piece.after ? { ...piece, after: piece.after.map(translate) } : piece,
    ),
    formulas: owner.formulas.map((formula) =>
      formula.for ? { ...formula, for: formula.for.map(translate) } : formula,
    ),
  };
}

/** The items of a list with the nodes of one of their keys, in the order of the text. */
function valuesOf(list: Node, key: string): { text: string; node: Node; item: Node }[] {
  if (!isSeq(list)) return [];
  return list.items.flatMap((item) => {
    const node = isMap(item) ? item.get(key, true) : undefined;
    return isScalar(node) ? [{ text: String(node.value), node, item: item as Node }] : [];
  });
}

/** Letters and ids stand once; the letters that `after` and `for` name exist, and nothing waits for itself. */
export function checkReferences(
  owner: Partial<WithPieces>,
  pieces: Node,
  formulas: Node,
  reader: Reader,
): void {
  const letters = valuesOf(pieces, 'letter');
  const names = valuesOf(formulas, 'name');
  reportTwice(letters, 'file.letter-twice', reader);
  reportTwice(names, 'file.name-twice', reader);
  const pieceIds = (owner.pieces ?? []).map(({ id, letter }) => ({ id, label: letter }));
  const formulaIds = (owner.formulas ?? []).map(({ id, name }) => ({ id, label: name }));
  reportSameId(pieceIds, letters, reader);
  reportSameId(formulaIds, names, reader);
  const known = [...new Set(letters.map(({ text }) => text))];
  for (const node of [...namedLetters(pieces, 'after'), ...namedLetters(formulas, 'for')]) {
    const text = String(node.value);
    if (known.includes(text) || !/^[A-Z]{1,2}$/.test(text)) continue;
    reader.report(node, 'file.no-such-piece', { text, known: known.join(', ') });
  }
  checkOrder(owner.pieces ?? [], pieces, reader);
}

function reportTwice(values: { text: string; node: Node }[], id: string, reader: Reader): void {
  const seen = new Set<string>();
  for (const { text, node } of values) {
    if (seen.has(text)) reader.report(node, id, { text });
    seen.add(text);
  }
}

/** Also where an id was not written but follows from a letter or a name. */
function reportSameId(
  owned: readonly { readonly id?: string; readonly label?: string }[],
  labels: readonly { text: string; node: Node; item: Node }[],
  reader: Reader,
): void {
  const labelOf = new Map<string, string>();
  for (const { id, label } of owned) {
    if (id === undefined || label === undefined) continue;
    const first = labelOf.get(id);
    if (first !== undefined && first !== label) {
      const place = labels.find(({ text }) => text === label);
      const written = isMap(place?.item) ? (place.item.get('id', true) as Node | undefined) : undefined;
      reader.report(written ?? place?.node ?? 0, 'file.id-twice', { text: id });
    }
    labelOf.set(id, first ?? label);
  }
}

function namedLetters(list: Node, key: string) {
  if (!isSeq(list)) return [];
  return list.items.flatMap((item) => {
    const names = isMap(item) ? item.get(key, true) : undefined;
    return isSeq(names) ? names.items.filter((name) => isScalar(name)) : [];
  });
}

/** A piece that goes on after another cannot, by any chain, come before it. */
function checkOrder(pieces: readonly Piece[], list: Node, reader: Reader): void {
  const afterOf = new Map(pieces.map((piece) => [piece.letter, piece.after ?? []]));
  const waitsFor = (letter: string, target: string, seen: Set<string>): boolean =>
    (afterOf.get(letter) ?? []).some((before) => {
      if (before === target) return true;
      if (seen.has(before)) return false;
      seen.add(before);
      return waitsFor(before, target, seen);
    });
  for (const { text, node } of valuesOf(list, 'letter'))
    if (waitsFor(text, text, new Set())) reader.report(node, 'file.after-circle', { letter: text });
}
