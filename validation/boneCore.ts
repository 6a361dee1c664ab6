/**
 * How much a bone in the middle would move the way of a piece: `npx tsx validation/boneCore.ts` prints the table of
 * docs/models/bone.md. Conduction alone, in a body whose area grows as r^(E − 1), its bone gathered round its centre.
 */

interface Material {
  readonly conductivityWmK: number;
  /** [J/(m³·K)] */
  readonly capacityJM3K: number;
}
/** Raw pork shoulder. @source Choi & Okos 1986 */
const MEAT: Material = { conductivityWmK: 0.47, capacityJM3K: 3.5e6 };
const BONES: Readonly<Record<string, Material>> = {
  /** @source k of saturated equine cortical bone, Moses et al. 1995, Exp. Thermal and Fluid Sci. 11; 1.26 kJ/(kg·K) × 1,900 kg/m³ from memory */
  'compact bone': { conductivityWmK: 0.8, capacityJM3K: 2.4e6 },
  /** @source cancellous beef bone, 7·10⁻⁴ cal/(cm·s·K) and 0.73 cal/(cm³·K) (abstract) */
  'spongy bone': { conductivityWmK: 0.29, capacityJM3K: 3.06e6 },
  /** Marrow. @source Choi & Okos 1986, fat */
  'marrow fat': { conductivityWmK: 0.17, capacityJM3K: 2.0e6 },
};
/** Air 121 °C, convection and radiation. */
const SURFACE_WM2K = 15;
const CELLS = 200;
const STEP_S = 20;

/** Hours until the coldest meat has come this share of the way from where it began to the air. */
function hoursTo(
  share: number,
  radiusM: number,
  dimensionality: number,
  boneShare: number,
  bone: Material,
): number {
  const r = Array.from({ length: CELLS + 1 }, (_, i) => (radiusM * i) / CELLS);
  const area = r.map((x) => x ** (dimensionality - 1));
  const boneRadiusM = radiusM * boneShare ** (1 / dimensionality);
  const of = (i: number): Material => (0.5 * (r[i]! + r[i + 1]!) < boneRadiusM ? bone : MEAT);
  const capacity = r
    .slice(0, -1)
    .map(
      (_, i) =>
        (of(i).capacityJM3K * (r[i + 1]! ** dimensionality - r[i]! ** dimensionality)) / dimensionality,
    );
  const halfM = radiusM / CELLS / 2;
  const link = (i: number): number =>
    area[i + 1]! / (halfM / of(i).conductivityWmK + halfM / of(i + 1).conductivityWmK);
  const surface = area[CELLS]! / (halfM / of(CELLS - 1).conductivityWmK + 1 / SURFACE_WM2K);
  const theta = new Array<number>(CELLS).fill(0);
  const firstMeat = Math.max(
    0,
    theta.findIndex((_, i) => of(i) === MEAT),
  );
  for (let timeS = 0; timeS < 48 * 3600; timeS += STEP_S) {
    // Implicit: forward sweep from the centre, back from the surface.
    const c = new Array<number>(CELLS);
    const d = new Array<number>(CELLS);
    for (let i = 0; i < CELLS; i++) {
      const inner = i > 0 ? link(i - 1) : 0;
      const outer = i < CELLS - 1 ? link(i) : surface;
      const own = capacity[i]! / STEP_S;
      const from = i === CELLS - 1 ? surface : 0;
      const pivot = own + inner + outer - (i > 0 ? inner * c[i - 1]! : 0);
      c[i] = (i < CELLS - 1 ? outer : 0) / pivot;
      d[i] = (own * theta[i]! + from + (i > 0 ? inner * d[i - 1]! : 0)) / pivot;
    }
    for (let i = CELLS - 1; i >= 0; i--) theta[i] = d[i]! + (i < CELLS - 1 ? c[i]! * theta[i + 1]! : 0);
    if (theta[firstMeat]! >= share) return (timeS + STEP_S) / 3600;
  }
  return Infinity;
}

/** Bone by volume: of the mass, over 1.3 of the density. */
const PIECES = [
  ['pork shoulder, 3.6 kg', 0.0544, 1.75, 0.08],
  ['leg of lamb, 2.2 kg', 0.044, 1.6, 0.14],
] as const;
for (const [name, radiusM, dimensionality, share] of PIECES)
  for (const [kind, bone] of Object.entries(BONES)) {
    const times = [0.5, 0.75].map((way) => {
      const without = hoursTo(way, radiusM, dimensionality, 0, MEAT);
      const beside = hoursTo(way, radiusM, dimensionality, share, bone);
      const asMeat = hoursTo(way, radiusM, dimensionality, share, MEAT);
      return `${without.toFixed(2)} | ${beside.toFixed(2)} | ${(100 * (beside / asMeat - 1)).toFixed(1)} %`;
    });
    console.log(`| ${name} | ${kind} | ${times.join(' | ')} |`);
  }
