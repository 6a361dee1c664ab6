import { readFile } from 'node:fs/promises';
import {
  ifOtherCut,
  isRack,
  RACK_SURE,
  type Rack,
  type RackAnswer,
  type RackSigns,
  rackSaid,
  whichRack,
} from '@pitwright/engine';
import { type Cook, type Piece, readCookFile, type Said } from '@pitwright/model';
import { METRIC, type PrintSettings, printer, say, US } from '@pitwright/words';
import { PLAIN_PIT, plainCook } from './plain-cook.ts';
import { readSigns, type WrittenSigns } from './signs.ts';

export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

export interface WhichRackOptions extends WrittenSigns {
  readonly units?: string;
  /** Letter of the piece in the cook file; missing: its first rack. */
  readonly piece?: string;
}

/** Below this the other cut is not worth a line. */
const WORTH_SAYING = 0.02;

async function rackOfFile(path: string, letter: string | undefined): Promise<[Cook, Piece] | Said> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch {
    return { id: 'plan.no-file', params: { path } };
  }
  const reading = readCookFile(text);
  if (!reading.ok) {
    const { line, column, ...problem } = reading.problems[0]!;
    return { id: 'plan.problem-at', params: { path, line, column, problem: say(problem, METRIC) } };
  }
  if (reading.document.kind !== 'cook')
    return { id: 'plan.not-a-cook', params: { path, kind: reading.document.kind } };
  const { cook } = reading.document;
  const piece = cook.pieces.find((one) =>
    letter === undefined ? isRack(one.cut) : one.letter === letter.toUpperCase(),
  );
  return piece && isRack(piece.cut)
    ? [cook, piece]
    : {
        id: 'cuts.no-such-piece',
        params: {
          path,
          written: letter ?? 'of ribs',
          letters: cook.pieces.map((one) => one.letter).join(', '),
        },
      };
}

/** The cut the piece is taken for, and the one that the eye says it is; where they agree, the next likely. */
function otherThan(answer: RackAnswer, label: string | undefined): readonly [told: Rack, other: Rack] {
  const next = answer.chances[1]!.cut;
  const told = label !== undefined && isRack(label) ? label : answer.likely;
  return [told, told === answer.likely ? next : answer.likely];
}

/**
 * `which-rack [FILE] [--piece LETTER] --bones N --curve WORD --edge WORD …`
 * @returns 0, or 2 where the signs or the file are wrong
 */
export async function runWhichRack(
  path: string | undefined,
  options: WhichRackOptions,
  streams: Streams,
): Promise<number> {
  const settings: PrintSettings = options.units === 'us' ? US : METRIC;
  const print = printer(settings);
  const refuse = (said: Said): number => {
    streams.err(`${say(said, print)}\n`);
    return 2;
  };
  const read = readSigns(options);
  if ('id' in read) return refuse(read as Said);
  let signs: RackSigns = read;
  const found = path === undefined ? undefined : await rackOfFile(path, options.piece);
  if (found && 'id' in found) return refuse(found);
  if (found && !signs.label) signs = { ...signs, label: found[1].cut as Rack };

  const answer = whichRack(signs);
  const [told, other] = otherThan(answer, signs.label);
  const cook = found ? found[0] : plainCook(told, signs.massKg);
  const differs = ifOtherCut(cook, found ? found[1].id : 'a', other);
  const rest = answer.chances
    .slice(answer.chances[0]!.chance >= RACK_SURE ? 1 : 2)
    .filter(({ chance }) => chance >= WORTH_SAYING);
  const lines = [
    rackSaid(answer),
    ...rest.map((one): Said => ({ id: 'cuts.rack.chance', params: { ...one } })),
    ...answer.reasons,
    ...(answer.lookNext ? [answer.lookNext] : []),
    ...(found ? [] : [{ id: 'cuts.plain-cook', params: { pit: PLAIN_PIT } }]),
    ...differs,
  ];
  for (const line of lines) streams.out(`${say(line, print)}\n`);
  return 0;
}
