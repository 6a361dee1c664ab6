import { mkdirSync, mkdtempSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const CACHE = fileURLToPath(new URL('../../../node_modules/.cache/', import.meta.url));

/**
 * Bundles a TypeScript script into one file, so that a hundred processes of it start fast.
 * @returns its path and folder, inside node_modules so that the native driver is found; the caller removes the folder
 */
export async function bundleForNode(
  entry: URL,
): Promise<{ readonly script: string; readonly folder: string }> {
  mkdirSync(CACHE, { recursive: true });
  const folder = mkdtempSync(`${CACHE}pitwright-test-`);
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: fileURLToPath(entry),
      outDir: folder,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: 'script.mjs' } },
    },
    ssr: { noExternal: true, external: ['libsql'] },
  });
  return { script: `${folder}/script.mjs`, folder };
}
