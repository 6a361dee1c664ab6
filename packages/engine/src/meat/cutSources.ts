/**
 * Where each figure of the catalogue of cuts comes from, and how sure it is.
 *
 * A refuse range is the published share of bone (and, where named, skin) of the raw mass; the row's own bone share lies
 * inside it. `memory`: known to the trade or from a table, not read again for this page.
 */
import type { CatalogueCut } from '@pitwright/model';
import type { Cut } from './cut.ts';
import { findCut } from './cuts.ts';

export type CutEvidence = 'published' | 'memory' | 'derived' | 'calibration' | 'common practice';

export interface CutSource {
  readonly evidence: CutEvidence;
  readonly source: string;
}

/** The figures of a cut that a person may ask about. */
export const SOURCED = ['size', 'thickness', 'composition', 'bone', 'faces', 'tissue', 'item'] as const;
export type Sourced = (typeof SOURCED)[number];

export interface CutFacts {
  readonly cut: Cut;
  /** Published refuse, lowest and highest [1]; missing where the cut is boneless by its item text. */
  readonly refuse?: readonly [low: number, high: number];
  readonly sources: Readonly<Record<Sourced, CutSource>>;
}

interface Row {
  /** Thickness from a ruler's figure of the trade, not fitted on cooks. */
  readonly byRuler?: true;
  readonly refuse?: readonly [number, number];
  readonly bone: CutSource;
  /** Key of the USDA table, or what stands in for one. */
  readonly composition: string;
  /** Where the typical mass comes from; missing: trade habit. */
  readonly size?: CutSource;
}

const SR28 = (food: string): CutSource => ({
  evidence: 'published',
  source: `USDA National Nutrient Database SR28, refuse of ${food}`,
});
const REMEMBERED = (food: string): CutSource => ({
  evidence: 'memory',
  source: `USDA National Nutrient Database SR28, refuse of ${food}`,
});
const BONELESS: CutSource = { evidence: 'published', source: 'USDA IMPS item text: boneless' };
const IMPS_WEIGHTS: CutSource = { evidence: 'published', source: 'USDA IMPS weight ranges A to C' };

const ROWS: Readonly<Record<CatalogueCut, Row>> = {
  'loin-back-ribs': {
    refuse: [0.3, 0.37],
    bone: SR28('pork back ribs, raw: bone 30 %, connective tissue 7 %'),
    composition: 'pork back ribs, raw',
  },
  spareribs: {
    refuse: [0.3, 0.38],
    bone: SR28('pork spareribs: 30 % raw, 32–38 % cooked'),
    composition: 'pork spareribs, raw',
  },
  'st-louis-ribs': {
    refuse: [0.28, 0.32],
    bone: { evidence: 'derived', source: 'spareribs (SR28) less sternum and cartilage: 28–32 %' },
    composition: 'pork spareribs, raw',
  },
  'spareribs-breast-off': {
    refuse: [0.28, 0.32],
    bone: { evidence: 'derived', source: 'spareribs (SR28) less sternum: about 29 %' },
    composition: 'pork spareribs, raw',
  },
  'rib-tips': {
    byRuler: true,
    refuse: [0.25, 0.35],
    bone: { evidence: 'common practice', source: 'no source: cartilage about 30 %' },
    composition: 'pork spareribs, raw',
  },
  'country-style-ribs': {
    byRuler: true,
    refuse: [0.21, 0.35],
    bone: SR28('pork loin country-style ribs, raw: bone 21 %, connective tissue 14 %'),
    composition: 'pork loin country-style ribs, raw',
  },
  'pork-shoulder': {
    refuse: [0.09, 0.24],
    bone: SR28('pork shoulder blade (Boston butt), raw: bone 9 %, connective tissue 15 %'),
    composition: 'pork shoulder, whole, raw',
  },
  'pork-picnic': {
    byRuler: true,
    refuse: [0.16, 0.22],
    bone: SR28('pork shoulder arm picnic, raw: bone and skin 16 %, connective tissue 6 %'),
    composition: 'pork shoulder arm picnic, raw',
    size: IMPS_WEIGHTS,
  },
  'pork-shoulder-whole': {
    byRuler: true,
    refuse: [0.25, 0.25],
    bone: SR28('pork shoulder whole, raw: bone and skin 25 %'),
    composition: 'pork shoulder, whole, raw',
    size: IMPS_WEIGHTS,
  },
  'pork-belly': {
    byRuler: true,
    refuse: [0, 0.07],
    bone: SR28('pork belly: skin 7 %; item 409 is skinless'),
    composition: 'pork belly, raw',
  },
  'pork-loin': {
    byRuler: true,
    refuse: [0.22, 0.22],
    bone: SR28('pork loin whole, bone in, raw: 22 %'),
    composition: 'pork loin, whole, raw',
    size: IMPS_WEIGHTS,
  },
  'pork-loin-center': {
    byRuler: true,
    refuse: [0.22, 0.22],
    bone: SR28('pork loin whole, bone in, raw: 22 %'),
    composition: 'pork loin, whole, raw',
    size: IMPS_WEIGHTS,
  },
  'fresh-ham': {
    refuse: [0.17, 0.17],
    bone: SR28('pork leg, raw: 17 %'),
    composition: 'pork leg, whole, raw',
  },
  'brisket-whole': {
    refuse: [0, 0.01],
    bone: SR28('beef brisket, raw: 1 %'),
    composition: 'beef brisket, whole, raw',
  },
  'brisket-flat': {
    refuse: [0, 0.01],
    bone: SR28('beef brisket flat half, raw: 1 %'),
    composition: 'beef brisket, flat half, raw',
  },
  'brisket-point': {
    refuse: [0, 0.01],
    bone: SR28('beef brisket point half, raw: 1 %'),
    composition: 'beef brisket, point half, raw',
  },
  'beef-short-ribs': {
    refuse: [0.27, 0.27],
    bone: SR28('beef shortribs, raw: 27 %'),
    composition: 'beef shortribs, raw',
  },
  'chuck-short-ribs': {
    byRuler: true,
    refuse: [0.25, 0.27],
    bone: { evidence: 'derived', source: 'beef shortribs (SR28 27 %), thinner bones: 25–27 %' },
    composition: 'beef shortribs, raw',
  },
  'beef-back-ribs': {
    refuse: [0.45, 0.55],
    bone: { evidence: 'common practice', source: 'no source: 45–55 %' },
    composition: 'beef rib, raw',
  },
  'chuck-roast': { bone: BONELESS, composition: 'beef chuck, raw' },
  'chuck-roll': {
    byRuler: true,
    bone: BONELESS,
    composition: 'beef chuck, raw',
    size: {
      evidence: 'published',
      source: 'primal and subprimal yields: 37.9 lb of both sides of a 1300-lb steer, 8.6 kg each',
    },
  },
  'beef-clod': { byRuler: true, bone: BONELESS, composition: 'beef chuck shoulder clod, raw' },
  'tri-tip': {
    byRuler: true,
    refuse: [0, 0.02],
    bone: SR28('beef bottom sirloin tri-tip, raw: 1–2 %, connective tissue'),
    composition: 'beef bottom sirloin tri-tip, raw',
  },
  'rib-roast': {
    byRuler: true,
    refuse: [0.13, 0.19],
    bone: REMEMBERED('beef rib, raw: 13–19 % by trim'),
    composition: 'beef rib, raw',
  },
  'lamb-shoulder': {
    refuse: [0.21, 0.21],
    bone: SR28('lamb shoulder, raw: 21 %'),
    composition: 'lamb shoulder, raw',
  },
  'lamb-leg': {
    refuse: [0.15, 0.25],
    bone: REMEMBERED('lamb leg, raw: 15–25 % by trim'),
    composition: 'lamb leg, raw',
  },
  'lamb-rack': {
    byRuler: true,
    refuse: [0.4, 0.4],
    bone: { evidence: 'common practice', source: 'no source: 40 %' },
    composition: 'lamb rib, raw',
  },
  'lamb-breast': {
    byRuler: true,
    refuse: [0.35, 0.35],
    bone: { evidence: 'common practice', source: 'no source: 35 %' },
    composition: 'lamb rib, raw, leaner',
  },
  'chicken-whole': {
    refuse: [0.32, 0.32],
    bone: SR28('chicken broilers, raw: 32 %'),
    composition: 'chicken, meat and skin, raw',
  },
  'chicken-half': {
    refuse: [0.32, 0.32],
    bone: SR28('chicken broilers, raw: 32 %'),
    composition: 'chicken, meat and skin, raw',
  },
  'chicken-breast': { byRuler: true, bone: BONELESS, composition: 'chicken breast, meat only, raw' },
  'chicken-leg': {
    byRuler: true,
    refuse: [0.27, 0.33],
    bone: SR28('chicken leg, raw: 27–33 %'),
    composition: 'chicken, meat and skin, raw',
  },
  'chicken-wing': {
    byRuler: true,
    refuse: [0.38, 0.46],
    bone: SR28('chicken wing, raw: 38 %; from memory to 46 %'),
    composition: 'chicken wing, meat and skin, raw',
  },
  'chicken-thigh': {
    byRuler: true,
    refuse: [0.17, 0.23],
    bone: REMEMBERED('chicken thigh, raw: 17–23 %'),
    composition: 'chicken, meat and skin, raw',
  },
  'chicken-drumstick': {
    byRuler: true,
    refuse: [0.29, 0.34],
    bone: REMEMBERED('chicken drumstick, raw: 29–34 %'),
    composition: 'chicken, meat and skin, raw',
  },
  'turkey-whole': {
    refuse: [0.29, 0.29],
    bone: SR28('turkey whole, raw: 29 %'),
    composition: 'turkey, meat and skin, raw',
  },
  'turkey-half': {
    refuse: [0.29, 0.29],
    bone: SR28('turkey whole, raw: 29 %'),
    composition: 'turkey, meat and skin, raw',
  },
  'turkey-breast': {
    byRuler: true,
    refuse: [0.1, 0.2],
    bone: REMEMBERED('turkey breast, raw: 10–20 %'),
    composition: 'turkey, meat and skin, raw',
  },
};

/** Item numbers whose text was read; the others are from memory. */
const READ_ITEMS: ReadonlySet<string> = new Set([
  '422',
  '416',
  '416A',
  '406',
  '405',
  '403',
  '410',
  '412',
  '401',
  '120',
  '120A',
  '120B',
  '123A',
  '130',
  '124',
]);

const MEMORY = (source: string): CutSource => ({ evidence: 'memory', source });

function itemSource({ imps }: Cut): CutSource {
  if (imps === undefined) return MEMORY('no item of its own; a trade part');
  return READ_ITEMS.has(imps)
    ? { evidence: 'published', source: `USDA IMPS item ${imps}` }
    : MEMORY(`USDA IMPS item ${imps}`);
}

function thicknessSource(cut: Cut): CutSource {
  if (cut.id === 'spareribs-breast-off')
    return { evidence: 'derived', source: 'between items 416 and 416A, whose thickness is fitted' };
  return ROWS[cut.id as CatalogueCut].byRuler
    ? {
        evidence: 'common practice',
        source: 'no source: ordinary length × breadth × thickness, ruler factor of its family',
      }
    : { evidence: 'calibration', source: 'fitted on measured cooks and common-practice times together' };
}

function tissueSource({ tissue }: Cut): CutSource {
  return tissue === 'lamb' || tissue === 'poultry'
    ? MEMORY('softening of its kind')
    : {
        evidence: 'calibration',
        source: 'softening of its kind: hand tests of measured cooks, braising times',
      };
}

/** A cut of the catalogue with the source of its figures; undefined for one of a person's own. */
export function cutFacts(id: string): CutFacts | undefined {
  const cut = findCut(id);
  const row = ROWS[id as CatalogueCut];
  if (!cut || !row) return undefined;
  return {
    cut,
    ...(row.refuse && { refuse: row.refuse }),
    sources: {
      size: row.size ?? { evidence: 'common practice', source: 'no source: usual mass as sold' },
      thickness: thicknessSource(cut),
      composition: MEMORY(
        `USDA National Nutrient Database SR28, ${row.composition}; ± 3 points of water and fat`,
      ),
      bone: row.bone,
      faces: {
        evidence: 'calibration',
        source: 'share of the face that dries: fitted by family; skin, membrane and fat cap from memory',
      },
      tissue: tissueSource(cut),
      item: itemSource(cut),
    },
  };
}
