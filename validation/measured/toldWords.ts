/**
 * Hand tests with a told hour, from the notes of `validation/cooks.csv`, read once as one of three ordered words: firm
 * (tough, sticks to the bone), done (clean bite, slices, bend or lift test passed), apart (falls off, pulls, like butter). Cooks
 * whose pit or hour is not told are left out, and so is a rack halved and upright (not the geometry of the model).
 * Calibration: the softening rates of pork were set on some of these.
 */
import type { StageKind } from '@pitwright/model';

export const TOLD_CLASSES = ['firm', 'done', 'apart'] as const;
export type ToldClass = (typeof TOLD_CLASSES)[number];

export interface ToldWord {
  readonly id: string;
  readonly cut: string;
  readonly pitType: 'bullet' | 'electric' | 'offset' | 'kettle' | 'gas' | 'unknown';
  readonly gauge: 'grate' | 'lid' | 'set-point';
  readonly pitC: number;
  readonly massKg?: number;
  /** Stages before the last, each by the clock or by a core temperature; the last one goes on. */
  readonly stages: readonly {
    readonly kind: StageKind;
    readonly hours?: number;
    readonly coreC?: number;
    readonly pitC?: number;
  }[];
  readonly atH: number;
  readonly told: ToldClass;
}

const bare = [{ kind: 'bare' }] as const;
const foilAt = (hours: number) => [{ kind: 'bare', hours }, { kind: 'foil' }] as const;
const threeTwoOne = [{ kind: 'bare', hours: 3 }, { kind: 'foil', hours: 2 }, { kind: 'bare' }] as const;

const told = (
  id: string,
  cut: string,
  [pitType, gauge, pitC]: readonly [ToldWord['pitType'], ToldWord['gauge'], number],
  stages: ToldWord['stages'],
  atH: number,
  word: ToldClass,
  massKg?: number,
): ToldWord => ({ id, cut, pitType, gauge, pitC, stages, atH, told: word, ...(massKg && { massKg }) });

export const TOLD_WORDS: readonly ToldWord[] = [
  told('RI01', 'spareribs', ['unknown', 'set-point', 114.2], threeTwoOne, 6, 'firm'),
  told('RI30', 'spareribs', ['electric', 'set-point', 107.2], bare, 6, 'done'),
  told('RI33', 'st-louis-ribs', ['bullet', 'lid', 132.2], bare, 3.9, 'done'),
  told(
    'RI34',
    'st-louis-ribs',
    ['bullet', 'lid', 132.2],
    [{ kind: 'bare', hours: 2 }, { kind: 'foil', hours: 1 }, { kind: 'bare' }],
    3.9,
    'done',
  ),
  told('RI38', 'spareribs', ['bullet', 'lid', 148.9], foilAt(2), 3.5, 'apart'),
  told('RI39', 'spareribs', ['offset', 'set-point', 110], bare, 5.2, 'done'),
  told('RI41', 'loin-back-ribs', ['unknown', 'set-point', 107.2], foilAt(2), 4, 'apart'),
  told('RI47', 'spareribs', ['gas', 'set-point', 110], threeTwoOne, 6, 'firm'),
  told('RI74', 'st-louis-ribs', ['kettle', 'set-point', 126.7], bare, 5, 'done'),
  told('OT54', 'beef-back-ribs', ['bullet', 'set-point', 118.3], bare, 6.5, 'firm'),
  told('OT02', 'beef-short-ribs', ['bullet', 'set-point', 121.1], bare, 4.75, 'done'),
  told('OT72', 'beef-short-ribs', ['bullet', 'set-point', 121.1], foilAt(3), 7.5, 'done'),
  told('BR83', 'brisket-flat', ['electric', 'set-point', 107.2], bare, 6.25, 'firm'),
  told(
    'OT50',
    'chuck-roast',
    ['electric', 'set-point', 107.2],
    [
      { kind: 'bare', hours: 18 },
      { kind: 'bare', pitC: 135 },
    ],
    19,
    'apart',
    1.37,
  ),
  told('SH05', 'pork-shoulder', ['bullet', 'lid', 117], bare, 17, 'done', 4.54),
  told('SH08', 'pork-shoulder', ['unknown', 'set-point', 107.2], foilAt(5), 8, 'apart'),
  told(
    'SH30',
    'pork-shoulder',
    ['electric', 'set-point', 107.2],
    [
      { kind: 'bare', hours: 4.5 },
      { kind: 'bare', pitC: 135 },
    ],
    8,
    'done',
    2.42,
  ),
  told(
    'SH30',
    'pork-shoulder',
    ['electric', 'set-point', 107.2],
    [
      { kind: 'bare', hours: 4.5 },
      { kind: 'bare', pitC: 135 },
    ],
    11.08,
    'apart',
    2.42,
  ),
  told('SH51', 'pork-shoulder', ['bullet', 'set-point', 121.1], bare, 9.83, 'apart', 4.08),
  told('SH64', 'pork-shoulder', ['bullet', 'set-point', 135], bare, 7.5, 'apart', 4.08),
  told(
    'SH68',
    'pork-shoulder',
    ['bullet', 'lid', 114.2],
    [{ kind: 'bare', coreC: 73.9 }, { kind: 'foil' }],
    6.5,
    'apart',
    3.18,
  ),
  told('SH87', 'pork-shoulder', ['bullet', 'set-point', 115.6], bare, 12, 'apart', 3.63),
];
