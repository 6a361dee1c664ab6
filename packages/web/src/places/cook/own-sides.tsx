import {
  OWN_FATS,
  type OwnCut,
  type OwnFat,
  type OwnMisfit,
  ownMisfit,
  PIECE_LIMITS,
  type Piece,
  type Quantity,
  quantity,
} from '@pitwright/model';
import { useState } from 'react';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import type { Tell } from './edit.ts';
import { Picked } from './picked.tsx';
import { WrittenFigure } from './written-figure.tsx';

type Length = Quantity<'length'>;

/** A cut that the list has not: its length and width beside the thickness, and how fat it is. The named cut is the nearest. */
export function OwnSides({ piece, tell }: { piece: Piece; tell: Tell<Piece> }) {
  const { text } = useWords();
  const [sides, setSides] = useState<{ length?: Length | undefined; width?: Length | undefined }>({});
  const [isOpen, setOpen] = useState(piece.own !== undefined);
  const [misfit, setMisfit] = useState<OwnMisfit>();
  const { own } = piece;
  const length = sides.length ?? own?.length;
  const width = sides.width ?? own?.width;
  if (!isOpen)
    return (
      <Key kind="plain" onClick={() => setOpen(true)}>
        {text('web.own.open')}
      </Key>
    );
  /** Told once both sides are, and all of it fits together. */
  const take = (next: { length?: Length | undefined; width?: Length | undefined }) => {
    setSides(next);
    if (!next.length || !next.width) return;
    const told: OwnCut = { ...own, length: next.length, width: next.width };
    const wrong = ownMisfit({ ...piece, own: told });
    setMisfit(wrong);
    if (!wrong) tell({ own: told });
  };
  return (
    <>
      <WrittenFigure
        label={text('web.own.length')}
        kind="length"
        value={length}
        limits={PIECE_LIMITS.side}
        example={quantity('length', 300, 'mm')}
        onKeep={(kept) => take({ length: kept, width })}
      />
      <WrittenFigure
        label={text('web.own.width')}
        kind="length"
        value={width}
        limits={PIECE_LIMITS.side}
        example={quantity('length', 150, 'mm')}
        onKeep={(kept) => take({ length, width: kept })}
      />
      {misfit ? <p className="field-error small">{text(`web.own.misfit.${misfit}`)}</p> : null}
      {own ? (
        <>
          <Picked
            label={text('web.own.fat')}
            value={own.fat ?? ''}
            options={[
              { value: '', text: text('web.what.untold') },
              ...OWN_FATS.map((value) => ({ value, text: text(`web.own.fat.${value}`) })),
            ]}
            onPick={(fat) => {
              const { fat: _, ...rest } = own;
              tell({ own: fat ? { ...rest, fat: fat as OwnFat } : rest });
            }}
          />
          <Key
            kind="plain"
            onClick={() => {
              setSides({});
              setOpen(false);
              tell({ own: undefined });
            }}
          >
            {text('web.own.forget')}
          </Key>
        </>
      ) : null}
    </>
  );
}
