/** Eight cooks of our own for the run sheet. Invented, marked demo, never evidence. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Cook, type Piece, readCookFile } from '@pitwright/model';

export function exampleCook(name: string): Cook {
  const path = join(import.meta.dirname, '..', '..', 'examples', `${name}.pitwright.yaml`);
  const reading = readCookFile(readFileSync(path, 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(`${name} is no cook`);
  return reading.document.cook;
}

const regatta = (): Cook => exampleCook('regatta-dinner');

/** The chicken beside the ribs and not after them; racks that rest in the open go into the box. */
export function regattaInBoxes(): Cook {
  const cook = regatta();
  return {
    ...cook,
    pieces: cook.pieces.map((piece): Piece => {
      const { after: _, ...rest } = piece;
      return {
        ...rest,
        stages: piece.stages.map((stage) =>
          stage.kind === 'rest' && stage.until.by === 'table' ? { ...stage, in: 'box' as const } : stage,
        ),
      };
    }),
  };
}

export interface Scenario {
  readonly name: string;
  readonly cook: Cook;
  /** Whether all its demands can be kept. */
  readonly fits: boolean;
}

const without = (cook: Cook, letters: string): Cook => ({
  ...cook,
  pieces: cook.pieces.filter((piece) => !letters.includes(piece.letter)),
});

export function scenarios(): Scenario[] {
  const base = regattaInBoxes();
  const brisket: Piece = {
    ...base.pieces.find((piece) => piece.letter === 'D')!,
    id: 'd',
    cut: 'brisket-whole',
    onAt: '2027-09-12T06:00:00Z',
  };
  return [
    { name: 'the regatta dinner', cook: base, fits: true },
    { name: 'two racks on a kettle', cook: exampleCook('two-racks'), fits: true },
    {
      name: 'one pair of hands, away on Saturday afternoon and at the early race',
      cook: {
        ...without(base, 'D'),
        hands: base.hands.map((hand) => ({
          ...hand,
          away: [
            { from: '2027-09-11T14:30:00Z', to: '2027-09-11T17:00:00Z' },
            { from: '2027-09-12T05:00:00Z', to: '2027-09-12T05:45:00Z' },
          ],
        })),
      },
      fits: true,
    },
    {
      name: 'a brisket put on at seven that cannot be ready with the rest',
      cook: {
        ...base,
        pit: { ...base.pit, grateArea: { kind: 'area', si: 0.9 } },
        pieces: base.pieces.map((piece) => (piece.letter === 'D' ? brisket : piece)),
      },
      fits: true,
    },
    { name: 'across a clock change', cook: exampleCook('night-of-the-clocks'), fits: true },
    {
      name: 'a full grate',
      cook: {
        ...without(base, 'DE'),
        pit: { ...base.pit, grateArea: { kind: 'area', si: 0.2 } },
      },
      fits: false,
    },
    {
      name: 'other cuts, delivered late on the day before',
      cook: {
        ...base,
        pieces: base.pieces.map((piece) =>
          piece.letter === 'B' ? { ...piece, cut: 'st-louis-ribs', mass: { kind: 'mass', si: 1.5 } } : piece,
        ),
      },
      fits: true,
    },
    {
      name: 'three fridge shelves for five more guests',
      cook: {
        ...base,
        guests: { ...base.guests, adults: base.guests.adults + 5 },
        pieces: base.pieces.map((piece) => (piece.letter === 'C' ? { ...piece, count: 5 } : piece)),
      },
      fits: false,
    },
  ];
}
