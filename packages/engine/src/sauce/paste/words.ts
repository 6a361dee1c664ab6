/** Takes one line of a recipe apart: amounts, size of a vessel, what is named, and remarks. */
import { type Amount, plainText, readAmount } from './amount.ts';
import { type MeasureSystem, readUnit, type Unit } from './units.ts';

export interface Part {
  readonly amount: Amount;
  readonly unit?: Unit;
  readonly isLetter: boolean;
}

export interface LineWords {
  /** Amounts that add up: `1 cup plus 2 tbsp`. */
  readonly parts: readonly Part[];
  /** The same amount in another unit: `(240 g)`, `250 g / 9 oz`. */
  readonly also: readonly Part[];
  /** Contents of the can or bottle. */
  readonly size?: Part;
  /** Heaped, scant, packed, small …: plain words beside the unit. */
  readonly manner: readonly string[];
  readonly phrase: string;
  readonly note: string;
  /** A number that nothing accounts for. */
  readonly strayNumber?: string;
  readonly isMinus: boolean;
  readonly isToTaste: boolean;
  readonly hasMore: boolean;
}

const BULLET = /^(?:[*•·▢□☐✓▪◦]+\s*|-+\s+)/;
const NUMBERING = /^\d{1,2}[.)]\s+(?=[\d.¼½¾⅓⅔⅛]|an?\s)/i;
const APPROXIMATE = /^(?:about|approx(?:imately)?\.?|roughly|around|circa|ca\.|~)\s*/i;
const MANNER =
  /^(?:firmly|lightly|loosely|tightly|packed|loose|level|heaped|heaping|rounded|scant|generous|good|large|medium|small|big|scooped)\b,?\s*/i;
/** Sizes of pieces, strengths and temperatures are no amounts. */
const HARMLESS =
  /\d+(?:[./]\d+)?\s*-?\s*(?:inch(?:es)?\b|in\b\.?|cm\b|mm\b|"|%|°\s?[cf]?|proof\b|degrees?\b|min(?:ute)?s?\b)/gi;

/** Amount and unit at the start of the text, with what they leave. */
function readPart(
  text: string,
  system: MeasureSystem,
): { part: Part; rest: string; manner: string[] } | undefined {
  const amount = readAmount(text.replace(APPROXIMATE, ''));
  if (amount === undefined) return undefined;
  const manner: string[] = [];
  let rest = amount.rest;
  for (let found = MANNER.exec(rest); found !== null; found = MANNER.exec(rest)) {
    manner.push(found[0].trim().replace(',', '').toLowerCase());
    rest = rest.slice(found[0].length);
  }
  const unit = readUnit(rest.replace(/^-\s*/, ''), system);
  return {
    part: { amount, ...(unit && { unit: unit.unit }), isLetter: unit?.isLetter ?? false },
    rest: unit?.rest ?? rest,
    manner,
  };
}

const isMeasured = (part: Part | undefined): boolean =>
  part?.unit !== undefined && ['mass', 'volume', 'ounce'].includes(part.unit.kind);

/** `1 12-oz can`, `1 x 400 g tin`, `14 oz bottle`: how many, and how much is in one. */
function readVessel(text: string, system: MeasureSystem) {
  const first = readPart(text, system);
  if (first === undefined) return undefined;
  const one = { low: 1, high: 1, rest: '' };
  if (isMeasured(first.part)) {
    const vessel = readUnit(first.rest, system);
    if (vessel?.unit.kind !== 'vessel') return undefined;
    return {
      count: { amount: one, unit: vessel.unit, isLetter: false },
      size: first.part,
      rest: vessel.rest,
    };
  }
  if (first.part.unit !== undefined) return undefined;
  const second = readPart(first.rest.replace(/^[x×]\s*/i, '').replace(/^of\s+/i, ''), system);
  if (second === undefined || !isMeasured(second.part)) return undefined;
  const vessel = readUnit(second.rest.replace(/^-\s*/, ''), system);
  if (vessel?.unit.kind === 'vessel')
    return {
      count: { amount: first.part.amount, unit: vessel.unit, isLetter: false },
      size: second.part,
      rest: vessel.rest,
    };
  return undefined;
}

/** `2 x 400 g`, without a vessel. */
const TIMES = /^(\d+)\s*[x×]\s*(?=\d)/i;

function amountsAt(text: string, system: MeasureSystem) {
  const vessel = readVessel(text, system);
  if (vessel !== undefined)
    return {
      parts: [vessel.count],
      also: [] as Part[],
      size: vessel.size,
      manner: [] as string[],
      rest: vessel.rest,
    };
  const times = TIMES.exec(text);
  const first = readPart(times ? text.slice(times[0].length) : text, system);
  if (first === undefined) return undefined;
  const count = times ? Number(times[1]) : 1;
  const scaled: Part =
    count === 1
      ? first.part
      : {
          ...first.part,
          amount: {
            ...first.part.amount,
            low: first.part.amount.low * count,
            high: first.part.amount.high * count,
          },
        };
  const parts: Part[] = [scaled];
  const also: Part[] = [];
  const manner = [...first.manner];
  let rest = first.rest;
  for (;;) {
    const link = /^(?:(plus|and|\+|&)|(\/|or|=))\s*/i.exec(rest);
    const next = link && readPart(rest.slice(link[0].length), system);
    if (!link || !next || !isMeasured(next.part)) break;
    (link[1] !== undefined ? parts : also).push(next.part);
    rest = next.rest;
  }
  for (let found = MANNER.exec(rest); found !== null; found = MANNER.exec(rest)) {
    manner.push(found[0].trim().replace(',', '').toLowerCase());
    rest = rest.slice(found[0].length);
  }
  return { parts, also, size: undefined, manner, rest };
}

/** Name first, amount behind: `Ketchup: 480 g`, `molasses - 1/3 cup`. */
function amountBehind(text: string, system: MeasureSystem) {
  for (const place of text.matchAll(/[\s:,;=-]+(?=[\d.])/g)) {
    const found = amountsAt(text.slice(place.index + place[0].length), system);
    if (found !== undefined && (found.parts[0]!.unit !== undefined || found.rest === ''))
      return { ...found, rest: text.slice(0, place.index), tail: found.rest };
  }
  return undefined;
}

export function lineWords(raw: string, system: MeasureSystem): LineWords {
  let text = plainText(raw).replace(BULLET, '').replace(NUMBERING, '');
  const isMinus = /^-\s*[\d.]/.test(text);
  text = text.replace(/^-\s*/, '');
  const aside: string[] = [];
  text = text
    .replace(/[([]([^()[\]]*)[)\]]/g, (_, inside: string) => {
      aside.push(inside.trim());
      return ' ';
    })
    .replace(/\s+/g, ' ')
    .trim();
  const isToTaste = /\bto taste\b|\bas (?:needed|desired)\b/i.test(raw);
  const hasMore = /\b(?:plus|and|or) (?:a (?:little|bit) )?more\b|\bplus extra\b|\bdivided\b/i.test(raw);
  const ofFruit =
    /^(?:the\s+)?(?:(?:fresh(?:ly)?|grated|squeezed)\s+)*(juice|zest|rind|peel)\s+(?:of|from)\s+/i.exec(text);
  const body = ofFruit ? text.slice(ofFruit[0].length) : text;
  const front = amountsAt(body, system);
  const behind = front === undefined ? amountBehind(body, system) : undefined;
  const found = front ?? behind;
  const tail = behind?.tail ?? '';
  const words = (found?.rest ?? body).replace(/^of\s+/i, '');
  const [beforeComma, ...afterComma] = words.split(/[,;]|\s-\s/);
  const phrase = `${beforeComma!.trim()}${ofFruit ? ` ${ofFruit[1]!.toLowerCase()}` : ''}`.trim();
  const also: Part[] = [...(found?.also ?? [])];
  let size = found?.size;
  const notes: string[] = [];
  const isVessel = found?.parts[0]?.unit?.kind === 'vessel';
  for (const inside of aside) {
    const part = readPart(inside.replace(/^(?:or|=)\s*/i, ''), system);
    if (
      part !== undefined &&
      isMeasured(part.part) &&
      !/[a-z\d]/i.test(part.rest.replace(/\b(?:net|each|total|wt|weight|approx|about|of|in)\b/gi, ''))
    ) {
      if (isVessel && size === undefined) size = part.part;
      else also.push(part.part);
    } else notes.push(inside);
  }
  const remarks = [...afterComma.map((part) => part.trim()), tail.trim(), ...notes].filter(
    (part) => part !== '',
  );
  const note = remarks.join(', ');
  const stray = /\d[\d.,/]*/.exec(`${phrase} ${note}`.replace(HARMLESS, ' '));
  return {
    parts: found?.parts ?? [],
    also,
    ...(size && { size }),
    manner: found?.manner ?? [],
    phrase,
    note,
    ...(stray && { strayNumber: stray[0] }),
    isMinus,
    isToTaste,
    hasMore,
  };
}
