import { highsSolver, type SolveLp } from '@pitwright/engine';
import loadHighs from 'highs';

/** HiGHS in Node, loaded once. */
export const loadSolver = async (): Promise<SolveLp> => highsSolver(await loadHighs());
