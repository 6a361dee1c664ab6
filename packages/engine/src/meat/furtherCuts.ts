/**
 * Cuts beyond those whose thickness was fitted on cooks: known by their ordinary length, breadth and thickness.
 *
 * Half thickness from the thickest place by the family's ruler factor; shape exponent of a brick of those sides at Bi 1
 * (docs/models/heat.md). A piece cooked alone has no measured cook behind it here, so the doubt of thickness is wider.
 * Where each figure comes from: cutSources.ts.
 */
import type { FURTHER_CUTS } from '@pitwright/model';
import { finiteVolumeExponent } from '../heat/dimensionality.ts';
import type { Cut } from './cut.ts';
import { bigCut, CHICKEN, CHUCK, mix, poultry, ribs, roast, SHORT_RIB, SPARERIBS } from './cutFamilies.ts';

/** Length, breadth, thickest place of one ordinary piece [mm]. */
type Sides = readonly [lengthMm: number, breadthMm: number, thicknessMm: number];
type Row = Omit<Cut, 'id' | 'halfThicknessM' | 'dimensionality'>;

/** U L/k of an unwrapped piece of 30–60 mm half thickness: 8–15 W/m²K, 0.45 W/mK. */
const BIOT = 1;

function bySides([lengthMm, breadthMm, thicknessMm]: Sides, row: Row): Omit<Cut, 'id'> {
  return {
    ...row,
    halfThicknessM: (row.rulerFactor * thicknessMm) / 2000,
    dimensionality: finiteVolumeExponent('brick', breadthMm / thicknessMm, lengthMm / thicknessMm, BIOT),
  };
}

const big = { ...bigCut, rulerFactor: 0.9, massOnlySdLn: 0.15, untoldSdLn: 0.22, fitSdLn: 0.06 };
const strip = { ...ribs, massOnlySdLn: 0.18, untoldSdLn: 0.22 };
const part = { ...poultry, massOnlySdLn: 0.12, untoldSdLn: 0.18 };

const PICNIC = mix(62.9, 16.7, 20.2, 0.8);
const WHOLE_SHOULDER = mix(64, 17.2, 18, 0.9);
const COUNTRY_STYLE = mix(66, 18.5, 14.5, 1);
const BELLY = mix(36.7, 9.3, 53, 0.5);
const LOIN = mix(67, 19.7, 12.6, 1);
const CLOD = mix(69.5, 19.6, 9.9, 1);
const TRI_TIP = mix(69.5, 20.6, 8.9, 1);
const LAMB_RIB = mix(51, 14.6, 34, 0.8);
const LAMB_BREAST = mix(54, 15.5, 30, 0.8);
const WING = mix(66.2, 18.3, 16, 0.7);

export const FURTHER_ROWS: Readonly<Record<(typeof FURTHER_CUTS)[number], Omit<Cut, 'id'>>> = {
  'spareribs-breast-off': {
    // Between 416 and 416A, whose thicknesses are fitted.
    ...ribs,
    imps: '416C',
    composition: SPARERIBS,
    halfThicknessM: 18.3e-3,
    massKg: 1.65,
    tissue: 'pork-spareribs',
    boneShare: 0.29,
  },
  'rib-tips': bySides([250, 60, 30], {
    ...strip,
    imps: '417',
    composition: SPARERIBS,
    massKg: 0.5,
    tissue: 'pork-spareribs',
    boneShare: 0.3,
  }),
  'country-style-ribs': bySides([180, 50, 30], {
    ...strip,
    imps: '423',
    composition: COUNTRY_STYLE,
    massKg: 0.2,
    evaporatingShare: 0.85,
    tissue: 'pork-shoulder',
    boneShare: 0.21,
  }),
  'pork-picnic': bySides([280, 170, 120], {
    ...big,
    imps: '405',
    composition: PICNIC,
    massKg: 3.6,
    evaporatingShare: 0.6,
    tissue: 'pork-shoulder',
    hasBone: true,
    boneShare: 0.16,
  }),
  'pork-shoulder-whole': bySides([450, 230, 140], {
    ...big,
    imps: '403',
    composition: WHOLE_SHOULDER,
    massKg: 6.4,
    evaporatingShare: 0.65,
    tissue: 'pork-shoulder',
    hasBone: true,
    boneShare: 0.25,
  }),
  'pork-belly': bySides([500, 250, 50], {
    ...big,
    imps: '409',
    composition: BELLY,
    massKg: 4.5,
    evaporatingShare: 0.75,
    tissue: 'pork-shoulder',
  }),
  'pork-loin': bySides([600, 150, 90], {
    ...roast,
    imps: '410',
    composition: LOIN,
    massKg: 7,
    tissue: 'pork-shoulder',
    hasBone: true,
    boneShare: 0.22,
  }),
  'pork-loin-center': bySides([350, 150, 85], {
    ...roast,
    imps: '412',
    composition: LOIN,
    massKg: 3.6,
    tissue: 'pork-shoulder',
    hasBone: true,
    boneShare: 0.22,
  }),
  'chuck-short-ribs': bySides([250, 200, 55], {
    ...strip,
    imps: '130',
    composition: SHORT_RIB,
    massKg: 1.9,
    evaporatingShare: 0.78,
    tissue: 'beef-ribs',
    boneShare: 0.26,
  }),
  'beef-clod': bySides([400, 250, 120], {
    ...big,
    imps: '114',
    composition: CLOD,
    massKg: 7,
    tissue: 'beef',
  }),
  'chuck-roll': bySides([450, 250, 130], {
    ...big,
    imps: '116A',
    composition: CHUCK,
    massKg: 7,
    tissue: 'beef',
  }),
  'tri-tip': bySides([250, 120, 50], {
    ...big,
    isCollagenRich: false,
    imps: '185C',
    composition: TRI_TIP,
    massKg: 1.15,
    tissue: 'beef',
  }),
  'lamb-rack': bySides([250, 120, 45], {
    ...strip,
    isCollagenRich: false,
    imps: '204',
    composition: LAMB_RIB,
    massKg: 0.85,
    tissue: 'lamb',
    boneShare: 0.4,
  }),
  'lamb-breast': bySides([250, 120, 25], {
    ...strip,
    imps: '209',
    composition: LAMB_BREAST,
    massKg: 0.9,
    tissue: 'lamb',
    boneShare: 0.35,
  }),
  'chicken-wing': bySides([150, 50, 20], {
    ...part,
    composition: WING,
    massKg: 0.09,
    boneShare: 0.38,
  }),
  'chicken-thigh': bySides([120, 90, 35], {
    ...part,
    composition: CHICKEN,
    massKg: 0.16,
    boneShare: 0.21,
  }),
  'chicken-drumstick': bySides([120, 45, 40], {
    ...part,
    composition: CHICKEN,
    massKg: 0.11,
    boneShare: 0.33,
  }),
};
