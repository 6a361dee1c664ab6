import { useState } from 'react';
import { Ask } from '../../parts/ask.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import { useWords } from '../../words.tsx';

export function Controls() {
  const { text } = useWords();
  const [count, setCount] = useState(4);
  const [liquid, setLiquid] = useState<'tea' | 'juice' | 'water'>('tea');
  const origin = {
    meaning: text('web.specimen.ask.meaning'),
    source: text('web.specimen.ask.source'),
    doubt: text('web.specimen.ask.doubt'),
  };
  return (
    <div className="control-rows">
      <h3>{text('web.specimen.controls')}</h3>
      <div className="keys">
        <Key kind="first">{text('web.keep')}</Key>
        <Key>{text('web.specimen.what-if')}</Key>
        <Key disabled>{text('web.nothing-to-undo')}</Key>
      </div>
      <div className="keys">
        <Key kind="first" atPit>
          {text('web.specimen.wrapped')}
        </Key>
        <Key atPit>{text('web.specimen.spritz')}</Key>
        <Stepper what={text('web.specimen.racks')} value={count} min={1} max={9} onStep={setCount} />
      </div>
      <Choice
        legend={text('web.specimen.liquid')}
        value={liquid}
        onChoose={setLiquid}
        options={[
          { value: 'tea', text: text('web.specimen.tea') },
          { value: 'juice', text: text('web.specimen.juice') },
          { value: 'water', text: text('web.specimen.water') },
        ]}
      />
      <Field
        label={text('web.specimen.mass')}
        defaultValue="3.6"
        problem={text('web.specimen.mass.problem')}
      />
      <div className="keys">
        {[...'ABCDEFGH'].map((letter) => (
          <Letter key={letter} letter={letter} large />
        ))}
      </div>
      <p>
        <Ask origin={origin}>{text('web.specimen.ask')}</Ask>
      </p>
      <Notice level="information">{text('web.specimen.information')}</Notice>
      <Notice level="caution">{text('web.specimen.caution')}</Notice>
      <Notice level="stop">{text('web.specimen.stop')}</Notice>
      <div className="empty">
        <b>{text('web.shelf.empty')}</b>
        <br />
        {text('web.shelf.empty.more')}
        <div className="keys">
          <Key kind="first">{text('web.place.new-cook')}</Key>
        </div>
      </div>
    </div>
  );
}
