/**
 * Which rack is this? Chances of the cut from what the eye sees, by Bayes' rule.
 *
 * A sign speaks through how often it is seen on each cut. Signs count as independent given the cut; one look in thirty is
 * taken as a slip, so that no single sign settles it alone.
 *
 * @source bones, sternum, skirt, squaring: USDA IMPS items 422, 416, 416A, 124; how often each sign is seen, and sizes as
 * sold: common practice, no source. Table in docs/models/cuts.md
 */
import type { Said } from '@pitwright/model';
import { exp, log } from '../numeric/elementary.ts';

export const RACKS = ['loin-back-ribs', 'spareribs', 'st-louis-ribs', 'beef-back-ribs'] as const;
export type Rack = (typeof RACKS)[number];

/** How the bones bend, seen along the rack. */
export const CURVES = ['curved', 'slight', 'flat'] as const;
export type RackCurve = (typeof CURVES)[number];

/** The long edge away from the backbone: round with loin meat on it, sawn straight, or with its flap and skirt. */
export const EDGES = ['rounded', 'squared', 'flap'] as const;
export type RackEdge = (typeof EDGES)[number];

export interface RackSigns {
  /** Bones counted, 3 to 16. */
  readonly bones?: number;
  /** Longest bone [m]. */
  readonly boneLengthM?: number;
  readonly curve?: RackCurve;
  readonly edge?: RackEdge;
  readonly massKg?: number;
  /** Along the row of bones [m]. */
  readonly lengthM?: number;
  /** What the label or the butcher says. */
  readonly label?: Rack;
}

export interface RackAnswer {
  /** Most likely first; sums to 1. */
  readonly chances: readonly { readonly cut: Rack; readonly chance: number }[];
  readonly likely: Rack;
  /** What spoke for or against it, weightiest first. */
  readonly reasons: readonly Said[];
  /** The look not yet taken that would settle most; missing where all three were taken or it is settled. */
  readonly lookNext?: Said;
}

type ByRack<T> = Readonly<Record<Rack, T>>;
type Lognormal = readonly [median: number, sdLn: number];

const FEWEST_BONES = 3;
const MOST_BONES = 16;

/** As often as one sees each in a shop; beef is mostly known by its colour. */
const PRIOR: ByRack<number> = {
  'loin-back-ribs': 0.35,
  spareribs: 0.25,
  'st-louis-ribs': 0.3,
  'beef-back-ribs': 0.1,
};
/** A label names the right cut this often. @source common practice, no source */
const LABEL_RIGHT = 0.8;
const SLIP = 1 / 30;

/** Share of racks with so many bones; what is left is spread over all counts by `SLIP`. */
const BONES: ByRack<Readonly<Record<number, number>>> = {
  'loin-back-ribs': { 8: 0.07, 9: 0.08, 10: 0.15, 11: 0.2, 12: 0.2, 13: 0.2, 14: 0.07, 15: 0.03 },
  spareribs: { 10: 0.02, 11: 0.32, 12: 0.34, 13: 0.26, 14: 0.06 },
  'st-louis-ribs': { 9: 0.03, 10: 0.1, 11: 0.32, 12: 0.3, 13: 0.2, 14: 0.05 },
  'beef-back-ribs': { 4: 0.07, 5: 0.03, 6: 0.12, 7: 0.73, 8: 0.05 },
};
const CURVE: ByRack<Readonly<Record<RackCurve, number>>> = {
  'loin-back-ribs': { curved: 0.8, slight: 0.17, flat: 0.03 },
  spareribs: { curved: 0.05, slight: 0.23, flat: 0.72 },
  'st-louis-ribs': { curved: 0.05, slight: 0.25, flat: 0.7 },
  'beef-back-ribs': { curved: 0.6, slight: 0.3, flat: 0.1 },
};
const EDGE: ByRack<Readonly<Record<RackEdge, number>>> = {
  'loin-back-ribs': { rounded: 0.8, squared: 0.17, flap: 0.03 },
  spareribs: { rounded: 0.02, squared: 0.06, flap: 0.92 },
  'st-louis-ribs': { rounded: 0.03, squared: 0.9, flap: 0.07 },
  'beef-back-ribs': { rounded: 0.35, squared: 0.6, flap: 0.05 },
};
/** [m] */
const BONE_LENGTH: ByRack<Lognormal> = {
  'loin-back-ribs': [0.11, 0.2],
  spareribs: [0.185, 0.15],
  'st-louis-ribs': [0.125, 0.1],
  'beef-back-ribs': [0.17, 0.15],
};
/** [kg] */
const MASS: ByRack<Lognormal> = {
  'loin-back-ribs': [1, 0.2],
  spareribs: [2, 0.14],
  'st-louis-ribs': [1.22, 0.17],
  'beef-back-ribs': [1.95, 0.2],
};
/** [m] */
const LENGTH: ByRack<Lognormal> = {
  'loin-back-ribs': [0.35, 0.1],
  spareribs: [0.475, 0.1],
  'st-louis-ribs': [0.34, 0.1],
  'beef-back-ribs': [0.35, 0.12],
};
/** A slip of the ruler or the scales lies anywhere over about e² in size. */
const SLIP_SPAN_LN = 2;
const SQRT_2PI = 2.5066282746310002;

const slipped = (share: number, ways: number): number => (1 - SLIP) * share + SLIP / ways;

/** Density in ln x. */
function density([median, sdLn]: Lognormal, x: number): number {
  const z = log(x / median) / sdLn;
  return slipped(exp((-z * z) / 2) / (sdLn * SQRT_2PI), SLIP_SPAN_LN);
}

const boneWays = MOST_BONES - FEWEST_BONES + 1;
const bonesSeen = (cut: Rack, bones: number): number => slipped(BONES[cut][bones] ?? 0, boneWays);
const curveSeen = (cut: Rack, curve: RackCurve): number => slipped(CURVE[cut][curve], CURVES.length);
const edgeSeen = (cut: Rack, edge: RackEdge): number => slipped(EDGE[cut][edge], EDGES.length);
const labelSeen = (cut: Rack, label: Rack): number =>
  cut === label ? LABEL_RIGHT : (1 - LABEL_RIGHT) / (RACKS.length - 1);

interface Witness {
  readonly id: string;
  readonly params: NonNullable<Said['params']>;
  readonly seen: (cut: Rack) => number;
}

function inRange(name: string, value: number, low: number, high: number): number {
  if (!(value >= low && value <= high))
    throw new RangeError(`${name} must be in [${low}, ${high}], got ${value}`);
  return value;
}

function witnesses(signs: RackSigns): Witness[] {
  const { bones, boneLengthM, curve, edge, massKg, lengthM, label } = signs;
  const found: Witness[] = [];
  if (bones !== undefined) {
    inRange('bones', bones, FEWEST_BONES, MOST_BONES);
    if (!Number.isInteger(bones)) throw new RangeError(`bones must be whole, got ${bones}`);
    found.push({ id: 'cuts.sign.bones', params: { bones }, seen: (cut) => bonesSeen(cut, bones) });
  }
  if (boneLengthM !== undefined) {
    inRange('boneLengthM', boneLengthM, 0.03, 0.5);
    found.push({
      id: 'cuts.sign.bone-length',
      params: { length: { kind: 'length', si: boneLengthM } },
      seen: (cut) => density(BONE_LENGTH[cut], boneLengthM),
    });
  }
  if (curve) found.push({ id: 'cuts.sign.curve', params: { curve }, seen: (cut) => curveSeen(cut, curve) });
  if (edge) found.push({ id: 'cuts.sign.edge', params: { edge }, seen: (cut) => edgeSeen(cut, edge) });
  if (massKg !== undefined) {
    inRange('massKg', massKg, 0.2, 6);
    found.push({
      id: 'cuts.sign.mass',
      params: { mass: { kind: 'mass', si: massKg } },
      seen: (cut) => density(MASS[cut], massKg),
    });
  }
  if (lengthM !== undefined) {
    inRange('lengthM', lengthM, 0.1, 1);
    found.push({
      id: 'cuts.sign.length',
      params: { length: { kind: 'length', si: lengthM } },
      seen: (cut) => density(LENGTH[cut], lengthM),
    });
  }
  if (label) found.push({ id: 'cuts.sign.label', params: { label }, seen: (cut) => labelSeen(cut, label) });
  return found;
}

function posterior(found: readonly Witness[]): number[] {
  const weights = RACKS.map((cut) => found.reduce((weight, { seen }) => weight * seen(cut), PRIOR[cut]));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

/** Surer than this no further look is asked for. */
const SETTLED = 0.95;

/** Mean chance of the leading cut once a look is taken, over what the look may show. */
function chanceAfter<T>(
  now: readonly number[],
  outcomes: readonly T[],
  seen: (cut: Rack, outcome: T) => number,
): number {
  return outcomes.reduce(
    (sum, outcome) => sum + Math.max(...RACKS.map((cut, i) => now[i]! * seen(cut, outcome))),
    0,
  );
}

function nextLook(signs: RackSigns, now: readonly number[]): Said | undefined {
  if (Math.max(...now) >= SETTLED) return undefined;
  const counts = Array.from({ length: boneWays }, (_, i) => FEWEST_BONES + i);
  const looks: { look: string; chance: number }[] = [];
  if (signs.bones === undefined) looks.push({ look: 'bones', chance: chanceAfter(now, counts, bonesSeen) });
  if (signs.curve === undefined) looks.push({ look: 'curve', chance: chanceAfter(now, CURVES, curveSeen) });
  if (signs.edge === undefined) looks.push({ look: 'edge', chance: chanceAfter(now, EDGES, edgeSeen) });
  const best = looks.sort((a, b) => b.chance - a.chance)[0];
  return best && { id: 'cuts.look-next', params: { look: best.look } };
}

/**
 * The chances of the cut from what is seen; with nothing told, what shops sell.
 * @throws RangeError on a count or size that no rack has
 */
export function whichRack(signs: RackSigns): RackAnswer {
  const found = witnesses(signs);
  const now = posterior(found);
  const chances = RACKS.map((cut, i) => ({ cut, chance: now[i]! })).sort((a, b) => b.chance - a.chance);
  const likely = chances[0]!.cut;
  const other = chances[1]!.cut;
  const reasons = found
    .map(({ id, params, seen }) => ({ id, params, factor: seen(likely) / seen(other) }))
    .sort((a, b) => Math.abs(log(b.factor)) - Math.abs(log(a.factor)))
    .map(({ id, params, factor }) => ({
      id,
      params: { ...params, cut: likely, other, factor },
      source: 'cuts.md',
    }));
  const lookNext = nextLook(signs, now);
  return { chances, likely, reasons, ...(lookNext && { lookNext }) };
}

/** The likely cut is told alone from here on. */
export const RACK_SURE = 0.8;

export const isRack = (cut: string): cut is Rack => (RACKS as readonly string[]).includes(cut);

/** The answer in one statement: the likely cut, or the two it may be. */
export function rackSaid({ chances }: RackAnswer): Said {
  const first = chances[0]!;
  const second = chances[1]!;
  const params = { cut: first.cut, chance: first.chance };
  return first.chance >= RACK_SURE
    ? { id: 'cuts.rack.likely', params, source: 'cuts.md' }
    : {
        id: 'cuts.rack.unsure',
        params: { ...params, other: second.cut, otherChance: second.chance },
        source: 'cuts.md',
      };
}
