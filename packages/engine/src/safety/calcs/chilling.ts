import { quantityInput, wordInput } from '../../calc/describe.ts';
import { maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { catalogueOfCuts, findCut } from '../../meat/cuts.ts';
import { CHILLERS, type Chiller, chilling, spreadInPan, wholePiece } from '../chilling.ts';

const pieceChilling: CalcSpec = {
  name: 'piece-chilling',
  room: 'safety',
  summary:
    'a cooked piece in the fridge or in ice: how long its middle takes, and the rule of two hours and six',
  inputs: [
    wordInput(
      'cut',
      catalogueOfCuts().map((cut) => cut.id),
    ),
    quantityInput('mass', 'mass', { range: [0.05, 20, 'kg'], optional: true, remark: 'of the raw piece' }),
    quantityInput('thickness', 'length', {
      range: [5, 300, 'mm'],
      optional: true,
      remark: 'thickest place, raw',
    }),
    quantityInput('spread', 'length', {
      range: [5, 150, 'mm'],
      optional: true,
      remark: 'pulled or sliced: depth of the layer in a flat pan, in place of the piece',
    }),
    wordInput('in', CHILLERS, { byDefault: 'fridge' }),
    quantityInput('start-temperature', 'temperature', { range: [58, 100, '°C'], byDefault: [60, '°C'] }),
  ],
  outputs: [
    { name: 'verdict', unit: 'word', kind: 'word' },
    { name: 'time-57-to-21', unit: 'h', kind: 'time' },
    { name: 'time-57-to-5', unit: 'h', kind: 'time' },
  ],
  source: 'FDA Food Code 3-501.14(A); Carslaw & Jaeger 1959',
  page: 'safety.md',
  evaluate(inputs) {
    const spreadM = maybeNumber(inputs, 'spread');
    const chilled =
      spreadM === undefined
        ? wholePiece(
            findCut(textOf(inputs, 'cut'))!,
            maybeNumber(inputs, 'mass'),
            maybeNumber(inputs, 'thickness'),
          )
        : spreadInPan(spreadM);
    const startC = numberOf(inputs, 'start-temperature');
    const { verdict, firstStageS, bothStagesS } = chilling(chilled, textOf(inputs, 'in') as Chiller, startC);
    return { verdict, 'time-57-to-21': firstStageS, 'time-57-to-5': bothStagesS };
  },
};

export const chillingCalcs: readonly CalcSpec[] = [pieceChilling];
