import { BODIES, type Body, type Cook, type IngredientLabel, type Said } from '@pitwright/model';
import type { FormEvent } from 'react';
import { useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { intoView } from './into-view.ts';
import {
  draftOf,
  emptyDraft,
  LABEL_PARTS,
  type LabelDraft,
  type LabelField,
  readDraft,
  usesOf,
  withLabel,
  withoutLabel,
} from './label-form.ts';

const NEW = 'new';

/** Ingredients of one's own by their labels: written down, mended, taken out. */
export function OwnLabels(props: {
  cook: Cook;
  onKeep: (cook: Cook) => void;
  onUse: (label: IngredientLabel) => void;
  onLeave: () => void;
}) {
  const { text } = useWords();
  const { cook, onKeep } = props;
  const labels = cook.labels ?? [];
  const [opened, setOpened] = useState<string | undefined>(labels.length === 0 ? NEW : undefined);
  const [problem, setProblem] = useState<string>();
  const editing = labels.find((one) => one.ingredient === opened);
  const remove = (label: IngredientLabel) => {
    const uses = usesOf(cook, label.ingredient);
    if (uses.length > 0)
      return setProblem(text('bench.own.in-use', { name: label.name, formulas: uses.join('|') }));
    setProblem(undefined);
    setOpened(undefined);
    onKeep(withoutLabel(cook, label.ingredient));
  };
  return (
    <section ref={intoView} className="paste own" aria-labelledby="own-title">
      <h2 id="own-title">{text('bench.own.title')}</h2>
      <div>
        <p className="quiet small">{text('bench.own.hint')}</p>
        {labels.length > 0 ? (
          <ul className="ruled own-list">
            {labels.map((label) => (
              <li key={label.ingredient}>
                <span>{label.name}</span>
                <span className="keys">
                  <Key aria-pressed={opened === label.ingredient} onClick={() => setOpened(label.ingredient)}>
                    {text('bench.own.edit')}
                    <span className="vh">{text('bench.paste.of-line', { line: label.name })}</span>
                  </Key>
                  <Key onClick={() => props.onUse(label)}>
                    {text('bench.own.use')}
                    <span className="vh">{text('bench.paste.of-line', { line: label.name })}</span>
                  </Key>
                  <Key kind="plain" onClick={() => remove(label)}>
                    {text('bench.own.remove')}
                    <span className="vh">{text('bench.paste.of-line', { line: label.name })}</span>
                  </Key>
                </span>
              </li>
            ))}
          </ul>
        ) : null}
        {problem ? (
          <p className="field-error" role="status">
            {problem}
          </p>
        ) : null}
        <div className="keys">
          {labels.length > 0 ? <Key onClick={() => setOpened(NEW)}>{text('bench.own.another')}</Key> : null}
          <Key onClick={props.onLeave}>{text('bench.own.leave')}</Key>
        </div>
      </div>
      {opened ? (
        <LabelForm
          key={opened}
          cook={cook}
          label={editing}
          onKeep={(label) => {
            onKeep(withLabel(cook, label));
            setProblem(undefined);
            setOpened(undefined);
          }}
        />
      ) : null}
    </section>
  );
}

function LabelForm(props: {
  cook: Cook;
  label: IngredientLabel | undefined;
  onKeep: (label: IngredientLabel) => void;
}) {
  const { text, print } = useWords();
  const { cook, label } = props;
  const [draft, setDraft] = useState<LabelDraft>(() =>
    label ? draftOf(label) : emptyDraft(print.settings.units === 'us' ? 'us' : 'eu'),
  );
  const [isTried, setTried] = useState(false);
  const reading = readDraft(draft, cook.labels ?? [], label?.ingredient);
  const problems: Partial<Record<LabelField, Said>> = reading.ok || !isTried ? {} : reading.problems;
  const set = (part: Partial<LabelDraft>) => setDraft((before) => ({ ...before, ...part }));
  const field = (key: LabelField, value: string, onText: (value: string) => void, hint = '') => (
    <Field
      key={key}
      label={text(`bench.own.${key}`)}
      value={value}
      placeholder={hint}
      problem={problems[key] && saidWords(problems[key], print)}
      onChange={(event) => onText(event.target.value)}
    />
  );
  const keep = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (reading.ok) props.onKeep(reading.label);
  };
  // Labels of the one law print sodium, of the other salt.
  const parts = LABEL_PARTS.filter(([part]) => part !== (draft.law === 'us' ? 'salt' : 'sodium'));
  return (
    <form className="label-form" onSubmit={keep}>
      {field('name', draft.name, (name) => set({ name }))}
      <Choice
        legend={text('bench.own.law')}
        value={draft.law}
        onChoose={(law) => set({ law })}
        options={(['us', 'eu'] as const).map((value) => ({
          value,
          text: text('bench.own.law-name', { law: value }),
        }))}
      />
      <div className="label-figures">
        {field('per', draft.per, (per) => set({ per }), draft.law === 'us' ? '32 g' : '100 g')}
        {field('perVolume', draft.perVolume, (perVolume) => set({ perVolume }), '2 tbsp')}
        {field('kcal', draft.kcal, (kcal) => set({ kcal }))}
        {parts.map(([part, unit]) =>
          field(part, draft.parts[part], (value) => set({ parts: { ...draft.parts, [part]: value } }), unit),
        )}
        {field('ph', draft.ph, (ph) => set({ ph }))}
        <Pick
          label={text('bench.own.sugar-kind')}
          value={draft.sugarKind}
          onPick={(value) => set({ sugarKind: value as LabelDraft['sugarKind'] })}
          options={(['', 'sucrose', 'inverted'] as const).map((value) => ({
            value,
            text: text('bench.own.sugar-kind-name', { kind: value }),
          }))}
        />
        <Pick
          label={text('bench.own.body')}
          value={draft.body}
          onPick={(value) => set({ body: value as '' | Body })}
          options={(['', ...BODIES] as const).map((value) => ({
            value,
            text: text('bench.own.body-name', { body: value }),
          }))}
        />
      </div>
      <Choice
        legend={text('bench.own.allergens-read')}
        value={draft.allergensRead}
        onChoose={(allergensRead) => set({ allergensRead })}
        options={(['no', 'none', 'some'] as const).map((value) => ({
          value,
          text: text('bench.own.allergens-read-name', { read: value }),
        }))}
      />
      {draft.allergensRead === 'some'
        ? field('allergens', draft.allergens, (allergens) => set({ allergens }))
        : null}
      {reading.ok ? (
        <p aria-live="polite" className="small">
          {text('bench.own.leaves-water', { mass: reading.waterG })}{' '}
          {reading.spans.sugarsG
            ? text('bench.own.sugars-span', {
                low: reading.spans.sugarsG.low,
                high: reading.spans.sugarsG.high,
              })
            : ''}{' '}
          {text('bench.own.unknown', { items: reading.unknown.join('|') })}
        </p>
      ) : null}
      <div className="keys">
        <Key kind="first" type="submit">
          {text('bench.own.keep')}
        </Key>
      </div>
    </form>
  );
}
