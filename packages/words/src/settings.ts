/** How figures and names are printed. Nothing here changes what is computed. */
export interface PrintSettings {
  readonly units: 'us' | 'metric';
  /** Print a quantity in the unit it was written in, where it remembers one. */
  readonly keepWritten: boolean;
  readonly clock: '24' | '12';
  /** IANA time zone of the cook: clock times are read there, wherever the reader stands. */
  readonly zone: string;
  /** Trade names of cuts. */
  readonly names: 'us' | 'uk';
}

export const METRIC: PrintSettings = {
  units: 'metric',
  keepWritten: false,
  clock: '24',
  zone: 'UTC',
  names: 'us',
};

export const US: PrintSettings = { units: 'us', keepWritten: false, clock: '12', zone: 'UTC', names: 'us' };
