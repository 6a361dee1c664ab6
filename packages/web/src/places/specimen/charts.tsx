import { bandAxis, bandChart, depthTimeMap, heatLedger, hundredStrokes, rangesChart } from '@pitwright/draw';
import { useId } from 'react';
import { Drawn } from '../../parts/drawn.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { useWords } from '../../words.tsx';
import { BANDS, INSIDE, LEDGER } from './invented.ts';

/** Every mark in the light this stands in, drawn from invented figures. */
export function Charts() {
  const { text } = useWords();
  const voice = useVoice();
  const [ref, width] = useWidth<HTMLDivElement>();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const setting = { width, id };
  const draw = () => {
    const axis = bandAxis(BANDS, setting);
    const rows = BANDS.pieces.map((piece) => ({ name: piece.name, range: piece.ready }));
    return (
      <>
        <Drawn drawing={bandChart(BANDS, setting, voice)} />
        <Drawn drawing={depthTimeMap(INSIDE, { width, id: `${id}m` }, voice, { axis, nowS: BANDS.nowS! })} />
        <Drawn drawing={heatLedger(LEDGER, { width, id: `${id}l` }, voice, { axis })} />
        <Drawn drawing={rangesChart(rows, BANDS, { width, id: `${id}r` }, voice)} />
        <Drawn drawing={hundredStrokes(0.06, text('web.specimen.strokes'), { width, id: `${id}h` }, voice)} />
      </>
    );
  };
  return (
    <div ref={ref} className="wide">
      <h3>{text('web.specimen.marks')}</h3>
      {width > 0 ? draw() : null}
    </div>
  );
}
