import { cutFacts } from '@pitwright/engine';
import type { CutId } from '@pitwright/model';
import { capital } from '@pitwright/words';
import { type KeyboardEvent, useEffect, useId, useMemo, useState } from 'react';
import { Ask } from '../../parts/ask.tsx';
import { useWords } from '../../words.tsx';
import { CUTS_BY_ANIMAL } from './sensible.ts';
import { ANIMALS } from './sensible-stages.ts';
import './cut-pick.css';

interface Line {
  readonly cut: CutId;
  readonly name: string;
  /** What typing is held against: both trade names, the animal, the catalogue's own word. */
  readonly found: string;
}

/** As a person types it: small letters, without accents and marks. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9 ]/g, '');

/**
 * One cut of the catalogue: a line to type on, and under it the cuts that have those letters, grouped by animal. Empty,
 * it shows all of them.
 */
export function CutPick(props: { label: string; value: CutId; onPick: (cut: CutId) => void }) {
  const { text, print } = useWords();
  const id = useId();
  const { value, onPick } = props;
  const chosen = capital(print.cut(value, 2));
  /** What is typed; missing while the list is shut. */
  const [typed, setTyped] = useState<string>();
  const [at, setAt] = useState(0);
  const groups = useMemo(
    () =>
      ANIMALS.map((animal) => ({
        animal,
        name: text(`web.animal.${animal}`),
        lines: CUTS_BY_ANIMAL[animal].map(
          (cut): Line => ({
            cut,
            name: capital(print.cut(cut, 2)),
            found: plain(
              `${print.cut(cut, 2)} ${print.cut(cut)} ${cut.replaceAll('-', ' ')} ${text(`web.animal.${animal}`)}`,
            ),
          }),
        ),
      })),
    [print, text],
  );
  const words = plain(typed ?? '')
    .split(' ')
    .filter(Boolean);
  const shown = groups
    .map((group) => ({
      ...group,
      lines: group.lines.filter(({ found }) => words.every((word) => found.includes(word))),
    }))
    .filter(({ lines }) => lines.length > 0);
  const flat = shown.flatMap(({ lines }) => lines);
  const isOpen = typed !== undefined;
  const open = () => {
    setTyped('');
    setAt(
      Math.max(
        0,
        groups.flatMap(({ lines }) => lines).findIndex(({ cut }) => cut === value),
      ),
    );
  };
  const shut = () => setTyped(undefined);
  const pick = (cut: CutId) => {
    shut();
    if (cut !== value) onPick(cut);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) {
      event.preventDefault();
      if (!isOpen) open();
      else setAt((now) => Math.max(0, Math.min(flat.length - 1, now + step)));
    } else if (event.key === 'Enter' && isOpen) {
      event.preventDefault();
      const line = flat[at];
      if (line) pick(line.cut);
    } else if (event.key === 'Escape' && isOpen) {
      event.preventDefault();
      shut();
    }
  };
  const activeCut = isOpen ? flat[at]?.cut : undefined;
  useEffect(() => {
    if (activeCut) document.getElementById(`${id}-${activeCut}`)?.scrollIntoView({ block: 'nearest' });
  }, [activeCut, id]);
  return (
    <div className="field cut-pick">
      <label htmlFor={id}>{props.label}</label>
      <div className="cut-box">
        <input
          id={id}
          role="combobox"
          autoComplete="off"
          aria-expanded={isOpen}
          aria-controls={`${id}-list`}
          aria-autocomplete="list"
          aria-activedescendant={activeCut ? `${id}-${activeCut}` : undefined}
          value={typed ?? chosen}
          placeholder={text('web.cut.type')}
          onClick={() => {
            if (!isOpen) open();
          }}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            setTyped(isOpen ? event.target.value : event.target.value.replace(chosen, ''));
            setAt(0);
          }}
          onKeyDown={onKeyDown}
          onBlur={shut}
        />
        {isOpen ? (
          <div
            className="cut-list"
            role="listbox"
            id={`${id}-list`}
            aria-label={props.label}
            onMouseDown={(event) => event.preventDefault()}
          >
            {shown.map(({ animal, name, lines }) => (
              // biome-ignore lint/a11y/useSemanticElements: a group of options within a listbox has no element of its own
              <div role="group" key={animal} aria-label={name}>
                <span className="cut-animal" aria-hidden="true">
                  {name}
                </span>
                {lines.map((line) => (
                  // biome-ignore lint/a11y/useKeyWithClickEvents: the arrow keys of the line above move among these
                  <div
                    key={line.cut}
                    id={`${id}-${line.cut}`}
                    role="option"
                    tabIndex={-1}
                    aria-selected={line.cut === value}
                    className={line.cut === activeCut ? 'at' : undefined}
                    onClick={() => pick(line.cut)}
                  >
                    {line.name}
                  </div>
                ))}
              </div>
            ))}
            {flat.length === 0 ? (
              <p className="small">{text('web.cut.none', { typed: typed ?? '' })}</p>
            ) : null}
          </div>
        ) : null}
      </div>
      <CutUsual cut={value} />
    </div>
  );
}

/** What one usually is, and where its figures are from. */
function CutUsual(props: { cut: CutId }) {
  const { text, print } = useWords();
  const facts = cutFacts(props.cut);
  if (!facts) return null;
  const { cut, refuse, sources } = facts;
  const percent = (share: number): number => Math.round(100 * share);
  return (
    <p className="small cut-usual">
      <Ask
        origin={{
          meaning: text('web.cut.usual.meaning', {
            water: percent(cut.composition.water),
            fat: percent(cut.composition.fat),
          }),
          source: text('web.cut.usual.source', {
            size: sources.size.source,
            bone: sources.bone.source,
            composition: sources.composition.source,
            thickness: sources.thickness.source,
          }),
          doubt: text('web.cut.usual.doubt', {
            low: refuse ? percent(refuse[0]) : 0,
            high: refuse ? percent(refuse[1]) : 0,
          }),
        }}
      >
        {text('web.cut.usual', {
          mass: print.massKg(cut.massKg),
          thickness: print.lengthM((2 * cut.halfThicknessM) / cut.rulerFactor),
          bone: cut.hasBone ? percent(cut.boneShare) : 0,
        })}
      </Ask>
    </p>
  );
}
