import { messages } from './message.ts';

/** How a cook writes a quantity of this kind, for a sentence that says what would be right. */
const EXAMPLES: Readonly<Record<string, string>> = {
  temperature: '121 °C or 250 °F',
  difference: '15 K or 27 °F',
  mass: '1.2 kg or 2 lb 10 oz',
  length: '25 mm or 1 in',
  area: '0.6 m² or 900 in²',
  volume: '250 mL or 1 cup',
  time: '75 min or 1 h 15 min',
  speed: '18 km/h or 11 mph',
  power: '2.2 kW',
  pressure: '101.325 kPa',
  fraction: '90 %',
  number: '2',
};
const KIND_NAMES: Readonly<Record<string, string>> = { number: 'pure number', log: 'pure number' };

const example = (kind?: string): string => {
  const known = kind === undefined ? undefined : EXAMPLES[kind];
  return known === undefined ? 'a number and its unit' : `it like ${known}`;
};
const kindName = (kind: string): string => KIND_NAMES[kind] ?? kind.replaceAll('-', ' ');
/** The key a problem belongs to, before the sentence; problems of plain text have none. */
const at = (p: { key?: string }): string => (p.key === undefined ? '' : `${p.key}: `);
const meant = (near?: string): string => (near === undefined ? '' : ` Did you mean “${near}”?`);

interface OfText {
  readonly key?: string;
  readonly text: string;
  readonly kind?: string;
}

/** What is wrong with a quantity that was typed. */
const quantityMessages = {
  'quantity.empty': (p: { key?: string; kind: string }) =>
    `${at(p)}nothing is written here; write ${example(p.kind)}.`,
  'quantity.not-a-number': (p: OfText) =>
    `${at(p)}“${p.text}” is no number with a unit; write ${example(p.kind)}.`,
  'quantity.unit-missing': (p: { key?: string; kind: string; value: number; units: string }) =>
    `${at(p)}${p.value} of what? A ${kindName(p.kind)} needs its unit: ${p.units}.`,
  'quantity.unit-unknown': (p: { key?: string; kind: string; unit: string; units: string }) =>
    `${at(p)}“${p.unit}” is no unit of ${kindName(p.kind)}; write one of ${p.units}.`,
  'quantity.unit-of-other-kind': (p: {
    key?: string;
    kind: string;
    unit: string;
    other: string;
    units: string;
  }) => `${at(p)}“${p.unit}” measures ${kindName(p.other)}, and this is a ${kindName(p.kind)}: ${p.units}.`,
  'quantity.not-finite': (p: { key?: string; kind: string }) =>
    `${at(p)}the number is too large to reckon with; write ${example(p.kind)}.`,
  'quantity.negative': (p: { key?: string; kind: string; value: number; unit: string }) =>
    `${at(p)}${p.value} ${p.unit} is below nothing; a ${kindName(p.kind)} is never negative.`,
  'quantity.below-absolute-zero': (p: { key?: string; value: number; unit: string }) =>
    `${at(p)}${p.value} ${p.unit} is below absolute zero, −273.15 °C or −459.67 °F.`,
  'quantity.thousands': (p: OfText) =>
    `${at(p)}“${p.text}” can be read two ways; write ${p.text.replace(',', '')} or ${p.text.replace(',', '.')}.`,
  'quantity.fraction': (p: OfText) =>
    `${at(p)}“${p.text}” is no fraction of a spoon, a cup or a ruler; write halves, thirds, quarters, eighths, or a decimal.`,
  'quantity.digits': (p: OfText) =>
    `${at(p)}“${p.text}” has more digits than anybody measures; nine are enough.`,
  'quantity.compound': (p: OfText) =>
    `${at(p)}“${p.text}” puts units together that do not belong so; write 2 lb 10 oz, 5 ft 3 in or 1 h 30 min, or one unit alone.`,
  'quantity.compound-part': (p: { key?: string; text: string; part: string }) =>
    `${at(p)}in “${p.text}” the part “${p.part}” does not fit: whole parts first, each smaller than one of the unit before.`,
  'quantity.range': (p: OfText) =>
    `${at(p)}“${p.text}” is a range; write its middle and its doubt, as in 255 °F ± 5 °F.`,
  'quantity.doubt': (p: OfText) =>
    `${at(p)}the doubt in “${p.text}” is not clear; write it once, in the unit of the value: 15 K ± 5 K, 121 °C ± 8 K, 250 °F ± 15 °F.`,
  'quantity.ounce': (p: { key?: string; number: string }) =>
    `${at(p)}${p.number} oz by weight or by volume? Write “${p.number} oz weight” or “${p.number} fl oz”.`,
  'quantity.ounce-of-volume': (p: { key?: string; number: string }) =>
    `${at(p)}a volume is due here and oz is a weight; write “${p.number} fl oz”.`,
  'quantity.amount-unit': (p: OfText) =>
    `${at(p)}“${p.text}” is neither a mass nor a volume; write it like 240 g, 8 oz weight, 250 mL or 2 1/2 cups.`,
};

/** Where YAML itself is broken, by what its parser met. */
const SYNTAX: Readonly<Record<string, string>> = {
  BAD_INDENT:
    'this line is set in by another width than its neighbours; keys of one part begin in one column',
  TAB_AS_INDENT: 'a tab sets this line in; use blanks, two for each step',
  MISSING_CHAR:
    'something is not closed or not parted here: a quote, a bracket, a comma, or the blank after a colon',
  MULTILINE_IMPLICIT_KEY: 'this line has no colon of its own; write “key: value”',
  BLOCK_AS_IMPLICIT_KEY:
    'a value runs on into another “key: value”; mend the indent of the line below, or put a value with a colon in it into quotes',
  BAD_SCALAR_START: 'a value cannot begin with this sign; put it into quotes',
  BAD_DQ_ESCAPE: 'a backslash in double quotes begins a sign that YAML does not know; use single quotes',
  UNEXPECTED_TOKEN:
    'this does not belong here; look for a stray sign, or a line that lost its hyphen or its colon',
  KEY_OVER_1024_CHARS: 'this key is far too long; a quote or a colon is probably missing',
  BLOCK_IN_FLOW: 'a list or a map in lines cannot stand inside brackets; write it in lines throughout',
};

/** What is wrong with a cook file, and what would be right. */
const cookFileMessages = {
  'file.too-large': (p: { characters: number; most: number }) =>
    `The file has ${p.characters} characters, more than any cook needs (${p.most}); is it another file?`,
  'file.too-deep': () =>
    'The file is nested deeper than any cook; write lists and parts in lines, set in by two blanks.',
  'file.empty': () => 'The file is empty; begin with “kind: cook” and “version: 1”.',
  'file.many-documents': () => 'A second document begins here; a file holds one cook, one recipe or one pit.',
  'file.yaml': (p: { code: string }) => `${SYNTAX[p.code] ?? 'this is not valid YAML'}.`,
  'file.anchor': (p: { text: string }) =>
    `“${p.text}” names a part to be repeated; write the part out where it is used.`,
  'file.alias': (p: { text: string }) =>
    `“${p.text}” stands for a part written elsewhere; write it out here.`,
  'file.tag': (p: { text: string }) => `“${p.text}” tells YAML a type; leave it out, each key knows its own.`,
  'file.directive': (p: { text: string }) => `“${p.text}” instructs the YAML parser; leave it out.`,
  'file.merge-key': () => '“<<” merges another part into this one; write the keys out.',
  'file.key-not-text': () => 'A key is missing or is no word; write “key: value”.',
  'file.duplicate-key': (p: { key: string }) => `“${p.key}” stands twice in this part; keep one.`,
  'file.unknown-key': (p: { key: string; nearest?: string; known: string }) =>
    `“${p.key}” is not known here.${p.nearest === undefined ? ` Known: ${p.known}.` : meant(p.nearest)}`,
  'file.missing-key': (p: { key: string }) => `“${p.key}” is missing in this part.`,
  'file.no-value': (p: { key: string }) => `“${p.key}” has no value; give one or leave the line out.`,
  'file.no-item': () => 'This item of the list is empty; fill it or take the hyphen away.',
  'file.version': (p: { text: string }) =>
    `version: “${p.text}” is no form this program reads; it reads 1. A newer file wants a newer program.`,
  'file.no-kind': () => '“kind” is missing; write “kind: cook”, “kind: recipe” or “kind: pit”.',
  'file.not-a-cook': () =>
    'This is no cook file; it begins with “kind: cook” and “version: 1”, each on its own line.',
  'file.not-a-map': (p: { key?: string; keys: string }) => `${at(p)}keys and values are due here: ${p.keys}.`,
  'file.not-a-list': (p: { key?: string }) =>
    `${at(p)}a list is due here, each item on its own line after “- ”.`,
  'file.not-a-value': (p: { key?: string }) => `${at(p)}one value is due here, not a list or a part.`,
  'file.list-too-short': (p: { key?: string; min: number }) => `${at(p)}at least ${p.min} is needed here.`,
  'file.text-empty': (p: { key?: string }) =>
    `${at(p)}the text is blank; write something or leave the line out.`,
  'file.text-long': (p: { key?: string; maxLength: number }) =>
    `${at(p)}the text is too long; ${p.maxLength} characters are the most.`,
  'file.text-control': (p: { key?: string }) =>
    `${at(p)}the text holds signs that cannot be printed; type it anew.`,
  'file.name-form': (p: { key?: string; text: string }) =>
    `${at(p)}write it on one line, without blanks at the ends.`,
  'file.id-form': (p: OfText) => `${at(p)}“${p.text}” is no id; use small letters, digits and hyphens.`,
  'file.letter-form': (p: OfText) =>
    `${at(p)}“${p.text}” is no letter of a piece; use A to Z, then AA, AB and so on.`,
  'file.ingredient-form': (p: OfText) =>
    `${at(p)}“${p.text}” is no key of the catalogue; these are small letters, digits and _, as in vinegar_cider_5.`,
  'file.clock-form': (p: OfText) => `${at(p)}“${p.text}” is no clock time; write it like 06:30 or 23:30.`,
  'file.unknown-word': (p: { key?: string; text: string; nearest?: string; words: string }) =>
    `${at(p)}“${p.text}” is not known.${p.nearest === undefined ? ` Write one of ${p.words}.` : meant(p.nearest)}`,
  'file.not-yes-no': (p: OfText) => `${at(p)}“${p.text}” is neither yes nor no.`,
  'file.not-a-number': (p: OfText) => `${at(p)}“${p.text}” is no number.`,
  'file.not-whole': (p: OfText) => `${at(p)}“${p.text}” is no whole number.`,
  'file.not-percent': (p: OfText) => `${at(p)}“${p.text}” is no share in percent; write it like 90 %.`,
  'file.outside': (p: { key?: string; text: string; min: string | number; max: string | number }) =>
    `${at(p)}${p.text} is outside of what can be: ${p.min} to ${p.max}.`,
  'file.zone': (p: OfText) =>
    `${at(p)}“${p.text}” is no time zone; write its IANA name, as in Europe/Lisbon.`,
  'file.time-form': (p: OfText) =>
    `${at(p)}“${p.text}” is no date and time; write it like 2027-09-12 13:30, by 24 hours.`,
  'file.time-none': (p: OfText) =>
    `${at(p)}“${p.text}” is on no calendar or clock; check day, month, hour and minute.`,
  'file.time-twice': (p: { key?: string; text: string; first: string; second: string }) =>
    `${at(p)}the clock goes back that night and shows ${p.text} twice; write “${p.first}” or “${p.second}”.`,
  'file.time-skipped': (p: { key?: string; text: string; before: string; after: string }) =>
    `${at(p)}the clock goes forward that night and never shows ${p.text}; write ${p.before} or ${p.after}.`,
  'file.time-offset': (p: { key?: string; text: string; offset: string; offsets: string; zone: string }) =>
    `${at(p)}${p.zone} is not ${p.offset} at that time but ${p.offsets}; mend the offset or leave it out.`,
  'file.until': (p: { key?: string; text: string; words: string }) =>
    `${at(p)}“${p.text}” ends no stage; write one of ${p.words}, or “for: 75 min” instead.`,
  'file.until-table': (p: { stage: string }) =>
    `until: only a rest or a hold lasts until the table, not ${p.stage}.`,
  'file.for-and-until': () => 'This stage has both “for” and “until”; keep the one that ends it.',
  'file.no-end': (p: { stage: string }) =>
    `Nothing ends this stage${p.stage === '' ? '' : ` (${p.stage})`}; write “for: 75 min” or “until: bark”.`,
  'file.stage-key': (p: { key: string; stage: string }) =>
    `“${p.key}” means nothing in the stage ${p.stage}; take it out.`,
  'file.coals-in-pit': () => 'Coals are in the pit alone; take out “in: oven”, or “direct”.',
  'file.own-thickness': () =>
    'A cut of your own needs its thickness too; write “thickness: 60 mm”, at the thickest place.',
  'file.own-sides': (p: { length: string; width: string; thickness: string }) =>
    `Of a cut of your own the length is the longest side and the thickness the shortest; here they are ${p.length}, ${p.width} and ${p.thickness}.`,
  'file.own-mass': (p: { mass: string; block: string }) =>
    `${p.mass} does not go with these sides, whose block weighs about ${p.block}; measure again, or say the mass of one.`,
  'file.table-not-last': (p: { number: number }) =>
    `Stage ${p.number} lasts until the table, so nothing can follow it; end it earlier or make it the last.`,
  'file.letter-twice': (p: { text: string }) => `Two pieces have the letter ${p.text}; give each its own.`,
  'file.id-twice': (p: { text: string }) =>
    `The id “${p.text}” stands twice; give each its own (an id follows from the name where none is written).`,
  'file.name-twice': (p: { text: string }) =>
    `“${p.text}” stands twice here; give each its own name, or an id.`,
  'file.no-such-piece': (p: { key?: string; text: string; nearest?: string; known: string }) =>
    `${at(p)}there is no piece ${p.text}; the pieces are ${p.known}.`,
  'file.no-such-variant': (p: { text: string; known: string }) =>
    p.known === ''
      ? `variant: no variant is declared here, so “${p.text}” cannot be made; declare it under “variants”.`
      : `variant: there is no variant ${p.text}; the variants are ${p.known}.`,
  'file.variant-no-line': (p: { text: string; nearest?: string; known: string }) =>
    `line: no line of this formula is ${p.text}.${p.nearest === undefined ? ` Its lines are ${p.known}.` : meant(p.nearest)}`,
  'file.variant-line-twice': (p: { text: string }) =>
    `line: ${p.text} is changed twice in this variant; say both in one change, or which line with “which: 2”.`,
  'file.variant-nothing': () =>
    'This change says nothing; write what comes in its place (“ingredient”), how much (“amount”), “late”, or “out: yes”.',
  'file.variant-adds': () =>
    'A line that is added needs its “ingredient” and its “amount”; to change a line that is there, name it with “line”.',
  'file.variant-of-what': () =>
    'Which line? Name it by its ingredient, as in “line: cola”, to change it or to leave it out.',
  'file.variant-out-and-in': () =>
    'This line is left out and changed at once; keep “out: yes”, or what comes in its place.',
  'file.late-unsimmered': () =>
    'late: nothing simmers in this formula, so nothing goes in afterwards; take “late” out or write its “simmer”.',
  'file.all-late': () =>
    'late: every line goes in after the simmer, so the pot is empty; leave one at the start.',
  'file.after-circle': (p: { letter: string }) =>
    `${p.letter} waits for a piece that waits for ${p.letter}; take one “after” out.`,
  'file.on-after-table': (p: { letter: string }) =>
    `${p.letter} goes on after the table is served; write an earlier time.`,
  'file.window-seconds': () => 'window: write the serving window in whole minutes, as in 30 min.',
  'file.away-ends': () => 'This absence ends before it begins; swap the two times.',
  'file.no-guests': () => 'Nobody eats; write how many adults and children.',
  'file.notes-shared': (p: { count: number }) =>
    p.count === 1
      ? 'One note goes out as it stands; read it once more before you share.'
      : `${p.count} notes go out as they stand; read them once more before you share.`,
  'file.comments-lost': (p: { count: number; line: number }) =>
    p.count === 1
      ? `The comment in line ${p.line} is not kept; write it as “note:”.`
      : `${p.count} comments, the first in line ${p.line}, are not kept; write them as “note:”.`,
};

/** Of the cook file and of typed quantities. */
export const fileMessages = messages({ ...quantityMessages, ...cookFileMessages });
