/** `npm run measured`: the engine against the measured cooks, written to docs/models/measured.md. */
import { readFileSync, writeFileSync } from 'node:fs';
import { measuredCooks } from './measured/cooks.ts';
import { chosenOnOthers } from './measured/folds.ts';
import { coursesOf, hoursUntil } from './measured/foresee.ts';
import {
  bars,
  curves,
  foldsTable,
  leftOutTable,
  readingsTable,
  sizesOf,
  tableByClass,
  tables,
} from './measured/report.ts';
import { type Scored, score, TARGETS } from './measured/score.ts';

const cooks = measuredCooks();
const courses = new Map(cooks.map((cook) => [cook, coursesOf(cook)]));
const byTarget = new Map<string, Scored[]>(
  TARGETS.map((target) => [
    target.name,
    score(target, cooks, (cook, reachC) => hoursUntil(courses.get(cook)!, reachC)),
  ]),
);
const last = byTarget.get('last reading')!;
const held = bars(byTarget);
const text = (name: string): string => readFileSync(new URL(`./measured/${name}`, import.meta.url), 'utf8');

const page = `# The measured cooks

Written by \`npm run measured\`. **Evidence kind: calibration.** The parameters of the meat model were fitted on these
cooks together with common-practice times, so agreement here is no proof; other cooks must decide. The logs are
practitioners' own (\`validation/cooks.csv\`, a source per row); \`validation/measured/interpretation.ts\` says how each was read.
${sizesOf(cooks)}.

Error is |foreseen median / told − 1|, its median over cooks. *Hours per kg* and *regression* (ln hours on mass^⅔, mean
pit, end temperature and foil) are fitted on the other cooks each time. Twins in one pit on one day differ by 2 h on the
way to 71 °C, so no model can be asked for much better than ±12 % on a finish.

## Bars

${held.map((bar) => `- ${bar.met ? 'met' : '**missed**'}: ${bar.text}`).join('\n')}

## Errors and bands

${tables(byTarget)}

${tableByClass(last)}

## Chosen on other cooks

${text('chosen.md')}
${foldsTable(chosenOnOthers(cooks))}

${text('refused.md')}
## How the logs were read

${text('readings.md')}
${readingsTable()}

Cooks of the logs that are not scored:

${leftOutTable()}

${text('limits.md')}
## Curves

${curves(last, (cook) => courses.get(cook)!)}
`;
writeFileSync(new URL('../docs/models/measured.md', import.meta.url), page);
process.stdout.write(`${held.map((bar) => `${bar.met ? 'met   ' : 'missed'} ${bar.text}`).join('\n')}\n`);
