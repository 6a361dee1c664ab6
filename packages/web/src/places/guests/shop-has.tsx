import { cuts, edibleYield, withOtherCut } from '@pitwright/engine';
import { type Cook, type Piece, readCookQuantity } from '@pitwright/model';
import { capital } from '@pitwright/words';
import { useState } from 'react';
import { Field, Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { Stepper } from '../../parts/stepper.tsx';
import { useWords } from '../../words.tsx';
import { pieceName } from '../cook/band-data.ts';

/** More than this a shop does not run out of. */
const ENOUGH = 21;

/** "The shop has only …": another cut in place of a piece, as many as keep the table as well fed. */
export function ShopHas(props: { cook: Cook; onKeep: (cook: Cook) => void }) {
  const { text, print } = useWords();
  const { cook, onKeep } = props;
  const [pieceId, setPieceId] = useState(cook.pieces[0]?.id ?? '');
  const [cut, setCut] = useState('spareribs');
  const [written, setWritten] = useState('');
  const [atMost, setAtMost] = useState(ENOUGH);
  const usual = cuts().find((one) => one.id === cut)?.massKg;
  const reading = readCookQuantity(written, 'mass');
  const massKg = written.trim() === '' ? usual : reading.ok ? reading.quantity.si : undefined;
  const take = () => {
    if (massKg === undefined) return;
    const next = withOtherCut(cook, pieceId, { cut, massKg, ...(atMost < ENOUGH ? { atMost } : {}) });
    onKeep({ ...next, pieces: next.pieces.map((piece) => (piece.id === pieceId ? nameless(piece) : piece)) });
  };
  return (
    <details className="shop-has">
      <summary>{text('web.guests.shop')}</summary>
      <Pick
        label={text('web.guests.shop.for')}
        value={pieceId}
        onPick={setPieceId}
        options={cook.pieces.map((piece) => ({
          value: piece.id,
          text: `${piece.letter} ${pieceName(piece, print)}`,
        }))}
      />
      <Pick
        label={text('web.guests.shop.cut')}
        value={cut}
        onPick={setCut}
        options={cuts()
          .filter((one) => edibleYield(one.id))
          .map((one) => ({ value: one.id, text: capital(print.cut(one.id, 2)) }))}
      />
      <Field
        label={text('web.guests.shop.mass')}
        value={written}
        placeholder={usual === undefined ? '' : print.massKg(usual)}
        problem={written.trim() && !reading.ok ? text('web.new.mass.problem', { written }) : undefined}
        onChange={(event) => setWritten(event.target.value)}
      />
      <div className="who-line">
        <span>{text('web.guests.shop.most')}</span>
        <Stepper
          what={text('web.guests.shop.most')}
          value={atMost}
          min={1}
          max={ENOUGH}
          show={(most) => (most === ENOUGH ? text('web.guests.shop.enough') : String(most))}
          onStep={setAtMost}
        />
      </div>
      <Key onClick={take} disabled={massKg === undefined}>
        {text('web.guests.shop.take')}
      </Key>
    </details>
  );
}

/** What it was called no longer holds: it goes by its cut. */
function nameless({ name: _, ...piece }: Piece): Piece {
  return piece;
}
