import { isMap, type Node } from 'yaml';
import { STAGE_LIMITS, withinLimits } from '../limits.ts';
import {
  BITES,
  COALS,
  type DirectHeat,
  FIRE_SHIELDS,
  FIRE_SIDES,
  FOIL_WRAPS,
  isWaiting,
  PAPER_WRAPS,
  type Spritz,
  STAGE_KINDS,
  type Stage,
  type StageEnd,
  type StageKind,
  type Wrap,
} from '../nouns.ts';
import { printCookQuantity, readCookQuantity } from '../units/cook-quantity.ts';
import type { Quantity } from '../units/quantity.ts';
import { type Form, list, mapped, optional, record, required } from './form.ts';
import type { Reader } from './reader.ts';
import { amount, measure, note, scalar, word } from './values.ts';

/** A stage as the file writes it: `for` a time, or `until` a sign. */
interface WrittenStage {
  readonly kind: StageKind;
  readonly for?: Quantity<'time'>;
  readonly until?: StageEnd;
  readonly in?: NonNullable<Stage['in']>;
  readonly at?: Quantity<'temperature'>;
  readonly pit?: Quantity<'temperature'>;
  readonly liquid?: Quantity<'volume'>;
  readonly wrap?: Wrap;
  readonly spritz?: Spritz;
  readonly direct?: DirectHeat;
  readonly note?: string;
}

const END_WORDS = 'bark, table, core 94 °C, surface 70 °C, loss 12 %';

/** `bark`, `table`, a bite, `core 94 °C`, `surface 70 °C` or `loss 12 %`. */
const until: Form<StageEnd> = scalar<StageEnd>(
  (text, node, reader) => {
    if (text === 'bark' || text === 'table') return { by: text };
    const bite = BITES.find((known) => known === text);
    if (bite !== undefined) return { by: 'bite', bite };
    const lost = /^loss\s+(.*)$/su.exec(text);
    if (lost) return lossEnd(text, lost[1]!, node, reader);
    const sign = /^(core|surface)\s+(.*)$/su.exec(text);
    if (!sign) return reader.report(node, 'file.until', { text, words: `${BITES.join(', ')}, ${END_WORDS}` });
    const read = readCookQuantity(sign[2]!, 'temperature');
    if (!read.ok) return reader.take(node, read.problem);
    if (!withinLimits(read.quantity, STAGE_LIMITS.sign))
      return reader.report(node, 'file.outside', { text, min: '0 °C', max: '150 °C' });
    return { by: sign[1] === 'core' ? 'core' : 'surface', temperature: read.quantity };
  },
  (end) => {
    if (end.by === 'core' || end.by === 'surface') return `${end.by} ${printCookQuantity(end.temperature)}`;
    if (end.by === 'loss') return `loss ${printCookQuantity(end.share)}`;
    return end.by === 'bite' ? end.bite : end.by;
  },
  { type: 'string', pattern: `^(?:${[...BITES, 'bark', 'table'].join('|')}|(?:core|surface|loss) .+)$` },
);

/** Written in percent, 1 to 70. */
function lossEnd(text: string, share: string, node: Node, reader: Reader): StageEnd | undefined {
  const read = readCookQuantity(share, 'fraction');
  if (!read.ok) return reader.take(node, read.problem);
  if (read.quantity.writtenIn !== '%') return reader.report(node, 'file.not-percent', { text: share });
  return withinLimits(read.quantity, STAGE_LIMITS.loss)
    ? { by: 'loss', share: read.quantity }
    : reader.report(node, 'file.outside', { text, min: '1 %', max: '70 %' });
}

/** kg or m³: more than a kilogram on one item is a slip of the finger. */
const MOST_SPRAYED = { mass: 1, volume: 1e-3 } as const;
const spritz: Form<Spritz> = record<Spritz>(
  {
    amount: required('amount', amount),
    every: required('every', measure('time', STAGE_LIMITS.every)),
  },
  {
    check: ({ amount: sprayed }, locate, reader) => {
      if (sprayed && !(sprayed.si <= MOST_SPRAYED[sprayed.kind]))
        reader.report(locate('amount'), 'file.outside', {
          text: printCookQuantity(sprayed),
          min: '0 g',
          max: '1 kg',
        });
    },
  },
);

const direct: Form<DirectHeat> = record<DirectHeat>({
  side: required('side', word(FIRE_SIDES)),
  distance: required('distance', measure('length', STAGE_LIMITS.distance)),
  across: optional('across', measure('length', STAGE_LIMITS.across)),
  coals: optional('coals', word(COALS)),
  between: optional('between', word(FIRE_SHIELDS)),
  turn: optional('turn', measure('time', STAGE_LIMITS.turn)),
});

type Place = NonNullable<Stage['in']>;
const WARM_PLACES: readonly Place[] = ['pit', 'oven', 'box', 'warmer', 'tray'];
const COLD_PLACES: readonly Place[] = ['fridge', 'ice-bath'];

const WRAPPED: readonly StageKind[] = ['foil', 'paper'];

/** Keys that only some kinds of stage have. */
function checkStage(stage: Partial<WrittenStage>, locate: (key: string) => Node, reader: Reader): void {
  const { kind } = stage;
  if (kind === undefined) return;
  const isResting = isWaiting(kind);
  const refuse = (key: string): void => {
    reader.report(locate(key), 'file.stage-key', { key, stage: kind });
  };
  const wraps: readonly Wrap[] = kind === 'foil' ? FOIL_WRAPS : kind === 'paper' ? PAPER_WRAPS : [];
  if (stage.wrap && wraps.length === 0) refuse('wrap');
  else if (stage.wrap && !wraps.includes(stage.wrap))
    reader.report(locate('wrap'), 'file.unknown-word', { text: stage.wrap, words: wraps.join(', ') });
  if (stage.spritz && (isResting || WRAPPED.includes(kind))) refuse('spritz');
  if (stage.liquid && !WRAPPED.includes(kind)) refuse('liquid');
  if (stage.direct && isResting) refuse('direct');
  else if (stage.direct && stage.in === 'oven') reader.report(locate('in'), 'file.coals-in-pit');
  if (stage.at && !isResting) refuse('at');
  if (stage.pit && isResting) refuse('pit');
  const places = kind === 'chill' ? COLD_PLACES : WARM_PLACES;
  if (stage.in && !places.includes(stage.in))
    reader.report(locate('in'), 'file.unknown-word', { text: stage.in, words: places.join(', ') });
  if (kind === 'chill' && stage.at && !withinLimits(stage.at, STAGE_LIMITS.chillAt))
    reader.report(locate('at'), 'file.outside', {
      text: printCookQuantity(stage.at),
      min: '-30 °C',
      max: '10 °C',
    });
  if (stage.until?.by === 'table' && !isResting)
    reader.report(locate('until'), 'file.until-table', { stage: kind });
}

const writtenStage = record<WrittenStage>(
  {
    kind: required('stage', word(STAGE_KINDS)),
    for: optional('for', measure('time', STAGE_LIMITS.for)),
    until: optional('until', until),
    in: optional('in', word([...WARM_PLACES, ...COLD_PLACES])),
    at: optional('at', measure('temperature', STAGE_LIMITS.at)),
    pit: optional('pit', measure('temperature', STAGE_LIMITS.pit)),
    liquid: optional('liquid', measure('volume', STAGE_LIMITS.liquid)),
    wrap: optional('wrap', word([...FOIL_WRAPS, ...PAPER_WRAPS])),
    spritz: optional('spritz', spritz),
    direct: optional('direct', direct),
    note: optional('note', note),
  },
  { check: checkStage },
);

const stage: Form<Stage> = mapped(
  writtenStage,
  ({ for: after, until: sign, ...rest }, node, reader) => {
    const [hasFor, hasUntil] = isMap(node) ? [node.has('for'), node.has('until')] : [false, false];
    if (hasFor && hasUntil) return reader.report(node, 'file.for-and-until');
    if (!hasFor && !hasUntil) return reader.report(node, 'file.no-end', { stage: rest.kind ?? '' });
    const end: StageEnd | undefined = after ? { by: 'clock', after } : sign;
    return end && { ...rest, until: end };
  },
  ({ until: end, ...rest }) => (end.by === 'clock' ? { ...rest, for: end.after } : { ...rest, until: end }),
);

/** The stages of a piece; one that lasts until the table can only be the last. */
export const stages: Form<readonly Stage[]> = mapped(
  list(stage),
  (all, node, reader) => {
    const early = all.slice(0, -1).findIndex(({ kind, until: end }) => end.by === 'table' && isWaiting(kind));
    if (early >= 0) reader.report(node, 'file.table-not-last', { number: early + 1 });
    return all;
  },
  (all) => all,
);
