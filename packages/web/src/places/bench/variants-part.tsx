import { TASTES } from '@pitwright/engine/sauce';
import { chosenVariant, type Formula, type VariantChange } from '@pitwright/model';
import { writtenQuantity } from '@pitwright/words';
import { type FormEvent, useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { useWords, type Words } from '../../words.tsx';
import type { AsWritten, Seen } from './messages.ts';
import { useKnown } from './own.tsx';
import { addVariant, chooseVariant, removeVariant, renameVariant } from './variants.ts';

const AS_WRITTEN = 'as-written';

/** The ways to make a formula as a switch, what the chosen one changes, and what that moves. */
export function VariantsPart(props: {
  written: Formula;
  made: Formula;
  seen: Seen | undefined;
  onKeep: (written: Formula) => void;
}) {
  const { text } = useWords();
  const { written, made, onKeep } = props;
  const [isAdding, setAdding] = useState(false);
  const [isNaming, setNaming] = useState(false);
  const variants = written.variants ?? [];
  const chosen = chosenVariant(written);
  return (
    <section className="variants" aria-label={text('bench.variant')}>
      <div className="variant-choose">
        {variants.length > 0 ? (
          <Choice
            legend={text('bench.variant')}
            value={chosen?.id ?? AS_WRITTEN}
            onChoose={(id) => {
              setNaming(false);
              onKeep(chooseVariant(written, id === AS_WRITTEN ? undefined : id));
            }}
            options={[
              { value: AS_WRITTEN, text: text('bench.variant.as-written') },
              ...variants.map(({ id, name }) => ({ value: id, text: name })),
            ]}
          />
        ) : null}
        <Key aria-expanded={isAdding} onClick={() => setAdding((open) => !open)}>
          {text('bench.variant.new')}
        </Key>
        {chosen ? (
          <Key aria-expanded={isNaming} onClick={() => setNaming((open) => !open)}>
            {text('bench.variant.edit')}
          </Key>
        ) : null}
      </div>
      {isAdding ? (
        <NameForm
          label={text('bench.variant.name')}
          hint={text('bench.variant.name-hint')}
          name=""
          taken={variants.map(({ name }) => name)}
          keep={text('bench.variant.add')}
          onName={(name) => {
            onKeep(addVariant(written, name, made));
            setAdding(false);
          }}
        />
      ) : null}
      {chosen && isNaming ? (
        <div className="variant-edit">
          <NameForm
            key={chosen.id}
            label={text('bench.variant.name')}
            name={chosen.name}
            taken={variants.filter((one) => one !== chosen).map(({ name }) => name)}
            keep={text('web.keep')}
            onName={(name) => {
              onKeep(renameVariant(written, chosen.id, name));
              setNaming(false);
            }}
          />
          <Key
            onClick={() => {
              onKeep(removeVariant(written, chosen.id));
              setNaming(false);
            }}
          >
            {text('bench.variant.remove', { name: chosen.name })}
          </Key>
        </div>
      ) : null}
      {chosen ? <WhatMoves written={written} asWritten={props.seen?.asWritten} seen={props.seen} /> : null}
    </section>
  );
}

function NameForm(props: {
  label: string;
  hint?: string;
  name: string;
  taken: readonly string[];
  keep: string;
  onName: (name: string) => void;
}) {
  const { text } = useWords();
  const [name, setName] = useState(props.name);
  const [problem, setProblem] = useState<string>();
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const own = name.trim();
    if (own === '') return setProblem(text('bench.variant.no-name'));
    if (props.taken.includes(own)) return setProblem(text('bench.variant.name-twice', { name: own }));
    props.onName(own);
  };
  return (
    <form className="line-form" onSubmit={keep}>
      <Field
        label={props.label}
        placeholder={props.hint}
        value={name}
        problem={problem}
        onChange={(event) => setName(event.target.value)}
      />
      <Key kind="first" type="submit">
        {props.keep}
      </Key>
    </form>
  );
}

/** The changes in words, and where they lead: by the tongue and by the clock. */
function WhatMoves(props: { written: Formula; seen: Seen | undefined; asWritten: AsWritten | undefined }) {
  const { text } = useWords();
  const { find } = useKnown();
  const { written, asWritten, seen } = props;
  const chosen = chosenVariant(written)!;
  const nameOf = (id: string) => find(id)?.name ?? id;
  const changes = chosen.changes.map((change) => changeWords(written, change, nameOf, text));
  const { evaporated } = chosen;
  if (evaporated) changes.push(text('bench.variant.boils-off', { mass: evaporated }));
  if (changes.length === 0)
    return <p className="small">{text('bench.variant.empty', { name: chosen.name })}</p>;
  const made = seen?.outcome.ok ? seen.outcome : undefined;
  const minutes =
    made?.simmerS && asWritten?.outcome.simmerS
      ? Math.round((made.simmerS.p50 - asWritten.outcome.simmerS.p50) / 60)
      : 0;
  const moved = asWritten
    ? TASTES.filter((taste) => Math.abs(asWritten.steps[taste]) >= 1).map((taste) =>
        text('bench.taste-change', { taste, steps: asWritten.steps[taste] }),
      )
    : [];
  return (
    <div className="variant-said" aria-live="polite">
      <p>{text('bench.variant.changes', { changes: changes.join('|') })}</p>
      {asWritten ? (
        <p>
          {text('bench.variant.against', {
            changes: moved.length > 0 ? text('bench.listed', { items: moved.join('|') }) : '',
            minutes,
          })}
        </p>
      ) : null}
    </div>
  );
}

function changeWords(
  written: Formula,
  change: VariantChange,
  nameOf: (id: string) => string,
  text: Words['text'],
): string {
  const { line, out, ingredient, amount, late } = change;
  const how = amount ? writtenQuantity(amount) : '';
  const when = late === undefined ? '' : late ? 'late' : 'start';
  if (line === undefined) return text('bench.variant.adds', { name: nameOf(ingredient!), amount: how, when });
  if (out) return text('bench.variant.leaves-out', { name: nameOf(line) });
  if (ingredient)
    return text('bench.variant.puts', { name: nameOf(ingredient), for: nameOf(line), amount: how, when });
  const before = written.lines.filter((one) => one.ingredient === line)[(change.which ?? 1) - 1];
  return text('bench.variant.amount', {
    name: nameOf(line),
    amount: how,
    before: before && amount ? writtenQuantity(before.amount) : '',
    when,
  });
}
