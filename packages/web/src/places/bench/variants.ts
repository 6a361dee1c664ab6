import {
  changesBetweenLines,
  chosenVariant,
  type Formula,
  type FormulaLine,
  type FormulaVariant,
  slug,
} from '@pitwright/model';

/** Lines by what they are and how many of them have come: what a lock is put on. */
function locksOf(lines: readonly FormulaLine[]): Map<string, boolean> {
  const seen = new Map<string, number>();
  return new Map(
    lines.map((line) => {
      const which = (seen.get(line.ingredient) ?? 0) + 1;
      seen.set(line.ingredient, which);
      return [`${line.ingredient} ${which}`, line.locked ?? false];
    }),
  );
}

/** A lock lies on the line itself, whichever way the formula is made. */
function withLocks(lines: readonly FormulaLine[], made: readonly FormulaLine[]): readonly FormulaLine[] {
  const locks = [...locksOf(made)];
  const wanted = new Map(locks);
  const places = [...locksOf(lines)];
  const isSame = places.every(([key, locked]) => (wanted.get(key) ?? locked) === locked);
  if (isSame) return lines;
  return lines.map(({ locked: _, ...line }, i) => {
    const [key, before] = places[i]!;
    return (wanted.get(key) ?? before) ? { ...line, locked: true } : line;
  });
}

const changed = (written: Formula, made: Formula): Pick<FormulaVariant, 'changes' | 'evaporated'> => {
  const evaporated = made.simmer?.evaporated;
  return {
    changes: changesBetweenLines(written.lines, made.lines),
    ...(evaporated && evaporated.si !== written.simmer?.evaporated?.si && { evaporated }),
  };
};

/**
 * The formula to keep when what is made of it was changed by hand: its own lines where it is made as written, else the
 * changes of the variant. Pan and burner are the formula's own, whichever way it is made.
 */
export function keptAs(written: Formula, made: Formula): Formula {
  const variant = chosenVariant(written);
  if (!variant) return { ...written, lines: made.lines, ...(made.simmer && { simmer: made.simmer }) };
  const { evaporated: _, ...pan } = made.simmer ?? {};
  const { evaporated: __, ...own } = variant;
  const next: FormulaVariant = { ...own, ...changed(written, made) };
  return {
    ...written,
    lines: withLocks(written.lines, made.lines),
    ...(made.simmer && {
      simmer: { ...pan, ...(written.simmer?.evaporated && { evaporated: written.simmer.evaporated }) },
    }),
    variants: written.variants!.map((one) => (one.id === variant.id ? next : one)),
  };
}

/** The variant that is made; none: as written. */
export function chooseVariant(written: Formula, id: string | undefined): Formula {
  const { variant: _, ...rest } = written;
  return id === undefined ? rest : { ...rest, variant: id };
}

/** An id that no variant of the formula has. */
function freeId(written: Formula, name: string): string {
  const taken = new Set((written.variants ?? []).map(({ id }) => id));
  const first = slug(name, 'variant');
  for (let n = 1; ; n++) {
    const id = n === 1 ? first : `${first}-${n}`;
    if (!taken.has(id)) return id;
  }
}

/** Declared anew and made: from what is made now where nothing else is given. */
export function addVariant(written: Formula, name: string, made: Formula): Formula {
  const id = freeId(written, name);
  return {
    ...written,
    variants: [...(written.variants ?? []), { id, name, ...changed(written, made) }],
    variant: id,
  };
}

export const renameVariant = (written: Formula, id: string, name: string): Formula => ({
  ...written,
  variants: (written.variants ?? []).map((one) => (one.id === id ? { ...one, name } : one)),
});

export function removeVariant(written: Formula, id: string): Formula {
  const { variants = [], ...rest } = chooseVariant(written, undefined);
  const left = variants.filter((one) => one.id !== id);
  return left.length > 0 ? { ...rest, variants: left } : rest;
}

/** Names of the variants that change this line. */
export const variantsOfLine = (written: Formula, ingredient: string): readonly string[] =>
  (written.variants ?? [])
    .filter((variant) => variant.changes.some((change) => change.line === ingredient))
    .map(({ name }) => name);
