import type { Choice as DoubtChoice, PastedLine, PastedRecipe } from '@pitwright/engine/sauce';
import type { Formula, FormulaKind, FormulaLine } from '@pitwright/model';
import { useId, useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import {
  byChoice,
  byHand,
  type LineAnswer,
  methodNote,
  needsWriting,
  openDoubts,
  settledLine,
  UNANSWERED,
} from './answers.ts';
import { FindAndAmount } from './find-and-amount.tsx';
import { intoView } from './into-view.ts';
import type { MeasureSystemId } from './messages.ts';
import { useKnown } from './own.tsx';

/** A recipe as it was written: its lines, and every doubt as a question to answer before it is taken over. */
export function Paste(props: {
  into: Formula | undefined;
  read: (text: string, system: MeasureSystemId | undefined) => Promise<PastedRecipe | undefined>;
  /** With what the recipe says beside its lines, as a note. */
  onNew: (name: string, kind: FormulaKind, lines: readonly FormulaLine[], note: string | undefined) => void;
  onAdd: (lines: readonly FormulaLine[], note: string | undefined) => void;
  onLeave: () => void;
}) {
  const { text, rich, print } = useWords();
  const id = useId();
  const [written, setWritten] = useState('');
  const [recipe, setRecipe] = useState<PastedRecipe>();
  const [system, setSystem] = useState<MeasureSystemId>();
  const [name, setName] = useState('');
  const [kind, setKind] = useState<FormulaKind>('sauce');
  const [answers, setAnswers] = useState<Readonly<Record<number, LineAnswer>>>({});
  const readIt = async (whose: MeasureSystemId | undefined) => {
    const next = await props.read(written, whose);
    setRecipe(next);
    setAnswers({});
    if (next?.title) {
      const { title } = next;
      setName((before) => (before.trim() === '' ? title.name : before));
      setKind(title.kind);
    }
  };
  const answerOf = (line: PastedLine) => answers[line.number] ?? UNANSWERED;
  const kept = recipe?.lines.filter((line) => !answerOf(line).isLeftOut) ?? [];
  const settled = kept.flatMap((line) => settledLine(line, answerOf(line)) ?? []);
  const open = kept.length - settled.length;
  const guessed = recipe?.doubts.find((doubt) => doubt.said.id === 'sauce.paste-system');
  const taken = system ?? (guessed?.said.params?.system as MeasureSystemId | undefined);
  const canTake = settled.length > 0 && open === 0;
  const note = recipe && methodNote(recipe);
  return (
    <section ref={intoView} className="paste" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{text('bench.paste.title')}</h2>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void readIt(system);
        }}
      >
        <label className="quiet small" htmlFor={id}>
          {text('bench.paste.hint')}
        </label>
        <textarea
          id={id}
          rows={8}
          value={written}
          onChange={(event) => setWritten(event.target.value)}
          spellCheck={false}
        />
        <div className="keys">
          <Key kind="first" type="submit" disabled={written.trim() === ''}>
            {text('bench.paste.read')}
          </Key>
          <Key onClick={props.onLeave}>{text('bench.paste.leave')}</Key>
        </div>
      </form>
      {recipe && recipe.lines.length === 0 ? <p role="status">{text('bench.paste.nothing')}</p> : null}
      {recipe && recipe.lines.length > 0 ? (
        <div className="paste-read">
          {guessed || system ? (
            <Pick
              label={text('bench.paste.system')}
              value={taken ?? 'us'}
              onPick={(value) => {
                setSystem(value as MeasureSystemId);
                void readIt(value as MeasureSystemId);
              }}
              options={(['us', 'uk', 'au', 'metric'] as const).map((one) => ({
                value: one,
                text: text('bench.paste.system-name', { system: one }),
              }))}
            />
          ) : null}
          {guessed && !system ? <p className="small quiet">{saidWords(guessed.said, print)}</p> : null}
          <ol className="pasted">
            {recipe.lines.map((line) => (
              <PastedRow
                key={`${line.number} ${line.text}`}
                line={line}
                answer={answerOf(line)}
                onAnswer={(answer) => setAnswers((all) => ({ ...all, [line.number]: answer }))}
              />
            ))}
          </ol>
          {note ? <p className="small quiet">{text('bench.paste.aside', { note })}</p> : null}
          <div className="line-form">
            <Field
              label={text('bench.name')}
              value={name}
              placeholder={text('bench.pasted-name')}
              onChange={(event) => setName(event.target.value)}
            />
            <Choice
              legend={text('bench.kind')}
              value={kind}
              onChoose={setKind}
              options={(['sauce', 'rub', 'brine', 'spritz'] as const).map((value) => ({
                value,
                text: text('bench.kind-name', { kind: value }),
              }))}
            />
          </div>
          <p role="status">{rich('bench.paste.count', { lines: kept.length, open })}</p>
          <div className="keys">
            <Key
              kind="first"
              disabled={!canTake}
              onClick={() => props.onNew(name.trim() || text('bench.pasted-name'), kind, settled, note)}
            >
              {text('bench.paste.as-new')}
            </Key>
            {props.into ? (
              <Key disabled={!canTake} onClick={() => props.onAdd(settled, note)}>
                {text('bench.paste.into', { name: props.into.name })}
              </Key>
            ) : null}
          </div>
        </div>
      ) : null}
    </section>
  );
}

function PastedRow(props: { line: PastedLine; answer: LineAnswer; onAnswer: (answer: LineAnswer) => void }) {
  const { text, rich, print } = useWords();
  const { find } = useKnown();
  const { line, answer, onAnswer } = props;
  const settled = settledLine(line, answer);
  const open = openDoubts(line, answer);
  const name = settled && find(settled.ingredient)?.name;
  const notes = line.doubts.filter((doubt) => !doubt.asks);
  const ofLine = <span className="vh">{text('bench.paste.of-line', { line: line.text })}</span>;
  if (answer.isLeftOut)
    return (
      <li className="pasted-row dull">
        <span className="pasted-text">{line.text}</span> <span>{text('bench.paste.left-out')}</span>
        <Key onClick={() => onAnswer({ ...answer, isLeftOut: false })}>
          {text('bench.paste.put-in')}
          {ofLine}
        </Key>
      </li>
    );
  return (
    <li className={open.length > 0 ? 'pasted-row asks' : 'pasted-row'}>
      <span className="pasted-text">{line.text}</span>
      {settled && name ? (
        <span>{rich('bench.paste.is', { name, mass: settled.amount.si * 1000 })}</span>
      ) : null}
      {open.map(({ doubt, place }) => (
        <div key={place} className="pasted-doubt">
          <p>
            <b>{saidWords(doubt.said, print)}</b>
          </p>
          <div className="keys">
            {doubt.choices.map((choice) => (
              <Key
                key={JSON.stringify(choice)}
                onClick={() => onAnswer(byChoice(line, answer, place, choice))}
              >
                <ChoiceWords choice={choice} line={line} />
                {ofLine}
              </Key>
            ))}
          </div>
        </div>
      ))}
      {needsWriting(line, answer) ? (
        <ByHand
          line={line}
          ingredient={answer.ingredient ?? line.ingredient}
          onHand={(ingredient, massG) => onAnswer(byHand(line, ingredient, massG))}
        />
      ) : null}
      {notes.map((doubt) => (
        <div key={doubt.said.id}>
          <p className="small quiet">{saidWords(doubt.said, print)}</p>
          {doubt.choices.length > 1 ? (
            <div className="keys">
              {doubt.choices.map((choice) => (
                <Key
                  key={JSON.stringify(choice)}
                  aria-pressed={settled?.ingredient === choice.ingredient}
                  onClick={() => onAnswer(byChoice(line, answer, line.doubts.indexOf(doubt), choice))}
                >
                  <ChoiceWords choice={choice} line={line} />
                  {ofLine}
                </Key>
              ))}
            </div>
          ) : null}
        </div>
      ))}
      <Key kind="plain" onClick={() => onAnswer({ ...answer, isLeftOut: true })}>
        {text('bench.paste.leave-out')}
        {ofLine}
      </Key>
    </li>
  );
}

function ChoiceWords(props: { choice: DoubtChoice; line: PastedLine }) {
  const { text } = useWords();
  const { find } = useKnown();
  const { choice, line } = props;
  const massG = choice.massG;
  if (choice.reading === 'as-weight' && massG !== undefined)
    return text('bench.paste.by-weight', { mass: massG });
  if (choice.reading === 'as-volume' && massG !== undefined)
    return text('bench.paste.by-volume', { mass: massG });
  const name = choice.ingredient ? find(choice.ingredient)?.name : undefined;
  const known = massG ?? (choice.ingredient === line.ingredient ? line.massG : undefined);
  if (name && known !== undefined) return text('bench.paste.this', { name, mass: known });
  if (name) return name;
  return massG === undefined ? (choice.reading ?? '') : text('bench.paste.grams', { mass: massG });
}

/** What it is and how much, told outright. */
function ByHand(props: {
  line: PastedLine;
  ingredient: string | undefined;
  onHand: (ingredient: string, massG: number) => void;
}) {
  const { text, print } = useWords();
  const { line } = props;
  return (
    <FindAndAmount
      labels={{
        find: text('bench.paste.find', { line: line.number }),
        what: text('bench.paste.what', { line: line.number }),
        howMuch: text('bench.paste.how-much', { line: line.number }),
        use: text('bench.paste.use'),
      }}
      ingredient={props.ingredient}
      amount={line.massG === undefined ? '' : print.massKg(line.massG / 1000)}
      onUse={({ id, densityGPerMl }, { kind, si }) =>
        props.onHand(id, kind === 'mass' ? si * 1000 : si * 1e6 * densityGPerMl)
      }
    />
  );
}
