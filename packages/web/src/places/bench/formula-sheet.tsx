import { type Ingredient, type LineEffect, TASTES } from '@pitwright/engine/sauce';
import {
  type Cook,
  type Formula,
  type FormulaLine,
  printCookQuantity,
  readCookQuantity,
} from '@pitwright/model';
import { writtenQuantity } from '@pitwright/words';
import { type FormEvent, useState } from 'react';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Key } from '../../parts/key.tsx';
import { saidWords } from '../../said.ts';
import { useWords, type Words } from '../../words.tsx';
import { type Amount, forToggled, readAmount, setLate, setLine, setLines, withoutLine } from './edit.ts';
import { FindAndAmount } from './find-and-amount.tsx';
import type { PackPrice, Seen } from './messages.ts';
import { useKnown } from './own.tsx';
import { variantsOfLine } from './variants.ts';

interface SheetProps {
  readonly cook: Cook;
  readonly written: Formula;
  /** As it is made. */
  readonly formula: Formula;
  /** What a line is to be added of, chosen elsewhere. */
  readonly adding: string | undefined;
  readonly onAdding: (ingredient: string | undefined) => void;
  readonly seen: Seen | undefined;
  readonly prices: Readonly<Record<string, PackPrice>>;
  readonly onKeep: (formula: Formula) => void;
  /** For these pieces; undefined: for all. */
  readonly onFor: (pieceIds: readonly string[] | undefined) => void;
  /** All of it so many times as much, the line at a place exactly so much. */
  readonly onScale: (factor: number, index: number, amount: Amount) => void;
  readonly onPrices: (prices: Readonly<Record<string, PackPrice>>) => void;
}

/** The formula by weight: each line as written, in kitchen measure, in grams. */
export function FormulaSheet(props: SheetProps) {
  const { text, print } = useWords();
  const { find } = useKnown();
  const { cook, written, formula, seen, adding, onAdding } = props;
  const [opened, setOpened] = useState<number>();
  const lines = formula.lines.map((line) => ({ line, massG: massOf(line, find(line.ingredient)) }));
  const most = Math.max(1, ...lines.map((one) => one.massG ?? 0));
  const letters = cook.pieces
    .filter((piece) => !formula.for || formula.for.includes(piece.id))
    .map((piece) => piece.letter);
  const people = cook.guests.adults + cook.guests.children;
  const outcome = seen?.outcome.ok ? seen.outcome : undefined;
  return (
    <section className="formula" aria-labelledby="formula-name">
      <h2 id="formula-name">{written.name}</h2>
      <p className="quiet">{text('bench.for', { letters: letters.join(' '), people })}</p>
      {cook.pieces.length > 1 ? (
        <fieldset className="for-pieces">
          <legend className="vh">{text('bench.for.pieces')}</legend>
          {cook.pieces.map((piece) => {
            const isFor = !formula.for || formula.for.includes(piece.id);
            return (
              <button
                key={piece.id}
                type="button"
                className="key square"
                aria-pressed={isFor}
                aria-label={text('bench.for.piece', {
                  letter: piece.letter,
                  name: piece.name ?? print.cut(piece.cut, piece.count),
                })}
                // It is for one piece at least.
                disabled={isFor && letters.length === 1}
                onClick={() => props.onFor(forToggled(cook, formula, piece.id))}
              >
                {piece.letter}
              </button>
            );
          })}
        </fieldset>
      ) : null}
      {lines.length > 0 ? (
        <table className="lines">
          <thead>
            <tr>
              <th scope="col">{text('bench.what')}</th>
              <th scope="col">{text('bench.written')}</th>
              <th scope="col" className="r">
                {text('bench.grams')}
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ line, massG }, index) => (
              <Line
                // biome-ignore lint/suspicious/noArrayIndexKey: lines have no id; the same thing may stand twice
                key={`${index} ${line.ingredient}`}
                {...props}
                index={index}
                line={line}
                massG={massG}
                share={(massG ?? 0) / most}
                effect={seen?.effects[index]}
                isOpen={opened === index}
                onOpen={() => setOpened((open) => (open === index ? undefined : index))}
              />
            ))}
          </tbody>
          {outcome ? (
            <tfoot>
              <tr>
                <th scope="row">{text('bench.raw', { kind: formula.kind })}</th>
                <td>{print.volumeM3(outcome.rawMassG / 1000 / outcome.before.densityKgM3)}</td>
                <td className="r">{print.number(outcome.rawMassG)}</td>
              </tr>
              {outcome.lateMassG > 0 ? (
                <tr>
                  <th scope="row">{text('bench.stirred-in')}</th>
                  <td />
                  <td className="r">{print.number(outcome.lateMassG, outcome.lateMassG < 10 ? 1 : 0)}</td>
                </tr>
              ) : null}
              {outcome.waterOffG > 0 ? (
                <tr>
                  <th scope="row">{text('bench.finished')}</th>
                  <td>
                    {text('bench.volume-jars', {
                      volume: { kind: 'volume', si: outcome.finishedVolumeMl / 1e6 },
                      jars: outcome.jars.full,
                    })}
                  </td>
                  <td className="r">{print.number(outcome.finishedMassG)}</td>
                </tr>
              ) : null}
            </tfoot>
          ) : null}
        </table>
      ) : null}
      <AddLine key={adding ?? ''} {...props} isOpen={adding !== undefined} onOpen={onAdding} />
    </section>
  );
}

/** One more line, found by a word of its name. */
function AddLine(props: SheetProps & { isOpen: boolean; onOpen: (ingredient: string | undefined) => void }) {
  const { text } = useWords();
  const { formula, adding, isOpen, onOpen, onKeep } = props;
  return (
    <div className="add-line">
      <Key aria-expanded={isOpen} onClick={() => onOpen(isOpen ? undefined : '')}>
        {text('bench.add-line')}
      </Key>
      {isOpen ? (
        <FindAndAmount
          labels={{
            find: text('bench.add-line.find'),
            what: text('bench.add-line.what'),
            howMuch: text('bench.add-line.how-much'),
            use: text('bench.add-line.use'),
          }}
          ingredient={adding === '' ? undefined : adding}
          onUse={({ id }, amount) => {
            onKeep(setLines(formula, [...formula.lines, { ingredient: id, amount }]));
            onOpen(undefined);
          }}
        />
      ) : null}
    </div>
  );
}

/** Grams of a line by its density; missing where nobody knows. */
function massOf({ amount }: FormulaLine, ingredient: Ingredient | undefined): number | undefined {
  if (amount.kind === 'mass') return amount.si * 1000;
  const density = ingredient?.densityGPerMl ?? 0;
  return density > 0 ? amount.si * 1e6 * density : undefined;
}

/** As a jug or a spoon shows it. */
const kitchenMl = (ml: number): number => (ml >= 20 ? Math.round(ml / 5) * 5 : ml);

const gramsText = (massG: number, print: Words['print']): string => print.number(massG, massG < 10 ? 1 : 0);

function Line(
  props: SheetProps & {
    index: number;
    line: FormulaLine;
    massG: number | undefined;
    share: number;
    effect: LineEffect | undefined;
    isOpen: boolean;
    onOpen: () => void;
  },
) {
  const { text, print } = useWords();
  const { find } = useKnown();
  const { formula, line, massG, effect, isOpen } = props;
  const ingredient = find(line.ingredient);
  const name = ingredient?.name ?? line.ingredient;
  const isDull = effect !== undefined && !effect.matters && !effect.isAroma;
  const boilsAway = isDull && onlyBoils(formula, line, ingredient);
  const density = ingredient?.densityGPerMl ?? 0;
  const kitchen =
    line.amount.kind === 'mass' && massG && density > 0
      ? print.volumeM3(kitchenMl(massG / density) / 1e6)
      : undefined;
  return (
    <>
      <tr className={isDull && !boilsAway ? 'line dull' : 'line'}>
        <th scope="row">
          <button type="button" className="line-key" aria-expanded={isOpen} onClick={props.onOpen}>
            {name}
            {line.late && formula.simmer ? (
              <span className="small line-note">{text('bench.late')}</span>
            ) : null}
            {line.locked ? <span className="small quiet line-note">{text('bench.locked')}</span> : null}
            {isDull ? (
              <span className="small quiet line-note">
                {text(boilsAway ? 'bench.only-boils' : 'bench.hardly-matters')}
              </span>
            ) : null}
          </button>
          <span className="line-bar" style={{ width: `${Math.max(1, 100 * props.share)}%` }} />
        </th>
        <td className="small">
          {writtenQuantity(line.amount)}
          {kitchen ? (
            <span className="quiet line-about">{text('bench.about', { measure: kitchen })}</span>
          ) : null}
        </td>
        <td className="r line-grams">{massG === undefined ? '?' : gramsText(massG, print)}</td>
      </tr>
      {isOpen ? (
        <tr className="line-open">
          <td colSpan={3}>
            <LineEditor {...props} name={name} ingredient={ingredient} />
          </td>
        </tr>
      ) : null}
    </>
  );
}

function LineEditor(
  props: SheetProps & {
    index: number;
    line: FormulaLine;
    name: string;
    ingredient: Ingredient | undefined;
    effect: LineEffect | undefined;
    onOpen: () => void;
  },
) {
  const { text, print } = useWords();
  const { written, formula, index, line, name, ingredient, effect, prices, onKeep, onPrices } = props;
  const changedIn = written.variant === undefined ? variantsOfLine(written, line.ingredient) : [];
  const othersStart = formula.lines.some((one, i) => i !== index && !one.late);
  const [amount, setAmount] = useState(() => printCookQuantity(line.amount));
  const [problem, setProblem] = useState<string>();
  const kept = prices[line.ingredient];
  const [pack, setPack] = useState(kept ? printCookQuantity(kept.pack) : '');
  const [price, setPrice] = useState(kept ? String(kept.price) : '');
  const [priceProblem, setPriceProblem] = useState<{ pack?: string; price?: string }>({});
  const keepAmount = (event: FormEvent) => {
    event.preventDefault();
    const read = readAmount(amount);
    if (!read.ok) return setProblem(saidWords(read.problem, print));
    setProblem(undefined);
    onKeep(setLine(formula, index, { amount: read.amount }));
    props.onOpen();
  };
  /** A pack to use up, or the one that ran short: everything goes with this line. */
  const scaleAll = () => {
    const read = readAmount(amount);
    if (!read.ok) return setProblem(saidWords(read.problem, print));
    const before = massOf(line, ingredient);
    const after = massOf({ ...line, amount: read.amount }, ingredient);
    if (!before || !after) return setProblem(saidWords({ id: 'sauce.paste-nothing' }, print));
    setProblem(undefined);
    props.onScale(after / before, index, read.amount);
    props.onOpen();
  };
  const keepPrice = (event: FormEvent) => {
    event.preventDefault();
    const read = readCookQuantity(pack, 'mass');
    const cost = /^\d+([.,]\d{1,2})?$/.test(price.trim())
      ? Number(price.trim().replace(',', '.'))
      : Number.NaN;
    setPriceProblem({
      ...(!read.ok && { pack: saidWords(read.problem, print) }),
      ...(!Number.isFinite(cost) && { price: text('bench.price.problem') }),
    });
    if (read.ok && Number.isFinite(cost))
      onPrices({ ...prices, [line.ingredient]: { pack: read.quantity, price: cost } });
  };
  return (
    <div className="line-editor">
      <form className="line-form" onSubmit={keepAmount}>
        <Field
          label={text('bench.amount', { name })}
          value={amount}
          problem={problem}
          onChange={(event) => setAmount(event.target.value)}
        />
        <Key kind="first" type="submit">
          {text('web.keep')}
        </Key>
      </form>
      <div className="keys">
        <Key onClick={scaleAll}>{text('bench.scale-by')}</Key>
      </div>
      {formula.simmer ? (
        <Choice
          legend={text('bench.goes-in')}
          value={line.late ? 'late' : 'start'}
          onChoose={(when) => onKeep(setLate(formula, index, when === 'late'))}
          options={[
            { value: 'start', text: text('bench.goes-in.start') },
            // The pot must hold something that simmers.
            ...(othersStart || line.late
              ? [{ value: 'late', text: text('bench.goes-in.late') } as const]
              : []),
          ]}
        />
      ) : null}
      {effect ? (
        <p className="small">{matterWords(effect, onlyBoils(formula, line, ingredient), text)}</p>
      ) : null}
      {changedIn.length > 0 ? (
        <p className="small quiet">{text('bench.variant.of-line', { names: changedIn.join('|') })}</p>
      ) : null}
      {line.note ? <p className="small quiet">{line.note}</p> : null}
      <div className="keys">
        <Key onClick={() => onKeep(setLine(formula, index, { locked: !line.locked }))}>
          {text(line.locked ? 'bench.unlock' : 'bench.lock')}
        </Key>
        <Key
          onClick={() => {
            onKeep(withoutLine(formula, index));
            props.onOpen();
          }}
        >
          {text('bench.remove')}
        </Key>
      </div>
      <form className="line-form" onSubmit={keepPrice}>
        <Field
          label={text('bench.pack', { name })}
          value={pack}
          problem={priceProblem.pack}
          onChange={(event) => setPack(event.target.value)}
        />
        <Field
          label={text('bench.price', { name })}
          value={price}
          inputMode="decimal"
          problem={priceProblem.price}
          onChange={(event) => setPrice(event.target.value)}
        />
        <Key type="submit">{text('web.keep')}</Key>
      </form>
    </div>
  );
}

/** Nearly all water, in a pot that simmers it away again: the tongue does not tell how much of it there was. */
const onlyBoils = (formula: Formula, line: FormulaLine, ingredient: Ingredient | undefined): boolean =>
  formula.simmer !== undefined && !line.late && (ingredient?.per100g.waterG ?? 0) > MOSTLY_WATER_G;
const MOSTLY_WATER_G = 97;

/** Does it matter? In words of the tongue, for half of it. */
function matterWords(effect: LineEffect, boilsAway: boolean, text: Words['text']): string {
  const changes = TASTES.filter((taste) => Math.abs(effect.steps.half[taste]) >= 1).map((taste) =>
    text('bench.taste-change', { taste, steps: effect.steps.half[taste] }),
  );
  if (changes.length > 0)
    return text('bench.matters.half', { changes: text('bench.listed', { items: changes.join('|') }) });
  if (effect.isAroma) return text('bench.matters.aroma');
  return text(boilsAway ? 'bench.matters.water' : 'bench.matters.not');
}
