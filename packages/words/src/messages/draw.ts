import { count, decimal } from '../figures/number.ts';
import { messages } from './message.ts';

/** A share to the nearest hundredth. */
const percent = (share: number): string => `${decimal(Math.round(share * 100))} %`;

/** Words on drawings, and the sentence that stands for each. Times come printed. */
export const drawMessages = messages({
  'draw.table': (p: { time: string }) => `${p.time} table`,
  'draw.now': (p: { time: string }) => `now ${p.time}`,
  'draw.never': () => 'never',
  'draw.from': (p: { time: string }) => `from ${p.time}`,
  'draw.bands': (p: { count: number; table: string }) =>
    `Bands of ${count(p.count)} ${p.count === 1 ? 'piece' : 'pieces'} on one axis that ends at the table at ${p.table}.`,
  'draw.ranges': (p: { count: number; table: string }) =>
    `${p.count === 1 ? 'One range' : `${count(p.count)} ranges`} of 8 times in 10, before the table at ${p.table}.`,
  'draw.inside': (p: { letter: string; surface: string; middle: string; time: string }) =>
    `${p.letter} inside: at ${p.time} ${p.surface} at the surface, ${p.middle} at the bottom of the drawing.`,
  'draw.inside-both': (p: {
    letter: string;
    top: string;
    bottom: string;
    surface: string;
    middle: string;
    other: string;
    dryTop: string;
    dryBottom: string;
    time: string;
  }) =>
    `${p.letter} inside, ${p.top} above and ${p.bottom} below: at ${p.time} ${p.surface} at the ${p.top}, ${p.middle} in the middle, ${p.other} at the ${p.bottom}; dry ${p.dryTop} deep from the ${p.top}, ${p.dryBottom} from the ${p.bottom}.`,
  'draw.ledger': (p: { letter: string; air: number; dries: number; juice: number }) =>
    `Of the heat that goes into ${p.letter}, ${percent(p.air)} comes by the moving air and ${percent(1 - p.air)} by radiation; ${percent(p.dries)} dries it and the rest warms it; ${percent(p.juice)} leaves again with its juice.`,
  'draw.ledger-arrives': () => 'arrives',
  'draw.ledger-spent': () => 'spent',
  'draw.ledger-convection': () => 'by moving air',
  'draw.ledger-radiation': () => 'by radiation',
  'draw.ledger-still': () => 'through still air or a box',
  'draw.ledger-steam': () => 'condensing steam',
  'draw.ledger-own': () => 'its own warmth',
  'draw.ledger-evaporation': () => 'dries it',
  'draw.ledger-warming': () => 'warms it',
  'draw.ledger-juice': () => 'leaves with juice',
  'draw.not-parted': () => 'not parted',
  'draw.strokes': (p: { heavy: number; words: string }) => `${p.heavy} in 100: ${p.words}.`,
  'draw.of-a-hundred': () => 'of a hundred',
  'draw.surface': () => 'surface',
  'draw.middle': (p: { depth: string }) => `middle, ${p.depth}`,
  'draw.bone-side': (p: { depth: string }) => `bone side, ${p.depth}`,
  'draw.fat-side': (p: { depth: string }) => `fat side, ${p.depth}`,
  'draw.skin-side': (p: { depth: string }) => `skin side, ${p.depth}`,
  'draw.other-side': (p: { depth: string }) => `other face, ${p.depth}`,
  'draw.from-to': (p: { top: string; bottom: string }) => `${p.top} above, ${p.bottom} below`,
  'draw.stall': (p: { low: string; high: string }) => `stall ${p.low}–${p.high}`,
  'draw.watts': (p: { watts: number }) => `${decimal(p.watts)} W`,
  'draw.energy': (p: { joules: number }) => `${decimal(p.joules / 1e6, 2)} MJ`,
  'draw.head-piece': () => 'piece',
  'draw.head-name': () => 'name',
  'draw.head-on': () => 'on',
  'draw.head-ready': () => 'ready, 8 times in 10',
  'draw.head-bite': () => 'bite',
  'draw.head-time': () => 'time',
  'draw.head-surface': () => 'surface',
  'draw.head-half': () => 'half way in',
  'draw.head-middle': () => 'middle',
  'draw.head-open-side': () => 'open face',
  'draw.head-bone-side': () => 'bone side',
  'draw.head-fat-side': () => 'fat side',
  'draw.head-skin-side': () => 'skin side',
  'draw.head-other-side': () => 'other face',
  'draw.head-dry-open-side': () => 'dry, open face',
  'draw.head-dry-bone-side': () => 'dry, bone side',
  'draw.head-dry-fat-side': () => 'dry, fat side',
  'draw.head-dry-skin-side': () => 'dry, skin side',
  'draw.head-dry-other-side': () => 'dry, other face',
  'draw.head-dry': () => 'dry to',
  'draw.head-into': () => 'into it',
  'draw.head-dries': () => 'dries it',
  'draw.head-warms': () => 'warms it',
  'draw.head-with-juice': () => 'leaves with juice',
  'draw.head-convection': () => 'by moving air',
  'draw.head-radiation': () => 'by radiation',
  'draw.head-still': () => 'still air or box',
  'draw.lanes': (p: { jobs: number; hands: number; table: string }) =>
    `${p.jobs} jobs of ${count(p.hands)} ${p.hands === 1 ? 'pair' : 'pairs'} of hands on one axis that ends at the table at ${p.table}; under them what holds the pit, the burner, the oven and the fridge.`,
  'draw.hills': (p: { above: string; aboveRange: string; below: string; belowRange: string }) =>
    `${p.above}, ${p.aboveRange}; ${p.below}, ${p.belowRange}.`,
  'draw.head-when': () => 'when',
  'draw.head-job': () => 'job',
  'draw.head-hands': () => 'hands',
  'draw.head-may-move': () => 'may start',
  'draw.head-range': () => '8 times in 10',
  'draw.head-what': () => 'what',
  'draw.head-remark': () => 'remark',
});
