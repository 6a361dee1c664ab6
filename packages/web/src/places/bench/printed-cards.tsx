import { type SauceOutcome, THICKNESS_WORDS } from '@pitwright/engine/sauce';
import type { Cook, Formula } from '@pitwright/model';
import { listed, spokenIngredient, writtenQuantity } from '@pitwright/words';
import { useWords } from '../../words.tsx';

/** `60 mL vinegar and 20 g butter`: what goes in after the simmer; empty where nothing does. */
export const lateWords = (outcome: SauceOutcome): string =>
  listed(
    outcome.lines
      .filter((line) => line.isLate)
      .map(({ line, ingredient }) => `${writtenQuantity(line.amount)} ${spokenIngredient(ingredient.name)}`),
  );

/** Prints one of the two alone. */
export function printCard(which: 'label' | 'card'): void {
  document.documentElement.dataset.prints = which;
  window.print();
}

/** The jar label and the recipe card: on paper only, black alone. */
export function PrintedCards(props: { cook: Cook; formula: Formula; outcome: SauceOutcome }) {
  const { text, rich } = useWords();
  const { cook, formula, outcome } = props;
  const { allergens, keeping, looks } = outcome;
  const named = cook.rules === 'uk' ? allergens.eu : allergens.us;
  const byWeight = [...outcome.lines].sort((a, b) => b.massG - a.massG);
  const contains =
    named.length > 0
      ? text('bench.contains.some', { allergens: named.join('|') })
      : text('bench.contains.none');
  const unknown =
    allergens.unknown.length > 0
      ? text('bench.contains.unknown', { names: allergens.unknown.map((one) => one.name).join('|') })
      : '';
  const demo = cook.isDemo ? <p>{text('bench.label.demo')}</p> : null;
  return (
    <div className="bench-print">
      <section className="jar-label">
        <p className="label-name">{formula.name}</p>
        {demo}
        <p>
          {text('bench.label.made')} <span className="label-blank" />
        </p>
        <p>
          <b>{text('bench.label.use', { days: keeping.daysLow })}</b>
        </p>
        <p>
          {text('bench.label.ingredients', {
            names: byWeight.map((line) => spokenIngredient(line.ingredient.name)).join(', '),
          })}
        </p>
        <p>{contains}</p>
        {unknown ? <p>{unknown}</p> : null}
      </section>
      <section className="recipe-card">
        <p className="label-name">{formula.name}</p>
        {demo}
        <table>
          <tbody>
            {outcome.lines.map((line) => (
              <tr key={`${line.line.ingredient} ${line.massG}`}>
                <td>
                  {line.ingredient.name}
                  {line.isLate ? `, ${text('bench.late')}` : ''}
                </td>
                <td>{line.line.amount.kind === 'volume' ? writtenQuantity(line.line.amount) : ''}</td>
                <td className="r">{text('bench.label.net', { mass: line.massG })}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {outcome.simmerS ? (
          <>
            <p>
              {rich('bench.simmer.held', {
                ...outcome.simmerS,
                mass: outcome.finishedMassG - outcome.lateMassG,
                look: THICKNESS_WORDS[looks.pot.thickness]!,
              })}
            </p>
            <p>{text('bench.card.steps', { late: lateWords(outcome) })}</p>
            <p>{text('bench.label.use', { days: keeping.daysLow })}</p>
          </>
        ) : null}
        <p>{contains}</p>
        {unknown ? <p>{unknown}</p> : null}
        {formula.note ? <p>{formula.note}</p> : null}
      </section>
    </div>
  );
}
