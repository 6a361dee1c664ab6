import { setFlagsFromString } from 'node:v8';
import { highsSolver, type SolveLp } from '@pitwright/engine';

/**
 * The solver, loaded when it is needed. A plan is one short solve: V8's second, optimizing compiler of WebAssembly
 * takes two seconds to save half of one, so that it is left out. It changes no figure: both compilers keep the
 * arithmetic of the WebAssembly specification to the bit.
 */
export async function loadSolver(): Promise<SolveLp> {
  setFlagsFromString('--liftoff-only');
  const { default: loadHighs } = await import('highs');
  return highsSolver(await loadHighs());
}
