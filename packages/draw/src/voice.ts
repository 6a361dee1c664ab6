import type { Said } from '@pitwright/model';

/**
 * The reader's words, handed in: drawings hold no text of their own. Times are seconds since 1970 UTC.
 * `chartVoice` of packages/words makes one.
 */
export interface Voice {
  readonly say: (said: Said) => string;
  /** `16:45` */
  readonly clock: (atS: number) => string;
  /** `16:45–17:25`, rounded to 5 minutes */
  readonly clockRange: (fromS: number, toS: number) => string;
  /** A full hour on the rail: `16:00`, `4 pm` */
  readonly hour: (atS: number) => string;
  /** The same where room is short: `16`, `4` */
  readonly shortHour: (atS: number) => string;
  /** `Sat` */
  readonly day: (atS: number) => string;
  /** Minutes since midnight on the cook's wall. */
  readonly wallMinutes: (atS: number) => number;
  readonly duration: (seconds: number) => string;
  /** The figure alone, for the first end of a range: `121` */
  readonly degrees: (celsius: number) => string;
  /** `121 °C` */
  readonly temperatureC: (celsius: number) => string;
  /** Temperatures [°C] at which the map draws a thin line, with the figure on it. */
  readonly isolines: readonly { readonly celsius: number; readonly figure: string }[];
  /** `112 mm` */
  readonly lengthM: (metres: number) => string;
  /** `90 %` */
  readonly chance: (share: number, members: number) => string;
}
