import type { StageKind } from '@pitwright/model';
import type { Ink } from '../drawing.ts';
import { type Mark, mark } from '../mark.ts';

/** Letters past H take the colours again; the letter itself is spoken, drawn and printed. */
const COLOURS = 'ABCDEFGH';
export const colourClass = (letter: string): string => {
  const at = letter.charCodeAt(0) - 65;
  return `pc p${COLOURS[((at % 8) + 8) % 8]}`;
};

const tint = (width: number, height: number, opacity: number): Mark =>
  mark('rect', { width, height, fill: 'currentColor', opacity });

const stroke = (width: number, height: number, y = 0): Mark =>
  mark('rect', { y, width, height, fill: 'currentColor' });

interface Hatch {
  readonly width: number;
  readonly height: number;
  readonly isSlanted: boolean;
  readonly marks: readonly Mark[];
}

/** Fills of the stages: they are told apart in black and white. */
const HATCHES: Readonly<Record<StageKind, Hatch>> = {
  bare: { width: 6, height: 6, isSlanted: false, marks: [tint(6, 6, 0.36)] },
  foil: { width: 5, height: 5, isSlanted: true, marks: [tint(5, 5, 0.3), stroke(2.2, 5)] },
  paper: { width: 9, height: 9, isSlanted: true, marks: [tint(9, 9, 0.3), stroke(1.5, 9)] },
  glazed: { width: 6, height: 6, isSlanted: false, marks: [tint(6, 6, 0.88)] },
  rest: { width: 5, height: 4, isSlanted: false, marks: [tint(5, 4, 0.12), stroke(2.6, 1.4, 1.3)] },
  chill: { width: 4, height: 4, isSlanted: false, marks: [tint(4, 4, 0.08), stroke(1.3, 1.4, 1.3)] },
  hold: { width: 40, height: 4, isSlanted: false, marks: [tint(40, 4, 0.12), stroke(40, 1.4, 1.3)] },
};

const hatchId = (id: string, letter: string, kind: StageKind): string => `${id}-${letter}-${kind}`;

export const hatchFill = (id: string, letter: string, kind: StageKind): string =>
  `url(#${hatchId(id, letter, kind)})`;

/** The hatches of one letter; they take the colour of the group they are defined in. */
export function hatches(id: string, letter: string, ink: Ink, kinds: readonly StageKind[]): Mark {
  const patterns = [...new Set(kinds)].map((kind) => {
    const { width, height, isSlanted, marks } = HATCHES[kind];
    return mark(
      'pattern',
      {
        id: hatchId(id, letter, kind),
        width,
        height,
        patternUnits: 'userSpaceOnUse',
        patternTransform: isSlanted ? 'rotate(45)' : undefined,
      },
      marks,
    );
  });
  return mark('defs', {}, [mark('g', { className: ink === 'black' ? 'pc' : colourClass(letter) }, patterns)]);
}
