import { type Portions, standingNotices } from '@pitwright/engine';
import type { Cook, Quantity } from '@pitwright/model';
import { StandingLines } from '../../parts/standing-lines.tsx';
import { useWords } from '../../words.tsx';
import { aboutRange } from './about.ts';

const OUT = 'safety.two-hours';
const AT_TABLE: ReadonlySet<string> = new Set([
  OUT,
  'safety.leftovers',
  'safety.guests-at-risk',
  'safety.allergens-named',
  'safety.honey',
]);

/** What becomes of what is left over, by the clock, and the cautions that belong to the table. */
export function After(props: { cook: Cook; portions: Portions }) {
  const { text, rich, print } = useWords();
  const { cook, portions } = props;
  const notices = standingNotices(cook).filter((notice) => AT_TABLE.has(notice.id));
  const limit = notices.find((notice) => notice.id === OUT)?.params?.limit as Quantity | undefined;
  return (
    <section>
      <h2>{text('web.guests.after')}</h2>
      <p>
        {portions.leftOver.p90 > 0
          ? text('web.guests.after.mass', { range: aboutRange(portions.leftOver, print) })
          : null}{' '}
        {limit
          ? rich('web.guests.after.by', {
              hour: print.clock(new Date(Date.parse(cook.table.at) + limit.si * 1000).toISOString()),
            })
          : null}
      </p>
      <h3>{text('web.guests.cautions')}</h3>
      <ul>
        <StandingLines notices={notices} />
      </ul>
    </section>
  );
}
