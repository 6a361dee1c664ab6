import { type Document, isMap, LineCounter, type Node, parseAllDocuments, visit } from 'yaml';
import type { Cook, Pit, Recipe } from '../nouns.ts';
import type { Said } from '../said.ts';
import { cookForm } from './cook.ts';
import { zoneName } from './local-time.ts';
import { byPlace, type FileProblem } from './problem.ts';
import { Reader, scalarText } from './reader.ts';
import { pitForm, recipeForm } from './recipe.ts';
import { scan } from './scan.ts';
import { word } from './values.ts';

/** What a cook file holds. */
export type CookDocument =
  | { readonly kind: 'cook'; readonly cook: Cook }
  | { readonly kind: 'recipe'; readonly recipe: Recipe }
  | { readonly kind: 'pit'; readonly pit: Pit };

export type CookFileReading =
  /** `said` tells what the file loses when it is printed again: comments. */
  | { readonly ok: true; readonly document: CookDocument; readonly said: readonly Said[] }
  /** Every problem of the file, in the order of its text. */
  | { readonly ok: false; readonly problems: readonly FileProblem[] };

const KIND = word(['cook', 'recipe', 'pit']);

/** Id of the problem that the text is no YAML at this place. */
const SYNTAX = 'file.yaml';
/** A text with more is no cook file with slips in it. */
const MOST_SYNTAX_ERRORS = 200;
/** Ids that a broken text elsewhere can bring about. */
const MISSING = [
  'file.missing-key',
  'file.no-value',
  'file.no-item',
  'file.no-end',
  'file.no-kind',
  'file.not-a-map',
  'file.not-a-list',
  'file.not-a-cook',
];

/** Longer than any cook, shorter than what takes a second to parse. */
export const MOST_CHARACTERS = 256_000;

/**
 * Reads a cook file: strictly, and with every problem at once. Never throws on a text.
 *
 * @param text  the whole file, `kind: cook`, `recipe` or `pit`
 */
export function readCookFile(text: string): CookFileReading {
  if (text.length > MOST_CHARACTERS) {
    const problem = { id: 'file.too-large', params: { characters: text.length, most: MOST_CHARACTERS } };
    return { ok: false, problems: [{ ...problem, line: 1, column: 1 }] };
  }
  const lines = lineCounter(text);
  const early = new Reader(lines, undefined);
  const { comments, isParsable } = scan(text, early);
  if (!isParsable) return failure(early);
  const parsed = parse(text, early);
  if (!parsed) return failure(early);
  const reader = new Reader(lines, zoneOf(parsed.contents));
  const document = readContents(parsed.contents, reader);
  const problems = [...early.problems, ...withoutConsequences(reader.problems, early.problems)];
  if (problems.length > 0 || !document) return failure({ problems });
  return { ok: true, document, said: saidOfComments(comments, lines) };
}

function lineCounter(text: string): LineCounter {
  const lines = new LineCounter();
  lines.addNewLine(0);
  for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) lines.addNewLine(end + 1);
  return lines;
}

const failure = ({ problems }: { readonly problems: readonly FileProblem[] }): CookFileReading => ({
  ok: false,
  problems: [...problems].sort(byPlace),
});

function parse(text: string, reader: Reader): { contents: Node } | undefined {
  let documents: Document[];
  try {
    documents = parseAllDocuments(text, {
      version: '1.2',
      schema: 'core',
      uniqueKeys: false,
      logLevel: 'silent',
      prettyErrors: false,
    }) as Document[];
  } catch {
    // The parser recurses: a text that nests deeper than its stack is no cook.
    return reader.report(0, 'file.too-deep');
  }
  const [first, second] = documents;
  if (second)
    reader.report((second.contents as Node | null) ?? second.range?.[0] ?? 0, 'file.many-documents');
  reportSyntax(documents, reader);
  if (first && first.contents !== null) return { contents: first.contents as Node };
  if (reader.problems.length === 0) reader.report(0, 'file.empty');
  return undefined;
}

/**
 * One sentence a line: the first thing that is wrong is the one to mend. A quote left open is seen only at its far
 * end, so an error inside quoted text is told where the quote opens.
 */
function reportSyntax(documents: readonly Document[], reader: Reader): void {
  const quotes = documents.flatMap(quotedRanges);
  const told = new Set(reader.problems.map(({ line }) => line));
  for (const { code, pos } of documents.flatMap((document) => document.errors).slice(0, MOST_SYNTAX_ERRORS)) {
    const quote = quotes.find(([start, end]) => start <= pos[0] && pos[0] <= end);
    const offset = quote?.[0] ?? pos[0];
    const line = reader.lineOf(offset);
    if (!told.has(line)) reader.report(offset, SYNTAX, { code });
    told.add(line);
  }
}

function quotedRanges(document: Document): (readonly [number, number])[] {
  const ranges: (readonly [number, number])[] = [];
  visit(document, {
    Scalar: (_, { type, range }) => {
      if (range && (type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE')) ranges.push([range[0], range[1]]);
    },
  });
  return ranges;
}

function zoneOf(contents: Node | null): string | undefined {
  const text = isMap(contents) ? scalarText(contents.get('zone', true) as Node | undefined) : undefined;
  return text === undefined ? undefined : zoneName(text);
}

function readContents(contents: Node | null, reader: Reader): CookDocument | undefined {
  if (!isMap(contents)) return reader.report(contents ?? 0, 'file.not-a-cook');
  const kindNode = contents.get('kind', true) as Node | undefined;
  if (!kindNode) return reader.report(contents, 'file.no-kind');
  switch (reader.within('kind', () => KIND.read(kindNode, reader))) {
    case 'cook': {
      const cook = cookForm.read(contents, reader);
      return cook && { kind: 'cook', cook };
    }
    case 'recipe': {
      const recipe = recipeForm.read(contents, reader);
      return recipe && { kind: 'recipe', recipe };
    }
    case 'pit': {
      const pit = pitForm.read(contents, reader);
      return pit && { kind: 'pit', pit };
    }
    default:
      return undefined;
  }
}

/**
 * Where the text itself is broken, what stands on the same line, and what is missing, may only follow from it: these
 * are left out, so that no sentence sends a cook to a place where nothing is wrong.
 */
function withoutConsequences(
  problems: readonly FileProblem[],
  early: readonly FileProblem[],
): readonly FileProblem[] {
  const broken = new Set(early.map(({ line }) => line));
  const isCut = early.some(({ id }) => id === SYNTAX);
  return problems.filter(({ id, line }) => !broken.has(line) && !(isCut && MISSING.includes(id)));
}

const saidOfComments = (comments: readonly number[], lines: LineCounter): Said[] =>
  comments.length === 0
    ? []
    : [
        {
          id: 'file.comments-lost',
          params: { count: comments.length, line: lines.linePos(comments[0]!).line },
        },
      ];
