/**
 * Hand tests with a told hour, from the notes of `validation/cooks.csv`, read once as one of three ordered words: firm
 * (tough, sticks to the bone), done (clean bite, slices, bend or lift test passed), apart (falls off, pulls, like butter). How
 * each cook's pit, wrap and size were read stands in interpretation.ts. Calibration: the softening rates of pork were set
 * on some of these.
 */
export const TOLD_CLASSES = ['firm', 'done', 'apart'] as const;
export type ToldClass = (typeof TOLD_CLASSES)[number];

export interface ToldWord {
  readonly id: string;
  readonly atH: number;
  readonly told: ToldClass;
  /** Why another reader might read it otherwise. */
  readonly arguable?: string;
}

const told = (id: string, atH: number, word: ToldClass, arguable?: string): ToldWord => ({
  id,
  atH,
  told: word,
  ...(arguable && { arguable }),
});

export const TOLD_WORDS: readonly ToldWord[] = [
  told('RI01', 6, 'firm', 'its core was 71 °C after two hours in foil: a pit far below its figure'),
  told('RI30', 6, 'done', 'three words in one rack: thin end dry, middle tender, thick end a bit tough'),
  told('RI33', 3.9, 'done'),
  told('RI34', 3.9, 'done'),
  told('RI38', 3.5, 'apart'),
  told('RI39', 5.2, 'done', '“5+ h”: bend test, some time after five hours'),
  told('RI41', 4, 'apart'),
  told('RI47', 6, 'firm', 'in the same grill as upright halves that fell off the bone'),
  told('RI74', 5, 'done', '“tries to break in the middle” when lifted: nearly apart'),
  told('OT54', 6.5, 'firm'),
  told('OT02', 4.75, 'done', 'a probe in fat meat at 86 °C, nobody bit; ribs of a size not told'),
  told('OT72', 7.5, 'done', 'probe tender at 95 °C: tender or apart'),
  told('BR83', 6.25, 'firm'),
  told('OT50', 19, 'apart'),
  told('SH05', 17, 'done', 'sliced, so perhaps taken off before it would pull; 66 °C after 12 h'),
  told('SH08', 8, 'apart'),
  told('SH30', 8, 'done'),
  told('SH30', 11.08, 'apart'),
  told('SH51', 9.83, 'apart'),
  told('SH64', 7.5, 'apart'),
  told('SH68', 6.5, 'apart'),
  told('SH87', 12, 'apart'),
];
