/** Writes the published schema anew: `npx tsx packages/model/schema/generate.ts`. */
import { writeFileSync } from 'node:fs';
import { cookFileSchemaText } from '../src/file/schema.ts';

writeFileSync(new URL('./cook-file.schema.json', import.meta.url), cookFileSchemaText());
