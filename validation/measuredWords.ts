/** `npx tsx validation/measuredWords.ts`: told bites against their chances, written to docs/models/measured-words.md. */
import { writeFileSync } from 'node:fs';
import { TOLD_CLASSES } from './measured/toldWords.ts';
import {
  ALWAYS_TENDER,
  frequencies,
  grade,
  likeliest,
  mean,
  orderShare,
  rankedScore,
  type ScoredWord,
  scoredWords,
} from './measured/words.ts';

const MEMBERS = 400;
const scored = scoredWords(MEMBERS);

const isRack = ({ word }: ScoredWord): boolean => word.cut.endsWith('ribs');
const line = (name: string, rows: readonly ScoredWord[]): string => {
  const order = orderShare(rows);
  return `| ${name} | ${rows.length} | ${mean(rows.map(({ word, chances }) => rankedScore(chances, word.told))).toFixed(3)} | ${mean(rows.map(({ word }) => rankedScore(ALWAYS_TENDER, word.told))).toFixed(3)} | ${mean(rows.map(({ word }) => rankedScore(frequencies(word), word.told))).toFixed(3)} | ${rows.filter(({ word, chances }) => likeliest(chances) === word.told).length} | ${rows.filter(({ word }) => word.told === 'done').length} | ${Math.round(100 * order.share)} % of ${order.pairs} |`;
};
const perClass = TOLD_CLASSES.map((told) => {
  const rows = scored.filter(({ word }) => word.told === told);
  return `| ${told} | ${rows.length} | ${[0, 1, 2].map((i) => mean(rows.map(({ chances }) => chances[i]!)).toFixed(2)).join(' | ')} | ${mean(rows.map(({ chances }) => grade(chances))).toFixed(2)} |`;
});

const verdict = (name: string, rows: readonly ScoredWord[]): string => {
  const model = mean(rows.map(({ word, chances }) => rankedScore(chances, word.told)));
  const tender = mean(rows.map(({ word }) => rankedScore(ALWAYS_TENDER, word.told)));
  const often = mean(rows.map(({ word }) => rankedScore(frequencies(word), word.told)));
  const against = (other: number): string =>
    `${model < other ? 'better' : '**worse**'} (${model.toFixed(3)} against ${other.toFixed(3)})`;
  return `- ${name}: ${against(tender)} than always saying "tender", ${against(often)} than the frequencies.`;
};
const GROUPS: readonly (readonly [string, readonly ScoredWord[]])[] = [
  ['all', scored],
  ['ribs, pork and beef', scored.filter(isRack)],
  ['shoulder, brisket, chuck', scored.filter((row) => !isRack(row))],
];

const page = `# Told bites of measured cooks

Written by \`npx tsx validation/measuredWords.ts\`. **Evidence kind: calibration.** The softening rate of pork was set on some of
these hand tests, so agreement is no proof. \`validation/measured/toldWords.ts\` says how each note was read: firm (tough,
sticks to the bone), done (clean bite to tender), apart (falls off, pulls, like butter). The chances are those before the
cook, from cut, mass where told, pit and stages, at the told hour; ${MEMBERS} members.

Ranked probability score of three ordered words (Epstein 1969), 0 best: the model, always saying "tender" (done), and the
frequencies of the other cooks.

| cuts | tests | model | always tender | frequencies | likeliest word right | "tender" right | pairs in order |
|---|---|---|---|---|---|---|---|
${line('all', scored)}
${line('ribs, pork and beef', scored.filter(isRack))}
${line(
  'shoulder, brisket, chuck',
  scored.filter((row) => !isRack(row)),
)}

${GROUPS.map(([name, rows]) => verdict(name, rows)).join('\n')}

| told | tests | firm | done | apart | mean grade (0–2) |
|---|---|---|---|---|---|
${perClass.join('\n')}

| cook | cut | pit °C | at h | told | firm | done | apart |
|---|---|---|---|---|---|---|---|
${scored
  .map(
    ({ word, chances }) =>
      `| ${word.id} | ${word.cut} | ${word.pitC} | ${word.atH} | ${word.told} | ${chances.map((chance) => chance.toFixed(2)).join(' | ')} |`,
  )
  .join('\n')}
`;
writeFileSync(new URL('../docs/models/measured-words.md', import.meta.url), page);
process.stdout.write(page);
