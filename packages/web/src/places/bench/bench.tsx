import type { Coating } from '@pitwright/engine/sauce';
import { type Cook, type Formula, madeFormula } from '@pitwright/model';
import { newId } from '@pitwright/store';
import { useMemo, useState } from 'react';
import { useSearchParams } from 'wouter';
import { Choice } from '../../parts/choice.tsx';
import { Key } from '../../parts/key.tsx';
import { UndoKeys } from '../../parts/undo-keys.tsx';
import { useWords } from '../../words.tsx';
import { CookStrip } from '../cook/cook-strip.tsx';
import { ofCook, useCookWriter } from '../of-cook.tsx';
import { useSetting } from '../use-setting.ts';
import { noteWith } from './answers.ts';
import { Balance } from './balance.tsx';
import { BenchAnswer } from './bench-answer.tsx';
import { Consequences } from './consequences-below.tsx';
import { emptyFormula, scaled, setLine, setLines, withFormula } from './edit.ts';
import { FormulaNote } from './formula-note.tsx';
import { FormulaSheet } from './formula-sheet.tsx';
import type { Corrections, PackPrice, Seen, Swap, Wish } from './messages.ts';
import { OnMeatPart } from './on-meat.tsx';
import { KnownIngredients } from './own.tsx';
import { OwnLabels } from './own-labels.tsx';
import { Paste } from './paste.tsx';
import { PrintedCards } from './printed-cards.tsx';
import { Simmering } from './simmering.tsx';
import { useBench } from './use-bench.ts';
import { addVariant, keptAs } from './variants.ts';
import { VariantsPart } from './variants-part.tsx';
import './bench.css';

const NO_CORRECTIONS: Corrections = {};
const NO_PRICES: Readonly<Record<string, PackPrice>> = {};

function withoutChange(seen: Seen): Seen {
  const { swapped: _, aimed: __, ...rest } = seen;
  return rest;
}

export default ofCook((props) => (
  <KnownIngredients labels={props.cook.labels}>
    <BenchSheet {...props} />
  </KnownIngredients>
));

/** What a formula does: by weight, live. */
function BenchSheet(props: { cook: Cook }) {
  const { text } = useWords();
  const { cook } = props;
  const writer = useCookWriter(cook);
  const [search] = useSearchParams();
  const [formulaId, setFormulaId] = useState(search.get('formula') ?? cook.formulas[0]?.id);
  const [swap, setSwap] = useState<Swap>();
  const [wish, setWish] = useState<Wish>();
  const [below, setBelow] = useState<'paste' | 'own'>();
  const [adding, setAdding] = useState<string>();
  const [coating, setCoating] = useState<Coating>('light');
  const written = cook.formulas.find((one) => one.id === formulaId) ?? cook.formulas[0];
  const formula = useMemo(() => written && madeFormula(written), [written]);
  const [corrections, writeCorrections] = useSetting(`bench.${cook.id}.${formula?.id}`, NO_CORRECTIONS);
  const [prices, writePrices] = useSetting('prices', NO_PRICES);
  const shownSwap = formula && swap && formula.lines[swap.index] ? swap : undefined;
  const bench = useBench(cook, formula?.id, corrections, shownSwap, wish);

  const keepCook = (next: Cook) => {
    void writer.keep(next);
    setSwap(undefined);
    setWish(undefined);
  };
  const keepWritten = (next: Formula) => keepCook(withFormula(cook, next));
  const keep = (next: Formula) => {
    if (written) keepWritten(keptAs(written, next));
  };
  /** All of it, whichever way it is made; the line it was asked by to the gram. */
  const scaleAll = (factor: number, index?: number, amount?: Formula['lines'][number]['amount']) => {
    if (!written) return;
    const next = scaled(written, factor);
    keepWritten(
      index === undefined || !amount ? next : keptAs(next, setLine(madeFormula(next), index, { amount })),
    );
  };
  const choose = (id: string) => {
    setFormulaId(id);
    setSwap(undefined);
    setWish(undefined);
    setAdding(undefined);
  };
  const addFormula = (name: string, kind: Formula['kind'], lines: Formula['lines'], note?: string) => {
    const added = { ...setLines(emptyFormula(newId(), name, kind), lines), ...(note && { note }) };
    keepCook({ ...cook, formulas: [...cook.formulas, added] });
    choose(added.id);
    setBelow(undefined);
  };
  // What a swap does is only offered for the lines as they stand.
  const seen = bench.seen && !bench.isFresh ? withoutChange(bench.seen) : bench.seen;
  const outcome = seen?.outcome.ok ? seen.outcome : undefined;

  return (
    <>
      <CookStrip cook={cook} />
      <main id="page" className="bench">
        <div className="bench-screen">
          {cook.formulas.length > 1 && formula ? (
            <div className="bench-top">
              <Choice
                legend={text('bench.formulas')}
                hideLegend
                value={formula.id}
                onChoose={choose}
                options={cook.formulas.map((one) => ({ value: one.id, text: one.name }))}
              />
            </div>
          ) : null}
          <div className="bench-becomes">
            <BenchAnswer formula={formula} bench={bench} coating={coating} />
            {written && formula && formula.lines.length > 0 ? (
              <VariantsPart
                key={`${formula.id}-variants`}
                written={written}
                made={formula}
                seen={seen}
                onKeep={keepWritten}
              />
            ) : null}
            {written && formula && seen && outcome && formula.kind === 'sauce' ? (
              <>
                <Balance
                  isPlated={corrections.plate !== undefined}
                  formula={formula}
                  seen={seen}
                  outcome={outcome}
                  swap={shownSwap}
                  onSwap={(next) => {
                    setSwap(next);
                    setWish(undefined);
                  }}
                  wish={wish}
                  onWish={(next) => {
                    setWish(next);
                    setSwap(undefined);
                  }}
                  onKeep={keep}
                  onVariant={(name, next) => keepWritten(addVariant(written, name, next))}
                />
                <Simmering
                  key={formula.id}
                  formula={formula}
                  seen={seen}
                  outcome={outcome}
                  isHoldable={bench.hasSameLines}
                  onKeep={keep}
                />
              </>
            ) : null}
            {formula && seen && outcome && formula.kind !== 'sauce' ? (
              <OnMeatPart
                key={formula.id}
                formula={formula}
                seen={seen}
                outcome={outcome}
                coating={coating}
                onCoating={setCoating}
                onKeep={keep}
              />
            ) : null}
          </div>
          <div className="bench-formula">
            {written && formula ? (
              <FormulaSheet
                key={formula.id}
                cook={cook}
                written={written}
                formula={formula}
                adding={adding}
                onAdding={setAdding}
                seen={seen}
                prices={prices}
                onKeep={keep}
                onFor={(pieceIds) => {
                  const { for: _, ...rest } = written;
                  keepWritten(pieceIds ? { ...rest, for: pieceIds } : rest);
                }}
                onScale={scaleAll}
                onPrices={writePrices}
              />
            ) : null}
            {written ? (
              <FormulaNote key={`${written.id}-note`} written={written} onKeep={keepWritten} />
            ) : null}
            <div className="keys bench-keys">
              {(['paste', 'own'] as const).map((part) => (
                <Key
                  key={part}
                  aria-expanded={below === part}
                  onClick={() => setBelow((open) => (open === part ? undefined : part))}
                >
                  {text(`bench.${part}`)}
                </Key>
              ))}
              {formula ? (
                <Key
                  onClick={() =>
                    keepCook({ ...cook, formulas: cook.formulas.filter((one) => one.id !== formula.id) })
                  }
                >
                  {text('bench.take-out')}
                </Key>
              ) : null}
              <UndoKeys subject={writer.subject} />
            </div>
          </div>
          {below === 'own' ? (
            <OwnLabels
              cook={cook}
              onKeep={keepCook}
              onUse={(label) => {
                setBelow(undefined);
                setAdding(label.ingredient);
              }}
              onLeave={() => setBelow(undefined)}
            />
          ) : null}
          {below === 'paste' ? (
            <Paste
              into={formula}
              read={bench.read}
              onNew={addFormula}
              onAdd={(lines, more) => {
                if (written && formula) {
                  const next = keptAs(written, setLines(formula, [...formula.lines, ...lines]));
                  const note = noteWith(written.note, more);
                  keepWritten({ ...next, ...(note && { note }) });
                }
                setBelow(undefined);
              }}
              onLeave={() => setBelow(undefined)}
            />
          ) : null}
          {formula && seen && outcome ? (
            <Consequences
              key={`${formula.id}-below`}
              cook={cook}
              formula={formula}
              seen={seen}
              outcome={outcome}
              corrections={corrections}
              prices={prices}
              onCorrect={writeCorrections}
              onKeep={keep}
              onScale={scaleAll}
            />
          ) : null}
        </div>
        {formula && outcome ? <PrintedCards cook={cook} formula={formula} outcome={outcome} /> : null}
      </main>
    </>
  );
}
