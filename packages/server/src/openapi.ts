import type { Store } from '@pitwright/store';
import manifest from '../package.json' with { type: 'json' };
import { buildApp } from './app.ts';

/** The OpenAPI document of the API, as text, generated from the schemas that the routes check. */
export async function openapiText(): Promise<string> {
  // The routes are described without being called.
  const store = { storeId: 'none' } as Store;
  const app = await buildApp({ store, isOwnHost: () => false, version: manifest.version });
  const document = app.swagger();
  await app.close();
  return `${JSON.stringify(document, null, 2)}\n`;
}
