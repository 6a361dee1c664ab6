import { createEntry, PIT_LIMITS, PIT_TYPES, type Pit, type PitType, quantity } from '@pitwright/model';
import { newId } from '@pitwright/store';
import { pitName } from '@pitwright/words';
import { useState } from 'react';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { readFigure } from '../../parts/read-figure.ts';
import { useKeeper } from '../../use-keeping.tsx';
import { useWords } from '../../words.tsx';
import { useRemarks } from '../remarks.ts';

/** A new pit: its kind and what it is usually held at. */
export default function PitForm(props: { onDone: () => void }) {
  const { text, print } = useWords();
  const keeper = useKeeper();
  const remarks = useRemarks();
  const [type, setType] = useState<PitType>('kettle');
  const [name, setName] = useState('');
  const [heat, setHeat] = useState(print.settings.units === 'us' ? '250 °F' : '120 °C');
  const limits = PIT_LIMITS.temperature;
  const reading = readFigure(heat, 'temperature', limits, print.settings.units);
  const keep = () => {
    if (!reading.ok) return;
    const id = newId();
    const pit: Pit = {
      id,
      name: name.trim() || text('web.shelf.my-pit', { type: pitName(type) }),
      type,
      temperature: reading.quantity,
      gauge: 'grate',
    };
    keeper.write(createEntry({ kind: 'pit', id }, pit));
    props.onDone();
  };
  return (
    <form
      className="pit-form"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <Pick
        label={text('web.ask.pit')}
        value={type}
        onPick={(value) => setType(value as PitType)}
        options={PIT_TYPES.filter((t) => t !== 'unknown').map((value) => ({ value, text: pitName(value) }))}
      />
      <Field
        label={text('web.shelf.name')}
        value={name}
        placeholder={text('web.shelf.my-pit', { type: pitName(type) })}
        onChange={(event) => setName(event.target.value)}
      />
      <Field
        label={text('web.ask.heat')}
        value={heat}
        remark={reading.ok ? remarks.ofHeat(reading.quantity) : undefined}
        problem={
          reading.ok
            ? undefined
            : reading.why === 'outside'
              ? text('web.figure.outside', {
                  low: print.quantity(quantity('temperature', limits.min, limits.unit)),
                  high: print.quantity(quantity('temperature', limits.max, limits.unit)),
                })
              : text('web.ask.heat.problem')
        }
        onChange={(event) => setHeat(event.target.value)}
      />
      <div className="keys">
        <Key kind="first" type="submit">
          {text('web.keep')}
        </Key>
        <Key onClick={props.onDone}>{text('web.back')}</Key>
      </div>
    </form>
  );
}
