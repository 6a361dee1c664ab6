/**
 * How each measured cook was read: which cut, which pit, where its temperature was read, and that temperature in
 * time. The logs are practitioners' own words (`validation/cooks.csv`, source per row); this table turns the words
 * into numbers once, so that nobody does it twice and differently. A range told is read as its middle; "not told"
 * is left out, as are cooks with a suspect probe. Every cook here is calibration: the parameters of the meat model
 * were fitted on them.
 */
export interface CookReading {
  readonly cut: string;
  readonly pitType: string;
  readonly gauge: 'grate' | 'lid' | 'set-point';
  /** [hours from meat on, °C]; a value lasts until the next. */
  readonly pit: readonly (readonly [number, number])[];
  /** Mass of one piece where the row's own is that of several, kg. */
  readonly massKg?: number;
  readonly altitudeM?: number;
  /** Read, but not scored: why. */
  readonly leftOut?: string;
}

const steady = (
  cut: string,
  pitType: string,
  pitC: number,
  gauge: CookReading['gauge'] = 'set-point',
): CookReading => ({ cut, pitType, gauge, pit: [[0, pitC]] });

const raised = (
  cut: string,
  pitType: string,
  pit: readonly (readonly [number, number])[],
  more: Partial<CookReading> = {},
): CookReading => ({ cut, pitType, gauge: 'set-point', pit, ...more });

export const COOKS: Readonly<Record<string, CookReading>> = {
  BR11: steady('brisket-whole', 'bullet', 133.6),
  BR20: raised('brisket-whole', 'electric', [[0, 107.2]], {
    massKg: 3.74,
    leftOut: 'cut in two: thickness unknown',
  }),
  BR22: raised(
    'brisket-whole',
    'electric',
    [
      [0, 107.2],
      [9, 121.1],
    ],
    { leftOut: 'cut in two: thickness unknown' },
  ),
  BR24: raised('brisket-whole', 'electric', [
    [0, 107.2],
    [8.17, 121.1],
  ]),
  BR26: raised(
    'brisket-whole',
    'electric',
    [
      [0, 107.2],
      [13.33, 121.1],
    ],
    { altitudeM: 1400 },
  ),
  BR27: raised('brisket-whole', 'electric', [[0, 107.2]], {
    altitudeM: 1400,
    leftOut: 'cut in two: thickness unknown',
  }),
  BR32: raised('brisket-whole', 'electric', [
    [0, 107.2],
    [14.33, 126.7],
    [17.33, 135],
  ]),
  BR33: raised('brisket-whole', 'electric', [
    [0, 107.2],
    [27.08, 135],
  ]),
  BR40: raised(
    'brisket-whole',
    'kettle',
    [
      [0, 91.1],
      [0.33, 92.2],
      [1.35, 75],
      [1.6, 105],
      [2.3, 88.9],
      [2.72, 97.2],
      [3.33, 113.9],
      [4.22, 103.9],
    ],
    { gauge: 'grate' },
  ),
  BR41: raised(
    'brisket-whole',
    'kettle',
    [
      [0, 67.8],
      [0.4, 88.9],
      [1.7, 86.1],
      [2.6, 112.2],
      [3.3, 92.2],
    ],
    { gauge: 'grate' },
  ),
  BR50: raised('brisket-whole', 'unknown', [
    [0, 85],
    [12, 107.2],
    [16, 121.1],
  ]),
  BR52: raised('brisket-whole', 'bullet', [[0, 107.2]], {
    leftOut: 'first reading doubted by its own readers',
  }),
  BR54: raised('brisket-whole', 'bullet', [[0, 123.9]], { gauge: 'grate', leftOut: 'mass not told' }),
  BR55: raised('brisket-whole', 'ceramic', [
    [0, 102.2],
    [8, 137.8],
  ]),
  BR56: raised('brisket-whole', 'offset', [
    [0, 115.6],
    [9, 115.6],
    [11.5, 87.8],
    [14, 60],
    [14.5, 121.1],
  ]),
  BR57: steady('brisket-flat', 'electric', 116.7, 'grate'),
  BR58: raised('brisket-whole', 'electric', [[0, 114.2]], { leftOut: 'thermometers swapped' }),
  BR60: raised(
    'brisket-point',
    'electric',
    [
      [0, 107.2],
      [18, 121.1],
    ],
    { massKg: 3.6 },
  ),
  BR71: raised('brisket-flat', 'pellet', [
    [0, 82.2],
    [0.75, 135],
    [2.7, 115.6],
  ]),
  BR83: raised('brisket-flat', 'electric', [[0, 107.2]], { leftOut: 'mass not told' }),
  BR86: steady('brisket-whole', 'bullet', 121.1, 'grate'),
  BR87: raised('brisket-whole', 'bullet', [[0, 109.4]], { leftOut: 'mass not told' }),
  BR88: raised('brisket-whole', 'bullet', [[0, 160]], { leftOut: 'mass not told' }),
  BR93: raised(
    'brisket-whole',
    'unknown',
    [
      [0, 121.1],
      [12.1, 107.2],
      [14.4, 121.1],
    ],
    { leftOut: 'mass not told' },
  ),
  BR94: steady('brisket-whole', 'offset', 104.4),
  SH05: steady('pork-shoulder', 'bullet', 117, 'lid'),
  SH06: raised(
    'pork-shoulder',
    'bullet',
    [
      [0, 115.6],
      [14, 148.9],
    ],
    { gauge: 'lid' },
  ),
  SH07: raised('pork-shoulder', 'bullet', [
    [0, 107.2],
    [9, 118],
  ]),
  SH08: raised('pork-shoulder', 'unknown', [[0, 107.2]], { leftOut: 'mass not told' }),
  SH09: steady('pork-shoulder', 'unknown', 115.6),
  SH11: raised(
    'pork-shoulder',
    'electric',
    [
      [0, 105.8],
      [12, 121.1],
    ],
    { leftOut: 'mass not told' },
  ),
  SH12: raised('pork-shoulder', 'kettle', [
    [0, 103],
    [1, 98.9],
    [1.5, 107.2],
    [3, 71.1],
    [4, 132.2],
  ]),
  SH14: steady('pork-shoulder', 'unknown', 110),
  SH16: raised('pork-shoulder', 'bullet', [[0, 115.6]], { leftOut: 'mass not told' }),
  SH17: raised('pork-shoulder', 'pellet', [
    [0, 93.3],
    [10, 107.2],
    [12, 135],
  ]),
  SH30: raised('pork-shoulder', 'electric', [
    [0, 107.2],
    [4.5, 135],
  ]),
  SH31: raised('pork-shoulder', 'electric', [
    [0, 107.2],
    [7, 135],
  ]),
  SH32: raised('pork-shoulder', 'electric', [
    [0, 107.2],
    [12.75, 135],
  ]),
  SH51: steady('pork-shoulder', 'bullet', 121.1),
  SH57: steady('pork-shoulder', 'electric', 107.2),
  SH61: steady('pork-shoulder', 'unknown', 115.6),
  SH63: raised(
    'pork-shoulder',
    'electric',
    [
      [0, 115.6],
      [6.5, 123.9],
    ],
    { gauge: 'grate', leftOut: 'mass not told' },
  ),
  SH64: steady('pork-shoulder', 'bullet', 135),
  SH66: raised('pork-shoulder', 'bullet', [
    [0, 104.4],
    [5, 99],
    [10.5, 93.3],
  ]),
  SH68: steady('pork-shoulder', 'bullet', 114.2, 'lid'),
  SH87: steady('pork-shoulder', 'bullet', 115.6),
  SH92: raised('pork-shoulder', 'unknown', [
    [0, 97.8],
    [0.6, 121.1],
  ]),
  SH97: steady('pork-shoulder', 'electric', 107.2),
  SH99: steady('pork-shoulder', 'kettle', 121.1, 'lid'),
  SH102: steady('pork-shoulder', 'unknown', 107.2),
  SH82: raised('pork-shoulder', 'pellet', [
    [0, 82.2],
    [4, 107.2],
  ]),
  OT50: raised('chuck-roast', 'electric', [
    [0, 107.2],
    [18, 135],
  ]),
  OT51: steady('chuck-roast', 'unknown', 110),
  OT53: steady('chuck-roast', 'unknown', 108.6),
  OT21: raised('lamb-leg', 'electric', [
    [0, 121.1],
    [2, 135],
  ]),
  OT22: raised(
    'lamb-leg',
    'electric',
    [
      [0, 121.1],
      [3, 135],
    ],
    { altitudeM: 1400 },
  ),
  OT24: steady('lamb-leg', 'electric', 121.1),
  OT25: steady('lamb-leg', 'electric', 121.1),
  OT54: raised('beef-back-ribs', 'bullet', [[0, 118.4]], { massKg: 2 }),
  OT02: raised('beef-short-ribs', 'bullet', [[0, 121.1]], { massKg: 2.5 }),
  OT72: raised('beef-short-ribs', 'bullet', [[0, 121.1]], { massKg: 2.5 }),
  OT56: raised('beef-short-ribs', 'electric', [[0, 121.1]], { massKg: 2.5 }),
  OT60: steady('fresh-ham', 'unknown', 110),
  OT61: steady('fresh-ham', 'unknown', 121.1),
  OT62: steady('rib-roast', 'oven', 93.3),
  OT70: raised('rib-roast', 'unknown', [[0, 107.2]]),
  RI30: raised('spareribs', 'electric', [[0, 107.2]], { massKg: 1.9 }),
  RI45: raised('spareribs', 'pellet', [[0, 107.2]]),
  PO01: steady('turkey-whole', 'electric', 135),
  PO02: raised('chicken-half', 'unknown', [[0, 121.1]], { massKg: 1.02 }),
  PO07: steady('turkey-whole', 'electric', 121.1),
  PO08: steady('turkey-whole', 'electric', 121.1),
  PO09: raised('turkey-whole', 'bullet', [
    [0, 176.7],
    [2.75, 148.9],
  ]),
  PO23: raised(
    'chicken-leg',
    'electric',
    [
      [0, 107.2],
      [0.67, 135],
    ],
    { massKg: 0.19 },
  ),
  PO30: steady('turkey-breast', 'electric', 107.2),
  PO31: raised('turkey-breast', 'bullet', [[0, 128.1]]),
  PO33: raised('turkey-half', 'offset', [[0, 121.1]], { massKg: 2.72 }),
};
