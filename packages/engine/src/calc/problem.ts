import type { Said } from '@pitwright/model';
import { CalcProblem } from './spec.ts';

/** Raises what cannot be computed. `input` is the name of the input that the sentence is about. */
export function refuse(id: string, params: Said['params'] & { readonly input: string }): never {
  throw new CalcProblem({ id, params });
}
