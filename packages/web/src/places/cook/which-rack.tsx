import { CURVES, EDGES, isRack, type RackSigns, rackSaid, whichRack } from '@pitwright/engine';
import type { Cook, Piece, Said } from '@pitwright/model';
import { say } from '@pitwright/words';
import { useMemo, useState } from 'react';
import { Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import { setCut } from './edit.ts';
import './which-rack.css';

const COUNTS = Array.from({ length: 12 }, (_, i) => 4 + i);
/** Of the untold sign. */
const UNTOLD = '';

/** Which rack of ribs this is, by what the eye sees at the pit; the plan follows when it is taken so. */
export function WhichRack(props: { cook: Cook; piece: Piece; onKeep: (cook: Cook) => void }) {
  const { print } = useWords();
  const [isOpen, setOpen] = useState(false);
  const { cut } = props.piece;
  if (!isRack(cut)) return null;
  return (
    <div className="which-rack">
      <Key aria-expanded={isOpen} onClick={() => setOpen((open) => !open)}>
        {say({ id: 'cuts.app.open', params: { cut } }, print)}
      </Key>
      {isOpen ? <Signs {...props} /> : null}
    </div>
  );
}

function Signs({ cook, piece, onKeep }: { cook: Cook; piece: Piece; onKeep: (cook: Cook) => void }) {
  const { print } = useWords();
  const tell = (said: Said): string => say(said, print);
  const [seen, setSeen] = useState<ThreeLooks>({});
  const answer = useMemo(
    () =>
      whichRack({
        ...seen,
        ...(isRack(piece.cut) && { label: piece.cut }),
        ...(piece.mass && piece.mass.si >= 0.2 && piece.mass.si <= 6 && { massKg: piece.mass.si }),
      }),
    [seen, piece.cut, piece.mass],
  );
  const word = (sign: 'curve' | 'edge', words: readonly string[]) => [
    { value: UNTOLD, text: tell({ id: 'cuts.app.untold' }) },
    ...words.map((value) => ({ value, text: tell({ id: `cuts.app.${sign}`, params: { [sign]: value } }) })),
  ];
  const look = (sign: keyof ThreeLooks, value: string | number | undefined): void =>
    setSeen((before) => {
      const { [sign]: _, ...rest } = before;
      return value === undefined ? rest : { ...rest, [sign]: value };
    });
  return (
    <div>
      <div className="fields">
        <Pick
          label={tell({ id: 'cuts.app.ask-bones' })}
          value={seen.bones === undefined ? UNTOLD : String(seen.bones)}
          onPick={(value) => look('bones', value === UNTOLD ? undefined : Number(value))}
          options={[
            { value: UNTOLD, text: tell({ id: 'cuts.app.untold' }) },
            ...COUNTS.map((count) => ({ value: String(count), text: String(count) })),
          ]}
        />
        <Pick
          label={tell({ id: 'cuts.app.ask-curve' })}
          value={seen.curve ?? UNTOLD}
          onPick={(value) => look('curve', value || undefined)}
          options={word('curve', CURVES)}
        />
        <Pick
          label={tell({ id: 'cuts.app.ask-edge' })}
          value={seen.edge ?? UNTOLD}
          onPick={(value) => look('edge', value || undefined)}
          options={word('edge', EDGES)}
        />
      </div>
      <p aria-live="polite">
        <b>{tell(rackSaid(answer))}</b> {answer.reasons.map(tell).join(' ')}{' '}
        {answer.lookNext ? tell(answer.lookNext) : null}
      </p>
      {answer.likely === piece.cut ? null : (
        <Key onClick={() => onKeep(setCut(cook, piece.id, answer.likely))}>
          {tell({ id: 'cuts.app.take', params: { cut: answer.likely } })}
        </Key>
      )}
    </div>
  );
}

/** The three looks that need no tool. */
type ThreeLooks = { readonly [Sign in 'bones' | 'curve' | 'edge']?: RackSigns[Sign] };
