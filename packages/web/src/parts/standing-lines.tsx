import type { Notice } from '@pitwright/engine';
import { saidWords } from '../said.ts';
import { useWords } from '../words.tsx';
import { StandingLine } from './notice.tsx';

/** Standing cautions, a line each. */
export function StandingLines({ notices }: { notices: readonly Notice[] }) {
  const { print } = useWords();
  return notices.map((notice) => (
    <StandingLine
      key={`${notice.id}${JSON.stringify(notice.params)}`}
      level={notice.level}
      source={notice.source}
    >
      {saidWords(notice, print)}
    </StandingLine>
  ));
}
