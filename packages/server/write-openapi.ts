/** Writes `openapi.json` anew: `npm run openapi --workspace @pitwright/server`. */
import { writeFileSync } from 'node:fs';
import { openapiText } from './src/openapi.ts';

writeFileSync(new URL('./openapi.json', import.meta.url), await openapiText());
