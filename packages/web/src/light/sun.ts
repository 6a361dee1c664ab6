/**
 * Sunrise and sunset from the low-precision solar coordinates of the Astronomical Almanac (section C, "low
 * precision formulas for the Sun's coordinates", stated good to 0.01° between 1950 and 2050), for the upper limb
 * with 34' of refraction: altitude −50'.
 */
const RAD = Math.PI / 180;
const J2000_MS = Date.UTC(2000, 0, 1, 12);
const DAY_MS = 86_400_000;
export const HORIZON_DEG = -50 / 60;

function sunPosition(ms: number): { rightAscensionDeg: number; declinationDeg: number } {
  const days = (ms - J2000_MS) / DAY_MS;
  const meanLongitude = 280.46 + 0.9856474 * days;
  const anomaly = (357.528 + 0.9856003 * days) * RAD;
  const longitude = (meanLongitude + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * RAD;
  const obliquity = (23.439 - 0.0000004 * days) * RAD;
  return {
    rightAscensionDeg: Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude)) / RAD,
    declinationDeg: Math.asin(Math.sin(obliquity) * Math.sin(longitude)) / RAD,
  };
}

/** Altitude of the sun's centre without refraction [°] at an instant, by latitude and east longitude [°]. */
export function sunAltitudeDeg(ms: number, latitude: number, longitude: number): number {
  const { rightAscensionDeg, declinationDeg } = sunPosition(ms);
  const siderealDeg = 280.46062 + 360.9856474 * ((ms - J2000_MS) / DAY_MS);
  const hourAngle = (siderealDeg + longitude - rightAscensionDeg) * RAD;
  const sine =
    Math.sin(latitude * RAD) * Math.sin(declinationDeg * RAD) +
    Math.cos(latitude * RAD) * Math.cos(declinationDeg * RAD) * Math.cos(hourAngle);
  return Math.asin(sine) / RAD;
}

/** Civil darkness: the sun more than 6° under the horizon. */
const DARK_DEG = -6;

export interface SunEvent {
  readonly at: number;
  readonly kind: 'rise' | 'set' | 'dark' | 'dawn';
}

/** Crossings of the horizon and of civil darkness between two instants [ms], in order, to the second. */
export function sunEvents(fromMs: number, toMs: number, latitude: number, longitude: number): SunEvent[] {
  const events: SunEvent[] = [];
  const stepMs = 10 * 60_000;
  const levels = [
    [HORIZON_DEG, 'rise', 'set'],
    [DARK_DEG, 'dawn', 'dark'],
  ] as const;
  for (const [level, up, down] of levels) {
    const above = (ms: number) => sunAltitudeDeg(ms, latitude, longitude) - level;
    for (let ms = fromMs; ms < toMs; ms += stepMs) {
      const [before, after] = [above(ms), above(ms + stepMs)];
      if (before < 0 === after < 0) continue;
      let [low, high] = [ms, ms + stepMs];
      while (high - low > 1000) {
        const middle = (low + high) / 2;
        if (above(middle) < 0 === before < 0) low = middle;
        else high = middle;
      }
      events.push({ at: high, kind: before < 0 ? up : down });
    }
  }
  return events.sort((a, b) => a.at - b.at);
}
