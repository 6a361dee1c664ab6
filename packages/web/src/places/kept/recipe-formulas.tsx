import { formulaLines } from '@pitwright/engine/sauce';
import { type Cook, type Formula, madeFormula, type Recipe } from '@pitwright/model';
import { writtenQuantity } from '@pitwright/words';
import { Link } from 'wouter';
import { useWords } from '../../words.tsx';

/** What is mixed, line by line as it is weighed, and what it makes. @param bench the newest cook of it, whose Bench works on it */
export function RecipeFormulas(props: { recipe: Recipe; bench: Cook | undefined }) {
  const { text } = useWords();
  const { recipe, bench } = props;
  return (
    <section>
      <h2>{text('web.recipe.formulas')}</h2>
      {recipe.formulas.length === 0 ? <p className="quiet">{text('web.recipe.no-formulas')}</p> : null}
      {recipe.formulas.map((formula) => (
        <div key={formula.id} className="recipe-formula">
          <h3>
            {bench?.formulas.some(({ id }) => id === formula.id) ? (
              <Link href={`/cook/${bench.id}/bench?formula=${encodeURIComponent(formula.id)}`}>
                {text('web.recipe.on-bench', { name: formula.name })}
              </Link>
            ) : (
              formula.name
            )}
          </h3>
          <Weighed formula={formula} recipe={recipe} />
        </div>
      ))}
    </section>
  );
}

function Weighed({ formula, recipe }: { formula: Formula; recipe: Recipe }) {
  const { text, print } = useWords();
  const read = formulaLines(formula, recipe.labels);
  if (!read.ok) return <p className="quiet">{text('web.recipe.formula.unread')}</p>;
  const massG = read.lines.reduce((sum, line) => sum + line.massG, 0);
  const { simmer } = madeFormula(formula);
  // How much a simmer drives off stands in the formula, or is found at the Bench.
  const isEndKnown = !simmer || simmer.evaporated !== undefined;
  return (
    <table>
      <tbody>
        {read.lines.map(({ line, ingredient, massG: lineG, byVolume, isLate }) => (
          <tr key={`${line.ingredient} ${lineG}`}>
            <td>
              {ingredient.name}
              {isLate ? `, ${text('bench.late')}` : ''}
            </td>
            <td className="r quiet">{byVolume ? writtenQuantity(line.amount) : ''}</td>
            <td className="r figure">{print.massKg(lineG / 1000)}</td>
          </tr>
        ))}
        <tr>
          <td>{text(isEndKnown ? 'web.recipe.formula.makes' : 'web.recipe.formula.in-pan')}</td>
          <td />
          <td className="r figure">
            <b>{print.massKg(massG / 1000 - (simmer?.evaporated?.si ?? 0))}</b>
          </td>
        </tr>
      </tbody>
    </table>
  );
}
