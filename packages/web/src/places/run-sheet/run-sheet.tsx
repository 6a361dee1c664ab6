import type { Cook } from '@pitwright/model';
import { useState } from 'react';
import { HowFar } from '../../foresee/how-far.tsx';
import type { Foresight } from '../../foresee/messages.ts';
import { Answer } from '../../parts/answer.tsx';
import { Key } from '../../parts/key.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords } from '../../words.tsx';
import { CookStrip } from '../cook/cook-strip.tsx';
import { ofCook, useCookWriter } from '../of-cook.tsx';
import { saveCalendar } from './calendar.ts';
import { JobList } from './job-list.tsx';
import { JobPanel, Moved } from './job-panel.tsx';
import { isByHand, jobsOf, wakingsOf } from './jobs.ts';
import { LanesStrip } from './lanes-strip.tsx';
import { useMoving } from './use-moving.ts';
import { useRunSheet } from './use-run-sheet.ts';
import { Clashes, FreeHours, Ways } from './ways.tsx';
import './run-sheet.css';

export default ofCook(RunSheet);

/** When do I work, when do I sleep: all jobs of the days, laid out backwards from the table. */
function RunSheet(props: { cook: Cook }) {
  const { text, print } = useWords();
  const { cook } = props;
  const { subject, keep } = useCookWriter(cook);
  const { foresight, isSettled, isFull, fault } = useRunSheet(cook);
  const [openId, setOpenId] = useState<string>();
  const moving = useMoving(cook, isSettled, keep);
  const plan = foresight?.plan;
  const open = plan && jobsOf(plan).find(({ task }) => task.id === openId);
  return (
    <>
      <CookStrip cook={cook} />
      <main id="page" className="run-sheet">
        {foresight && plan ? (
          <>
            <RunAnswer foresight={foresight} isSettled={isSettled} isFull={isFull} />
            <LanesStrip cook={cook} plan={plan} openId={openId} onOpen={setOpenId} moving={moving} />
            <div className="keys run-keys">
              <UndoKeys subject={subject} />
              <a className="key" href={`/print.html?cook=${encodeURIComponent(cook.id)}`}>
                {text('web.run.print')}
              </a>
              <Key disabled={!isFull || !isSettled} onClick={() => saveCalendar(foresight, print)}>
                {text('web.run.calendar')}
              </Key>
            </div>
            <section className="run-parts">
              <div className="on-wide">
                {open ? (
                  <JobPanel cook={cook} job={open} moving={moving} onKeep={keep} />
                ) : (
                  <p className="quiet">{text('web.run.choose')}</p>
                )}
              </div>
              <Ways cook={cook} plan={plan} onKeep={keep} />
              <div>
                <Moved cook={cook} plan={plan} />
                <FreeHours cook={cook} plan={plan} />
              </div>
            </section>
            <Clashes plan={plan} />
            <JobList
              cook={cook}
              report={foresight}
              openId={openId}
              onOpen={setOpenId}
              moving={moving}
              onKeep={keep}
            />
          </>
        ) : (
          <Answer>{text(fault ? 'web.cook.no-forecast' : 'web.run.first-look')}</Answer>
        )}
      </main>
    </>
  );
}

/** Jobs, hours of work, wakings, chance. */
function RunAnswer(props: { foresight: Foresight; isSettled: boolean; isFull: boolean }) {
  const { text, rich, print } = useWords();
  const { foresight, isSettled, isFull } = props;
  const { plan, members } = foresight;
  const jobs = jobsOf(plan).filter(isByHand);
  const wakings = wakingsOf(plan);
  const watch = plan.fireWatch;
  return (
    <Answer
      live
      aside={
        <>
          {print.date(plan.table.at)}
          <span className="how-far">
            <HowFar foresight={foresight} isFull={isFull && isSettled} />
          </span>
        </>
      }
    >
      {rich('web.run.answer', { jobs: jobs.length, work: print.durationS(plan.handWorkS) })}{' '}
      {wakings.length === 0
        ? text('web.run.no-waking')
        : wakings.length === 1
          ? rich('web.run.waking', { hour: print.clock(wakings[0]!) })
          : rich('web.run.wakings', { wakings: wakings.length, hour: print.clock(wakings[0]!) })}{' '}
      {watch && watch.asleepS > 0
        ? rich('web.run.watch', {
            reach: print.durationS(watch.reachS),
            asleep: print.durationS(watch.asleepS),
          })
        : null}{' '}
      {rich('web.run.chance', { chance: print.chance(plan.chanceAllOnTime, members) })}
    </Answer>
  );
}
