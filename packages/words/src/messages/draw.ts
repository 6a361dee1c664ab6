import { count, decimal } from '../figures/number.ts';
import { messages } from './message.ts';

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
  'draw.ledger': (p: { letter: string; share: number }) =>
    `Of the heat that goes into ${p.letter}, ${decimal(Math.round(p.share * 20) * 5)} % dries it and the rest warms it.`,
  'draw.strokes': (p: { heavy: number; words: string }) => `${p.heavy} in 100: ${p.words}.`,
  'draw.of-a-hundred': () => 'of a hundred',
  'draw.surface': () => 'surface',
  'draw.middle': (p: { depth: string }) => `middle, ${p.depth}`,
  'draw.second-face': (p: { depth: string }) => `other face, ${p.depth}`,
  'draw.stall': (p: { low: string; high: string }) => `stall ${p.low}–${p.high}`,
  'draw.watts': (p: { watts: number }) => `${decimal(p.watts)} W`,
  'draw.warms': () => 'warms it',
  'draw.dries': () => 'dries it',
  'draw.head-piece': () => 'piece',
  'draw.head-name': () => 'name',
  'draw.head-on': () => 'on',
  'draw.head-ready': () => 'ready, 8 times in 10',
  'draw.head-bite': () => 'bite',
  'draw.head-time': () => 'time',
  'draw.head-surface': () => 'surface',
  'draw.head-half': () => 'half way in',
  'draw.head-middle': () => 'middle',
  'draw.head-second-face': () => 'other face',
  'draw.head-dry': () => 'dry to',
  'draw.head-into': () => 'into it',
  'draw.head-dries': () => 'dries it',
  'draw.head-warms': () => 'warms it',
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
