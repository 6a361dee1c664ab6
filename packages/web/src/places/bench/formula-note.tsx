import type { Formula } from '@pitwright/model';
import { useId } from 'react';
import { useDraft } from '../../parts/draft.ts';
import { useWords } from '../../words.tsx';
import { LONGEST_NOTE } from './answers.ts';

/** How it is made, in the person's own words; kept when the field is left, printed on the card. */
export function FormulaNote(props: { written: Formula; onKeep: (formula: Formula) => void }) {
  const { text } = useWords();
  const id = useId();
  const { note: before = '', ...rest } = props.written;
  const { draft, line } = useDraft(before, () => keep());
  const keep = () => {
    const note = draft.trim();
    if (note !== before) props.onKeep(note === '' ? rest : { ...rest, note });
  };
  return (
    <div className="field formula-note">
      <label htmlFor={id}>{text('bench.note')}</label>
      <textarea
        id={id}
        rows={Math.min(8, 2 + Math.floor(draft.length / 60))}
        maxLength={LONGEST_NOTE}
        {...line}
      />
    </div>
  );
}
