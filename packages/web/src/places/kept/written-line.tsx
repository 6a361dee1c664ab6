import { useDraft } from '../../parts/draft.ts';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../words.tsx';

/** A name or a note, written where it is read; a name is never empty. */
export function WrittenLine(props: {
  label: string;
  value: string | undefined;
  isNeeded?: boolean;
  onKeep: (value: string | undefined) => void;
}) {
  const { text } = useWords();
  const { value = '', isNeeded = false } = props;
  const { draft, line, onEnter } = useDraft(value, () => keep());
  const written = draft.trim();
  const isMissing = isNeeded && written === '';
  const keep = () => {
    if (written === value || isMissing) return;
    props.onKeep(written === '' ? undefined : written);
  };
  return (
    <Field
      label={props.label}
      {...line}
      problem={isMissing ? text('web.shelf.name.problem') : undefined}
      onKeyDown={onEnter}
    />
  );
}
