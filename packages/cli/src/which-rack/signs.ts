import { CURVES, EDGES, RACKS, type RackSigns } from '@pitwright/engine';
import { readCookQuantity, type Said } from '@pitwright/model';

/** As written on the command line. */
export interface WrittenSigns {
  readonly bones?: string;
  readonly boneLength?: string;
  readonly curve?: string;
  readonly edge?: string;
  readonly mass?: string;
  readonly length?: string;
  readonly label?: string;
}

const isOneOf = <W extends string>(words: readonly W[], written: string): written is W =>
  (words as readonly string[]).includes(written);

/** Sizes beyond these are a slip of the pen. */
const LIMITS = {
  mass: { kind: 'mass', low: 0.2, high: 6, words: '0.2 to 6 kg' },
  length: { kind: 'length', low: 0.1, high: 1, words: '100 to 1000 mm' },
  'bone-length': { kind: 'length', low: 0.03, high: 0.5, words: '30 to 500 mm' },
} as const;

/** The signs told, or what is wrong with them. */
export function readSigns(written: WrittenSigns): RackSigns | Said {
  const problems: Said[] = [];
  const word = <W extends string>(option: string, words: readonly W[], told?: string): W | undefined => {
    if (told === undefined || isOneOf(words, told)) return told as W | undefined;
    problems.push({ id: 'cuts.not-this', params: { option, written: told, words: words.join(', ') } });
    return undefined;
  };
  const size = (option: keyof typeof LIMITS, told?: string): number | undefined => {
    if (told === undefined) return undefined;
    const { kind, low, high, words } = LIMITS[option];
    const reading = readCookQuantity(told, kind);
    if (!reading.ok) problems.push(reading.problem);
    else if (reading.quantity.si >= low && reading.quantity.si <= high) return reading.quantity.si;
    else problems.push({ id: 'cuts.not-this', params: { option, written: told, words } });
    return undefined;
  };
  const bones = written.bones === undefined ? undefined : Number(written.bones);
  if (bones !== undefined && !(Number.isInteger(bones) && bones >= 3 && bones <= 16))
    problems.push({
      id: 'cuts.not-this',
      params: { option: 'bones', written: written.bones!, words: '3 to 16' },
    });
  const signs = {
    bones,
    boneLengthM: size('bone-length', written.boneLength),
    curve: word('curve', CURVES, written.curve),
    edge: word('edge', EDGES, written.edge),
    massKg: size('mass', written.mass),
    lengthM: size('length', written.length),
    label: word('label', RACKS, written.label),
  };
  return (
    problems[0] ??
    (Object.fromEntries(Object.entries(signs).filter(([, told]) => told !== undefined)) as RackSigns)
  );
}
