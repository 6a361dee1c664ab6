import type { NoticeLevel } from '@pitwright/model';
import type { Drawing, Setting } from '../drawing.ts';
import { closed, type Mark, mark, path, rect } from '../mark.ts';
import { BODY, PIT, text, wrapped } from '../text.ts';

const PAD = 14;
const CUT = 18;
const STRIPE = 16;

interface Look {
  readonly left: number;
  readonly head: string;
  readonly headSize: number;
  readonly body: string;
}

const LOOKS: Readonly<Record<NoticeLevel, Look>> = {
  information: { left: 20, head: 'onInfo', headSize: BODY, body: 'ink' },
  caution: { left: STRIPE + 14, head: 'onCaution', headSize: BODY, body: 'ink' },
  stop: { left: 26, head: 'onStop', headSize: PIT, body: 'stopBody' },
};

/** Slanted strokes of the caution's edge. */
const stripes = (height: number): Mark[] =>
  Array.from({ length: Math.ceil((height + STRIPE) / 12) }, (_, i) => {
    const y = i * 12;
    return path(
      closed([
        [0, y],
        [STRIPE, y - STRIPE],
        [STRIPE, y - STRIPE + 6],
        [0, y + 6],
      ]),
      'noticeCautionStripe',
    );
  });

function frame(level: NoticeLevel, width: number, height: number, id: string): Mark[] {
  if (level === 'information')
    return [
      rect(0, 0, width, height, 'noticeInfo'),
      rect(0, 0, 2, height, 'noticeInfoRule'),
      rect(4, 0, 2, height, 'noticeInfoRule'),
    ];
  if (level === 'stop')
    return [
      path(
        closed([
          [CUT, 0],
          [width - CUT, 0],
          [width, CUT],
          [width, height - CUT],
          [width - CUT, height],
          [CUT, height],
          [0, height - CUT],
          [0, CUT],
        ]),
        'noticeStop',
      ),
    ];
  const clip = `${id}-caution`;
  return [
    path(
      closed([
        [0, 0],
        [width - 22, 0],
        [width, 22],
        [width, height],
        [0, height],
      ]),
      'noticeCaution',
    ),
    mark('clipPath', { id: clip }, [rect(0, 0, STRIPE, height, '')]),
    mark('g', { clipPath: `url(#${clip})` }, stripes(height)),
  ];
}

/**
 * A notice by shape, word and colour: information a double rule, caution a cut corner and a striped edge, stop an
 * eight-sided solid block. `head` begins with the level's word; both texts are printed already.
 */
export function noticeBlock(level: NoticeLevel, head: string, body: string, setting: Setting): Drawing {
  const look = LOOKS[level];
  const room = setting.width - look.left - PAD - (level === 'information' ? 0 : CUT);
  const heads = wrapped(head, room, look.headSize);
  const lines = wrapped(body, room, BODY);
  const headStep = look.headSize * 1.3;
  const bodyStep = BODY * 1.3;
  const top = PAD + look.headSize * 0.8;
  const height = Math.ceil(top + headStep * heads.length + bodyStep * (lines.length - 1) + PAD);
  return {
    width: setting.width,
    height,
    marks: [
      ...frame(level, setting.width, height, setting.id),
      ...heads.map((words, i) =>
        text(look.left, top + i * headStep, words, { size: look.headSize, className: look.head }),
      ),
      ...lines.map((words, i) =>
        text(look.left, top + heads.length * headStep + i * bodyStep, words, {
          size: BODY,
          className: look.body,
        }),
      ),
    ],
    sentence: `${head}. ${body}`,
    table: { head: [], rows: [] },
  };
}
