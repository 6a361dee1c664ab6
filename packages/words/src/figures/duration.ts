const MINUTE_S = 60;

/** Minutes that a person would say: whole below ten, fives above, unless `exact`. */
function sayableMinutes(seconds: number, exact: boolean): number {
  const minutes = seconds / MINUTE_S;
  return exact || minutes < 10 ? Math.round(minutes) : Math.round(minutes / 5) * 5;
}

/** A duration in s: `35 min`, `2 h 10`, `16 h`; whole days from two on: `4 days`. Rounded to 5 minutes from ten on unless `exact`. */
export function duration(seconds: number, { exact = false } = {}): string {
  if (!(seconds >= 0 && Number.isFinite(seconds)))
    throw new RangeError(`duration must be finite and at least 0 s, got ${seconds}`);
  if (seconds > 0 && seconds < 0.75 * MINUTE_S) return `${Math.max(1, Math.round(seconds))} s`;
  const minutes = sayableMinutes(seconds, exact);
  const hours = Math.floor(minutes / 60);
  const rest = minutes - hours * 60;
  if (hours === 0) return `${minutes} min`;
  if (rest === 0 && hours >= 48 && hours % 24 === 0) return `${hours / 24} days`;
  return rest === 0 ? `${hours} h` : `${hours} h ${String(rest).padStart(2, '0')}`;
}

/** Two durations in s, the unit once where both share it: `20–35 min`, `2 h 50–3 h 15`. */
export function durationRange(lowS: number, highS: number): string {
  const low = duration(lowS);
  const high = duration(highS);
  if (low === high) return low;
  return low.endsWith(' min') && high.endsWith(' min') ? `${low.slice(0, -4)}–${high}` : `${low}–${high}`;
}

/** Time since meat-on, as a cook says it: `2 h 10 in`. */
export const elapsed = (seconds: number): string => `${duration(seconds, { exact: true })} in`;
