import {
  type Formula,
  printCookQuantity,
  type Quantity,
  readCookQuantity,
  type Simmer,
} from '@pitwright/model';
import { type FormEvent, useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';

type Told = 'panDiameter' | 'panHeight' | 'power';

const written = (quantity: Quantity | undefined): string => (quantity ? printCookQuantity(quantity) : '');

/** On what it simmers: what is left empty is taken as usual, and said. */
export function PanPart(props: { formula: Formula; onKeep: (formula: Formula) => void }) {
  const { text, print } = useWords();
  const { formula, onKeep } = props;
  const simmer = formula.simmer ?? {};
  const [fields, setFields] = useState<Readonly<Record<Told, string>>>({
    panDiameter: written(simmer.panDiameter),
    panHeight: written(simmer.panHeight),
    power: written(simmer.power),
  });
  const [problems, setProblems] = useState<Partial<Record<Told, string>>>({});
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const wrong: Partial<Record<Told, string>> = {};
    const read = <K extends 'length' | 'power'>(key: Told, kind: K): Quantity<K> | undefined => {
      if (fields[key].trim() === '') return undefined;
      const reading = readCookQuantity(fields[key], kind);
      if (reading.ok && reading.quantity.si > 0) return reading.quantity;
      wrong[key] = reading.ok
        ? text('bench.problem.write', { example: kind === 'power' ? '2 kW' : '24 cm' })
        : saidWords(reading.problem, print);
      return undefined;
    };
    const panDiameter = read('panDiameter', 'length');
    const panHeight = read('panHeight', 'length');
    const power = read('power', 'power');
    setProblems(wrong);
    if (Object.keys(wrong).length > 0) return;
    const { panDiameter: _d, panHeight: _h, power: _p, ...rest } = simmer;
    onKeep({
      ...formula,
      simmer: {
        ...rest,
        ...(panDiameter && { panDiameter }),
        ...(panHeight && { panHeight }),
        ...(power && { power }),
      },
    });
  };
  const set = (part: Simmer) => onKeep({ ...formula, simmer: { ...simmer, ...part } });
  const field = (key: Told, label: string, placeholder: string) => (
    <Field
      label={label}
      value={fields[key]}
      placeholder={placeholder}
      problem={problems[key]}
      onChange={(event) => setFields((all) => ({ ...all, [key]: event.target.value }))}
    />
  );
  return (
    <>
      <form className="measured" onSubmit={keep}>
        {field('panDiameter', text('bench.pan.across'), print.lengthM(0.24))}
        {field('panHeight', text('bench.pan.high'), print.lengthM(0.12))}
        {field('power', text('bench.pan.power'), text('bench.pan.power.hint'))}
        <div className="keys">
          <Key type="submit">{text('bench.pan.keep')}</Key>
        </div>
      </form>
      <div className="pan-choices">
        <Choice
          legend={text('bench.pan.source')}
          value={simmer.source ?? 'gas'}
          onChoose={(source) => set({ source })}
          options={(['gas', 'electric', 'induction'] as const).map((value) => ({
            value,
            text: text('bench.pan.source-name', { source: value }),
          }))}
        />
        <Choice
          legend={text('bench.pan.lid')}
          value={simmer.lid ?? 'open'}
          onChoose={(lid) => set({ lid })}
          options={(['open', 'ajar', 'tight'] as const).map((value) => ({
            value,
            text: text('bench.pan.lid-name', { lid: value }),
          }))}
        />
      </div>
    </>
  );
}
