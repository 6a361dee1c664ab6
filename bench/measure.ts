/** One line of the report. */
export interface Figure {
  readonly what: string;
  readonly wallMs: number;
  readonly cpuMs: number;
  readonly barMs?: number;
}

/** Middle of three runs of so many repeats, after one to warm up; the processor's own time beside it, for a machine that is busy. */
export async function measured(
  what: string,
  work: () => unknown,
  barMs?: number,
  repeats = 1,
): Promise<Figure> {
  await work();
  const runs: { wall: number; cpu: number }[] = [];
  for (let run = 0; run < 3; run++) {
    const cpuBefore = process.cpuUsage();
    const before = performance.now();
    for (let repeat = 0; repeat < repeats; repeat++) await work();
    const wall = (performance.now() - before) / repeats;
    const cpu = process.cpuUsage(cpuBefore);
    runs.push({ wall, cpu: (cpu.user + cpu.system) / 1000 / repeats });
  }
  runs.sort((a, b) => a.wall - b.wall);
  return { what, wallMs: runs[1]!.wall, cpuMs: runs[1]!.cpu, ...(barMs !== undefined && { barMs }) };
}

const milliseconds = (ms: number): string => (ms < 10 ? ms.toFixed(2) : ms.toFixed(0)).padStart(8);

export function report(figures: readonly Figure[]): string {
  const width = Math.max(...figures.map(({ what }) => what.length));
  return [
    `${'what'.padEnd(width)}  wall ms   cpu ms   bar ms`,
    ...figures.map(
      ({ what, wallMs, cpuMs, barMs }) =>
        `${what.padEnd(width)} ${milliseconds(wallMs)} ${milliseconds(cpuMs)} ${barMs === undefined ? '' : milliseconds(barMs)}`,
    ),
  ].join('\n');
}
