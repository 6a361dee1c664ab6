import { allergenTable } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { useState } from 'react';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Notice } from '../../parts/notice.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';

/** Who must not be harmed by it: guests at risk, and what guests cannot eat. */
export function AtRisk(props: { cook: Cook; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const { cook, onKeep } = props;
  const [other, setOther] = useState('');
  const { lines, said } = allergenTable(cook);
  const named = cook.guests.allergies ?? [];
  const setNamed = (allergies: readonly string[]) =>
    onKeep({ ...cook, guests: { ...cook.guests, allergies } });
  const word = (allergen: string) => text('web.guests.allergens.line', { allergen });
  const names = new Map(cook.formulas.map((formula) => [formula.id, formula.name]));
  return (
    <section className="at-risk">
      <label className="tick-line">
        <input
          type="checkbox"
          checked={cook.guests.atRisk ?? false}
          onChange={(event) => onKeep({ ...cook, guests: { ...cook.guests, atRisk: event.target.checked } })}
        />
        <span>
          {text('web.guests.risk')}
          <span className="small quiet">{text('web.guests.risk.who')}</span>
        </span>
      </label>
      <h2>{text('web.guests.allergens')}</h2>
      <p className="small quiet">{text('web.guests.allergens.private')}</p>
      <table>
        <thead>
          <tr>
            <th>{text('web.guests.allergens.head')}</th>
            <th>{text('web.guests.allergens.in')}</th>
            <th className="r">{text('web.guests.allergens.named')}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ allergen, formulaIds, isNamed }) => (
            <tr key={allergen}>
              <td>{word(allergen)}</td>
              <td>
                {formulaIds.map((id) => names.get(id) ?? id).join(', ') ||
                  text('web.guests.allergens.nothing')}
              </td>
              <td className="r">
                <label className="tick">
                  <input
                    type="checkbox"
                    aria-label={text('web.guests.allergens.tick', { allergen: word(allergen) })}
                    checked={isNamed}
                    onChange={() =>
                      setNamed(
                        isNamed
                          ? named.filter((one) => one.toLowerCase() !== allergen)
                          : [...named, allergen],
                      )
                    }
                  />
                </label>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <form
        className="add-allergen"
        onSubmit={(event) => {
          event.preventDefault();
          const written = other.trim().toLowerCase();
          if (written && !named.includes(written)) setNamed([...named, written]);
          setOther('');
        }}
      >
        <Field
          label={text('web.guests.allergens.other')}
          value={other}
          onChange={(event) => setOther(event.target.value)}
        />
        <Key type="submit" disabled={!other.trim()}>
          {text('web.guests.allergens.add')}
        </Key>
      </form>
      {said.map((one) => (
        <Notice key={`${one.id}${JSON.stringify(one.params)}`} level={one.level ?? 'information'}>
          {saidWords(one, print)}
        </Notice>
      ))}
    </section>
  );
}
