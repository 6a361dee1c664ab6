import {
  findUnit,
  fromSi,
  type Kind,
  kindsOfUnit,
  parseQuantity,
  type Reading,
  UNITS,
} from '@pitwright/model';
import { textOf } from './given.ts';
import { refuse } from './problem.ts';
import type { CalcSpec } from './spec.ts';

const isOfOtherKind = (id: string): boolean => id.startsWith('quantity.unit-');

/** Pressure and stress, and the two diffusivities, share their units: the first kind that reads both is taken. */
const KINDS = Object.keys(UNITS) as Kind[];

export const convertCalc: CalcSpec = {
  name: 'convert',
  room: 'units',
  summary: 'a quantity in another unit of the same kind',
  inputs: [
    { type: 'text', name: 'quantity' },
    { type: 'text', name: 'to' },
  ],
  outputs: [{ name: 'value', unit: '1', kind: 'number', unitFrom: 'to' }],
  source: 'NIST SP 811, appendix B',
  page: 'calc.md',
  evaluate(inputs) {
    const text = textOf(inputs, 'quantity');
    const to = textOf(inputs, 'to');
    if (kindsOfUnit(to).length === 0) refuse('calc.unit-unknown', { input: 'to', unit: to, units: '' });
    let problem: Reading | undefined;
    for (const kind of KINDS) {
      if (!findUnit(kind, to)) continue;
      const reading = parseQuantity(text, kind);
      if (reading.ok) return { value: fromSi(kind, reading.quantity.si, to) };
      problem ??= reading;
      if (!isOfOtherKind(reading.problem.id)) break;
    }
    const said = problem && !problem.ok ? problem.problem : { id: 'quantity.empty', params: {} };
    return refuse(`calc.${said.id.slice(said.id.indexOf('.') + 1)}`, { ...said.params, input: 'quantity' });
  },
};
