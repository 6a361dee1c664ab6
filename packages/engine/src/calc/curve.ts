import { parseQuantity } from '@pitwright/model';
import { itemsIn, pairIn } from './given.ts';
import { refuse } from './problem.ts';
import type { Curve } from './spec.ts';

/** A time and the temperature behind it, also without a blank between: `0min 54.4°C`. */
const TIME_THEN_REST = /^([+\d.eE-]+\s*(?:min|s|h|d))(?![A-Za-z])\s*(.+)$/su;

/**
 * A curve written as `0 min 54.4 °C | 60 min 65.6 °C`: straight between points, times increasing, running from the
 * first point. @throws CalcProblem naming the input
 */
export function curveIn(input: string, text: string): Curve {
  const timesS: number[] = [];
  const temperaturesC: number[] = [];
  const items = itemsIn(input, text);
  if (items.length < 2) refuse('calc.curve-of-one', { input });
  let startS = 0;
  for (const item of items) {
    const parts = TIME_THEN_REST.exec(item);
    const isPlain =
      parts && parseQuantity(parts[1]!, 'time').ok && parseQuantity(parts[2]!, 'temperature').ok;
    const [s, c] = pairIn(input, isPlain ? `${parts[1]} ${parts[2]}` : item, 'time', 'temperature');
    if (timesS.length === 0) startS = s;
    else if (!(s - startS > timesS[timesS.length - 1]!))
      refuse('calc.times-not-increasing', { input, text: item });
    timesS.push(s - startS);
    temperaturesC.push(c);
  }
  return { timesS, temperaturesC };
}
