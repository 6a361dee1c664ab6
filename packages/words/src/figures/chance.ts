/** Below this many members a share is not known finer than 5 in 100 (binomial sd at 200 members, p = 0.9: 2 %). */
const FINE_FROM_MEMBERS = 1000;

/** Shares summed member by member may pass 1 by a rounding. */
const ROUNDING = 1e-9;

/** Percent points that `members` can carry: fives below a thousand, ones above. */
function rounded(share: number, members: number): number {
  if (!(share >= -ROUNDING && share <= 1 + ROUNDING))
    throw new RangeError(`a chance must be in [0, 1], got ${share}`);
  const step = members < FINE_FROM_MEMBERS ? 5 : 1;
  return Math.round((share * 100) / step) * step;
}

/** A chance as a figure: `90 %`. Never 0 or 100: a sample does not prove either. */
export function chance(share: number, members: number): string {
  const step = members < FINE_FROM_MEMBERS ? 5 : 1;
  const percent = rounded(share, members);
  if (percent >= 100) return `over ${100 - step} %`;
  return percent <= 0 ? `under ${step} %` : `${percent} %`;
}

/** A chance as one says it: `9 times in 10`, `17 times in 20`. */
export function timesIn(share: number, members: number): string {
  const step = members < FINE_FROM_MEMBERS ? 5 : 1;
  const percent = rounded(share, members);
  if (percent >= 100) return step === 5 ? 'more than 19 times in 20' : 'more than 99 times in 100';
  if (percent <= 0) return step === 5 ? 'less than once in 20' : 'less than once in 100';
  const [over, under] =
    percent % 10 === 0 ? [percent / 10, 10] : percent % 5 === 0 ? [percent / 5, 20] : [percent, 100];
  return `${over === 1 ? 'once' : over === 2 ? 'twice' : `${over} times`} in ${under}`;
}
