import type { Cut } from '../meat/cut.ts';

type Composition = Cut['composition'];

/** The last one of each cut: tables of properties are kept by composition, and the same solution must be the same one. */
const lastOf = new Map<string, { readonly share: number; readonly composition: Composition }>();

function thinned(composition: Composition, share: number): Composition {
  const parts = Object.entries(composition).map(([part, x]) => [part, x / (1 + share)]);
  return {
    ...(Object.fromEntries(parts) as unknown as Composition),
    water: (composition.water + share) / (1 + share),
  };
}

/**
 * The cut with so much of a water solution pumped into it: more water, the rest thinned.
 *
 * @param share  of the meat's own mass before it, as labels tell it, 0 to 0.3
 * @throws RangeError outside
 * @source mass balance; the salt and phosphate in it hold water that this does not follow
 */
export function withSolution(cut: Cut, share: number): Cut {
  if (!(share >= 0 && share <= 0.3 + 1e-9)) throw new RangeError(`share must be in [0, 0.3], got ${share}`);
  let last = lastOf.get(cut.id);
  if (last?.share !== share) {
    last = { share, composition: thinned(cut.composition, share) };
    lastOf.set(cut.id, last);
  }
  return { ...cut, composition: last.composition };
}
