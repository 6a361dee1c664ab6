import { findCut, hasFatCap, isRack } from '@pitwright/engine';
import {
  type Bite,
  type Cook,
  type CutId,
  ownMisfit,
  PIECE_LIMITS,
  type Piece,
  type PitPlace,
  quantity,
} from '@pitwright/model';
import { biteName } from '@pitwright/words';
import { useId, useState } from 'react';
import { useDraft } from '../../parts/draft.ts';
import { Key } from '../../parts/key.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import { useWords } from '../../words.tsx';
import { CutPick } from '../new-cook/cut-pick.tsx';
import { bitesOf } from '../new-cook/sensible.ts';
import { useRemarks } from '../remarks.ts';
import { pieceName } from './band-data.ts';
import { setPiece, type Tell, type Telling } from './edit.ts';
import { OwnSides } from './own-sides.tsx';
import { Picked } from './picked.tsx';
import { usualMass, usualThickness } from './usual.ts';
import { WrittenFigure } from './written-figure.tsx';

const PLACES: readonly PitPlace[] = ['hot', 'middle', 'cool'];
const MOST_ITEMS = 40;

/** What the piece is, in one line; opened, every figure that a person can measure of it. */
export function WhatItIs(props: { cook: Cook; piece: Piece; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const [isOpen, setOpen] = useState(false);
  const { cook, piece, onKeep } = props;
  const line = [
    piece.mass
      ? text('web.what.mass', { count: piece.count, mass: print.quantity(piece.mass) })
      : text('web.what.count', { count: piece.count }),
    piece.thickness && text('web.what.thick', { thickness: print.quantity(piece.thickness) }),
    piece.bone === undefined ? undefined : text(piece.bone ? 'web.what.bone' : 'web.what.boneless'),
    piece.membrane === undefined
      ? undefined
      : text(piece.membrane ? 'web.what.membrane-on' : 'web.what.membrane-off'),
    piece.fatCap && text('web.what.fat-cap', { thickness: print.quantity(piece.fatCap) }),
    piece.solution && text('web.what.solution', { share: print.quantity(piece.solution) }),
    piece.start && text('web.what.start', { start: print.quantity(piece.start) }),
    piece.place && piece.place !== 'middle' ? text(`web.what.place.${piece.place}`) : undefined,
    biteName(piece.bite),
  ].filter(Boolean);
  return (
    <div className="what-it-is">
      <p>
        {line.join(', ')}.{' '}
        <Key kind="plain" aria-expanded={isOpen} onClick={() => setOpen((open) => !open)}>
          {text(isOpen ? 'web.what.close' : 'web.what.change')}
        </Key>
      </p>
      {isOpen ? (
        <PieceFields piece={piece} tell={(told) => onKeep(setPiece(cook, piece.id, fitting(piece, told)))} />
      ) : null}
    </div>
  );
}

const mayHaveFatCap = (cut: CutId): boolean => {
  const known = findCut(cut);
  return known !== undefined && hasFatCap(known);
};

/** A change after which the sides of a cut of one's own fit no longer takes them with it: the file would not read. */
const fitting = (piece: Piece, told: Telling<Piece>): Telling<Piece> =>
  ownMisfit({ ...piece, ...told } as Piece) ? { ...told, own: undefined } : told;

function PieceFields({ piece, tell }: { piece: Piece; tell: Tell<Piece> }) {
  const remarks = useRemarks();
  const { text, print } = useWords();
  const cut = findCut(piece.cut);
  const toCut = (next: CutId) => {
    const bites = bitesOf(next);
    const asked = bites.includes(piece.bite) ? piece.bite : bites[0]!;
    tell({
      cut: next,
      bite: asked,
      ...(isRack(next) ? {} : { membrane: undefined }),
      ...(mayHaveFatCap(next) ? {} : { fatCap: undefined }),
    });
  };
  return (
    <div className="fields piece-fields">
      <Name piece={piece} tell={tell} />
      <CutPick label={text('web.new.cut')} value={piece.cut} onPick={toCut} />
      <div className="written-figure">
        <span>{text('web.new.how-many')}</span>
        <Stepper
          what={print.cut(piece.cut, 2)}
          value={piece.count}
          min={1}
          max={MOST_ITEMS}
          onStep={(count) => tell({ count })}
        />
      </div>
      <WrittenFigure
        label={text('web.new.mass')}
        kind="mass"
        value={piece.mass}
        limits={PIECE_LIMITS.mass}
        example={usualMass(piece.cut)}
        remark={remarks.ofMass(piece.cut, piece.mass)}
        onKeep={(mass) => tell({ mass })}
      />
      <WrittenFigure
        label={text('web.measure.ruler')}
        kind="length"
        value={piece.thickness}
        limits={PIECE_LIMITS.thickness}
        example={usualThickness(piece.cut)}
        onKeep={(thickness) => tell({ thickness })}
      />
      <WrittenFigure
        label={text('web.what.ask-start')}
        kind="temperature"
        value={piece.start}
        limits={PIECE_LIMITS.start}
        example={quantity('temperature', 5, '°C')}
        onKeep={(start) => tell({ start })}
      />
      <WrittenFigure
        label={text('web.what.ask-solution')}
        kind="fraction"
        value={piece.solution}
        limits={PIECE_LIMITS.solution}
        example={quantity('fraction', 12, '%')}
        onKeep={(solution) => tell({ solution })}
      />
      {mayHaveFatCap(piece.cut) ? (
        <WrittenFigure
          label={text('web.what.ask-fat-cap')}
          kind="length"
          value={piece.fatCap}
          limits={PIECE_LIMITS.fatCap}
          example={quantity('length', 6, 'mm')}
          onKeep={(fatCap) => tell({ fatCap })}
        />
      ) : null}
      <OwnSides piece={piece} tell={tell} />
      {cut && cut.boneShare > 0 ? (
        <YesNo
          label={text('web.what.ask-bone')}
          value={piece.bone}
          yes={text('web.what.bone')}
          no={text('web.what.boneless')}
          onTell={(bone) => tell({ bone })}
        />
      ) : null}
      {isRack(piece.cut) ? (
        <YesNo
          label={text('web.what.ask-membrane')}
          value={piece.membrane}
          yes={text('web.what.membrane-on')}
          no={text('web.what.membrane-off')}
          onTell={(membrane) => tell({ membrane })}
        />
      ) : null}
      <Picked
        label={text('web.what.ask-place')}
        value={piece.place ?? 'middle'}
        options={PLACES.map((value) => ({ value, text: text(`web.what.place.${value}`) }))}
        onPick={(place) => tell({ place: place as PitPlace })}
      />
      <Picked
        label={text('web.new.bite')}
        value={piece.bite}
        options={[...new Set([...bitesOf(piece.cut), piece.bite])].map((value) => ({
          value,
          text: biteName(value),
        }))}
        onPick={(bite) => tell({ bite: bite as Bite })}
      />
    </div>
  );
}

/** What it is called; empty, it is called by its cut. */
function Name({ piece, tell }: { piece: Piece; tell: Tell<Piece> }) {
  const { text, print } = useWords();
  const { draft, line, onEnter } = useDraft(piece.name ?? '', () => keep());
  const id = useId();
  const { name: _, ...unnamed } = piece;
  const keep = () => {
    const name = draft.trim() || undefined;
    if (name !== piece.name) tell({ name });
  };
  return (
    <span className="written-figure">
      <label htmlFor={id}>{text('web.shelf.name')}</label>
      <input
        id={id}
        className="cell-write wide"
        autoComplete="off"
        maxLength={60}
        {...line}
        placeholder={pieceName(unnamed, print)}
        onKeyDown={onEnter}
      />
    </span>
  );
}

/** Yes, no, or nobody told. */
function YesNo(props: {
  label: string;
  value: boolean | undefined;
  yes: string;
  no: string;
  onTell: (value: boolean | undefined) => void;
}) {
  const { text } = useWords();
  return (
    <Picked
      label={props.label}
      value={props.value === undefined ? '' : props.value ? 'yes' : 'no'}
      options={[
        { value: '', text: text('web.what.untold') },
        { value: 'yes', text: props.yes },
        { value: 'no', text: props.no },
      ]}
      onPick={(value) => props.onTell(value === '' ? undefined : value === 'yes')}
    />
  );
}
