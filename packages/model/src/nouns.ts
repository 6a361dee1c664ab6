/**
 * The nouns as the engine and the screens hold them: one cook, its pieces, pit and formulas.
 * The cook file is a way of writing these; every physical figure is a Quantity.
 */
import type { Quantity } from './units/quantity.ts';

/** Cuts that `calc` knows by name. */
export const CUTS = [
  'loin-back-ribs',
  'spareribs',
  'st-louis-ribs',
  'brisket-whole',
  'brisket-flat',
  'brisket-point',
  'pork-shoulder',
  'beef-short-ribs',
  'beef-back-ribs',
  'chuck-roast',
  'rib-roast',
  'lamb-shoulder',
  'lamb-leg',
  'fresh-ham',
  'chicken-whole',
  'chicken-half',
  'chicken-breast',
  'chicken-leg',
  'turkey-whole',
  'turkey-breast',
  'turkey-half',
] as const;

/** Cuts that a cook file may name beside those of `calc`. */
export const FURTHER_CUTS = [
  'spareribs-breast-off',
  'rib-tips',
  'country-style-ribs',
  'pork-picnic',
  'pork-shoulder-whole',
  'pork-belly',
  'pork-loin',
  'pork-loin-center',
  'chuck-short-ribs',
  'beef-clod',
  'chuck-roll',
  'tri-tip',
  'lamb-rack',
  'lamb-breast',
  'chicken-wing',
  'chicken-thigh',
  'chicken-drumstick',
] as const;
export const CATALOGUE_CUTS = [...CUTS, ...FURTHER_CUTS] as const;
export type CatalogueCut = (typeof CATALOGUE_CUTS)[number];
export type CutId = CatalogueCut | (string & {});

export const PIT_TYPES = [
  'offset',
  'kettle',
  'drum',
  'bullet',
  'ceramic',
  'pellet',
  'cabinet',
  'gas',
  'electric',
  'oven',
  'unknown',
] as const;
export type PitType = (typeof PIT_TYPES)[number];

export const BITES = ['raw', 'firm', 'clean-bite', 'tender', 'falls-off', 'pulls-apart'] as const;
export type Bite = (typeof BITES)[number];

export const RULES = ['home-us', 'cater-us', 'uk'] as const;
export type RulesProfile = (typeof RULES)[number];

export const STAGE_KINDS = ['bare', 'foil', 'paper', 'glazed', 'rest', 'hold', 'chill'] as const;
export type StageKind = (typeof STAGE_KINDS)[number];

/** Off the heat: it rests, is kept warm, or is chilled. */
export const isWaiting = (kind: StageKind): boolean => kind === 'rest' || kind === 'hold' || kind === 'chill';

/** What ends a stage: exactly one of these. */
export type StageEnd =
  | { readonly by: 'clock'; readonly after: Quantity<'time'> }
  | { readonly by: 'core'; readonly temperature: Quantity<'temperature'> }
  | { readonly by: 'surface'; readonly temperature: Quantity<'temperature'> }
  | { readonly by: 'bark' }
  /** Lost of the raw mass of one item, its bone counted. */
  | { readonly by: 'loss'; readonly share: Quantity<'fraction'> }
  | { readonly by: 'bite'; readonly bite: Bite }
  /** Until the table asks for it: only for the last rest, hold or chill. */
  | { readonly by: 'table' };

/** Sprayed on one item again and again; nothing sprayed is a look under the lid alone. */
export interface Spritz {
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  readonly every: Quantity<'time'>;
}

/** How foil lies: tight, loose, torn, or over a pan with the piece and its steam inside. */
export const FOIL_WRAPS = ['tight', 'loose', 'torn', 'pan'] as const;
/** Paper as it is, or soaked with grease. */
export const PAPER_WRAPS = ['clean', 'greasy'] as const;
export type Wrap = (typeof FOIL_WRAPS)[number] | (typeof PAPER_WRAPS)[number];

/** Sides of a piece as a cook sees them: a rack's meat or bone, a bird's skin or bone, the fat of a brisket. */
export const FIRE_SIDES = ['meat', 'bone', 'skin', 'fat'] as const;
export type FireSide = (typeof FIRE_SIDES)[number];
/** Coals under grey ash by daylight, or glowing red. */
export const COALS = ['grey', 'red'] as const;
export type Coals = (typeof COALS)[number];
/** What stands between coals and meat: a pan with water in it, or a plate (deflector, dry pan, foil-covered brick). */
export const FIRE_SHIELDS = ['pan', 'plate'] as const;
export type FireShield = (typeof FIRE_SHIELDS)[number];

/** Direct heat: the piece lies over the coals, or stands before the fire box, and one of its sides sees them. */
export interface DirectHeat {
  /** The side that lies towards the coals as the stage begins. */
  readonly side: FireSide;
  /** From the coals to the meat. */
  readonly distance: Quantity<'length'>;
  /** How far the bed of coals is across; missing: 30 cm, and in doubt. */
  readonly across?: Quantity<'length'>;
  /** Missing: not told. */
  readonly coals?: Coals;
  /** Missing: nothing. */
  readonly between?: FireShield;
  /** Turned over so often; missing: it lies as it is. */
  readonly turn?: Quantity<'time'>;
}

export interface Stage {
  readonly kind: StageKind;
  readonly until: StageEnd;
  /** A pit told for this stage alone; later stages keep it. */
  readonly pit?: Quantity<'temperature'>;
  /** Rest, hold and chill: the air round the piece. */
  readonly at?: Quantity<'temperature'>;
  /** Where it happens; missing: the pit (rest and hold: the kitchen; chill: the fridge). */
  readonly in?: 'pit' | 'oven' | 'box' | 'warmer' | 'tray' | 'fridge' | 'ice-bath';
  /** Liquid put into the foil. */
  readonly liquid?: Quantity<'volume'>;
  /** Foil or paper; missing: tight foil, paper of a kind not told. */
  readonly wrap?: Wrap;
  /** Of a stage without a wrap; each time the lid is opened. */
  readonly spritz?: Spritz;
  /** On the pit: over the coals; missing: away from them. */
  readonly direct?: DirectHeat;
  readonly note?: string;
}

export type PitPlace = 'hot' | 'middle' | 'cool';

/** Fat by eye, of the meat without bone and skin. */
export const OWN_FATS = ['lean', 'marbled', 'fat'] as const;
export type OwnFat = (typeof OWN_FATS)[number];

/**
 * A cut that the catalogue does not have, by what a person can measure; the piece's `thickness` goes with it. Its `cut`
 * is the nearest of the catalogue, for how it softens and what is not told here.
 */
export interface OwnCut {
  readonly length: Quantity<'length'>;
  readonly width: Quantity<'length'>;
  /** Missing: as the nearest cut. */
  readonly skin?: boolean;
  /** Missing: as the nearest cut. */
  readonly fat?: OwnFat;
}

/** One item of meat on the pit, or `count` alike under one letter. */
export interface Piece {
  readonly id: string;
  readonly letter: string;
  readonly name?: string;
  readonly cut: CutId;
  readonly count: number;
  /** Of one item. */
  readonly mass?: Quantity<'mass'>;
  /** Thickest place of one item. */
  readonly thickness?: Quantity<'length'>;
  readonly own?: OwnCut;
  readonly bone?: boolean;
  /** Racks: the membrane on the bone side was left on; missing: not told. */
  readonly membrane?: boolean;
  /** Water solution added by the seller, of the meat's own mass, as the label tells it. */
  readonly solution?: Quantity<'fraction'>;
  /** Brisket: fat left on one side, at its usual place; 0 trimmed bare; missing: not told. */
  readonly fatCap?: Quantity<'length'>;
  readonly start?: Quantity<'temperature'>;
  readonly place?: PitPlace;
  readonly bite: Bite;
  readonly stages: readonly Stage[];
  /** Kept whole for the camera: eaten, but carved last. */
  readonly forCamera?: boolean;
  /** Injected, tenderised, rolled, stuffed or ground: the centre counts as raw surface. */
  readonly nonIntact?: boolean;
  /** Set by hand; missing: chosen by the plan. UTC instant. */
  readonly onAt?: string;
  /** Ids of the pieces that must have left the pit before this one goes on. */
  readonly after?: readonly string[];
  readonly note?: string;
}

export interface Pit {
  readonly id: string;
  readonly name: string;
  readonly type: PitType;
  readonly fuel?: string;
  readonly steel?: Quantity<'length'>;
  readonly waterPan?: boolean;
  /** Told temperature of the cook. */
  readonly temperature: Quantity<'temperature'>;
  /** Where that temperature is read. */
  readonly gauge: 'grate' | 'lid' | 'set-point';
  /** By how much it creeps up in an hour, sinking below zero: counted from each piece's own start, at most 40 K. */
  readonly driftPerHour?: Quantity<'difference'>;
  /** How much warmer the hot end is than the middle, and the cool end colder (positive differences, with sd). */
  readonly hotEnd?: Quantity<'difference'>;
  readonly coolEnd?: Quantity<'difference'>;
  readonly grateArea?: Quantity<'area'>;
  readonly note?: string;
}

export type FormulaKind = 'sauce' | 'rub' | 'brine' | 'spritz';

/** One line of a formula. `amount` is a mass, or a volume turned into mass by the catalogue's density. */
export interface FormulaLine {
  readonly ingredient: string;
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  readonly note?: string;
  readonly locked?: boolean;
  /** Stirred in when the rest has simmered, off the heat; missing or false: from the start. */
  readonly late?: boolean;
}

/**
 * One change of a variant against the lines as written: of a line (another thing in its place, another amount, sooner
 * or later, or left out), or a line that is added.
 */
export interface VariantChange {
  /** Ingredient of the line that it changes; missing: a line is added. */
  readonly line?: string;
  /** Which of several lines of that ingredient, from 1; missing: the first. */
  readonly which?: number;
  readonly out?: boolean;
  /** What stands in its place, or what is added. */
  readonly ingredient?: string;
  /** Missing: as written. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  readonly late?: boolean;
}

/** Another way to make a formula, declared as changes against its lines: `without the soft drink`, `hotter`. */
export interface FormulaVariant {
  readonly id: string;
  readonly name: string;
  readonly changes: readonly VariantChange[];
  /** Water to drive off, where it is another than the formula's. */
  readonly evaporated?: Quantity<'mass'>;
  readonly note?: string;
}

export interface Simmer {
  /** Water to drive off. */
  readonly evaporated?: Quantity<'mass'>;
  readonly power?: Quantity<'power'>;
  readonly source?: 'gas' | 'electric' | 'induction';
  readonly panDiameter?: Quantity<'length'>;
  readonly panHeight?: Quantity<'length'>;
  readonly panMass?: Quantity<'mass'>;
  readonly lid?: 'open' | 'ajar' | 'tight';
}

export interface Formula {
  readonly id: string;
  readonly name: string;
  readonly kind: FormulaKind;
  readonly lines: readonly FormulaLine[];
  /** Ids of the pieces it is for; missing: all. */
  readonly for?: readonly string[];
  readonly simmer?: Simmer;
  readonly variants?: readonly FormulaVariant[];
  /** Id of the variant that is made; missing: as written. See `madeFormula`. */
  readonly variant?: string;
  readonly note?: string;
}

/** How thick a bought thing is: runs like water, like ketchup, like tomato paste, or a powder that swells. */
export const BODIES = ['liquid', 'sauce', 'paste', 'powder'] as const;
export type Body = (typeof BODIES)[number];

/**
 * An ingredient of one's own as its label tells it, per so much of it. What the label does not say is missing, never
 * zero.
 */
export interface IngredientLabel {
  /** Key that lines name it by. */
  readonly ingredient: string;
  readonly name: string;
  /** By whose rounding the figures are printed: US labels, or those of the EU and the UK. */
  readonly law: 'us' | 'eu';
  /** What the figures are for: a serving, or 100 g. */
  readonly per: Quantity<'mass'>;
  /** The same by spoon or cup, where the label says it. */
  readonly perVolume?: Quantity<'volume'>;
  readonly fat?: Quantity<'mass'>;
  readonly carbohydrate?: Quantity<'mass'>;
  readonly sugars?: Quantity<'mass'>;
  readonly fibre?: Quantity<'mass'>;
  readonly protein?: Quantity<'mass'>;
  readonly sodium?: Quantity<'mass'>;
  readonly salt?: Quantity<'mass'>;
  readonly alcohol?: Quantity<'mass'>;
  /** Energy [kcal]. */
  readonly kcal?: number;
  readonly ph?: number;
  /** What sweetens it; missing: not told. */
  readonly sugarKind?: 'sucrose' | 'inverted';
  /** Missing: not told. */
  readonly body?: Body;
  /** As declared; empty: the label was read and declares none; missing: nobody has read it. */
  readonly allergens?: readonly string[];
}

export interface Hand {
  readonly id: string;
  readonly name: string;
  /** Wall-clock hours of every night, `23:00` to `06:00`. */
  readonly sleeps?: { readonly from: string; readonly to: string };
  /** UTC instants. */
  readonly away?: readonly { readonly from: string; readonly to: string }[];
}

export interface Kitchen {
  readonly burners: number;
  readonly ovens: number;
  readonly fridgeShelves?: number;
  readonly ovenTemperature?: Quantity<'temperature'>;
}

export interface Guests {
  readonly adults: number;
  readonly children: number;
  readonly appetite?: 'small' | 'ordinary' | 'big';
  readonly otherDishes?: number;
  readonly atRisk?: boolean;
  /** Allergens the guests named: private. */
  readonly allergies?: readonly string[];
}

export interface Weather {
  readonly air?: Quantity<'temperature'>;
  readonly relativeHumidity?: number;
  readonly wind?: Quantity<'speed'>;
  readonly words?: string;
}

export interface Place {
  readonly latitude?: number;
  readonly longitude?: number;
  readonly altitude?: Quantity<'length'>;
}

export interface Table {
  /** Serving hour, UTC instant; the zone of the cook says how it is read. */
  readonly at: string;
  /** End of the serving window. */
  readonly until: string;
  /** Unit in which the length of the window was written; missing: minutes. */
  readonly windowWrittenIn?: string;
}

export interface Cook {
  readonly id: string;
  readonly name: string;
  readonly isDemo: boolean;
  /** Invented data say so and are never evidence. */
  readonly recipe?: { readonly id: string; readonly version: number };
  readonly rules: RulesProfile;
  /** Whether the file named its rules. */
  readonly rulesTold: boolean;
  /** IANA time zone. */
  readonly zone: string;
  readonly place?: Place;
  readonly table: Table;
  readonly chanceAsked: number;
  readonly guests: Guests;
  readonly hands: readonly Hand[];
  readonly kitchen: Kitchen;
  readonly weather?: Weather;
  readonly pit: Pit;
  readonly pieces: readonly Piece[];
  /** Ingredients of one's own, for the lines of the formulas. */
  readonly labels?: readonly IngredientLabel[];
  readonly formulas: readonly Formula[];
  /** Starts of jobs set by hand on the run sheet, UTC instants by task id; a file does not hold them. */
  readonly pinned?: Readonly<Record<string, string>>;
  readonly note?: string;
}

/** The intent: many cooks come from one recipe. */
export interface Recipe {
  readonly id: string;
  readonly name: string;
  readonly version: number;
  readonly isDemo: boolean;
  readonly pieces: readonly Piece[];
  readonly labels?: readonly IngredientLabel[];
  readonly formulas: readonly Formula[];
  readonly note?: string;
}
