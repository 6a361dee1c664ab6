import { PLAN_MEMBERS } from '@pitwright/engine';
import type { Said } from '@pitwright/model';

export interface PlanOptions {
  readonly path: string;
  readonly wantsJson: boolean;
  readonly units?: 'us' | 'metric';
  readonly sheetPath?: string;
  /** Where the calendar goes. */
  readonly calendarPath?: string;
  /** Letter or id of the piece whose why is asked. */
  readonly why?: string;
  readonly members: number;
  readonly seed: number;
}

const VALUED = ['--units', '--sheet', '--ics', '--why', '--members', '--seed'];

/** Reads `FILE` and the options of `plan`; what it does not know is said, never skipped. */
export function readOptions(words: readonly string[]): PlanOptions | Said {
  const values = new Map<string, string>();
  const paths: string[] = [];
  let wantsJson = false;
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    const [option, inline] = word.split(/=(.*)/s, 2) as [string, string?];
    if (word === '--json') wantsJson = true;
    else if (VALUED.includes(option)) {
      const value = inline ?? words[++i];
      if (value === undefined) return unknown(word);
      values.set(option, value);
    } else if (word.startsWith('--')) return unknown(word);
    else paths.push(word);
  }
  const units = values.get('--units');
  if (units !== undefined && units !== 'us' && units !== 'metric') return unknown(`--units ${units}`);
  const members = wholeNumber(values.get('--members'), PLAN_MEMBERS);
  const seed = wholeNumber(values.get('--seed'), 1);
  if (members === undefined || members < 1) return unknown(`--members ${values.get('--members')}`);
  if (seed === undefined) return unknown(`--seed ${values.get('--seed')}`);
  if (paths.length !== 1) return { id: 'plan.no-file', params: { path: paths[1] ?? 'Nothing' } };
  const sheetPath = values.get('--sheet');
  const calendarPath = values.get('--ics');
  const why = values.get('--why');
  return {
    path: paths[0]!,
    wantsJson,
    members,
    seed,
    ...(units && { units }),
    ...(sheetPath && { sheetPath }),
    ...(calendarPath && { calendarPath }),
    ...(why && { why }),
  };
}

const unknown = (option: string): Said => ({ id: 'plan.unknown-option', params: { option } });

function wholeNumber(written: string | undefined, byDefault: number): number | undefined {
  if (written === undefined) return byDefault;
  return /^\d{1,7}$/.test(written) ? Number(written) : undefined;
}
