import { Lexer } from 'yaml';
import type { Reader } from './reader.ts';

/** Announces a scalar in the token stream: the next token is text, whatever it begins with. */
const SCALAR_FOLLOWS = '\u001f';
const DEEPEST_FLOW = 8;

/**
 * Refuses what a cook file never needs, before anything is parsed: anchors, aliases, tags, directives and deep
 * nesting. @returns where the comments stand, and whether the text is fit to be parsed
 */
export function scan(text: string, reader: Reader): { comments: readonly number[]; isParsable: boolean } {
  const comments: number[] = [];
  let offset = 0;
  let isScalar = false;
  let depth = 0;
  for (const token of new Lexer().lex(text)) {
    const isText = isScalar;
    isScalar = token === SCALAR_FOLLOWS;
    if (isControl(token)) continue;
    if (!isText) {
      if (token.startsWith('#')) comments.push(offset);
      if (token.startsWith('&')) reader.report(offset, 'file.anchor', { text: token });
      if (token.startsWith('*')) reader.report(offset, 'file.alias', { text: token });
      if (token.startsWith('!')) reader.report(offset, 'file.tag', { text: token });
      if (token.startsWith('%')) reader.report(offset, 'file.directive', { text: token.trim() });
      if (token === '[' || token === '{') depth++;
      if (token === ']' || token === '}') depth--;
      if (depth > DEEPEST_FLOW) {
        reader.report(offset, 'file.too-deep');
        return { comments, isParsable: false };
      }
    }
    offset += token.length;
  }
  return { comments, isParsable: true };
}

/** Marks of the lexer that stand for no text: document start, end of flow, scalar follows. */
const isControl = (token: string): boolean =>
  token === '\u0002' || token === '\u0018' || token === SCALAR_FOLLOWS;
