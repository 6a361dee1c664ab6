import type { Placement, Problem } from './problem.ts';

/** Jobs at the pit that follow each other without a gap in the same hands: one way there and back. */
export interface SlotWalk {
  readonly from: number;
  readonly to: number;
  readonly jobIds: readonly string[];
  readonly hands: readonly string[];
}

export function walksOf(problem: Problem, placement: Placement): SlotWalk[] {
  const atPit = problem.jobs
    .filter((job) => job.at === 'pit' && job.hands > 0)
    .map((job) => ({
      id: job.id,
      from: placement.start.get(job.id)!,
      to: placement.start.get(job.id)! + job.duration,
      hands: placement.hands.get(job.id) ?? [],
    }))
    .sort((a, b) => a.from - b.from || a.to - b.to);
  const walks: SlotWalk[] = [];
  for (const job of atPit) {
    const k = walks.findIndex(
      (walk) => walk.to === job.from && walk.hands.some((hand) => job.hands.includes(hand)),
    );
    if (k >= 0)
      walks[k] = {
        ...walks[k]!,
        to: job.to,
        jobIds: [...walks[k]!.jobIds, job.id],
        hands: union(walks[k]!.hands, job.hands),
      };
    else walks.push({ from: job.from, to: job.to, jobIds: [job.id], hands: job.hands });
  }
  return walks;
}

const union = (a: readonly string[], b: readonly string[]): string[] => [...new Set([...a, ...b])];
