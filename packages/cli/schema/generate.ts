/** Writes `plan.schema.json` beside this file: `npx tsx packages/cli/schema/generate.ts`. */
import { writeFileSync } from 'node:fs';
import { planJsonSchema } from '../src/plan/schema.ts';

writeFileSync(new URL('plan.schema.json', import.meta.url), `${JSON.stringify(planJsonSchema(), null, 2)}\n`);
