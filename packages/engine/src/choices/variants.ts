import { type Cook, isWaiting, type Piece, type Said, type Stage } from '@pitwright/model';
import { ZERO_CELSIUS_K } from '../numeric/constants.ts';

/** Another way to cook the same dinner, to be foreseen and priced beside the plan. */
export interface Variant {
  readonly id: string;
  readonly said: Said;
  readonly cook: Cook;
  /** Pieces whose forecast it changes; the others keep theirs. */
  readonly pieceIds: readonly string[];
  /** Whether it is about the night, or about reaching the chance asked. */
  readonly about: 'night' | 'chance';
  /** What it costs besides time, in words. */
  readonly costs: readonly Said[];
}

const WOULD_TAKE_A_NIGHT = new Set([
  'pork-shoulder',
  'brisket-whole',
  'brisket-flat',
  'brisket-point',
  'chuck-roast',
  'lamb-shoulder',
  'fresh-ham',
]);

/** One step hotter [K]: 25 °F. */
const HOTTER_K = 25 / 1.8;
/** A kitchen oven that finishes what the pit began [K]: 121 °C. */
const OVEN_K = ZERO_CELSIUS_K + 121;
const WARMER_K = ZERO_CELSIUS_K + 65;

/** The ways worth pricing for this cook; each a whole cook that can be foreseen and planned. */
export function variantsOf(cook: Cook): Variant[] {
  const night = cook.pieces.filter((piece) => WOULD_TAKE_A_NIGHT.has(piece.cut) && piece.onAt === undefined);
  return [
    ...night.flatMap((piece) => nightVariants(cook, piece)),
    ...boxed(cook),
    ...untilBite(cook),
    ...warmer(cook),
    ...together(cook),
    hotter(cook),
  ];
}

const withPiece = (cook: Cook, piece: Piece): Cook => ({
  ...cook,
  pieces: cook.pieces.map((other) => (other.id === piece.id ? piece : other)),
});

const isWait = (stage: Stage): boolean => isWaiting(stage.kind);
const waits = (piece: Piece): Stage[] => piece.stages.filter(isWait);

function nightVariants(cook: Cook, piece: Piece): Variant[] {
  const letter = { letter: piece.letter };
  const untilBite: Stage['until'] = { by: 'bite', bite: piece.bite };
  const bare: Stage = piece.stages[0] ?? { kind: 'bare', until: { by: 'bark' } };
  const bark: Stage = { ...bare, until: { by: 'bark' } };
  const variant = (id: string, changed: Piece, costs: Said[], pit = cook.pit): Variant => ({
    id: `${id}:${piece.id}`,
    said: { id: `alternative.${id}`, params: letter },
    cook: { ...withPiece(cook, changed), pit },
    pieceIds: [piece.id],
    about: 'night',
    costs,
  });
  const found: Variant[] = [];
  if (cook.kitchen.ovens > 0 && !piece.stages.some((stage) => stage.in === 'oven' && !isWait(stage)))
    found.push(
      variant(
        'oven',
        {
          ...piece,
          stages: [
            bark,
            {
              kind: 'foil',
              until: untilBite,
              in: 'oven',
              pit: cook.kitchen.ovenTemperature ?? { kind: 'temperature', si: OVEN_K },
            },
            ...waits(piece),
          ],
        },
        [{ id: 'price.softer-bark' }, { id: 'price.oven-taken' }],
      ),
    );
  if (piece.mass)
    found.push(
      variant(
        'cut-in-two',
        {
          ...piece,
          count: piece.count * 2,
          mass: { ...piece.mass, si: piece.mass.si / 2 },
          // Cut across its length: the thickest place gives a little, the ends far more.
          ...(piece.thickness && { thickness: { ...piece.thickness, si: piece.thickness.si * 0.85 } }),
        },
        [{ id: 'price.more-loss' }],
      ),
    );
  found.push(
    variant(
      'hot-and-foil',
      {
        ...piece,
        stages: [
          { ...bark, pit: { kind: 'temperature', si: cook.pit.temperature.si + HOTTER_K } },
          { kind: 'foil', until: untilBite },
          ...waits(piece),
        ],
      },
      [{ id: 'price.softer-bark' }, { id: 'price.hot-pit' }],
    ),
  );
  return found;
}

/** Racks that rest in the open kept in a box instead: the same meat, a longer wait. */
function boxed(cook: Cook): Variant[] {
  const changed = cook.pieces.map((piece) =>
    waits(piece).some((stage) => stage.kind === 'rest' && stage.until.by === 'table' && !stage.in)
      ? {
          ...piece,
          stages: piece.stages.map((stage): Stage => (isWait(stage) ? { ...stage, in: 'box' } : stage)),
        }
      : piece,
  );
  const letters = lettersChanged(cook, changed);
  if (!letters) return [];
  return [
    {
      id: 'box',
      said: { id: 'alternative.box', params: { letters } },
      cook: { ...cook, pieces: changed },
      pieceIds: [],
      about: 'chance',
      costs: [{ id: 'price.soft-crust' }],
    },
  ];
}

/** The last stage on the heat ended by the bite itself instead of the clock. */
function untilBite(cook: Cook): Variant[] {
  const changed = cook.pieces.map((piece) => {
    const last =
      piece.stages.findIndex(isWait) < 0 ? piece.stages.length - 1 : piece.stages.findIndex(isWait) - 1;
    const stage = piece.stages[last];
    if (!stage || stage.until.by === 'bite' || stage.until.by === 'table') return piece;
    return {
      ...piece,
      stages: piece.stages.map(
        (one, k): Stage => (k === last ? { ...one, until: { by: 'bite', bite: piece.bite } } : one),
      ),
    };
  });
  const letters = lettersChanged(cook, changed);
  if (!letters) return [];
  return [
    {
      id: 'until-bite',
      said: { id: 'alternative.until-bite', params: { letters } },
      cook: { ...cook, pieces: changed },
      pieceIds: changed.filter((piece, k) => piece !== cook.pieces[k]).map((piece) => piece.id),
      about: 'chance',
      costs: [{ id: 'price.more-tests' }],
    },
  ];
}

/** Large pieces held at a set warmth instead of a box that cools. */
function warmer(cook: Cook): Variant[] {
  if (cook.kitchen.ovens < 1) return [];
  const changed = cook.pieces.map((piece) =>
    waits(piece).some((stage) => stage.kind === 'hold' && stage.in !== 'warmer' && !stage.at)
      ? {
          ...piece,
          stages: piece.stages.map(
            (stage): Stage =>
              stage.kind === 'hold'
                ? { ...stage, in: 'warmer', at: { kind: 'temperature', si: WARMER_K } }
                : stage,
          ),
        }
      : piece,
  );
  const letters = lettersChanged(cook, changed);
  if (!letters) return [];
  return [
    {
      id: 'warmer',
      said: { id: 'alternative.warmer', params: { letters } },
      cook: { ...cook, pieces: changed },
      pieceIds: [],
      about: 'chance',
      costs: [{ id: 'price.oven-taken' }],
    },
  ];
}

/** By the bite, in a box and in a warm oven at once, where each alone may not reach. */
function together(cook: Cook): Variant[] {
  const [bite] = untilBite(cook);
  const [box] = boxed(bite?.cook ?? cook);
  const [warm] = warmer(box?.cook ?? bite?.cook ?? cook);
  const used = [bite, box, warm].filter((variant) => variant !== undefined);
  if (used.length < 2) return [];
  return [
    {
      id: 'together',
      said: { id: 'alternative.together', params: { count: used.length } },
      cook: used.at(-1)!.cook,
      pieceIds: bite?.pieceIds ?? [],
      about: 'chance',
      costs: used.flatMap((variant) => variant.costs),
    },
  ];
}

const hotter = (cook: Cook): Variant => ({
  id: 'hotter',
  said: { id: 'alternative.hotter' },
  cook: {
    ...cook,
    pit: { ...cook.pit, temperature: { ...cook.pit.temperature, si: cook.pit.temperature.si + HOTTER_K } },
  },
  pieceIds: cook.pieces.map((piece) => piece.id),
  about: 'chance',
  costs: [{ id: 'price.hot-pit' }],
});

const lettersChanged = (cook: Cook, changed: readonly Piece[]): string =>
  changed
    .filter((piece, k) => piece !== cook.pieces[k])
    .map((piece) => piece.letter)
    .join(', ');
