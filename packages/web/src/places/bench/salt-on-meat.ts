import { type Coating, rubForSurface, rubSalt, type SauceOutcome } from '@pitwright/engine/sauce';
import type { Said } from '@pitwright/model';
import type { Seen } from './messages.ts';

/** Salt of this rub on the pieces it is for, at one coating. */
export function saltOnMeat(
  { onMeat }: Seen,
  outcome: SauceOutcome,
  coating: Coating,
): { perKg: number; rubG: number; lowG: number; highG: number; share: number; said: readonly Said[] } {
  const needed = rubForSurface(onMeat.surfaceM2, coating);
  const { saltPerKgEdible, saltFraction, said } = rubSalt(
    outcome.lines,
    needed.middle,
    onMeat.meatKg,
    onMeat.boneShare,
  );
  return {
    perKg: saltPerKgEdible,
    rubG: needed.middle,
    lowG: needed.low,
    highG: needed.high,
    share: saltFraction,
    said,
  };
}
