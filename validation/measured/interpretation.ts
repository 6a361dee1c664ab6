/**
 * How each measured cook was read: which cut, which pit, where its temperature was read, and that temperature in time.
 * The logs are practitioners' own words (`validation/cooks.csv`, source per row); this table turns the words into numbers
 * once, so that nobody does it twice and differently. Every cook here is calibration: the parameters of the meat model
 * were fitted on them.
 *
 * Rules: a range told is read as its middle. A pit series that was *set* is held until the next setting, one that was
 * *read* goes straight between its points. A mass that is not told is not guessed: the cut's ordinary piece with its doubt
 * stands in. A cook is left out only for a reason that its own log gives (`LEFT_OUT`).
 */
import type { PitType } from '@pitwright/model';

export interface CookReading {
  readonly cut: string;
  readonly pitType: PitType;
  readonly gauge: 'grate' | 'lid' | 'set-point';
  /** [hours from meat on, °C] */
  readonly pit: readonly (readonly [number, number])[];
  /** Read at those hours, not set. */
  readonly isRead?: true;
  /** The pit was set anew so long after the centre had come so far. */
  readonly raised?: { readonly coreC: number; readonly afterH: number; readonly pitC: number };
  /** Of one piece where the row's own is that of several, kg. */
  readonly massKg?: number;
  readonly hasBone?: boolean;
  readonly startC?: number;
  readonly altitudeM?: number;
  /** In place of the row's own wrap. */
  readonly wrap?: {
    readonly kind: 'foil' | 'paper' | 'unknown';
    readonly hours?: number;
    readonly how?: 'loose' | 'pan';
    readonly openedH?: number;
  };
  /** Hours of readings that are not of this piece on a lit pit. */
  readonly skipH?: readonly number[];
  /** What in the log made this more than copying. */
  readonly because?: string;
}

type More = Partial<Omit<CookReading, 'cut' | 'pitType' | 'pit'>>;

const steady = (cut: string, pitType: PitType, pitC: number, more: More = {}): CookReading => ({
  cut,
  pitType,
  gauge: 'set-point',
  pit: [[0, pitC]],
  ...more,
});

const series = (cut: string, pitType: PitType, pit: CookReading['pit'], more: More = {}): CookReading => ({
  cut,
  pitType,
  gauge: 'set-point',
  pit,
  ...more,
});

const ACROSS = 'cut in two across to fit: as thick as the whole one, so sized by the whole mass';

const SHOP_SHORT_RIBS = 'not said to be of the plate: the shop’s ordinary short rib is of the chuck';

export const COOKS: Readonly<Record<string, CookReading>> = {
  BR01: steady('brisket-flat', 'unknown', 107.2, {
    raised: { coreC: 67.2, afterH: 0.25, pitC: 129.4 },
    because:
      'pit raised a quarter of an hour after the level at 67.2 °C began; only 87.8 °C at 5 h has an hour',
  }),
  BR11: steady('brisket-whole', 'bullet', 133.6),
  BR20: steady('brisket-whole', 'electric', 107.2, { because: ACROSS }),
  BR22: series(
    'brisket-whole',
    'electric',
    [
      [0, 107.2],
      [9, 121.1],
    ],
    { because: ACROSS },
  ),
  BR24: series(
    'brisket-whole',
    'electric',
    [
      [0, 107.2],
      [8.17, 121.1],
    ],
    {
      skipH: [12.17],
      because:
        'the flat came off at 12.17 h; what went on, and is foreseen, is the point: 93.9 °C at 14.42 h',
    },
  ),
  BR26: series(
    'brisket-whole',
    'electric',
    [
      [0, 107.2],
      [13.33, 121.1],
    ],
    { altitudeM: 1400 },
  ),
  BR27: steady('brisket-whole', 'electric', 107.2, { altitudeM: 1400, because: ACROSS }),
  BR32: series('brisket-whole', 'electric', [
    [0, 107.2],
    [14.33, 126.7],
    [17.33, 135],
  ]),
  BR33: series('brisket-whole', 'electric', [
    [0, 107.2],
    [27.08, 135],
  ]),
  BR40: series(
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
    { gauge: 'grate', isRead: true, because: 'pit read beside the core: straight between the readings' },
  ),
  BR41: series(
    'brisket-whole',
    'kettle',
    [
      [0, 67.8],
      [0.4, 88.9],
      [1.7, 86.1],
      [2.6, 112.2],
      [3.3, 92.2],
    ],
    { gauge: 'grate', isRead: true, because: 'pit read beside the core: straight between the readings' },
  ),
  BR50: series('brisket-whole', 'unknown', [
    [0, 85],
    [12, 107.2],
    [16, 121.1],
  ]),
  BR54: steady('brisket-whole', 'bullet', 123.9, { gauge: 'grate' }),
  BR55: series('brisket-whole', 'ceramic', [
    [0, 102.2],
    [8, 137.8],
  ]),
  BR56: series(
    'brisket-whole',
    'offset',
    [
      [0, 115.6],
      [9, 115.6],
      [14, 60],
      [14.5, 121.1],
    ],
    {
      isRead: true,
      startC: 15,
      because:
        'went on “from room temperature”: 15 °C; the fire died between 9 and 14 h, the pit sinking all the while; arrival is the hottest reading, 87.2 °C at 25 h, before it fell',
    },
  ),
  BR57: steady('brisket-flat', 'electric', 116.7, { gauge: 'grate' }),
  BR60: series(
    'brisket-point',
    'electric',
    [
      [0, 107.2],
      [18, 121.1],
    ],
    { massKg: 3.6 },
  ),
  BR71: series(
    'brisket-whole',
    'pellet',
    [
      [0, 82.2],
      [0.75, 135],
      [2.7, 115.6],
    ],
    { because: 'bought at 5.35 kg: a whole one, trimmed hard; nothing says flat' },
  ),
  BR83: steady('brisket-flat', 'electric', 107.2),
  BR86: steady('brisket-whole', 'bullet', 121.1, { gauge: 'grate' }),
  BR87: steady('brisket-whole', 'bullet', 109.4),
  BR88: steady('brisket-whole', 'bullet', 160),
  BR90: steady('brisket-whole', 'unknown', 121.1, { because: 'pit told as the cook’s usual set-point' }),
  BR91: steady('brisket-whole', 'unknown', 121.1, { because: 'pit told as the cook’s usual set-point' }),
  BR92: steady('brisket-whole', 'unknown', 121.1, { because: 'pit told as the cook’s usual set-point' }),
  BR93: series('brisket-whole', 'unknown', [
    [0, 121.1],
    [12.1, 107.2],
    [14.4, 121.1],
  ]),
  BR94: steady('brisket-whole', 'offset', 104.4),
  SH05: steady('pork-shoulder', 'bullet', 117, { gauge: 'lid' }),
  SH06: series(
    'pork-shoulder',
    'bullet',
    [
      [0, 115.6],
      [14, 148.9],
    ],
    { gauge: 'lid' },
  ),
  SH07: series('pork-shoulder', 'bullet', [
    [0, 107.2],
    [9, 118],
  ]),
  SH08: steady('pork-shoulder', 'unknown', 107.2, {
    wrap: { kind: 'foil', hours: 5, how: 'pan' },
    because: 'a covered pan, not a wrap',
  }),
  SH09: steady('pork-shoulder', 'unknown', 115.6),
  SH11: series('pork-shoulder', 'electric', [
    [0, 105.8],
    [12, 121.1],
  ]),
  SH12: series(
    'pork-shoulder',
    'kettle',
    [
      [0, 103],
      [1, 98.9],
      [1.5, 107.2],
      [3, 71.1],
      [4, 132.2],
      [7, 98.9],
    ],
    { isRead: true, because: 'pit read: straight between the readings' },
  ),
  SH14: steady('pork-shoulder', 'unknown', 110),
  SH16: steady('pork-shoulder', 'bullet', 115.6),
  SH17: series('pork-shoulder', 'pellet', [
    [0, 93.3],
    [10, 107.2],
    [12, 135],
  ]),
  SH30: series('pork-shoulder', 'electric', [
    [0, 107.2],
    [4.5, 135],
  ]),
  SH31: series('pork-shoulder', 'electric', [
    [0, 107.2],
    [7, 135],
  ]),
  SH32: series('pork-shoulder', 'electric', [
    [0, 107.2],
    [12.75, 135],
  ]),
  SH51: steady('pork-shoulder', 'bullet', 121.1),
  SH57: steady('pork-shoulder', 'electric', 107.2),
  SH61: steady('pork-shoulder', 'unknown', 115.6),
  SH63: series(
    'pork-shoulder',
    'electric',
    [
      [0, 115.6],
      [6.5, 123.9],
    ],
    { gauge: 'grate' },
  ),
  SH64: steady('pork-shoulder', 'bullet', 135, {
    wrap: { kind: 'foil', hours: 7.5 },
    because: 'foiled for the last hour, as the note says',
  }),
  SH66: series(
    'pork-shoulder',
    'bullet',
    [
      [0, 104.4],
      [10.5, 93.3],
    ],
    { isRead: true, because: 'told as sinking all the while: straight, not in steps' },
  ),
  SH68: steady('pork-shoulder', 'bullet', 114.2, { gauge: 'lid' }),
  SH82: series('pork-shoulder', 'pellet', [
    [0, 82.2],
    [4, 107.2],
  ]),
  SH84: steady('pork-shoulder', 'pellet', 135),
  SH87: steady('pork-shoulder', 'bullet', 115.6, {
    wrap: { kind: 'foil', hours: 10 },
    because: 'foiled for two of its twelve hours, as the note says; read as the last two',
  }),
  SH92: series('pork-shoulder', 'unknown', [
    [0, 97.8],
    [0.6, 121.1],
  ]),
  SH97: steady('pork-shoulder', 'electric', 107.2),
  SH99: steady('pork-shoulder', 'kettle', 121.1, { gauge: 'lid' }),
  SH102: steady('pork-shoulder', 'unknown', 107.2),
  OT50: series('chuck-roast', 'electric', [
    [0, 107.2],
    [18, 135],
  ]),
  OT51: steady('chuck-roast', 'unknown', 110),
  OT53: steady('chuck-roast', 'unknown', 108.6),
  OT21: series('lamb-leg', 'electric', [
    [0, 121.1],
    [2, 135],
  ]),
  OT22: series(
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
  OT54: steady('beef-back-ribs', 'bullet', 118.4),
  OT02: steady('chuck-short-ribs', 'bullet', 121.1, { because: SHOP_SHORT_RIBS }),
  OT72: steady('beef-short-ribs', 'bullet', 121.1),
  OT56: steady('beef-short-ribs', 'electric', 121.1),
  OT73: series(
    'chuck-short-ribs',
    'pellet',
    [
      [0, 121.1],
      [2.5, 79.5],
      [3.5, 121.1],
    ],
    { because: `${SHOP_SHORT_RIBS}; arrival is 67.8 °C at 2 h: at 3.5 h the pit, and the meat, had sunk` },
  ),
  OT60: steady('fresh-ham', 'unknown', 110),
  OT61: steady('fresh-ham', 'unknown', 121.1),
  OT62: steady('rib-roast', 'oven', 93.3),
  OT70: steady('rib-roast', 'unknown', 107.2),
  RI01: steady('spareribs', 'unknown', 114.2, {
    wrap: { kind: 'foil', hours: 3, openedH: 5 },
    because: 'out of its foil after 5 h',
  }),
  RI30: steady('spareribs', 'electric', 107.2),
  RI33: steady('st-louis-ribs', 'bullet', 132.2),
  RI34: steady('st-louis-ribs', 'bullet', 132.2, {
    wrap: { kind: 'foil', hours: 2, openedH: 3 },
    because: 'in foil from the second to the third hour',
  }),
  RI38: steady('spareribs', 'bullet', 148.9),
  RI39: steady('spareribs', 'offset', 110),
  RI41: steady('loin-back-ribs', 'kettle', 107.2),
  RI45: steady('spareribs', 'pellet', 107.2),
  RI47: steady('spareribs', 'gas', 110, {
    wrap: { kind: 'foil', hours: 3, openedH: 5 },
    because: 'out of its foil after 5 h',
  }),
  RI74: steady('st-louis-ribs', 'kettle', 126.7),
  PO01: steady('turkey-whole', 'electric', 135),
  PO02: steady('chicken-half', 'unknown', 121.1, {
    massKg: 1.02,
    startC: 12,
    because: 'an hour at room temperature before: 12 °C; a flattened bird is read as its half',
  }),
  PO07: steady('turkey-whole', 'electric', 121.1),
  PO08: steady('turkey-whole', 'electric', 121.1, {
    skipH: [5.25],
    because: 'the heat was off from 4.83 h, so the peak at 5.25 h is carry-over',
  }),
  PO09: series(
    'turkey-whole',
    'bullet',
    [
      [0, 176.7],
      [2.75, 148.9],
    ],
    { wrap: { kind: 'foil', hours: 2, how: 'loose' }, because: 'a loose tent, not a wrap' },
  ),
  PO23: series(
    'chicken-thigh',
    'electric',
    [
      [0, 107.2],
      [0.67, 135],
    ],
    { massKg: 0.19, because: 'thighs, not leg quarters; four of them weigh 0.76 kg' },
  ),
  PO30: steady('turkey-breast', 'electric', 107.2),
  PO31: steady('turkey-breast', 'bullet', 128.1),
  PO33: steady('turkey-half', 'offset', 121.1, { massKg: 2.72 }),
};

/** Cooks that cannot be used, and why: each has no pit, no hour or no core temperature, or its own log doubts it. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  BR52: 'first reading doubted by its own readers; the later one is of the same probe',
  BR58: 'thermometers swapped',
  RI20: 'nine racks at once, kind of rack not told, pit never near its setting and read once',
};
