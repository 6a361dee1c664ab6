import { Lexer } from 'yaml';
import type { Reader } from './reader.ts';

/** Announces a scalar in the token stream: the next token is text, whatever it begins with. */
const SCALAR_FOLLOWS = '\u001f';
/** Brackets within brackets, or hyphens and question marks on one line. */
const DEEPEST = 8;
/** After so many a text is another language, and the parser would take minutes over it. */
const MOST_REFUSALS = 50;
/** Blanks before the first sign of a line. */
const WIDEST_INDENT = 64;

/**
 * Refuses what a cook file never needs, before anything is parsed: anchors, aliases, tags, directives and deep
 * nesting, which the parser would follow until its stack or its memory ends.
 *
 * @returns where the comments stand, and whether the text is fit to be parsed
 */
export function scan(text: string, reader: Reader): { comments: readonly number[]; isParsable: boolean } {
  const comments: number[] = [];
  let offset = 0;
  let isScalar = false;
  let isLineStart = true;
  let brackets = 0;
  let indicators = 0;
  for (const token of new Lexer().lex(text)) {
    const isText = isScalar;
    isScalar = token === SCALAR_FOLLOWS;
    if (isControl(token)) continue;
    if (!isText) {
      const refusal = REFUSED[token[0]!];
      if (refusal !== undefined) reader.report(offset, refusal, { text: token.trim().slice(0, 40) });
      if (token.startsWith('#')) comments.push(offset);
      if (token === '[' || token === '{') brackets++;
      if (token === ']' || token === '}') brackets--;
      if (token === '-' || token === '?') indicators++;
      if (token.includes('\n')) indicators = 0;
      if (refusal !== undefined && reader.problems.length >= MOST_REFUSALS)
        return { comments, isParsable: false };
      const isWide = isLineStart && /^ +$/.test(token) && token.length > WIDEST_INDENT;
      if (brackets > DEEPEST || indicators > DEEPEST || isWide) {
        reader.report(offset, 'file.too-deep');
        return { comments, isParsable: false };
      }
    }
    isLineStart = token.endsWith('\n');
    offset += token.length;
  }
  return { comments, isParsable: true };
}

/** What a token of this first sign is, where a cook file has none such. */
const REFUSED: Readonly<Record<string, string>> = {
  '&': 'file.anchor',
  '*': 'file.alias',
  '!': 'file.tag',
  '%': 'file.directive',
};

/** Marks of the lexer that stand for no text: document start, end of flow, scalar follows. */
const isControl = (token: string): boolean =>
  token === '\u0002' || token === '\u0018' || token === SCALAR_FOLLOWS;
