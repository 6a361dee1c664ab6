import type { Drawing, Setting } from '../drawing.ts';
import { line, type Mark } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { Voice } from '../voice.ts';

const HUNDRED = 100;

/**
 * A chance, counted: a hundred strokes of which some are heavy.
 * @param share  in [0, 1]; outside: RangeError
 * @param words  What the heavy ones are, printed: `6 run short`
 */
export function hundredStrokes(share: number, words: string, setting: Setting, voice: Voice): Drawing {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`share must be in [0, 1], got ${share}`);
  const heavy = Math.round(share * HUNDRED);
  const pitch = setting.width / HUNDRED;
  const strokes = Array.from({ length: HUNDRED }, (_, i): Mark => {
    const x = (i + 0.5) * pitch;
    return line(x, 2, x, 20, i < heavy ? 'strokeHeavy' : 'strokeFine');
  });
  const ofHundred = voice.say({ id: 'draw.of-a-hundred' });
  const isRoom = widthOf(words) + widthOf(ofHundred) + 16 < setting.width;
  return {
    width: setting.width,
    height: isRoom ? 38 : 54,
    marks: [
      ...strokes,
      text(0, 35, words, { className: 'ink strong' }),
      text(isRoom ? setting.width : 0, isRoom ? 35 : 51, ofHundred, {
        anchor: isRoom ? 'end' : 'start',
        className: 'ink2',
      }),
    ],
    sentence: voice.say({ id: 'draw.strokes', params: { heavy, words } }),
    table: {
      head: [voice.say({ id: 'draw.head-what' }), voice.say({ id: 'draw.of-a-hundred' })],
      rows: [[words, String(heavy)]],
    },
  };
}
