/** The inside of a piece from face to face, as the depth–time map draws it. */
import type { OtherSide } from '../meat/faces.ts';
import type { BiteLine } from './followed.ts';
import type { BiteLines, PieceInside } from './inside.ts';

/** Depth is a share of `thicknessM`, 0 at the open face. Times are those of the inside. */
export interface AcrossFaces {
  /** Of the whole piece where its faces are unlike, else to its middle [m]. */
  readonly thicknessM: number;
  /** What lies at depth 0: open meat, or a bird's skin. */
  readonly top: 'open-side' | 'skin-side';
  /** What lies at depth 1. */
  readonly bottom: 'middle' | OtherSide;
  readonly depthShares: readonly number[];
  /** One row per time, one value per depth [°C]. */
  readonly temperaturesC: readonly (readonly number[])[];
  /** Dried depth from the open face, and from the other one [m]. */
  readonly frontM: readonly number[];
  readonly otherFrontM?: readonly number[];
  /** Where all three members are soft under their crust; ∞ = not within the run [s from meat-on]. */
  readonly bite?: {
    readonly depthShares: readonly number[];
    readonly p10S: readonly number[];
    readonly p50S: readonly number[];
    readonly p90S: readonly number[];
  };
}

/** Three lines on one set of depths: those that all three members have under their crust. */
function onOneSet({ p10, p50, p90 }: BiteLines) {
  const depthShares = p50.depthShares.filter(
    (depth) => p10.depthShares.includes(depth) && p90.depthShares.includes(depth),
  );
  const on = (line: BiteLine) => depthShares.map((depth) => line.timesS[line.depthShares.indexOf(depth)]!);
  return { depthShares, p10S: on(p10), p50S: on(p50), p90S: on(p90) };
}

export function acrossFaces(inside: PieceInside): AcrossFaces {
  const { depthShares, temperaturesC, frontM, halfThicknessM, bite, otherSide } = inside;
  if (!otherSide)
    return {
      thicknessM: halfThicknessM,
      top: 'open-side',
      bottom: 'middle',
      depthShares,
      temperaturesC,
      frontM,
      ...(bite && { bite: onOneSet(bite) }),
    };
  const above = (shares: readonly number[]) => shares.map((share) => 0.5 * share);
  const below = (shares: readonly number[]) => shares.map((share) => 1 - 0.5 * share).reverse();
  const open = bite && onOneSet(bite);
  const other = otherSide.bite && onOneSet(otherSide.bite);
  const joined = (line: 'p10S' | 'p50S' | 'p90S') => [...open![line], ...[...other![line]].reverse()];
  return {
    thicknessM: 2 * halfThicknessM,
    top: otherSide.isUnderSkin ? 'skin-side' : 'open-side',
    bottom: otherSide.side,
    depthShares: [...above(depthShares), ...below(depthShares)],
    temperaturesC: temperaturesC.map((row, i) => [...row, ...[...otherSide.temperaturesC[i]!].reverse()]),
    frontM,
    otherFrontM: otherSide.frontM,
    ...(open &&
      other && {
        bite: {
          depthShares: [...above(open.depthShares), ...below(other.depthShares)],
          p10S: joined('p10S'),
          p50S: joined('p50S'),
          p90S: joined('p90S'),
        },
      }),
  };
}
