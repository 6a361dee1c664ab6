import type { Store } from '@pitwright/store';
import { buildApp } from './app.ts';
import { packageVersion } from './server.ts';

/** The OpenAPI document of the API, as text, generated from the schemas that the routes check. */
export async function openapiText(): Promise<string> {
  // The routes are described without being called.
  const store = { storeId: 'none' } as Store;
  const app = await buildApp({ store, isOwnHost: () => false, version: packageVersion() });
  const document = app.swagger();
  await app.close();
  return `${JSON.stringify(document, null, 2)}\n`;
}
