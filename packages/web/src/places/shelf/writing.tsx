import { useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Key } from '../../parts/key.tsx';
import { toldWriting, writingEntry, writingOf } from '../../settings.ts';
import { useDevice, useKeeper, useKept } from '../../use-keeping.tsx';
import { useWords, type Writing } from '../../words.tsx';

/** Units, hours and names of cuts: asked once, with a guess already there, and open to change ever after. */
export function WritingChoice(props: { isFirst: boolean }) {
  const { text } = useWords();
  const keeper = useKeeper();
  const state = useKept();
  const device = useDevice();
  const [draft, setDraft] = useState<Writing>(() => writingOf(state, device));
  const change = (part: Partial<Writing>) => {
    const next = { ...draft, ...part };
    setDraft(next);
    if (toldWriting(state, device)) tell(next);
  };
  const tell = (writing: Writing) => {
    const entry = writingEntry(state, device, writing);
    if (entry) keeper.write(entry);
  };
  return (
    <section className="writing" aria-labelledby="writing-title">
      <h2 id="writing-title">{text(props.isFirst ? 'web.writing.first' : 'web.writing')}</h2>
      <div className="writing-row">
        <Choice
          legend={text('web.writing.units')}
          value={draft.units}
          onChoose={(units) => change({ units })}
          options={[
            { value: 'metric', text: text('web.writing.units.metric') },
            { value: 'us', text: text('web.writing.units.us') },
          ]}
        />
        <Choice
          legend={text('web.writing.clock')}
          value={draft.clock}
          onChoose={(clock) => change({ clock })}
          options={[
            { value: '24', text: text('web.writing.clock.24') },
            { value: '12', text: text('web.writing.clock.12') },
          ]}
        />
        <Choice
          legend={text('web.writing.names')}
          value={draft.names}
          onChoose={(names) => change({ names })}
          options={[
            { value: 'us', text: text('web.writing.names.us') },
            { value: 'uk', text: text('web.writing.names.uk') },
          ]}
        />
        {props.isFirst ? (
          <Key kind="first" onClick={() => tell(draft)}>
            {text('web.writing.done')}
          </Key>
        ) : null}
      </div>
    </section>
  );
}
