import { StoreFault } from '@pitwright/store';
import { saidWords } from '../said.ts';
import { useWords } from '../words.tsx';
import { Notice } from './notice.tsx';

/** What was done last is not on the disk: told in every place, until something is kept again. */
export default function NotKept(props: { fault: unknown }) {
  const { text, print } = useWords();
  return (
    <div role="alert">
      <Notice level="caution" about={text('web.not-kept')}>
        {props.fault instanceof StoreFault ? saidWords(props.fault.said, print) : text('web.not-kept.more')}
      </Notice>
    </div>
  );
}
