/**
 * Printed times at a temperature, as published: the time begins once every part is there. Between two printed
 * temperatures the time of the lower one counts; below the first there is none.
 */

/** How a figure is known. */
export type RuleEvidence = 'read' | 'memory';

/** One printed line: temperature in the unit of the table, time in seconds. */
type Line = readonly [temperature: number, timeS: number];

export interface HoldTable {
  readonly rule: string;
  readonly unit: '°F' | '°C';
  readonly lines: readonly Line[];
  readonly source: string;
  readonly evidence: RuleEvidence;
}

const min = (minutes: number): number => minutes * 60;

const FSIS_MEAT =
  'USDA FSIS, Cooking Guideline for Meat and Poultry Products (Revised Appendix A, 2021); table as printed in 1999';
const FSIS_POULTRY = 'USDA FSIS, time–temperature tables for ready-to-eat poultry';
const FOOD_CODE = 'FDA Food Code 3-401.11';
const UK_FSA = 'UK Food Standards Agency, cooking temperature and time combinations';

/** Salmonella, 6.5 decimal reductions in beef, pork and lamb. At 158 °F and above the table prints 0 s. */
const MEAT_65: readonly Line[] = [
  [130, min(112)],
  [131, min(89)],
  [132, min(71)],
  [133, min(56)],
  [134, min(45)],
  [135, min(36)],
  [136, min(28)],
  [137, min(23)],
  [138, min(18)],
  [139, min(15)],
  [140, min(12)],
  [141, min(9)],
  [142, min(8)],
  [143, min(6)],
  [144, min(5)],
  [145, min(4)],
  [146, 169],
  [147, 134],
  [148, 107],
  [149, 85],
  [150, 67],
  [151, 54],
  [152, 43],
  [153, 34],
  [154, 27],
  [155, 22],
  [156, 17],
  [157, 14],
  [158, 0],
];

/** Seven decimal reductions in beef: never for poultry. */
const MEAT_7: readonly Line[] = [
  [130, min(121)],
  [131, min(97)],
  [132, min(77)],
  [133, min(62)],
  [134, min(47)],
  [135, min(37)],
  [136, min(32)],
  [137, min(24)],
  [138, min(19)],
  [139, min(15)],
  [140, min(12)],
  [141, min(10)],
  [142, min(8)],
  [143, min(6)],
  [144, min(5)],
  [145, min(4)],
  [146, 182],
  [147, 144],
  [148, 115],
  [149, 91],
  [150, 72],
  [151, 58],
  [152, 46],
  [153, 37],
  [154, 29],
  [155, 23],
  [156, 19],
  [157, 15],
  [158, 0],
];

export const HOLD_TABLES: readonly HoldTable[] = [
  { rule: 'fsis-meat-6.5', unit: '°F', lines: MEAT_65, source: FSIS_MEAT, evidence: 'read' },
  { rule: 'fsis-meat-7', unit: '°F', lines: MEAT_7, source: FSIS_MEAT, evidence: 'read' },
  {
    // For more than 12 % fat and for unknown fat. 137, 139, 142, 144, 148, 152, 158, 162 and 164 °F are from memory; up
    // to 158 °F they lie within 3 % of the log-linear run of the lines that were read.
    rule: 'fsis-chicken-fat-12',
    unit: '°F',
    lines: [
      [136, min(81.4)],
      [137, min(65.5)],
      [138, min(52.9)],
      [139, min(43)],
      [140, min(35)],
      [141, min(28.7)],
      [142, min(23.7)],
      [143, min(19.8)],
      [144, min(16.6)],
      [145, min(13.8)],
      [146, min(11.5)],
      [148, min(7.7)],
      [150, min(4.9)],
      [152, min(2.8)],
      [154, min(1.6)],
      [156, min(1)],
      [158, 40.9],
      [160, 26.9],
      [162, 17.7],
      [164, 11.7],
    ],
    source: FSIS_POULTRY,
    evidence: 'read',
  },
  // Lean birds: five temperatures were read; the lines between are not at hand.
  {
    rule: 'fsis-chicken-lean',
    unit: '°F',
    lines: [
      [140, min(25.2)],
      [145, min(8.4)],
      [150, min(2.7)],
      [155, 44.2],
      [160, 13.7],
    ],
    source: FSIS_POULTRY,
    evidence: 'read',
  },
  {
    rule: 'fsis-turkey-lean',
    unit: '°F',
    lines: [
      [140, min(28.1)],
      [145, min(10.5)],
      [150, min(3.8)],
      [155, min(1.2)],
      [160, 25.6],
    ],
    source: FSIS_POULTRY,
    evidence: 'read',
  },
  {
    rule: 'food-code-roast',
    unit: '°F',
    lines: [
      [130, min(112)],
      [131, min(89)],
      [133, min(56)],
      [135, min(36)],
      [136, min(28)],
      [138, min(18)],
      [140, min(12)],
      [142, min(8)],
      [144, min(5)],
      [145, min(4)],
      [147, 134],
      [149, 85],
      [151, 54],
      [153, 34],
      [155, 22],
      [157, 14],
      [158, 0],
    ],
    source: `${FOOD_CODE}(B)`,
    evidence: 'read',
  },
  {
    rule: 'food-code-intact',
    unit: '°F',
    lines: [[145, 15]],
    source: `${FOOD_CODE}(A)(1)`,
    evidence: 'read',
  },
  {
    // 155 °F: 17 s since the edition of 2017 (15 s before).
    rule: 'food-code-non-intact',
    unit: '°F',
    lines: [
      [145, min(3)],
      [150, min(1)],
      [155, 17],
      [158, 0],
    ],
    source: `${FOOD_CODE}(A)(2)`,
    evidence: 'read',
  },
  // Editions differ (15 s, or under 1 s since 2017): the longer one is kept.
  {
    rule: 'food-code-poultry',
    unit: '°F',
    lines: [[165, 15]],
    source: `${FOOD_CODE}(A)(3)`,
    evidence: 'read',
  },
  {
    rule: 'uk-core',
    unit: '°C',
    lines: [
      [60, min(45)],
      [65, min(10)],
      [70, min(2)],
      [75, 30],
      [80, 6],
    ],
    source: UK_FSA,
    evidence: 'read',
  },
  {
    rule: 'uk-e-coli',
    unit: '°C',
    lines: [
      [60, min(93)],
      [65, min(14)],
    ],
    source: 'ACMSF (UK), safe cooking of burgers, as quoted in 2015',
    evidence: 'read',
  },
];

const byRule = new Map(HOLD_TABLES.map((table) => [table.rule, table]));

/** The table of this rule. @throws RangeError where there is none */
export function holdTable(rule: string): HoldTable {
  const table = byRule.get(rule);
  if (!table) throw new RangeError(`no hold table is named ${rule}`);
  return table;
}
