import type { Placement, Problem } from './problem.ts';
import { networkOf } from './windows.ts';

/** First and last start of each job with hands, all other jobs staying where they are. */
export function slackOf(problem: Problem, placement: Placement): Map<string, { from: number; to: number }> {
  const { edges } = networkOf(problem);
  const start = problem.jobs.map((job) => placement.start.get(job.id)!);
  const slack = new Map<string, { from: number; to: number }>();
  problem.jobs.forEach((job, k) => {
    if (job.hands === 0) return;
    let from = job.earliest;
    let to = job.latest;
    for (const edge of edges) {
      if (edge.to === k && edge.from !== k) from = Math.max(from, start[edge.from]! + edge.gap);
      if (edge.from === k && edge.to !== k) to = Math.min(to, start[edge.to]! - edge.gap);
    }
    const mine = placement.hands.get(job.id) ?? [];
    const taken = problem.jobs
      .filter(
        (other) => other.id !== job.id && (placement.hands.get(other.id) ?? []).some((h) => mine.includes(h)),
      )
      .map((other) => ({
        from: placement.start.get(other.id)!,
        to: placement.start.get(other.id)! + other.duration,
      }))
      .concat(
        problem.workers
          .filter((worker) => mine.includes(worker.id))
          .flatMap((worker) => [...worker.away, ...worker.asleep]),
      );
    const here = start[k]!;
    for (const span of taken) {
      if (span.to <= here) from = Math.max(from, span.to);
      else if (span.from >= here + job.duration) to = Math.min(to, span.from - job.duration);
    }
    slack.set(job.id, { from: Math.min(from, here), to: Math.max(to, here) });
  });
  return slack;
}
