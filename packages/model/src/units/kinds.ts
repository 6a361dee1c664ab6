/**
 * Every kind of quantity and the units it may be written in.
 *
 * `toSi` multiplies a value in that unit into SI; temperature alone also has an `offset`
 * (SI value = value × toSi + offset), all others have none.
 * Exact factors: the international pound, inch and avoirdupois ounce (1959 agreement), the US gallon of
 * 231 in³, the International Table Btu and calorie, the standard atmosphere (NIST SP 811, appendix B).
 */
export interface UnitDefinition {
  readonly symbol: string;
  readonly toSi: number;
  readonly offset?: number;
}

const POUND_KG = 0.45359237;
const INCH_M = 0.0254;
const FOOT_M = 0.3048;
const US_GALLON_M3 = 231 * INCH_M * INCH_M * INCH_M;
const STANDARD_GRAVITY = 9.80665;
const BTU_J = 1055.05585262;
const KCAL_J = 4186.8;
const POUND_FORCE_PER_SQUARE_INCH_PA = (POUND_KG * STANDARD_GRAVITY) / (INCH_M * INCH_M);
/** Conventional, at 0 °C (NIST SP 811). */
const MM_MERCURY_PA = 133.322387415;
const INCH_MERCURY_PA = 25.4 * MM_MERCURY_PA;
/** A food calorie is the thermochemical one on labels (Codex, EU 1169/2011), as chemistry's per mole is (IUPAC). */
const THERMOCHEMICAL_KCAL_J = 4184;
const RANKINE_K = 5 / 9;

const units = (...rows: [string, number, number?][]): readonly UnitDefinition[] =>
  rows.map(([symbol, toSi, offset]) => (offset === undefined ? { symbol, toSi } : { symbol, toSi, offset }));

const PRESSURE = units(
  ['Pa', 1],
  ['hPa', 100],
  ['kPa', 1e3],
  ['MPa', 1e6],
  ['bar', 1e5],
  ['mbar', 100],
  ['atm', 101325],
  ['psi', POUND_FORCE_PER_SQUARE_INCH_PA],
  ['psia', POUND_FORCE_PER_SQUARE_INCH_PA],
  ['mmHg', MM_MERCURY_PA],
  ['inHg', INCH_MERCURY_PA],
);
const DIFFUSIVITY = units(['m²/s', 1], ['cm²/s', 1e-4], ['mm²/s', 1e-6], ['cSt', 1e-6]);
const TIME = units(['s', 1], ['min', 60], ['h', 3600], ['d', 86400]);
const FRACTION = units(
  ['1', 1],
  ['%', 0.01],
  ['kg/kg', 1],
  ['g/kg', 1e-3],
  ['g/g', 1],
  ['lb/lb', 1],
  ['oz/lb', 1 / 16],
  ['g/100 g', 0.01],
  ['mg/100 g', 1e-5],
  ['mg/kg', 1e-6],
  ['ppm', 1e-6],
);
const PURE = units(['1', 1]);

/** Kind → units. The first unit of a kind need not be SI; `SI_SYMBOL` names the SI one. */
export const UNITS = {
  temperature: units(['K', 1, 0], ['°C', 1, 273.15], ['°F', RANKINE_K, 459.67 * RANKINE_K]),
  difference: units(['K', 1], ['°C', 1], ['°F', RANKINE_K]),
  pressure: PRESSURE,
  stress: PRESSURE,
  mass: units(['kg', 1], ['mg', 1e-6], ['g', 1e-3], ['t', 1e3], ['oz', POUND_KG / 16], ['lb', POUND_KG]),
  length: units(
    ['m', 1],
    ['µm', 1e-6],
    ['mm', 1e-3],
    ['cm', 1e-2],
    ['km', 1e3],
    ['in', INCH_M],
    ['ft', FOOT_M],
  ),
  area: units(['m²', 1], ['mm²', 1e-6], ['cm²', 1e-4], ['in²', INCH_M * INCH_M], ['ft²', FOOT_M * FOOT_M]),
  volume: units(
    ['m³', 1],
    ['mL', 1e-6],
    ['L', 1e-3],
    ['cm³', 1e-6],
    ['tsp', US_GALLON_M3 / 768],
    ['tbsp', US_GALLON_M3 / 256],
    ['cup', US_GALLON_M3 / 16],
    ['fl oz', US_GALLON_M3 / 128],
    ['pt', US_GALLON_M3 / 8],
    ['qt', US_GALLON_M3 / 4],
    ['gal', US_GALLON_M3],
    ['metric-cup', 250e-6],
    ['au-tbsp', 20e-6],
  ),
  time: TIME,
  'dose-time': TIME,
  speed: units(
    ['m/s', 1],
    ['km/h', 1 / 3.6],
    ['mph', 1609.344 / 3600],
    ['mm/min', 1e-3 / 60],
    ['mm/h', 1e-3 / 3600],
  ),
  'volume-flow': units(['m³/s', 1], ['mL/s', 1e-6], ['L/s', 1e-3], ['L/min', 1e-3 / 60], ['m³/h', 1 / 3600]),
  'mass-flow': units(
    ['kg/s', 1],
    ['g/s', 1e-3],
    ['g/min', 1e-3 / 60],
    ['kg/h', 1 / 3600],
    ['lb/h', POUND_KG / 3600],
  ),
  'mass-flux': units(['kg/m²s', 1], ['g/m²s', 1e-3], ['g/m²h', 1e-3 / 3600], ['kg/m²h', 1 / 3600]),
  power: units(['W', 1], ['kW', 1e3], ['Btu/h', BTU_J / 3600]),
  'heat-flux': units(['W/m²', 1], ['kW/m²', 1e3]),
  energy: units(['J', 1], ['kJ', 1e3], ['MJ', 1e6], ['kWh', 3.6e6], ['Btu', BTU_J], ['kcal', KCAL_J]),
  'specific-energy': units(
    ['J/kg', 1],
    ['kJ/kg', 1e3],
    ['MJ/kg', 1e6],
    ['J/g', 1e3],
    ['Btu/lb', BTU_J / POUND_KG],
    ['kWh/t', 3600],
    ['kWh/kg', 3.6e6],
    ['MWh/t', 3.6e6],
  ),
  'specific-heat': units(
    ['J/kgK', 1],
    ['kJ/kgK', 1e3],
    ['J/gK', 1e3],
    ['Btu/lb°F', BTU_J / (POUND_KG * RANKINE_K)],
  ),
  'heat-capacity': units(['J/K', 1], ['kJ/K', 1e3]),
  conductivity: units(['W/mK', 1], ['mW/mK', 1e-3]),
  coefficient: units(['W/m²K', 1], ['Btu/hft²°F', BTU_J / (3600 * FOOT_M * FOOT_M * RANKINE_K)]),
  conductance: units(['W/K', 1]),
  resistance: units(['m²K/W', 1]),
  diffusivity: DIFFUSIVITY,
  'kinematic-viscosity': DIFFUSIVITY,
  density: units(
    ['kg/m³', 1],
    ['g/mL', 1e3],
    ['g/cm³', 1e3],
    ['kg/L', 1e3],
    ['lb/ft³', POUND_KG / (FOOT_M * FOOT_M * FOOT_M)],
  ),
  'specific-volume': units(['m³/kg', 1], ['L/kg', 1e-3], ['ft³/lb', (FOOT_M * FOOT_M * FOOT_M) / POUND_KG]),
  viscosity: units(['Pa·s', 1], ['mPa·s', 1e-3], ['µPa·s', 1e-6], ['cP', 1e-3]),
  consistency: units(['Pa·sⁿ', 1]),
  rate: units(['1/s', 1], ['1/min', 1 / 60], ['1/h', 1 / 3600]),
  expansion: units(['1/K', 1]),
  molarity: units(['mol/m³', 1], ['mol/L', 1e3], ['mmol/L', 1]),
  molality: units(['mol/kg', 1], ['mmol/kg', 1e-3]),
  'mass-per-volume': units(['kg/m³', 1], ['g/L', 1], ['g/100 mL', 10]),
  'molar-energy': units(['J/mol', 1], ['kJ/mol', 1e3], ['kcal/mol', THERMOCHEMICAL_KCAL_J]),
  fraction: FRACTION,
  'food-energy': units(['J/kg', 1], ['kcal/100 g', THERMOCHEMICAL_KCAL_J * 10]),
  pungency: units(['SHU', 1]),
  number: PURE,
  log: PURE,
  reduction: PURE,
} as const satisfies Record<string, readonly UnitDefinition[]>;

export type Kind = keyof typeof UNITS;

/** Kinds whose bare number is a legal way to write them. */
const BARE_KINDS: ReadonlySet<Kind> = new Set(['fraction', 'number', 'log', 'reduction']);

/** Kinds that may lie below zero; all others are never negative. */
const SIGNED_KINDS: ReadonlySet<Kind> = new Set([
  'temperature',
  'difference',
  'number',
  'log',
  'reduction',
  'fraction',
  'heat-flux',
  'power',
  'energy',
  'heat-capacity',
]);

export const takesBareNumber = (kind: Kind): boolean => BARE_KINDS.has(kind);
export const mayBeNegative = (kind: Kind): boolean => SIGNED_KINDS.has(kind);

/**
 * A unit's spelling reduced to one form: ², ³, ⁿ as 2, 3, n, µ and μ as u; the degree sign of °C and °F, the
 * product signs · and * and a product's point, and blanks dropped.
 */
function plainUnit(text: string): string {
  return text
    .trim()
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/\^?ⁿ/g, 'n')
    .replace(/\^(?=[23n])/g, '')
    .replace(/[µμ]/g, 'u')
    .replace(/°(?=[CF])/g, '')
    .replace(/(?<=[\p{L}\d])\s*[·*.]\s*(?=[\p{L}])/gu, '')
    .replace(/\s/g, '');
}

const BY_SYMBOL: ReadonlyMap<Kind, ReadonlyMap<string, UnitDefinition>> = new Map(
  (Object.keys(UNITS) as Kind[]).map((kind) => [
    kind,
    new Map(UNITS[kind].map((unit): [string, UnitDefinition] => [unit.symbol, unit])),
  ]),
);

const BY_SPELLING: ReadonlyMap<Kind, ReadonlyMap<string, UnitDefinition>> = new Map(
  (Object.keys(UNITS) as Kind[]).map((kind) => [
    kind,
    new Map(UNITS[kind].map((unit): [string, UnitDefinition] => [plainUnit(unit.symbol), unit])),
  ]),
);

/**
 * The unit of this kind that the text spells, or undefined. Upper and lower case differ (`MPa`, `mPa·s`).
 * A blank may stand inside a quotient or where the symbol has one: `W/m K` and `fl oz`, but never `k g` or `m in`.
 */
export function findUnit(kind: Kind, text: string): UnitDefinition | undefined {
  const exact = BY_SYMBOL.get(kind)!.get(text);
  if (exact) return exact;
  const unit = BY_SPELLING.get(kind)!.get(plainUnit(text));
  if (!unit) return undefined;
  return /\s/.test(text.trim()) && !/[/\s·]/.test(unit.symbol) ? undefined : unit;
}

/** The kinds that know this unit, for a sentence that says what was written instead. */
export function kindsOfUnit(text: string): Kind[] {
  return (Object.keys(UNITS) as Kind[]).filter((kind) => findUnit(kind, text) !== undefined);
}

/** SI symbol of a kind: the unit whose factor is one and offset none. */
export function siSymbol(kind: Kind): string {
  const unit = (UNITS[kind] as readonly UnitDefinition[]).find((u) => u.toSi === 1 && !u.offset);
  return unit ? unit.symbol : '1';
}
