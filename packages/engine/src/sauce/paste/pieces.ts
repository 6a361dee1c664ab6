/** What one of a thing weighs [g], with its usual span: household weights of USDA SR28 and judgement, from memory. */
export interface PieceMass {
  readonly g: number;
  readonly lowG: number;
  readonly highG: number;
}

const piece = (g: number, lowG: number, highG: number): PieceMass => ({ g, lowG, highG });

/** Catalogue id, or `unit:id` where the unit names the piece. */
const PIECES: Readonly<Record<string, PieceMass>> = {
  'clove:garlic_raw': piece(4, 3, 7),
  'head:garlic_raw': piece(45, 35, 70),
  'stick:butter_unsalted': piece(113.4, 113.4, 113.4),
  'stick:butter_salted': piece(113.4, 113.4, 113.4),
  'knob:ginger_raw': piece(15, 10, 30),
  'piece:ginger_raw': piece(15, 10, 30),
  'knob:butter_unsalted': piece(15, 10, 25),
  'slice:onion_raw': piece(14, 9, 38),
  'stick:celery_raw': piece(40, 30, 65),
  garlic_raw: piece(4, 3, 7),
  onion_raw: piece(110, 70, 150),
  onion_sweet: piece(330, 250, 400),
  shallot: piece(25, 15, 45),
  scallion: piece(15, 10, 25),
  jalapeno_raw: piece(14, 10, 25),
  serrano_raw: piece(6, 4, 9),
  chile_red_raw: piece(20, 10, 45),
  bell_pepper_red: piece(119, 75, 165),
  celery_raw: piece(40, 30, 65),
  carrot_raw: piece(61, 50, 75),
  apple_raw: piece(182, 150, 220),
  peach_raw: piece(150, 130, 175),
  plum: piece(66, 55, 80),
  tomato_raw: piece(123, 90, 180),
  lemon_juice: piece(47, 35, 60),
  lime_juice: piece(40, 25, 45),
  orange_juice: piece(86, 65, 110),
  lemon_peel: piece(5, 3, 7),
  orange_peel: piece(8, 5, 12),
  bay_leaf: piece(0.2, 0.1, 0.6),
  chipotle_in_adobo: piece(12, 8, 18),
  anchovy_canned: piece(4, 3, 5),
  prune: piece(9.5, 8, 12),
  date: piece(7, 5, 9),
  cloves: piece(0.07, 0.05, 0.1),
  pickles_dill: piece(65, 37, 135),
  ancho_dried: piece(17, 10, 25),
  'packet:gelatin_dry': piece(7, 7, 7),
};

/** Weight of one piece, or undefined where none is usual. */
export const pieceMass = (unit: string | undefined, ingredientId: string): PieceMass | undefined =>
  unit === undefined ? PIECES[ingredientId] : PIECES[`${unit}:${ingredientId}`];

/** Sized by word: an onion of these weighs so much of a middle one. */
export const SIZE_FACTOR: Readonly<Record<string, number>> = { small: 0.65, medium: 1, large: 1.4 };
