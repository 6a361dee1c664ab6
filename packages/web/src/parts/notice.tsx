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
