import { useWords } from '../words.tsx';
import type { Foresight } from './messages.ts';
import { FULL_MEMBERS } from './pursuit.ts';

/** How far a look has come; nothing once its plan is the one that every face prints. */
export function HowFar(props: { foresight: Foresight; isFull: boolean }) {
  const { text } = useWords();
  const { foresight, isFull } = props;
  const { members, isSettled } = foresight;
  // The line that it stands on stays, empty: nothing under it jumps.
  if (isFull) return isSettled ? null : <span className="unsettled small">{text('web.cook.unsettled')}</span>;
  return (
    <span className="tried small">
      {members < FULL_MEMBERS
        ? text('web.cook.tried', { members, of: FULL_MEMBERS })
        : text('web.cook.settling')}
    </span>
  );
}
