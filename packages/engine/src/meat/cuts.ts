/**
 * The catalogue of cuts: size, shape, composition, bone and tissue of a piece as it lies on the pit.
 *
 * Composition in mass fractions of lean and fat without bone: values of the USDA tables from memory, ± 3 points of water
 * and fat between carcasses. Thickness law: half thickness = reference × (mass/reference mass)^⅓, fitted on measured
 * cooks and common-practice times together (calibration). Against the fit's own figures the levels are moved by at most
 * 7 % (whole spareribs 10 %), inside their doubt, so that medians lie within common practice; see docs/models/meat.md.
 * Rows marked `Table` are typical dimensions from memory.
 * Bone shares: USDA SR28 refuse. IMPS numbers: USDA Institutional Meat Purchase Specifications.
 */
import { CATALOGUE_CUTS, type CatalogueCut, CUTS } from '@pitwright/model';
import type { Cut } from './cut.ts';
import {
  BEEF_BACK_RIB,
  BRISKET,
  bigCut,
  CHICKEN,
  CHICKEN_BREAST,
  CHUCK,
  FLAT,
  HAM,
  LAMB_LEG,
  LAMB_SHOULDER,
  LOIN_RIBS,
  POINT,
  poultry,
  RIB_ROAST,
  ribs,
  roast,
  SHORT_RIB,
  SHOULDER,
  SPARERIBS,
  TURKEY,
} from './cutFamilies.ts';
import { FURTHER_ROWS } from './furtherCuts.ts';

const CALC_ROWS: Readonly<Record<(typeof CUTS)[number], Omit<Cut, 'id'>>> = {
  'loin-back-ribs': {
    ...ribs,
    imps: '422',
    composition: LOIN_RIBS,
    halfThicknessM: 14.7e-3,
    massKg: 1.1,
    tissue: 'pork-loin-ribs',
  },
  spareribs: {
    ...ribs,
    imps: '416',
    composition: SPARERIBS,
    halfThicknessM: 19.2e-3,
    massKg: 2.05,
    tissue: 'pork-spareribs',
  },
  'st-louis-ribs': {
    ...ribs,
    imps: '416A',
    composition: SPARERIBS,
    halfThicknessM: 17.4e-3,
    massKg: 1.25,
    tissue: 'pork-spareribs',
  },
  'brisket-whole': {
    ...bigCut,
    imps: '120',
    composition: BRISKET,
    halfThicknessM: 39.1e-3,
    massKg: 6,
    dimensionality: 1.06,
    rulerFactor: 0.86,
    tissue: 'beef',
    boneShare: 0.01,
  },
  'brisket-flat': {
    ...bigCut,
    imps: '120A',
    composition: FLAT,
    halfThicknessM: 22.5e-3,
    massKg: 3,
    dimensionality: 1.04,
    rulerFactor: 0.95,
    tissue: 'beef',
  },
  'brisket-point': {
    ...bigCut,
    imps: '120B',
    composition: POINT,
    halfThicknessM: 40e-3,
    massKg: 3,
    dimensionality: 1.25,
    rulerFactor: 0.86,
    tissue: 'beef',
  },
  'pork-shoulder': {
    ...bigCut,
    imps: '406',
    composition: SHOULDER,
    halfThicknessM: 54.4e-3,
    massKg: 3.6,
    dimensionality: 1.75,
    rulerFactor: 0.88,
    tissue: 'pork-shoulder',
    hasBone: true,
    boneShare: 0.09,
  },
  'beef-short-ribs': {
    ...ribs,
    imps: '123A',
    composition: SHORT_RIB,
    halfThicknessM: 32.2e-3,
    massKg: 2.5,
    dimensionality: 1.1,
    evaporatingShare: 0.78,
    tissue: 'beef-ribs',
    boneShare: 0.27,
  },
  'beef-back-ribs': {
    ...ribs,
    imps: '124',
    composition: BEEF_BACK_RIB,
    halfThicknessM: 16e-3,
    massKg: 2,
    tissue: 'beef-ribs',
    boneShare: 0.5,
  },
  'chuck-roast': {
    ...bigCut,
    imps: '116A',
    composition: CHUCK,
    halfThicknessM: 36e-3,
    massKg: 1.5,
    dimensionality: 1.55,
    rulerFactor: 0.95,
    tissue: 'beef',
    massOnlySdLn: 0.15,
    untoldSdLn: 0.2,
    fitSdLn: 0.04,
  },
  'rib-roast': {
    // Table: two to three ribs, 114 mm along the loin, section 135 × 185 mm.
    ...roast,
    imps: '109',
    composition: RIB_ROAST,
    halfThicknessM: 54e-3,
    massKg: 3,
    dimensionality: 1.7,
    tissue: 'beef',
    boneShare: 0.16,
    hasBone: true,
  },
  'lamb-shoulder': {
    ...bigCut,
    imps: '207',
    composition: LAMB_SHOULDER,
    halfThicknessM: 43e-3,
    massKg: 2.25,
    dimensionality: 1.5,
    rulerFactor: 0.95,
    tissue: 'lamb',
    boneShare: 0.21,
    hasBone: true,
    massOnlySdLn: 0.15,
    untoldSdLn: 0.2,
    fitSdLn: 0.04,
  },
  'lamb-leg': {
    ...roast,
    imps: '233',
    composition: LAMB_LEG,
    halfThicknessM: 44e-3,
    massKg: 2.2,
    dimensionality: 1.6,
    tissue: 'lamb',
    boneShare: 0.17,
    hasBone: true,
  },
  'fresh-ham': {
    ...roast,
    imps: '401',
    composition: HAM,
    halfThicknessM: 62e-3,
    massKg: 5,
    dimensionality: 1.7,
    tissue: 'pork-shoulder',
    boneShare: 0.17,
    hasBone: true,
  },
  'chicken-whole': {
    ...poultry,
    imps: 'P1000',
    composition: CHICKEN,
    halfThicknessM: 30.8e-3,
    massKg: 1.9,
    dimensionality: 1.55,
    boneShare: 0.32,
  },
  'chicken-half': {
    // Half of a flattened bird, breast and thigh 40–56 mm thick; so that a bird of 2.2 kg takes about 3 h at 121 °C.
    ...poultry,
    composition: CHICKEN,
    halfThicknessM: 24.5e-3,
    massKg: 0.95,
    dimensionality: 1.3,
    boneShare: 0.32,
  },
  'chicken-breast': {
    // Table: boneless breast 30–35 mm thick, skin off; its face from memory.
    ...poultry,
    composition: CHICKEN_BREAST,
    halfThicknessM: 15e-3,
    massKg: 0.25,
    dimensionality: 1.3,
    hasBone: false,
    boneShare: 0,
    evaporatingShare: 0.75,
    juiceToSurfaceShare: 0.57,
  },
  'chicken-leg': {
    // Table: leg quarter 35–40 mm thick.
    ...poultry,
    composition: CHICKEN,
    halfThicknessM: 18e-3,
    massKg: 0.33,
    dimensionality: 1.35,
    boneShare: 0.3,
  },
  'turkey-whole': {
    ...poultry,
    imps: 'P2000',
    composition: TURKEY,
    halfThicknessM: 47.2e-3,
    massKg: 5.5,
    dimensionality: 1.6,
    boneShare: 0.29,
  },
  'turkey-breast': {
    // Table: bone-in breast 80–110 mm thick.
    ...poultry,
    composition: TURKEY,
    halfThicknessM: 42e-3,
    massKg: 2.7,
    dimensionality: 1.5,
    boneShare: 0.15,
  },
  'turkey-half': {
    // Half of a flattened bird: 32 mm at 5.5 kg.
    ...poultry,
    composition: TURKEY,
    halfThicknessM: 30.5e-3,
    massKg: 2.75,
    dimensionality: 1.3,
    boneShare: 0.29,
  },
};

const ROWS: Readonly<Record<CatalogueCut, Omit<Cut, 'id'>>> = { ...CALC_ROWS, ...FURTHER_ROWS };
const CATALOGUE: readonly Cut[] = CATALOGUE_CUTS.map((id) => ({ id, ...ROWS[id] }));
const BY_ID: ReadonlyMap<string, Cut> = new Map(CATALOGUE.map((cut) => [cut.id, cut]));

/** The cuts that `calc` knows by name. */
export const cuts = (): readonly Cut[] => CUTS.map((id) => BY_ID.get(id)!);
/** Every cut that a cook file may name. */
export const catalogueOfCuts = (): readonly Cut[] => CATALOGUE;
export const findCut = (id: string): Cut | undefined => BY_ID.get(id);
