import { type Aim, type AimedTaste, THICKNESS_WORDS } from '@pitwright/engine/sauce';
import type { Formula } from '@pitwright/model';
import { useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Pick } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { takeOver } from './edit.ts';
import type { Seen, Wish } from './messages.ts';

const AIMED = ['sweet', 'sour', 'salt', 'heat'] as const satisfies readonly AimedTaste[];
/** Steps that people notice: clearly less to clearly more. */
const STEPS = ['-3', '-1.5', '0', '1.5', '3'] as const;
const AS_IT_IS = 'as-it-is';
/** The middle of a look. */
const INSIDE = 0.5;

const isNothing = ({ aim }: Wish): boolean =>
  aim.brushedLevel === undefined && AIMED.every((taste) => !aim.steps[taste]);

/** The other way round: how it should taste and look, and the least change that gets it there. */
export function AimPart(props: {
  formula: Formula;
  seen: Seen;
  wish: Wish | undefined;
  onWish: (wish: Wish | undefined) => void;
  onKeep: (formula: Formula) => void;
  onVariant: (name: string, made: Formula) => void;
}) {
  const { text, print } = useWords();
  const { formula, seen, onWish } = props;
  const [isOpen, setOpen] = useState(false);
  const wish = props.wish ?? { aim: { steps: {} }, mayAdd: false };
  const set = (aim: Aim, mayAdd = wish.mayAdd) => {
    const next = { aim, mayAdd };
    onWish(isNothing(next) && !mayAdd ? undefined : next);
  };
  const { brushedLevel, steps } = wish.aim;
  const aimed = props.wish ? seen.aimed : undefined;
  const answer = aimed?.rebalanced;
  return (
    <div className="aim">
      <Key
        aria-expanded={isOpen}
        onClick={() => {
          if (isOpen) onWish(undefined);
          setOpen(!isOpen);
        }}
      >
        {text('bench.aim')}
      </Key>
      {isOpen ? (
        <>
          <div className="aim-choose">
            {AIMED.map((taste) => (
              <Pick
                key={taste}
                label={text(`bench.scale.${taste}`)}
                value={String(steps[taste] ?? 0)}
                onPick={(value) => set({ ...wish.aim, steps: { ...steps, [taste]: Number(value) } })}
                options={STEPS.map((value) => ({
                  value,
                  text: text('bench.aim.step', { taste, steps: Number(value) }),
                }))}
              />
            ))}
            <Pick
              label={text('bench.aim.brushed')}
              value={brushedLevel === undefined ? AS_IT_IS : THICKNESS_WORDS[Math.floor(brushedLevel)]!}
              onPick={(look) => {
                const place = (THICKNESS_WORDS as readonly string[]).indexOf(look);
                set({ steps, ...(place >= 0 && { brushedLevel: place + INSIDE }) });
              }}
              options={[
                { value: AS_IT_IS, text: text('bench.aim.as-it-is') },
                ...THICKNESS_WORDS.map((look) => ({ value: look, text: text('bench.look', { look }) })),
              ]}
            />
          </div>
          <Choice
            legend={text('bench.aim.with')}
            value={wish.mayAdd ? 'more' : 'own'}
            onChoose={(value) => set(wish.aim, value === 'more')}
            options={(['own', 'more'] as const).map((value) => ({
              value,
              text: text('bench.aim.with-name', { what: value }),
            }))}
          />
          {answer && !isNothing(wish) ? (
            <div className="swap-said" aria-live="polite">
              <p>
                {answer.ok && answer.said[0]?.id !== 'sauce.rebalance-nothing'
                  ? `${text('bench.aim.get-there')} `
                  : null}
                {(answer.ok ? answer.said : answer.problems).map((said) => saidWords(said, print)).join(' ')}
              </p>
              {answer.ok ? (
                <div className="keys">
                  <Key kind="first" onClick={() => props.onKeep(takeOver(formula, undefined, answer))}>
                    {text('bench.aim.take')}
                  </Key>
                  <Key
                    onClick={() =>
                      props.onVariant(text('bench.aim.name'), takeOver(formula, undefined, answer))
                    }
                  >
                    {text('bench.swap.as-variant')}
                  </Key>
                </div>
              ) : null}
            </div>
          ) : null}
        </>
      ) : null}
    </div>
  );
}
