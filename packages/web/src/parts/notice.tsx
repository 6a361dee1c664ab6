import type { NoticeLevel } from '@pitwright/model';
import type { ReactNode } from 'react';
import { useWords } from '../words.tsx';

/** A safety statement. Shape, word and colour each tell its level. */
export function Notice(props: { level: NoticeLevel; about?: string; children: ReactNode }) {
  const { text } = useWords();
  const word = text(`web.notice.${props.level}`);
  return (
    <div className={`notice ${props.level}`} role="note">
      <b>{props.about ? `${word}: ${props.about}` : word}</b>
      {props.children}
    </div>
  );
}

/** A caution that stands beside every plan, in a list: the block is kept for what has gone wrong. */
export function StandingLine(props: { level: NoticeLevel; source: string; children: ReactNode }) {
  const { text } = useWords();
  return (
    <li className={`standing-line ${props.level}`}>
      <span className="standing-mark" aria-hidden="true" />
      <span>
        <b>{text(`web.notice.${props.level}`)}.</b> {props.children}{' '}
        <span className="small quiet">{props.source}.</span>
      </span>
    </li>
  );
}
