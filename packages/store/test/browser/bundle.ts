import { fileURLToPath } from 'node:url';
import type { BrowserContext } from 'playwright-core';
import { build } from 'vite';

/** Loopback counts as a secure context, so that the page has a database of its own. Nothing listens there. */
export const ORIGIN = 'http://127.0.0.1:9';

/** The script of a page with all that it imports. */
export async function bundlePage(entry: URL): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: fileURLToPath(entry), formats: ['iife'], name: 'page' },
    },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!output || !('output' in output)) throw new Error('the bundler gave no output');
  return output.output[0].code;
}

/** Answers the origin's page with the script, without a server. */
export async function servePage(context: BrowserContext, script: string): Promise<void> {
  await context.route(`${ORIGIN}/`, (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: `<!doctype html><title>store</title><script>${script}</script>`,
    }),
  );
}
