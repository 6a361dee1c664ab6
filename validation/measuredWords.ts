/** `npx tsx validation/measuredWords.ts`: told bites against their chances, written to docs/models/measured-words.md. */
import { readFileSync, writeFileSync } from 'node:fs';
import { TOLD_CLASSES, TOLD_WORDS } from './measured/toldWords.ts';
import {
  ALWAYS_TENDER,
  frequencies,
  grade,
  isRack,
  likeliest,
  mean,
  orderShare,
  rankedScore,
  type ScoredWord,
  scoredWords,
} from './measured/words.ts';

const MEMBERS = 400;
const { plan, probe } = scoredWords(MEMBERS);

const score = (rows: readonly ScoredWord[]): number =>
  mean(rows.map(({ word, chances }) => rankedScore(chances, word.told)));
const tender = (rows: readonly ScoredWord[]): number =>
  mean(rows.map(({ word }) => rankedScore(ALWAYS_TENDER, word.told)));
const often = (rows: readonly ScoredWord[]): number =>
  mean(rows.map(({ word }) => rankedScore(frequencies(word), word.told)));

const GROUPS: Readonly<Record<string, (row: ScoredWord) => boolean>> = {
  all: () => true,
  'ribs, pork and beef': isRack,
  'shoulder, brisket, chuck': (row) => !isRack(row),
  'a core temperature was told': ({ hasProbe }) => hasProbe,
  'none was': ({ hasProbe }) => !hasProbe,
  'readings nobody would argue': ({ word }) => word.arguable === undefined,
};

function line(name: string, isIn: (row: ScoredWord) => boolean): string {
  const [before, after] = [plan.filter(isIn), probe.filter(isIn)];
  const right = (rows: readonly ScoredWord[]): number =>
    rows.filter(({ word, chances }) => likeliest(chances) === word.told).length;
  const order = (rows: readonly ScoredWord[]): string => {
    const { share, pairs } = orderShare(rows);
    return pairs ? `${Math.round(100 * share)} % of ${pairs}` : '–';
  };
  const done = before.filter(({ word }) => word.told === 'done').length;
  return `| ${name} | ${before.length} | ${score(before).toFixed(3)} | ${score(after).toFixed(3)} | ${tender(before).toFixed(3)} | ${often(before).toFixed(3)} | ${right(before)}, ${right(after)} | ${done} | ${order(before)} | ${order(after)} |`;
}

const perClass = TOLD_CLASSES.map((told) => {
  const of = (rows: readonly ScoredWord[]) => rows.filter(({ word }) => word.told === told);
  const means = (rows: readonly ScoredWord[]): string =>
    `${[0, 1, 2].map((i) => mean(rows.map(({ chances }) => chances[i]!)).toFixed(2)).join(' | ')} | ${mean(rows.map(({ chances }) => grade(chances))).toFixed(2)}`;
  return `| ${told} | ${of(plan).length} | ${means(of(plan))} | ${means(of(probe))} |`;
});

/** Of the mean of these. */
const standardError = (values: readonly number[]): number => {
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1) / values.length);
};

const verdict = (name: string, rows: readonly ScoredWord[]): string => {
  const against = (other: number): string =>
    `${score(rows) < other ? 'better' : '**worse**'} (${score(rows).toFixed(3)} against ${other.toFixed(3)})`;
  const apart = rows.map(
    ({ word, chances }) => rankedScore(chances, word.told) - rankedScore(ALWAYS_TENDER, word.told),
  );
  return `- ${name}: ${against(tender(rows))} than always saying "tender" (their difference is known to ± ${standardError(apart).toFixed(3)}), ${against(often(rows))} than the frequencies.`;
};

const page = `# Told bites of measured cooks

Written by \`npx tsx validation/measuredWords.ts\`. **Evidence kind: calibration.** The softening rate of pork was set on some of
these hand tests, so agreement is no proof. \`validation/measured/toldWords.ts\` says how each note was read: firm (tough,
sticks to the bone), done (clean bite to tender), apart (falls off, pulls, like butter). The chances are those at the told
hour, ${MEMBERS} members: *before* the cook, from cut, mass where told, pit and stages alone; and *with the probe*, each
member weighed by the core temperatures that the log tells up to then (Student's t, 4 K, 4 degrees of freedom, each reading
counting half), where it tells any.

Ranked probability score of three ordered words (Epstein 1969), 0 best: the model, always saying "tender" (done), and the
frequencies of the other cooks.

| cuts | tests | before | with the probe | always tender | frequencies | likeliest word right | "tender" right | pairs in order, before | with the probe |
|---|---|---|---|---|---|---|---|---|---|
${Object.entries(GROUPS)
  .map(([name, isIn]) => line(name, isIn))
  .join('\n')}

Before the cook:

${Object.entries(GROUPS)
  .slice(0, 3)
  .map(([name, isIn]) => verdict(name, plan.filter(isIn)))
  .join('\n')}

With the probe:

${Object.entries(GROUPS)
  .slice(0, 3)
  .map(([name, isIn]) => verdict(name, probe.filter(isIn)))
  .join('\n')}

Mean chances, and mean grade (0 firm to 2 apart), before and with the probe:

| told | tests | firm | done | apart | grade | firm | done | apart | grade |
|---|---|---|---|---|---|---|---|---|---|
${perClass.join('\n')}

${readFileSync(new URL('./measured/words.md', import.meta.url), 'utf8')}
| cook | cut | at h | told | before: firm | done | apart | with the probe: firm | done | apart |
|---|---|---|---|---|---|---|---|---|---|
${plan
  .map(({ word, cut, chances, hasProbe }, i) => {
    const figures = (of: readonly number[]): string => of.map((chance) => chance.toFixed(2)).join(' | ');
    return `| ${word.id} | ${cut} | ${word.atH} | ${word.told} | ${figures(chances)} | ${hasProbe ? figures(probe[i]!.chances) : '– | – | –'} |`;
  })
  .join('\n')}

Readings that another reader might argue:

| cook | read as | but |
|---|---|---|
${TOLD_WORDS.flatMap(({ id, told, arguable }) => (arguable ? [`| ${id} | ${told} | ${arguable} |`] : [])).join('\n')}
`;
writeFileSync(new URL('../docs/models/measured-words.md', import.meta.url), page);
process.stdout.write(page);
