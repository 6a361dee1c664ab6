import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

/** Never copied for offline use: the worker cannot hold itself, and the second index is for plain hosts only. */
const LEFT_OUT = new Set(['service-worker.js', '404.html']);

/** What packs well; fonts and pictures are packed already. */
const PACKS = /\.(?:js|css|html|svg|wasm|webmanifest)$/;
/** Under this size one packet carries it as it is [bytes]. */
const LEAST_BYTES = 1024;

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

/**
 * Writes the list of everything that was built into the service worker, under a name made from the contents,
 * and a 404.html equal to the index so that plain file hosts answer the app's own addresses. Beside each file stand
 * its packed copies, for a server to send over a slow line.
 */
export function offlineCopy(): Plugin {
  let outDir = 'dist';
  return {
    name: 'pitwright-offline-copy',
    apply: 'build',
    configResolved(config) {
      outDir = join(config.root, config.build.outDir);
    },
    closeBundle() {
      const files = filesUnder(outDir).filter((file) => !LEFT_OUT.has(file));
      const hash = createHash('sha256');
      for (const file of files) hash.update(file).update(readFileSync(join(outDir, file)));
      const edition = hash.digest('hex').slice(0, 12);
      const addresses = files.map((file) => (file === 'index.html' ? '/' : `/${file}`));
      const source = readFileSync(join(outDir, 'service-worker.js'), 'utf8')
        .replace("'__EDITION__'", JSON.stringify(edition))
        .replace("['__FILES__']", JSON.stringify(addresses));
      // Names of built files may hold any two underscores: only the places themselves are looked for.
      if (/__(?:EDITION|FILES)__/.test(source))
        throw new Error('the service worker has lost the place of its list');
      writeFileSync(join(outDir, 'service-worker.js'), source);
      writeFileSync(join(outDir, '404.html'), readFileSync(join(outDir, 'index.html')));
      for (const file of filesUnder(outDir)) {
        const path = join(outDir, file);
        const content = readFileSync(path);
        if (!PACKS.test(file) || content.length < LEAST_BYTES) continue;
        writeFileSync(`${path}.br`, brotliCompressSync(content));
        writeFileSync(`${path}.gz`, gzipSync(content));
      }
    },
  };
}
