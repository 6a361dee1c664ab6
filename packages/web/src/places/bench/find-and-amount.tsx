import type { Ingredient } from '@pitwright/engine/sauce';
import { type FormEvent, type ReactNode, useState } from 'react';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { type Amount, readAmount } from './edit.ts';
import { useKnown } from './own.tsx';

const MOST_FOUND = 12;

/** What it is, found by any word of its name, and how much. */
export function FindAndAmount(props: {
  labels: { readonly find: string; readonly what: string; readonly howMuch: string; readonly use: string };
  ingredient?: string | undefined;
  amount?: string;
  children?: ReactNode;
  onUse: (ingredient: Ingredient, amount: Amount) => void;
}) {
  const { text, print } = useWords();
  const { find, search } = useKnown();
  const { labels } = props;
  const [wanted, setWanted] = useState('');
  const [chosen, setChosen] = useState(props.ingredient ?? '');
  const [amount, setAmount] = useState(props.amount ?? '');
  const [problem, setProblem] = useState<string>();
  const found = search(wanted, MOST_FOUND);
  const known = chosen ? find(chosen) : undefined;
  // A word that finds one thing alone has chosen it.
  const taken = known ?? (found.length === 1 ? found[0] : undefined);
  const options = [...(known && !found.some((one) => one.id === known.id) ? [known] : []), ...found];
  const use = (event: FormEvent) => {
    event.preventDefault();
    const read = readAmount(amount);
    if (!read.ok) return setProblem(saidWords(read.problem, print));
    if (!taken) return setProblem(undefined);
    if (!(read.amount.si > 0)) return setProblem(saidWords({ id: 'sauce.paste-nothing' }, print));
    if (read.amount.kind === 'volume' && !(taken.densityGPerMl > 0))
      return setProblem(
        saidWords({ id: 'sauce.density-missing', params: { name: taken.name, amount: read.amount } }, print),
      );
    setProblem(undefined);
    props.onUse(taken, read.amount);
  };
  const isLost = wanted.trim() !== '' && found.length === 0;
  return (
    <form className="line-form by-hand" onSubmit={use}>
      <Field
        label={labels.find}
        value={wanted}
        problem={isLost ? text('bench.find.nothing', { words: wanted.trim() }) : undefined}
        onChange={(event) => {
          setWanted(event.target.value);
          setChosen('');
        }}
      />
      <Pick
        label={labels.what}
        value={taken?.id ?? ''}
        onPick={setChosen}
        options={[
          ...(taken ? [] : [{ value: '', text: text('bench.paste.pick') }]),
          ...options.map((one) => ({ value: one.id, text: one.name })),
        ]}
      />
      <Field
        label={labels.howMuch}
        value={amount}
        problem={problem}
        onChange={(event) => setAmount(event.target.value)}
      />
      {props.children}
      <Key type="submit" disabled={!taken}>
        {labels.use}
      </Key>
    </form>
  );
}
