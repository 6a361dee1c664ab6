import { type BandChartData, bandChart } from '@pitwright/draw';
import { capital } from '@pitwright/words';
import { useId, useMemo } from 'react';
import { Link } from 'wouter';
import { HowFar } from '../../foresee/how-far.tsx';
import { Drawn } from '../../parts/drawn.tsx';
import { useVoice } from '../../parts/voice.ts';
import { useWidth } from '../../parts/width.ts';
import { ReaderProvider, useWords } from '../../words.tsx';
import { bandsOf } from '../cook/band-data.ts';
import type { Side } from './differences.ts';

/** Room right of the serving window, for what comes late [s]. */
const TAIL_S = 4500;

/** Before and after the table [s]. */
interface Reach {
  readonly beforeS: number;
  readonly afterS: number;
}

const dataOf = ({ cook, foresight, print }: Side): BandChartData | undefined =>
  foresight && bandsOf({ cook, plan: foresight.plan, print });

/** Both days, one under the other on one scale: nothing is folded, and the tables stand in one line. */
export function TwoStrips(props: { a: Side; b: Side }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const sides = [props.a, props.b].map((side) => ({ side, data: dataOf(side) }));
  const known = sides.flatMap(({ data }) => (data ? [data] : []));
  const reach: Reach = {
    beforeS: Math.max(0, ...known.map((data) => data.tableS - onFirst(data))),
    afterS: Math.max(0, ...known.map((data) => data.untilS - data.tableS)) + TAIL_S,
  };
  return (
    <div className="two-strips" ref={ref}>
      {sides.map(({ side, data }) => (
        <ReaderProvider key={side.cook.id} writing={side.print.settings} zone={side.cook.zone}>
          <OneStrip side={side} data={data} reach={reach} width={width} />
        </ReaderProvider>
      ))}
    </div>
  );
}

/** Half an hour before the first piece goes on. */
const LEAD_S = 1800;
const onFirst = (data: BandChartData): number =>
  Math.min(data.tableS - 3600, ...data.pieces.map((piece) => piece.onS)) - LEAD_S;

function OneStrip(props: { side: Side; data: BandChartData | undefined; reach: Reach; width: number }) {
  const { text, rich, print } = useWords();
  const voice = useVoice();
  const id = useId().replace(/[^a-z0-9]/gi, '');
  const { side, data, reach, width } = props;
  const { cook, foresight } = side;
  const drawing = useMemo(() => {
    if (!data || width <= 0) return undefined;
    const fromS = data.tableS - reach.beforeS;
    const toS = data.tableS + reach.afterS;
    return bandChart({ ...data, fromS, toS, quiet: [] }, { width, id }, voice);
  }, [data, reach.beforeS, reach.afterS, width, id, voice]);
  return (
    <section>
      <h2>
        <Link href={`/cook/${cook.id}`}>{side.name}</Link>
      </h2>
      {foresight ? (
        <p>
          <b>{capital(print.chance(foresight.plan.chanceAllOnTime, foresight.members))}</b>{' '}
          {rich('web.cook.answer', {
            count: cook.pieces.length,
            all: print.count(cook.pieces.length),
            hour: print.clock(cook.table.at),
          })}{' '}
          <span className="quiet">{print.date(cook.table.at)}</span>{' '}
          <HowFar foresight={foresight} isFull={foresight.isWhole} />
        </p>
      ) : (
        <p className="quiet">{text('web.cook.first-look')}</p>
      )}
      {drawing ? <Drawn drawing={drawing} /> : null}
    </section>
  );
}
