import { BITES, type Bite, PIECE_LIMITS, quantity, type Recipe } from '@pitwright/model';
import { biteName, capital } from '@pitwright/words';
import { Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Letter } from '../../parts/letter.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import { useWords } from '../../words.tsx';
import { setPiece } from '../cook/edit.ts';
import { StagesTable } from '../cook/stages-table.tsx';
import { WrittenFigure } from '../cook/written-figure.tsx';
import { useRemarks } from '../remarks.ts';

const MOST_ALIKE = 60;

/** What goes on the pit, and through which stages: all of it can be written over where it stands. */
export function RecipePieces(props: { recipe: Recipe; onKeep: (recipe: Recipe) => unknown }) {
  const { text, print } = useWords();
  const remarks = useRemarks();
  const { recipe, onKeep } = props;
  return (
    <section>
      <h2>{text('web.recipe.pieces')}</h2>
      {recipe.pieces.map((piece) => (
        <div key={piece.id} className="recipe-piece">
          <h3>
            <Letter letter={piece.letter} /> {piece.name ?? capital(print.cut(piece.cut, piece.count))}
          </h3>
          <div className="recipe-piece-lines">
            <Stepper
              what={print.cut(piece.cut, 2)}
              value={piece.count}
              min={1}
              max={MOST_ALIKE}
              onStep={(count) => onKeep(setPiece(recipe, piece.id, { count }))}
            />
            <WrittenFigure
              label={text('web.new.mass')}
              kind="mass"
              value={piece.mass}
              limits={PIECE_LIMITS.mass}
              example={quantity('mass', 1.2, 'kg')}
              remark={remarks.ofMass(piece.cut, piece.mass)}
              onKeep={(mass) => onKeep(setPiece(recipe, piece.id, { mass }))}
            />
            <Pick
              label={text('web.new.bite')}
              value={piece.bite}
              onPick={(bite) => onKeep(setPiece(recipe, piece.id, { bite: bite as Bite }))}
              options={BITES.filter((bite) => bite !== 'raw').map((bite) => ({
                value: bite,
                text: biteName(bite),
              }))}
            />
            {recipe.pieces.length > 1 ? (
              <Key
                onClick={() =>
                  onKeep({ ...recipe, pieces: recipe.pieces.filter((one) => one.id !== piece.id) })
                }
              >
                {text('web.recipe.leave-out', { letter: piece.letter })}
              </Key>
            ) : null}
          </div>
          <StagesTable cook={recipe} piece={piece} planned={undefined} onKeep={onKeep} />
        </div>
      ))}
    </section>
  );
}
